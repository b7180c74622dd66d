// Brings the database up to date and stops.
import { readSettings } from '../lib/server/settings.ts';
import { openPlatform, root } from './open.ts';
import { finish } from './outcome.ts';

await finish(migrateOnly());

async function migrateOnly(): Promise<void> {
	const { applied, close } = await openPlatform(readSettings(process.env, root));
	await close();
	process.stdout.write(applied.length > 0 ? `Applied ${applied.join(', ')}.\n` : 'The database is up to date.\n');
}
