import { error } from '@sveltejs/kit';
import { readClass, readJoinCode } from '$lib/server/class.ts';
import { isOnlyHere, joinSheet } from '../join-address.server.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { sql, asker }, params, url, parent }) => {
	if (!asker) error(404);
	const [{ title }, code, { mast }] = await Promise.all([readClass(sql, asker, params.class), readJoinCode(sql, asker, params.class), parent()]);
	const back = { href: `/classes/${params.class}/people`, label: 'People' };
	return { title, sheet: code && joinSheet(code, url), onlyHere: isOnlyHere(url), back, mast: { ...mast, back } };
};
