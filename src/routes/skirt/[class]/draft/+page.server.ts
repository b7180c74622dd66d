import { error, fail } from '@sveltejs/kit';
import { rulesOn } from '$lib/lesson/open.ts';
import { readClass } from '$lib/server/class.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { readEvents } from '$lib/server/log.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import { drawIds, sayInForm } from '../said.server.ts';
import { choicesFrom, typedFrom } from './choices.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent }) => {
	const { root, mast } = await parent();
	return { ids: drawIds(1), mast: { ...mast, back: { href: root, label: 'My skirt' }, right: { href: `${root}/measure`, label: 'Change a number' } } };
};

export const actions: Actions = {
	async default({ request, locals, params }) {
		const { sql, asker, membership } = locals;
		if (!asker || !membership) error(404);
		const held = await readClass(sql, asker, params.class);
		const lesson = lessonOf(held.lesson);
		if (!lesson) error(404);
		const form = await request.formData();
		const typed = typedFrom(form);
		const { state, own } = skirtDesk(lesson, held.rules, await readEvents(sql, asker, membership.memberId));
		if (!own.input) return fail(400, { issues: [{ code: 'nothing-to-clear', path: '' }], typed });
		const choices = choicesFrom(typed, rulesOn(lesson.style, held.rules), state.choices, state.unit ?? held.rules.unit);
		if (!choices.ok) return fail(400, { issues: choices.issues, typed });
		const said = await sayInForm(locals, form.getAll('id'), [{ kind: 'choice', choices: choices.value }]);
		return said.ok ? { said: true } : fail(400, { issues: said.issues, typed });
	}
};
