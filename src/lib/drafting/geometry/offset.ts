// The cut line: every edge of a stitch line moved outwards by its own allowance, joined where the moved edges meet.
import { foot, lineThrough, meetings, type Carrier } from './carrier.ts';
import type { Edge, Outline } from './outline.ts';
import { add, distance, scale, subtract, type Point } from './point.ts';

/**
 * Moves each edge of a counterclockwise outline outwards by `allowance(edge)` mm and joins neighbours at the point where
 * the moved edges, carried on, meet nearest to the old corner. A line stays parallel, an arc keeps its centre and is
 * carried through the allowance. Null where two moved edges don't meet: there is no room for the allowance.
 */
export function offset(outline: Outline, allowance: (edge: Edge) => number): Outline | null {
	const { edges } = outline;
	const carriers: Carrier[] = [];
	let from = outline.start;
	for (const edge of edges) {
		const moved = carrier(from, edge, allowance(edge));
		if (!moved) return null;
		carriers.push(moved);
		from = edge.end;
	}
	const corners: Point[] = [];
	for (let i = 0; i < edges.length; i++) {
		const corner = meet(carriers[i]!, carriers[(i + 1) % edges.length]!, edges[i]!.end);
		if (!corner) return null;
		corners.push(corner);
	}
	const start = corners[edges.length - 1]!;
	from = outline.start;
	return {
		start,
		edges: edges.map((edge, i) => {
			const [cutFrom, end] = [i === 0 ? start : corners[i - 1]!, corners[i]!];
			// The arc turns on at its end and begins earlier at its start, each by less than half a turn.
			const turn = edge.centre ? edge.turn + between(edge.end, end, edge.centre) - between(from, cutFrom, edge.centre) : 0;
			from = edge.end;
			return { ...edge, end, turn };
		})
	};
}

function carrier(from: Point, edge: Edge, by: number): Carrier | null {
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
function between(a: Point, b: Point, centre: Point): number {
	const [ax, ay] = subtract(a, centre);
	const [bx, by] = subtract(b, centre);
	return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

/** Where two moved edges meet, nearest to the old corner. */
function meet(a: Carrier, b: Carrier, near: Point): Point | null {
	const [one, other] = meetings(a, b);
	if (one) return other && distance(other, near) < distance(one, near) ? other : one;
	// Do they run on in one line, or on one circle? Then they meet beside the old corner, if they were moved alike.
	const [besideA, besideB] = [beside(a, near), beside(b, near)];
	return distance(besideA, besideB) < 1e-9 ? besideA : null;
}

/** The point of a carrier nearest to `point`. */
const beside = (on: Carrier, point: Point): Point =>
	'along' in on ? foot(on, point) : add(on.centre, scale(subtract(point, on.centre), on.radius / distance(point, on.centre)));
