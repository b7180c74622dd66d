import { error, fail } from '@sveltejs/kit';
import { readClass } from '$lib/server/class.ts';
import { drawIds, sayInForm } from '../said.server.ts';
import { askOf } from './asked.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent }) => {
	const { root, mast } = await parent();
	return { ids: drawIds(1), mast: { ...mast, back: { href: root, label: 'My skirt' }, right: { href: `${root}/draft`, label: 'My draft' } } };
};

export const actions: Actions = {
	async ask({ request, locals, params }) {
		if (!locals.asker) error(404);
		const { rules } = await readClass(locals.sql, locals.asker, params.class);
		const form = await request.formData();
		const asked = askOf(form, rules.gate);
		const typed = { gate: form.getAll('gate').map(String), second: String(form.get('second') ?? '') };
		if (!asked.ok) return fail(400, { issues: asked.issues, typed });
		const said = await sayInForm(locals, form.getAll('id'), [asked.value]);
		return said.ok ? { asked: true } : fail(400, { issues: said.issues, typed });
	},
	async unask({ request, locals }) {
		const said = await sayInForm(locals, (await request.formData()).getAll('id'), [{ kind: 'unask' }]);
		return said.ok ? { asked: false } : fail(400, { issues: said.issues });
	}
};
