// The app's pool. The start command opens it; routes get it from the hook.
import type { Sql } from 'postgres';

// The built app carries its own copy of this module; both find the pool here.
const held = globalThis as { [key: symbol]: Sql | undefined };
const key = Symbol.for('skirtwright.database');

/** Gives the app its pool. Whoever starts the app does this before the first request. */
export function useDatabase(sql: Sql): void {
	held[key] = sql;
}

export const isDatabaseOpen = (): boolean => held[key] !== undefined;

/** The app's pool. */
export function database(): Sql {
	const sql = held[key];
	if (!sql) throw new Error('no database was opened for the app: start it with `npm start` or `npm run dev`');
	return sql;
}
