import { error } from '@sveltejs/kit';
import { readOpenings } from '$lib/server/opening.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { sql, asker, membership }, parent }) => {
	if (!asker || !membership) error(404);
	const { root, mast } = await parent();
	return { openings: await readOpenings(sql, asker, membership.memberId), mast: { ...mast, back: { href: root, label: 'My skirt' } } };
};
