// Layouts by guessing: first by orders and turns, a small change to the last one each time, kept when it is no longer; then by
// making the cloth too short for what was found and pushing the pieces apart again, from the best so far and from new starts.
import { arrange, seeded } from './arrange.ts';
import { compact, lengthOf } from './compact.ts';
import type { Problem } from './problem.ts';
import type { Found } from './prover.ts';
import type { Regions } from './regions.ts';
import type { Places } from './search.ts';
import { Separation } from './separate.ts';

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
	private starts = 0;

	constructor(private readonly problem: Problem, private readonly regions: Regions, seed: number, private readonly most: number) {
		this.chance = seeded(seed);
	}

	/** One attempt by order: true when it gave a shorter layout. */
	attempt(): boolean {
		const { choice, order } = this.next();
		const cast = this.castOf(choice);
		const places = this.arranged(cast, order);
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

	/** First from the best, then from another start each time: shorter and shorter until that fails four times. */
	press(stop: () => boolean): void {
		let start = this.best && this.starts === 0 ? this.best : this.start();
		this.starts++;
		const separation = new Separation(this.problem, this.regions, this.chance, start);
		let length = lengthOf(this.problem, start.cast, start.places);
		// A start that reaches beyond the cloth has to come onto it first.
		let aim = length > this.most ? this.most : length * 0.98;
		for (let [step, failed] = [0.02, 0]; failed < 4 && !stop(); aim = length * (1 - step)) {
			const found = separation.within(Math.min(this.most, aim), 30, stop);
			if (found) {
				length = lengthOf(this.problem, found.cast, found.places);
				this.take(found);
				start = found;
				separation.from(found);
			} else {
				failed++;
				step /= 2;
				separation.from(start);
				if (failed % 2 === 0) separation.swap();
			}
		}
	}

	/** Some choice in some order; where it finds no place on the cloth, anywhere. */
	private start(): Found {
		const any = (n: number): number => Math.floor(this.chance() * n);
		const cast = this.castOf(this.problem.kinds.map((kind) => any(kind.choices.length)));
		const places = this.arranged(cast, this.shuffled(cast.length));
		if (places) return { cast, places };
		const reach = Math.min(this.most, 4 * this.problem.width);
		return { cast, places: { x: Float64Array.from(cast, () => this.chance() * reach), y: Float64Array.from(cast, () => this.chance() * this.problem.width) } };
	}

	private castOf(choice: readonly number[]): readonly number[] {
		return choice.flatMap((c, k) => this.problem.kinds[k]!.choices[c]!);
	}

	private arranged(cast: readonly number[], order: readonly number[]): Places | null {
		this.regions.work += 3000 * cast.length ** 2;
		return arrange(this.problem, this.regions, cast, order, this.most);
	}

	private shuffled(count: number): number[] {
		return Array.from({ length: count }, (_, i) => [this.chance(), i] as const).sort(([a], [b]) => a - b).map(([, i]) => i);
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
			return { choice, order: this.shuffled(count) };
		}
		const order = [...this.order];
		const [i, j] = [any(count), any(count)];
		if (this.chance() < 0.5) [order[i], order[j]] = [order[j]!, order[i]!];
		else order.splice(j, 0, ...order.splice(i, 1));
		return { choice, order };
	}
}
