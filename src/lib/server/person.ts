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

export async function makePerson(sql: Query, name: string, canTeach: boolean, id: string = randomUUID()): Promise<Person> {
	const person = { id, name, canTeach };
	await sql`insert into people (id, name, can_teach) values (${person.id}, ${name}, ${canTeach})`;
	return person;
}

export async function isAnybodyHere(sql: Query): Promise<boolean> {
	const [row] = await sql`select exists(select from people) as here`;
	return row!.here;
}

/** Sign-in names are compared without regard to capitals. */
const fold = (name: string): string => name.normalize('NFKC').trim().replace(/\p{Zs}+/gu, ' ').toLowerCase();

/** A one-time link just used proves as much as the passphrase she may have forgotten. */
const linkMinutes = 15;

export interface Account {
	readonly name: string;
	/** What she signs in with, if she has set it. */
	readonly signInName: string | null;
	/** Whether changing the passphrase asks for the one that holds now. */
	readonly asksForCurrent: boolean;
}

export async function readAccount(sql: Query, asker: Asker): Promise<Account> {
	const [row] = await sql`
		select name, sign_in_name, passphrase_hash is not null and not exists (
			select from links where person_id = people.id and used_at > now() - make_interval(mins => ${linkMinutes})
		) as asks
		from people where id = ${asker.person.id}`;
	return { name: row!.name, signInName: row!.sign_in_name, asksForCurrent: row!.asks };
}

/** Sets the name she signs in with and the passphrase; every other session of hers ends. */
export async function setPassphrase(sql: Sql, asker: Asker, typed: { name: string; passphrase: string; current?: string }): Promise<Result<null>> {
	const current = await checkCurrent(sql, asker, typed.current);
	if (!current.ok) return current;
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

/** A screen left open is not enough to take an account over. Tries are counted, as at the door. */
async function checkCurrent(sql: Sql, asker: Asker, current: string | undefined): Promise<Result<null>> {
	if (!(await readAccount(sql, asker)).asksForCurrent) return ok(null);
	if (!current) return refuse({ code: 'current-missing', path: 'current' });
	const account = `person:${asker.person.id}`;
	const turn = await takeTurn(sql, account, asker.sessionId);
	if (turn !== 'taken') return refuse({ code: turn, path: 'current' });
	const [row] = await sql`select passphrase_hash from people where id = ${asker.person.id}`;
	if (!(await proves(normalPassphrase(current), row!.passphrase_hash))) return refuse({ code: 'current-wrong', path: 'current' });
	await giveTurnBack(sql, account, asker.sessionId);
	return ok(null);
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
