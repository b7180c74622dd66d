// Path data of our own (path-data.ts) read back into paths: the way back from a laid-out screen to lines and true arcs.
import type { Edge } from '../drafting/geometry/outline.ts';
import type { Point } from '../drafting/geometry/point.ts';
import type { Path } from './drawing.ts';

export interface ReadPath {
	readonly path: Path;
	readonly closed: boolean;
}

/** Px, y down, as written. Knows M, L, A, a (circles' half arcs) and Z. */
export function readPathData(d: string): readonly ReadPath[] {
	const paths: { start: Point; edges: Edge[]; closed: boolean }[] = [];
	let at: Point = [0, 0];
	for (const [, letter, rest] of d.matchAll(/([MLAaZ])([^MLAaZ]*)/g)) {
		const n = (rest!.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
		const path = paths[paths.length - 1];
		if (letter === 'M') {
			at = [n[0]!, n[1]!];
			paths.push({ start: at, edges: [], closed: false });
		} else if (!path) throw new Error(`path data that begins with ${letter}`);
		else if (letter === 'Z') path.closed = true;
		else if (letter === 'L') path.edges.push({ name: '', end: (at = [n[0]!, n[1]!]), centre: null, turn: 0 });
		else {
			const end: Point = letter === 'a' ? [at[0] + n[5]!, at[1] + n[6]!] : [n[5]!, n[6]!];
			path.edges.push(arcEdge(at, end, n[0]!, n[3] === 1, n[4] === 1));
			at = end;
		}
	}
	return paths.map(({ start, edges, closed }) => ({ path: { start, edges }, closed }));
}

/** SVG's end points and radius as a centre and a turn; the plane's sense is kept (positive towards +y from +x). */
function arcEdge(from: Point, end: Point, radius: number, large: boolean, positive: boolean): Edge {
	const [dx, dy] = [end[0] - from[0], end[1] - from[1]];
	const chord = Math.hypot(dx, dy);
	if (chord < 1e-9) return { name: '', end, centre: null, turn: 0 };
	const r = Math.max(radius, chord / 2);
	const rise = Math.sqrt(Math.max(0, r * r - (chord * chord) / 4)) * (large === positive ? -1 : 1);
	const centre: Point = [(from[0] + end[0]) / 2 - (dy / chord) * rise, (from[1] + end[1]) / 2 + (dx / chord) * rise];
	let turn = Math.atan2(end[1] - centre[1], end[0] - centre[0]) - Math.atan2(from[1] - centre[1], from[0] - centre[0]);
	if (positive && turn < 0) turn += 2 * Math.PI;
	if (!positive && turn > 0) turn -= 2 * Math.PI;
	return { name: '', end, centre, turn };
}
