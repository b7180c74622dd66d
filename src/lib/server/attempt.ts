// How often one account may be tried. Counted per account and device, never per address: a classroom is one address.
import type { Cookies } from '@sveltejs/kit';
import type { Sql } from 'postgres';
import type { Query } from './asker.ts';
import { drawSecret, sha256 } from './digest.ts';

/** All unknown devices together get this many failures at one account (NIST SP 800-63B allows no more than 100 in a row). */
const strangers = 100;
/** A device that has proved itself before has its own hundred, in rows of ten with a rest after each. */
const inARow = 10;
const restMinutes = 5;

export type Turn = 'taken' | 'try-later' | 'tried-too-often';

/**
 * Takes one try at an account *before* the secret is checked, so that many at once can't slip past the count.
 * `account` names the secret that is tried (`person:…`, `card:…`).
 */
export async function takeTurn(sql: Sql, account: string, device: string): Promise<Turn> {
	const me = sha256(device);
	return sql.begin(async (sql) => {
		await sql`select pg_advisory_xact_lock(hashtextextended(${account}, 0))`;
		const [count] = await sql`
			select
				coalesce(sum(failures) filter (where not proved), 0)::int as strangers,
				coalesce(bool_or(proved) filter (where device = ${me}), false) as proved,
				coalesce(max(failures) filter (where device = ${me}), 0) as mine,
				coalesce(max(last_at) filter (where device = ${me}) > now() - make_interval(mins => ${restMinutes}), false) as lately
			from attempts where account = ${account}`;
		const { proved, mine, lately } = count!;
		if ((proved ? mine : count!.strangers) >= strangers) return 'tried-too-often';
		if (mine > 0 && mine % inARow === 0 && lately) return 'try-later';
		await sql`
			insert into attempts (account, device, failures) values (${account}, ${me}, 1)
			on conflict (account, device) do update set failures = attempts.failures + 1, last_at = now()`;
		return 'taken';
	});
}

/** The secret was right: this device's failures are forgotten, and from now on it isn't a stranger here. */
export async function giveTurnBack(sql: Query, account: string, device: string): Promise<void> {
	await sql`
		update attempts set failures = 0, proved = true, last_at = now() where account = ${account} and device = ${sha256(device)}`;
}

/** The secret was changed by its owner: everyone starts again. */
export async function forgetAttempts(sql: Query, account: string): Promise<void> {
	await sql`delete from attempts where account = ${account}`;
}

/** What the device calls itself at sign-in: a random name in a cookie of its own. */
export function deviceOf(cookies: Cookies, url: URL): string {
	const secure = url.protocol === 'https:';
	const name = secure ? '__Host-skirtwright-device' : 'skirtwright-device';
	const device = cookies.get(name);
	if (device && /^[0-9a-z]{26}$/.test(device)) return device;
	const drawn = drawSecret();
	cookies.set(name, drawn, { path: '/', httpOnly: true, sameSite: 'lax', secure, maxAge: 400 * 24 * 3600 });
	return drawn;
}
