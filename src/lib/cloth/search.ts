// Can these lies go on a cloth of this length? Branch and bound on the offsets between pieces.
//
// A node keeps, for every two pieces, a box that holds the offset from one to the other in any layout that is left; the cloth
// itself counts as piece 0. Boxes shrink to what their no-fit regions allow, and by going round through third pieces
// (shortest paths between differences: school graph theory). What is left of a box is halved until nothing is left anywhere,
// which proves that there is no layout, or until a layout shows itself. The regions are of inner polygons, so that no true
// layout is ever ruled out; a layout counts only when the outer ones agree.
import { box, depth, forbidden, free, shrink, type Region } from './region.ts';
import type { Problem } from './problem.ts';
import type { Regions } from './regions.ts';

/** Where each lie's origin is. */
export interface Places {
	readonly x: Float64Array;
	readonly y: Float64Array;
}

interface Pair {
	readonly i: number;
	readonly j: number;
	readonly inner: readonly Region[];
	readonly outer: readonly Region[];
}
interface Node {
	/** x[a·m + b]: the most by which b's place lies beyond a's. */
	readonly x: Float64Array;
	readonly y: Float64Array;
	/** 1 where a pair can't overlap any more. */
	readonly free: Uint8Array;
}

/** mm: a box no larger than this is not halved again. */
const smallest = 0.05;
/** mm: pieces that overlap by less are taken to touch. */
export const touching = 0.004;

export class Search {
	/** Nodes looked at. */
	nodes = 0;
	/** A box came down to nothing and neither a layout nor its impossibility showed: there is no proof at this length. */
	unsure = false;
	private readonly m: number;
	private readonly pairs: Pair[] = [];
	private readonly pairOf: Int16Array;
	private readonly stack: Node[] = [];
	private readonly dirty: Uint8Array;

	constructor(
		problem: Problem,
		private readonly regions: Regions,
		readonly cast: readonly number[],
		length: number,
		private readonly mend: (places: Places) => Places | null
	) {
		const m = (this.m = cast.length + 1);
		this.pairOf = new Int16Array(m * m).fill(-1);
		const add = (pair: Pair): void => {
			this.pairOf[pair.i * m + pair.j] = this.pairOf[pair.j * m + pair.i] = this.pairs.length;
			this.pairs.push(pair);
		};
		const lies = cast.map((id) => problem.lies[id]!);
		lies.forEach((lie, k) => {
			if (problem.unusable.length > 0) add({ i: 0, j: k + 1, inner: regions.covering(lie.id, 'inner'), outer: regions.covering(lie.id, 'outer') });
			for (let other = 0; other < k; other++) {
				const before = cast[other]!;
				add({ i: other + 1, j: k + 1, inner: [regions.between(before, lie.id, 'inner')], outer: [regions.between(before, lie.id, 'outer')] });
			}
		});
		this.dirty = new Uint8Array(this.pairs.length);
		const root: Node = { x: new Float64Array(m * m).fill(Infinity), y: new Float64Array(m * m).fill(Infinity), free: new Uint8Array(this.pairs.length) };
		for (let a = 0; a < m; a++) root.x[a * m + a] = root.y[a * m + a] = 0;
		lies.forEach((lie, k) => {
			root.x[k + 1] = length - lie.x1;
			root.x[(k + 1) * m] = lie.x0;
			root.y[k + 1] = lie.on === 'fold' ? 0 : problem.width - lie.y1;
			root.y[(k + 1) * m] = lie.y0;
		});
		// The whole layout mirrored across the cloth is a layout too: of the two, the one whose first piece lies in the lower half.
		if (symmetric(problem) && lies.every(({ id, mirror }) => mirror === id)) root.y[1] = (problem.width - lies[0]!.y0 - lies[0]!.y1) / 2;
		// Alike, so either may be called the first along the cloth.
		for (let k = 1; k < cast.length; k++) if (cast[k] === cast[k - 1]) root.x[(k + 1) * m + k] = 0;
		for (const d of [root.x, root.y]) if (!this.close(d)) return;
		this.dirty.fill(1);
		if (this.settle(root)) this.stack.push(root);
	}

