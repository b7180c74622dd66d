// Someone at the door of a class in which no one sits yet: her teacher's table says so, and lets her in.
import { expect, test } from './app.ts';
import { alive, desk, open, phone, signIn } from './person.ts';
import { newCode, openClass } from './teacher.ts';

test('the table of a new class says who asks to join, and admits her where it stands', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Rosalind', desk);
	const classId = await openClass(page, 'A table with a door');
	const code = await newCode(page, classId);
	const guest = await (await browser.newContext({ ...phone, baseURL: app.url })).newPage();
	await guest.goto(`/join/${code}`);
	await alive(guest);
	await guest.getByRole('textbox', { name: 'Your name' }).fill('Wilhelmina');
	await guest.getByRole('button', { name: 'Ask to join' }).click();
	await expect(guest.getByRole('heading', { name: 'Waiting for your teacher' })).toBeVisible();

	await open(page, `/classes/${classId}`);
	await expect(page.getByRole('heading', { name: 'Wilhelmina asks to join' })).toBeVisible();
	await page.getByRole('button', { name: 'Admit Wilhelmina' }).click();
	await expect(page.getByRole('rowheader', { name: 'Wilhelmina' })).toBeVisible();
	await expect(page).toHaveURL(`${app.url}/classes/${classId}`);
	await guest.context().close();
	await page.context().close();
});
