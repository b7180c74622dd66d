// People for tests, made through the same doors as real ones.
import { randomUUID } from 'node:crypto';
import type { Sql } from 'postgres';
import { expect } from 'vitest';
import type { EventBody, NewEvent } from '../../src/lib/class/event.ts';
import { defaultRules } from '../../src/lib/class/gate.ts';
import type { Result } from '../../src/lib/drafting/result.ts';
import type { Asker } from '../../src/lib/server/asker.ts';
import { newJoinCode, openClass } from '../../src/lib/server/class.ts';
import { admit, askToJoin } from '../../src/lib/server/member.ts';
import { makePerson, type Person } from '../../src/lib/server/person.ts';
import { beginSession, openSession } from '../../src/lib/server/session.ts';

export function value<T>(result: Result<T>): T {
	if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.issues)}`);
	return result.value;
}
export const codes = (result: Result<unknown>): readonly string[] => (result.ok ? [] : result.issues.map(({ code }) => code));

/** The promise ends in a 404: what isn't hers looks as if it weren't there. */
export const expectNotFound = (work: Promise<unknown>): Promise<void> => expect(work).rejects.toMatchObject({ status: 404 });

export async function signIn(sql: Sql, person: Person, cardId: string | null = null): Promise<{ asker: Asker; id: string }> {
	const id = await beginSession(sql, person, cardId);
	return { id, asker: (await openSession(sql, id, null))!.asker };
}

export async function makeTeacher(sql: Sql, name = 'Hanne'): Promise<Asker> {
	return (await signIn(sql, await makePerson(sql, name, true))).asker;
}

export interface Room {
	readonly teacher: Asker;
	readonly classId: string;
	readonly code: string;
}
export async function makeRoom(sql: Sql, seats = 12, teacher?: Asker): Promise<Room> {
	const who = teacher ?? (await makeTeacher(sql));
	const form = { title: 'Tuesday, textiles room', lesson: 'lined-half-circle', firstDay: '2026-03-03', lastDay: '2026-04-14', seats, rules: defaultRules };
	const { id } = value(await openClass(sql, who, form, ['lined-half-circle']));
	const { code } = await newJoinCode(sql, who, id, new Date());
	return { teacher: who, classId: id, code };
}

export interface Learner {
	readonly asker: Asker;
	readonly memberId: string;
	readonly person: Person;
	/** What is in her cookie. */
	readonly sessionId: string;
}
/** Someone who has asked to join, and is let in unless told otherwise. */
export async function makeLearner(sql: Sql, room: Room, name: string, letIn = true): Promise<Learner> {
	const { person, membership } = value(await askToJoin(sql, null, { code: room.code, name }));
	if (letIn) await admit(sql, room.teacher, room.classId, membership.memberId);
	const { asker, id } = await signIn(sql, person);
	return { asker, person, memberId: membership.memberId, sessionId: id };
}

export const event = (counter: number, body: EventBody, device = 'phone'): NewEvent => ({ id: randomUUID(), device, counter, body });
export const tick = (counter: number, step = 'wash-cloth'): NewEvent => event(counter, { kind: 'tick', step });
export const reading = (counter: number, mm: number): NewEvent =>
	event(counter, { kind: 'reading', measurement: 'waist', mm, typed: String(mm / 10), unit: 'cm', route: 'self' });
export const ask = (counter: number): NewEvent => event(counter, { kind: 'ask', gate: ['cloth'], second: 'Bea' });
