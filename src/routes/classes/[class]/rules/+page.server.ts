import { error, fail } from '@sveltejs/kit';
import { checkRules } from '$lib/class/gate.ts';
import type { ClassRules } from '$lib/class/rules.ts';
import type { Issue } from '$lib/drafting/result.ts';
import { fixedChoices } from '$lib/lesson/open.ts';
import { changeRules } from '$lib/server/class.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { drawLetters } from '$lib/server/digest.ts';
import { readClassLogs } from '$lib/server/log.ts';
import { allIssues, readRules, typedRules, typeRules, type TypedRules } from '../../rules-form.ts';
import { readHeld } from '../table.server.ts';
import type { Actions, PageServerLoad } from './$types';

interface Cleared { readonly memberId: string; readonly name: string }
interface Answer {
	readonly typed?: TypedRules;
	readonly issues?: readonly Issue[];
	/** Whose clearance these rules would end: asked about once. */
	readonly ends?: readonly Cleared[];
	/** Whose clearance they have ended. */
	readonly ended?: readonly Cleared[];
}

/** Who is cleared under these rules, and what each would be under others. */
async function clearedUnder(locals: App.Locals, classId: string): Promise<{ readonly cleared: readonly Cleared[]; endedBy(rules: ClassRules): readonly Cleared[] }> {
	if (!locals.asker) error(404);
	const [{ held, lesson }, logs] = await Promise.all([readHeld(locals, classId), readClassLogs(locals.sql, locals.asker, classId)]);
	const standing = logs.filter(({ events }) => skirtDesk(lesson, held.rules, events).review === 'cleared');
	const brief = (some: typeof logs): readonly Cleared[] => some.map(({ memberId, name }) => ({ memberId, name }));
	return { cleared: brief(standing), endedBy: (rules) => brief(standing.filter(({ events }) => skirtDesk(lesson, rules, events).review !== 'cleared')) };
}

export const load: PageServerLoad = async ({ locals, params }) => {
	const [{ held, lesson }, { cleared }] = await Promise.all([readHeld(locals, params.class), clearedUnder(locals, params.class)]);
	return { rules: typeRules(held.rules), fixed: fixedChoices(lesson.style), cleared };
};

export const actions: Actions = {
	async default({ request, locals, params }) {
		if (!locals.asker) error(404);
		const form = await request.formData();
		const typed = typedRules(form, () => `own-${drawLetters(6)}`);
		const refuse = (answer: Answer) => fail(400, { typed, ...answer });
		const read = readRules(typed);
		const { lesson } = await readHeld(locals, params.class);
		const checked = checkRules(read.rules, lesson.style.least);
		if (!checked.ok) return refuse({ issues: allIssues(read.issues, checked.issues) });
		const ends = (await clearedUnder(locals, params.class)).endedBy(checked.value);
		// She agrees to these names, and to no others that were cleared meanwhile.
		const agreed = form.getAll('ends').map(String);
		if (ends.some(({ memberId }) => !agreed.includes(memberId))) return refuse({ ends });
		const changed = await changeRules(locals.sql, locals.asker, params.class, checked.value);
		return changed.ok ? ({ ended: ends } satisfies Answer) : refuse({ issues: changed.issues });
	}
};
