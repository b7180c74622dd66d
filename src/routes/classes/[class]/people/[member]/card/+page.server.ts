import { error } from '@sveltejs/kit';
import { makeCard } from '$lib/server/card.ts';
import { drawSecret } from '$lib/server/digest.ts';
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
	// The form carries it, so that sending it twice makes one card.
	return { drawn: drawSecret(), name, hasCard, onlyHere: isOnlyHere(url), back, mast: { ...mast, back } };
};

export const actions: Actions = {
	/** The secret is in the answer to this request alone. */
	async default({ locals, params, url, request }) {
		const { member, asker } = await learner(locals, params);
		const { secret, ...card } = await makeCard(locals.sql, asker, member.memberId, String((await request.formData()).get('drawn') ?? ''));
		return { ended: member.hasCard, card: { ...card, address: `${url.origin}/sign-in`, qr: qrOf(`${url.origin}/card#${secret}`) } };
	}
};