	/** How many nodes are waiting. */
	get open(): number {
		return this.stack.length;
	}

	/** Looks at so many nodes at most. A layout, or null; with none open and none found, there is no layout. */
	run(nodes: number): Places | null {
		for (let left = nodes; left > 0; left--) {
			const node = this.stack.pop();
			if (!node) return null;
			this.nodes++;
			const found = this.layoutOf(node);
			if (found) return found;
			this.branch(node);
		}
		return null;
	}

	private close(d: Float64Array): boolean {
		const { m } = this;
		for (let k = 0; k < m; k++) {
			for (let a = 0; a < m; a++) {
				for (let b = 0; b < m; b++) d[a * m + b] = Math.min(d[a * m + b]!, d[a * m + k]! + d[k * m + b]!);
			}
		}
		for (let a = 0; a < m; a++) if (d[a * m + a]! < -1e-9) return false;
		return true;
	}

	/** b's place lies at most `most` beyond a's: and what follows for all others. False when that can't be. */
	private tighten(node: Node, d: Float64Array, a: number, b: number, most: number): boolean {
		const { m, pairOf, dirty } = this;
		if (most >= d[a * m + b]!) return true;
		if (most + d[b * m + a]! < -1e-9) return false;
		for (let p = 0; p < m; p++) {
			const toA = d[p * m + a]! + most;
			for (let q = 0; q < m; q++) {
				const through = toA + d[b * m + q]!;
				const now = d[p * m + q]!;
				if (through >= now) continue;
				d[p * m + q] = through;
				const pair = pairOf[p * m + q]!;
				// Less than a fiftieth is not worth another look, though it is kept.
				if (pair >= 0 && !node.free[pair] && now - through > 0.02 * (now + d[q * m + p]!)) dirty[pair] = 1;
			}
		}
		return true;
	}

	/** Shrinks every box until no more follows. False when nothing is left. */
	private settle(node: Node): boolean {
		const { m, pairs, dirty } = this;
		for (let again = true; again; ) {
			again = false;
			for (let p = 0; p < pairs.length; p++) {
				if (!dirty[p]) continue;
				dirty[p] = 0;
				again = true;
				const { i, j } = pairs[p]!;
				this.take(node, i, j);
				const { x0, y0, x1, y1 } = box;
				const state = this.shrunk(pairs[p]!.inner);
				if (state === forbidden) return this.none();
				if (state === free) node.free[p] = 1;
				const { x0: nx0, y0: ny0, x1: nx1, y1: ny1 } = box;
				if (nx0 > x0 && !this.tighten(node, node.x, j, i, -nx0)) return this.none();
				if (nx1 < x1 && !this.tighten(node, node.x, i, j, nx1)) return this.none();
				if (ny0 > y0 && !this.tighten(node, node.y, j, i, -ny0)) return this.none();
				if (ny1 < y1 && !this.tighten(node, node.y, i, j, ny1)) return this.none();
			}
		}
		return true;
	}

	private none(): false {
		this.dirty.fill(0);
		return false;
	}

	private take({ x, y }: Node, i: number, j: number): void {
		const { m } = this;
		box.x0 = -x[j * m + i]!;
		box.x1 = x[i * m + j]!;
		box.y0 = -y[j * m + i]!;
		box.y1 = y[i * m + j]!;
	}

	private shrunk(regions: readonly Region[]): 0 | 1 | 2 {
		let state: 0 | 1 | 2 = free;
		for (const region of regions) {
			this.regions.work += region.ax.length + 20;
			const one = shrink(region);
			if (one === forbidden || box.x0 > box.x1 || box.y0 > box.y1) return forbidden;
			if (one > state) state = one;
		}
		return state;
	}

