import { fail, redirect } from '@sveltejs/kit';
import { plainCode, readInvitation } from '$lib/server/member.ts';
import type { Actions } from './$types';

export const actions: Actions = {
	async default({ request, locals }) {
		const code = String((await request.formData()).get('code') ?? '');
		if (code.trim() === '') return fail(400, { issues: [{ code: 'code-missing', path: 'code' }], typed: { code } });
		if (!(await readInvitation(locals.sql, code))) return fail(400, { issues: [{ code: 'code-unknown', path: 'code' }], typed: { code } });
		redirect(303, `/join/${encodeURIComponent(plainCode(code))}`);
	}
};
