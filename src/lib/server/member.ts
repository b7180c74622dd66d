// Who is in a class: asking to join, admitting, turning away, removing, helpers.
import type { Sql } from 'postgres';
import { may, type MemberRole, type Need } from '../class/permission.ts';
import { ok, refuse, type Result } from '../drafting/result.ts';
import { isId, notFound, type Asker, type Membership, type Query } from './asker.ts';
import { drawLetters, isSecret, sha256 } from './digest.ts';
import { checkName } from './name.ts';
import { makePerson, type Person } from './person.ts';

export interface Member extends Omit<Membership, 'lesson'> {
	/** Milliseconds since 1970. */
	readonly askedAt: number;
	readonly hasCard: boolean;
}

/** The asker's membership of a class, whatever its status. */
export async function membershipOf(sql: Query, asker: Asker, classId: string): Promise<Membership | null> {
	if (!isId(classId)) return null;
	const [row] = await sql`
		select m.id, m.role, m.status, m.name, c.lesson from members m join classes c on c.id = m.class_id
		where m.class_id = ${classId} and m.person_id = ${asker.person.id}`;
	return row ? { classId, lesson: row.lesson, memberId: row.id, role: row.role, status: row.status, name: row.name } : null;
}

/** Refuses as if the class weren't there, unless the asker may do this in it. */
export async function requireMay(sql: Query, asker: Asker, classId: string, need: Need): Promise<Membership> {
	const membership = await membershipOf(sql, asker, classId);
	if (!membership || membership.status !== 'admitted' || !may(membership.role, need, 'class')) return notFound();
	return membership;
}

/** What the page behind a join code may say to a stranger: the class's title, if the code holds. */
export async function readInvitation(sql: Query, code: string): Promise<{ readonly classId: string; readonly title: string } | null> {
	const [row] = await sql`
		select id, title from classes where join_code = ${plainCode(code)} and join_code_expires_at > now()`;
	return row ? { classId: row.id, title: row.title } : null;
}

/** As typed from a poster: capitals, hyphens and spaces don't matter, and what is misread is put right. */
export const plainCode = (typed: string): string =>
	typed.slice(0, 40).toLowerCase().replace(/o/g, '0').replace(/[il]/g, '1').replace(/[^0-9a-z]/g, '');

/** A seat is taken from the asking on, by everyone but a teacher. */
export async function seatsTaken(sql: Query, classId: string): Promise<number> {
	const [held] = await sql`
		select count(*)::int as seats from members where class_id = ${classId} and role <> 'teacher' and status <> 'removed'`;
	return held!.seats;
}

export interface Joined {
	readonly person: Person;
	readonly membership: Membership;
}

/** Within this a form that arrives twice was pressed twice; later it may be anyone at the same device. Minutes. */
const pressedTwice = 10;

/** The id of whoever a secret drawn with a page makes. The secret can't be found from it. */
function personIdOf(secret: string): string {
	const hex = sha256(`person ${secret}`).toString('hex');
	return [hex.slice(0, 8), hex.slice(8, 12), `4${hex.slice(13, 16)}`, `8${hex.slice(17, 20)}`, hex.slice(20, 32)].join('-');
}

/**
 * Asks to join with a name alone. A new person is made unless someone is signed in. A seat is held from the asking on,
 * and seats are counted under a lock on the class: of fifty at once for the last seat, one gets it. `drawn` is the secret
 * that came with the page of the form (drawSecret): sent twice, the form asks once, and both answers are for her who asked.
 */
