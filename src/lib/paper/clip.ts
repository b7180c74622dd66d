// What of a path lies inside a box: lines and true arcs cut exactly at its sides.
import type { Edge } from '../drafting/geometry/outline.ts';
import type { Point } from '../drafting/geometry/point.ts';
import type { Path } from './drawing.ts';

export interface Box {
	readonly from: Point;
	readonly to: Point;
}
/** One edge's stretch inside the box, and how many mm of the whole path lie before it. */
export interface Stretch {
	readonly path: Path;
	readonly run: number;
}

const radiusOf = (from: Point, centre: Point): number => Math.hypot(from[0] - centre[0], from[1] - centre[1]);
const edgeLength = (from: Point, edge: Edge): number =>
	edge.centre ? Math.abs(edge.turn) * radiusOf(from, edge.centre) : Math.hypot(edge.end[0] - from[0], edge.end[1] - from[1]);

/** The point `part` of the way along an edge; its ends are met exactly. */
export function pointOn(from: Point, edge: Edge, part: number): Point {
	if (part <= 0) return from;
	if (part >= 1) return edge.end;
	if (!edge.centre) return [from[0] + (edge.end[0] - from[0]) * part, from[1] + (edge.end[1] - from[1]) * part];
	const angle = Math.atan2(from[1] - edge.centre[1], from[0] - edge.centre[0]) + edge.turn * part;
	const radius = radiusOf(from, edge.centre);
	return [edge.centre[0] + radius * Math.cos(angle), edge.centre[1] + radius * Math.sin(angle)];
}

/** The parts of the way (0…1) at which an edge crosses the box's four lines. */
function crossings(from: Point, edge: Edge, box: Box): number[] {
	const parts: number[] = [];
	for (const axis of [0, 1] as const) {
		for (const at of [box.from[axis], box.to[axis]]) {
			if (!edge.centre) {
				const run = edge.end[axis] - from[axis];
				if (run !== 0) parts.push((at - from[axis]) / run);
				continue;
			}
			const ratio = (at - edge.centre[axis]) / radiusOf(from, edge.centre);
			if (Math.abs(ratio) > 1) continue;
			const start = Math.atan2(from[1] - edge.centre[1], from[0] - edge.centre[0]);
			const angles = axis === 0 ? [Math.acos(ratio), -Math.acos(ratio)] : [Math.asin(ratio), Math.PI - Math.asin(ratio)];
			// An edge may turn up to twice round, either way.
			for (const angle of angles) for (let k = -3; k <= 3; k++) parts.push((angle + 2 * Math.PI * k - start) / edge.turn);
		}
	}
	return parts.filter((part) => part > 0 && part < 1).sort((a, b) => a - b);
}

/** A side belongs to the box above or to the right of it, so that a line along a joint is printed once. */
const inside = ([x, y]: Point, { from, to }: Box): boolean => x >= from[0] && x < to[0] && y >= from[1] && y < to[1];

export function clipPath(path: Path, box: Box): readonly Stretch[] {
	const stretches: Stretch[] = [];
	let from = path.start;
	let run = 0;
	for (const edge of path.edges) {
		const length = edgeLength(from, edge);
		const stops = [0, ...crossings(from, edge, box), 1];
		for (let i = 1; i < stops.length; i++) {
			const [a, b] = [stops[i - 1]!, stops[i]!];
			if ((b - a) * length < 1e-6 || !inside(pointOn(from, edge, (a + b) / 2), box)) continue;
			stretches.push({ path: { start: pointOn(from, edge, a), edges: [{ ...edge, end: pointOn(from, edge, b), turn: edge.turn * (b - a) }] }, run: run + a * length });
		}
		run += length;
		from = edge.end;
	}
	return stretches;
}

/** A filled convex shape cut to the box, side by side. */
export function clipConvex(corners: readonly Point[], box: Box): readonly Point[] {
	let shape = corners;
	for (const axis of [0, 1] as const) {
		for (const [at, sign] of [[box.from[axis], 1], [box.to[axis], -1]] as const) {
			const kept: Point[] = [];
			for (const [i, p] of shape.entries()) {
				const q = shape[(i + 1) % shape.length]!;
				const [dp, dq] = [(p[axis] - at) * sign, (q[axis] - at) * sign];
				if (dp >= 0) kept.push(p);
				if (dp * dq < 0) kept.push([p[0] + ((q[0] - p[0]) * dp) / (dp - dq), p[1] + ((q[1] - p[1]) * dp) / (dp - dq)]);
			}
			shape = kept;
		}
	}
	return shape;
}

/** The smallest upright box round paths, arcs followed to where they turn. */
export function boxOf(paths: readonly Path[]): Box {
	let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
	const take = ([x, y]: Point): void => void ([x0, y0, x1, y1] = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x), Math.max(y1, y)]);
	for (const path of paths) {
		let from = path.start;
		take(from);
		for (const edge of path.edges) {
			take(edge.end);
			if (edge.centre) {
				const start = Math.atan2(from[1] - edge.centre[1], from[0] - edge.centre[0]);
				for (let quarter = -12; quarter <= 12; quarter++) {
					const part = ((quarter * Math.PI) / 2 - start) / edge.turn;
					if (part > 0 && part < 1) take(pointOn(from, edge, part));
				}
			}
			from = edge.end;
		}
	}
	return { from: [x0, y0], to: [x1, y1] };
}
