import { expect, test } from 'vitest';
import { checkName } from '../../src/lib/server/name.ts';
import { checkPassphrase, hashSecret, proves } from '../../src/lib/server/passphrase.ts';
import { makePerson, provePassphrase, readAccount, setPassphrase } from '../../src/lib/server/person.ts';
import { drawSecret } from '../../src/lib/server/digest.ts';
import { makeLink, readLink, takeLink } from '../../src/lib/server/link.ts';
import { firstTeacherLink } from '../../src/lib/server/demo.ts';
import { openSession } from '../../src/lib/server/session.ts';
import { codes, makeTeacher, signIn, value } from './scene.ts';
import { onEachServer } from './test-database.ts';

const passphrase = 'seven pins in a tin by the window';
let names = 0;
const aName = () => `Teacher ${names++} ${Math.random().toString(36).slice(2, 8)}`;

test.each([
	['short', 'fourteen chars', 'passphrase-short'],
	['longer than 256 characters', 'ab cd '.repeat(43), 'passphrase-long'],
	['a common one', 'Correct Horse Battery Staple', 'passphrase-common'],
	['one letter over and over', 'a'.repeat(20), 'passphrase-common']
])('a passphrase that is %s is refused', (_, typed, code) => {
	expect(codes(checkPassphrase(typed))).toEqual([code]);
});

test('a passphrase needs no digits or capitals, and may be in any script', () => {
	expect(checkPassphrase('grain line to the fold').ok).toBe(true);
	expect(checkPassphrase('裁縫教室は木曜日の夕方に開きます').ok).toBe(true);
	expect(checkPassphrase('pins and needles '.repeat(15)).ok).toBe(true);
});

test('what is kept of a passphrase is Argon2id with 19 MiB, two passes, one lane', async () => {
	const hashed = await hashSecret(passphrase);
	expect(hashed).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
	expect(await proves(passphrase, hashed)).toBe(true);
	expect(await proves(`${passphrase} `, hashed)).toBe(false);
	expect(await proves(passphrase, null)).toBe(false);
});

test('many at once wait their turn, and each gets her own answer', async () => {
	const hashed = await hashSecret(passphrase);
	const answers = await Promise.all(Array.from({ length: 24 }, (_, index) => proves(index % 3 ? 'something else' : passphrase, hashed)));
	expect(answers).toEqual(Array.from({ length: 24 }, (_, index) => index % 3 === 0));
});

test('names are welcome in any script, are trimmed, and stay one line of at most 40 characters', () => {
	for (const [typed, name] of [['  Wen ', 'Wen'], ['Зоя', 'Зоя'], ['নূর', 'নূর'], ['Mary   Ann', 'Mary Ann'], ['🧵', '🧵'], ["O'Na-7", "O'Na-7"]]) {
		expect(checkName(typed!, 'name')).toEqual({ ok: true, value: name });
	}
	expect(codes(checkName('   ', 'name'))).toEqual(['name-missing']);
	expect(codes(checkName('a\nb', 'name'))).toEqual(['name-unfit']);
	expect(codes(checkName('\u202egnihtemos', 'name'))).toEqual(['name-unfit']);
	expect(codes(checkName('\0', 'name'))).toEqual(['name-unfit']);
	expect(codes(checkName('\u200b', 'name'))).toEqual(['name-unfit']);
	expect(codes(checkName('\ud800', 'name'))).toEqual(['name-unfit']);
	expect(codes(checkName('x'.repeat(41), 'name'))).toEqual(['name-long']);
	expect(checkName('𝒲'.repeat(40), 'name').ok).toBe(true);
});

