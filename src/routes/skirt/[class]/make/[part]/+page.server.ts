import { error, fail, redirect } from '@sveltejs/kit';
import type { EventBody } from '$lib/class/event.ts';
import { draftAsMade, readAtOf } from '$lib/lesson/own-made.ts';
import { sampleDraft } from '$lib/lesson/sample.ts';
import { termsOf } from '$lib/lesson/term.ts';
import { readClass } from '$lib/server/class.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { readEvents } from '$lib/server/log.ts';
import { drawingsFor } from '$lib/ui/lesson/drawings.ts';
import { workingsFor } from '$lib/ui/lesson/workings.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import { drawIds, sayInForm } from '../../said.server.ts';
import { readMade, typedMade } from '../made-form.ts';
import { stepAfter } from '../step-order.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { sql, asker, membership }, params, parent }) => {
	const { root, mast, lesson: { stages } } = await parent();
	if (!asker || !membership) error(404);
	const [held, events] = await Promise.all([readClass(sql, asker, params.class), readEvents(sql, asker, membership.memberId)]);
	const lesson = lessonOf(held.lesson);
	const part = lesson?.parts.find(({ id }) => id === params.part);
	if (!lesson || !part) error(404, 'This lesson has no part at this address.');
	const { state, own, made } = skirtDesk(lesson, held.rules, events);
	const unit = state.unit ?? held.rules.unit;
	const example = sampleDraft(lesson.style, unit);
	// Until she has measured, it reads with sample numbers, labelled so.
	const plan = own.draft?.ok ? own.draft.value : example;
	// What was measured on the real thing counts in the steps after it.
	const draft = draftAsMade(plan, made, readAtOf(lesson.parts), lesson.parts.indexOf(part));
	return {
		part: { id: part.id, title: part.title, kind: part.kind, minutes: part.minutes, waits: part.waits, steps: part.steps },
		stage: stages.findIndex(({ id }) => id === part.id),
		draft, plan, sample: plan === example, drawings: drawingsFor(part, draft, unit), workings: workingsFor(part, draft, plan === example ? null : example, unit), terms: termsOf(part),
		ids: drawIds(2),
		mast: { ...mast, back: { href: root, label: 'My skirt' }, right: { href: `${root}/draft`, label: 'My draft' } }
	};
};

type Said = Parameters<NonNullable<Actions['tick']>>[0];

/** One tick, untick or hand from a form: the step is named in it, the event's id too. */
const says = (kind: 'tick' | 'untick' | 'help' | 'helped') => async ({ request, locals, params, url }: Said) => {
	const form = await request.formData();
	const step = form.get('step');
	if (typeof step !== 'string') return fail(400, { issues: [{ code: 'step-missing', path: 'step' }] });
	const body: EventBody = { kind, step };
	const said = await sayInForm(locals, form.getAll('id'), [body]);
	if (!said.ok) return fail(400, { issues: said.issues });
	if (kind === 'tick' && !url.searchParams.has('whole') && locals.asker) {
		const held = await readClass(locals.sql, locals.asker, params.class);
		const lesson = lessonOf(held.lesson);
		if (lesson) redirect(303, `/skirt/${params.class}${stepAfter(lesson.parts, step)}`);
	}
	return { said: true };
};

/** What was measured on the real thing. */
const made = async ({ request, locals, url }: Said) => {
	const form = await request.formData();
	const typed = typedMade(form);
	if (!typed) return fail(400, { issues: [{ code: 'no-such-reading', path: 'reading' }] });
	const read = readMade(typed);
	if (!read.ok) return fail(400, { issues: read.issues, made: typed });
	const said = await sayInForm(locals, form.getAll('id'), read.value);
	if (!said.ok) return fail(400, { issues: said.issues, made: typed });
	// Back to the step, without what was sent.
	const search = new URLSearchParams([...url.searchParams].filter(([name]) => name === 'step' || name === 'whole' || name === 'places'));
	redirect(303, `${url.pathname}?${search}`);
};

export const actions: Actions = { made, tick: says('tick'), untick: says('untick'), help: says('help'), helped: says('helped') };
