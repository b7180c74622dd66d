// A link that signs one person in, once.
import type { Sql } from 'postgres';
import type { Query } from './asker.ts';
import { drawSecret, sha256 } from './digest.ts';

export interface LinkedPerson {
	readonly id: string;
	readonly name: string;
	readonly canTeach: boolean;
	/** False on the first teacher's first visit: she has no passphrase yet. */
	readonly hasPassphrase: boolean;
}

/** Makes a link and gives its token, which can't be asked for again. */
export async function makeLink(sql: Query, personId: string, expiresAt: Date): Promise<string> {
	const token = drawSecret();
	await sql`insert into links (digest, person_id, expires_at) values (${sha256(token)}, ${personId}, ${expiresAt})`;
	return token;
}

/** Whose link it is, without using it (the page behind it shows a button first: previews must not use it up). */
export async function readLink(sql: Query, token: string): Promise<LinkedPerson | null> {
	const [row] = await sql`
		select p.id, p.name, p.can_teach, p.passphrase_hash is not null as has_passphrase
		from links l join people p on p.id = l.person_id
		where l.digest = ${sha256(token)} and l.used_at is null and l.expires_at > now()`;
	return row ? { id: row.id, name: row.name, canTeach: row.can_teach, hasPassphrase: row.has_passphrase } : null;
}

/** Uses the link: of two at once, one gets the person and the other null. */
export async function takeLink(sql: Sql, token: string): Promise<LinkedPerson | null> {
	return sql.begin(async (sql) => {
		const person = await readLink(sql, token);
		const taken = await sql`
			update links set used_at = now() where digest = ${sha256(token)} and used_at is null and expires_at > now()`;
		return taken.count === 1 ? person : null;
	});
}