onEachServer('people', (database) => {
	test('a teacher signs in with the name and passphrase she set, capitals or not', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const name = aName();
		value(await setPassphrase(sql, teacher, { name, passphrase }));
		expect(value(await provePassphrase(sql, { name: ` ${name.toUpperCase()} `, passphrase }, 'a')).id).toBe(teacher.person.id);
		expect(await readAccount(sql, teacher)).toEqual({ name, signInName: name.toLowerCase(), asksForCurrent: true });
	});

	test('a wrong name and a wrong passphrase are told the same', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const name = aName();
		value(await setPassphrase(sql, teacher, { name, passphrase }));
		const wrong = await provePassphrase(sql, { name, passphrase: 'another one altogether' }, 'a');
		expect(codes(wrong)).toEqual(['name-or-passphrase-wrong']);
		expect(await provePassphrase(sql, { name: aName(), passphrase }, 'a')).toEqual(wrong);
		expect(await provePassphrase(sql, { name: 'x'.repeat(10_000), passphrase: 'y'.repeat(10_000) }, 'a')).toEqual(wrong);
		expect(await provePassphrase(sql, { name: 'nul\0name', passphrase }, 'a')).toEqual(wrong);
	});

	test('a passphrase is stored as a hash alone', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		value(await setPassphrase(sql, teacher, { name: aName(), passphrase }));
		const found = await sql`select from people as t where t::text like ${`%${passphrase}%`}`;
		expect(found).toHaveLength(0);
	});

	test('all that is wrong with a new passphrase is told at once, and a name is one teacher’s', async () => {
		const sql = database();
		const [one, two] = [await makeTeacher(sql), await makeTeacher(sql)];
		const name = aName();
		expect(codes(await setPassphrase(sql, one, { name: ' ', passphrase: 'short' }))).toEqual(['name-missing', 'passphrase-short']);
		value(await setPassphrase(sql, one, { name, passphrase }));
		expect(codes(await setPassphrase(sql, two, { name: name.toUpperCase(), passphrase }))).toEqual(['name-taken']);
	});

	test('two who want one name at the same moment: one gets it, and the other is told', async () => {
		const sql = database();
		const name = aName();
		const teachers = await Promise.all(Array.from({ length: 4 }, () => makeTeacher(sql)));
		const answers = await Promise.all(teachers.map((teacher) => setPassphrase(sql, teacher, { name, passphrase })));
		expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
		expect(answers.flatMap(codes)).toEqual(['name-taken', 'name-taken', 'name-taken']);
	});

	test('a new passphrase ends every other session of hers', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Leni', true);
		const [here, there] = [await signIn(sql, person), await signIn(sql, person)];
		value(await setPassphrase(sql, here.asker, { name: aName(), passphrase }));
		expect(await openSession(sql, here.id, null)).not.toBeNull();
		expect(await openSession(sql, there.id, null)).toBeNull();
	});

	test('changing a passphrase asks for the one that holds now, and a link just used stands for it', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const name = aName();
		const next = 'eight buttons on a card';
		value(await setPassphrase(sql, teacher, { name, passphrase }));
		expect(codes(await setPassphrase(sql, teacher, { name, passphrase: next }))).toEqual(['current-missing']);
		expect(codes(await setPassphrase(sql, teacher, { name, passphrase: next, current: 'not this one at all' }))).toEqual(['current-wrong']);
		expect((await provePassphrase(sql, { name, passphrase: next }, 'a')).ok).toBe(false);
		value(await setPassphrase(sql, teacher, { name, passphrase: next, current: passphrase }));
		expect((await provePassphrase(sql, { name, passphrase: next }, 'a')).ok).toBe(true);

		await takeLink(sql, await makeLink(sql, teacher.person.id, new Date(Date.now() + 60_000)));
		expect((await readAccount(sql, teacher)).asksForCurrent).toBe(false);
		value(await setPassphrase(sql, teacher, { name, passphrase }));
		await sql`update links set used_at = now() - interval '16 minutes' where person_id = ${teacher.person.id}`;
		expect(codes(await setPassphrase(sql, teacher, { name, passphrase: next }))).toEqual(['current-missing']);
	});

	test('a guesser gets at most a hundred tries, however many devices and however many at once', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const name = aName();
		value(await setPassphrase(sql, teacher, { name, passphrase }));
		value(await provePassphrase(sql, { name, passphrase }, 'her own laptop'));
		const answers = await Promise.all(Array.from({ length: 130 }, (_, index) => provePassphrase(sql, { name, passphrase: 'a guess at it, no more' }, `device ${index}`)));
		const told = answers.flatMap(codes);
		expect(told.filter((code) => code === 'name-or-passphrase-wrong')).toHaveLength(100);
		expect(told.filter((code) => code === 'tried-too-often')).toHaveLength(30);
		// Even the right one, from a device that was never hers …
		expect(codes(await provePassphrase(sql, { name, passphrase }, 'device 7'))).toEqual(['tried-too-often']);
		// … and she herself gets in as ever.
		expect((await provePassphrase(sql, { name, passphrase }, 'her own laptop')).ok).toBe(true);
	});

	test('a device that guesses ten times in a row rests, and a teacher’s own slips cost her nothing once she is in', async () => {
		const sql = database();
		const teacher = await makeTeacher(sql);
		const name = aName();
		value(await setPassphrase(sql, teacher, { name, passphrase }));
		for (let slips = 0; slips < 9; slips++) await provePassphrase(sql, { name, passphrase: 'the wrong one again' }, 'laptop');
		value(await provePassphrase(sql, { name, passphrase }, 'laptop'));
		for (let slips = 0; slips < 10; slips++) await provePassphrase(sql, { name, passphrase: 'the wrong one again' }, 'laptop');
		expect(codes(await provePassphrase(sql, { name, passphrase }, 'laptop'))).toEqual(['try-later']);
		await sql`update attempts set last_at = now() - interval '6 minutes' where account = ${`person:${teacher.person.id}`}`;
		expect((await provePassphrase(sql, { name, passphrase }, 'laptop')).ok).toBe(true);
	});
});

