// Outlines as polygons of whole micrometres: one that lies inside the piece, for bounds, and one that holds it, for layouts.
import { distance, type Point } from '../drafting/geometry/point.ts';
import { stretches, type Stretch } from '../drafting/geometry/measure.ts';
import type { Outline } from '../drafting/geometry/outline.ts';

/** x0, y0, x1, y1 … of one closed run of straight edges, in whole micrometres, so that turns are judged without rounding. */
export type Contour = Float64Array;
/** Counterclockwise outsides and clockwise holes. */
export type Polygon = readonly Contour[];

export const perMm = 1000;

/** `inner`: a polygon no larger than the piece. `outer`: one no smaller. `sagitta`: how far from the true arc, mm. */
export function polygonOf(outline: Outline, side: 'inner' | 'outer', sagitta: number): Contour {
	const points: Point[] = [];
	for (const stretch of stretches(outline)) {
		const { edge } = stretch;
		if (edge.centre) points.push(...arcPoints(stretch, side === 'outer' ? edge.turn > 0 : edge.turn < 0, sagitta));
		points.push(edge.end);
	}
	return tidied(Float64Array.from(points.flat(), (mm) => Math.round(mm * perMm)));
}

/** The points between an arc's ends: of its chords, or of the tangents that go round outside its circle. */
function arcPoints({ from, edge: { centre, turn } }: Stretch, tangents: boolean, sagitta: number): readonly Point[] {
	const [cx, cy] = centre!;
	const radius = distance(from, centre!);
	const parts = Math.max(1, Math.ceil(Math.abs(turn) / (2 * Math.acos(Math.max(0.5, 1 - sagitta / radius)))));
	const step = turn / parts;
	const start = Math.atan2(from[1] - cy, from[0] - cx);
	const reach = tangents ? radius / Math.cos(step / 2) : radius;
	return Array.from({ length: tangents ? parts : parts - 1 }, (_, i): Point => {
		const angle = start + step * (tangents ? i + 0.5 : i + 1);
		return [cx + reach * Math.cos(angle), cy + reach * Math.sin(angle)];
	});
}

/** Without points that repeat, points on a straight run, and spurs that go out and come back the same way. */
export function tidied(contour: Contour): Contour {
	const xs: number[] = [];
	const ys: number[] = [];
	const n = contour.length / 2;
	for (let i = 0; i < n; i++) {
		xs.push(contour[2 * i]!);
		ys.push(contour[2 * i + 1]!);
	}
	for (let left = xs.length, i = 0; left > 0 && xs.length > 2; left--, i = (i + 1) % xs.length) {
		const before = (i + xs.length - 1) % xs.length;
		const after = (i + 1) % xs.length;
		const [ax, ay] = [xs[i]! - xs[before]!, ys[i]! - ys[before]!];
		const [bx, by] = [xs[after]! - xs[i]!, ys[after]! - ys[i]!];
		if (Math.abs(ax * by - ay * bx) > flat * (Math.abs(ax) + Math.abs(ay) + Math.abs(bx) + Math.abs(by))) continue;
		xs.splice(i, 1);
		ys.splice(i, 1);
		i = (i + xs.length - 2) % xs.length;
		left = xs.length + 1;
	}
	return Float64Array.from(xs.flatMap((x, i) => [x, ys[i]!]));
}
/** A corner that rises less over its edges, in micrometres, is none: that is what rounding makes of a straight run. */
const flat = 0.4;

/** Enclosed area, square micrometres, positive counterclockwise. */
export function contourArea(contour: Contour): number {
	let twice = 0;
	const n = contour.length;
	for (let i = 0; i < n; i += 2) {
		const j = (i + 2) % n;
		twice += contour[i]! * contour[j + 1]! - contour[j]! * contour[i + 1]!;
	}
	return twice / 2;
}
