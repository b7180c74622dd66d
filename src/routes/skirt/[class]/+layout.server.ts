import { error, redirect } from '@sveltejs/kit';
import { stagesOf } from '$lib/lesson/lesson.ts';
import { rulesOn } from '$lib/lesson/open.ts';
import { readOwnLog } from './own-log.server.ts';
import type { LayoutServerLoad } from './$types';

export const load: LayoutServerLoad = async ({ locals, params }) => {
	const { membership } = locals;
	if (!membership) error(404);
	// A teacher has no skirt in her own class.
	if (membership.role === 'teacher') redirect(303, `/classes/${params.class}`);
	const { held, lesson, log } = await readOwnLog(locals, params.class);
	const root = `/skirt/${held.id}`;
	return {
		root, log,
		memberId: membership.memberId, name: membership.name,
		held: { id: held.id, title: held.title, rules: rulesOn(lesson.style, held.rules) },
		lesson: {
			slug: lesson.slug, title: lesson.title, style: lesson.style, stages: stagesOf(lesson),
			parts: lesson.parts.map(({ id, title, kind, minutes }) => ({ id, title, kind, minutes }))
		},
		mast: {
			places: [
				{ href: root, label: 'My skirt' }, { href: `${root}/measure`, label: 'Numbers' },
				{ href: `${root}/draft`, label: 'Draft' }, { href: `${root}/paper`, label: 'Paper' }
			],
			note: `${membership.name} · ${held.title}`
		}
	};
};
