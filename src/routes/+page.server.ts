import { classesOf } from '$lib/server/class.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals }) => {
	const { asker } = locals;
	if (!asker) return { name: null, mine: [] };
	const mine = (await classesOf(locals.sql, asker)).map(({ class: { id, title }, membership: { role, status } }) => ({ id, title, role, status }));
	return { name: asker.person.name, canTeach: asker.person.canTeach, mine };
};
