import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, existsSync, lstatSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { openDatabase } from '../../src/lib/server/connection.ts';
import { startEmbedded, type Embedded } from '../../src/lib/server/embedded-postgres.ts';

const temp = mkdtempSync(join(tmpdir(), 'skirtwright-embedded-'));
chmodSync(temp, 0o755);
const folder = join(temp, 'postgres');
const pidFile = join(folder, 'cluster', 'postmaster.pid');
const serverPid = (): number => Number(readFileSync(pidFile, 'utf8').split('\n')[0]);
const children: ChildProcess[] = [];
const entered: Embedded[] = [];

/** Another process on the folder, which has kept the word when this answers. */
async function startChild(word: string): Promise<ChildProcess> {
	const child = spawn(process.execPath, ['--import', 'tsx', 'test/server/embedded-child.ts', folder, word], {
		env: { ...process.env, TSX_TSCONFIG_PATH: 'src/commands/tsconfig.json' }, stdio: ['ignore', 'pipe', 'pipe']
	});
	children.push(child);
	let said = '';
	for await (const part of child.stdout!) {
		said += String(part);
		if (said.includes('kept')) return child;
	}
	for await (const part of child.stderr!) said += String(part);
	throw new Error(`the child ended: ${said}`);
}

async function kill(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
	const gone = once(child, 'exit');
	child.kill(signal);
	await gone;
}

async function enter(): Promise<Embedded> {
	const embedded = await startEmbedded(folder);
	entered.push(embedded);
	return embedded;
}

async function words(url: string): Promise<readonly string[]> {
	const sql = openDatabase(url);
	const rows = await sql`select word from kept order by word`.finally(() => sql.end());
	return rows.map(({ word }) => word);
}

afterEach(async () => {
	for (const child of children.splice(0)) if (child.exitCode === null && child.signalCode === null) await kill(child, 'SIGKILL');
	for (const embedded of entered.splice(0)) await embedded.leave();
});
afterAll(() => rmSync(temp, { recursive: true, force: true }));

describe('the embedded server', { timeout: 60_000 }, () => {
	test('keeps what was kept when the app stops and starts', async () => {
		await kill(await startChild('linen'), 'SIGTERM');
		expect(existsSync(pidFile)).toBe(false);
		expect(await words((await enter()).url)).toEqual(['linen']);
	});

	test('has what was committed after the app and the server are killed at once, and starts beside the stale pid file', async () => {
		const child = await startChild('denim');
		const server = serverPid();
		process.kill(server, 'SIGKILL');
		await kill(child, 'SIGKILL');
		expect(serverPid()).toBe(server);
		expect(await words((await enter()).url)).toEqual(['denim', 'linen']);
	});

	test('goes on when the app is killed, and the next one joins it', async () => {
		const child = await startChild('curtain');
		const server = serverPid();
		await kill(child, 'SIGKILL');
		expect(await words((await enter()).url)).toEqual(['curtain', 'denim', 'linen']);
		expect(serverPid()).toBe(server);
	});

	test('is shared by two processes, and stops when the last one leaves', async () => {
		const [first, second] = [await startChild('felt'), await startChild('gauze')];
		const server = serverPid();
		await kill(first, 'SIGTERM');
		expect(serverPid()).toBe(server);
		const embedded = await enter();
		expect(await words(embedded.url)).toContain('gauze');
		await kill(second, 'SIGTERM');
		expect(serverPid()).toBe(server);
		await embedded.leave();
		entered.length = 0;
		expect(existsSync(pidFile)).toBe(false);
		expect(existsSync(new URL(embedded.url).searchParams.get('host')!)).toBe(false);
	});

	test('is started by one of many that come at once', async () => {
		const many = await Promise.all([1, 2, 3, 4, 5].map(enter));
		expect(new Set(many.map(({ url }) => url)).size).toBe(1);
		expect(await words(many[4]!.url)).toContain('linen');
	});

	test('is started again when it alone is killed, and the same pool finds it', async () => {
		const { url } = await enter();
		const sql = openDatabase(url);
		await sql`select 1`;
		process.kill(serverPid(), 'SIGKILL');
		const answers = async (): Promise<boolean> => sql`select word from kept`.then((rows) => rows.length > 0, () => false);
		await expect.poll(answers, { timeout: 30_000, interval: 100 }).toBe(true);
		// Without a limit the driver would wait for a connection that was turned away while the server was starting.
		await sql.end({ timeout: 1 });
	});

	test('lets nobody in without its password, and listens to no network', async () => {
		const { url } = await enter();
		const wrong = new URL(url);
		wrong.password = 'guess';
		const stranger = openDatabase(wrong.href);
		await expect(stranger`select 1`).rejects.toMatchObject({ code: '28P01' });
		await stranger.end();
		const sql = openDatabase(url);
		expect(await sql`show listen_addresses`).toEqual([{ listen_addresses: '' }]);
		await sql.end();
		const socket = statSync(new URL(url).searchParams.get('host')!);
		expect(socket.mode & 0o777).toBe(0o700);
		expect(statSync(join(folder, 'cluster')).mode & 0o777).toBe(0o700);
		expect(statSync(join(folder, 'cluster', 'password')).mode & 0o777).toBe(0o600);
	});

	test('records of another version are left alone, and the sentence says so', async () => {
		const old = join(temp, 'old');
		mkdirSync(join(old, 'cluster'), { recursive: true });
		writeFileSync(join(old, 'cluster', 'PG_VERSION'), '17\n');
		await expect(startEmbedded(old)).rejects.toThrow(/were kept by PostgreSQL 17, and this Skirtwright brings 18/);
	});

	test('a folder that can’t be made is told', async () => {
		writeFileSync(join(temp, 'file'), '');
		await expect(startEmbedded(join(temp, 'file', 'postgres'))).rejects.toThrow(/can’t be made.*SKIRTWRIGHT_DATA/s);
	});
});

// Only root meets this: the server runs as another user, who may not pass a closed home.
if (process.getuid?.() === 0) describe('as root, under a folder that is closed to others', { timeout: 60_000 }, () => {
	const closed = join(temp, 'closed');
	beforeAll(() => mkdirSync(closed, { mode: 0o700 }));

	test('the records are kept where the server can get to them, and a link leads there', async () => {
		const place = join(closed, 'data', 'postgres');
		for (const round of [1, 2]) {
			const embedded = await startEmbedded(place);
			const sql = openDatabase(embedded.url);
			await sql`create table if not exists kept (round integer)`;
			expect(await sql`insert into kept values (${round}) returning (select count(*)::int from kept) as before`).toEqual([{ before: round - 1 }]);
			await sql.end();
			await embedded.leave();
		}
		expect(lstatSync(place).isSymbolicLink()).toBe(true);
		expect(realpathSync(place)).toMatch(/^\/var\/lib\/skirtwright\/[0-9a-f]{12}$/);
		rmSync(realpathSync(place), { recursive: true });
	});
});
