import { error } from '@sveltejs/kit';
import { patternChoice, patternOf, pdfResponse } from '$lib/server/paper.ts';
import { nothingToPrint, ownPaper } from '../../own-paper.server.ts';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = async ({ locals, params, url }) => {
	const paper = await ownPaper(locals, params.class);
	if (!paper) error(404, nothingToPrint);
	return pdfResponse(patternOf(paper, patternChoice(url)), 'pattern', paper);
};
