import { error, fail, redirect } from '@sveltejs/kit';
import { changeClass, readClass } from '$lib/server/class.ts';
import { readSeats, typedClass } from '../../class-form.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { sql, asker }, params, parent }) => {
	if (!asker) error(404);
	const { title, firstDay, lastDay, seats } = await readClass(sql, asker, params.class);
	const { mast } = await parent();
	return { held: { title, firstDay, lastDay, seats: String(seats) }, mast: { ...mast, back: { href: `/classes/${params.class}/people`, label: 'People' } } };
};

export const actions: Actions = {
	async default({ request, locals: { sql, asker }, params }) {
		if (!asker) error(404);
		const typed = typedClass(await request.formData());
		const changed = await changeClass(sql, asker, params.class, { ...typed, seats: readSeats(typed) });
		if (!changed.ok) return fail(400, { issues: changed.issues, typed });
		redirect(303, `/classes/${params.class}/people?changed`);
	}
};
