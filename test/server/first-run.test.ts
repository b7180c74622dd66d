import { expect, test } from 'vitest';
import { readDemoLesson } from '../../src/lib/server/demo-lesson.ts';
import { linksAtStart } from '../../src/lib/server/first-run.ts';
import { takeLink } from '../../src/lib/server/link.ts';
import { setPassphrase } from '../../src/lib/server/person.ts';
import { signIn, value } from './scene.ts';
import { onEachServer } from './test-database.ts';

const lesson = () => readDemoLesson(new URL('../../content/lessons', import.meta.url).pathname);

onEachServer('the first start', (database) => {
	test('four processes that start together make one first teacher and one demo class, and every link they show works', async () => {
		const sql = database();
		const shown = await Promise.all([1, 2, 3, 4].map(() => linksAtStart(sql, new Date(), lesson())));
		expect((await sql`select from classes`).length).toBe(1);
		for (const links of shown) {
			expect(links.map(({ name, role }) => `${name}, ${role}`)).toEqual([
				'Teacher, firstTeacher', 'Rosalind, teacher',
				'Ines, learner', 'Tamsin, learner', 'Noor, learner', 'Jory, learner', 'Oona, learner', 'Pia, learner'
			]);
		}
		for (const { name, token } of shown.flat()) expect((await takeLink(sql, token))?.name).toBe(name);
	});

	test('a later start makes nobody, and gives links to whoever has no passphrase yet', async () => {
		const sql = database();
		const [before] = await sql`select count(*)::int as people from people`;
		const [first] = await linksAtStart(sql, new Date(), lesson());
		const teacher = (await takeLink(sql, first!.token))!;
		value(await setPassphrase(sql, (await signIn(sql, teacher)).asker, { name: 'Marit', passphrase: 'seven pins in a tin' }));
		const later = await linksAtStart(sql, new Date(), lesson());
		expect(later.map(({ name }) => name)).toEqual(['Rosalind', 'Ines', 'Tamsin', 'Noor', 'Jory', 'Oona', 'Pia']);
		expect((await sql`select count(*)::int as people from people`)[0]).toEqual(before);
	});
});

onEachServer('the first start without a demo', (database) => {
	test('makes the first teacher alone', async () => {
		const sql = database();
		expect((await linksAtStart(sql, new Date(), null)).map(({ name, role }) => [name, role])).toEqual([['Teacher', 'firstTeacher']]);
		expect(await sql`select from classes`).toHaveLength(0);
	});
});
