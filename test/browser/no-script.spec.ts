// Without the script a form is a plain form: joining, measuring, asking, being cleared and ticking all work.
import type { Page } from '@playwright/test';
import { defaultGate } from '../../src/lib/class/gate.ts';
import { expect, test } from './app.ts';
import { desk, kept, phone, signIn } from './person.ts';
import { admit, clear, openFigures } from './teacher.ts';

const plain = { ...phone, javaScriptEnabled: false };

async function takeTwice(page: Page, skirt: string, measurement: string, first: string, second: string): Promise<void> {
	await page.goto(`${skirt}/measure/${measurement}`);
	await page.getByRole('textbox', { name: 'First' }).fill(first);
	await page.getByRole('textbox', { name: 'Second' }).fill(second);
	await page.getByRole('button', { name: 'Keep what I measured' }).click();
}

test('without the script a learner joins, measures, asks, is cleared and ticks, and her teacher clears her', async ({ app, browser }) => {
	const teacher = await signIn(browser, app, 'Rosalind', { ...desk, javaScriptEnabled: false });
	const [row] = await app.ask((sql) => sql`select id, join_code as code from classes order by made_at limit 1`);
	const { id, code } = row as unknown as { id: string; code: string };
	const skirt = `/skirt/${id}`;

	const page = await (await browser.newContext({ baseURL: app.url, ...plain })).newPage();
	await page.goto('/join');
	await page.getByRole('textbox', { name: 'Join code' }).fill('zzzz-zzzz');
	await page.getByRole('button', { name: 'Find my class' }).click();
	await expect(page.getByText('No class has that join code now.')).toBeVisible();
	await expect(page.getByRole('textbox', { name: 'Join code' })).toHaveValue('zzzz-zzzz');
	await page.getByRole('textbox', { name: 'Join code' }).fill(`${code.slice(0, 4).toUpperCase()}-${code.slice(4)}`);
	await page.getByRole('button', { name: 'Find my class' }).click();
	await page.getByRole('textbox', { name: 'Your name' }).fill('Marit');
	await page.getByRole('button', { name: 'Ask to join' }).click();
	await expect(page.getByRole('heading', { name: 'Waiting for your teacher' })).toBeVisible();

	await admit(teacher, id, 'Marit');
	await page.getByRole('link', { name: 'Look again now' }).click();
	await page.getByRole('button', { name: 'Make my card' }).click();
	await expect(page.getByText('Five words')).toBeVisible();
	await page.getByRole('link', { name: 'I have kept it' }).click();
	await expect(page).toHaveURL(skirt);

	// What can't be read comes back as it was typed, with how to mend it.
	await page.goto(`${skirt}/measure/waist`);
	await page.getByRole('textbox', { name: 'First' }).fill('seventy');
	await page.getByRole('textbox', { name: 'Second' }).fill('70,5');
	await page.getByRole('button', { name: 'Keep what I measured' }).click();
	await expect(page.getByRole('textbox', { name: 'First' })).toHaveValue('seventy');
	await expect(page.getByRole('textbox', { name: 'First' })).toHaveAttribute('aria-invalid', 'true');
	await expect(page.getByRole('textbox', { name: 'Second' })).toHaveValue('70,5');
	await page.getByRole('textbox', { name: 'First' }).fill('70');
	await page.getByRole('button', { name: 'Keep' }).click();
	await expect(page.locator('.result .number')).toContainText('70.3 cm');
	await takeTwice(page, skirt, 'hip', '96', '96,5');
	await takeTwice(page, skirt, 'waistToHip', '20', '20');
	await takeTwice(page, skirt, 'length', '60', '60');
	await page.goto(`${skirt}/draft`);
	// (70.25 + 1 of ease) ÷ 3.14159 = 22.68
	await expect(page.getByRole('row', { name: 'Waist radius' }).locator('.result')).toContainText('22.7');

	// A line left out, and no second person: both are said, and what was ticked stays.
	await page.goto(`${skirt}/gate`);
	for (const { says } of defaultGate.slice(1)) await page.getByRole('checkbox', { name: says }).check();
	await page.getByRole('button', { name: 'Ask to be cleared' }).click();
	await expect(page.getByText('Read this line aloud')).toHaveCount(1);
	await expect(page.getByText('Write the name or initials')).toBeVisible();
	await expect(page.getByRole('checkbox', { name: defaultGate[1]!.says })).toBeChecked();
	await page.getByRole('checkbox', { name: defaultGate[0]!.says }).check();
	await page.getByRole('textbox', { name: 'Read with' }).fill('Bea');
	await page.getByRole('button', { name: 'Ask to be cleared' }).click();
	await expect(page.getByRole('heading', { name: 'Waiting for your teacher' })).toBeVisible();

	await openFigures(teacher, id, 'Marit');
	await expect(teacher.getByRole('row', { name: 'Waist radius' }).locator('.result')).toContainText('22.7');
	await clear(teacher, 'Marit');
	await page.goto(`${skirt}/gate`);
	await expect(page.getByRole('heading', { name: 'Cleared to cut' })).toBeVisible();

	await page.goto(`${skirt}/make/mark-cut?step=cut-skirt`);
	await page.getByRole('button', { name: 'Cut', exact: true }).click();
	await expect(page).toHaveURL(/step=notch-skirt/);
	expect((await kept(app, 'Marit', 'tick')).map(({ step }) => step)).toEqual(['cut-skirt']);
	await page.getByRole('link', { name: 'Step before' }).click();
	await page.getByRole('button', { name: 'Untick' }).click();
	await expect(page.getByRole('button', { name: 'Cut', exact: true })).toBeVisible();
	await page.context().close();
	await teacher.context().close();
});
