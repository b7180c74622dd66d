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

/** The same chords one by one, without a list of them: a nightly run walks a billion. */
function eachChord(from: Point, edge: Edge, use: (ax: number, ay: number, bx: number, by: number) => void): void {
	let [x, y] = from;
	if (edge.centre) {
		const [cx, cy] = edge.centre;
		const radius = Math.hypot(x - cx, y - cy);
		const start = Math.atan2(y - cy, x - cx);
		const chords = enough(edge);
		for (let i = 1; i < chords; i++) {
			const angle = start + (edge.turn * i) / chords;
			const [nextX, nextY] = [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
			use(x, y, nextX, nextY);
			[x, y] = [nextX, nextY];
		}
	}
	use(x, y, ...edge.end);
}

/** The edges of a run are walked one after the other. */
export function walked(outline: Outline, name: string): number {
	let sum = 0;
	let found = false;
	let from = outline.start;
	for (const edge of outline.edges) {
		if (edge.name === name) {
			found = true;
			eachChord(from, edge, (ax, ay, bx, by) => { sum += Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2); });
		}
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
		const radius = edge.centre ? Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1]) : Infinity;
		eachChord(from, edge, (ax, ay, bx, by) => {
			twice += ax * by - bx * ay;
			slivers += (Math.sign(edge.turn) * ((bx - ax) ** 2 + (by - ay) ** 2) ** 1.5) / (12 * radius);
		});
		from = edge.end;
	}
	return twice / 2 + slivers;
}
