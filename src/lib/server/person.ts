// People, and signing in with a passphrase (teachers and helpers; learners come with a card).
import { randomUUID } from 'node:crypto';
import type { Sql } from 'postgres';
import { ok, refuse, type Result } from '../drafting/result.ts';
import type { Asker, Query } from './asker.ts';
import { forgetAttempts, giveTurnBack, takeTurn } from './attempt.ts';
import { checkName } from './name.ts';
import { checkPassphrase, hashSecret, normalPassphrase, proves } from './passphrase.ts';

export interface Person {
	readonly id: string;
	readonly name: string;
	readonly canTeach: boolean;
}

export async function makePerson(sql: Query, name: string, canTeach: boolean): Promise<Person> {
	const person = { id: randomUUID(), name, canTeach };
	await sql`insert into people (id, name, can_teach) values (${person.id}, ${name}, ${canTeach})`;
	return person;
}

export async function isAnybodyHere(sql: Query): Promise<boolean> {
	const [row] = await sql`select exists(select from people) as here`;
	return row!.here;
}

/** Sign-in names are compared without regard to capitals. */
const fold = (name: string): string => name.normalize('NFKC').trim().replace(/\p{Zs}+/gu, ' ').toLowerCase();

/** Sets the passphrase and the name she signs in with; every other session of hers ends. Her own card or link proved her. */
export async function setPassphrase(sql: Sql, asker: Asker, typed: { name: string; passphrase: string }): Promise<Result<null>> {
	const name = checkName(typed.name, 'name');
	const passphrase = checkPassphrase(typed.passphrase);
	if (!name.ok || !passphrase.ok) return refuse(...(name.ok ? [] : name.issues), ...(passphrase.ok ? [] : passphrase.issues));
	const hashed = await hashSecret(passphrase.value);
	return sql.begin(async (sql) => {
		// One at a time for one name, so that of two who want it the second is told.
		await sql`select pg_advisory_xact_lock(hashtextextended(${`sign-in name:${fold(name.value)}`}, 0))`;
		const [taken] = await sql`select from people where sign_in_name = ${fold(name.value)} and id <> ${asker.person.id}`;
		if (taken) return refuse({ code: 'name-taken', path: 'name', received: name.value });
		await sql`
			update people set name = ${name.value}, sign_in_name = ${fold(name.value)}, passphrase_hash = ${hashed}
			where id = ${asker.person.id}`;
		await sql`delete from sessions where person_id = ${asker.person.id} and encode(digest, 'hex') <> ${asker.sessionId}`;
		await forgetAttempts(sql, `person:${asker.person.id}`);
		return ok(null);
	});
}

/** The account page: what she signs in with, if she has set it. */
export async function readAccount(sql: Query, asker: Asker): Promise<{ readonly name: string; readonly signInName: string | null }> {
	const [row] = await sql`select name, sign_in_name from people where id = ${asker.person.id}`;
	return { name: row!.name, signInName: row!.sign_in_name };
}

/** Signs in by name and passphrase. A wrong name and a wrong passphrase give the same answer, in the same time. */
export async function provePassphrase(sql: Sql, typed: { name: string; passphrase: string }, device: string): Promise<Result<Person>> {
	const wrong = refuse({ code: 'name-or-passphrase-wrong', path: 'passphrase' });
	const passphrase = normalPassphrase(typed.passphrase);
	if (!checkName(typed.name, 'name').ok || [...passphrase].length > 256) return wrong;
	const [row] = await sql`select id, name, can_teach, passphrase_hash from people where sign_in_name = ${fold(typed.name)}`;
	if (!row) return proves(passphrase, null).then(() => wrong);
	const account = `person:${row.id}`;
	const turn = await takeTurn(sql, account, device);
	if (turn !== 'taken') return refuse({ code: turn, path: 'passphrase' });
	if (!(await proves(passphrase, row.passphrase_hash))) return wrong;
	await giveTurnBack(sql, account, device);
	return ok({ id: row.id, name: row.name, canTeach: row.can_teach });
}
