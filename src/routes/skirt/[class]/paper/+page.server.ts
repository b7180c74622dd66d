import { error } from '@sveltejs/kit';
import type { PaperName } from '$lib/paper/sheet.ts';
import { ownPaper } from '../own-paper.server.ts';
import { handoutOf, patternCountOf } from '$lib/server/paper.ts';
import type { PageServerLoad } from './$types';

const papers: readonly PaperName[] = ['a4', 'letter'];

export const load: PageServerLoad = async ({ locals, params, parent }) => {
	const { root, mast } = await parent();
	const paper = await ownPaper(locals, params.class);
	return {
		counts: paper && papers.map((name) => ({ paper: name, handout: handoutOf(paper, name, false).length, pattern: patternCountOf(paper, name) })),
		mast: { ...mast, back: { href: root, label: 'My skirt' } }
	};
};
