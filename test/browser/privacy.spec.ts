// Whoever isn't a learner's teacher gets no figure of hers by any address that the house has, and changes nothing there.
import type { APIRequestContext, Page } from '@playwright/test';
import { routes } from '../../src/lib/class/route.ts';
import { seedDemo } from '../../src/lib/server/demo.ts';
import { readDemoLesson } from '../../src/lib/server/demo-lesson.ts';
import { expect, test, type App } from './app.ts';
import { signIn } from './person.ts';

interface Place {
	readonly classId: string;
	readonly member: string;
}

/** Tamsin's name, and what she typed (server/demo.ts): found nowhere by chance, as a decimal is among a drawing's numbers. */
const hers = ['Tamsin', '28 1/2', '28 5/8', '39 1/4'];
const tells = (body: string): readonly string[] => hers.filter((typed) => body.includes(typed));
const tamsinOf = (app: App, classId: string): Promise<Place> => app.ask(async (sql) => {
	const [row] = await sql`select id from members where class_id = ${classId} and name = 'Tamsin'`;
	return { classId, member: row!.id };
});
const firstClass = (app: App): Promise<string> => app.ask(async (sql) => (await sql`select id from classes order by made_at limit 1`)[0]!.id);
/** Another class with another teacher and people of its own, and its teacher's link. */
const anotherClass = (app: App) => app.ask((sql) => seedDemo(sql, new Date(), readDemoLesson('content/lessons')));

/** Everything that a refused request must leave as it was. */
const traces = (app: App): Promise<unknown> => app.ask((sql) => sql`
	select (select count(*)::int from events) as events, (select count(*)::int from openings) as openings, (select count(*)::int from cards) as cards,
		(select json_agg(rules order by id) from classes) as rules, (select json_agg(join_code order by id) from classes) as codes,
		(select json_agg(role || status order by id) from members) as members`);

const addressOf = (route: string, { classId, member }: Place): string =>
	route.replace('[class]', classId).replace('[member]', member).replace('[measurement]', 'waist').replace('[part]', 'mark-cut');

/** Every address of a class in its three forms: the page, its data, and a post. */
async function refusesAll(request: APIRequestContext, url: string, addresses: readonly string[]): Promise<void> {
	for (const address of addresses) {
		const answers = [
			await request.get(`${url}${address}`, { maxRedirects: 0 }),
			await request.get(`${url}${address}?sheet=a4&figures=1&step=cut-skirt`, { maxRedirects: 0 }),
			...(address.endsWith('.pdf') || address.endsWith('/log') ? [] : [await request.get(`${url}${address}/__data.json`, { maxRedirects: 0 })])
		];
		for (const action of ['', '?/open', '?/clear', '?/take', '?/admit']) {
			answers.push(await request.post(`${url}${address}${action}`, { headers: { origin: url }, form: { step: 'cut-skirt', first: '60', unit: 'cm', reason: 'x', name: 'Leni' }, maxRedirects: 0 }));
		}
		answers.push(await request.post(`${url}${address}`, { headers: { origin: url }, data: { events: [] }, maxRedirects: 0 }));
		for (const answer of answers) {
			expect([403, 404, 405], `${answer.url()} answered ${answer.status()}`).toContain(answer.status());
			expect(tells(await answer.text()), answer.url()).toEqual([]);
		}
	}
}

const all = Object.keys(routes);
const teachers = all.filter((route) => route.startsWith('/classes/[class]'));
const learners = all.filter((route) => route.startsWith('/skirt/[class]'));
const request = (page: Page): APIRequestContext => page.context().request;

test('a learner gets another learner’s figures by no address, in her own class or in another', async ({ app, browser }) => {
	const [mine, { classId: theirs }] = [await firstClass(app), await anotherClass(app)];
	const [inMine, inTheirs] = [await tamsinOf(app, mine), await tamsinOf(app, theirs)];
	const tamsin = await signIn(browser, app, 'Tamsin');
	// What is looked for is there to be found, by the one whose it is.
	expect(tells(await (await request(tamsin).get(`/skirt/${mine}/measure/waist`)).text())).toEqual(hers);

	const pia = await signIn(browser, app, 'Pia');
	const before = await traces(app);
	await refusesAll(request(pia), app.url, [
		...teachers.map((route) => addressOf(route, inMine)), ...teachers.map((route) => addressOf(route, inTheirs)),
		...learners.map((route) => addressOf(route, inTheirs)),
		// Ids of two classes mixed.
		...teachers.map((route) => addressOf(route, { classId: mine, member: inTheirs.member }))
	]);
	expect(await traces(app)).toEqual(before);

	// In the browser it looks as if it weren't there, on a whole page.
	await pia.goto(addressOf('/classes/[class]/numbers/[member]', inMine));
	await expect(pia.getByRole('heading', { name: 'There is nothing here' })).toBeVisible();
	await expect(pia.getByRole('link', { name: 'Go to the first page' })).toHaveCSS('text-decoration-line', 'none');

	// Her own pages say nothing of anyone else.
	for (const route of learners) {
		const body = await (await request(pia).get(addressOf(route, inMine))).text();
		expect(tells(body), route).toEqual([]);
		expect(body.includes(inMine.member), route).toBe(false);
	}
	await tamsin.context().close();
	await pia.context().close();
});

test('a teacher of another class, and a stranger, get no figure either', async ({ app, browser, playwright }) => {
	const mine = await tamsinOf(app, await firstClass(app));
	const { links } = await anotherClass(app);
	const teacher = await (await browser.newContext({ baseURL: app.url })).newPage();
	await teacher.goto(`/link/${links.find(({ role }) => role === 'teacher')!.token}`);
	await teacher.getByRole('button', { name: 'I am Rosalind' }).click();
	await expect(teacher).not.toHaveURL(/link/);
	const before = await traces(app);
	await refusesAll(request(teacher), app.url, [...teachers, ...learners].map((route) => addressOf(route, mine)));

	const stranger = await playwright.request.newContext();
	for (const address of [...teachers, ...learners].map((route) => addressOf(route, mine))) {
		const looked = await stranger.get(`${app.url}${address}`, { maxRedirects: 0 });
		expect([303, 401, 404, 405], address).toContain(looked.status());
		const sent = await stranger.post(`${app.url}${address}`, { headers: { origin: app.url }, form: {}, maxRedirects: 0 });
		expect([401, 404, 405], address).toContain(sent.status());
		expect(tells((await looked.text()) + (await sent.text())), address).toEqual([]);
	}
	expect(await traces(app)).toEqual(before);
	await stranger.dispose();
	await teacher.context().close();
});
