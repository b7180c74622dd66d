// What a learner comes back with on any device: a secret of 128 bits in a QR, and five words that anyone can type.
import { randomUUID } from 'node:crypto';
import type { Sql } from 'postgres';
import { may } from '../class/permission.ts';
import { ok, refuse, type Result } from '../drafting/result.ts';
import { isId, notFound, type Asker, type Query } from './asker.ts';
import { giveTurnBack, takeTurn } from './attempt.ts';
import { drawSecret, isSecret, sha256 } from './digest.ts';
import { hashSecret, proves } from './passphrase.ts';
import type { Person } from './person.ts';
import { words } from './words.ts';

export interface Card {
	readonly classId: string;
	readonly name: string;
	/** Goes into the fragment of the address in the QR, so that it reaches no log. */
	readonly secret: string;
	/** Five words, 10 bits each. */
	readonly words: readonly string[];
}

export interface CardHolder {
	readonly person: Person;
	readonly cardId: string;
	readonly classId: string;
}

/** The words follow from the secret, and nothing follows from them. `turn`: the next five, where those before it are taken. */
function wordsOf(secret: string, turn: number): string[] {
	const bytes = sha256(`words ${turn} ${secret}`);
	return Array.from({ length: 5 }, (_, index) => words[bytes.readUInt16BE(2 * index) % words.length]!);
}

/**
 * Makes a new card for a member: her own, or one that her teacher prints. It is shown this once.
 * The card before it ends, and with it every session that she comes in by without a passphrase, by that card, by a link or
 * from joining: a lost phone is shut out. The asker's own session stays, and so do all when it is her first card.
 * `drawn` is the secret that came with the page of the form (drawSecret): sent twice, the form makes one card and shows
 * the same one.
 */
export async function makeCard(sql: Sql, asker: Asker, memberId: string, drawn?: string): Promise<Card> {
	if (!isId(memberId)) return notFound();
	const offered = isSecret(drawn) ? drawn : drawSecret();
	const hashed = await hashSecret(wordsOf(offered, 0).join(' '));
	return sql.begin(async (sql) => {
		const [member] = await sql`
			select m.class_id, m.name, m.person_id, me.role
			from members m join members me on me.class_id = m.class_id and me.person_id = ${asker.person.id} and me.status = 'admitted'
			where m.id = ${memberId} and m.status = 'admitted' and m.role <> 'teacher' for update of m`;
		if (!member) return notFound();
		const mine = member.person_id === asker.person.id;
		if (!may(member.role, { resource: 'card', action: 'print' }, mine ? 'own' : 'class')) return notFound();

		const shown = { classId: member.class_id, name: member.name };
		const [before] = await sql`select member_id, first_words, ended_at from cards where secret_digest = ${sha256(offered)}`;
		if (before && before.member_id === memberId && before.ended_at === null) {
			return { ...shown, secret: offered, words: wordsStartingWith(offered, before.first_words) };
		}
		// A page gone back to after its card ended draws another.
		const secret = before ? drawSecret() : offered;

		const cardId = randomUUID();
		const ended = await sql`update cards set ended_at = now() where member_id = ${memberId} and ended_at is null returning id`;
		for (const { id } of ended) {
			await sql`update sessions set card_id = null where card_id = ${id} and encode(digest, 'hex') = ${asker.sessionId}`;
			await sql`delete from sessions where card_id = ${id}`;
		}
		if (ended.length > 0) {
			await sql`
				delete from sessions s using people p
				where s.person_id = ${member.person_id} and p.id = s.person_id and p.passphrase_hash is null and encode(s.digest, 'hex') <> ${asker.sessionId}`;
		}
		// Which of a million pairs of words finds a card is settled by taking the next, not by chance alone.
		let turn = 0;
		while (await isPairTaken(sql, member.class_id, wordsOf(secret, turn))) turn++;
		const five = wordsOf(secret, turn);
		const wordsHash = secret === offered && turn === 0 ? hashed : await hashSecret(five.join(' '));
		await sql`
			insert into cards (id, member_id, class_id, secret_digest, first_words, words_hash)
			values (${cardId}, ${memberId}, ${member.class_id}, ${sha256(secret)}, ${five.slice(0, 2).join(' ')}, ${wordsHash})`;
		return { ...shown, secret, words: five };
	});
}

/** The five of a card that is kept: whatever turn they were taken in, they begin with what is kept. */
function wordsStartingWith(secret: string, firstWords: string): string[] {
	for (let turn = 0; turn < 1000; turn++) {
		const five = wordsOf(secret, turn);
		if (five.slice(0, 2).join(' ') === firstWords) return five;
	}
	throw new Error(`no turn up to 1000 begins with the words that are kept`);
}

async function isPairTaken(sql: Query, classId: string, five: readonly string[]): Promise<boolean> {
	const pair = five.slice(0, 2).join(' ');
	const found = await sql`select from cards where class_id = ${classId} and first_words = ${pair} and ended_at is null`;
	return found.length > 0;
}

const holder = (row: Record<string, never>): CardHolder => ({
	person: { id: row.person_id!, name: row.name!, canTeach: row.can_teach! }, cardId: row.card_id!, classId: row.class_id!
});

/** Whose card the secret in the QR opens, if it hasn't ended and she is still in the class. */
export async function proveSecret(sql: Sql, secret: string): Promise<CardHolder | null> {
	const [row] = await sql`
		select c.id as card_id, c.class_id, p.id as person_id, p.name, p.can_teach
		from cards c join members m on m.id = c.member_id join people p on p.id = m.person_id
		where c.secret_digest = ${sha256(secret)} and c.ended_at is null and m.status = 'admitted'`;
	return row ? holder(row as never) : null;
}

/** Whose card five typed words open in a class: the first two find it, all five prove it. */
export async function proveWords(sql: Sql, typed: { classId: string; words: string }, device: string): Promise<Result<CardHolder>> {
	const wrong = refuse({ code: 'card-words-wrong', path: 'words' });
	const classId = typed.classId.trim().toLowerCase();
	if (typed.words.length > 200 || !isId(classId)) return wrong;
	const five = typed.words.toLowerCase().split(/[^a-z]+/).filter((word) => word !== '');
	if (five.length !== 5) return refuse({ code: 'card-words-count', path: 'words', expected: 5, received: five.length });
	const [row] = await sql`
		select c.id as card_id, c.class_id, c.words_hash, p.id as person_id, p.name, p.can_teach
		from cards c join members m on m.id = c.member_id join people p on p.id = m.person_id
		where c.class_id = ${classId} and c.first_words = ${five.slice(0, 2).join(' ')}
			and c.ended_at is null and m.status = 'admitted'`;
	if (!row) return proves(five.join(' '), null).then(() => wrong);
	const account = `card:${row.card_id}`;
	const turn = await takeTurn(sql, account, device);
	if (turn !== 'taken') return refuse({ code: turn, path: 'words' });
	if (!(await proves(five.join(' '), row.words_hash))) return wrong;
	await giveTurnBack(sql, account, device);
	return ok(holder(row as never));
}
