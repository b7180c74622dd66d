// Outlines for the geometry tests.
import type { Edge, Outline } from '../../../src/lib/drafting/geometry/outline.ts';
import { polar, type Point } from '../../../src/lib/drafting/geometry/point.ts';

export const line = (name: string, end: Point): Edge => ({ name, end, centre: null, turn: 0 });
export const arc = (name: string, end: Point, centre: Point, turn: number): Edge => ({ name, end, centre, turn });

/** A skirt panel: its middle along +x, its centre at the origin. */
export function sector(r: number, R: number, angle: number): Outline {
	const at = (radius: number, side: number): Point => polar([0, 0], radius, (side * angle) / 2);
	return {
		start: at(r, -1),
		edges: [line('first', at(R, -1)), arc('hem', at(R, 1), [0, 0], angle), line('second', at(r, 1)), arc('waist', at(r, -1), [0, 0], -angle)]
	};
}

export const polygon = (...points: readonly Point[]): Outline => ({
	start: points[0]!,
	edges: points.map((_, i) => line(`side ${i}`, points[(i + 1) % points.length]!))
});
