// Pieces and cloths for the tests, in cm and degrees as the layout command takes them.
import { layOut } from '../../src/lib/cloth/lay-out.ts';
import { checkQuestion } from '../../src/lib/cloth/question.ts';
import type { Answer } from '../../src/lib/cloth/answer.ts';
import type { Question } from '../../src/lib/cloth/cloth.ts';

export const straight = [0, 180];
export const quarters = [0, 90, 180, 270];

export const sector = (name: string, count: number, [inner, outer, angle]: readonly [number, number, number], turns: readonly number[], edgeOnGrain = false) =>
	({ name, count, sector: { inner, outer, angle, strip: 1.5 }, ...(edgeOnGrain && { edgeOnGrain }), turns });
export const rectangle = (name: string, count: number, length: number, width: number, turns: readonly number[]) => ({ name, count, rectangle: { length, width }, turns });

export function question(value: unknown): Question {
	const read = checkQuestion(value);
	if (!read.ok) throw new Error(JSON.stringify(read.issues));
	return read.value;
}

/** The last answer. The clock stands still unless one is given, so that the count of work alone ends it. */
export function answer(value: unknown, seed = 1, now: () => number = () => 0): Answer {
	const steps = layOut(question(value), now, seed);
	let step = steps.next();
	while (!step.done) step = steps.next();
	return step.value;
}

/** Numbers 0…1, the same for the same seed (xorshift32, Marsaglia 2003, from memory). */
export function seeded(seed: number): () => number {
	let state = seed * 2654435761 || 1;
	return () => {
		state ^= state << 13;
		state ^= state >>> 17;
		state ^= state << 5;
		return (state >>> 0) / 4294967296;
	};
}
