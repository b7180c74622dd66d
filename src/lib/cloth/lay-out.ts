// A question answered: each answer better than the one before, and each layout checked before it is given.
import type { Answer } from './answer.ts';
import type { Question } from './cloth.ts';
import { wrongsOf } from './layout-check.ts';
import { Limit } from './limit.ts';
import { byOuter, type Family } from './family.ts';
import { prepare } from './problem.ts';
import { longest } from './longest.ts';
import { shortest } from './shortest.ts';

/** Take as many steps as wanted; leaving off is cancelling. `now`: milliseconds of any clock that runs evenly. */
export function* layOut(question: Question, now: () => number, seed = 1): Generator<Answer, Answer> {
	if (question.find === 'outer') return yield* layOutFamily(byOuter(question), question.seconds, now, seed);
	return yield* checked(shortest(prepare(question), new Limit(question.seconds, now), seed), () => question);
}

/** The greatest value of its unknown that fits; `outer` in the answers. */
export function* layOutFamily(family: Family, seconds: number, now: () => number, seed = 1): Generator<Answer, Answer> {
	return yield* checked(longest(family, new Limit(seconds, now), seed), family.at);
}

function* checked(steps: Generator<Answer, Answer>, at: (value: number) => Question): Generator<Answer, Answer> {
	let last: Answer | null = null;
	for (;;) {
		const { done, value } = steps.next();
		// The same layout with a better bound needs no other look.
		if (value.length !== null && (last?.length !== value.length || last.outer !== value.outer)) check(at(value.outer ?? 0), value.length, value);
		last = value;
		if (done) return value;
		yield value;
	}
}

function check(question: Question, length: number, { placements }: Answer): void {
	const wrongs = wrongsOf(question, length, placements);
	if (wrongs.length > 0) throw new Error(`a layout that isn't one: ${JSON.stringify(wrongs.slice(0, 5))}`);
}
