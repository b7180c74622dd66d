import { error, fail, redirect } from '@sveltejs/kit';
import { defaultRules } from '$lib/class/gate.ts';
import { openClass } from '$lib/server/class.ts';
import { drawLetters } from '$lib/server/digest.ts';
import { fixedChoices } from '$lib/lesson/open.ts';
import { lessonOf, shelf } from '$lib/ui/lesson/shelf.ts';
import { readSeats, typedClass } from '../class-form.ts';
import { allIssues, readRules, typedRules, typeRules } from '../rules-form.ts';
import type { Actions, PageServerLoad } from './$types';

const newGateId = (): string => `own-${drawLetters(6)}`;
/** A class is held on a lesson that goes from cloth to hem. */
const lessons = shelf.filter(({ kind }) => kind === 'full');
/** Six evenings, a week apart. */
const lasts = 5 * 7;

export const load: PageServerLoad = () => {
	const day = (after: number): string => new Date(Date.now() + after * 86_400_000).toISOString().slice(0, 10);
	return {
		lessons: lessons.map(({ slug, title, summary, style }) => ({ value: slug, label: title, hint: summary, fixed: fixedChoices(style) })),
		// The form carries it, so that sending it twice opens one class.
		id: drawLetters(8),
		starts: { title: '', lesson: lessons[0]?.slug ?? '', firstDay: day(0), lastDay: day(lasts), seats: '12', rules: typeRules(defaultRules) },
		mast: { back: { href: '/classes', label: 'Classes' } }
	};
};

export const actions: Actions = {
	async default({ request, locals: { sql, asker } }) {
		if (!asker) error(404);
		const form = await request.formData();
		const typed = { ...typedClass(form), lesson: String(form.get('lesson') ?? ''), rules: typedRules(form, newGateId) };
		const read = readRules(typed.rules);
		const opened = await openClass(sql, asker, { ...typed, seats: readSeats(typed), rules: read.rules, needs: lessonOf(typed.lesson)?.style.least }, lessons.map(({ slug }) => slug), String(form.get('id') ?? ''));
		if (!opened.ok) return fail(400, { issues: allIssues(read.issues, opened.issues), typed });
		redirect(303, `/classes/${opened.value.id}/people`);
	}
};
