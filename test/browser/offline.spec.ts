// What a learner says is shown at once and kept on her device, and reaches the log once, whatever the network or the server does.
import type { Page } from '@playwright/test';
import { expect, startApp, test } from './app.ts';
import { kept, open, phone, signIn, skirtOf, take } from './person.ts';

const saved = (page: Page) => page.locator('.saved');
const ticks = (rows: readonly Record<string, unknown>[], step: string) => rows.filter((row) => row.step === step);

test('a tick without a network shows at once, outlasts a reload, and is sent once', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Pia');
	const skirt = await skirtOf(app, 'Pia');
	await open(page, `${skirt}/make/prepare?step=test-scrap`);
	await page.context().setOffline(true);
	await page.getByRole('button', { name: 'Tested' }).click();
	await expect(saved(page)).toContainText('not yet sent to your teacher');
	expect(ticks(await kept(app, 'Pia', 'tick'), 'test-scrap')).toHaveLength(0);

	// The pages come again before the log does: the tick is still on the device, and still shown.
	await page.route('**/log', (route) => route.abort());
	await page.context().setOffline(false);
	await open(page, `${skirt}/make/prepare?step=test-scrap`);
	await expect(page.getByRole('button', { name: 'Untick' })).toBeVisible();
	await expect(saved(page)).toContainText('not yet sent to your teacher');

	// The log keeps it and the answer is lost on the way, so that it is sent again.
	await page.unroute('**/log');
	let lost = 0;
	await page.route('**/log', async (route) => {
		lost++;
		await route.fetch();
		await route.abort();
	}, { times: 1 });
	await page.reload();
	await expect(saved(page)).toContainText('sent to your teacher');
	await expect(saved(page)).not.toContainText('not yet');
	expect(lost).toBe(1);
	expect(ticks(await kept(app, 'Pia', 'tick'), 'test-scrap')).toHaveLength(1);
	await page.reload();
	await expect(page.getByRole('button', { name: 'Untick' })).toBeVisible();
	await page.context().close();
});

test('the last tick of a stage without a network stays on its step, which shows it', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Pia');
	const skirt = await skirtOf(app, 'Pia');
	await open(page, `${skirt}/make/prepare?step=measure-width`);
	await page.context().setOffline(true);
	await page.getByRole('button', { name: 'Measured' }).click();
	await expect(page.getByRole('button', { name: 'Untick' })).toBeVisible();
	await expect(page.getByRole('link', { name: 'Next step', exact: true })).toBeVisible();
	await expect(saved(page)).toContainText('not yet sent to your teacher');
	await page.context().setOffline(false);
	await expect(saved(page)).not.toContainText('not yet');
	await expect(page).toHaveURL(/prepare\?step=measure-width$/);
	await page.context().close();
});

test('readings without a network are read back and compared at once, and reach the log as typed, once', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Pia');
	const skirt = await skirtOf(app, 'Pia');
	await open(page, `${skirt}/measure/waist`);
	await page.context().setOffline(true);
	await take(page, '72,5', '72,9');
	await expect(page.getByRole('status').filter({ hasText: 'Your readings are' })).toContainText('0.4 cm');
	await expect(page.locator('.result .number')).toContainText('72.7 cm');
	await expect(saved(page)).toContainText('not yet sent to your teacher, 2 things wait');
	await page.context().setOffline(false);
	await expect(saved(page)).toContainText('sent to your teacher');
	await expect(saved(page)).not.toContainText('not yet');
	const readings = await kept(app, 'Pia', 'reading');
	expect(readings.map(({ measurement, typed, mm, unit }) => ({ measurement, typed, mm, unit }))).toEqual([
		{ measurement: 'waist', typed: '72,5', mm: 725, unit: 'cm' }, { measurement: 'waist', typed: '72,9', mm: 729, unit: 'cm' }
	]);
	await page.context().close();
});

test('the app and its database are killed while a learner types, start again, and nothing is lost', async ({ browser }) => {
	const app = await startApp();
	const page = await signIn(browser, app, 'Pia', phone);
	const skirt = await skirtOf(app, 'Pia');
	await open(page, `${skirt}/measure/waist`);
	await take(page, '68');
	await expect(saved(page)).toContainText('sent to your teacher');

	await page.locator('#take').getByRole('textbox').fill('68,6');
	await app.kill();
	await page.locator('button[form=take]').click();
	await expect(page.locator('.result .number')).toContainText('68.3 cm');
	await expect(saved(page)).toContainText('not yet sent to your teacher');
	await page.getByRole('button', { name: 'Measure again' }).click();
	await page.locator('#take').getByRole('textbox').first().fill('68,4');

	await app.startAgain();
	await expect(saved(page)).not.toContainText('not yet', { timeout: 30_000 });
	// What is half typed has stayed, and is taken now that the server is there.
	await expect(page.locator('#take').getByRole('textbox').first()).toHaveValue('68,4');
	await page.locator('button[form=take]').click();
	await expect(page.getByText('Every reading so far (3)')).toBeVisible();
	await expect.poll(async () => (await kept(app, 'Pia', 'reading')).map(({ typed }) => typed)).toEqual(['68', '68,6', '68,4']);
	await page.context().close();
	await app.stop();
});
