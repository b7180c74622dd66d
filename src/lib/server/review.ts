// A teacher clears a learner for cutting, or returns her numbers with one next action.
import { randomUUID } from 'node:crypto';
import type { Sql } from 'postgres';
import type { EventBody, LoggedEvent } from '../class/event.ts';
import { seenFigures, type Now } from '../class/review.ts';
import type { ClassRules } from '../class/rules.ts';
import { foldSkirt, type SkirtState } from '../class/skirt-state.ts';
import { ENGINE } from '../drafting/draft.ts';
import { ok, refuse, type Result } from '../drafting/result.ts';
import { bearingOn } from '../lesson/open.ts';
import type { OwnSkirt } from '../lesson/own-skirt.ts';
import type { LessonStyle } from '../lesson/style.ts';
import { isId, notFound, type Asker } from './asker.ts';
import { digest } from './digest.ts';
import { eventsOf } from './log.ts';
import { requireMay } from './member.ts';

export type Verdict =
	/** `reason` is asked for when flags stand. */
	| { readonly kind: 'clear'; readonly reason?: string }
	| { readonly kind: 'return'; readonly action: string };

/** What the teacher had before her when she decided. */
export interface Seen {
	readonly classId: string;
	readonly memberId: string;
	/** Of the input she saw (nowFrom); null when there was nothing to draft from. */
	readonly digest: string | null;
	/** When the ask, return or clearance was kept that stood last (state.decision.at): of two answers to one request, the second is told. */
	readonly decidedAt: number | null;
}

/**
 * Decides while the learner's log stands still: `work` works out from the events read inside the transaction what is
 * true now. A number that has changed meanwhile is refused with `changed-meanwhile`.
 */
export async function decide(
	sql: Sql, asker: Asker, seen: Seen, verdict: Verdict,
	work: (events: readonly LoggedEvent[]) => Now | null
): Promise<Result<LoggedEvent>> {
	const checked = checkVerdict(verdict);
	if (!checked.ok) return checked;
	await requireMay(sql, asker, seen.classId, { resource: 'clearance', action: 'decide' });
	if (!isId(seen.memberId)) return notFound();
	return sql.begin(async (sql): Promise<Result<LoggedEvent>> => {
		// Every event refers to its member, so this lock waits for the ones on their way and holds up the next ones.
		const [member] = await sql`
			select from members where id = ${seen.memberId} and class_id = ${seen.classId} and status = 'admitted' and role <> 'teacher' for update`;
		if (!member) return notFound();
		const events = await eventsOf(sql, seen.memberId);
		const now = work(events);
		const digestNow = now?.digest ?? null;
		if (digestNow !== seen.digest) return refuse({ code: 'changed-meanwhile', path: '', expected: seen.digest, received: digestNow });
		if (checked.value.kind === 'clear' && !now) return refuse({ code: 'nothing-to-clear', path: '' });
		const { counter, decision } = foldSkirt(events);
		if ((decision?.at ?? null) !== seen.decidedAt) return refuse({ code: 'answered-meanwhile', path: '', received: decision?.kind });
		const body: EventBody = checked.value.kind === 'clear' && now
			? { ...checked.value, digest: now.digest, engine: now.engine, figures: now.figures, rules: now.rules }
			: (checked.value as Extract<Verdict, { kind: 'return' }>);
		const event = { id: randomUUID(), device: 'server', counter: counter + 1, body };
		const { kind, ...rest } = body;
		const [row] = await sql`
			insert into events (id, member_id, class_id, by_person, device, counter, kind, body)
			values (${event.id}, ${seen.memberId}, ${seen.classId}, ${asker.person.id}, ${event.device}, ${event.counter}, ${kind}, ${sql.json(rest as never)})
			returning received_at`;
		return ok({ ...event, by: asker.person.id, at: row!.received_at.getTime() });
	});
}

function checkVerdict(verdict: Verdict): Result<Verdict> {
	const path = verdict.kind === 'clear' ? 'reason' : 'action';
	const says = (verdict.kind === 'clear' ? verdict.reason : verdict.action)?.trim();
	if (says !== undefined && says.length > 200) return refuse({ code: 'sentence-long', path, expected: 200, received: says.length });
	if (verdict.kind === 'clear') return ok(says ? { kind: 'clear', reason: says } : { kind: 'clear' });
	return says ? ok({ kind: 'return', action: says }) : refuse({ code: 'action-missing', path });
}

/**
 * What is true now; null while there is no draft. The digest covers the checked input (agreed measurements, choices, and
 * the rules that went into them), each reading that was taken, and the tolerances they were judged by. The engine's
 * version stands beside it: the same inputs worked out differently are told as that (class/review.ts).
 */
export function nowFrom({ input, draft }: Pick<OwnSkirt, 'input' | 'draft'>, readings: SkirtState['readings'], style: LessonStyle, rules: ClassRules): Now | null {
	if (!draft?.ok) return null;
	const read = Object.fromEntries(Object.entries(readings).map(([measurement, taken]) => [measurement, taken.map(({ mm }) => mm)]));
	const { readings: apart, waistWalk } = rules.tolerances;
	return {
		digest: digest({ input, readings: read, tolerances: { readings: apart, waistWalk } }),
		engine: ENGINE, figures: seenFigures({ ...draft.value.figures }), rules: bearingOn(style, rules)
	};
}
