// From a changed choice to the next paint, on the learner's draft page, in a browser slowed four times (a phone-class
// processor). The whole draft is worked out again, with its drawing, figures and checks. A figure to read, never a test.
import { chromium, type Browser, type Page } from '@playwright/test';
import { findChromium } from '../tools.ts';
import { withBuiltApp } from './app/built-app.ts';
import type { Row } from './row.ts';

const SLOWED = 4;
const MOVES = 80;
/** One frame at 60 a second, ms. */
const FRAME = 1000 / 60;

/** What is moved, and through which values: each differs from the one before, and all can be drafted. */
const controls = [
	{ what: 'ease at the waist: draft, drawing, figures, checks', field: 'waistEase', open: '', values: (i: number) => String(1 + (i % 40) / 10) },
	{ what: 'depth of the band: the same', field: 'bandDepth', open: '', values: (i: number) => String(3 + (i % 30) / 10) },
	{ what: 'length in “What if?”: four skirts side by side', field: 'length1', open: '#what-if', values: (i: number) => String(50 + (i % 40) / 2) },
	{ what: 'flare in “What if?”: four skirts side by side', field: 'share1', open: '#what-if', values: (i: number) => ['0.25', '0.5', '0.75', '1'][i % 4]! }
] as const;

/**
 * Each move begins with a frame: the event is sent, the page works itself out, and the browser lays out and paints in the
 * same frame; the message that was posted before comes after that. So waiting for a frame isn't counted, working is.
 */
async function moves(page: Page, field: string, values: readonly string[]): Promise<readonly number[]> {
	return page.evaluate(async ({ field, values }) => {
		const input = document.querySelector<HTMLInputElement | HTMLSelectElement>(`[name="${field}"]`);
		if (!input) throw new Error(`no field ${field}`);
		input.scrollIntoView({ block: 'center' });
		const times: number[] = [];
		const channel = new MessageChannel();
		for (const value of values) {
			times.push(await new Promise<number>((painted) => requestAnimationFrame(() => {
				const start = performance.now();
				channel.port1.onmessage = () => painted(performance.now() - start);
				input.value = value;
				input.dispatchEvent(new Event('input', { bubbles: true }));
				// A field says that it has changed when it is left, a list of choices at once.
				if (input instanceof HTMLSelectElement) input.dispatchEvent(new Event('change', { bubbles: true }));
				channel.port2.postMessage(null);
			})));
			await new Promise((rest) => setTimeout(rest, 40));
		}
		return times;
	}, { field, values: [...values] });
}

const at = (sorted: readonly number[], part: number): number => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]!;

async function measure(browser: Browser, url: string, session: string): Promise<readonly Row[]> {
	const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
	await context.addCookies([{ name: 'skirtwright', value: session, url }]);
	const page = await context.newPage();
	await page.goto(url, { waitUntil: 'networkidle' });
	const slow = await context.newCDPSession(page);
	await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
	const rows: Row[] = [];
	for (const { what, field, open, values } of controls) {
		if (open) await page.evaluate((selector) => { (document.querySelector(selector) as HTMLDetailsElement).open = true; }, open);
		const words = () => page.evaluate(() => document.querySelector('main')?.textContent);
		const before = await words();
		await moves(page, field, Array.from({ length: 22 }, (_, i) => values(i + 1)));
		if ((await words()) === before) throw new Error(`${field} changed nothing`);
		const times = [...(await moves(page, field, Array.from({ length: MOVES }, (_, i) => values(i + 1))))].sort((a, b) => a - b);
		rows.push({ what: `${what}, median`, figure: at(times, 0.5), unit: 'ms', goal: `≤ ${FRAME.toFixed(1)} ms` }, { what: '… 95 of 100 moves within', figure: at(times, 0.95), unit: 'ms', goal: `≤ ${FRAME.toFixed(1)} ms` });
	}
	await context.close();
	return rows;
}

export default (): Promise<readonly Row[]> => withBuiltApp(async ({ port, learner: { session, classId } }) => {
	const executablePath = findChromium();
	if (!executablePath) throw new Error('this bench needs Chromium');
	const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
	try {
		return await measure(browser, `http://localhost:${port}/skirt/${classId}/draft`, session);
	} finally {
		await browser.close();
	}
	// Her readings agree, so she has a draft to change.
}, 'Noor');
