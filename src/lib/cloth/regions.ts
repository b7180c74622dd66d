// The no-fit regions of one problem, each made when it is first asked for.
import { noFit } from './no-fit.ts';
import type { Fineness, Lie, Problem } from './problem.ts';
import { opposite, quarterTurned, regionOf, type Region } from './region.ts';
import { perMm, type Contour } from './polygon.ts';

/** What an edge of a new region costs, in edges looked at (measured). */
const making = 4000;

export class Regions {
	/** Work done so far, in edges looked at: the same for the same input on every machine, as time is not. */
	work = 0;
	private readonly made = new Map<string, Region>();
	private readonly unusable: readonly Contour[];

	constructor(private readonly problem: Problem) {
		this.unusable = problem.unusable.map(({ x, y, length, width }) =>
			Float64Array.from([x, y, x + length, y, x + length, y + width, x, y + width], (mm) => Math.round(mm * perMm)));
	}

	/** Offsets from a's place to b's at which they overlap or stand closer than the gap. */
	between(a: number, b: number, fineness: Fineness): Region {
		return this.once(`${a} ${b} ${fineness}`, () => {
			const [first, second] = [this.problem.lies[a]!, this.problem.lies[b]!];
			const back = this.made.get(`${b} ${a} ${fineness}`);
			if (back) return opposite(back);
			const quarters = quarterTurns(first);
			// Both turned alike, the region turns with them, so four turns of one shape need no more than four regions.
			const level = quarters > 0 ? this.turnedBy(first, -quarters) : undefined;
			const other = quarters > 0 ? this.turnedBy(second, -quarters) : undefined;
			if (level !== undefined && other !== undefined) return quarterTurned(this.between(level, other, fineness), quarters);
			const region = regionOf(noFit(first.spaced[fineness], second.spaced[fineness]));
			this.work += making * region.ax.length;
			return region;
		});
	}

	/** Places of a at which it covers something that can't be used. */
	covering(a: number, fineness: Fineness): readonly Region[] {
		return this.unusable.map((place, i) => this.once(`place ${i} ${a} ${fineness}`, () => regionOf(noFit([place], this.problem.lies[a]!.bare[fineness]))));
	}

	private once(key: string, make: () => Region): Region {
		const held = this.made.get(key);
		if (held) return held;
		const region = make();
		this.made.set(key, region);
		return region;
	}

	/** The same shape turned on by so many quarters, if it may lie so. */
	private turnedBy(lie: Lie, quarters: number): number | undefined {
		const own = quarterTurns(lie);
		if (own < 0 || lie.on !== 'open') return undefined;
		return this.problem.lies.find((one) => one.shape === lie.shape && one.on === 'open' && quarterTurns(one) === (own + quarters + 4) % 4)?.id;
	}
}

/** 0…3, or −1 for a turn that is no quarter. */
function quarterTurns({ turn }: Lie): number {
	const quarters = turn / (Math.PI / 2);
	return Math.abs(quarters - Math.round(quarters)) < 1e-9 ? ((Math.round(quarters) % 4) + 4) % 4 : -1;
}
