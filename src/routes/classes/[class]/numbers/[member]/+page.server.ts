import { error, fail, redirect, type ActionFailure } from '@sveltejs/kit';
import { queue } from '$lib/class/review.ts';
import type { Issue } from '$lib/drafting/result.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { decide, type Verdict } from '$lib/server/review.ts';
import { TABLE } from '../../table-key.ts';
import { readHeld, readTable } from '../../table.server.ts';
import { openOne, type Figures, type Seen } from './opened.server.ts';
import type { Actions, PageServerLoad } from './$types';

interface Typed { readonly action: string; readonly own: string; readonly reason: string }
interface Answer {
	readonly seen?: Seen;
	/** Absent once hidden again. */
	readonly figures?: Figures;
	readonly issues?: readonly Issue[];
	readonly typed?: Typed;
}
interface Address { class: string; member: string }

export const load: PageServerLoad = async ({ locals, params, url, depends, parent }) => {
	depends(TABLE);
	const { rows } = await readTable(locals, params.class);
	const row = rows.find(({ memberId }) => memberId === params.member);
	if (!row) error(404);
	const after = rows.find(({ memberId }) => memberId === url.searchParams.get('after')) ?? null;
	const { mast } = await parent();
	const root = `/classes/${params.class}`;
	return {
		row, rows, after, now: Date.now(), classId: params.class,
		mast: { ...mast, back: { href: `${root}/numbers`, label: 'Numbers' }, right: { href: root, label: 'Table' } }
	};
};

const text = (form: FormData, name: string): string => String(form.get(name) ?? '');

function verdictOf(kind: Verdict['kind'], { action, own, reason }: Typed): Verdict {
	if (kind === 'clear') return { kind, reason };
	return { kind, action: action === 'own' || action === '' ? own : action };
}

/** Decides on what she saw. A refusal shows the numbers as they are now, which is an opening again. */
async function answer(kind: Verdict['kind'], locals: App.Locals, params: Address, form: FormData): Promise<Answer | ActionFailure<Answer>> {
	if (!locals.asker) error(404);
	const typed: Typed = { action: text(form, 'action'), own: text(form, 'own'), reason: text(form, 'reason') };
	const refuse = async (issues: readonly Issue[]): Promise<ActionFailure<Answer>> => fail(400, { ...(await openOne(locals, params)), issues, typed });
	const decidedAt = text(form, 'decidedAt');
	const seen = {
		classId: params.class, memberId: params.member, digest: text(form, 'digest') || null, decidedAt: decidedAt === '' ? null : Number(decidedAt)
	};
	const { rows } = await readTable(locals, params.class);
	const row = rows.find(({ memberId }) => memberId === params.member);
	if (!row) error(404);
	// What has changed meanwhile comes before what the form lacks: it is decide's to say.
	const same = row.since === seen.decidedAt;
	if (kind === 'clear' && same && (row.review === 'not-asked' || row.review === 'returned')) return refuse([{ code: 'not-asked-yet', path: '' }]);
	if (kind === 'clear' && same && row.flags.length > 0 && typed.reason.trim() === '') return refuse([{ code: 'reason-missing', path: 'reason' }]);
	const { held, lesson } = await readHeld(locals, params.class);
	const decided = await decide(locals.sql, locals.asker, seen, verdictOf(kind, typed), (events) => skirtDesk(lesson, held.rules, events).now);
	if (!decided.ok) return refuse(decided.issues);
	const [next] = queue(rows.filter(({ memberId, review }) => memberId !== params.member && review === 'asked'));
	redirect(303, `/classes/${params.class}/numbers${next ? `/${next.memberId}` : ''}?after=${params.member}`);
}

export const actions: Actions = {
	async open({ locals, params }): Promise<Answer> {
		return openOne(locals, params);
	},
	clear: async ({ locals, params, request }) => answer('clear', locals, params, await request.formData()),
	return: async ({ locals, params, request }) => answer('return', locals, params, await request.formData())
};
