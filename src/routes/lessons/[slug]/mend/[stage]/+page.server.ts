import { error, fail } from '@sveltejs/kit';
import { sampleDraft } from '$lib/lesson/sample.ts';
import { placesIn, unitOf } from '$lib/ui/lesson/address.ts';
import { mendAnswer, mistakesAt, readMend, typedMend } from '$lib/ui/lesson/mend.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import type { Actions, PageServerLoad } from './$types';

function standing({ slug, stage: id }: { slug: string; stage: string }) {
	const lesson = lessonOf(slug);
	const stage = lesson?.parts.find((part) => part.id === id && part.kind === 'stage');
	if (!lesson || !stage) error(404, 'There is no stage of a lesson at this address.');
	return { lesson, stage };
}

export const load: PageServerLoad = ({ params, url }) => {
	const { lesson, stage } = standing(params);
	const unit = unitOf(url);
	const draft = sampleDraft(lesson.style, unit);
	const mistakes = mistakesAt(stage.id, draft, placesIn(url));
	const { body, skirt } = draft;
	return {
		mast: { back: { href: `/lessons/${lesson.slug}/${stage.id}${unit === 'in' ? '?unit=in' : ''}`, label: stage.title } },
		lesson: { slug: lesson.slug, title: lesson.title }, stage: { id: stage.id, title: stage.title }, unit, sample: { body, skirt },
		mistakes, what: mistakes.find(({ code }) => code === url.searchParams.get('what'))?.code ?? null
	};
};

export const actions: Actions = {
	/** Works out on the sample, and keeps nothing. */
	async mend({ request, params, url }) {
		const form = await request.formData();
		const typed = typedMend(form);
		const { lesson, stage } = standing(params);
		const unit = form.get('unit') === 'in' ? 'in' : unitOf(url);
		const read = readMend(typed, stage.id, unit);
		if (!read.ok) return fail(400, { typed, issues: read.issues });
		return { typed, answer: mendAnswer(read.value.code, sampleDraft(lesson.style, unit), read.value.readings, unit) };
	}
};
