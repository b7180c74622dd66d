import { fail } from '@sveltejs/kit';
import type { EventBody } from '$lib/class/event.ts';
import { drawIds, sayInForm } from './said.server.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = () => ({ ids: drawIds(1) });

export const actions: Actions = {
	async preference({ request, locals }) {
		const form = await request.formData();
		const unit = form.get('unit');
		const noTouch = form.get('noTouch');
		const body: EventBody | null =
			unit === 'cm' || unit === 'in' ? { kind: 'preference', unit } : noTouch !== null ? { kind: 'preference', noTouch: noTouch === 'on' } : null;
		if (!body) return fail(400, { issues: [{ code: 'not-a-unit', path: 'unit' }] });
		const said = await sayInForm(locals, form.getAll('id'), [body]);
		return said.ok ? { said: true } : fail(400, { issues: said.issues });
	}
};
