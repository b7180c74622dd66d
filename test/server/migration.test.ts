import { mkdtempSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Sql } from 'postgres';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openDatabase } from '../../src/lib/server/connection.ts';
import { migrate, readMigrations } from '../../src/lib/server/migration.ts';
import { emptyDatabase, servers, type FreshDatabase } from './test-database.ts';

let folder = '';
const file = (name: string, text: string): void => writeFileSync(join(folder, name), text);

beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'skirtwright-migrations-'));
	file('0001-cloth.sql', 'create table cloth (name text);\ninsert into cloth values (\'linen\');');
	file('0002-width.sql', 'alter table cloth add width integer not null default 140;');
});
afterEach(() => rmSync(folder, { recursive: true }));

test('a number that is missing, twice there or not a number is refused by the file’s name', () => {
	const names = readdirSync(folder);
	file('0004-late.sql', '');
	expect(() => readMigrations(folder)).toThrow(/0004-late\.sql stands where a file with the number 0003 belongs/);
	renameSync(join(folder, '0004-late.sql'), join(folder, '0002-again.sql'));
	expect(() => readMigrations(folder)).toThrow(/0002-width\.sql stands where a file with the number 0003/);
	renameSync(join(folder, '0002-again.sql'), join(folder, 'notes.sql'));
	expect(() => readMigrations(folder)).toThrow(/notes\.sql/);
	renameSync(join(folder, 'notes.sql'), join(folder, 'notes.txt'));
	expect(readMigrations(folder).map(({ name }) => name)).toEqual(names);
});

test('line ends of another system don’t change a checksum', () => {
	const [before] = readMigrations(folder);
	file('0001-cloth.sql', before!.text.replaceAll('\n', '\r\n'));
	expect(readMigrations(folder)[0]!.checksum).toBe(before!.checksum);
});

describe.each(servers)('migrations, on $name', (server) => {
	let fresh: FreshDatabase;
	let sql: Sql;
	beforeEach(async () => {
		fresh = await emptyDatabase(server);
		sql = fresh.sql;
	});
	afterEach(() => fresh.drop());

	test('are applied in order and recorded with their checksums, and a second time there is nothing to do', async () => {
		expect(await migrate(sql, folder)).toEqual(['0001-cloth.sql', '0002-width.sql']);
		expect(await migrate(sql, folder)).toEqual([]);
		expect(await sql`select * from cloth`).toEqual([{ name: 'linen', width: 140 }]);
		const record = await sql`select number, name, checksum from migrations order by number`;
		expect(record).toEqual(readMigrations(folder).map(({ number, name, checksum }) => ({ number, name, checksum })));
	});

	test('of ten processes at once, each is applied once', async () => {
		const pools = Array.from({ length: 10 }, () => openDatabase(fresh.url, { max: 1 }));
		const applied = await Promise.all(pools.map((pool) => migrate(pool, folder)));
		await Promise.all(pools.map((pool) => pool.end()));
		expect(applied.flat().sort()).toEqual(['0001-cloth.sql', '0002-width.sql']);
		expect(await sql`select count(*)::int from cloth`).toEqual([{ count: 1 }]);
	});

	test('a file that fails leaves nothing of itself, and is applied once it is mended', async () => {
		file('0003-wrong.sql', 'create table half (a integer); insert into nowhere values (1);');
		await expect(migrate(sql, folder)).rejects.toThrow(/migration 0003-wrong\.sql failed: relation "nowhere" does not exist/);
		expect(await sql`select to_regclass('half') as half, to_regclass('cloth')::text as cloth`).toEqual([{ half: null, cloth: 'cloth' }]);
		file('0003-wrong.sql', 'create table half (a integer);');
		expect(await migrate(sql, folder)).toEqual(['0003-wrong.sql']);
	});

	test('a file edited after it was applied is refused by name', async () => {
		await migrate(sql, folder);
		file('0001-cloth.sql', 'create table cloth (name text not null);');
		await expect(migrate(sql, folder)).rejects.toThrow(/^0001-cloth\.sql was changed after this database had it/);
	});

	test('a file that is gone or renamed is refused by the name it had', async () => {
		await migrate(sql, folder);
		renameSync(join(folder, '0001-cloth.sql'), join(folder, '0001-fabric.sql'));
		await expect(migrate(sql, folder)).rejects.toThrow(/has had 0001-cloth\.sql, and it is no longer in migrations \(0001-fabric\.sql/);
	});

	test('a database of a newer copy is refused, with nothing done to it', async () => {
		file('0003-colour.sql', 'alter table cloth add colour text;');
		await migrate(sql, folder);
		rmSync(join(folder, '0003-colour.sql'));
		await expect(migrate(sql, folder)).rejects.toThrow(/last used by a newer Skirtwright: it has had 0003-colour\.sql, and this copy ends at 0002-width\.sql/);
		expect(await sql`select colour from cloth`).toHaveLength(1);
	});

	test('the project’s own are applied to an empty database', async () => {
		const names = readdirSync('migrations').filter((name) => name.endsWith('.sql')).sort();
		expect(await migrate(sql, 'migrations')).toEqual(names);
	});
});
