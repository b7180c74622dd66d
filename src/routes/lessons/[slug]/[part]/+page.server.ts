import { error } from '@sveltejs/kit';
import { unitOf } from '$lib/ui/lesson/address.ts';
import { drawingsFor } from '$lib/ui/lesson/drawings.ts';
import { workingsFor } from '$lib/ui/lesson/workings.ts';
import { sampleDraft } from '$lib/lesson/sample.ts';
import { termsOf } from '$lib/lesson/term.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params, url }) => {
	const lesson = lessonOf(params.slug);
	const at = lesson?.parts.findIndex((part) => part.id === params.part) ?? -1;
	if (!lesson || at < 0) error(404, 'There is no part of a lesson at this address.');
	const unit = unitOf(url);
	const draft = sampleDraft(lesson.style, unit);
	const part = lesson.parts[at]!;
	const link = (to: number) => lesson.parts[to] && { id: lesson.parts[to].id, title: lesson.parts[to].title };
	return {
		mast: { back: { href: `/lessons/${lesson.slug}${url.search}`, label: lesson.title } },
		unit, draft, drawings: drawingsFor(part, draft, unit), workings: workingsFor(part, draft, null, unit), terms: termsOf(part),
		lesson: { slug: lesson.slug, title: lesson.title },
		part: { id: part.id, title: part.title, kind: part.kind, minutes: part.minutes, waits: part.waits, steps: part.steps.length },
		parts: lesson.parts.map(({ id, title, minutes, kind }) => ({ id, title, minutes, kind })),
		before: link(at - 1) ?? null, next: link(at + 1) ?? null
	};
};
