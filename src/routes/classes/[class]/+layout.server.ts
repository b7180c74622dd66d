import { error } from '@sveltejs/kit';
import { readClass } from '$lib/server/class.ts';
import type { LayoutServerLoad } from './$types';

/** The places of a class, for a teacher; a helper has the table and who is in it. */
export const load: LayoutServerLoad = async ({ locals: { sql, asker, membership }, params }) => {
	if (!asker || !membership) error(404);
	const { title } = await readClass(sql, asker, params.class);
	const root = `/classes/${params.class}`;
	const teaches = membership.role === 'teacher';
	return {
		teaches,
		mast: {
			places: [
				{ href: root, label: 'Table' },
				...(teaches ? [{ href: `${root}/numbers`, label: 'Numbers' }] : []),
				{ href: `${root}/people`, label: 'People' },
				...(teaches ? [{ href: `${root}/rules`, label: 'Rules' }] : [])
			],
			note: title
		}
	};
};
