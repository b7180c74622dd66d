// A migrated database of its own for each test file, on each server that the tests run on.
import { randomBytes } from 'node:crypto';
import type { Sql } from 'postgres';
import { afterAll, beforeAll, describe, inject } from 'vitest';
import { openDatabase } from '../../src/lib/server/connection.ts';
import { migrate } from '../../src/lib/server/migration.ts';
import type { Server } from './servers.ts';

export const servers = inject('servers');

export interface FreshDatabase {
	readonly sql: Sql;
	readonly url: string;
	drop(): Promise<void>;
}

/** Makes a database without anything in it. */
export async function emptyDatabase(server: Server): Promise<FreshDatabase> {
	const name = `test_${randomBytes(8).toString('hex')}`;
	const admin = openDatabase(server.url, { max: 1 });
	await admin`create database ${admin(name)} encoding 'UTF8' template template0`;
	const address = new URL(server.url);
	address.pathname = `/${name}`;
	const sql = openDatabase(address.href);
	return {
		sql,
		url: address.href,
		async drop() {
			await sql.end({ timeout: 1 });
			await admin`drop database ${admin(name)} with (force)`;
			await admin.end();
		}
	};
}

/** Makes one with every migration applied. */
export async function freshDatabase(server: Server): Promise<FreshDatabase> {
	const fresh = await emptyDatabase(server);
	await migrate(fresh.sql, 'migrations');
	return fresh;
}

/** Runs the tests on every server, in a database that is made before them and dropped after. */
export function onEachServer(title: string, tests: (database: () => Sql) => void): void {
	describe.each(servers)(`${title}, on $name`, (server) => {
		let fresh: FreshDatabase | undefined;
		beforeAll(async () => {
			fresh = await freshDatabase(server);
		});
		afterAll(() => fresh?.drop());
		tests(() => fresh!.sql);
	});
}
