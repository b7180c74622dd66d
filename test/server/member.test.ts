import { expect, test } from 'vitest';
import { classesOf, newJoinCode, readJoinCode } from '../../src/lib/server/class.ts';
import { admit, askToJoin, membershipOf, plainCode, readInvitation, readMembers, remove, setRole, turnAway } from '../../src/lib/server/member.ts';
import { drawSecret } from '../../src/lib/server/digest.ts';
import { readEvents } from '../../src/lib/server/log.ts';
import { codes, expectNotFound, makeLearner, makeRoom, makeTeacher, value } from './scene.ts';
import { onEachServer } from './test-database.ts';

test('a code is read off a poster however it is typed', () => {
	expect(plainCode(' K7QM-2XPD ')).toBe('k7qm2xpd');
	expect(plainCode('o0iI lL10')).toBe('00111110');
	expect(plainCode('\0')).toBe('');
});

onEachServer('joining', (database) => {
	test('fifty at once for the last seat: exactly one gets it', async () => {
		const sql = database();
		const room = await makeRoom(sql, 1);
		const answers = await Promise.all(Array.from({ length: 50 }, (_, index) => askToJoin(sql, null, { code: room.code, name: `Learner ${index}` })));
		expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
		expect(answers.flatMap(codes)).toEqual(Array.from({ length: 49 }, () => 'class-full'));
		expect(await readMembers(sql, room.teacher, room.classId)).toHaveLength(2);
	});

	test('of ten with one name at once, one gets it and the others are asked for a letter', async () => {
		const sql = database();
		const room = await makeRoom(sql, 30);
		const answers = await Promise.all(Array.from({ length: 10 }, (_, index) => askToJoin(sql, null, { code: room.code, name: index % 2 ? 'Bea' : ' BEA' })));
		expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
		expect(answers.flatMap(codes)).toEqual(Array.from({ length: 9 }, () => 'name-taken-here'));
		expect((await askToJoin(sql, null, { code: room.code, name: 'Bea K' })).ok).toBe(true);
	});

	test('a refused name or a full class leaves nobody behind', async () => {
		const sql = database();
		const room = await makeRoom(sql, 1);
		await makeLearner(sql, room, 'Wen');
		const [before] = await sql`select count(*)::int as people from people`;
		expect(codes(await askToJoin(sql, null, { code: room.code, name: 'Noor' }))).toEqual(['class-full']);
		expect(codes(await askToJoin(sql, null, { code: room.code, name: '' }))).toEqual(['name-missing']);
		expect((await sql`select count(*)::int as people from people`)[0]).toEqual(before);
	});

	test('a code holds for an hour unless told, and a new one ends the old', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const now = new Date();
		const first = await newJoinCode(sql, room.teacher, room.classId, now);
		expect(first.code).toMatch(/^[0-9a-z]{8}$/);
		expect(first.expiresAt - now.getTime()).toBe(3_600_000);
		const second = await newJoinCode(sql, room.teacher, room.classId, now, 12 * 60);
		expect(await readInvitation(sql, first.code)).toBeNull();
		expect(codes(await askToJoin(sql, null, { code: first.code, name: 'Wen' }))).toEqual(['code-unknown']);
		expect(await readInvitation(sql, second.code.toUpperCase())).toEqual({ classId: room.classId, title: 'Tuesday, textiles room' });
		expect(await readJoinCode(sql, room.teacher, room.classId)).toEqual(second);
		await newJoinCode(sql, room.teacher, room.classId, new Date(now.getTime() - 3_600_001));
		expect(await readJoinCode(sql, room.teacher, room.classId)).toBeNull();
		for (const code of ['', '\0', 'x'.repeat(5000), "' or true"]) expect(await readInvitation(sql, code)).toBeNull();
	});

	test('asking twice is asking once, and a signed-in person stays who she is', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const other = await makeRoom(sql);
		const there = value(await askToJoin(sql, wen.asker, { code: other.code, name: 'Wen L' }));
		expect(there.person.id).toBe(wen.person.id);
		expect(value(await askToJoin(sql, wen.asker, { code: other.code, name: 'Wen again' })).membership).toEqual(there.membership);
		expect(value(await askToJoin(sql, wen.asker, { code: room.code, name: 'Wen' })).membership.status).toBe('admitted');
		expect((await classesOf(sql, wen.asker)).map(({ membership }) => membership.status).sort()).toEqual(['admitted', 'asked']);
	});

	test('a form that is sent twice, even at the same moment and by no one yet signed in, asks once', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const drawn = drawSecret();
		const ask = (name: string, by = drawn) => askToJoin(sql, null, { code: room.code, name }, by);
		const [one, two] = (await Promise.all([ask('Wen'), ask('Wen')])).map(value);
		expect(two).toEqual(one);
		expect((await readMembers(sql, room.teacher, room.classId)).filter(({ name }) => name === 'Wen')).toHaveLength(1);
		// Another page can't become her by her name, nor can whoever learns her id.
		for (const by of [drawSecret(), '', one!.person.id]) expect(codes(await ask('Wen', by))).toEqual(['name-taken-here']);
		// The next at the same device, from the same page gone back to, is another person.
		const bea = value(await ask('Bea'));
		expect(bea.person.id).not.toBe(one!.person.id);
		// Let in meanwhile, she is in; after ten minutes the page no longer says who is at it.
		await admit(sql, room.teacher, room.classId, one!.membership.memberId);
		expect(value(await ask('Wen')).membership.status).toBe('admitted');
		await sql`update members set asked_at = now() - interval '601 seconds' where id = ${one!.membership.memberId}`;
		expect(codes(await ask('Wen'))).toEqual(['name-taken-here']);
	});

	test('a teacher can’t lose her role by joining her own class', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		expect(value(await askToJoin(sql, room.teacher, { code: room.code, name: 'Me' })).membership.role).toBe('teacher');
		expect((await membershipOf(sql, room.teacher, room.classId))?.role).toBe('teacher');
		for (const id of ['', '\0', 'nosuchid']) expect(await membershipOf(sql, room.teacher, id)).toBeNull();
	});
});

