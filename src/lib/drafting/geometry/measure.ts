// What is measured on outlines: lengths, areas, places along an edge, boxes. True arcs throughout, never chords.
import type { Edge, Outline } from './outline.ts';
import { distance, type Point } from './point.ts';

/** An edge with the point it starts from, which an outline leaves to the edge before. */
export interface Stretch {
	readonly from: Point;
	readonly edge: Edge;
}

export function stretches(outline: Outline): readonly Stretch[] {
	let from = outline.start;
	return outline.edges.map((edge) => {
		const stretch = { from, edge };
		from = edge.end;
		return stretch;
	});
}

export const edgeLength = ({ from, edge }: Stretch): number =>
	edge.centre ? Math.abs(edge.turn) * distance(from, edge.centre) : distance(from, edge.end);

/** The length of the edge with this name, or of the run of edges that share it. An outline without it is our own bug. */
export function lengthOf(outline: Outline, name: string): number {
	let sum = 0;
	let found = false;
	let from = outline.start;
	for (const edge of outline.edges) {
		if (edge.name === name) {
			sum += edgeLength({ from, edge });
			found = true;
		}
		from = edge.end;
	}
	if (!found) throw new Error(`no edge ${name} among ${outline.edges.map((edge) => edge.name).join(', ')}`);
	return sum;
}

/**
 * Enclosed area, positive for a counterclockwise outline: the shoelace formula over the chords, and for each arc the segment
 * of its circle between chord and arc, ½r²(turn − sin turn). Exact on lines and arcs (school geometry).
 */
export function area(outline: Outline): number {
	let twice = 0;
	let [x, y] = outline.start;
	for (const { end, centre, turn } of outline.edges) {
		twice += x * end[1] - y * end[0];
		if (centre) twice += ((x - centre[0]) ** 2 + (y - centre[1]) ** 2) * lessSine(turn);
		[x, y] = end;
	}
	return twice / 2;
}

/** turn − sin turn; by its series where the two are so alike that their difference would be rounding alone. */
const lessSine = (turn: number): number => (Math.abs(turn) < 0.01 ? (turn ** 3 / 6) * (1 - turn ** 2 / 20) : turn - Math.sin(turn));

/** `part` 0…1 of the way along an edge. */
export function pointAlong({ from, edge }: Stretch, part: number): Point {
	const { end, centre, turn } = edge;
	if (!centre) return [from[0] + (end[0] - from[0]) * part, from[1] + (end[1] - from[1]) * part];
	const [x, y] = [from[0] - centre[0], from[1] - centre[1]];
	const [c, s] = [Math.cos(turn * part), Math.sin(turn * part)];
	return [centre[0] + x * c - y * s, centre[1] + x * s + y * c];
}

/** The direction in which an edge runs at `part`, as a vector of length 1. */
export function tangent(stretch: Stretch, part: number): Point {
	const { from, edge } = stretch;
	if (!edge.centre) {
		const length = distance(from, edge.end);
		return [(edge.end[0] - from[0]) / length, (edge.end[1] - from[1]) / length];
	}
	const [x, y] = pointAlong(stretch, part);
	const radius = distance(from, edge.centre);
	const way = Math.sign(edge.turn);
	return [(-way * (y - edge.centre[1])) / radius, (way * (x - edge.centre[0])) / radius];
}

/** The smallest upright box round an outline: its corners, and every arc's outermost points that lie on the arc. */
export function bounds(outline: Outline): { readonly from: Point; readonly to: Point } {
	let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
	const take = ([x, y]: Point): void => {
		[x0, y0, x1, y1] = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x), Math.max(y1, y)];
	};
	for (const stretch of stretches(outline)) {
		const { from, edge } = stretch;
		take(edge.end);
		if (!edge.centre) continue;
		const start = Math.atan2(from[1] - edge.centre[1], from[0] - edge.centre[0]);
		// A quarter turn apart: right, top, left, bottom of the circle. Two turns either way cover any arc.
		for (let quarter = -8; quarter <= 8; quarter++) {
			const part = ((quarter * Math.PI) / 2 - start) / edge.turn;
			if (part > 0 && part < 1) take(pointAlong(stretch, part));
		}
	}
	return { from: [x0, y0], to: [x1, y1] };
}
