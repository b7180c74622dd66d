// What every command that needs the database does first: the embedded one or that of DATABASE_URL, checked and migrated.
import { fileURLToPath } from 'node:url';
import type { Sql } from 'postgres';
import { openDatabase } from '../lib/server/connection.ts';
import { checkDatabase } from '../lib/server/database-check.ts';
import { startEmbedded } from '../lib/server/embedded-postgres.ts';
import { migrate } from '../lib/server/migration.ts';
import type { Settings } from '../lib/server/settings.ts';

/** The checkout. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Opened {
	readonly sql: Sql;
	readonly url: string;
	/** The migrations that were applied just now. */
	readonly applied: readonly string[];
	close(): Promise<void>;
}

export async function openPlatform(settings: Pick<Settings, 'databaseUrl' | 'databaseFolder'>): Promise<Opened> {
	const embedded = settings.databaseUrl === null ? await startEmbedded(settings.databaseFolder) : null;
	const url = settings.databaseUrl ?? embedded!.url;
	const sql = openDatabase(url);
	const close = async (): Promise<void> => {
		await sql.end({ timeout: 5 });
		await embedded?.leave();
	};
	try {
		await checkDatabase(sql);
		return { sql, url, applied: await migrate(sql, `${root}migrations`), close };
	} catch (problem) {
		await close();
		throw problem;
	}
}
