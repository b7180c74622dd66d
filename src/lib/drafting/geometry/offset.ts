// The cut line: every edge of a stitch line moved outwards by its own allowance, joined where the moved edges meet.
import { foot, lineThrough, meetings, type Carrier } from './carrier.ts';
import { crossesItself, touching, wayAt } from './crossing.ts';
import { stretches, type Stretch } from './measure.ts';
import type { Edge, Outline } from './outline.ts';
import { add, cross, distance, dot, scale, subtract, type Point } from './point.ts';

/** mm by which two neighbours that run on into each other may part when both are moved: `touching` times a wide allowance. */
const alike = 1e-4;

/**
 * Moves each edge of a counterclockwise outline outwards by `allowance(edge)` mm and joins neighbours at the point where
 * the moved edges, carried on, meet nearest to the old corner (a mitre). A line stays parallel, an arc keeps its centre and
 * is carried through the allowance; neighbours that run on into each other still do. Null where there is no room for the
 * allowance: two moved edges don't meet, an edge would vanish between its neighbours, or the cut line would cross itself.
 */
export function offset(outline: Outline, allowance: (edge: Edge) => number): Outline | null {
	const old = stretches(outline);
	const carriers: Carrier[] = [];
	for (const stretch of old) {
		const moved = carrier(stretch, allowance(stretch.edge));
		if (!moved) return null;
		carriers.push(moved);
	}
	const corners: Point[] = [];
	for (let i = 0; i < old.length; i++) {
		const next = (i + 1) % old.length;
		const corner = meet(old[i]!, old[next]!, carriers[i]!, carriers[next]!);
		if (!corner) return null;
		corners.push(corner);
	}
	const start = corners.at(-1)!;
	const edges: Edge[] = [];
	for (let i = 0; i < old.length; i++) {
		const moved = between(old[i]!, i === 0 ? start : corners[i - 1]!, corners[i]!);
		if (!moved) return null;
		edges.push(moved);
	}
	const cut = { start, edges };
	return crossesItself(cut) ? null : cut;
}

/** An edge, moved, between its new corners; null if it would run backwards. */
export function between({ from, edge }: Stretch, start: Point, end: Point): Edge | null {
	if (!edge.centre) return dot(subtract(end, start), subtract(edge.end, from)) > 0 ? { ...edge, end } : null;
	// The arc turns on at its end and begins earlier at its start, each by less than half a turn.
	const turn = edge.turn + angle(edge.end, end, edge.centre) - angle(from, start, edge.centre);
	return turn * edge.turn > 0 ? { ...edge, end, turn } : null;
}

/** What an edge lies on once it is moved outwards; null where an arc has no radius left. */
export function carrier({ from, edge }: Stretch, by: number): Carrier | null {
	if (edge.centre) {
		// Outwards is away from the centre on a counterclockwise arc, towards it on a clockwise one.
		const radius = distance(from, edge.centre) + Math.sign(edge.turn) * by;
		return radius > 0 ? { centre: edge.centre, radius } : null;
	}
	const { at, along } = lineThrough(from, edge.end);
	// To the right of the way it runs.
	return { at: add(at, [along[1] * by, -along[0] * by]), along };
}

/** The angle from `a` to `b` as seen from `centre`, −π…π. */
export function angle(a: Point, b: Point, centre: Point): number {
	const [from, to] = [subtract(a, centre), subtract(b, centre)];
	return Math.atan2(cross(from, to), dot(from, to));
}

/** Where two moved neighbours meet, nearest to the old corner. */
function meet(before: Stretch, after: Stretch, a: Carrier, b: Carrier): Point | null {
	const corner = before.edge.end;
	if (Math.abs(cross(wayAt(before, corner), wayAt(after, corner))) < touching) {
		// They run on into each other, and so they meet beside the old corner, if they were moved alike.
		const [besideA, besideB] = [beside(a, corner), beside(b, corner)];
		return distance(besideA, besideB) < alike ? besideA : null;
	}
	const [one, other] = meetings(a, b);
	return one ? (other && distance(other, corner) < distance(one, corner) ? other : one) : null;
}

/** The point of a carrier nearest to `point`. */
const beside = (on: Carrier, point: Point): Point =>
	'along' in on ? foot(on, point) : add(on.centre, scale(subtract(point, on.centre), on.radius / distance(point, on.centre)));
