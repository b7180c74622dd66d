// One app, reached by two addresses: forms work at each, and a session belongs to the one it began at.
import { hallAddresses } from '../../src/lib/server/host.ts';
import { expect, startApp, test } from './app.ts';
import { phone, signIn } from './person.ts';

const inHall = (url: string): string[] => hallAddresses().filter((address) => !address.startsWith('[')).map((address) => url.replace('localhost', address));

test('a one-time link signs in at this computer’s address and at the hall’s, once', async ({ app, browser }) => {
	for (const url of [app.url, ...inHall(app.url)]) {
		const link = await app.linkFor('Ines');
		const page = await (await browser.newContext()).newPage();
		await page.goto(`${url}${link}`);
		await page.getByRole('button').last().click();
		await expect(page).toHaveURL(`${url}/`);
		await expect(page.getByText('Thursday evening, village hall')).toBeVisible();
		const again = await (await browser.newContext()).newPage();
		await again.goto(`${url}${link}`);
		await expect(again.getByText('Thursday evening, village hall')).toHaveCount(0);
		await page.context().close();
		await again.context().close();
	}
});

test('a form that is refused before any page is made is answered in our own page, with what happened and a way on', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Ines', { ...phone, javaScriptEnabled: false });
	await page.goto('/account');
	await page.context().clearCookies();
	await page.getByRole('button').last().click();
	await expect(page.getByRole('heading', { name: 'That was not taken' })).toBeVisible();
	await expect(page.getByText('You are signed out, so this was not kept.')).toBeVisible();
	await page.getByRole('link', { name: 'Go to the first page' }).click();
	await expect(page).toHaveURL(`${app.url}/`);
	await page.context().close();
});

test('the first start prints a link by which the first teacher sets her passphrase', async ({ browser }) => {
	const app = await startApp({ DEMO: 'no' });
	const page = await browser.newPage();
	await page.goto(`${app.url}${app.firstTeacher}`);
	await page.getByRole('button').last().click();
	await expect(page).toHaveURL(`${app.url}/account`);
	await page.close();
	await app.stop();
});
