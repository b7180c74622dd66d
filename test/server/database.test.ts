import { randomBytes } from 'node:crypto';
import { createServer } from 'node:net';
import type { Sql } from 'postgres';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openDatabase } from '../../src/lib/server/connection.ts';
import { checkDatabase } from '../../src/lib/server/database-check.ts';
import { database, isDatabaseOpen, useDatabase } from '../../src/lib/server/database.ts';
import { freshDatabase, onEachServer, servers, type FreshDatabase } from './test-database.ts';

/** Answers in the database's stead with these settings. */
const pretend = (settings: Record<string, string>): Sql => {
	const healthy = { server_version: '15.0', server_version_num: '150000', server_encoding: 'UTF8', fsync: 'on', full_page_writes: 'on', synchronous_commit: 'on' };
	const rows = Object.entries({ ...healthy, ...settings }).map(([name, setting]) => ({ name, setting }));
	return (() => Promise.resolve(rows)) as never;
};
async function refusal(url: string): Promise<string> {
	const sql = openDatabase(url);
	return checkDatabase(sql).then(() => 'taken', (problem: Error) => `${problem.name}: ${problem.message}`).finally(() => sql.end({ timeout: 0 }));
}

test('settings that could lose a commit are refused by name, and the oldest version that does is told', async () => {
	await expect(checkDatabase(pretend({}))).resolves.toBeUndefined();
	for (const setting of ['remote_apply', 'remote_write', 'local']) await expect(checkDatabase(pretend({ synchronous_commit: setting }))).resolves.toBeUndefined();
	await expect(checkDatabase(pretend({ fsync: 'off' }))).rejects.toThrow(/fsync off: after a power cut it could lose/);
	await expect(checkDatabase(pretend({ full_page_writes: 'off', synchronous_commit: 'off' }))).rejects.toThrow(/full_page_writes off, synchronous_commit off.*Switch them on/s);
	await expect(checkDatabase(pretend({ server_version: '14.12', server_version_num: '140012' }))).rejects.toThrow(/is PostgreSQL 14\.12\. Skirtwright needs 15 or later/);
	await expect(checkDatabase(pretend({ server_encoding: 'SQL_ASCII' }))).rejects.toThrow(/SQL_ASCII/);
});

test('no database at the address is told in a sentence', async () => {
	const port = await new Promise<number>((done) => {
		const probe = createServer().listen(0, '127.0.0.1', () => {
			const { port } = probe.address() as { port: number };
			probe.close(() => done(port));
		});
	});
	expect(await refusal(`postgres://wen:x@127.0.0.1:${port}/class`)).toMatch(/^CannotStart: No database answers at the address in DATABASE_URL/);
	expect(await refusal('postgres:///class?host=/nowhere')).toMatch(/^CannotStart: No database answers at the socket/);
	expect(await refusal('postgres://wen:x@no-such-host.invalid/class')).toMatch(/^CannotStart: The host in DATABASE_URL/);
});

test('the app’s pool is the one it was given, and asking before that is our own mistake', () => {
	expect(isDatabaseOpen()).toBe(false);
	expect(database).toThrow(/no database was opened/);
	const sql = openDatabase('postgres://nobody@localhost/nothing');
	useDatabase(sql);
	expect(database()).toBe(sql);
});

onEachServer('a database', (sql) => {
	test('is durable and new enough', async () => {
		await expect(checkDatabase(sql())).resolves.toBeUndefined();
	});

	test('tells capitals in every alphabet apart from nothing but case', async () => {
		expect(await sql()`select lower('ÉLAN') = lower('élan') as same`).toEqual([{ same: true }]);
	});
});

describe.each(servers)('on $name', (server) => {
	let fresh: FreshDatabase;
	beforeAll(async () => {
		fresh = await freshDatabase(server);
	});
	afterAll(() => fresh.drop());

	test('a database that is set not to wait for the disk is refused', async () => {
		const name = new URL(fresh.url).pathname.slice(1);
		await fresh.sql`alter database ${fresh.sql(name)} set synchronous_commit = off`;
		expect(await refusal(fresh.url)).toMatch(/^CannotStart: The database runs with synchronous_commit off/);
		await fresh.sql`alter database ${fresh.sql(name)} reset synchronous_commit`;
		expect(await refusal(fresh.url)).toBe('taken');
	});

	test('a database that isn’t there, and a user who may not come in, are told', async () => {
		const url = new URL(fresh.url);
		url.pathname = '/nothing_here';
		expect(await refusal(url.href)).toMatch(/doesn’t exist yet/);
		url.username = `stranger_${randomBytes(4).toString('hex')}`;
		url.password = 'wrong';
		expect(await refusal(url.href)).toMatch(/^CannotStart: The database (refuses the user or the password|doesn’t let this user in)/);
	});

	test('a user who may make no tables is told so before anything is done', async () => {
		const { migrate } = await import('../../src/lib/server/migration.ts');
		const role = `reader_${randomBytes(6).toString('hex')}`;
		await fresh.sql.unsafe(`create role ${role} login password 'tape'`);
		const url = new URL(fresh.url);
		[url.username, url.password] = [role, 'tape'];
		const sql = openDatabase(url.href);
		await fresh.sql`drop table migrations`;
		await expect(migrate(sql, 'migrations')).rejects.toThrow(/may not make tables there/);
		await sql.end();
		await fresh.sql.unsafe(`drop role ${role}`);
	});

	test('a pool whose connections are cut answers with a database’s code, and then works again', { timeout: 20_000 }, async () => {
		const sql = openDatabase(fresh.url, { max: 1 });
		const [{ pid }] = await sql<[{ pid: number }]>`select pg_backend_pid() as pid`;
		const broken = sql`select pg_sleep(30)`.then(() => 'slept', (problem: { code: string }) => problem.code);
		await expect.poll(() => fresh.sql`select from pg_stat_activity where pid = ${pid} and query like '%pg_sleep%' and state = 'active'`).toHaveLength(1);
		await fresh.sql`select pg_terminate_backend(${pid})`;
		expect(await broken).toMatch(/^(57P01|CONNECTION_CLOSED)$/);
		await expect.poll(() => sql`select 1 as one`.then((rows) => rows[0]!.one, () => 0), { timeout: 10_000 }).toBe(1);
		await sql.end({ timeout: 1 });
	});
});
