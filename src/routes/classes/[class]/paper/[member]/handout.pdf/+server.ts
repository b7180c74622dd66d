import { handoutOf, paperNameOf, pdfResponse } from '$lib/server/paper.ts';
import { learnerPaper } from '../learner-paper.server.ts';
import type { RequestHandler } from './$types';

/** `?sheet=a4|letter`, `?figures=1` for her readings: only if it was chosen. */
export const GET: RequestHandler = async ({ locals, params, url }) => {
	const paper = await learnerPaper(locals, params);
	return pdfResponse(handoutOf(paper, paperNameOf(url), url.searchParams.get('figures') === '1'), 'handout', paper);
};
