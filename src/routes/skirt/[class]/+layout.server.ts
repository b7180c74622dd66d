import { error, redirect } from '@sveltejs/kit';
import { stagesOf } from '$lib/lesson/lesson.ts';
import { readClass } from '$lib/server/class.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { readEvents } from '$lib/server/log.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import type { LayoutServerLoad } from './$types';

/** Her log, and what it amounts to: plain data, on which the page folds whatever waits on her device. */
export const load: LayoutServerLoad = async ({ locals, params, depends }) => {
	const { sql, asker, membership } = locals;
	if (!asker || !membership) error(404);
	// A teacher has no skirt in her own class.
	if (membership.role === 'teacher') redirect(303, `/classes/${params.class}`);
	depends('skirt:log');
	const [held, events] = await Promise.all([
		readClass(sql, asker, params.class), readEvents(sql, asker, membership.memberId)
	]);
	const lesson = lessonOf(held.lesson);
	if (!lesson) throw new Error(`class ${held.id} is held on lesson ${held.lesson}, which is not on the shelf`);
	const { review, own } = skirtDesk(lesson, held.rules, events);
	const root = `/skirt/${held.id}`;
	return {
		root, events, review,
		memberId: membership.memberId, name: membership.name,
		held: { id: held.id, title: held.title, rules: held.rules },
		lesson: {
			slug: lesson.slug, title: lesson.title, style: lesson.style, stages: stagesOf(lesson),
			parts: lesson.parts.map(({ id, title, kind, minutes }) => ({ id, title, kind, minutes }))
		},
		/** Whether her numbers are enough to draft from, as the server has them. */
		drafted: own.draft?.ok ?? false,
		mast: {
			places: [
				{ href: root, label: 'My skirt' }, { href: `${root}/measure`, label: 'Numbers' },
				{ href: `${root}/draft`, label: 'Draft' }, { href: `${root}/paper`, label: 'Paper' }
			],
			note: `${membership.name} · ${held.title}`
		}
	};
};
