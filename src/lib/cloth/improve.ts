// Layouts by trying orders and turns: a small change to the best so far each time, kept when it is no longer.
import { arrange, seeded } from './arrange.ts';
import { compact, lengthOf } from './compact.ts';
import type { Problem } from './problem.ts';
import type { Found } from './prover.ts';
import type { Regions } from './regions.ts';

export interface Layout extends Found {
	readonly length: number;
}

/** mm by which a layout has to be shorter to count as another. */
export const shorterBy = 0.05;

export class Improver {
	best: Layout | null = null;
	private readonly chance: () => number;
	/** The choice of each kind and the order of laying, of the attempt that the next one starts from. */
	private choice: number[] = [];
	private order: number[] = [];
	private held = Infinity;
	private stale = 0;

	constructor(private readonly problem: Problem, private readonly regions: Regions, seed: number, private readonly most: number) {
		this.chance = seeded(seed);
	}

	/** One attempt: true when it gave a shorter layout. */
	attempt(): boolean {
		const { choice, order } = this.next();
		const { kinds } = this.problem;
		const cast = choice.flatMap((c, k) => kinds[k]!.choices[c]!);
		const places = arrange(this.problem, this.regions, cast, order, this.most);
		this.regions.work += 3000 * cast.length ** 2;
		const length = places ? lengthOf(this.problem, cast, places) : Infinity;
		if (length <= this.held || this.stale > 60) {
			[this.choice, this.order] = [choice, order];
			this.stale = length < this.held - shorterBy ? 0 : this.stale + 1;
			this.held = length;
		} else this.stale++;
		if (!places || length > (this.best?.length ?? Infinity) * 1.08) return false;
		const pressed = compact(this.problem, this.regions, cast, places, this.most);
		return pressed !== null && this.take({ cast, places: pressed });
	}

	/** A layout found elsewhere. */
	take(found: Found): boolean {
		const length = lengthOf(this.problem, found.cast, found.places);
		if (length > (this.best?.length ?? Infinity) - shorterBy) return false;
		this.best = { ...found, length };
		return true;
	}

	private next(): { readonly choice: number[]; readonly order: number[] } {
		const { kinds } = this.problem;
		const any = (n: number): number => Math.floor(this.chance() * n);
		const fresh = this.choice.length === 0 || this.stale > 60;
		const choice = fresh ? kinds.map((kind) => any(kind.choices.length)) : [...this.choice];
		if (!fresh && this.chance() < 0.5) {
			const k = any(kinds.length);
			choice[k] = any(kinds[k]!.choices.length);
		}
		const count = choice.reduce((total, c, k) => total + kinds[k]!.choices[c]!.length, 0);
		if (fresh || this.order.length !== count) {
			if (fresh) [this.held, this.stale] = [Infinity, 0];
			return { choice, order: Array.from({ length: count }, (_, i) => [this.chance(), i] as const).sort(([a], [b]) => a - b).map(([, i]) => i) };
		}
		const order = [...this.order];
		const [i, j] = [any(count), any(count)];
		if (this.chance() < 0.5) [order[i], order[j]] = [order[j]!, order[i]!];
		else order.splice(j, 0, ...order.splice(i, 1));
		return { choice, order };
	}
}
