// A pool of connections to a database, opened from its URL.
import postgres, { type Options, type Sql } from 'postgres';

/** Opens a pool; nothing is sent before the first query. A socket is named as libpq does it: `postgres:///db?host=/folder`. */
export function openDatabase(url: string, own: Options<Record<never, never>> = {}): Sql {
	const address = new URL(url);
	const folder = address.searchParams.get('host');
	address.searchParams.delete('host');
	const socket = folder?.startsWith('/') ? { path: `${folder}/.s.PGSQL.${address.port || 5432}` } : {};
	if (folder) address.hostname = 'localhost';
	return postgres(address.href, {
		...socket,
		// In seconds. Short, so that a lost database is told at once and found again as soon as it is back.
		connect_timeout: 3,
		backoff: (tries: number) => Math.min(tries, 4) * 0.25,
		// Types of arrays would be asked for on every new connection, in a promise that nobody waits for: a connection lost
		// just then would end the whole app. No statement of ours takes or gives an array; lists go as JSON.
		fetch_types: false,
		connection: { application_name: 'skirtwright' },
		onnotice() {},
		...own
	});
}
