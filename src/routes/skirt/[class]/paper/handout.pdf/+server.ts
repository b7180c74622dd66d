import { error } from '@sveltejs/kit';
import { handoutOf, paperNameOf, pdfResponse } from '$lib/server/paper.ts';
import { nothingToPrint, ownPaper } from '../../own-paper.server.ts';
import type { RequestHandler } from './$types';

/** `?sheet=a4|letter`, `?figures=1` for her readings: only if she chose it. */
export const GET: RequestHandler = async ({ locals, params, url }) => {
	const paper = await ownPaper(locals, params.class);
	if (!paper) error(404, nothingToPrint);
	return pdfResponse(handoutOf(paper, paperNameOf(url), url.searchParams.get('figures') === '1'), 'handout', paper);
};
