// A piece that is laid on the fold: the half of it that lies on the cloth.
import { bounds, pointAlong, stretches } from '../drafting/geometry/measure.ts';
import type { Edge, Outline } from '../drafting/geometry/outline.ts';
import type { Point } from '../drafting/geometry/point.ts';
import { polygonOf } from './polygon.ts';
import { mirrored } from './shape.ts';

/** What an outline covers, wherever it lies: equal for two outlines that differ by a shift alone, to 0.01 mm. */
export function imprint(outline: Outline): string {
	const { from } = bounds(outline);
	const contour = polygonOf(outline, 'inner', 1);
	const points = Array.from({ length: contour.length / 2 }, (_, i) => `${tenths(contour[2 * i]! - from[0] * 1000)},${tenths(contour[2 * i + 1]! - from[1] * 1000)}`);
	return points.toSorted().join(' ');
}
const tenths = (micrometres: number): number => Math.round(micrometres / 10) + 0;

export interface Half {
	/** y ≥ 0, closed along y = 0. */
	readonly outline: Outline;
	/** Where the whole piece's origin lies when its middle is on the fold. */
	readonly y: number;
}

/** The upper half of a piece whose lower half mirrors it; null when it doesn't, or its middle line leaves it between its ends. */
export function upperHalf(outline: Outline): Half | null {
	if (imprint(mirrored(outline)) !== imprint(outline)) return null;
	const { from, to } = bounds(outline);
	const y = -(from[1] + to[1]) / 2;
	const lift = ([px, py]: Point): Point => [px, Math.abs(py + y) < 1e-9 ? 0 : py + y];
	const pieces: { readonly start: Point; readonly edge: Edge }[] = [];
	for (const stretch of stretches(outline)) {
		const { edge } = stretch;
		const cuts = [0, ...levels(lift(stretch.from), lift(edge.end), edge, y), 1];
		for (let i = 1; i < cuts.length; i++) {
			const [a, b] = [cuts[i - 1]!, cuts[i]!];
			if (lift(pointAlong(stretch, (a + b) / 2))[1] <= 0) continue;
			const [start, end] = [lift(a === 0 ? stretch.from : pointAlong(stretch, a)), lift(b === 1 ? edge.end : pointAlong(stretch, b))];
			pieces.push({ start, edge: { name: edge.name, end, centre: edge.centre && [edge.centre[0], edge.centre[1] + y], turn: edge.turn * (b - a) } });
		}
	}
	// One run from the fold back to the fold; where it begins in the list is turned to the front.
	const first = pieces.findIndex(({ start }, i) => start[1] === 0 && pieces[(i + pieces.length - 1) % pieces.length]!.edge.end[1] === 0);
	const onFold = pieces.filter(({ start }) => start[1] === 0).length;
	if (first < 0 || onFold !== 1) return null;
	const run = [...pieces.slice(first), ...pieces.slice(0, first)];
	const start = run[0]!.start;
	return { outline: { start, edges: [...run.map(({ edge }) => edge), { name: 'fold', end: start, centre: null, turn: 0 }] }, y };
}

/** The parts of the way along an edge at which it crosses y = 0, rising. */
function levels(from: Point, end: Point, { centre, turn }: Edge, lifted: number): readonly number[] {
	if (!centre) return from[1] * end[1] < 0 ? [from[1] / (from[1] - end[1])] : [];
	const cy = centre[1] + lifted;
	const radius = Math.hypot(from[0] - centre[0], from[1] - cy);
	if (Math.abs(cy) >= radius) return [];
	const start = Math.atan2(from[1] - cy, from[0] - centre[0]);
	const up = Math.asin(-cy / radius);
	return [up, Math.PI - up].flatMap((angle) => [-2, -1, 0, 1, 2].map((round) => (angle + round * 2 * Math.PI - start) / turn))
		.filter((part) => part > 1e-9 && part < 1 - 1e-9).toSorted((a, b) => a - b);
}