	private branch(node: Node): void {
		this.regions.work += 40 * this.m * this.m;
		const split = this.choose(node);
		if (!split) {
			this.unsure = true;
			return;
		}
		const { i, j, across, at } = split;
		const d = across ? 'y' : 'x';
		for (const upper of [true, false]) {
			const child: Node = { x: node.x.slice(), y: node.y.slice(), free: node.free.slice() };
			this.dirty[this.pairOf[i * this.m + j]!] = 1;
			const kept = upper ? this.tighten(child, child[d], j, i, -at) : this.tighten(child, child[d], i, j, at);
			if (!kept) this.none();
			else if (this.settle(child)) this.stack.push(child);
		}
	}

	/** The pair and the line whose two sides leave least. */
	private choose(node: Node): { i: number; j: number; across: boolean; at: number } | null {
		let best: { i: number; j: number; across: boolean; at: number } | null = null;
		let most = -1;
		this.pairs.forEach(({ i, j, inner }, p) => {
			if (node.free[p]) return;
			this.take(node, i, j);
			const { x0, y0, x1, y1 } = box;
			const [wide, high] = [x1 - x0, y1 - y0];
			if (Math.max(wide, high) < smallest) return;
			this.shrunk(inner);
			const { edgeX0, edgeX1, edgeY0, edgeY1 } = box;
			const whole = size(wide, high);
			const weight = Math.log(1 + Math.max(wide, high));
			const look = (across: boolean, at: number): void => {
				const [from, to] = across ? [y0, y1] : [x0, x1];
				if (at - from < 0.02 * (to - from) || to - at < 0.02 * (to - from) || to - from < smallest) return;
				let score = weight;
				for (const upper of [true, false]) {
					box.x0 = x0;
					box.x1 = x1;
					box.y0 = y0;
					box.y1 = y1;
					if (across) {
						if (upper) box.y0 = at;
						else box.y1 = at;
					} else if (upper) box.x0 = at;
					else box.x1 = at;
					const state = this.shrunk(inner);
					score *= state === forbidden ? 1 : 1.0001 - size(box.x1 - box.x0, box.y1 - box.y0) / whole;
				}
				if (score > most) {
					most = score;
					best = { i, j, across, at };
				}
			};
			look(false, (x0 + x1) / 2);
			look(true, (y0 + y1) / 2);
			look(false, edgeX0);
			look(false, edgeX1);
			look(true, edgeY0);
			look(true, edgeY1);
		});
		return best;
	}

	/** A layout among those left, if the ones nearest the cloth's start, its end, or between them happen to be one. */
	private layoutOf(node: Node): Places | null {
		const { m } = this;
		let loosest = 0;
		this.pairs.forEach(({ i, j }, p) => {
			if (!node.free[p]) loosest = Math.max(loosest, node.x[i * m + j]! + node.x[j * m + i]!, node.y[i * m + j]! + node.y[j * m + i]!);
		});
		for (const part of [0, 0.5, 1]) {
			const places: Places = { x: new Float64Array(m - 1), y: new Float64Array(m - 1) };
			for (let k = 1; k < m; k++) {
				places.x[k - 1] = -node.x[k * m]! * (1 - part) + node.x[k]! * part;
				places.y[k - 1] = -node.y[k * m]! * (1 - part) + node.y[k]! * part;
			}
			if (this.fits(places)) return places;
			if (part === 0.5 && loosest < 20 && (this.nodes & 7) === 0) {
				const mended = this.mend(places);
				if (mended) return mended;
			}
		}
		return null;
	}

	private fits({ x, y }: Places): boolean {
		for (const { i, j, outer } of this.pairs) {
			const dx = x[j - 1]! - (i > 0 ? x[i - 1]! : 0);
			const dy = y[j - 1]! - (i > 0 ? y[i - 1]! : 0);
			for (const region of outer) if (depth(region, dx, dy) > touching) return false;
		}
		return true;
	}
}

/** May a layout be turned by half, or mirrored across the cloth, where its pieces may? */
export const symmetric = ({ folded, unusable }: Problem): boolean => !folded && unusable.length === 0;

/** So that a box without width still counts its height. */
const size = (wide: number, high: number): number => (wide + 0.5) * (high + 0.5);
