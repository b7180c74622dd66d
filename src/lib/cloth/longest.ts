// The greatest value of a family's unknown (the panels' outer radius, a skirt's length) at which everything still fits on a found
// cloth: halving between one that does and one that provably doesn't. Greater pieces hold smaller ones, so there is one such place.
import { placementsOf, within, type Answer } from './answer.ts';
import { lengthOf } from './compact.ts';
import { Improver } from './improve.ts';
import type { Limit } from './limit.ts';
import { prepare, type Problem } from './problem.ts';
import { Prover, type Found } from './prover.ts';
import { Regions } from './regions.ts';
import type { Family } from './family.ts';

interface Laid extends Found {
	readonly outer: number;
	readonly problem: Problem;
}

/** mm to which the radius is found after it is proved to 1 mm, while there is time. */
const fine = 0.1;

export function* longest(family: Family, limit: Limit, seed: number): Generator<Answer, Answer> {
	const { at, least } = family;
	const length = at(least).cloth.length ?? Infinity;
	let best: Laid | null = null;
	let impossible = false;
	/** No radius from here on fits. */
	let bound = leastImpossible(family);
	const answer = (): Answer => ({
		fits: best ? true : impossible ? false : null, length: best && lengthOf(best.problem, best.cast, best.places), outer: best && best.outer, bound,
		proved: best ? bound - best.outer <= within + 1e-6 : impossible, above: best && Math.max(0, (bound / best.outer - 1) * 100),
		placements: best ? placementsOf(best.problem, best) : [], cutShort: limit.late
	});
	/** One radius: does it fit? A little guessing first, then the search, for a share of the work that is left. */
	const ask = (outer: number, share: number): Found | 'none' | 'open' => {
		const problem = prepare(at(outer));
		const regions = new Regions(problem);
		const stop = limit.part(share);
		limit.of(regions);
		const improver = new Improver(problem, regions, seed, length);
		for (let guesses = 12; guesses > 0 && !improver.best && !stop(); guesses--) improver.attempt();
		const result = improver.best ?? new Prover(problem, regions, length).run(stop);
		if (result !== 'open' && result !== 'none') best = { ...result, outer, problem };
		limit.done(regions);
		return result;
	};
	const first = ask(least, 0.2);
	if (first === 'none') {
		bound = least;
		impossible = true;
	}
	if (!best) return answer();
	yield answer();
	let share = 0.05;
	/** Radii between these two were asked and stayed open. */
	let [openFrom, openTo] = [Infinity, -Infinity];
	while (bound - outerOf(best) > within && !limit.over()) {
		const [below, above] = [Math.min(openFrom, bound) - outerOf(best), bound - Math.max(openTo, outerOf(best))];
		if (openTo > 0 && Math.max(below, above) < within / 2) {
			[openFrom, openTo] = [Infinity, -Infinity];
			continue;
		}
		const outer: number = below >= above ? outerOf(best) + below / 2 : bound - above / 2;
		const result = ask(outer, Math.min(0.5, share));
		if (result === 'none') bound = outer;
		else if (result === 'open') {
			share *= 2;
			[openFrom, openTo] = [Math.min(openFrom, outer), Math.max(openTo, outer)];
		}
		// What was open below a radius that fits fits too.
		if (openTo <= outerOf(best) || openFrom >= bound) [openFrom, openTo] = [Infinity, -Infinity];
		yield answer();
	}
	const enough = limit.part(0.3);
	for (let top = bound; top - outerOf(best) > fine && !enough(); ) {
		const outer: number = (top + outerOf(best)) / 2;
		const result = ask(outer, 0.1);
		if (result === 'none') bound = outer;
		if (result === 'none' || result === 'open') top = outer;
	}
	return answer();
}

/** What `ask` found meanwhile is not seen by the compiler. */
const outerOf = (laid: Laid | null): number => laid?.outer ?? 0;

/** By area, and by what lies on the cloth alone. */
function leastImpossible({ at, least, most }: Family): number {
	const { width, length, unusable, folded } = at(least).cloth;
	const clipped = unusable.map((place) => Math.max(0, Math.min(length!, place.x + place.length) - Math.max(0, place.x)) * Math.max(0, Math.min(width, place.y + place.width) - Math.max(0, place.y)));
	// Places may overlap, so only the largest is surely lost.
	const area = (length! * width - Math.max(0, ...clipped)) / (folded ? 2 : 1);
	const possible = (outer: number): boolean => {
		const problem = prepare(at(outer), 'sizes');
		return problem.kinds.every(({ choices }) => choices.length > 0) && problem.area <= area;
	};
	let [from, to] = [least, most];
	while (to - from > 0.05) {
		const middle = (from + to) / 2;
		if (possible(middle)) from = middle;
		else to = middle;
	}
	return to;
}
