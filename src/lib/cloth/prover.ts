// Is there a layout within this length, whichever way its pieces lie? Every choice of lies is searched, a little each in turn.
import { compact } from './compact.ts';
import type { Problem } from './problem.ts';
import type { Regions } from './regions.ts';
import { Search, symmetric, type Places } from './search.ts';

export interface Found {
	readonly cast: readonly number[];
	readonly places: Places;
}

/** Nodes for a choice of the larger pieces alone, to see whether the smaller ones need be asked about at all. */
const glance = 30;
/** Choices kept open at once; with more there is no proof in any useful time. */
const mostOpen = 4000;

export class Prover {
	/** Something was left undecided for good, so that an end without a layout proves nothing. */
	unsure = false;
	private open: Search[] = [];
	private readonly castsLeft: Generator<Search | Found, void>;
	private listed = false;
	private share = 200;
	private turn = 0;

	/** `welcome`: a layout this long is good news too, though it is longer than what is asked after. */
	constructor(private readonly problem: Problem, private readonly regions: Regions, readonly length: number, private readonly welcome = length) {
		this.castsLeft = this.casts([], 0);
	}

	/** Goes on until `stop` says so: a layout, or 'none' when there is provably none, or 'open'. */
	run(stop: () => boolean): Found | 'none' | 'open' {
		while (!stop()) {
			if (!this.listed) {
				const next = this.castsLeft.next();
				if (next.done) this.listed = true;
				else if (!(next.value instanceof Search)) return next.value;
				else {
					const found = this.go(next.value, 100);
					if (found) return found;
					if (next.value.open > 0) this.open.push(next.value);
				}
				if (this.open.length > mostOpen) this.unsure = true;
				continue;
			}
			if (this.open.length === 0) return this.unsure ? 'open' : 'none';
			if (this.turn >= this.open.length) {
				this.turn = 0;
				this.share *= 2;
			}
			const search = this.open[this.turn]!;
			for (let left = this.share; left > 0 && search.open > 0 && !stop(); left -= 20) {
				const found = this.go(search, 20);
				if (found) return found;
			}
			if (search.open > 0) this.turn++;
			else this.open.splice(this.turn, 1);
		}
		return 'open';
	}

	private go(search: Search, nodes: number): Found | null {
		const places = search.run(nodes);
		this.unsure ||= search.unsure;
		return places && { cast: search.cast, places };
	}

	private begin(cast: readonly number[]): Search {
		return new Search(this.problem, this.regions, cast, this.length, (places) => compact(this.problem, this.regions, cast, places, this.welcome, 3));
	}

	/** Largest pieces first; where they alone can't lie, nothing follows. */
	private *casts(chosen: readonly number[], kind: number): Generator<Search | Found, void> {
		const { kinds } = this.problem;
		for (const choice of kinds[kind]!.choices) {
			const cast = [...chosen, ...choice];
			const last = kind === kinds.length - 1;
			if (last && !this.first(cast)) continue;
			const search = this.begin(cast);
			if (last) {
				if (search.open > 0) yield search;
				continue;
			}
			if (kinds.length > 2 || choice.length > 1) {
				const partly = search.run(glance);
				if (!partly && search.open === 0 && !search.unsure) continue;
			} else if (search.open === 0) continue;
			yield* this.casts(cast, kind + 1);
		}
	}

	/** Of a choice and what it becomes with the whole layout turned by half or mirrored, only the first is searched. */
	private first(cast: readonly number[]): boolean {
		if (!symmetric(this.problem)) return true;
		const { lies } = this.problem;
		const own = cast.toSorted((a, b) => a - b);
		const image = (of: readonly number[], by: 'half' | 'mirror'): readonly number[] => of.map((id) => (id < 0 ? -1 : lies[id]![by]));
		const halved = image(cast, 'half');
		return [halved, image(cast, 'mirror'), image(halved, 'mirror')].every((other) => other.includes(-1) || before(own, other.toSorted((a, b) => a - b)));
	}
}

function before(a: readonly number[], b: readonly number[]): boolean {
	const differ = a.findIndex((id, i) => id !== b[i]);
	return differ < 0 || a[differ]! < b[differ]!;
}
