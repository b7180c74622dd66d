// The app for whole journeys: started as a person starts it, on a database of its own in a folder that is removed after.
import { spawn } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { test as base } from '@playwright/test';
import type { Sql } from 'postgres';
import { openDatabase } from '../../src/lib/server/connection.ts';
import { startEmbedded } from '../../src/lib/server/embedded-postgres.ts';
import { makeLink } from '../../src/lib/server/link.ts';

export { expect } from '@playwright/test';

export interface App {
	/** `http://localhost:PORT`, without a slash at its end. */
	readonly url: string;
	/** The first teacher's link, which works once. */
	readonly firstTeacher: string;
	/** A new one-time link for someone of the demo class, or of another class opened here. */
	linkFor(name: string): Promise<string>;
	/** Joins the app's database as a second process would. */
	ask<T>(question: (sql: Sql) => Promise<T>): Promise<T>;
	/** Kills the app and its database at once, as a power cut does. */
	kill(): Promise<void>;
	/** Starts it again after that, at the same address with the same records. */
	startAgain(): Promise<void>;
	stop(): Promise<void>;
}

export const freePort = (): Promise<number> => new Promise((done) => {
	const probe = createServer().listen(0, () => {
		const address = probe.address();
		probe.close(() => done(typeof address === 'object' && address ? address.port : 0));
	});
});

/** One process of the app: up when this resolves. */
async function launch(env: Readonly<Record<string, string>>) {
	const child = spawn(process.execPath, ['--import', 'tsx', 'src/commands/start.ts'], {
		cwd: resolve(import.meta.dirname, '../..'), stdio: ['ignore', 'pipe', 'pipe'],
		env: { ...process.env, DATABASE_URL: '', ...env, TSX_TSCONFIG_PATH: 'src/commands/tsconfig.json' }
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
	const end = (signal: NodeJS.Signals): Promise<void> => {
		child.kill(signal);
		return gone;
	};
	return { said, end };
}

/** Starts an app of one's own. A journey that needs the first teacher's link does this; the others share `app`. */
export async function startApp(settings: Readonly<Record<string, string>> = {}): Promise<App> {
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-app-'));
	chmodSync(folder, 0o755);
	const env = { ...settings, PORT: String(await freePort()), SKIRTWRIGHT_DATA: folder };
	let running = await launch(env);

	async function ask<T>(question: (sql: Sql) => Promise<T>): Promise<T> {
		const embedded = await startEmbedded(join(folder, 'postgres'));
		const sql = openDatabase(embedded.url);
		try {
			return await question(sql);
		} finally {
			await sql.end({ timeout: 1 });
			await embedded.leave();
		}
	}

	return {
		url: `${settings.TLS_CERT ? 'https' : 'http'}://localhost:${env.PORT}`,
		firstTeacher: /first teacher[^/]+(\S+)/.exec(running.said.replaceAll(/https?:\/\/[^/]+/g, ''))?.[1] ?? '',
		ask,
		linkFor: (name) => ask(async (sql) => {
			const [person] = await sql`select id from people where name = ${name} order by made_at limit 1`;
			if (!person) throw new Error(`there is no ${name}`);
			return `/link/${await makeLink(sql, person.id, new Date(Date.now() + 3_600_000))}`;
		}),
		async kill() {
			const [server] = readFileSync(join(folder, 'postgres', 'cluster', 'postmaster.pid'), 'utf8').split('\n');
			const end = running.end('SIGKILL');
			process.kill(Number(server), 'SIGKILL');
			await end;
		},
		async startAgain() {
			running = await launch(env);
		},
		async stop() {
			await running.end('SIGTERM');
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
	}, { scope: 'worker', timeout: 240_000 }],
	baseURL: async ({ app }, use) => use(app.url)
});
