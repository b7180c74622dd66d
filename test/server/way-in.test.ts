import { expect, test } from 'vitest';
import { readDemoLesson } from '../../src/lib/server/demo-lesson.ts';
import { takeLink } from '../../src/lib/server/link.ts';
import { setPassphrase } from '../../src/lib/server/person.ts';
import { openWayIn } from '../../src/lib/server/way-in.ts';
import { signIn, value } from './scene.ts';
import { onEachServer } from './test-database.ts';

const lesson = readDemoLesson('content/lessons');

onEachServer('the way in', (database) => {
	test('of two first starts at once, one makes the first teacher and the demo class, and the other finds them', async () => {
		const ways = await Promise.all([1, 2].map(() => openWayIn(database(), new Date(), lesson)));
		expect(ways.map(({ first }) => first).sort()).toEqual([false, true]);
		const made = ways.find(({ first }) => first)!;
		expect(made.teachers.map(({ name }) => name)).toEqual(['Teacher']);
		expect(made.demo.map(({ name, role }) => `${name}, ${role}`)).toEqual([
			'Rosalind, teacher', 'Ines, learner', 'Tamsin, learner', 'Noor, learner', 'Jory, learner', 'Oona, learner', 'Pia, learner'
		]);
		expect(ways.find(({ first }) => !first)!.teachers.map(({ name }) => name)).toEqual(['Teacher', 'Rosalind']);
		expect(await database()`select from classes`).toHaveLength(1);
	});

	test('a teacher gets a new link at each start until she has a passphrase, and learners never do', async () => {
		const sql = database();
		const again = await openWayIn(sql, new Date(), lesson);
		expect([again.first, again.demo]).toEqual([false, []]);
		expect(again.teachers.map(({ name }) => name)).toEqual(['Teacher', 'Rosalind']);
		const person = (await takeLink(sql, again.teachers[0]!.token))!;
		expect(person).toMatchObject({ canTeach: true, hasPassphrase: false });
		const { asker } = await signIn(sql, { id: person.id, name: person.name, canTeach: true });
		value(await setPassphrase(sql, asker, { name: 'Hanne', passphrase: 'chalk tape pins and patience' }));
		expect((await openWayIn(sql, new Date(), lesson)).teachers.map(({ name }) => name)).toEqual(['Rosalind']);
	});
});

onEachServer('the way in without a demo class', (database) => {
	test('is the first teacher’s link alone', async () => {
		const { first, teachers, demo } = await openWayIn(database(), new Date(), null);
		expect([first, teachers.length, demo]).toEqual([true, 1, []]);
		expect(await database()`select from classes`).toHaveLength(0);
	});
});
