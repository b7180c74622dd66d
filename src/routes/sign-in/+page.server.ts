import { fail, redirect } from '@sveltejs/kit';
import { deviceOf } from '$lib/server/attempt.ts';
import { proveWords } from '$lib/server/card.ts';
import { plainCode } from '$lib/server/member.ts';
import { provePassphrase } from '$lib/server/person.ts';
import { beginSession, setSessionCookie } from '$lib/server/session.ts';
import { wayOn } from '$lib/ui/way-on.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url, locals }) => {
	const next = wayOn(url);
	if (locals.asker) redirect(303, next ?? '/');
	// Whoever was on the way to a class's pages comes with a passphrase, unless she says otherwise.
	const as = url.searchParams.get('as') ?? (next?.startsWith('/classes') ? 'teacher' : 'learner');
	return { as: as === 'teacher' ? ('teacher' as const) : ('learner' as const), search: next ? `&next=${encodeURIComponent(next)}` : '' };
};

export const actions: Actions = {
	async card({ request, locals, cookies, url }) {
		const form = await request.formData();
		const typed = { classId: String(form.get('classId') ?? ''), words: String(form.get('words') ?? '') };
		if (typed.classId.trim() === '') return fail(400, { issues: [{ code: 'class-code-missing', path: 'classId' }], typed });
		const proved = await proveWords(locals.sql, { classId: plainCode(typed.classId), words: typed.words }, deviceOf(cookies, url));
		// The words are typed again only where they were wrong: they stay, as everything typed does.
		if (!proved.ok) return fail(400, { issues: proved.issues, typed });
		const { person, cardId, classId } = proved.value;
		setSessionCookie(cookies, url, await beginSession(locals.sql, person, cardId));
		redirect(303, wayOn(url) ?? `/skirt/${classId}`);
	},
	async passphrase({ request, locals, cookies, url }) {
		const form = await request.formData();
		const name = String(form.get('name') ?? '');
		const proved = await provePassphrase(locals.sql, { name, passphrase: String(form.get('passphrase') ?? '') }, deviceOf(cookies, url));
		// A passphrase is never sent back in a page.
		if (!proved.ok) return fail(400, { issues: proved.issues, typed: { name } });
		setSessionCookie(cookies, url, await beginSession(locals.sql, proved.value));
		redirect(303, wayOn(url) ?? (proved.value.canTeach ? '/classes' : '/'));
	}
};
