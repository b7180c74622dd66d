// A waist edge that is out: put in at its step, judged, told to the teacher as a flag, and mended by one of the ways back.
import { expect, test } from './app.ts';
import { desk, kept, open, phone, signIn, skirtOf } from './person.ts';
import { openFigures } from './teacher.ts';

test('a learner puts in a waist that is out, finds the way back, and her teacher sees the flag before the figure', async ({ app, browser }) => {
	const skirt = await skirtOf(app, 'Oona');
	const page = await signIn(browser, app, 'Oona');
	await open(page, `${skirt}/make/staystitch?step=measure-waist-edge`);
	const field = page.getByRole('textbox', { name: 'Along the waist stitch line' });

	// What can't be read stays, and says so at its field.
	await field.fill('seventy');
	await page.getByRole('button', { name: 'Keep what I measured' }).click();
	await expect(field).toHaveAttribute('aria-invalid', 'true');
	await expect(field).toBeFocused();
	expect(await kept(app, 'Oona', 'made')).toEqual([]);

	// 77 of waist and 1 of ease are planned: 78. Underlap 3 and two ends of 1.5 make a band of 86 for 80.
	await field.fill('80');
	await page.getByRole('button', { name: 'Keep what I measured' }).click();
	await expect(page.getByText('It reads 80.0 cm, and 78.0 cm is wanted. That is 20 mm more')).toBeVisible();
	await expect(page.getByText('cut the band 86.0 cm long')).toBeVisible();
	await expect(page.getByText('sent to your teacher')).toBeVisible();
	expect(await kept(app, 'Oona', 'made')).toEqual([{ reading: 'waistAfterStaystitch', lengths: [{ mm: 800, typed: '80' }], unit: 'cm' }]);

	// The steps after it go by what is there: a quarter of 80.
	await open(page, `${skirt}/make/waistband?step=mark-band`);
	await expect(page.locator('#mark-band b').filter({ hasText: '20.0' }).first()).toBeVisible();

	// The way back, worked out from what she put in.
	await open(page, `${skirt}/make/staystitch?step=measure-waist-edge`);
	await page.getByRole('link', { name: 'See the ways back' }).click();
	await expect(page.getByRole('heading', { name: 'Something went wrong here' })).toBeVisible();
	const way = page.locator('#waist-stretched');
	await expect(way.getByText('Stop the machine. Lift the needle, then the foot.')).toBeVisible();
	await expect(way.getByText('Draw the staystitching up by 20 mm.')).toBeVisible();
	await expect(way.getByRole('img').first()).toBeVisible();
	// Nothing that she measured is in the address.
	expect(page.url()).not.toMatch(/80/);
	await way.getByRole('textbox').fill('78,8');
	await way.getByRole('button', { name: 'Show the ways back' }).click();
	await expect(way.getByText('That is 8 mm more.')).toBeVisible();
	expect(await kept(app, 'Oona', 'made')).toHaveLength(1);

	// Her teacher: a flag without a figure, then the figure once it is opened.
	const teacher = await signIn(browser, app, 'Rosalind', desk);
	const classId = skirt.split('/')[2]!;
	const [member] = await app.ask((sql) => sql`select id from members where name = 'Oona' and class_id = ${classId}`);
	await open(teacher, `/classes/${classId}/numbers/${member!.id}`);
	const flag = teacher.getByText('The waist after staystitching is out by more than the class allows');
	await expect(flag).toBeVisible();
	await expect(teacher.getByText('It reads 80.0 cm')).toHaveCount(0);
	await openFigures(teacher, classId, 'Oona');
	await expect(teacher.getByRole('row', { name: 'The waist after staystitching' })).toContainText('It reads 80.0 cm, and 78.0 cm is wanted.');

	// Mended and measured again: both are kept, the newest counts, and the flag is gone.
	await open(page, `${skirt}/make/staystitch?step=measure-waist-edge`);
	await page.getByText('Measure again', { exact: true }).click();
	await field.fill('78,2');
	await page.getByRole('button', { name: 'Keep what I measured' }).click();
	await expect(page.getByText('That is near enough.')).toBeVisible();
	await expect(page.getByText('sent to your teacher')).toBeVisible();
	expect(await kept(app, 'Oona', 'made')).toHaveLength(2);
	await open(teacher, `/classes/${classId}/numbers/${member!.id}`);
	await expect(teacher.getByText('No flags.')).toBeVisible();
	await page.context().close();
	await teacher.context().close();
});

test('without the script a reading is kept by its form, and the ways back answer by theirs', async ({ app, browser }) => {
	const skirt = await skirtOf(app, 'Jory');
	const page = await signIn(browser, app, 'Jory', { ...phone, javaScriptEnabled: false });
	await page.goto(`${skirt}/make/hang-level?step=mark-floor&places=8`);
	const places = page.locator('input[name=length]');
	for (const [i, text] of ['30', '30.1', '30.6', '31.2', '31.5', '31.2', '30.6', 'x'].entries()) await places.nth(i).fill(text);
	await page.getByRole('button', { name: 'Keep what I measured' }).click();
	await expect(places.nth(7)).toHaveAttribute('aria-invalid', 'true');
	await expect(places.nth(4)).toHaveValue('31.5');
	await places.nth(7).fill('30.1');
	await page.getByRole('button', { name: 'Keep what I measured' }).click();
	// 31.5 at the back is the highest: 1.5 comes off at the front.
	await expect(page.getByRole('row', { name: 'Centre front' }).first()).toContainText('1.5');
	expect((await kept(app, 'Jory', 'made')).map(({ reading }) => reading)).toEqual(['floor', 'hemAbove']);

	await page.goto('/lessons/lined-half-circle/mend/back-seam-zip?what=zip-short');
	await page.locator('#zip-short').getByRole('textbox').fill('12');
	await page.locator('#zip-short').getByRole('button', { name: 'Show the ways back' }).click();
	await expect(page.locator('#zip-short').getByText('The zip is 12.0 cm, and the opening needs')).toBeVisible();
	await expect(page.locator('#zip-short').getByText('Take a zip of')).toBeVisible();
	await page.context().close();
});
