// Classes: opening one, its rules, its join code.
import type { Sql } from 'postgres';
import type { MemberRole } from '../class/permission.ts';
import type { ClassRules } from '../class/rules.ts';
import { checkRules } from '../class/gate.ts';
import { ok, refuse, type Issue, type Result } from '../drafting/result.ts';
import { isId, notFound, type Asker, type Membership, type Query } from './asker.ts';
import { drawLetters } from './digest.ts';
import { requireMay, seatsTaken } from './member.ts';
import { checkName } from './name.ts';

export interface Class {
	readonly id: string;
	readonly title: string;
	/** The lesson's slug. */
	readonly lesson: string;
	/** ISO dates, such as 2026-03-05. */
	readonly firstDay: string;
	readonly lastDay: string;
	readonly rules: ClassRules;
	readonly seats: number;
}

/** What a teacher fills in to open a class. */
export interface ClassForm {
	readonly title: string;
	readonly lesson: string;
	readonly firstDay: string;
	readonly lastDay: string;
	readonly seats: number;
	readonly rules: unknown;
	/** The least allowances that the lesson can be sewn with. */
	readonly needs?: ClassRules['allowances'];
}

export interface JoinCode {
	/** Eight letters, 40 bits; shown as `k7qm-2xpd`. */
	readonly code: string;
	/** Milliseconds since 1970. */
	readonly expiresAt: number;
}

const columns = (sql: Query) => sql`
	c.id, c.title, c.lesson, to_char(c.first_day, 'YYYY-MM-DD') as first_day, to_char(c.last_day, 'YYYY-MM-DD') as last_day, c.rules, c.seats`;
const read = (row: Record<string, never>): Class => ({
	id: row.id!, title: row.title!, lesson: row.lesson!, firstDay: row.first_day!, lastDay: row.last_day!, rules: row.rules!, seats: row.seats!
});

/** From 2000 on: a year typed as 26 comes as 0026. */
const isDay = (text: string): boolean =>
	/^2\d{3}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.slice(0, 10) === text;

/** What a class is called, when it is held and for how many: may be changed while it is held. */
export type ClassFrame = Pick<Class, 'title' | 'firstDay' | 'lastDay' | 'seats'>;

function checkFrame({ title: typed, firstDay, lastDay, seats }: ClassFrame): Result<ClassFrame> {
	const issues: Issue[] = [];
	const title = checkName(typed, 'title', 80);
	if (!title.ok) issues.push(...title.issues);
	for (const [path, day] of Object.entries({ firstDay, lastDay })) {
		if (!isDay(day)) issues.push({ code: 'not-a-date', path, expected: 'YYYY-MM-DD', received: day });
	}
	if (isDay(firstDay) && isDay(lastDay) && lastDay < firstDay) {
		issues.push({ code: 'ends-before-it-begins', path: 'lastDay', expected: firstDay, received: lastDay });
	}
	if (!Number.isInteger(seats) || seats < 1 || seats > 100_000) issues.push({ code: 'not-a-count', path: 'seats', expected: '1…100000', received: seats });
	return title.ok && issues.length === 0 ? ok({ title: title.value, firstDay, lastDay, seats }) : refuse(...issues);
}

function checkForm(form: ClassForm, lessons: readonly string[]): Result<Omit<Class, 'id'>> {
	const issues: Issue[] = [];
	const frame = checkFrame(form);
	const rules = checkRules(form.rules, form.needs);
	if (!frame.ok) issues.push(...frame.issues);
	if (!rules.ok) issues.push(...rules.issues);
	if (!lessons.includes(form.lesson)) issues.push({ code: 'not-a-lesson', path: 'lesson', expected: lessons, received: form.lesson });
	if (!frame.ok || !rules.ok || issues.length > 0) return refuse(...issues);
	return ok({ ...frame.value, lesson: form.lesson, rules: rules.value });
}

/**
 * Opens a class with the asker as its teacher. `lessons` are the slugs there are. `drawn` is the form's own id, drawn with its
 * page: a form that is sent twice opens one class.
 */
