import { fail, redirect } from '@sveltejs/kit';
import { drawSecret } from '$lib/server/digest.ts';
import { readLink, takeLink } from '$lib/server/link.ts';
import { beginSession, setSessionCookie } from '$lib/server/session.ts';
import type { Actions, PageServerLoad } from './$types';

/** Looking uses nothing up: mail programs and messengers look at links before people do. */
export const load: PageServerLoad = async ({ locals, params }) => {
	const person = await readLink(locals.sql, params.token);
	// The form carries it, so that pressing twice is pressing once.
	return { drawn: drawSecret(), person: person && { name: person.name, first: person.canTeach && !person.hasPassphrase } };
};

export const actions: Actions = {
	async default({ request, locals, params, cookies, url }) {
		const person = await takeLink(locals.sql, params.token, String((await request.formData()).get('drawn') ?? ''));
		if (!person) return fail(400, { issues: [{ code: 'link-used', path: '' }] });
		setSessionCookie(cookies, url, await beginSession(locals.sql, person));
		if (!person.canTeach) redirect(303, '/');
		redirect(303, person.hasPassphrase ? '/classes' : '/account');
	}
};
