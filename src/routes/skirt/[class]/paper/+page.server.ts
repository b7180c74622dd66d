import { DESK_PAPERS, PAPER_NAMES, PAPERS } from '$lib/paper/sheet.ts';
import { ownPaper } from '../own-paper.server.ts';
import { handoutOf, patternChoice, patternCountOf } from '$lib/server/paper.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, parent, url }) => {
	const { root, mast } = await parent();
	const paper = await ownPaper(locals, params.class);
	const choice = patternChoice(url);
	return {
		choice,
		handouts: paper && DESK_PAPERS.slice(0, 2).map((name) => ({ paper: name, says: PAPERS[name].says, sheets: handoutOf(paper, name, false).length })),
		patterns: paper && PAPER_NAMES.map((name) => ({ paper: name, says: PAPERS[name].says, sheets: patternCountOf(paper, { ...choice, paper: name }) })),
		mast: { ...mast, back: { href: root, label: 'My skirt' } }
	};
};
