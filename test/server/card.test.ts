import { expect, test } from 'vitest';
import { makeCard, proveSecret, proveWords } from '../../src/lib/server/card.ts';
import { drawSecret, sha256 } from '../../src/lib/server/digest.ts';
import { remove } from '../../src/lib/server/member.ts';
import { openSession } from '../../src/lib/server/session.ts';
import { words } from '../../src/lib/server/words.ts';
import { codes, expectNotFound, makeLearner, makeRoom, makeTeacher, signIn, value } from './scene.ts';
import { onEachServer } from './test-database.ts';

test('there are 1024 different words, short and plain, so that five of them are fifty bits', () => {
	expect(new Set(words).size).toBe(1024);
	expect(words.filter((word) => !/^[a-z]{3,8}$/.test(word))).toEqual([]);
});

onEachServer('cards', (database) => {
	test('a learner comes back by the secret in the QR, or by class and five words typed any way', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const card = await makeCard(sql, wen.asker, wen.memberId);
		expect(card).toMatchObject({ classId: room.classId, name: 'Wen' });
		expect(card.words).toHaveLength(5);
		expect((await proveSecret(sql, card.secret))?.person.id).toBe(wen.person.id);
		for (const typed of [card.words.join(' '), ` ${card.words.join(' - ').toUpperCase()}. `, card.words.join('\n')]) {
			expect(value(await proveWords(sql, { classId: ` ${room.classId.toUpperCase()}`, words: typed }, 'tablet')).person.id).toBe(wen.person.id);
		}
	});

	test('wrong words, another class, too few words and nonsense are refused in so many words', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const { classId, words: five } = await makeCard(sql, wen.asker, wen.memberId);
		const other = await makeRoom(sql);
		const swapped = [five[0], five[1], five[2], five[4], five[3] === five[4] ? 'acorn' : five[3]].join(' ');
		expect(codes(await proveWords(sql, { classId, words: swapped }, 'a'))).toEqual(['card-words-wrong']);
		expect(codes(await proveWords(sql, { classId: other.classId, words: five.join(' ') }, 'a'))).toEqual(['card-words-wrong']);
		expect(codes(await proveWords(sql, { classId, words: five.slice(1).join(' ') }, 'a'))).toEqual(['card-words-count']);
		expect(codes(await proveWords(sql, { classId: '\0', words: five.join(' ') }, 'a'))).toEqual(['card-words-wrong']);
		expect(codes(await proveWords(sql, { classId, words: 'x'.repeat(9999) }, 'a'))).toEqual(['card-words-wrong']);
		for (const secret of ['', '\0', 'x'.repeat(5000)]) expect(await proveSecret(sql, secret)).toBeNull();
	});

	test('neither the secret nor the words are kept', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const card = await makeCard(sql, wen.asker, wen.memberId);
		expect(await sql`select from cards as t where t::text like ${`%${card.secret}%`}`).toHaveLength(0);
		expect(await sql`select from cards as t where t::text like ${`%${card.words.slice(2).join(' ')}%`}`).toHaveLength(0);
		const [kept] = await sql`select words_hash, length(secret_digest) as bytes from cards where member_id = ${wen.memberId}`;
		expect(kept!.words_hash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
		expect(kept!.bytes).toBe(32);
	});

	test('a new card ends the old one, the sessions that began with it, and the one from joining', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const old = await makeCard(sql, wen.asker, wen.memberId);
		const held = await proveSecret(sql, old.secret);
		const lost = await signIn(sql, held!.person, held!.cardId);

		const card = await makeCard(sql, room.teacher, wen.memberId);
		expect(await proveSecret(sql, old.secret)).toBeNull();
		expect(codes(await proveWords(sql, { classId: room.classId, words: old.words.join(' ') }, 'a'))).toEqual(['card-words-wrong']);
		expect(await openSession(sql, lost.id, null)).toBeNull();
		expect(await openSession(sql, wen.sessionId, null)).toBeNull();
		expect((await proveSecret(sql, card.secret))?.person.id).toBe(wen.person.id);
	});

	test('a first card leaves the phone she joined on signed in', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea')];
		await makeCard(sql, room.teacher, wen.memberId);
		expect(await openSession(sql, wen.sessionId, null)).not.toBeNull();
		await makeCard(sql, room.teacher, wen.memberId);
		expect(await openSession(sql, bea.sessionId, null)).not.toBeNull();
	});

	test('a learner who prints her own new card stays signed in where she did it', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		await makeCard(sql, wen.asker, wen.memberId);
		const held = (await proveSecret(sql, (await makeCard(sql, wen.asker, wen.memberId)).secret))!;
		const here = await signIn(sql, held.person, held.cardId);
		const there = await signIn(sql, held.person, held.cardId);
		await makeCard(sql, here.asker, wen.memberId);
		expect(await openSession(sql, here.id, null)).not.toBeNull();
		expect(await openSession(sql, there.id, null)).toBeNull();
	});

	test('nobody prints a card for another: not a learner, not a teacher of another class, and none is a teacher’s', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea')];
		await expectNotFound(makeCard(sql, bea.asker, wen.memberId));
		await expectNotFound(makeCard(sql, (await makeRoom(sql)).teacher, wen.memberId));
		await expectNotFound(makeCard(sql, await makeTeacher(sql), wen.memberId));
		await expectNotFound(makeCard(sql, wen.asker, '\0'));
		const [me] = await sql`select id from members where class_id = ${room.classId} and role = 'teacher'`;
		await expectNotFound(makeCard(sql, room.teacher, me!.id));
	});

	test('two new cards at once leave one that works', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const cards = await Promise.all([1, 2, 3].map(() => makeCard(sql, room.teacher, wen.memberId)));
		const opened = await Promise.all(cards.map(({ secret }) => proveSecret(sql, secret)));
		expect(opened.filter((holder) => holder !== null)).toHaveLength(1);
	});

	test('a form that is sent twice, even at the same moment, makes one card and shows the same one', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const drawn = drawSecret();
		const [one, two, three] = await Promise.all([1, 2, 3].map(() => makeCard(sql, wen.asker, wen.memberId, drawn)));
		expect([two, three]).toEqual([one, one]);
		expect(await sql`select from cards where member_id = ${wen.memberId}`).toHaveLength(1);
		expect(value(await proveWords(sql, { classId: room.classId, words: one!.words.join(' ') }, 'tablet')).person.id).toBe(wen.person.id);
		expect((await proveSecret(sql, one!.secret))?.person.id).toBe(wen.person.id);
	});

	test('a page gone back to after its card ended makes another, and what is no secret is drawn anew', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea')];
		const drawn = drawSecret();
		const first = await makeCard(sql, wen.asker, wen.memberId, drawn);
		await makeCard(sql, room.teacher, wen.memberId);
		for (const said of [drawn, '', 'wen', '0'.repeat(25), `${'0'.repeat(26)} or`]) {
			const card = await makeCard(sql, wen.asker, wen.memberId, said);
			expect(card.secret).toMatch(/^[0-9a-z]{26}$/);
			expect([drawn, said]).not.toContain(card.secret);
		}
		expect(await proveSecret(sql, first.secret)).toBeNull();
		// Whose page it came with makes no difference: another’s card is neither shown nor ended.
		const hers = await makeCard(sql, bea.asker, bea.memberId, drawSecret());
		expect((await makeCard(sql, wen.asker, wen.memberId, hers.secret)).secret).not.toBe(hers.secret);
		expect((await proveSecret(sql, hers.secret))?.person.id).toBe(bea.person.id);
	});

	test('cards whose words begin alike are told apart by the next five', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea')];
		const drawn = drawSecret();
		const usual = await makeCard(sql, wen.asker, wen.memberId, drawn);
		await sql`delete from cards where member_id = ${wen.memberId}`;
		const other = await makeCard(sql, bea.asker, bea.memberId);
		await sql`update cards set first_words = ${usual.words.slice(0, 2).join(' ')} where secret_digest = ${sha256(other.secret)}`;
		const next = await makeCard(sql, wen.asker, wen.memberId, drawn);
		expect(next.words.slice(0, 2)).not.toEqual(usual.words.slice(0, 2));
		expect(await makeCard(sql, wen.asker, wen.memberId, drawn)).toEqual(next);
		expect(value(await proveWords(sql, { classId: room.classId, words: next.words.join(' ') }, 'tablet')).person.id).toBe(wen.person.id);
	});

	test('a removed learner’s card opens nothing', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const card = await makeCard(sql, wen.asker, wen.memberId);
		expect(await remove(sql, room.teacher, room.classId, wen.memberId)).toBe(true);
		expect(await proveSecret(sql, card.secret)).toBeNull();
	});

	test('a guesser of five words gets at most a hundred tries at one card', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const card = await makeCard(sql, wen.asker, wen.memberId);
		const guess = [...card.words.slice(0, 2), 'acorn', 'acorn', 'acorn'].join(' ');
		const told = (await Promise.all(Array.from({ length: 120 }, (_, index) => proveWords(sql, { classId: room.classId, words: guess }, `device ${index}`)))).flatMap(codes);
		expect(told.filter((code) => code === 'card-words-wrong')).toHaveLength(100);
		expect(told.filter((code) => code === 'tried-too-often')).toHaveLength(20);
		// The QR still works, and a new card starts afresh.
		expect(await proveSecret(sql, card.secret)).not.toBeNull();
		const fresh = await makeCard(sql, room.teacher, wen.memberId);
		expect((await proveWords(sql, { classId: room.classId, words: fresh.words.join(' ') }, 'device 1')).ok).toBe(true);
	});

	test('three hundred learners come back at once behind one address, some after a slip, and all are let in', async () => {
		const sql = database();
		const room = await makeRoom(sql, 300);
		const people = await Promise.all(Array.from({ length: 300 }, (_, index) => makeLearner(sql, room, `Learner ${index}`)));
		const cards = await Promise.all(people.map(({ memberId }) => makeCard(sql, room.teacher, memberId)));
		const answers = await Promise.all(cards.map(async ({ classId, words: five }, index) => {
			if (index % 10 === 0) await proveWords(sql, { classId, words: [...five.slice(0, 4), 'nothing'].join(' ') }, `phone ${index}`);
			return proveWords(sql, { classId, words: five.join(' ') }, `phone ${index}`);
		}));
		expect(answers.map((answer) => value(answer).person.id)).toEqual(people.map(({ person }) => person.id));
	}, 60_000);
});
