// The cut line: every edge of a stitch line moved outwards by its own allowance, joined where the moved edges meet.
import type { Edge, Outline } from './outline.ts';
import { add, distance, scale, subtract, type Point } from './point.ts';

/** A whole line (through a point, along a vector of length 1) or a whole circle. */
type Carrier =
	| { readonly at: Point; readonly along: Point }
	| { readonly centre: Point; readonly radius: number };

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
	const along = scale(subtract(edge.end, from), 1 / distance(from, edge.end));
	// To the right of the way it runs.
	return { at: add(from, [along[1] * by, -along[0] * by]), along };
}

/** The angle from `a` to `b` as seen from `centre`, −π…π. */
function between(a: Point, b: Point, centre: Point): number {
	const [ax, ay] = subtract(a, centre);
	const [bx, by] = subtract(b, centre);
	return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

const nearer = (a: Point, b: Point, to: Point): Point => (distance(a, to) <= distance(b, to) ? a : b);

function meet(a: Carrier, b: Carrier, near: Point): Point | null {
	if ('along' in a && 'along' in b) return lineMeetsLine(a, b, near);
	if ('along' in a && 'centre' in b) return lineMeetsCircle(a, b, near);
	if ('centre' in a && 'along' in b) return lineMeetsCircle(b, a, near);
	return 'centre' in a && 'centre' in b ? circleMeetsCircle(a, b, near) : null;
}

type Line = Extract<Carrier, { along: Point }>;
type Circle = Extract<Carrier, { centre: Point }>;

const foot = ({ at, along }: Line, point: Point): Point => {
	const [x, y] = subtract(point, at);
	return add(at, scale(along, x * along[0] + y * along[1]));
};

function lineMeetsLine(a: Line, b: Line, near: Point): Point | null {
	const cross = a.along[0] * b.along[1] - a.along[1] * b.along[0];
	// Do they run on in one line? Then they meet beside the old corner, if they were moved alike.
	if (Math.abs(cross) < 1e-12) return distance(foot(a, near), foot(b, near)) < 1e-9 ? foot(a, near) : null;
	const [x, y] = subtract(b.at, a.at);
	return add(a.at, scale(a.along, (x * b.along[1] - y * b.along[0]) / cross));
}

function lineMeetsCircle(line: Line, { centre, radius }: Circle, near: Point): Point | null {
	const middle = foot(line, centre);
	const away = distance(middle, centre);
	if (away > radius) return null;
	// √(radius² − away²), as a product so that a shallow flare's radius of metres loses no digits.
	const half = Math.sqrt((radius - away) * (radius + away));
	return nearer(add(middle, scale(line.along, half)), add(middle, scale(line.along, -half)), near);
}

function circleMeetsCircle(a: Circle, b: Circle, near: Point): Point | null {
	const apart = distance(a.centre, b.centre);
	if (apart < 1e-12) {
		// One circle carried on: the point of it nearest to the old corner.
		if (Math.abs(a.radius - b.radius) > 1e-9) return null;
		return add(a.centre, scale(subtract(near, a.centre), a.radius / distance(near, a.centre)));
	}
	const along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
	if (Math.abs(along) > a.radius) return null;
	const half = Math.sqrt((a.radius - along) * (a.radius + along));
	const way = scale(subtract(b.centre, a.centre), 1 / apart);
	const middle = add(a.centre, scale(way, along));
	return nearer(add(middle, [-way[1] * half, way[0] * half]), add(middle, [way[1] * half, -way[0] * half]), near);
}
