import { fail, redirect } from '@sveltejs/kit';
import { proveSecret } from '$lib/server/card.ts';
import { beginSession, setSessionCookie } from '$lib/server/session.ts';
import type { Actions } from './$types';

export const actions: Actions = {
	async default({ request, locals, cookies, url }) {
		const secret = String((await request.formData()).get('secret') ?? '');
		// 128 bits in our letters are 26; what is longer is no card's.
		const holder = secret.length <= 64 ? await proveSecret(locals.sql, secret) : null;
		if (!holder) return fail(400, { issues: [{ code: 'card-unknown', path: 'secret' }] });
		setSessionCookie(cookies, url, await beginSession(locals.sql, holder.person, holder.cardId));
		redirect(303, `/skirt/${holder.classId}`);
	}
};
