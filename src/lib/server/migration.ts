// Migrations: numbered SQL files, forward only, never edited once applied. The database keeps a record with checksums.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Sql } from 'postgres';
import type { Query } from './asker.ts';
import { CannotStart } from './cannot-start.ts';
import { explainDatabase } from './database-problem.ts';

export interface Migration {
	readonly number: number;
	/** The file's name: `0001-people.sql`. */
	readonly name: string;
	readonly text: string;
	/** SHA-256 of the text, in hex. */
	readonly checksum: string;
}

/** Any number that nothing else locks. */
const lock = 4_711_150_801;

/** The folder's migrations in order; refused when a number is missing or there twice. */
export function readMigrations(folder: string): readonly Migration[] {
	const names = readdirSync(folder).filter((name) => name.endsWith('.sql')).sort();
	return names.map((name, index) => {
		const number = Number(/^(\d{4})-[a-z0-9-]+\.sql$/.exec(name)?.[1]);
		if (number !== index + 1) {
			throw new CannotStart(`In migrations, ${name} stands where a file with the number ${String(index + 1).padStart(4, '0')} belongs. Each number from 0001 on stands once.`);
		}
		// A checkout with other line ends is the same file.
		const text = readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n');
		return { number, name, text, checksum: createHash('sha256').update(text).digest('hex') };
	});
}

/** Applies what is missing, each file in a transaction of its own, and gives the names. Any number of processes may do this at once. */
export async function migrate(sql: Sql, folder: string): Promise<readonly string[]> {
	const files = readMigrations(folder);
	const applied: string[] = [];
	for (;;) {
		const next = await sql.begin((sql) => applyNext(sql, files)).catch((problem: unknown) => {
			throw explainDatabase(problem);
		});
		if (!next) return applied;
		applied.push(next);
	}
}

async function applyNext(sql: Query, files: readonly Migration[]): Promise<string | null> {
	await sql`select pg_advisory_xact_lock(${lock})`;
	await sql`
		create table if not exists migrations (
			number integer primary key, name text not null, checksum text not null, applied_at timestamptz not null default now()
		)`;
	const record = await sql<Omit<Migration, 'text'>[]>`select number, name, checksum from migrations order by number`;
	compare(record, files);
	const next = files[record.length];
	if (!next) return null;
	await sql.unsafe(next.text).catch((problem: Error) => {
		throw new Error(`migration ${next.name} failed: ${problem.message}`, { cause: problem });
	});
	await sql`insert into migrations (number, name, checksum) values (${next.number}, ${next.name}, ${next.checksum})`;
	return next.name;
}

function compare(record: readonly Omit<Migration, 'text'>[], files: readonly Migration[]): void {
	const last = record.at(-1);
	if (last && last.number > files.length) {
		throw new CannotStart(`This database was last used by a newer Skirtwright: it has had ${last.name}, and this copy ends at ${files.at(-1)?.name ?? 'nothing'}. Start the newer copy.`);
	}
	for (const [index, { number, name, checksum }] of record.entries()) {
		const file = files[index]!;
		if (number !== file.number || name !== file.name) {
			throw new CannotStart(`This database has had ${name}, and it is no longer in migrations (${file.name} stands there). Put the file back.`);
		}
		if (checksum !== file.checksum) {
			throw new CannotStart(`${name} was changed after this database had it. Put it back as it was, and write the change as a new file.`);
		}
	}
}
