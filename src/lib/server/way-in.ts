// Links for who can't sign in yet: on the first start, and for teachers again on each start until they have a passphrase.
import type { Sql } from 'postgres';
import { firstTeacherLink, seedDemo, type DemoLesson, type DemoLink } from './demo.ts';
import { makeLink } from './link.ts';
import { isAnybodyHere } from './person.ts';

export interface WayIn {
	readonly first: boolean;
	/** Teachers who have no passphrase yet; on the first start the one that is yet to be. */
	readonly teachers: readonly { readonly name: string; readonly token: string }[];
	/** The people of a demo class made just now. */
	readonly demo: readonly DemoLink[];
}

const week = 7 * 24 * 3_600_000;
/** Any number that nothing else locks. */
const lock = 4_711_150_803;

/** Where there is nobody yet, makes the first teacher, and the demo class if one is given; elsewhere renews teachers' links. */
export async function openWayIn(sql: Sql, now: Date, demo: DemoLesson | null): Promise<WayIn> {
	// Held while others do the work, so that of two starts at once one makes the people.
	return sql.begin(async (holder) => {
		await holder`select pg_advisory_xact_lock(${lock})`;
		if (await isAnybodyHere(sql)) return { first: false, teachers: await renewLinks(sql, now), demo: [] };
		const teachers = [{ name: 'Teacher', token: await firstTeacherLink(sql, now) }];
		return { first: true, teachers, demo: demo ? (await seedDemo(sql, now, demo)).links : [] };
	}) as Promise<WayIn>;
}

async function renewLinks(sql: Sql, now: Date): Promise<WayIn['teachers']> {
	const waiting = await sql`select id, name from people where can_teach and passphrase_hash is null order by made_at, id`;
	const until = new Date(now.getTime() + week);
	return Promise.all(waiting.map(async ({ id, name }) => ({ name, token: await makeLink(sql, id, until) })));
}