export async function askToJoin(sql: Sql, asker: Asker | null, typed: { code: string; name: string }, drawn?: string): Promise<Result<Joined>> {
	const name = checkName(typed.name, 'name');
	if (!name.ok) return name;
	return sql.begin(async (sql): Promise<Result<Joined>> => {
		const [found] = await sql`
			select id, lesson, seats from classes where join_code = ${plainCode(typed.code)} and join_code_expires_at > now() for update`;
		if (!found) return refuse({ code: 'code-unknown', path: 'code', received: typed.code });
		const classId: string = found.id;

		const mine = asker && (await membershipOf(sql, asker, classId));
		// Asked already, or in already? Then nothing changes.
		if (mine && mine.status !== 'removed') return ok({ person: asker.person, membership: mine });
		const ofForm = !asker && isSecret(drawn) ? personIdOf(drawn) : undefined;
		const [there] = ofForm === undefined ? [] : await sql`
			select p.name, p.can_teach, m.id, m.role, m.status, m.name as called, m.asked_at > now() - make_interval(mins => ${pressedTwice}) as lately
			from people p left join members m on m.person_id = p.id and m.class_id = ${classId} where p.id = ${ofForm}`;
		if (ofForm !== undefined && there?.lately && there.status !== 'removed' && there.called === name.value) {
			const membership = { classId, lesson: found.lesson, memberId: there.id, role: there.role, status: there.status, name: there.called };
			return ok({ person: { id: ofForm, name: there.name, canTeach: there.can_teach }, membership });
		}

		if ((await seatsTaken(sql, classId)) >= found.seats) return refuse({ code: 'class-full', path: 'code', expected: found.seats });
		const [same] = await sql`
			select from members where class_id = ${classId} and status <> 'removed'
			and lower(normalize(name, NFKC)) = lower(normalize(${name.value}, NFKC))`;
		if (same) return refuse({ code: 'name-taken-here', path: 'name', received: name.value });

		const person = asker?.person ?? (await makePerson(sql, name.value, false, there ? undefined : ofForm));
		const [row] = await sql`
			insert into members (id, class_id, person_id, role, status, name)
			values (${drawLetters(10)}, ${classId}, ${person.id}, 'learner', 'asked', ${name.value})
			on conflict (class_id, person_id) do update set role = 'learner', status = 'asked', name = excluded.name, asked_at = now()
			returning id`;
		return ok({ person, membership: { classId, lesson: found.lesson, memberId: row!.id, role: 'learner', status: 'asked', name: name.value } });
	});
}

/** Everyone in the class and everyone who has asked, the longest-waiting first. Removed ones are left out. */
export async function readMembers(sql: Query, asker: Asker, classId: string): Promise<readonly Member[]> {
	await requireMay(sql, asker, classId, { resource: 'people', action: 'read' });
	const rows = await sql`
		select m.id, m.role, m.status, m.name, m.asked_at, exists(select from cards where member_id = m.id and ended_at is null) as has_card
		from members m where m.class_id = ${classId} and m.status <> 'removed' order by m.asked_at, m.id`;
	return rows.map((row) => ({
		classId, memberId: row.id, role: row.role, status: row.status, name: row.name, askedAt: row.asked_at.getTime(), hasCard: row.has_card
	}));
}

/** Moves a member on. Answering the same thing twice is harmless; false when someone else has decided otherwise meanwhile. */
async function move(sql: Query, classId: string, memberId: string, from: Membership['status'], to: Membership['status']): Promise<boolean> {
	if (!isId(memberId)) return false;
	const moved = await sql`
		update members set status = ${to} where id = ${memberId} and class_id = ${classId} and role <> 'teacher' and status in (${from}, ${to})`;
	return moved.count === 1;
}

export async function admit(sql: Query, asker: Asker, classId: string, memberId: string): Promise<boolean> {
	await requireMay(sql, asker, classId, { resource: 'people', action: 'admit' });
	return move(sql, classId, memberId, 'asked', 'admitted');
}

export async function turnAway(sql: Query, asker: Asker, classId: string, memberId: string): Promise<boolean> {
	await requireMay(sql, asker, classId, { resource: 'people', action: 'admit' });
	return move(sql, classId, memberId, 'asked', 'removed');
}

/** Ends her membership and her card; what she said and did stays in the log. */
export async function remove(sql: Sql, asker: Asker, classId: string, memberId: string): Promise<boolean> {
	await requireMay(sql, asker, classId, { resource: 'people', action: 'remove' });
	return sql.begin(async (sql) => {
		const moved = await move(sql, classId, memberId, 'admitted', 'removed');
		if (moved) {
			const ended = await sql`update cards set ended_at = now() where member_id = ${memberId} and ended_at is null returning id`;
			for (const { id } of ended) await sql`delete from sessions where card_id = ${id}`;
		}
		return moved;
	});
}

/** Makes a member a helper, or a learner again. */
export async function setRole(sql: Query, asker: Asker, classId: string, memberId: string, role: Exclude<MemberRole, 'teacher'>): Promise<boolean> {
	await requireMay(sql, asker, classId, { resource: 'people', action: 'change' });
	if (!isId(memberId)) return false;
	const changed = await sql`
		update members set role = ${role} where id = ${memberId} and class_id = ${classId} and role <> 'teacher' and status = 'admitted'`;
	return changed.count === 1;
}
