import { error, fail, redirect } from '@sveltejs/kit';
import { readAccount, setPassphrase } from '$lib/server/person.ts';
import { dropSessionCookie, endSessionsEverywhere } from '$lib/server/session.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals }) => {
	if (!locals.asker) error(404);
	return { account: await readAccount(locals.sql, locals.asker), canTeach: locals.asker.person.canTeach };
};

export const actions: Actions = {
	async passphrase({ request, locals }) {
		if (!locals.asker) error(404);
		const form = await request.formData();
		const text = (name: string): string => String(form.get(name) ?? '');
		const typed = { name: text('name') };
		if (text('passphrase') !== text('again')) return fail(400, { issues: [{ code: 'passphrases-differ', path: 'again' }], typed });
		const first = (await readAccount(locals.sql, locals.asker)).signInName === null;
		const set = await setPassphrase(locals.sql, locals.asker, { ...typed, passphrase: text('passphrase'), current: text('current') });
		if (!set.ok) return fail(400, { issues: set.issues, typed });
		if (first && locals.asker.person.canTeach) redirect(303, '/classes');
		return { set: true };
	},
	async everywhere({ locals, cookies, url }) {
		if (!locals.asker) error(404);
		await endSessionsEverywhere(locals.sql, locals.asker);
		dropSessionCookie(cookies, url);
		redirect(303, '/');
	}
};
