// What a teacher does at her class's screens.
import type { Page } from '@playwright/test';
import { expect } from './app.ts';
import { alive } from './person.ts';

/** Opens a class on the lined half circle; stands at it after. Gives its id. */
export async function openClass(page: Page, title: string): Promise<string> {
	await page.goto('/classes');
	await page.getByRole('link', { name: 'Open a class' }).click();
	await alive(page);
	await page.getByRole('textbox', { name: 'Title' }).fill(title);
	await page.getByRole('button', { name: 'Open the class' }).click();
	await expect(page).toHaveURL(/\/classes\/[0-9a-z]{8}/);
	return /\/classes\/([0-9a-z]{8})/.exec(page.url())![1]!;
}

/** A join code, as it stands on the poster. */
export async function newCode(page: Page, classId: string): Promise<string> {
	await page.goto(`/classes/${classId}/people`);
	await page.getByRole('button', { name: 'Make a join code' }).click();
	await page.getByRole('link', { name: 'Print the poster' }).click();
	return (await page.locator('.letters').textContent())!.trim();
}

export async function admit(page: Page, classId: string, name: string): Promise<void> {
	await page.goto(`/classes/${classId}/people`);
	await page.getByRole('button', { name: `Admit ${name}` }).click();
	await expect(page.getByRole('button', { name: `Admit ${name}` })).toHaveCount(0);
}

/** Opens one learner's readings and figures from the queue. */
export async function openFigures(page: Page, classId: string, name: string): Promise<void> {
	await page.goto(`/classes/${classId}/numbers`);
	await page.getByRole('link', { name, exact: true }).first().click();
	await page.getByRole('button', { name: 'Open the figures' }).click();
}

/** With a reason where flags stand. */
export async function clear(page: Page, name: string, reason?: string): Promise<void> {
	if (reason !== undefined) {
		await page.getByText('Clear, with a reason').click();
		await page.getByRole('textbox', { name: 'Why it may be cut all the same' }).fill(reason);
	}
	await page.getByRole('button', { name: `Clear ${name} to cut` }).click();
}

export async function giveBack(page: Page, name: string, action: string): Promise<void> {
	await page.getByRole('textbox', { name: 'In your own words' }).fill(action);
	await page.getByRole('button', { name: `Return to ${name}` }).click();
}
