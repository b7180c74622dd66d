// The built app with its demo class, in a process of its own as a person starts it, for benches to ask.
import { spawn } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Sql } from 'postgres';
import { buildIfNeeded } from '../../../src/commands/build.ts';
import { openDatabase } from '../../../src/lib/server/connection.ts';
import { startEmbedded } from '../../../src/lib/server/embedded-postgres.ts';
import { beginSession } from '../../../src/lib/server/session.ts';

export const root = fileURLToPath(new URL('../../..', import.meta.url));

export interface Child {
	stop(): Promise<void>;
}
/** A script of ours, up when it says `ready`. */
export async function runScript(script: string, env: Readonly<Record<string, string>>, ready: string): Promise<Child> {
	const child = spawn(process.execPath, ['--import', 'tsx', script], {
		cwd: root, stdio: ['ignore', 'pipe', 'inherit'], env: { ...process.env, ...env, TSX_TSCONFIG_PATH: 'src/commands/tsconfig.json' }
	});
	const gone = new Promise<void>((done) => child.once('exit', () => done()));
	await new Promise<void>((open, failed) => {
		let said = '';
		child.stdout.on('data', (part: Buffer) => {
			said += String(part);
			if (said.includes(ready)) open();
		});
		void gone.then(() => failed(new Error(`${script} ended before it was ready: ${said}`)));
	});
	return {
		stop() {
			child.kill('SIGTERM');
			return gone;
		}
	};
}

export const freePort = (): Promise<number> => new Promise((done) => {
	const probe = createServer().listen(0, () => {
		const { port } = probe.address() as AddressInfo;
		probe.close(() => done(port));
	});
});

export interface BuiltApp {
	readonly port: number;
	readonly databaseUrl: string;
	/** A learner of the demo class, signed in. */
	readonly learner: { readonly session: string; readonly memberId: string; readonly classId: string };
}

/** Starts it, lends it with the demo learner of that name signed in, and takes all of it away. */
export async function withBuiltApp<T>(use: (app: BuiltApp) => Promise<T>, learner = 'Ines'): Promise<T> {
	await buildIfNeeded(`${root.replace(/\/$/, '')}/`, () => {});
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-bench-'));
	chmodSync(folder, 0o755);
	const port = await freePort();
	const app = await runScript('src/commands/start.ts', { DATABASE_URL: '', PORT: String(port), SKIRTWRIGHT_DATA: folder }, 'To close, press');
	try {
		const embedded = await startEmbedded(join(folder, 'postgres'));
		const sql = openDatabase(embedded.url, { max: 1 });
		try {
			return await use({ port, databaseUrl: embedded.url, learner: await signIn(sql, learner) });
		} finally {
			await sql.end({ timeout: 1 });
			await embedded.leave();
		}
	} finally {
		await app.stop();
		rmSync(folder, { recursive: true, force: true });
	}
}

async function signIn(sql: Sql, name: string): Promise<BuiltApp['learner']> {
	const [member] = await sql`select id, class_id, person_id from members where role = 'learner' and status = 'admitted' and name = ${name}`;
	if (!member) throw new Error(`the demo class has no ${name}`);
	return { session: await beginSession(sql, { id: member.person_id, canTeach: false }), memberId: member.id, classId: member.class_id };
}
