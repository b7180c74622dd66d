// Argon2id with a cap on how many run at once, and which passphrases are taken.
import { hash, verify } from '@node-rs/argon2';
import { ok, refuse, type Result } from '../drafting/result.ts';

// OWASP Password Storage Cheat Sheet: Argon2id, 19 MiB, t=2, p=1. Algorithm 2 is Argon2id.
const cost = { algorithm: 2, memoryCost: 19_456, timeCost: 2, parallelism: 1 };
/** At once: the thread pool has four, and the log's requests need some of the machine too. */
const atOnce = 2;
/** Waiting: beyond this it is kinder to say "busy" than to queue for seconds. 300 learners at once fit. */
const atMostWaiting = 400;

let running = 0;
const waiting: (() => void)[] = [];

async function inTurn<T>(work: () => Promise<T>): Promise<T> {
	if (running >= atOnce) {
		if (waiting.length >= atMostWaiting) throw new Error(`more than ${atMostWaiting} sign-ins are waiting`);
		await new Promise<void>((go) => waiting.push(go));
	} else running++;
	try {
		return await work();
	} finally {
		// The turn is handed on, or given back.
		const next = waiting.shift();
		if (next) next();
		else running--;
	}
}

export const hashSecret = (secret: string): Promise<string> => inTurn(() => hash(secret, cost));

/** With no hash to check against, the same work is done and the answer is no, so that time tells nothing. */
export async function proves(secret: string, hashed: string | null): Promise<boolean> {
	if (hashed === null) return hashSecret(secret).then(() => false);
	return inTurn(() => verify(hashed, secret));
}

// Long enough to pass the length, and among the first things a guesser would try. A short list of our own.
const common = [
	'123456789012345', '1234567890123456', 'abcdefghijklmno', 'abcdefghijklmnop', 'qwertyuiopasdfg', 'qwertyuiopasdfgh',
	'passwordpassword', 'password12345678', 'mypasswordispassword', 'thisismypassword', 'thisisapassword', 'letmeinletmeinletmein',
	'correcthorsebatterystaple', 'iloveyouiloveyou', 'administrator123', 'adminadminadmin', 'welcomewelcome1', 'changemechangeme',
	'skirtwrightskirtwright', 'skirtwrightteacher', 'sewingteacher123', 'thequickbrownfox', 'thequickbrownfoxjumpsoverthelazydog',
	'maytheforcebewithyou', 'onceuponatimethere', 'onetwothreefourfive', 'nevergonnagiveyouup', 'tobeornottobethatisthequestion'
];

/** The same passphrase however it is typed: compatibility forms are made one (RFC 8265 asks for as much). */
export const normalPassphrase = (typed: string): string => typed.normalize('NFKC');

/** 15 to 256 characters, no composition rules; the common ones and one letter over and over are refused. */
export function checkPassphrase(typed: string): Result<string> {
	const passphrase = normalPassphrase(typed);
	const length = [...passphrase].length;
	if (length < 15) return refuse({ code: 'passphrase-short', path: 'passphrase', expected: 15, received: length });
	if (length > 256) return refuse({ code: 'passphrase-long', path: 'passphrase', expected: 256, received: length });
	const bare = passphrase.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
	if (common.includes(bare) || new Set(passphrase).size < 5) return refuse({ code: 'passphrase-common', path: 'passphrase' });
	return ok(passphrase);
}
