import { error } from '@sveltejs/kit';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import { sampleDraft } from '$lib/lesson/sample.ts';
import { terms } from '$lib/lesson/term.ts';
import { unitOf } from '$lib/ui/lesson/address.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params, url }) => {
	const lesson = lessonOf(params.slug);
	if (!lesson) error(404, 'There is no lesson at this address.');
	const unit = unitOf(url);
	const { slug, title, summary, kind, parts } = lesson;
	return {
		mast: { back: { href: '/lessons', label: 'Lessons' } },
		unit, draft: sampleDraft(lesson.style, unit), terms,
		lesson: { slug, title, summary, kind },
		parts: parts.map(({ id, title, kind, minutes, waits, steps }) => ({ id, title, kind, minutes, waits, steps: steps.length }))
	};
};
