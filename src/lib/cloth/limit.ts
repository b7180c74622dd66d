// How long an answer may take. Work is counted, so that one input gives one answer; the clock is asked only so that a slow
// machine keeps the time too.
import type { Regions } from './regions.ts';

/** Edges looked at in a second: half of what one core of 2020's did (measured), so that the count ends it and not the clock. */
export const perSecond = 120e6;

export class Limit {
	/** The clock ended it, not the count. */
	late = false;
	private readonly end: number;
	private counted: Regions[] = [];
	private past = 0;
	private asked = 0;

	constructor(private readonly seconds: number, private readonly now: () => number) {
		this.end = now() + seconds * 1000;
	}

	of(regions: Regions): void {
		this.counted.push(regions);
	}

	/** What it did counts on, though it is let go. */
	done(regions: Regions): void {
		this.counted = this.counted.filter((one) => one !== regions);
		this.past += regions.work;
	}

	private get work(): number {
		return this.counted.reduce((total, { work }) => total + work, this.past);
	}

	over(): boolean {
		if (this.work >= this.seconds * perSecond) return true;
		if ((this.asked++ & 3) === 0 && this.now() > this.end) this.late = true;
		return this.late;
	}

	/** Over when that share of what is left now is spent. */
	part(share: number): () => boolean {
		const most = this.work + (this.seconds * perSecond - this.work) * share;
		return () => this.work >= most || this.over();
	}
}
