// Who is there when the app is first started, and how they sign in.
import type { Sql } from 'postgres';
import { firstTeacherLink, seedDemo, type DemoLesson } from './demo.ts';
import { makeLink } from './link.ts';
import { isAnybodyHere } from './person.ts';

export interface StartLink {
	readonly name: string;
	/** `firstTeacher` sets her own name and passphrase behind the link. */
	readonly role: 'firstTeacher' | 'teacher' | 'learner';
	/** Goes after /link/ in an address; works once, within a week. */
	readonly token: string;
}

/** Any number that nothing else locks. */
const lock = 4_711_150_803;

/**
 * Makes the first teacher, and the demo class if there is a lesson to hold it on, unless somebody is here already.
 * Gives a fresh link for each of them who has no passphrase yet: whoever starts the app shows them to its owner.
 */
export async function linksAtStart(sql: Sql, now: Date, demo: DemoLesson | null): Promise<readonly StartLink[]> {
	// Two processes that start together make one demo class.
	const held = await sql.reserve();
	try {
		await held`select pg_advisory_lock(${lock})`;
		if (!(await isAnybodyHere(sql))) {
			await firstTeacherLink(sql, now);
			if (demo) await seedDemo(sql, now, demo);
		}
	} finally {
		await held`select pg_advisory_unlock(${lock})`;
		held.release();
	}
	const people = await sql`
		select p.id, p.name, p.can_teach, exists(select from members where person_id = p.id) as has_class
		from people p where p.passphrase_hash is null and exists(select from links where person_id = p.id) order by p.made_at, p.id`;
	const links: StartLink[] = [];
	for (const { id, name, can_teach, has_class } of people) {
		const role = !can_teach ? 'learner' : has_class ? 'teacher' : 'firstTeacher';
		links.push({ name, role, token: await makeLink(sql, id, new Date(now.getTime() + 7 * 24 * 3_600_000)) });
	}
	return links;
}
