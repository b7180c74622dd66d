// The shortest layout of a question, better and better, with what is proved so far.
import { placementsOf, within, type Answer } from './answer.ts';
import { Improver, shorterBy } from './improve.ts';
import type { Problem } from './problem.ts';
import { Prover } from './prover.ts';
import { Regions } from './regions.ts';
import { Limit } from './limit.ts';

export function* shortest(problem: Problem, limit: Limit, seed: number): Generator<Answer, Answer> {
	const regions = new Regions(problem);
	limit.of(regions);
	const most = problem.length ?? longest(problem);
	const improver = new Improver(problem, regions, seed, most);
	/** No layout is shorter than this. */
	let bound = leastLength(problem);
	let impossible = false;
	const proved = (): boolean => impossible || (improver.best !== null && improver.best.length - bound <= within + 1e-6);
	const answer = (): Answer => answerOf(problem, improver, bound, impossible, limit);
	const pieces = problem.kinds.reduce((count, { copies }) => count + copies.length, 0);
	for (let tries = pieces > 5 ? 40 : 12; tries > 0 && !limit.over(); tries--) improver.attempt();
	yield answer();
	/** To within 1 mm of the best: is there a layout that is shorter still? */
	const aim = (): number => (improver.best ? improver.best.length - within : most);
	let held: Prover | null = null;
	const prove = (share: number, target = aim()): 'none' | 'open' | 'shorter' => {
		// At the same length it goes on from where it was broken off.
		if (held?.length !== target) held = new Prover(problem, regions, target, Math.max(target, (improver.best?.length ?? most) - 2 * shorterBy));
		const result = target <= bound ? 'none' : held.run(limit.part(share));
		if (result === 'open') return 'open';
		if (result !== 'none') return improver.take(result) ? 'shorter' : 'open';
		bound = Math.max(bound, target);
		impossible = !improver.best && target >= most;
		return 'none';
	};
	const press = (share: number): void => {
		const stop = limit.part(share);
		while (!stop()) improver.press(stop);
	};
	// A proof is quick where nothing shorter is left and slow where something is: so each try at it is soon broken off, then longer.
	for (let share = 0.02; share < 0.5 && !proved() && !limit.over(); yield answer()) {
		if (prove(share) !== 'open') continue;
		press(pieces > 9 ? 2 * share : share);
		share *= 2;
	}
	// Without a proof to 1 mm: the greatest length that still can be ruled out, nearer and nearer; and better layouts, in turn.
	for (let part = 0.5; !proved() && !limit.over(); yield answer()) {
		press(0.15);
		const result = prove(0.3, bound + (aim() - bound) * part);
		if (result === 'none') part = Math.min(1, part * 1.5);
		else if (result === 'open') part /= 2;
	}
	return answer();
}

/** Every piece behind the last: longer no layout needs to be. */
function longest({ kinds, lies }: Problem): number {
	return kinds.reduce((total, { copies, choices }) => total + copies.length * Math.max(...choices[0]!.map((id) => lies[id]!.x1 - lies[id]!.x0)), 0);
}

/** By area, and by the longest piece as it lies shortest. */
function leastLength({ area, width, kinds, lies }: Problem): number {
	const longestPiece = Math.max(...kinds.map(({ choices }) => Math.min(...choices.flat().map((id) => lies[id]!.x1 - lies[id]!.x0))));
	return Math.max(area / width, longestPiece);
}

function answerOf(problem: Problem, { best }: Improver, bound: number, impossible: boolean, limit: Limit): Answer {
	return {
		fits: best ? true : impossible ? false : null, length: best?.length ?? null, outer: null, bound,
		proved: best ? best.length - bound <= within + 1e-6 : impossible, above: best ? Math.max(0, (best.length / bound - 1) * 100) : null,
		placements: best ? placementsOf(problem, best) : [], cutShort: limit.late
	};
}
