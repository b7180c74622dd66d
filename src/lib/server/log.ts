// The log of what people said and did. Append-only; acknowledged after commit.
import type { Sql } from 'postgres';
import { checkEvents, highestFromDevice, highestFromServer } from '../class/event-check.ts';
import type { EventBody, EventKind, LoggedEvent, NewEvent } from '../class/event.ts';
import { ok, refuse, type Result } from '../drafting/result.ts';
import { isId, notFound, type Asker, type Query } from './asker.ts';
import { requireMay } from './member.ts';

/** What a teacher or a helper may say in a learner's log. Clearing and returning have a door of their own (review.ts). */
const staffKinds: readonly EventKind[] = ['helped'];

export interface Keeping {
	/** By whom the counters were: the server's own may go higher, so that a device can't shut it out. */
	readonly counted?: 'on her device' | 'here';
	/** Whether they fit her class, asked once they are known to be events. */
	readonly fits?: (events: readonly NewEvent[]) => Promise<Result<unknown>>;
}

/**
 * Keeps events in a member's log, all or none, and says which it has. A repeat is harmless. One statement: it inserts
 * only if the asker is that member, or only answers a hand in a class she helps in; so nobody can write another's.
 */
export async function appendEvents(
	sql: Query, asker: Asker, memberId: string, events: unknown, { counted, fits }: Keeping = {}
): Promise<Result<{ readonly kept: readonly string[] }>> {
	const checked = checkEvents(events, counted === 'here' ? highestFromServer : highestFromDevice);
	if (!checked.ok) return checked;
	const fitting = await fits?.(checked.value);
	if (fitting && !fitting.ok) return fitting;
	if (!isId(memberId)) return notFound();
	const rows = checked.value.map(({ id, device, counter, body: { kind, ...body } }) => ({ id, device, counter, kind, body }));
	const staff = checked.value.every(({ body }) => staffKinds.includes(body.kind));
	const [answer] = await sql`
		with said as (
			select * from jsonb_to_recordset(${sql.json(rows as never)}) as said (id uuid, device text, counter bigint, kind text, body jsonb)
		),
		member as (
			select m.id, m.class_id from members m
			where m.id = ${memberId} and m.status = 'admitted' and m.role <> 'teacher' and (
				m.person_id = ${asker.person.id}
				or ${staff} and exists (
					select from members s where s.class_id = m.class_id and s.person_id = ${asker.person.id}
					and s.role in ('teacher', 'helper') and s.status = 'admitted'
				)
			)
		),
		added as (
			insert into events (id, member_id, class_id, by_person, device, counter, kind, body)
			select said.id, member.id, member.class_id, ${asker.person.id}, said.device, said.counter, said.kind, said.body from said, member
			on conflict do nothing
			returning id
		)
		select
			exists(select from member) as member,
			(select coalesce(jsonb_agg(id), '[]') from (
				select id from added
				union all
				-- The ones kept before: looked up by id, whatever the planner makes of the rest. This statement's own aren't among them yet.
				select e.id from events e where e.id = any(array(select said.id from said)) and e.member_id = (select member.id from member)
			) as known) as kept`;
	if (!answer!.member) return notFound();
	return ok({ kept: answer!.kept });
}

interface EventRow {
	id: string; device: string; counter: string; by_person: string; kind: string; body: object; received_at: Date; member_id: string;
}

/** As the log keeps them, in the order they came. Counters are safe integers: they were checked on the way in. */
const logged = (row: EventRow): LoggedEvent => ({
	id: row.id, device: row.device, counter: Number(row.counter), by: row.by_person, at: row.received_at.getTime(),
	body: { kind: row.kind, ...row.body } as EventBody
});

/** Every event of one member, for whoever has been allowed already. Not for routes. */
export async function eventsOf(sql: Query, memberId: string): Promise<readonly LoggedEvent[]> {
	const rows = await sql<EventRow[]>`
		select id, device, counter, by_person, kind, body, received_at, member_id from events where member_id = ${memberId} order by position`;
	return rows.map(logged);
}

/** A learner's own log. Her teacher reads it through opening.ts, which writes down that she did. */
export async function readEvents(sql: Query, asker: Asker, memberId: string): Promise<readonly LoggedEvent[]> {
	if (!isId(memberId)) return notFound();
	const [mine] = await sql`
		select from members where id = ${memberId} and person_id = ${asker.person.id} and status = 'admitted' and role <> 'teacher'`;
	return mine ? eventsOf(sql, memberId) : notFound();
}

export interface MemberLog {
	readonly memberId: string;
	readonly name: string;
	readonly role: 'learner' | 'helper';
	readonly events: readonly LoggedEvent[];
}

/**
 * The logs of a class's learners, and of the helpers who sew, to work out its table and its queue from: who is where, flags, who waits. Readings
 * are among them for the flags' sake; no figure of a body may be sent to a screen from here (opening.ts is for that).
 */
export async function readClassLogs(sql: Sql, asker: Asker, classId: string): Promise<readonly MemberLog[]> {
	await requireMay(sql, asker, classId, { resource: 'progress', action: 'read' });
	const [members, rows] = await Promise.all([
		sql`
			select id, name, role from members m
			where class_id = ${classId} and status = 'admitted' and (role = 'learner' or role = 'helper' and exists (select from events e where e.member_id = m.id))
			order by asked_at, id`,
		sql<EventRow[]>`
			select id, device, counter, by_person, kind, body, received_at, member_id from events where class_id = ${classId} order by position`
	]);
	const byMember = new Map<string, LoggedEvent[]>(members.map(({ id }) => [id, []]));
	for (const row of rows) byMember.get(row.member_id)?.push(logged(row));
	return members.map(({ id, name, role }) => ({ memberId: id, name, role, events: byMember.get(id)! }));
}
