// A person at a device of her own: signs in, measures, ticks, in the words the screen shows.
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import { expect, type App } from './app.ts';

export const phone: BrowserContextOptions = { viewport: { width: 390, height: 844 } };
export const desk: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };

/** Someone of the demo class, by a one-time link. Stands at the front page. */
export async function signIn(browser: Browser, app: App, name: string, options: BrowserContextOptions = phone): Promise<Page> {
	const page = await (await browser.newContext({ locale: 'en-GB', baseURL: app.url, ...options })).newPage();
	await page.goto(await app.linkFor(name));
	await page.getByRole('button', { name: `I am ${name}` }).click();
	await expect(page).not.toHaveURL(/\/link\//);
	return page;
}

/** The address of the one class of someone's skirt: `/skirt/CODE`. */
export const skirtOf = (app: App, name: string): Promise<string> => app.ask(async (sql) => {
	const [member] = await sql`select class_id from members where name = ${name} and status = 'admitted' limit 1`;
	return `/skirt/${member!.class_id}`;
});

/** Opens a page and waits until its script runs: SvelteKit puts its announcer there last. Before that a form is a plain form. */
export async function open(page: Page, address: string): Promise<void> {
	await page.goto(address);
	await alive(page);
}

export const alive = (page: Page): Promise<void> => page.locator('#svelte-announcer').waitFor({ state: 'attached' });

/** Types readings of one measurement into its page and has them taken. */
export async function take(page: Page, ...readings: readonly string[]): Promise<void> {
	const fields = page.locator('#take').getByRole('textbox');
	for (const [index, reading] of readings.entries()) await fields.nth(index).fill(reading);
	await page.locator('button[form=take]').click();
}

/** A learner's events of one kind, as the records keep them. */
export const kept = (app: App, name: string, kind: string): Promise<readonly Record<string, unknown>[]> => app.ask(async (sql) =>
	(await sql`select e.body from events e join members m on m.id = e.member_id where m.name = ${name} and e.kind = ${kind} order by e.position`).map(({ body }) => body as Record<string, unknown>));
