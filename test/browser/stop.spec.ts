// npm start, told to end: the app goes with it, and so does its database, though npm tells only its own shell.
import { spawn } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from '@playwright/test';
import { freePort } from './app.ts';

test('TERM to npm start ends the app and its database, and frees the port', async () => {
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-stop-'));
	chmodSync(folder, 0o755);
	const port = await freePort();
	const npm = spawn('npm', ['start'], {
		cwd: resolve(import.meta.dirname, '../..'), stdio: 'ignore', detached: true,
		env: { ...process.env, DATABASE_URL: '', PORT: String(port), SKIRTWRIGHT_DATA: folder }
	});
	const answers = () => fetch(`http://localhost:${port}/`).then(({ ok }) => ok, () => false);
	const database = () => existsSync(join(folder, 'postgres', 'cluster', 'postmaster.pid'));
	try {
		await expect.poll(answers, { timeout: 120_000 }).toBe(true);
		expect(database()).toBe(true);
		// To npm alone, as a supervisor does; not to the others of its group.
		npm.kill('SIGTERM');
		await expect.poll(answers, { timeout: 30_000 }).toBe(false);
		await expect.poll(database, { timeout: 30_000 }).toBe(false);
	} finally {
		try {
			process.kill(-npm.pid!, 'SIGKILL');
		} catch {
			// All of them are gone.
		}
		rmSync(folder, { recursive: true, force: true });
	}
});
