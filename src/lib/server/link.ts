// A link that signs one person in, once.
import type { Query } from './asker.ts';
import { drawSecret, isSecret, sha256 } from './digest.ts';

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

/** A page that presses again within this pressed twice. Seconds. */
const pressedTwice = 60;

/**
 * Uses the link: of two at once, one gets the person and the other null. `drawn` is the secret that came with the page
 * (drawSecret): both presses of one page are hers, since a browser without the script shows the answer to the second.
 */
export async function takeLink(sql: Query, token: string, drawn?: string): Promise<LinkedPerson | null> {
	const page = isSecret(drawn) ? sha256(drawn) : null;
	const [row] = await sql`
		with taken as (
			update links set used_at = coalesce(used_at, now()), used_with = coalesce(used_with, ${page})
			where digest = ${sha256(token)} and (
				used_at is null and expires_at > now()
				or used_with = ${page} and used_at > now() - make_interval(secs => ${pressedTwice})
			) returning person_id
		)
		select id, name, can_teach, passphrase_hash is not null as has_passphrase from people join taken on id = person_id`;
	return row ? { id: row.id, name: row.name, canTeach: row.can_teach, hasPassphrase: row.has_passphrase } : null;
}
