// Better layouts of many pieces: the cloth is made a little too short, and then pieces that overlap move, one at a time, to
// where they overlap least. Pairs that go on overlapping weigh more and more, so that no deadlock lasts (guided local search:
// Egeblad, Nielsen and Odgaard, "Fast neighborhood search for two- and three-dimensional nesting problems", 2007, from memory).
import { compact } from './compact.ts';
import type { Problem } from './problem.ts';
import type { Found } from './prover.ts';
import { depth, type Region } from './region.ts';
import type { Regions } from './regions.ts';

/** mm of overlap of coarse outlines that the last step, which pushes apart, can mend. */
const nearly = 0.3;

export class Separation {
	private cast: number[] = [];
	private x: number[] = [];
	private y: number[] = [];
	private readonly weights: Float64Array;
	private readonly n: number;
	/** The lies that each piece may change to. */
	private readonly turns: readonly (readonly number[])[];
	private length = 0;

	constructor(private readonly problem: Problem, private readonly regions: Regions, private readonly chance: () => number, start: Found) {
		this.n = start.cast.length;
		this.weights = new Float64Array(this.n * this.n);
		const { lies } = problem;
		this.turns = start.cast.map((id) => lies.filter(({ shape, on }) => shape === lies[id]!.shape && on === lies[id]!.on).map((lie) => lie.id));
		this.from(start);
	}

	from({ cast, places }: Found): void {
		this.cast = [...cast];
		this.x = [...places.x];
		this.y = [...places.y];
	}

	/** A layout within this length, or null when so many rounds have not led to one. */
	within(length: number, rounds: number, stop: () => boolean): Found | null {
		this.length = length;
		this.weights.fill(1);
		for (let k = 0; k < this.n; k++) [this.x[k], this.y[k]] = this.onCloth(this.cast[k]!, this.x[k]!, this.y[k]!);
		for (let round = 0; round < rounds && !stop(); round++) {
			const worst = this.weigh();
			if (worst < nearly) {
				const places = compact(this.problem, this.regions, this.cast, { x: Float64Array.from(this.x), y: Float64Array.from(this.y) }, length);
				if (places) return { cast: [...this.cast], places };
			}
			for (const k of this.overlapping()) this.move(k);
		}
		return null;
	}

	/** Two pieces change places, to begin from elsewhere. */
	swap(): void {
		const [i, j] = [Math.floor(this.chance() * this.n), Math.floor(this.chance() * this.n)];
		[this.x[i], this.x[j]] = [this.x[j]!, this.x[i]!];
		[this.y[i], this.y[j]] = [this.y[j]!, this.y[i]!];
	}

	private onCloth(id: number, x: number, y: number): [number, number] {
		const lie = this.problem.lies[id]!;
		const [left, right] = [-lie.x0, Math.max(-lie.x0, this.length - lie.x1)];
		const [low, high] = lie.on === 'fold' ? [0, 0] : [-lie.y0, Math.max(-lie.y0, this.problem.width - lie.y1)];
		return [Math.min(right, Math.max(left, x)), Math.min(high, Math.max(low, y))];
	}

	private between(i: number, j: number): number {
		return this.deep(this.regions.between(this.cast[i]!, this.cast[j]!, 'coarse'), this.x[j]! - this.x[i]!, this.y[j]! - this.y[i]!);
	}

	private deep(region: Region, x: number, y: number): number {
		if (x <= region.x0 || x >= region.x1 || y <= region.y0 || y >= region.y1) return 0;
		this.regions.work += 2 * region.ax.length + 30;
		return depth(region, x, y);
	}

