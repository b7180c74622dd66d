// What the driver and the server call it → what to do about it.
import { CannotStart } from './cannot-start.ts';

// PostgreSQL, appendix A; and the operating system's own codes.
const sentences: Record<string, string> = {
	ECONNREFUSED: 'No database answers at the address in DATABASE_URL. Is it running, and are host and port right?',
	ENOENT: 'No database answers at the socket in DATABASE_URL. Is it running, and is the folder right?',
	EACCES: 'The database’s socket in DATABASE_URL may not be opened by this user.',
	ENOTFOUND: 'The host in DATABASE_URL has no address. Is its name spelt right?',
	EAI_AGAIN: 'The host in DATABASE_URL can’t be looked up for the moment.',
	CONNECT_TIMEOUT: 'The database in DATABASE_URL didn’t answer within three seconds.',
	'28P01': 'The database refuses the user or the password in DATABASE_URL.',
	'28000': 'The database doesn’t let this user in from here (its pg_hba.conf decides).',
	'3D000': 'The database named in DATABASE_URL doesn’t exist yet. Make it with createdb.',
	'42501': 'The database’s user may not make tables there. Let it own the database, or grant it create on schema public.',
	'53300': 'The database has no connection to spare. Close other programs that use it, or raise max_connections.',
	'57P03': 'The database is starting up or shutting down. Try again in a moment.'
};

/** The sentence for a problem with the database, where there is one; else the problem itself. */
export function explainDatabase(problem: unknown): unknown {
	const code = typeof problem === 'object' && problem !== null && 'code' in problem ? String(problem.code) : '';
	const sentence = sentences[code];
	return sentence ? new CannotStart(sentence, { cause: problem }) : problem;
}
