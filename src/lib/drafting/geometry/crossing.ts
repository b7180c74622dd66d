// Where two edges meet, and whether an outline crosses itself. Lines and true arcs.
import { lineThrough, meetings, type Carrier } from './carrier.ts';
import { stretches, type Stretch } from './measure.ts';
import type { Outline } from './outline.ts';
import { distance, subtract, type Point } from './point.ts';

/** The points that two edges have in common; edges that lie on one another are left out. */
export function crossings(a: Stretch, b: Stretch): readonly Point[] {
	return meetings(carrierOf(a), carrierOf(b)).filter((point) => on(a, point) && on(b, point));
}

/** Does any edge meet another, other than at the corner that neighbours share? `within` mm of a shared corner counts as that corner. */
export function crossesItself(outline: Outline, within = 1e-6): boolean {
	const all = stretches(outline);
	for (let i = 0; i < all.length; i++) {
		for (let j = i + 1; j < all.length; j++) {
			const [a, b] = [all[i]!, all[j]!];
			const shared: Point[] = [];
			if (j === i + 1) shared.push(a.edge.end);
			if (i === 0 && j === all.length - 1) shared.push(a.from);
			if (crossings(a, b).some((point) => shared.every((corner) => distance(corner, point) > within))) return true;
		}
	}
	return false;
}

/** mm by which a point may lie beyond an edge's end and still count as on it. */
const slack = 1e-9;

function on({ from, edge }: Stretch, point: Point): boolean {
	if (!edge.centre) {
		const length = distance(from, edge.end);
		const [x, y] = subtract(point, from);
		const along = (x * (edge.end[0] - from[0]) + y * (edge.end[1] - from[1])) / length;
		return along >= -slack && along <= length + slack;
	}
	const radius = distance(from, edge.centre);
	const start = Math.atan2(from[1] - edge.centre[1], from[0] - edge.centre[0]);
	const at = Math.atan2(point[1] - edge.centre[1], point[0] - edge.centre[0]);
	// How far round, in the arc's own direction, 0…2π.
	const round = 2 * Math.PI;
	const gone = ((((at - start) * Math.sign(edge.turn)) % round) + round) % round;
	return gone <= Math.abs(edge.turn) + slack / radius || gone >= round - slack / radius;
}

const carrierOf = ({ from, edge }: Stretch): Carrier =>
	edge.centre ? { centre: edge.centre, radius: distance(from, edge.centre) } : lineThrough(from, edge.end);