export async function openClass(sql: Sql, asker: Asker, form: ClassForm, lessons: readonly string[], drawn?: string): Promise<Result<Class>> {
	if (!asker.person.canTeach) return notFound();
	const checked = checkForm(form, lessons);
	if (!checked.ok) return checked;
	const { title, lesson, firstDay, lastDay, rules, seats } = checked.value;
	const id = drawn !== undefined && /^[0-9a-z]{8}$/.test(drawn) ? drawn : drawLetters(8);
	const made = await sql.begin(async (sql) => {
		const rows = await sql`
			insert into classes (id, title, lesson, first_day, last_day, rules, seats)
			values (${id}, ${title}, ${lesson}, ${firstDay}, ${lastDay}, ${sql.json(rules as never)}, ${seats})
			on conflict (id) do nothing returning id`;
		if (rows.length === 0) return false;
		await sql`
			insert into members (id, class_id, person_id, role, status, name)
			values (${drawLetters(10)}, ${id}, ${asker.person.id}, 'teacher', 'admitted', ${asker.person.name})`;
		return true;
	});
	// Her own from the first time; another's is as if it weren't there.
	return made ? ok({ id, ...checked.value }) : ok(await readClass(sql, asker, id));
}

/** A class that the asker is admitted to, in any role. */
export async function readClass(sql: Query, asker: Asker, classId: string): Promise<Class> {
	if (!isId(classId)) return notFound();
	const [row] = await sql`
		select ${columns(sql)} from classes c join members m on m.class_id = c.id
		where c.id = ${classId} and m.person_id = ${asker.person.id} and m.status = 'admitted'`;
	return row ? read(row as never) : notFound();
}

/** Every class the asker teaches, helps or learns in, and those she has asked to join; latest first. */
export async function classesOf(sql: Query, asker: Asker): Promise<readonly { readonly class: Class; readonly membership: Membership }[]> {
	const rows = await sql`
		select ${columns(sql)}, m.id as member_id, m.role, m.status, m.name from classes c join members m on m.class_id = c.id
		where m.person_id = ${asker.person.id} and m.status <> 'removed' order by c.first_day desc, c.made_at desc`;
	return rows.map((row) => ({
		class: read(row as never),
		membership: { classId: row.id, lesson: row.lesson, memberId: row.member_id, role: row.role as MemberRole, status: row.status, name: row.name }
	}));
}

/**
 * Changes what a class is called, when it is held and for how many. Never fewer seats than are taken (with those who have
 * asked): they are counted under the same lock as in askToJoin.
 */
export async function changeClass(sql: Sql, asker: Asker, classId: string, frame: ClassFrame): Promise<Result<ClassFrame>> {
	await requireMay(sql, asker, classId, { resource: 'class', action: 'change' });
	const checked = checkFrame(frame);
	if (!checked.ok) return checked;
	const { title, firstDay, lastDay, seats } = checked.value;
	return sql.begin(async (sql): Promise<Result<ClassFrame>> => {
		await sql`select from classes where id = ${classId} for update`;
		const taken = await seatsTaken(sql, classId);
		if (seats < taken) return refuse({ code: 'seats-taken', path: 'seats', expected: taken, received: seats });
		await sql`update classes set title = ${title}, first_day = ${firstDay}, last_day = ${lastDay}, seats = ${seats} where id = ${classId}`;
		return checked;
	});
}

export async function changeRules(sql: Query, asker: Asker, classId: string, rules: unknown): Promise<Result<ClassRules>> {
	await requireMay(sql, asker, classId, { resource: 'rules', action: 'change' });
	const checked = checkRules(rules);
	if (checked.ok) await sql`update classes set rules = ${sql.json(checked.value as never)} where id = ${classId}`;
	return checked;
}

/** A new join code; the one before it stops at once. An hour unless told, a week at most. */
export async function newJoinCode(sql: Query, asker: Asker, classId: string, now: Date, minutes = 60): Promise<JoinCode> {
	await requireMay(sql, asker, classId, { resource: 'code', action: 'change' });
	const code = drawLetters(8);
	const held = Number.isFinite(minutes) ? Math.min(Math.max(minutes, 1), 7 * 24 * 60) : 60;
	const expiresAt = new Date(now.getTime() + held * 60_000);
	await sql`update classes set join_code = ${code}, join_code_expires_at = ${expiresAt} where id = ${classId}`;
	return { code, expiresAt: expiresAt.getTime() };
}

/** The join code that holds now, if any. */
export async function readJoinCode(sql: Query, asker: Asker, classId: string): Promise<JoinCode | null> {
	await requireMay(sql, asker, classId, { resource: 'code', action: 'read' });
	const [row] = await sql`select join_code, join_code_expires_at from classes where id = ${classId} and join_code_expires_at > now()`;
	return row ? { code: row.join_code, expiresAt: row.join_code_expires_at.getTime() } : null;
}
