import { expect, test } from 'vitest';
import { defaultRules } from '../../src/lib/class/gate.ts';
import { changeRules, classesOf, openClass, readClass, type ClassForm } from '../../src/lib/server/class.ts';
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
