// A class code on a card, misread: there is no o, l or i in it, so whoever types one means 0 or 1.
import { expect, test } from './app.ts';
import { alive, desk, open, phone, signIn } from './person.ts';
import { admit, newCode } from './teacher.ts';

test('a card’s class code with the letter o for 0 and l for 1 signs in', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Rosalind', desk);
	await open(page, '/classes/new');
	await page.getByRole('textbox', { name: 'Title' }).fill('Easily misread');
	await page.locator('input[name=id]').evaluate((field: HTMLInputElement) => (field.value = '0kmv1fa2'));
	await page.getByRole('button', { name: 'Open the class' }).click();
	await expect(page).toHaveURL(/\/classes\/0kmv1fa2\/people/);
	const code = await newCode(page, '0kmv1fa2');

	const guest = await (await browser.newContext({ ...phone, baseURL: app.url })).newPage();
	await guest.goto(`/join/${code}`);
	await alive(guest);
	await guest.getByRole('textbox', { name: 'Your name' }).fill('Bea');
	await guest.getByRole('button', { name: 'Ask to join' }).click();
	await expect(guest.getByRole('heading', { name: 'Waiting for your teacher' })).toBeVisible();
	await admit(page, '0kmv1fa2', 'Bea');
	// The page looks again by itself.
	await guest.getByRole('button', { name: 'Make my card' }).click();
	const words = (await guest.locator('.card .value').last().textContent())!;

	const other = await (await browser.newContext({ ...phone, baseURL: app.url })).newPage();
	await other.goto('/sign-in');
	await other.getByRole('textbox', { name: 'Class code' }).fill('Okmv-lfa2');
	await other.getByRole('textbox', { name: 'Your five words' }).fill(words);
	await other.getByRole('button', { name: 'Sign in' }).click();
	await expect(other).toHaveURL(`${app.url}/skirt/0kmv1fa2`);
	for (const one of [guest, other, page]) await one.context().close();
});
