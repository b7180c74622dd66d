// Lengths and areas measured by walking outlines in small chords: shares nothing with geometry/measure.ts.
import type { Edge, Outline } from '../../src/lib/drafting/geometry/outline.ts';
import type { Point } from '../../src/lib/drafting/geometry/point.ts';

const most = 2000;
/** Chords that are enough for a length: they fall short by less than a hundred-millionth. */
const enough = ({ turn }: Edge): number => Math.min(most, Math.max(8, Math.ceil(2000 * Math.abs(turn))));

export function chordPoints(from: Point, edge: Edge, chords = most): readonly Point[] {
	if (!edge.centre) return [from, edge.end];
	const [cx, cy] = edge.centre;
	const radius = Math.hypot(from[0] - cx, from[1] - cy);
	const start = Math.atan2(from[1] - cy, from[0] - cx);
	const points: Point[] = [from];
	for (let i = 1; i < chords; i++) {
		const angle = start + (edge.turn * i) / chords;
		points.push([cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)]);
	}
	// The edge's own end, not where the turn leads: a turn that misses its end shows as a length that is wrong.
	points.push(edge.end);
	return points;
}

const along = (points: readonly Point[]): number =>
	points.slice(1).reduce((sum, point, i) => sum + Math.hypot(point[0] - points[i]![0], point[1] - points[i]![1]), 0);

/** The edges of a run are walked one after the other. */
export function walked(outline: Outline, name: string): number {
	let [sum, found] = [0, false];
	let from = outline.start;
	for (const edge of outline.edges) {
		if (edge.name === name) [sum, found] = [sum + along(chordPoints(from, edge, enough(edge))), true];
		from = edge.end;
	}
	if (!found) throw new Error(`no edge ${name}`);
	return sum;
}

/** The shoelace over all chords, each arc's missing slivers put back: a chord of length c on radius r cuts off about c³/12r. */
export function surveyed(outline: Outline): number {
	let twice = 0;
	let slivers = 0;
	let from = outline.start;
	for (const edge of outline.edges) {
		const points = chordPoints(from, edge);
		for (let i = 1; i < points.length; i++) {
			const [a, b] = [points[i - 1]!, points[i]!];
			twice += a[0] * b[1] - b[0] * a[1];
			if (edge.centre) {
				const chord = Math.hypot(b[0] - a[0], b[1] - a[1]);
				slivers += (Math.sign(edge.turn) * chord ** 3) / (12 * Math.hypot(a[0] - edge.centre[0], a[1] - edge.centre[1]));
			}
		}
		from = edge.end;
	}
	return twice / 2 + slivers;
}
