// The shapes that a layout can be asked for by their figures, as outlines of lines and true arcs.
import type { Edge, Outline } from '../drafting/geometry/outline.ts';
import { add, polar, type Point } from '../drafting/geometry/point.ts';

/** A piece of a ring: its centre at the origin and its middle along +x, or, `edgeOnGrain`, from +x round to +angle. */
export interface Sector {
	readonly kind: 'sector';
	readonly inner: number;
	readonly outer: number;
	readonly angle: number;
	/** Width of the rectangle along each radial edge: its seam allowance. */
	readonly strip: number;
	readonly edgeOnGrain: boolean;
}
/** From 0 to length along x and from 0 to width along y. */
export interface Rectangle {
	readonly kind: 'rectangle';
	readonly length: number;
	readonly width: number;
}
/** Along +x from its top edge to its bottom edge, its middle on y = 0. */
export interface Gore {
	readonly kind: 'gore';
	readonly top: number;
	readonly bottom: number;
	readonly length: number;
}
/** A draft's own cut outline. */
export interface Cut {
	readonly kind: 'cut';
	readonly outline: Outline;
}
export type Shape = Sector | Rectangle | Gore | Cut;

const line = (end: Point): Edge => ({ name: '', end, centre: null, turn: 0 });

export function polygonOutline(points: readonly Point[]): Outline {
	const [start = [0, 0] as const, ...rest] = points;
	return { start, edges: [...rest, start].map(line) };
}

/** Counterclockwise. On the fold (`half`) a sector has no strip on the edge that lies on the fold. */
export function outlineOf(shape: Shape, half = false): Outline {
	switch (shape.kind) {
		case 'cut': return shape.outline;
		case 'rectangle': return polygonOutline([[0, 0], [shape.length, 0], [shape.length, shape.width], [0, shape.width]]);
		case 'gore': {
			const { top, bottom, length } = shape;
			return polygonOutline([[0, -top / 2], [length, -bottom / 2], [length, bottom / 2], [0, top / 2]]);
		}
		case 'sector': return sectorOutline(shape, half);
	}
}

function sectorOutline({ inner, outer, angle, strip, edgeOnGrain }: Sector, half: boolean): Outline {
	const origin: Point = [0, 0];
	const first = edgeOnGrain ? 0 : -angle / 2;
	const last = first + angle;
	// Quarter turns have to be exact, so that an edge on the grain lies on it.
	const at = (radius: number, turn: number): Point => exact(polar(origin, radius, turn));
	const before = exact(polar(origin, half ? 0 : strip, first - Math.PI / 2));
	const after = exact(polar(origin, strip, last + Math.PI / 2));
	const start = add(at(inner, first), before);
	const corners: Edge[] = [line(add(at(outer, first), before))];
	if (!half && strip > 0) corners.push(line(at(outer, first)));
	corners.push({ name: '', end: at(outer, last), centre: origin, turn: angle });
	if (strip > 0) corners.push(line(add(at(outer, last), after)));
	corners.push(line(add(at(inner, last), after)));
	if (strip > 0) corners.push(line(at(inner, last)));
	if (inner > 0) corners.push({ name: '', end: at(inner, first), centre: origin, turn: -angle });
	if (!half && strip > 0) corners.push(line(start));
	return { start, edges: corners };
}

/** A sine that should be 0 comes out as 1e-16: so far from 0 is no length of cloth. */
const exact = ([x, y]: Point): Point => [Math.abs(x) < 1e-10 ? 0 : x, Math.abs(y) < 1e-10 ? 0 : y];

/** Turned about the origin; exactly where the turn is a quarter, a half or three quarters. */
export function turned(outline: Outline, turn: number): Outline {
	const [c, s] = exact([Math.cos(turn), Math.sin(turn)]);
	const move = ([x, y]: Point): Point => [x * c - y * s, x * s + y * c];
	return { start: move(outline.start), edges: outline.edges.map((edge) => ({ ...edge, end: move(edge.end), centre: edge.centre && move(edge.centre) })) };
}

/** Mirrored across the fold, y = 0, and still counterclockwise. */
export function mirrored(outline: Outline): Outline {
	const flip = ([x, y]: Point): Point => [x, -y];
	const starts = [outline.start, ...outline.edges.map(({ end }) => end)];
	const edges = outline.edges.map((edge, i) => ({ ...edge, end: flip(starts[i]!), centre: edge.centre && flip(edge.centre) })).toReversed();
	return { start: flip(outline.start), edges };
}
