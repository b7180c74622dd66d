import { error, fail, redirect } from '@sveltejs/kit';
import { makeCard } from '$lib/server/card.ts';
import { drawSecret } from '$lib/server/digest.ts';
import { askToJoin, membershipOf, readInvitation } from '$lib/server/member.ts';
import { beginSession, setSessionCookie } from '$lib/server/session.ts';
import { qrOf } from '$lib/ui/qr.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, url }) => {
	const invitation = await readInvitation(locals.sql, params.code);
	// Codes run out while people wait: after asking, the class is in the address too.
	const classId = url.searchParams.get('class') ?? invitation?.classId ?? null;
	const membership = locals.asker && classId ? await membershipOf(locals.sql, locals.asker, classId) : null;
	return {
		// The forms carry it, so that sending one twice asks once and makes one card.
		drawn: drawSecret(),
		title: invitation?.title ?? null,
		membership: membership && { status: membership.status, name: membership.name, role: membership.role, classId: membership.classId },
		/** A tablet that is passed round may still be signed in as someone else. */
		signedInAs: membership ? null : (locals.asker?.person.name ?? null),
		hasCode: invitation !== null
	};
};

export const actions: Actions = {
	async ask({ request, locals, params, cookies, url }) {
		const form = await request.formData();
		const name = String(form.get('name') ?? '');
		const joined = await askToJoin(locals.sql, locals.asker, { code: params.code, name }, String(form.get('drawn') ?? ''));
		if (!joined.ok) return fail(400, { issues: joined.issues, typed: { name } });
		if (!locals.asker) setSessionCookie(cookies, url, await beginSession(locals.sql, joined.value.person));
		redirect(303, `/join/${encodeURIComponent(params.code)}?class=${joined.value.membership.classId}`);
	},
	/** Her card is shown this once. Making another ends it. */
	async card({ request, locals, url }) {
		const classId = url.searchParams.get('class');
		const membership = locals.asker && classId ? await membershipOf(locals.sql, locals.asker, classId) : null;
		if (!locals.asker || membership?.status !== 'admitted') error(404);
		const card = await makeCard(locals.sql, locals.asker, membership.memberId, String((await request.formData()).get('drawn') ?? ''));
		return { card: { name: card.name, classId: card.classId, words: card.words, address: `${url.origin}/sign-in`, qr: qrOf(`${url.origin}/card#${card.secret}`) } };
	}
};
