// The bar at the foot: what one types in stands above it, it stays low, and its buttons keep their words whole.
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { open, signIn, skirtOf } from './person.ts';

const sizes = [{ width: 390, height: 844 }, { width: 320, height: 640 }, { width: 1280, height: 800 }] as const;

/** How many px lie between the foot of what has the focus and the bar: less than nothing is behind it. */
const clearOfBar = (page: Page): Promise<number> => page.evaluate(() =>
	document.querySelector('.bar')!.getBoundingClientRect().top - document.activeElement!.getBoundingClientRect().bottom);

test('the field one types in stands clear of the bar, reached by Tab or by “Measure again”', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Noor');
	const skirt = await skirtOf(app, 'Noor');
	for (const viewport of sizes) {
		await page.setViewportSize(viewport);
		for (const measurement of ['waist', 'hip']) {
			await open(page, `${skirt}/measure/${measurement}`);
			await page.getByRole('button', { name: 'Measure again' }).click();
			const first = page.getByRole('textbox', { name: 'First' });
			await expect(first).toBeFocused();
			await expect(first).toBeInViewport({ ratio: 1 });
			expect(await clearOfBar(page), `${measurement} at ${viewport.width}`).toBeGreaterThan(0);
			await page.keyboard.press('Tab');
			await page.keyboard.type('70');
			await expect(page.getByRole('textbox', { name: 'Second' })).toBeFocused();
			expect(await clearOfBar(page), `second ${measurement} at ${viewport.width}`).toBeGreaterThan(0);
		}
		await open(page, `${skirt}/draft`);
		await page.locator('input[name=bandDepth]').focus();
		await page.keyboard.type('5');
		expect(await clearOfBar(page), `draft at ${viewport.width}`).toBeGreaterThan(0);
	}
	await page.context().close();
});

test('before and after its tick a step’s bar is no more than a quarter of the screen', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Oona');
	const skirt = await skirtOf(app, 'Oona');
	// Ticked, and not.
	for (const step of ['back-seam-zip?step=stitch-zip-left', 'hem?step=stitch-hem']) {
		for (const viewport of sizes) {
			await page.setViewportSize(viewport);
			await open(page, `${skirt}/make/${step}`);
			const bar = (await page.locator('.bar').boundingBox())!;
			expect(bar.height, `${step} at ${viewport.width}`).toBeLessThanOrEqual(viewport.height / 4);
			// A word a line was the sign that three stood where two fit.
			const action = (await page.locator('.bar .go').boundingBox())!;
			expect(action.width, `${step} at ${viewport.width}`).toBeGreaterThan(120);
		}
	}
	await page.context().close();
});

test('after the last step she lands where it says that her skirt is finished', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Oona');
	const skirt = await skirtOf(app, 'Oona');
	const ticks = page.locator('form[action^="?/tick"] button');
	for (const [part, left] of [['hem', 0], ['finish', 1]] as const) {
		await open(page, `${skirt}/make/${part}?whole`);
		for (let count = await ticks.count(); count > left; count--) {
			await ticks.first().click();
			await expect(ticks).toHaveCount(count - 1);
		}
	}
	await page.getByRole('link', { name: 'One step at a time' }).click();
	await expect(page.getByRole('link', { name: 'Next step, without a tick' })).toHaveCount(0);
	await page.locator('.bar form[action^="?/tick"] button').click();
	await expect(page).toHaveURL(skirt);
	await expect(page.getByRole('heading', { name: 'Every step is ticked' })).toBeVisible();
	await page.getByRole('link', { name: 'Look back at the last stage' }).click();
	await page.getByRole('link', { name: 'One step at a time' }).click();
	await page.getByRole('link', { name: 'Your skirt is finished' }).click();
	await expect(page).toHaveURL(skirt);
	await page.context().close();
});
