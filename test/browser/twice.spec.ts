// A button pressed twice: what it does is done once.
import { expect, test } from './app.ts';
import { desk, open, signIn } from './person.ts';

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
