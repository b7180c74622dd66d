// Outlines for the geometry tests.
import type { Edge, Outline } from '../../../src/lib/drafting/geometry/outline.ts';
import { polar, type Point } from '../../../src/lib/drafting/geometry/point.ts';
import type { Random } from '../bodies.ts';

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

/** Random corners round the origin, some sides bowed in or out; it may cross itself where it bows far. */
export function star(random: Random, bowed: number): Outline {
	const count = 3 + Math.floor(random() * 9);
	const corners = Array.from({ length: count }, (_, i) => polar([0, 0], 30 + 270 * random(), ((i + 0.6 * random()) / count) * 2 * Math.PI));
	const edges = corners.map((from, i): Edge => {
		const end = corners[(i + 1) % count]!;
		if (random() >= bowed) return line(`side ${i}`, end);
		const turn = 2 * (random() - 0.5);
		const away = 1 / (2 * Math.tan(turn / 2));
		const [x, y] = [end[0] - from[0], end[1] - from[1]];
		return arc(`side ${i}`, end, [from[0] + x / 2 - y * away, from[1] + y / 2 + x * away], turn);
	});
	return { start: corners[0]!, edges };
}
