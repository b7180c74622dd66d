import { error } from '@sveltejs/kit';
import { makeCard } from '$lib/server/card.ts';
import { readMembers } from '$lib/server/member.ts';
import { qrOf } from '$lib/ui/qr.ts';
import { isOnlyHere } from '../../join-address.server.ts';
import type { Actions, PageServerLoad } from './$types';

/** Someone who is in the class with a skirt of her own. */
async function learner({ sql, asker }: App.Locals, params: { class: string; member: string }) {
	if (!asker) error(404);
	const member = (await readMembers(sql, asker, params.class)).find(({ memberId }) => memberId === params.member);
	if (!member || member.status !== 'admitted' || member.role === 'teacher') error(404);
	return { member, asker };
}

export const load: PageServerLoad = async ({ locals, params, url, parent }) => {
	const { member: { name, hasCard } } = await learner(locals, params);
	const { mast } = await parent();
	const back = { href: `/classes/${params.class}/people`, label: 'People' };
	return { name, hasCard, onlyHere: isOnlyHere(url), back, mast: { ...mast, back } };
};

export const actions: Actions = {
	/** The secret is in the answer to this request alone. */
	async default({ locals, params, url }) {
		const { member, asker } = await learner(locals, params);
		const { secret, ...card } = await makeCard(locals.sql, asker, member.memberId);
		return { ended: member.hasCard, card: { ...card, address: `${url.origin}/sign-in`, qr: qrOf(`${url.origin}/card#${secret}`) } };
	}
};
