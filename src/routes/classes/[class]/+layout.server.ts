import { error } from '@sveltejs/kit';
import { readClass } from '$lib/server/class.ts';
import { readMembers } from '$lib/server/member.ts';
import { TABLE } from './table-key.ts';
import type { LayoutServerLoad } from './$types';

/** The places of a class, for a teacher; a helper has the table and who is in it. */
export const load: LayoutServerLoad = async ({ locals: { sql, asker, membership }, params, depends }) => {
	depends(TABLE);
	if (!asker || !membership) error(404);
	const [{ title }, members] = await Promise.all([readClass(sql, asker, params.class), readMembers(sql, asker, params.class)]);
	// How many stand at the door is seen from every place, in as few letters as a phone's top row has room for.
	const asking = members.filter(({ status }) => status === 'asked').map(({ memberId, name }) => ({ memberId, name }));
	const root = `/classes/${params.class}`;
	const teaches = membership.role === 'teacher';
	return {
		teaches, title, asking,
		mast: {
			places: [
				{ href: root, label: 'Table' },
				...(teaches ? [{ href: `${root}/numbers`, label: 'Numbers' }] : []),
				{ href: `${root}/people`, label: asking.length > 0 ? `People (${asking.length})` : 'People' },
				...(teaches ? [{ href: `${root}/rules`, label: 'Rules' }] : [])
			],
			note: title
		}
	};
};
