// Opening one learner's figures: written down, and shown to her.
import type { Sql } from 'postgres';
import type { LoggedEvent } from '../class/event.ts';
import { isId, notFound, type Asker, type Query } from './asker.ts';
import { eventsOf } from './log.ts';
import { requireMay } from './member.ts';

export interface OpenedSkirt {
	readonly memberId: string;
	readonly name: string;
	readonly events: readonly LoggedEvent[];
}

/** A teacher opens one learner's readings and figures, on a screen or on paper. It is logged before anything is read. */
export async function openSkirt(sql: Sql, asker: Asker, classId: string, memberId: string, what: 'figures' | 'paper'): Promise<OpenedSkirt> {
	await requireMay(sql, asker, classId, { resource: 'figures', action: 'read' });
	if (!isId(memberId)) return notFound();
	const [member] = await sql`
		with member as (
			select id, name from members where id = ${memberId} and class_id = ${classId} and status = 'admitted' and role <> 'teacher'
		),
		opened as (insert into openings (member_id, by_person, what) select id, ${asker.person.id}, ${what} from member)
		select id, name from member`;
	return member ? { memberId, name: member.name, events: await eventsOf(sql, memberId) } : notFound();
}

export interface Opening {
	/** The name of whoever opened them, as this class knows her. */
	readonly by: string;
	readonly what: 'figures' | 'paper';
	/** Milliseconds since 1970. */
	readonly at: number;
}

/** Who opened my figures, latest first. Also for a teacher of the class. */
export async function readOpenings(sql: Query, asker: Asker, memberId: string): Promise<readonly Opening[]> {
	if (!isId(memberId)) return notFound();
	const [allowed] = await sql`
		select from members m where m.id = ${memberId} and (
			m.person_id = ${asker.person.id} and m.status = 'admitted'
			or exists (select from members t where t.class_id = m.class_id and t.person_id = ${asker.person.id} and t.role = 'teacher' and t.status = 'admitted')
		)`;
	if (!allowed) return notFound();
	const rows = await sql`
		select coalesce(t.name, p.name) as by, o.what, o.opened_at
		from openings o join members m on m.id = o.member_id join people p on p.id = o.by_person
		left join members t on t.class_id = m.class_id and t.person_id = o.by_person
		where o.member_id = ${memberId} order by o.opened_at desc, o.id desc limit 200`;
	return rows.map(({ by, what, opened_at }) => ({ by, what, at: opened_at.getTime() }));
}
