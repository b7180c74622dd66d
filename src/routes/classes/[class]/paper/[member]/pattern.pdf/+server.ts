import { patternChoice, patternOf, pdfResponse } from '$lib/server/paper.ts';
import { learnerPaper } from '../learner-paper.server.ts';
import type { RequestHandler } from './$types';

/** `?sheet=a4|letter`. */
export const GET: RequestHandler = async ({ locals, params, url }) => {
	const paper = await learnerPaper(locals, params);
	return pdfResponse(patternOf(paper, patternChoice(url)), 'pattern', paper);
};
