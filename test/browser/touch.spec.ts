// The teacher's table while the server is gone: it says since when, keeps trying, and lets no link lead out of the page.
import { expect, startApp, test } from './app.ts';
import { desk, open, signIn } from './person.ts';

test('a table whose server is gone says since when it is not connected; a link waits for the server and opens when it is back', async ({ browser }) => {
	const app = await startApp();
	const page = await signIn(browser, app, 'Rosalind', desk);
	const [held] = await app.ask((sql) => sql`select id from classes where title = 'Thursday evening, village hall'`);
	await open(page, `/classes/${held!.id}`);
	await app.kill();
	await expect(page.getByText(/Not connected since \d\d:\d\d/)).toBeVisible({ timeout: 30_000 });
	await page.getByRole('link', { name: 'Go to Ines' }).click();
	await expect(page.getByText('What you pressed opens as soon as there is an answer.')).toBeVisible();
	await expect(page.getByRole('heading', { name: 'Ines has waited longest' })).toBeVisible();
	await app.startAgain();
	await expect(page).toHaveURL(/\/numbers\//, { timeout: 60_000 });
	await expect(page.getByText(/Not connected since/)).toHaveCount(0);
	await page.context().close();
	await app.stop();
});

test('a link pressed before anyone has noticed that the server is gone waits too, and so does what was typed', async ({ browser }) => {
	const app = await startApp();
	const page = await signIn(browser, app, 'Rosalind', desk);
	const [held] = await app.ask((sql) => sql`select id from classes where title = 'Thursday evening, village hall'`);
	await open(page, `/classes/${held!.id}/change`);
	await page.getByRole('textbox', { name: 'Title' }).fill('Friday evening');
	await app.kill();
	await page.getByRole('button', { name: 'Keep these' }).click();
	await expect(page.getByText(/Not connected since/)).toBeVisible();
	await expect(page.getByRole('textbox', { name: 'Title' })).toHaveValue('Friday evening');
	await page.getByRole('link', { name: 'Rules' }).click();
	await expect(page.getByText('What you pressed opens as soon as there is an answer.')).toBeVisible();
	await expect(page).toHaveURL(/\/change$/);
	await page.context().close();
	await app.startAgain();
	await app.stop();
});
