// A question with one unknown: the same pieces at any value of it, those of a greater one holding those of a smaller.
import type { Question } from './cloth.ts';

export interface Family {
	readonly at: (value: number) => Question;
	/** The least value that is asked after, and one that is more than enough, mm. */
	readonly least: number;
	readonly most: number;
}

/** mm from the inner to the outer radius: the least that is asked after. */
export const leastDepth = 10;

/** The outer radius of the panels is the unknown. */
export function byOuter(question: Question): Family {
	const panel = question.pieces.find(({ name }) => name === 'panel');
	if (panel?.shape.kind !== 'sector') throw new Error(`no sector called panel among ${question.pieces.map(({ name }) => name).join(', ')}`);
	const least = panel.shape.inner + leastDepth;
	return { at: (outer) => withOuter(question, outer), least, most: least + 2 * (question.cloth.width + (question.cloth.length ?? 0)) };
}

/** The panels' outer radius is known. */
export function withOuter(question: Question, outer: number): Question {
	return {
		...question,
		pieces: question.pieces.map((piece) => (piece.name === 'panel' && piece.shape.kind === 'sector' ? { ...piece, shape: { ...piece.shape, outer } } : piece))
	};
}
