// Whether a database may be trusted with a class's records.
import type { Sql } from 'postgres';
import { CannotStart } from './cannot-start.ts';
import { explainDatabase } from './database-problem.ts';

// What has to hold for a commit to outlast a power cut.
const durable: Record<string, (setting: string) => boolean> = {
	fsync: (setting) => setting === 'on',
	full_page_writes: (setting) => setting === 'on',
	synchronous_commit: (setting) => setting !== 'off'
};

/** Refuses a database that can't be reached, is too old, or would lose what was acknowledged. */
export async function checkDatabase(sql: Sql): Promise<void> {
	const names = ['server_version', 'server_version_num', 'server_encoding', ...Object.keys(durable)];
	const rows = await sql`select name, setting from pg_settings where name in ${sql(names)}`.catch((problem: unknown) => {
		throw explainDatabase(problem);
	});
	const settings = new Map(rows.map(({ name, setting }) => [name, setting]));
	if (Number(settings.get('server_version_num')) < 150_000) {
		throw new CannotStart(`The database is PostgreSQL ${settings.get('server_version')}. Skirtwright needs 15 or later.`);
	}
	if (settings.get('server_encoding') !== 'UTF8') {
		throw new CannotStart(`The database keeps its text as ${settings.get('server_encoding')}. Make one with encoding UTF8, so that every name can be written.`);
	}
	const loose = Object.keys(durable).filter((name) => !durable[name]!(settings.get(name)));
	if (loose.length > 0) {
		throw new CannotStart(`The database runs with ${loose.map((name) => `${name} ${settings.get(name)}`).join(', ')}: after a power cut it could lose what a learner was told is kept. Switch ${loose.length > 1 ? 'them' : 'it'} on.`);
	}
}
