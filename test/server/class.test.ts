import { expect, test } from 'vitest';
import { defaultRules } from '../../src/lib/class/gate.ts';
import { changeClass, changeRules, classesOf, openClass, readClass, type ClassForm } from '../../src/lib/server/class.ts';
import { askToJoin, seatsTaken } from '../../src/lib/server/member.ts';
import { codes, expectNotFound, makeLearner, makeRoom, makeTeacher, value } from './scene.ts';
import { onEachServer } from './test-database.ts';

const form: ClassForm = { title: 'Tuesday, textiles room', lesson: 'lined-half-circle', firstDay: '2026-03-03', lastDay: '2026-04-14', seats: 12, rules: defaultRules };
const lessons = ['lined-half-circle'];

onEachServer('classes', (database) => {
	test('a teacher opens a class and reads it back as she filled it in', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const opened = value(await openClass(sql, teacher, form, lessons));
		expect(opened).toEqual({ id: opened.id, ...form });
		expect(opened.id).toMatch(/^[0-9a-z]{8}$/);
		expect(await readClass(sql, teacher, opened.id)).toEqual(opened);
		expect((await classesOf(sql, teacher)).map((one) => [one.class.id, one.membership.role])).toEqual([[opened.id, 'teacher']]);
	});

	test('a form that is sent twice, even at the same moment, opens one class, and its id opens nobody else’s', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const twice = await Promise.all([1, 2].map(() => openClass(sql, teacher, form, lessons, 'abcd1234')));
		expect(twice.map((one) => value(one).id)).toEqual(['abcd1234', 'abcd1234']);
		expect(await classesOf(sql, teacher)).toHaveLength(1);
		const other = await makeTeacher(sql, 'Bea');
		await expectNotFound(openClass(sql, other, form, lessons, 'abcd1234'));
		// What is no id is drawn anew.
		expect(value(await openClass(sql, teacher, form, lessons, '../x')).id).toMatch(/^[0-9a-z]{8}$/);
	});

	test('everything wrong with a form is told at once, and no class is opened', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const wrong = { title: ' ', lesson: 'a-hat', firstDay: '2026-02-30', lastDay: 'soon', seats: 0.5, rules: {} };
		const told = codes(await openClass(sql, teacher, wrong, lessons));
		expect(told).toEqual(expect.arrayContaining(['name-missing', 'not-a-lesson', 'not-a-date', 'not-a-count', 'not-a-unit', 'length-out-of-range', 'gate-count']));
		expect(codes(await openClass(sql, teacher, { ...form, lastDay: '2026-03-02' }, lessons))).toEqual(['ends-before-it-begins']);
		// A year that the database doesn't know, and a year that was typed short.
		for (const firstDay of ['0000-01-01', '0026-03-03']) expect(codes(await openClass(sql, teacher, { ...form, firstDay }, lessons))).toEqual(['not-a-date']);
		expect(await classesOf(sql, teacher)).toEqual([]);
	});

	test('only someone who may teach opens a class', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		await expectNotFound(openClass(sql, wen.asker, form, lessons));
	});

	test('a class is there for its members, not for who waits at the door or comes from another', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea', false)];
		expect((await readClass(sql, wen.asker, room.classId)).id).toBe(room.classId);
		for (const asker of [bea.asker, await makeTeacher(sql), (await makeRoom(sql)).teacher]) await expectNotFound(readClass(sql, asker, room.classId));
		for (const id of ['', '\0', 'nosuchid', '../..']) await expectNotFound(readClass(sql, room.teacher, id));
	});

	test('title, dates and seats are the teacher’s to change while the class is held; the lesson and the rules stay', async () => {
		const sql = database();
		const room = await makeRoom(sql, 1);
		const wen = await makeLearner(sql, room, 'Wen');
		const before = await readClass(sql, room.teacher, room.classId);
		expect(codes(await askToJoin(sql, null, { code: room.code, name: 'Bea' }))).toEqual(['class-full']);
		const frame = { title: ' Wednesday,  textiles room ', firstDay: '2026-03-04', lastDay: '2026-04-15', seats: 2 };
		value(await changeClass(sql, room.teacher, room.classId, frame));
		expect(await readClass(sql, wen.asker, room.classId)).toEqual({ ...before, ...frame, title: 'Wednesday, textiles room' });
		value(await askToJoin(sql, null, { code: room.code, name: 'Bea' }));
		// Bea has asked, so two are taken.
		expect(codes(await changeClass(sql, room.teacher, room.classId, { ...frame, seats: 1 }))).toEqual(['seats-taken']);
		const wrong = { title: ' ', firstDay: 'soon', lastDay: '2026-02-30', seats: 0.5 };
		expect(codes(await changeClass(sql, room.teacher, room.classId, wrong))).toEqual(['name-missing', 'not-a-date', 'not-a-date', 'not-a-count']);
		const jory = await makeLearner(sql, await makeRoom(sql), 'Jory');
		for (const asker of [wen.asker, jory.asker, await makeTeacher(sql), (await makeRoom(sql)).teacher]) {
			await expectNotFound(changeClass(sql, asker, room.classId, frame));
		}
		expect((await readClass(sql, room.teacher, room.classId)).seats).toBe(2);
	});

	test('of many who ask while the seats are made fewer, no more get in than there are seats', async () => {
		const sql = database();
		const room = await makeRoom(sql, 10);
		const frame = { title: 'Tuesday', firstDay: '2026-03-03', lastDay: '2026-04-14', seats: 3 };
		const names = Array.from({ length: 8 }, (_, index) => `Learner ${index}`);
		const [changed] = await Promise.all([changeClass(sql, room.teacher, room.classId, frame), ...names.map((name) => askToJoin(sql, null, { code: room.code, name }))]);
		const { seats } = await readClass(sql, room.teacher, room.classId);
		expect(seats).toBe(changed.ok ? 3 : 10);
		expect(await seatsTaken(sql, room.classId)).toBeLessThanOrEqual(seats);
	});

	test('rules are the teacher’s to change, and are checked', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const rules = { ...defaultRules, unit: 'in' as const, allowances: { waist: 15.875, seam: 15.875, hem: 12.7 } };
		expect(value(await changeRules(sql, room.teacher, room.classId, rules))).toEqual(rules);
		expect(codes(await changeRules(sql, room.teacher, room.classId, { ...rules, unit: 'ell' }))).toEqual(['not-a-unit']);
		expect((await readClass(sql, wen.asker, room.classId)).rules).toEqual(rules);
		await expectNotFound(changeRules(sql, wen.asker, room.classId, rules));
		await expectNotFound(changeRules(sql, (await makeRoom(sql)).teacher, room.classId, rules));
	});
});
