import { error, fail } from '@sveltejs/kit';
import { sampleDraft } from '$lib/lesson/sample.ts';
import { readClass } from '$lib/server/class.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { readEvents } from '$lib/server/log.ts';
import { isRescueCode, keptFor, mendAnswer, mistakesAt, readMend, typedMend, type Mistake } from '$lib/ui/lesson/mend.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';
import { placesIn } from '$lib/ui/lesson/address.ts';
import type { Actions, PageServerLoad } from './$types';

/** Her plan, and what she has measured on the real thing; the sample's plan until she has one. */
async function standing({ sql, asker, membership }: App.Locals, params: { class: string; stage: string }) {
	if (!asker || !membership) error(404);
	const [held, events] = await Promise.all([readClass(sql, asker, params.class), readEvents(sql, asker, membership.memberId)]);
	const lesson = lessonOf(held.lesson);
	const stage = lesson?.parts.find(({ id, kind }) => id === params.stage && kind === 'stage');
	if (!lesson || !stage) error(404, 'This lesson has no stage at this address.');
	const { state, own, made } = skirtDesk(lesson, held.rules, events);
	const unit = state.unit ?? held.rules.unit;
	return { stage, unit, made, sample: !own.draft?.ok, draft: own.draft?.ok ? own.draft.value : sampleDraft(lesson.style, unit) };
}

export const load: PageServerLoad = async ({ locals, params, url, parent }) => {
	const { root, mast } = await parent();
	const { stage, unit, draft, made, sample } = await standing(locals, params);
	const mistakes: readonly Mistake[] = mistakesAt(stage.id, draft, placesIn(url));
	const what = url.searchParams.get('what');
	const asked = mistakes.find(({ code }) => code === what);
	// What she has put in already needs no typing again.
	const kept = asked && made && isRescueCode(what) ? keptFor(what, stage.id, made.asMade, made.figures.waist?.seam) : null;
	return {
		stage: { id: stage.id, title: stage.title }, unit, sample, mistakes, what: asked?.code ?? null,
		fromKept: asked && kept ? mendAnswer(asked.code, draft, kept, unit) : null,
		mast: { ...mast, back: { href: `${root}/make/${stage.id}`, label: stage.title } }
	};
};

export const actions: Actions = {
	/** Works out, and keeps nothing. Lengths are never in an address. */
	async mend({ request, locals, params }) {
		const form = await request.formData();
		const typed = typedMend(form);
		const { stage, draft } = await standing(locals, params);
		const unit = form.get('unit') === 'in' ? 'in' : 'cm';
		const read = readMend(typed, stage.id, unit);
		if (!read.ok) return fail(400, { typed, issues: read.issues });
		return { typed, answer: mendAnswer(read.value.code, draft, read.value.readings, unit) };
	}
};
