import { error } from '@sveltejs/kit';
import { makeCard } from '$lib/server/card.ts';
import { qrOf } from '$lib/ui/qr.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent }) => {
	const { root, mast } = await parent();
	return { mast: { ...mast, back: { href: root, label: 'My skirt' } } };
};

export const actions: Actions = {
	/** The card before it ends. The secret is in the answer to this request alone. */
	async default({ locals: { sql, asker, membership }, url }) {
		if (!asker || !membership) error(404);
		const { secret, ...card } = await makeCard(sql, asker, membership.memberId);
		return { card: { ...card, address: `${url.origin}/sign-in`, qr: qrOf(`${url.origin}/card#${secret}`) } };
	}
};