	/** Pairs that overlap weigh more from now on, the others less again. Gives the worst overlap. */
	private weigh(): number {
		const { n, weights } = this;
		const depths = new Float64Array(n * n);
		let worst = 0;
		for (let i = 0; i < n; i++) {
			depths[i * n + i] = this.onUnusable(this.cast[i]!, this.x[i]!, this.y[i]!);
			worst = Math.max(worst, depths[i * n + i]!);
			for (let j = i + 1; j < n; j++) worst = Math.max(worst, (depths[i * n + j] = this.between(i, j)));
		}
		for (let i = 0; i < n; i++) {
			for (let j = i; j < n; j++) {
				const deep = depths[i * n + j]!;
				const weight = weights[i * n + j]! * (deep > 0.01 ? 1.1 + 0.6 * (deep / worst) : 0.95);
				weights[i * n + j] = weights[j * n + i] = Math.max(1, weight);
			}
		}
		return worst;
	}

	private onUnusable(id: number, x: number, y: number): number {
		if (this.problem.unusable.length === 0) return 0;
		return this.regions.covering(id, 'coarse').reduce((total, region) => total + this.deep(region, x, y), 0);
	}

	private overlapping(): readonly number[] {
		const all = Array.from({ length: this.n }, (_, k) => k).filter((k) => this.cost(k, this.cast[k]!, this.x[k]!, this.y[k]!, Infinity) > 0.01);
		return all.map((k) => [this.chance(), k] as const).sort(([a], [b]) => a - b).map(([, k]) => k);
	}

	/** What piece k would overlap there, each pair by its weight; given up above `most`. */
	private cost(k: number, id: number, x: number, y: number, most: number): number {
		const { n, weights, cast } = this;
		this.regions.work += 8 * n;
		let total = weights[k * n + k]! * this.onUnusable(id, x, y);
		for (let j = 0; j < n && total < most; j++) {
			if (j !== k) total += weights[k * n + j]! * this.deep(this.regions.between(cast[j]!, id, 'coarse'), x - this.x[j]!, y - this.y[j]!);
		}
		return total;
	}

	/** Looks about the whole cloth, near by, and at the corners of what the others forbid; then walks downhill from the best. */
	private move(k: number): void {
		let best = { id: this.cast[k]!, x: this.x[k]!, y: this.y[k]!, cost: this.cost(k, this.cast[k]!, this.x[k]!, this.y[k]!, Infinity) };
		const look = (id: number, x: number, y: number): boolean => {
			const [px, py] = this.onCloth(id, x, y);
			const cost = this.cost(k, id, px, py, best.cost);
			if (cost >= best.cost - 1e-9) return false;
			best = { id, x: px, y: py, cost };
			return true;
		};
		const descend = (from: number): void => {
			for (let step = from; step > 0.05 && best.cost > 0; step /= 2) {
				let again = true;
				while (again && best.cost > 0) {
					again = false;
					for (const [dx, dy] of ways) if (look(best.id, best.x + dx * step, best.y + dy * step)) again = true;
				}
			}
		};
		descend(8);
		const near = best;
		const candidates: (typeof best)[] = [near];
		for (const id of this.turns[k]!) {
			best = { id, x: 0, y: 0, cost: Infinity };
			for (let sample = 0; sample < 24; sample++) look(id, this.chance() * this.length * 1.1 - 0.05 * this.length, (this.chance() * 1.1 - 0.05) * this.problem.width + (this.chance() - 0.5) * 200);
			for (let j = 0; j < this.n; j++) {
				if (j === k) continue;
				const { ax, ay } = this.regions.between(this.cast[j]!, id, 'coarse');
				for (let tries = 0; tries < 4; tries++) {
					const e = Math.floor(this.chance() * ax.length);
					look(id, this.x[j]! + ax[e]!, this.y[j]! + ay[e]!);
				}
			}
			descend(16);
			candidates.push(best);
		}
		const { id, x, y } = candidates.reduce((least, one) => (one.cost < least.cost ? one : least));
		this.cast[k] = id;
		this.x[k] = x;
		this.y[k] = y;
	}
}

const ways: readonly (readonly [number, number])[] = [[1, 0], [-1, 0], [0, 1], [0, -1], [0.7, 0.7], [-0.7, 0.7], [0.7, -0.7], [-0.7, -0.7]];
