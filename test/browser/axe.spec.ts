// Every screen in both sizes, light and dark: nothing for axe to find, nothing wider than the screen, one yellow action
// that the keyboard reaches.
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test, type App } from './app.ts';
import { alive, signIn } from './person.ts';
import { screens } from './screens.ts';

const sizes = [{ width: 390, height: 844 }, { width: 1280, height: 800 }] as const;
/** What must hold up to WCAG 2.2 AA. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** All that axe knows of AA; `colours`: only what may differ between light and dark. */
async function findings(page: Page, look: 'all' | 'colours' = 'all'): Promise<readonly string[]> {
	const axe = new AxeBuilder({ page }).setLegacyMode(true);
	const { violations } = await (look === 'all' ? axe.withTags(tags) : axe.withRules(['color-contrast', 'link-in-text-block'])).analyze();
	return violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')} ${failureSummary?.split('\n')[1]?.trim()}`));
}

/** What sticks out of a narrow screen; a box that scrolls by itself may hold something wider. */
const tooWide = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Tabs through the page until the focus stands on its yellow action. */
async function reachByKeyboard(page: Page): Promise<string> {
	await page.evaluate(() => {
		document.querySelectorAll('[data-passed]').forEach((passed) => passed.removeAttribute('data-passed'));
		// The first thing on every page.
		document.querySelector<HTMLElement>('.skip')!.focus();
	});
	for (;;) {
		await page.keyboard.press('Tab');
		const at = await page.evaluate(() => {
			const on = document.activeElement;
			if (!on || on === document.body) return 'left the page before it';
			// A field for a date has several stops of its own, one after the other.
			if (on.getAttribute('data-passed') === 'before') return `came back to ${on.outerHTML.slice(0, 80)}`;
			document.querySelector('[data-passed="now"]:not(:focus)')?.setAttribute('data-passed', 'before');
			on.setAttribute('data-passed', 'now');
			return on.matches('.go') ? 'reached' : 'on the way';
		});
		if (at !== 'on the way') return at;
	}
}

async function look(page: Page, screen: string): Promise<void> {
	const [address, press] = screen.split('|') as [string, string?];
	await page.setViewportSize(sizes[0]);
	await page.goto(address);
	await alive(page);
	if (press) {
		const before = await page.locator('main').innerHTML();
		await page.getByRole('button', { name: press }).click();
		await page.waitForFunction((was) => document.querySelector('main')?.innerHTML !== was, before);
	}
	const go = page.locator('.go:visible');
	const count = await go.count();
	expect.soft(count, `${screen}: more than one yellow action`).toBeLessThanOrEqual(1);
	for (const viewport of sizes) {
		await page.setViewportSize(viewport);
		for (const colorScheme of ['light', 'dark'] as const) {
			await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
			expect.soft(await findings(page, colorScheme === 'light' ? 'all' : 'colours'), `${screen} at ${viewport.width} in ${colorScheme}`).toEqual([]);
		}
		expect.soft(await tooWide(page), `${screen} at ${viewport.width}: wider than the screen by`).toBe(0);
		if (count > 0) expect.soft(await reachByKeyboard(page), `${screen} at ${viewport.width} by keyboard`).toBe('reached');
	}
	await page.setViewportSize({ width: 320, height: 640 });
	expect.soft(await tooWide(page), `${screen} at 320: wider than the screen by`).toBe(0);
}

const demoClass = (app: App): Promise<{ id: string; code: string; ines: string }> => app.ask(async (sql) => {
	// The poster's code holds for an hour from the seeding.
	const [row] = await sql`select c.id, c.join_code as code, m.id as ines from classes c join members m on m.class_id = c.id and m.name = 'Ines' order by c.made_at limit 1`;
	return row as unknown as { id: string; code: string; ines: string };
});

test('axe and the measuring of width find what is put wrong', async ({ app, page }) => {
	await page.goto(`${app.url}/lessons`);
	await page.evaluate(() => {
		const wrong = document.body.appendChild(document.createElement('img'));
		wrong.style.inlineSize = '5000px';
		wrong.style.blockSize = '1px';
		document.querySelector('h1')!.style.color = 'color-mix(in srgb, CanvasText 30%, Canvas)';
	});
	expect(await findings(page)).toEqual([expect.stringMatching(/^color-contrast: /), expect.stringMatching(/^image-alt: /)]);
	expect(await findings(page, 'colours')).toEqual([expect.stringMatching(/^color-contrast: /)]);
	expect(await tooWide(page)).toBeGreaterThan(1000);
});

for (const { who, at } of screens) {
	test(`${who ?? 'a stranger'} finds every screen whole, by eye, by axe and by keyboard`, async ({ app, browser }) => {
		test.setTimeout(180_000);
		const { id, code, ines } = await demoClass(app);
		const page = who === null ? await (await browser.newContext({ baseURL: app.url })).newPage() : await signIn(browser, app, who);
		for (const address of at) await look(page, address.replace('CLASS', id).replace('CODE', code).replace('MEMBER', ines));
		await page.context().close();
	});
}
