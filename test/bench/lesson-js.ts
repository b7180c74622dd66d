// What JavaScript a page takes at its first load, as a browser fetches it: the largest lesson page and the learner's own.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium, type Browser } from '@playwright/test';
import { findChromium } from '../tools.ts';
import { root, withBuiltApp } from './app/built-app.ts';
import type { Row } from './row.ts';

/** kB in gzip of every script a fresh browser asks for until the page is quiet, preloads and imports alike. */
async function scriptsOf(browser: Browser, url: string, session: string): Promise<number> {
	const context = await browser.newContext();
	await context.addCookies([{ name: 'skirtwright', value: session, url }]);
	const page = await context.newPage();
	const sizes: Promise<number>[] = [];
	page.on('response', (response) => {
		if (/\.js$/.test(new URL(response.url()).pathname)) sizes.push(response.body().then((body) => gzipSync(body).length));
	});
	const response = await page.goto(url, { waitUntil: 'networkidle' });
	if (response?.status() !== 200 || new URL(page.url()).pathname !== new URL(url).pathname) throw new Error(`no page at ${url}: ${response?.status()}, ${page.url()}`);
	// The document's own inline script is a few hundred bytes, and left out.
	const total = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
	await context.close();
	return total / 1000;
}

export default (): Promise<readonly Row[]> => withBuiltApp(async ({ port, learner: { session, classId } }) => {
	const executablePath = findChromium();
	if (!executablePath) throw new Error('this bench needs Chromium');
	const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
	try {
		const lessons = join(root, 'content', 'lessons');
		const parts = readdirSync(lessons).flatMap((lesson) => readdirSync(join(lessons, lesson)).filter((name) => /^\d+-.*\.md$/.test(name)).map((file) => ({
			slug: lesson.replace(/^\d+-/, ''), id: file.replace(/^\d+-|\.md$/g, ''), stage: /^kind: stage$/m.test(readFileSync(join(lessons, lesson, file), 'utf8'))
		})));
		const sizes: { readonly of: string; readonly size: number; readonly make: boolean }[] = [];
		for (const { slug, id, stage } of parts) {
			sizes.push({ of: id, size: await scriptsOf(browser, `http://localhost:${port}/lessons/${slug}/${id}`, session), make: false });
			// The learner's class is held on the first.
			if (stage && slug === parts[0]!.slug) sizes.push({ of: id, size: await scriptsOf(browser, `http://localhost:${port}/skirt/${classId}/make/${id}`, session), make: true });
		}
		const largest = (make: boolean) => sizes.filter((one) => one.make === make).reduce((most, one) => (one.size > most.size ? one : most));
		const [read, make] = [largest(false), largest(true)];
		return [
			{ what: `scripts of the largest lesson page, ${read.of}`, figure: read.size, unit: 'kB gzip', goal: '≤ 70 kB' },
			{ what: `scripts of the learner's largest make page, ${make.of}`, figure: make.size, unit: 'kB gzip', goal: '≤ 70 kB' }
		];
	} finally {
		await browser.close();
	}
});
