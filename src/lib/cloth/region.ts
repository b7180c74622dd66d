// A no-fit region ready for many quick questions, in millimetres. Its inside is forbidden, its edge is allowed.
import { perMm, type Polygon } from './polygon.ts';

export interface Region {
	/** Each edge from (ax, ay) to (bx, by), with the forbidden side on its left. */
	readonly ax: Float64Array;
	readonly ay: Float64Array;
	readonly bx: Float64Array;
	readonly by: Float64Array;
	readonly x0: number;
	readonly y0: number;
	readonly x1: number;
	readonly y1: number;
}

export function regionOf(polygon: Polygon): Region {
	const edges: number[][] = [[], [], [], []];
	for (const contour of polygon) {
		for (let i = 0; i < contour.length; i += 2) {
			const j = (i + 2) % contour.length;
			[contour[i]!, contour[i + 1]!, contour[j]!, contour[j + 1]!].forEach((value, k) => edges[k]!.push(value / perMm));
		}
	}
	return boxed(...(edges.map((list) => Float64Array.from(list)) as [Float64Array, Float64Array, Float64Array, Float64Array]));
}

function boxed(ax: Float64Array, ay: Float64Array, bx: Float64Array, by: Float64Array): Region {
	let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
	for (let i = 0; i < ax.length; i++) {
		[x0, y0, x1, y1] = [Math.min(x0, ax[i]!), Math.min(y0, ay[i]!), Math.max(x1, ax[i]!), Math.max(y1, ay[i]!)];
	}
	return { ax, ay, bx, by, x0, y0, x1, y1 };
}

/** The region of the two pieces the other way round: through the origin. */
export const opposite = ({ ax, ay, bx, by }: Region): Region => {
	const less = (values: Float64Array): Float64Array => values.map((value) => -value);
	return boxed(less(ax), less(ay), less(bx), less(by));
};

/** Turned about the origin by whole quarter turns. */
export function quarterTurned(region: Region, quarters: number): Region {
	let { ax, ay, bx, by } = region;
	for (let i = 0; i < ((quarters % 4) + 4) % 4; i++) [ax, ay, bx, by] = [ay.map((y) => -y), ax, by.map((y) => -y), bx];
	return boxed(ax, ay, bx, by);
}

/** Is the point inside? By the winding number; on the edge it may say either. */
export function inside(region: Region, x: number, y: number): boolean {
	if (!(x > region.x0 && x < region.x1 && y > region.y0 && y < region.y1)) return false;
	const { ax, ay, bx, by } = region;
	let winding = 0;
	for (let i = 0; i < ax.length; i++) {
		const [y0, y1] = [ay[i]!, by[i]!];
		if (y0 <= y === y1 <= y) continue;
		const side = (bx[i]! - ax[i]!) * (y - y0) - (x - ax[i]!) * (y1 - y0);
		if (y0 <= y) {
			if (side > 0) winding++;
		} else if (side < 0) winding--;
	}
	return winding > 0;
}

/** How far inside a point lies: 0 outside, else the distance to the nearest edge, whose number is left in `nearest`. */
export function depth(region: Region, x: number, y: number): number {
	if (!inside(region, x, y)) return 0;
	nearest.edge = -1;
	let least = Infinity;
	const { ax, ay, bx, by } = region;
	for (let i = 0; i < ax.length; i++) {
		const square = squareTo(ax[i]!, ay[i]!, bx[i]!, by[i]!, x, y);
		if (square < least) {
			least = square;
			nearest.edge = i;
		}
	}
	return Math.sqrt(least);
}
export const nearest = { edge: -1 };

function squareTo(ax: number, ay: number, bx: number, by: number, x: number, y: number): number {
	const [ex, ey] = [bx - ax, by - ay];
	const along = ((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey);
	const part = along < 0 ? 0 : along > 1 ? 1 : along;
	const [dx, dy] = [ax + ex * part - x, ay + ey * part - y];
	return dx * dx + dy * dy;
}

/** What is left of a box of offsets, and what of the region's edge lies in it. Written over by each `shrink`. */
export const box = { x0: 0, y0: 0, x1: 0, y1: 0, edgeX0: 0, edgeY0: 0, edgeX1: 0, edgeY1: 0 };
/** None of the box is forbidden; some is; all is. */
export const free = 0, mixed = 1, forbidden = 2;

/** mm by which a region's edge may lie off for rounding to micrometres; always to the side of keeping offsets. */
const rounding = 0.005;

/** Cuts `box` down to the smallest one that holds every allowed offset in it. */
export function shrink(region: Region): 0 | 1 | 2 {
	if (box.x0 >= region.x1 || box.x1 <= region.x0 || box.y0 >= region.y1 || box.y1 <= region.y0) return free;
	if (!edgeIn(region)) return inside(region, (box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2) ? forbidden : free;
	const { x0, y0, x1, y1 } = box;
	const left = box.edgeX0 - rounding > x0 && inside(region, x0, (y0 + y1) / 2);
	const right = box.edgeX1 + rounding < x1 && inside(region, x1, (y0 + y1) / 2);
	const below = box.edgeY0 - rounding > y0 && inside(region, (x0 + x1) / 2, y0);
	const above = box.edgeY1 + rounding < y1 && inside(region, (x0 + x1) / 2, y1);
	if (left) box.x0 = box.edgeX0 - rounding;
	if (right) box.x1 = box.edgeX1 + rounding;
	if (below) box.y0 = box.edgeY0 - rounding;
	if (above) box.y1 = box.edgeY1 + rounding;
	return mixed;
}

/** The smallest box round the parts of the region's edge that pass through `box`; false when none does. */
function edgeIn({ ax, ay, bx, by }: Region): boolean {
	const [left, down, right, up] = [box.x0 - rounding, box.y0 - rounding, box.x1 + rounding, box.y1 + rounding];
	let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
	for (let i = 0; i < ax.length; i++) {
		const px = ax[i]!, qx = bx[i]!;
		if ((px < left && qx < left) || (px > right && qx > right)) continue;
		const py = ay[i]!, qy = by[i]!;
		if ((py < down && qy < down) || (py > up && qy > up)) continue;
		const dx = qx - px, dy = qy - py;
		let from = 0, to = 1;
		if (dx !== 0) {
			const a = (left - px) / dx, b = (right - px) / dx;
			from = Math.max(from, Math.min(a, b));
			to = Math.min(to, Math.max(a, b));
		}
		if (dy !== 0) {
			const a = (down - py) / dy, b = (up - py) / dy;
			from = Math.max(from, Math.min(a, b));
			to = Math.min(to, Math.max(a, b));
		}
		if (from > to) continue;
		const sx = px + dx * from, tx = px + dx * to, sy = py + dy * from, ty = py + dy * to;
		if (sx < x0) x0 = sx;
		if (tx < x0) x0 = tx;
		if (sx > x1) x1 = sx;
		if (tx > x1) x1 = tx;
		if (sy < y0) y0 = sy;
		if (ty < y0) y0 = ty;
		if (sy > y1) y1 = sy;
		if (ty > y1) y1 = ty;
	}
	if (x0 === Infinity) return false;
	box.edgeX0 = x0;
	box.edgeY0 = y0;
	box.edgeX1 = x1;
	box.edgeY1 = y1;
	return true;
}