onEachServer('members', (database) => {
	test('who has asked is no member until admitted, and none once turned away', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen', false);
		await expectNotFound(readEvents(sql, wen.asker, wen.memberId));
		expect(await admit(sql, room.teacher, room.classId, wen.memberId)).toBe(true);
		expect(await readEvents(sql, wen.asker, wen.memberId)).toEqual([]);
		const bea = await makeLearner(sql, room, 'Bea', false);
		expect(await turnAway(sql, room.teacher, room.classId, bea.memberId)).toBe(true);
		await expectNotFound(readEvents(sql, bea.asker, bea.memberId));
	});

	test('two who answer one request: the same answer twice is harmless, another answer comes too late', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen', false);
		expect(await admit(sql, room.teacher, room.classId, wen.memberId)).toBe(true);
		expect(await admit(sql, room.teacher, room.classId, wen.memberId)).toBe(true);
		expect(await turnAway(sql, room.teacher, room.classId, wen.memberId)).toBe(false);
	});

	test('a removed learner is out on every device, frees her seat and her name, and may ask again', async () => {
		const sql = database();
		const room = await makeRoom(sql, 1);
		const wen = await makeLearner(sql, room, 'Wen');
		expect(await remove(sql, room.teacher, room.classId, wen.memberId)).toBe(true);
		await expectNotFound(readEvents(sql, wen.asker, wen.memberId));
		expect((await readMembers(sql, room.teacher, room.classId)).map(({ role }) => role)).toEqual(['teacher']);
		const again = value(await askToJoin(sql, wen.asker, { code: room.code, name: 'Wen' }));
		expect(again.membership).toMatchObject({ memberId: wen.memberId, status: 'asked' });
	});

	test('a member becomes a helper and a learner again; a teacher’s role is nobody’s to change', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const jory = await makeLearner(sql, room, 'Jory');
		expect(await setRole(sql, room.teacher, room.classId, jory.memberId, 'helper')).toBe(true);
		expect((await readMembers(sql, jory.asker, room.classId)).map(({ name }) => name)).toEqual(['Hanne', 'Jory']);
		expect(await setRole(sql, room.teacher, room.classId, jory.memberId, 'learner')).toBe(true);
		await expectNotFound(readMembers(sql, jory.asker, room.classId));
		const [me] = await sql`select id from members where class_id = ${room.classId} and role = 'teacher'`;
		expect(await setRole(sql, room.teacher, room.classId, me!.id, 'learner')).toBe(false);
		expect(await remove(sql, room.teacher, room.classId, me!.id)).toBe(false);
		expect(await setRole(sql, room.teacher, room.classId, '\0', 'learner')).toBe(false);
	});

	test('only a teacher of this class moves its members, and only this class’s members', async () => {
		const sql = database();
		const [room, other] = [await makeRoom(sql), await makeRoom(sql)];
		const [wen, bea, jory] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea', false), await makeLearner(sql, room, 'Jory')];
		await setRole(sql, room.teacher, room.classId, jory.memberId, 'helper');
		for (const asker of [wen.asker, bea.asker, jory.asker, other.teacher, await makeTeacher(sql)]) {
			await expectNotFound(admit(sql, asker, room.classId, bea.memberId));
			await expectNotFound(turnAway(sql, asker, room.classId, bea.memberId));
			await expectNotFound(remove(sql, asker, room.classId, wen.memberId));
			await expectNotFound(setRole(sql, asker, room.classId, wen.memberId, 'helper'));
			await expectNotFound(newJoinCode(sql, asker, room.classId, new Date()));
			await expectNotFound(readJoinCode(sql, asker, room.classId));
		}
		// Through her own class she reaches nobody else's.
		expect(await admit(sql, other.teacher, other.classId, bea.memberId)).toBe(false);
		expect(await remove(sql, other.teacher, other.classId, wen.memberId)).toBe(false);
		expect(await setRole(sql, other.teacher, other.classId, wen.memberId, 'helper')).toBe(false);
	});
});
