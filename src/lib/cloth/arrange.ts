// A first layout in an order: each piece goes where it makes the cloth least longer, at a corner between those that lie already.
import type { Problem } from './problem.ts';
import { depth, type Region } from './region.ts';
import type { Regions } from './regions.ts';
import type { Places } from './search.ts';

/** Numbers 0…1 that look like chance and are the same for the same seed (mulberry32, from memory). */
export function seeded(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
	};
}

interface Segment {
	readonly ax: number;
	readonly ay: number;
	readonly bx: number;
	readonly by: number;
}

/** Places for the cast when its pieces are laid in this order, none reaching beyond `most`; null when one finds no place. */
export function arrange(problem: Problem, regions: Regions, cast: readonly number[], order: readonly number[], most: number): Places | null {
	const places: Places = { x: new Float64Array(cast.length), y: new Float64Array(cast.length) };
	const done: number[] = [];
	for (const k of order) {
		const lie = problem.lies[cast[k]!]!;
		const around: { readonly region: Region; readonly x: number; readonly y: number }[] = done.map((j) =>
			({ region: regions.between(cast[j]!, lie.id, 'coarse'), x: places.x[j]!, y: places.y[j]! }));
		if (problem.unusable.length > 0) for (const region of regions.covering(lie.id, 'coarse')) around.push({ region, x: 0, y: 0 });
		const [left, right] = [-lie.x0, most - lie.x1];
		const [low, high] = lie.on === 'fold' ? [0, 0] : [-lie.y0, problem.width - lie.y1];
		if (left > right + 1e-9 || low > high + 1e-9) return null;
		let [bestX, bestY] = [Infinity, Infinity];
		const look = (x: number, y: number): void => {
			if (x > bestX - 1e-9 && (x > bestX + 1e-9 || y >= bestY)) return;
			if (x < left - 1e-9 || x > right + 1e-9 || y < low - 1e-9 || y > high + 1e-9) return;
			for (const { region, x: ox, y: oy } of around) if (depth(region, x - ox, y - oy) > 0.002) return;
			[bestX, bestY] = [x, y];
		};
		look(left, low);
		look(left, high);
		const segments: Segment[] = [];
		for (const { region: { ax, ay, bx, by, x0, y0, x1, y1 }, x, y } of around) {
			if (x + x1 < left || x + x0 > right || y + y1 < low || y + y0 > high) continue;
			for (let e = 0; e < ax.length; e++) {
				const segment = { ax: ax[e]! + x, ay: ay[e]! + y, bx: bx[e]! + x, by: by[e]! + y };
				look(segment.ax, segment.ay);
				for (const level of [low, high]) {
					if (segment.ay < level === segment.by < level) continue;
					look(segment.ax + ((segment.bx - segment.ax) * (level - segment.ay)) / (segment.by - segment.ay), level);
				}
				if (segment.ax < left !== segment.bx < left) look(left, segment.ay + ((segment.by - segment.ay) * (left - segment.ax)) / (segment.bx - segment.ax));
				segments.push(segment);
			}
		}
		crossings(segments, look, () => bestX);
		if (bestX === Infinity) return null;
		places.x[k] = bestX;
		places.y[k] = bestY;
		done.push(k);
	}
	return places;
}

/** Where the regions' edges cross: the corners that pieces make between them. Those beyond the best so far aren't asked after. */
function crossings(segments: readonly Segment[], look: (x: number, y: number) => void, best: () => number): void {
	const sorted = segments.toSorted((a, b) => Math.min(a.ax, a.bx) - Math.min(b.ax, b.bx));
	sorted.forEach((a, i) => {
		if (Math.min(a.ax, a.bx) > best()) return;
		const far = Math.max(a.ax, a.bx);
		const [low, high] = [Math.min(a.ay, a.by), Math.max(a.ay, a.by)];
		for (let j = i + 1; j < sorted.length; j++) {
			const b = sorted[j]!;
			if (Math.min(b.ax, b.bx) > far) break;
			if (Math.max(b.ay, b.by) < low || Math.min(b.ay, b.by) > high) continue;
			const [dx, dy, ex, ey] = [a.bx - a.ax, a.by - a.ay, b.bx - b.ax, b.by - b.ay];
			const turn = dx * ey - dy * ex;
			if (turn === 0) continue;
			const s = ((b.ax - a.ax) * ey - (b.ay - a.ay) * ex) / turn;
			const t = ((b.ax - a.ax) * dy - (b.ay - a.ay) * dx) / turn;
			if (s > 0 && s < 1 && t > 0 && t < 1) look(a.ax + dx * s, a.ay + dy * s);
		}
	});
}
