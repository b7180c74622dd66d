// A length that can't be right is refused in words beside its field, with the script as without it.
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { desk, kept, open, signIn, skirtOf } from './person.ts';

const field = (page: Page, name: string) => page.locator(`input[name="${name}"]:not([type=hidden])`);

/** The focus stands in the field, and the field's own sentence is what one hears there. */
async function isMarked(page: Page, name: string, says: RegExp): Promise<void> {
	await expect(field(page, name)).toHaveAttribute('aria-invalid', 'true');
	await expect(field(page, name)).toHaveAccessibleDescription(says);
}

test('a reading that can’t be a person’s is refused each time it is sent, and what was typed stays', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Noor');
	await open(page, `${await skirtOf(app, 'Noor')}/measure/waist`);
	await page.getByRole('button', { name: 'Measure again' }).click();
	const before = await kept(app, 'Noor', 'reading');
	for (const [typed, says] of [['7', /^7\.0 cm .*70\.0 cm/], ['0', /^0\.0 cm/], ['12', /^12\.0 cm/], ['300', /^300\.0 cm/], ['7 in', /^17\.8 cm/]] as const) {
		await field(page, 'first').fill(typed);
		await field(page, 'second').fill(typed);
		await page.locator('button[form=take]').click();
		await isMarked(page, 'first', says);
		await isMarked(page, 'second', says);
		await expect(field(page, 'first')).toBeFocused();
		await expect(field(page, 'first')).toHaveValue(typed);
		await expect(page.locator('.result')).toHaveCount(0);
	}
	// The one that is mended loses its sentence; the other keeps its own, and has the focus next.
	await field(page, 'first').fill('68');
	await expect(field(page, 'first')).not.toHaveAttribute('aria-invalid');
	await page.locator('button[form=take]').click();
	await expect(field(page, 'second')).toBeFocused();
	expect(await kept(app, 'Noor', 'reading')).toEqual(before);
	await page.context().close();
});

test('a choice that can’t be right is refused on the draft, and said only when it is kept', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Jory');
	await open(page, `${await skirtOf(app, 'Jory')}/draft`);
	await field(page, 'waistEase').fill('50');
	await expect(field(page, 'waistEase')).not.toHaveAttribute('aria-invalid');
	await page.getByRole('button', { name: 'Keep this' }).click();
	await isMarked(page, 'waistEase', /^50\.0 cm .*from 0\.0 cm to 30\.0 cm/);
	await expect(field(page, 'waistEase')).toBeFocused();
	expect(await kept(app, 'Jory', 'choice')).toEqual([]);
	await page.context().close();
});

test('a rule that can’t be right is marked, has the focus and is marked again if it is sent again', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Rosalind', desk);
	const skirt = await skirtOf(app, 'Noor');
	for (const address of ['/classes/new', `${skirt.replace('/skirt/', '/classes/')}/rules`]) {
		await open(page, address);
		if (address === '/classes/new') await field(page, 'title').fill('Monday evening');
		await field(page, 'allowances.hem').fill('15');
		for (const seam of ['15', '16']) {
			await field(page, 'allowances.seam').fill(seam);
			await page.locator('main .go').click();
			await isMarked(page, 'allowances.seam', /from 0\.5 cm to 4\.0 cm/);
			await isMarked(page, 'allowances.hem', /from 0\.5 cm to 10\.0 cm/);
			await expect(field(page, 'allowances.seam')).toBeFocused();
		}
	}
	await page.context().close();
});

test('what is asked about both readings is asked once, and answered for both', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Tamsin');
	await open(page, `${await skirtOf(app, 'Tamsin')}/measure/waist`);
	const send = page.locator('button[form=take]');
	await page.getByRole('button', { name: 'Measure again' }).click();
	await field(page, 'first').fill('72');
	await field(page, 'second').fill('72');
	await send.click();
	await expect(page.getByRole('alert')).toHaveCount(1);
	await page.getByRole('button', { name: /^I meant 28/ }).click();
	await expect(page.getByRole('alert')).toHaveCount(0);
	// 72 cm is 28.35 in, read as the nearest eighth.
	await expect(field(page, 'first')).toHaveValue('28 3/8');
	await expect(field(page, 'second')).toHaveValue('28 3/8');
	await page.getByRole('button', { name: 'Leave it' }).click();
	await page.context().close();
});

test('that two readings are too far apart stands once on the screen', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Ines');
	await open(page, `${await skirtOf(app, 'Ines')}/measure/waist`);
	await expect(page.getByText('Take it once more')).toBeVisible();
	await expect(page.getByText('is fine')).toHaveCount(1);
	await page.context().close();
});

test('a form that another site sends is refused on a page that says so, and nothing is kept', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Noor');
	const skirt = await skirtOf(app, 'Noor');
	const before = await kept(app, 'Noor', 'preference');
	// As a browser asks for a page.
	const accept = 'text/html,application/xhtml+xml';
	for (const headers of [{ origin: 'https://elsewhere.test' }, { origin: 'null' }, { origin: app.url, 'sec-fetch-site': 'cross-site' }, {}] as Record<string, string>[]) {
		const answer = await page.request.post(`${skirt}?/preference`, { headers: { accept, ...headers }, form: { noTouch: 'true' } });
		expect([headers, answer.status(), answer.headers()['content-type']]).toEqual([headers, 403, expect.stringContaining('text/html')]);
		expect(await answer.text()).toContain('This came from another site, so nothing was done.');
	}
	expect((await page.request.post(`${skirt}?/preference`, { headers: { accept, origin: app.url }, form: { noTouch: 'true' } })).status()).toBe(200);
	expect(await kept(app, 'Noor', 'preference')).toHaveLength(before.length + 1);
	await page.context().close();
});
