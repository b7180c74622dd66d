// Asking to be cleared: when it comes, what is read with it, taking it back, and how soon the answer is there.
import { defaultGate } from '../../src/lib/class/gate.ts';
import { expect, test } from './app.ts';
import { desk, kept, open, signIn, skirtOf } from './person.ts';
import { clear, openFigures } from './teacher.ts';

test('her draft leads on to the step she is at, and to asking only at the cutting step', async ({ app, browser }) => {
	// Two steps into marking.
	const jory = await signIn(browser, app, 'Jory');
	const skirt = await skirtOf(app, 'Jory');
	await open(jory, `${skirt}/draft`);
	await expect(jory.locator('.bar .go')).toHaveText(/^Go on: /);
	await jory.locator('.bar .go').click();
	await expect(jory).toHaveURL(/\/make\/mark-cut\?step=/);
	// Every step before the one that needs a clearance: the stage opens at the first that isn't ticked.
	const tick = jory.locator('.bar form[action^="?/tick"] button');
	for (let done = (await kept(app, 'Jory', 'tick')).length; ; done++) {
		await open(jory, `${skirt}/make/mark-cut`);
		if (await tick.count() === 0) break;
		await tick.click();
		await expect.poll(async () => (await kept(app, 'Jory', 'tick')).length).toBe(done + 1);
	}
	await open(jory, `${skirt}/draft`);
	await expect(jory.locator('.bar .go')).toHaveText('Ask to be cleared to cut');
	await jory.context().close();
});

test('the gate gives the figure that the waist line is walked to, and a request can be taken back', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Jory');
	const skirt = await skirtOf(app, 'Jory');
	await open(page, `${skirt}/gate`);
	// (81.0 + 80.5) ÷ 2 of waist and the class's 1 cm of ease, and half of it.
	await expect(page.locator('.expected')).toContainText('81.8');
	await expect(page.locator('.expected')).toContainText('40.9');
	for (const { says } of defaultGate) await page.getByRole('checkbox', { name: says }).check();
	await page.getByRole('textbox', { name: 'Read with' }).fill('Pia');
	await page.getByRole('button', { name: 'Ask to be cleared' }).click();
	await expect(page.getByRole('heading', { name: 'Waiting for your teacher' })).toBeVisible();
	await page.getByRole('button', { name: 'Take my request back' }).click();
	await expect(page.getByRole('heading', { name: 'Ready to cut?' })).toBeVisible();
	// What stood before it stands again: she was returned.
	await expect(page.getByText('asks for one thing first')).toBeVisible();
	await expect(page.locator('.saved')).toContainText('· sent to your teacher');
	await page.reload();
	await expect(page.getByRole('heading', { name: 'Ready to cut?' })).toBeVisible();
	await page.context().close();
});

test('a number changed after asking is said beside the request', async ({ app, browser }) => {
	const page = await signIn(browser, app, 'Tamsin');
	const skirt = await skirtOf(app, 'Tamsin');
	await open(page, `${skirt}/gate`);
	await expect(page.getByText('changed a number since you asked')).toHaveCount(0);
	await open(page, `${skirt}/measure/length`);
	await page.getByRole('button', { name: 'Measure again' }).click();
	await page.locator('#take').locator('[name=first]').fill('25');
	await page.locator('#take').locator('[name=second]').fill('25');
	await page.locator('button[form=take]').click();
	await expect(page.locator('.saved')).toContainText('· sent to your teacher');
	await open(page, `${skirt}/gate`);
	await expect(page.getByText('changed a number since you asked')).toBeVisible();
	await page.context().close();
});

test('her own page shows that she is cleared without being loaded again', async ({ app, browser }) => {
	const [page, teacher] = [await signIn(browser, app, 'Tamsin'), await signIn(browser, app, 'Rosalind', desk)];
	const skirt = await skirtOf(app, 'Tamsin');
	await open(page, skirt);
	await expect(page.getByText('Your teacher has been asked')).toBeVisible();
	await openFigures(teacher, skirt.split('/').at(-1)!, 'Tamsin');
	await clear(teacher, 'Tamsin');
	await expect(page.getByText('You are cleared to cut.')).toBeVisible();
	await page.context().close();
	await teacher.context().close();
});
