import { expect, test } from 'vitest';
import { makePerson } from '../../src/lib/server/person.ts';
import { beginSession, endSession, endSessionsEverywhere, openSession, setSessionCookie, sweepSessions } from '../../src/lib/server/session.ts';
import { makeLearner, makeRoom, makeTeacher, signIn } from './scene.ts';
import { onEachServer } from './test-database.ts';

onEachServer('sessions', (database) => {
	test('a session opens for whoever began it, and for no other id', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Hanne', true);
		const id = await beginSession(sql, person);
		expect((await openSession(sql, id, null))?.asker.person).toEqual(person);
		const other = id.slice(0, -1) + (id.endsWith('a') ? 'b' : 'a');
		for (const wrong of [other, '', 'x', `l${id.slice(1)}`, id.toUpperCase(), `${id}\0`, "' or 1=1"]) {
			expect(await openSession(sql, wrong, null)).toBeNull();
		}
	});

	test('only the SHA-256 of the id is kept: the cookie’s value is nowhere in the database', async () => {
		const sql = database();
		const { id, asker } = await signIn(sql, await makePerson(sql, 'Hanne', true));
		const tables = await sql`select table_name from information_schema.tables where table_schema = 'public' and table_type = 'BASE TABLE'`;
		expect(tables.length).toBeGreaterThan(7);
		for (const { table_name } of tables) {
			const found = await sql`select from ${sql(table_name)} as t where t::text like ${`%${id}%`} or t::text like ${`%${Buffer.from(id).toString('hex')}%`}`;
			expect([table_name, found.length]).toEqual([table_name, 0]);
		}
		const [kept] = await sql`select encode(digest, 'hex') as digest from sessions where person_id = ${asker.person.id}`;
		expect(kept!.digest).toBe(asker.sessionId);
		expect(asker.sessionId).toMatch(/^[0-9a-f]{64}$/);
	});

	test('the membership of the class in the address comes along, and of no other class', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const elsewhere = await makeRoom(sql);
		expect((await openSession(sql, wen.sessionId, room.classId))?.membership).toEqual({
			classId: room.classId, lesson: 'lined-half-circle', memberId: wen.memberId, role: 'learner', status: 'admitted', name: 'Wen'
		});
		expect((await openSession(sql, wen.sessionId, elsewhere.classId))?.membership).toBeNull();
		expect((await openSession(sql, wen.sessionId, null))?.membership).toBeNull();
	});

	test('a session unused too long has ended, and so has one that is too old however much it is used', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Hanne', true);
		const idle = await beginSession(sql, person);
		await sql`update sessions set idle_until = now() - interval '1 second' where person_id = ${person.id}`;
		expect(await openSession(sql, idle, null)).toBeNull();
		const old = await beginSession(sql, person);
		await sql`update sessions set ends_at = now() - interval '1 second' where person_id = ${person.id}`;
		expect(await openSession(sql, old, null)).toBeNull();
		await sweepSessions(sql);
		expect(await sql`select from sessions where person_id = ${person.id}`).toHaveLength(0);
	});

	test.each([
		['teacher', true, 8, 7 * 24],
		['learner', false, 30 * 24, 180 * 24]
	])('a %s’s session lives its own hours', async (_, canTeach, idle, atMost) => {
		const sql = database();
		const person = await makePerson(sql, 'Marit', canTeach);
		await beginSession(sql, person);
		const [row] = await sql`
			select extract(epoch from idle_until - began_at) / 3600 as idle, extract(epoch from ends_at - began_at) / 3600 as at_most
			from sessions where person_id = ${person.id}`;
		expect(Number(row!.idle)).toBeCloseTo(idle, 1);
		expect(Number(row!.at_most)).toBeCloseTo(atMost, 1);
	});

	test('use past half its idle time lengthens a session and its cookie, never beyond its end', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Hanne', true);
		const id = await beginSession(sql, person);
		expect((await openSession(sql, id, null))?.fresh).toBe(false);
		await sql`update sessions set idle_until = now() + interval '3 hours', ends_at = now() + interval '1 hour' where person_id = ${person.id}`;
		expect((await openSession(sql, id, null))?.fresh).toBe(true);
		const [row] = await sql`select idle_until > now() + interval '7 hours' as longer, ends_at < now() + interval '2 hours' as still from sessions where person_id = ${person.id}`;
		expect(row).toEqual({ longer: true, still: true });
	});

	test('signing out ends one session, signing out everywhere ends them all, and nobody else’s', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Hanne', true);
		const [a, b, c] = [await signIn(sql, person), await signIn(sql, person), await signIn(sql, person)];
		const other = await makeTeacher(sql, 'Leni');
		await endSession(sql, a.id);
		expect(await openSession(sql, a.id, null)).toBeNull();
		expect(await openSession(sql, b.id, null)).not.toBeNull();
		await endSessionsEverywhere(sql, b.asker);
		expect(await openSession(sql, b.id, null)).toBeNull();
		expect(await openSession(sql, c.id, null)).toBeNull();
		expect(await sql`select from sessions where person_id = ${other.person.id}`).toHaveLength(1);
	});

	test('every sign-in begins under a new id', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Hanne', true);
		const ids = await Promise.all(Array.from({ length: 20 }, () => beginSession(sql, person)));
		expect(new Set(ids).size).toBe(20);
	});

	test('the cookie has the host prefix on https and does without it on plain http', () => {
		const set: unknown[][] = [];
		const cookies = { set: (...given: unknown[]) => void set.push(given) };
		setSessionCookie(cookies as never, new URL('https://hall.example/'), 'tabc');
		setSessionCookie(cookies as never, new URL('http://192.0.2.7:3000/'), 'labc');
		expect(set).toEqual([
			['__Host-skirtwright', 'tabc', { path: '/', httpOnly: true, sameSite: 'lax', secure: true, maxAge: 8 * 3600 }],
			['skirtwright', 'labc', { path: '/', httpOnly: true, sameSite: 'lax', secure: false, maxAge: 30 * 24 * 3600 }]
		]);
	});
});