onEachServer('one-time links', (database) => {
	const soon = () => new Date(Date.now() + 60_000);

	test('a link signs one person in, once', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Tamsin', false);
		const token = await makeLink(sql, person.id, soon());
		expect(await readLink(sql, token)).toEqual({ ...person, hasPassphrase: false });
		expect(await readLink(sql, token)).not.toBeNull();
		expect(await takeLink(sql, token)).toMatchObject(person);
		expect(await readLink(sql, token)).toBeNull();
		expect(await takeLink(sql, token)).toBeNull();
	});

	test('of twenty who use it at once, one gets in', async () => {
		const sql = database();
		const token = await makeLink(sql, (await makePerson(sql, 'Tamsin', false)).id, soon());
		const answers = await Promise.all(Array.from({ length: 20 }, () => takeLink(sql, token)));
		expect(answers.filter((person) => person !== null)).toHaveLength(1);
	});

	test('one page that presses twice is let in twice, for a minute, and another page with the same link is not', async () => {
		const sql = database();
		const person = await makePerson(sql, 'Tamsin', false);
		const token = await makeLink(sql, person.id, soon());
		const [mine, other] = [drawSecret(), drawSecret()];
		const both = await Promise.all([takeLink(sql, token, mine), takeLink(sql, token, mine)]);
		expect(both.map((one) => one?.id)).toEqual([person.id, person.id]);
		for (const drawn of [other, '', undefined, 'x'.repeat(5000)]) expect(await takeLink(sql, token, drawn)).toBeNull();
		await sql`update links set used_at = now() - interval '61 seconds' where person_id = ${person.id}`;
		expect(await takeLink(sql, token, mine)).toBeNull();
		// A page that draws nothing can’t be known again.
		const bare = await makeLink(sql, person.id, soon());
		expect([await takeLink(sql, bare, 'no secret'), await takeLink(sql, bare, 'no secret')].map((one) => one?.id)).toEqual([person.id, undefined]);
	});

	test('an old link, a wrong one, and nonsense open nothing', async () => {
		const sql = database();
		const old = await makeLink(sql, (await makePerson(sql, 'Tamsin', false)).id, new Date(Date.now() - 1000));
		for (const token of [old, '', '\0', 'x'.repeat(5000)]) {
			expect(await readLink(sql, token)).toBeNull();
			expect(await takeLink(sql, token)).toBeNull();
		}
	});

	test('the link itself is kept nowhere', async () => {
		const sql = database();
		const token = await makeLink(sql, (await makePerson(sql, 'Tamsin', false)).id, soon());
		expect(await sql`select from links as t where t::text like ${`%${token}%`}`).toHaveLength(0);
	});

	test('the first teacher’s link leads to someone who may teach and has no passphrase yet', async () => {
		const sql = database();
		const token = await firstTeacherLink(sql, new Date());
		expect(await takeLink(sql, token)).toMatchObject({ canTeach: true, hasPassphrase: false });
	});
});
