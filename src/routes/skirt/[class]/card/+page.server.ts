import { error } from '@sveltejs/kit';
import { makeCard } from '$lib/server/card.ts';
import { drawSecret } from '$lib/server/digest.ts';
import { qrOf } from '$lib/ui/qr.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent }) => {
	const { root, mast } = await parent();
	// The form carries it, so that sending it twice makes one card.
	return { drawn: drawSecret(), mast: { ...mast, back: { href: root, label: 'My skirt' } } };
};

export const actions: Actions = {
	/** The card before it ends. The secret is in the answer to this request alone. */
	async default({ locals: { sql, asker, membership }, url, request }) {
		if (!asker || !membership) error(404);
		const { secret, ...card } = await makeCard(sql, asker, membership.memberId, String((await request.formData()).get('drawn') ?? ''));
		return { card: { ...card, address: `${url.origin}/sign-in`, qr: qrOf(`${url.origin}/card#${secret}`) } };
	}
};
