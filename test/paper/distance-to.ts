// How far a point lies from an outline's lines and true arcs, worked out apart from the code that draws them.
import type { Outline } from '../../src/lib/drafting/geometry/outline.ts';
import type { Point } from '../../src/lib/drafting/geometry/point.ts';

const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

export function distanceTo({ start, edges }: Outline, p: Point): number {
	let [least, from] = [Infinity, start];
	for (const { end, centre, turn } of edges) {
		let nearest = Math.min(apart(p, from), apart(p, end));
		if (!centre) {
			const [dx, dy] = [end[0] - from[0], end[1] - from[1]];
			const part = ((p[0] - from[0]) * dx + (p[1] - from[1]) * dy) / (dx * dx + dy * dy);
			if (part > 0 && part < 1) nearest = apart(p, [from[0] + part * dx, from[1] + part * dy]);
		} else {
			// How far round from its beginning the point lies, in the way the arc turns.
			const angle = (q: Point): number => Math.atan2(q[1] - centre[1], q[0] - centre[0]);
			const round = ((angle(p) - angle(from)) * Math.sign(turn) + 4 * Math.PI) % (2 * Math.PI);
			if (round <= Math.abs(turn)) nearest = Math.abs(apart(p, centre) - apart(from, centre));
		}
		least = Math.min(least, nearest);
		from = end;
	}
	return least;
}
