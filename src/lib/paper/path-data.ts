// Paths in screen pixels, y down: placed from millimetres, moved aside, measured, sampled, and written for SVG.
import type { Outline } from '../drafting/geometry/outline.ts';
import type { Point } from '../drafting/geometry/point.ts';
import type { Path } from './drawing.ts';

/** Where millimetres land on the screen. */
export interface Placing {
	readonly scale: number;
	readonly x: number;
	readonly y: number;
}
export const place = (p: Point, by: Placing): Point => [by.x + p[0] * by.scale, by.y - p[1] * by.scale];

/** The same path in px. A turn changes its sign because y runs down. */
export const placePath = (path: Path, by: Placing): Path => ({
	start: place(path.start, by),
	edges: path.edges.map((edge) => ({
		name: edge.name,
		end: place(edge.end, by),
		centre: edge.centre && place(edge.centre, by),
		turn: -edge.turn
	}))
});

const round = (n: number): string => String(Math.round(n * 10) / 10);
const xy = (p: Point): string => `${round(p[0])} ${round(p[1])}`;
const about = (p: Point, centre: Point, turn: number): Point => {
	const [dx, dy] = [p[0] - centre[0], p[1] - centre[1]];
	const [c, s] = [Math.cos(turn), Math.sin(turn)];
	return [centre[0] + dx * c - dy * s, centre[1] + dx * s + dy * c];
};

/** SVG path data of a path in px. An arc over half a turn is written as two. */
export function pathData(path: Outline, closed: boolean): string {
	let d = `M${xy(path.start)}`;
	let from = path.start;
	for (const edge of path.edges) {
		if (!edge.centre) d += `L${xy(edge.end)}`;
		else {
			const radius = round(Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1]));
			const sweep = edge.turn > 0 ? 1 : 0;
			if (Math.abs(edge.turn) > Math.PI) d += `A${radius} ${radius} 0 0 ${sweep} ${xy(about(from, edge.centre, edge.turn / 2))}`;
			d += `A${radius} ${radius} 0 0 ${sweep} ${xy(edge.end)}`;
		}
		from = edge.end;
	}
	return closed ? `${d}Z` : d;
}

/** A point on a path in px and the way the path runs there (radians, y down). */
export interface Station {
	readonly at: Point;
	readonly heading: number;
}
const lengthOf = (from: Point, edge: Outline['edges'][number]): number =>
	edge.centre
		? Math.abs(edge.turn) * Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1])
		: Math.hypot(edge.end[0] - from[0], edge.end[1] - from[1]);

export function pathLength(path: Path): number {
	let [sum, from] = [0, path.start];
	for (const edge of path.edges) {
		sum += lengthOf(from, edge);
		from = edge.end;
	}
	return sum;
}

/** The station `distance` px along a path; beyond its end, its end. */
export function stationAt(path: Path, distance: number): Station {
	let [left, from] = [distance, path.start];
	for (const [i, edge] of path.edges.entries()) {
		const length = lengthOf(from, edge);
		if (left <= length || i === path.edges.length - 1) {
			const part = length === 0 ? 0 : Math.min(1, Math.max(0, left / length));
			if (!edge.centre) {
				return {
					at: [from[0] + (edge.end[0] - from[0]) * part, from[1] + (edge.end[1] - from[1]) * part],
					heading: Math.atan2(edge.end[1] - from[1], edge.end[0] - from[0])
				};
			}
			const at = about(from, edge.centre, edge.turn * part);
			const out = Math.atan2(at[1] - edge.centre[1], at[0] - edge.centre[0]);
			return { at, heading: out + (edge.turn > 0 ? Math.PI / 2 : -Math.PI / 2) };
		}
		left -= length;
		from = edge.end;
	}
	return { at: path.start, heading: 0 };
}

/** A path moved aside by so many px, positive to the left as it runs on the screen. Corners are not mitred. */
export function movedAside(path: Path, by: number): Path {
	if (by === 0) return path;
	let from = path.start;
	let start: Point | null = null;
	const edges = path.edges.map((edge) => {
		const move = (p: Point): Point => {
			if (edge.centre) {
				// Left of a clockwise run (positive turn, y down) is away from the centre.
				const radius = Math.hypot(p[0] - edge.centre[0], p[1] - edge.centre[1]);
				const grown = (radius + (edge.turn > 0 ? by : -by)) / radius;
				return [edge.centre[0] + (p[0] - edge.centre[0]) * grown, edge.centre[1] + (p[1] - edge.centre[1]) * grown];
			}
			const length = Math.hypot(edge.end[0] - from[0], edge.end[1] - from[1]) || 1;
			return [p[0] + ((edge.end[1] - from[1]) / length) * by, p[1] - ((edge.end[0] - from[0]) / length) * by];
		};
		start ??= move(from);
		const moved = { ...edge, end: move(edge.end) };
		from = edge.end;
		return moved;
	});
	return { start: start ?? path.start, edges };
}
