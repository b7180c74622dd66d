// A button pressed twice: what it does is done once.
import { expect, test } from './app.ts';
import { desk, open, phone, signIn } from './person.ts';
import { admit } from './teacher.ts';

test('a class whose button is pressed three times in a row is opened once', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Rosalind', desk);
	await open(page, '/classes/new');
	await page.getByRole('textbox', { name: 'Title' }).fill('Pressed three times');
	await page.getByRole('button', { name: 'Open the class' }).click({ clickCount: 3 });
	await expect(page).toHaveURL(/\/people$/);
	const classes = await app.ask((sql) => sql`select id from classes where title = 'Pressed three times'`);
	expect(classes).toHaveLength(1);
	await page.context().close();
});

test('a card whose button is pressed twice is made once, and is the one that holds', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Rosalind', desk);
	const [ines] = await app.ask((sql) => sql`select id, class_id from members where name = 'Ines'`);
	const cards = () => app.ask((sql) => sql`select ended_at from cards where member_id = ${ines!.id}`);
	const before = (await cards()).length;
	await open(page, `/classes/${ines!.class_id}/people/${ines!.id}/card`);
	await page.getByRole('button', { name: 'Make a new card for Ines' }).dblclick();
	await expect(page.getByRole('button', { name: 'Print' })).toBeVisible();
	const made = await cards();
	expect(made).toHaveLength(before + 1);
	expect(made.filter(({ ended_at }) => ended_at === null)).toHaveLength(1);
	await page.context().close();
});

test('a join code whose button is pressed twice is the one that the page shows', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Rosalind', desk);
	const [held] = await app.ask((sql) => sql`select id, join_code from classes where title = 'Thursday evening, village hall'`);
	await open(page, `/classes/${held!.id}/people`);
	await page.getByRole('button', { name: 'Make a new code' }).dblclick();
	await expect(page.getByText('This is the new join code.')).toBeVisible();
	const [now] = await app.ask((sql) => sql`select join_code from classes where id = ${held!.id}`);
	expect(now!.join_code).not.toBe(held!.join_code);
	await expect(page.locator('.letters')).toHaveText(`${now!.join_code.slice(0, 4)}-${now!.join_code.slice(4)}`);
	await page.context().close();
});

test('without the script a link, a request to join and a card pressed twice are each done once, and what is shown holds', async ({ app, browser }) => {
	const plain = { ...phone, baseURL: app.url, javaScriptEnabled: false };
	// The browser sends both presses and shows the answer to the second.
	const teacher = await (await browser.newContext(plain)).newPage();
	await teacher.goto(await app.linkFor('Rosalind'));
	await teacher.getByRole('button', { name: 'I am Rosalind' }).dblclick();
	await expect(teacher).not.toHaveURL(/\/link\//);
	await teacher.goto('/classes');
	await expect(teacher.getByRole('heading', { level: 1 })).not.toContainText('Sign in');

	const [held] = await app.ask((sql) => sql`select id, join_code from classes order by made_at limit 1`);
	const page = await (await browser.newContext(plain)).newPage();
	await page.goto(`/join/${held!.join_code}`);
	await page.getByRole('textbox', { name: 'Your name' }).fill('Viv');
	await page.getByRole('button', { name: 'Ask to join' }).dblclick();
	await expect(page.getByRole('heading', { name: 'Waiting for your teacher' })).toBeVisible();
	expect(await app.ask((sql) => sql`select from members where name like 'Viv%'`)).toHaveLength(1);

	await admit(teacher, held!.id, 'Viv');
	await page.getByRole('link', { name: 'Look again now' }).click();
	await page.getByRole('button', { name: 'Make my card' }).dblclick();
	await expect(page.getByText('Five words')).toBeVisible();
	const words = (await page.locator('.card .value').last().textContent())!;
	expect(await app.ask((sql) => sql`select from cards c join members m on m.id = c.member_id where m.name = 'Viv'`)).toHaveLength(1);

	const tablet = await (await browser.newContext(plain)).newPage();
	await tablet.goto('/sign-in?as=learner');
	await tablet.getByRole('textbox', { name: 'Class code' }).fill(held!.id);
	await tablet.getByRole('textbox', { name: 'Your five words' }).fill(words);
	await tablet.locator('form', { has: tablet.getByRole('textbox', { name: 'Your five words' }) }).getByRole('button').click();
	await expect(tablet).not.toHaveURL(/sign-in/);
	for (const one of [teacher, page, tablet]) await one.context().close();
});
