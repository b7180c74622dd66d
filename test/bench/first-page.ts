// From `npm start` on a built checkout to the first page, on a database that has been used before.
import { spawn } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { buildIfNeeded } from '../../src/commands/build.ts';
import type { Row } from './row.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Seconds until the front page is there; then the app is stopped. */
async function timeStart(folder: string): Promise<number> {
	const port = 20_000 + Math.floor(Math.random() * 10_000);
	const began = performance.now();
	const app = spawn('npm', ['start'], {
		cwd: root, stdio: 'ignore', detached: true,
		env: { ...process.env, DATABASE_URL: '', PORT: String(port), SKIRTWRIGHT_DATA: folder }
	});
	const gone = new Promise((done) => app.once('exit', done));
	for (;;) {
		const page = await fetch(`http://localhost:${port}/`).catch(() => null);
		if (page?.ok && (await page.text())) break;
		if (app.exitCode !== null) throw new Error('the app ended before its first page');
		await wait(10);
	}
	const seconds = (performance.now() - began) / 1000;
	process.kill(-app.pid!, 'SIGTERM');
	await gone;
	return seconds;
}

export default async function firstPage(): Promise<readonly Row[]> {
	await buildIfNeeded(root, () => {});
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-bench-'));
	chmodSync(folder, 0o755);
	try {
		const first = await timeStart(folder);
		const times = [await timeStart(folder), await timeStart(folder), await timeStart(folder)].sort((a, b) => a - b);
		return [
			{ what: 'first start with a new database and the demo class', figure: first, unit: 's', goal: '–' },
			{ what: 'npm start on a built checkout to the first page', figure: times[1]!, unit: 's', goal: '≤ 3 s' }
		];
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}
