// A question answered: each answer better than the one before, and each layout checked before it is given.
import type { Answer } from './answer.ts';
import type { Question } from './cloth.ts';
import { wrongsOf } from './layout-check.ts';
import { Limit } from './limit.ts';
import { withOuter } from './outer.ts';
import { prepare } from './problem.ts';
import { longest } from './longest.ts';
import { shortest } from './shortest.ts';

/** Take as many steps as wanted; leaving off is cancelling. `now`: milliseconds of any clock that runs evenly. */
export function* layOut(question: Question, now: () => number, seed = 1): Generator<Answer, Answer> {
	const limit = new Limit(question.seconds, now);
	const steps = question.find === 'outer' ? longest(question, limit, seed) : shortest(prepare(question), limit, seed);
	let last: Answer | null = null;
	for (;;) {
		const { done, value } = steps.next();
		// The same layout with a better bound needs no other look.
		if (last?.length !== value.length || last?.outer !== value.outer) check(question, value);
		last = value;
		if (done) return value;
		yield value;
	}
}

function check(question: Question, answer: Answer): void {
	if (answer.length === null) return;
	const asked = answer.outer === null ? question : withOuter(question, answer.outer);
	const wrongs = wrongsOf(asked, answer.length, answer.placements);
	if (wrongs.length > 0) throw new Error(`a layout that isn't one: ${JSON.stringify(wrongs.slice(0, 5))}`);
}
