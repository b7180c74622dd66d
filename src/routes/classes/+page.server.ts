import { error } from '@sveltejs/kit';
import { classesOf } from '$lib/server/class.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { sql, asker } }) => {
	if (!asker) error(404);
	const mine = (await classesOf(sql, asker)).filter(({ membership }) => membership.status === 'admitted');
	return {
		mine: mine.map(({ class: { id, title, lesson, firstDay, lastDay }, membership: { role } }) => ({
			id, title, firstDay, lastDay, role, lesson: lessonOf(lesson)?.title ?? lesson
		}))
	};
};
