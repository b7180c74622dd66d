// Where two edges meet, and whether an outline crosses itself. Lines and true arcs.
import { pointAlong, stretches, type Stretch } from './measure.ts';
import type { Outline } from './outline.ts';
import { add, distance, scale, subtract, type Point } from './point.ts';

/** The points that two edges have in common; edges that lie on one another are left out. */
export function crossings(a: Stretch, b: Stretch): readonly Point[] {
	return carriersMeet(a, b).filter((point) => on(a, point) && on(b, point));
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

function carriersMeet(a: Stretch, b: Stretch): readonly Point[] {
	if (!a.edge.centre && !b.edge.centre) {
		const [u, v, w] = [subtract(a.edge.end, a.from), subtract(b.edge.end, b.from), subtract(b.from, a.from)];
		const cross = u[0] * v[1] - u[1] * v[0];
		return Math.abs(cross) < 1e-12 ? [] : [add(a.from, scale(u, (w[0] * v[1] - w[1] * v[0]) / cross))];
	}
	if (!a.edge.centre) return lineMeetsCircle(a, b.edge.centre!, distance(b.from, b.edge.centre!));
	if (!b.edge.centre) return lineMeetsCircle(b, a.edge.centre, distance(a.from, a.edge.centre));
	const [r, s] = [distance(a.from, a.edge.centre), distance(b.from, b.edge.centre)];
	const apart = distance(a.edge.centre, b.edge.centre);
	const along = (apart * apart + r * r - s * s) / (2 * apart);
	if (apart < 1e-12 || Math.abs(along) > r) return [];
	const way = scale(subtract(b.edge.centre, a.edge.centre), 1 / apart);
	const [middle, half] = [add(a.edge.centre, scale(way, along)), Math.sqrt((r - along) * (r + along))];
	return [add(middle, [-way[1] * half, way[0] * half]), add(middle, [way[1] * half, -way[0] * half])];
}

function lineMeetsCircle(line: Stretch, centre: Point, radius: number): readonly Point[] {
	const length = distance(line.from, line.edge.end);
	const [x, y] = subtract(centre, line.from);
	const along = (x * (line.edge.end[0] - line.from[0]) + y * (line.edge.end[1] - line.from[1])) / length;
	const middle = pointAlong(line, along / length);
	const away = distance(middle, centre);
	if (away > radius) return [];
	const half = Math.sqrt((radius - away) * (radius + away));
	return [pointAlong(line, (along + half) / length), pointAlong(line, (along - half) / length)];
}
