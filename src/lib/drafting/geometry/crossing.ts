// Where two edges meet, and whether an outline crosses itself. Lines and true arcs.
import { lineThrough, meetings, type Carrier } from './carrier.ts';
import { stretches, type Stretch } from './measure.ts';
import type { Outline } from './outline.ts';
import { cross, distance, subtract, type Point } from './point.ts';

/** The points that two edges have in common; edges that lie on one another are left out. */
export function crossings(a: Stretch, b: Stretch): readonly Point[] {
	return meetings(carrierOf(a), carrierOf(b)).filter((point) => on(a, point) && on(b, point));
}

/**
 * Does any edge meet another elsewhere than at a corner of both? Corners within `within` mm of each other are one, so that
 * neighbours join and the two sides of a whole circle may touch.
 */
export function crossesItself(outline: Outline, within = 1e-6): boolean {
	const all = stretches(outline);
	// An arc of more than a whole turn lies on itself.
	if (all.some(({ edge }) => Math.abs(edge.turn) > 2 * Math.PI + 1e-9)) return true;
	const boxes = all.map(boxRound);
	for (let i = 0; i < all.length; i++) {
		for (let j = i + 1; j < all.length; j++) {
			if (overlap(boxes[i]!, boxes[j]!) && meetElsewhere(all[i]!, all[j]!, within)) return true;
		}
	}
	return false;
}

function meetElsewhere(a: Stretch, b: Stretch, within: number): boolean {
	const shared = [a.from, a.edge.end].filter((corner) => distance(corner, b.from) <= within || distance(corner, b.edge.end) <= within);
	// Carriers that touch at a corner meet nowhere else, and where exactly they meet rounding can't tell.
	if (shared.some((corner) => Math.abs(cross(wayAt(a, corner), wayAt(b, corner))) < touching)) return false;
	return meetings(carrierOf(a), carrierOf(b)).some((point) => shared.every((corner) => distance(corner, point) > within) && on(a, point) && on(b, point));
}

/** Edges whose directions differ by less, radians, run on into each other. */
export const touching = 1e-6;

/** The way an edge runs at one of its own ends, as a vector of length 1. */
export function wayAt({ from, edge }: Stretch, point: Point): Point {
	const [x, y] = edge.centre ? subtract(point, edge.centre) : subtract(edge.end, from);
	const length = Math.sqrt(x * x + y * y);
	if (!edge.centre) return [x / length, y / length];
	const way = Math.sign(edge.turn) / length;
	return [-y * way, x * way];
}

type Box = readonly [x0: number, y0: number, x1: number, y1: number];

/** A box that an edge doesn't leave: its chord's, wider all round by the arc's height. */
function boxRound({ from, edge: { end, centre, turn } }: Stretch): Box {
	const half = Math.abs(turn) / 2;
	const height = centre ? distance(from, centre) * (half < Math.PI / 2 ? 1 - Math.cos(half) : 2) : 0;
	const room = height + 1e-6;
	return [Math.min(from[0], end[0]) - room, Math.min(from[1], end[1]) - room, Math.max(from[0], end[0]) + room, Math.max(from[1], end[1]) + room];
}

const overlap = (a: Box, b: Box): boolean => a[0] <= b[2] && b[0] <= a[2] && a[1] <= b[3] && b[1] <= a[3];

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

/** What an edge lies on. */
export const carrierOf = ({ from, edge }: Stretch): Carrier =>
	edge.centre ? { centre: edge.centre, radius: distance(from, edge.centre) } : lineThrough(from, edge.end);
