// A process of its own on an embedded database, for tests that kill it: keeps a word, says so, and stays.
import { openDatabase } from '../../src/lib/server/connection.ts';
import { startEmbedded } from '../../src/lib/server/embedded-postgres.ts';

const [folder = '', word = ''] = process.argv.slice(2);
const embedded = await startEmbedded(folder);
const sql = openDatabase(embedded.url);
await sql`create table if not exists kept (word text primary key)`;
await sql`insert into kept (word) values (${word})`;
process.on('SIGTERM', () => {
	void sql.end().then(embedded.leave).then(() => process.exit(0));
});
process.stdout.write('kept\n');
