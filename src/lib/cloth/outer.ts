// The question for the greatest outer radius, asked at one radius.
import type { Question } from './cloth.ts';

/** mm from the inner to the outer radius: the least that is asked after. */
export const leastDepth = 10;

/** The panels' outer radius is known. */
export function withOuter(question: Question, outer: number): Question {
	return {
		...question,
		pieces: question.pieces.map((piece) => (piece.name === 'panel' && piece.shape.kind === 'sector' ? { ...piece, shape: { ...piece.shape, outer } } : piece))
	};
}
