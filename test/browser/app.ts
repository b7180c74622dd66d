// The app for whole journeys: started as a person starts it, on a database of its own in a folder that is removed after.
import { spawn } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { test as base } from '@playwright/test';
import { openDatabase } from '../../src/lib/server/connection.ts';
import { startEmbedded } from '../../src/lib/server/embedded-postgres.ts';
import { makeLink } from '../../src/lib/server/link.ts';

export { expect } from '@playwright/test';

export interface App {
	/** `http://localhost:PORT`, without a slash at its end. */
	readonly url: string;
	/** The first teacher's link, which works once. */
	readonly firstTeacher: string;
	/** A new one-time link for someone of the demo class. */
	linkFor(name: string): Promise<string>;
	stop(): Promise<void>;
}

const freePort = (): Promise<number> => new Promise((done) => {
	const probe = createServer().listen(0, () => {
		const address = probe.address();
		probe.close(() => done(typeof address === 'object' && address ? address.port : 0));
	});
});

/** Starts an app of one's own. A journey that needs the first teacher's link does this; the others share `app`. */
export async function startApp(settings: Readonly<Record<string, string>> = {}): Promise<App> {
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-app-'));
	chmodSync(folder, 0o755);
	const port = await freePort();
	const child = spawn(process.execPath, ['--import', 'tsx', 'src/commands/start.ts'], {
		cwd: resolve(import.meta.dirname, '../..'), stdio: ['ignore', 'pipe', 'pipe'],
		env: { ...process.env, DATABASE_URL: '', ...settings, PORT: String(port), SKIRTWRIGHT_DATA: folder, TSX_TSCONFIG_PATH: 'src/commands/tsconfig.json' }
	});
	const gone = new Promise<void>((done) => child.once('exit', () => done()));
	let said = '';
	await new Promise<void>((open, failed) => {
		const listen = (part: Buffer): void => {
			said += String(part);
			if (said.includes('To close, press')) open();
		};
		child.stdout.on('data', listen);
		child.stderr.on('data', listen);
		void gone.then(() => failed(new Error(`the app didn't start: ${said}`)));
	});
	return {
		url: `${settings.TLS_CERT ? 'https' : 'http'}://localhost:${port}`,
		firstTeacher: /first teacher[^/]+(\S+)/.exec(said.replaceAll(/https?:\/\/[^/]+/g, ''))?.[1] ?? '',
		async linkFor(name) {
			// Joins the app's database as a second process would.
			const embedded = await startEmbedded(join(folder, 'postgres'));
			const sql = openDatabase(embedded.url);
			try {
				const [person] = await sql`select id from people where name = ${name} order by made_at limit 1`;
				if (!person) throw new Error(`there is no ${name}`);
				return `/link/${await makeLink(sql, person.id, new Date(Date.now() + 3_600_000))}`;
			} finally {
				await sql.end({ timeout: 1 });
				await embedded.leave();
			}
		},
		async stop() {
			child.kill('SIGTERM');
			await gone;
			rmSync(folder, { recursive: true, force: true });
		}
	};
}

/** Tests that share one app with its demo class; pages open relative to it. */
export const test = base.extend<object, { app: App }>({
	app: [async ({}, use) => {
		const app = await startApp();
		await use(app);
		await app.stop();
	}, { scope: 'worker', timeout: 60_000 }],
	baseURL: async ({ app }, use) => use(app.url)
});
