// Sessions. The only module that knows lucia. Its adapter keeps the SHA-256 of a session's id, never the id.
import { generateIdFromEntropySize, Lucia, TimeSpan, type Adapter } from 'lucia';
import { isId, type Asker, type Membership, type Query } from './asker.ts';
import { sha256 } from './digest.ts';

/** How long a session lives unused, and at most. A teacher's screen is worth more to a stranger than a learner's. */
const lives = {
	teacher: { idle: new TimeSpan(8, 'h'), atMost: new TimeSpan(7, 'd') },
	learner: { idle: new TimeSpan(30, 'd'), atMost: new TimeSpan(180, 'd') }
} as const;
type Life = keyof typeof lives;

/** The id's first letter tells which life it has, so that one JOIN is enough; the digest covers it. */
const lifeOf = (id: string): Life => (id.startsWith('t') ? 'teacher' : 'learner');

interface PersonColumns {
	name: string;
	canTeach: boolean;
	membership: Membership | null;
}
declare module 'lucia' {
	interface Register {
		Lucia: Lucia<{ cardId: string | null }, PersonColumns>;
		DatabaseSessionAttributes: { cardId: string | null };
		DatabaseUserAttributes: PersonColumns;
		UserId: string;
	}
}

/** `classId` is the class in the address, if any: its membership comes in the same JOIN. */
function adapter(sql: Query, life: Life, classId: string | null): Adapter {
	return {
		async getSessionAndUser(id) {
			const [row] = await sql`
				select s.person_id, s.card_id, s.idle_until, p.name, p.can_teach, m.id as member_id, m.role, m.status, m.name as member_name, c.lesson
				from sessions s
				join people p on p.id = s.person_id
				left join members m on m.person_id = p.id and m.class_id = ${classId}
				left join classes c on c.id = m.class_id
				where s.digest = ${sha256(id)} and s.ends_at > now()`;
			if (!row) return [null, null];
			const membership = row.member_id === null ? null
				: { classId: classId!, lesson: row.lesson, memberId: row.member_id, role: row.role, status: row.status, name: row.member_name };
			return [
				{ id, userId: row.person_id, expiresAt: row.idle_until, attributes: { cardId: row.card_id } },
				{ id: row.person_id, attributes: { name: row.name, canTeach: row.can_teach, membership } }
			];
		},
		async setSession({ id, userId, expiresAt, attributes }) {
			const endsAt = new Date(Date.now() + lives[life].atMost.milliseconds());
			await sql`
				insert into sessions (digest, person_id, card_id, idle_until, ends_at)
				values (${sha256(id)}, ${userId}, ${attributes.cardId}, ${expiresAt}, ${endsAt})`;
		},
		async updateSessionExpiration(id, expiresAt) {
			await sql`update sessions set idle_until = ${expiresAt} where digest = ${sha256(id)}`;
		},
		async deleteSession(id) {
			await sql`delete from sessions where digest = ${sha256(id)}`;
		},
		async deleteUserSessions(personId) {
			await sql`delete from sessions where person_id = ${personId}`;
		},
		async deleteExpiredSessions() {
			await sql`delete from sessions where idle_until <= now() or ends_at <= now()`;
		},
		getUserSessions() {
			// Lists ids, which are not kept.
			throw new Error('the ids of sessions are not kept');
		}
	};
}

const luciaFor = (sql: Query, life: Life, classId: string | null = null) =>
	new Lucia(adapter(sql, life, classId), {
		sessionExpiresIn: lives[life].idle,
		getSessionAttributes: (columns) => columns,
		getUserAttributes: (columns) => columns
	});

export interface Opened {
	readonly asker: Asker;
	readonly membership: Membership | null;
	/** Set when the session was just lengthened and its cookie needs to be too. */
	readonly fresh: boolean;
}

/** The session that an id opens, if it is still alive; with the asker's membership of `classId`. One query. */
export async function openSession(sql: Query, id: string, classId: string | null): Promise<Opened | null> {
	if (!/^[tl][a-z0-9]{40}$/.test(id)) return null;
	const { session, user } = await luciaFor(sql, lifeOf(id), classId !== null && isId(classId) ? classId : null).validateSession(id);
	if (!session) return null;
	return {
		asker: {
			person: { id: user.id, name: user.name, canTeach: user.canTeach },
			sessionId: sha256(id).toString('hex')
		},
		membership: user.membership,
		fresh: session.fresh
	};
}

/** Begins a session, always under a new id. Gives the id for the cookie; it can't be asked for again. */
export async function beginSession(sql: Query, person: { id: string; canTeach: boolean }, cardId: string | null = null): Promise<string> {
	const life: Life = person.canTeach ? 'teacher' : 'learner';
	const id = (life === 'teacher' ? 't' : 'l') + generateIdFromEntropySize(25);
	await sweepSessions(sql);
	await luciaFor(sql, life).createSession(person.id, { cardId }, { sessionId: id });
	return id;
}

export async function endSession(sql: Query, id: string): Promise<void> {
	await luciaFor(sql, lifeOf(id)).invalidateSession(id);
}

/** Signs this person out on every device, this one too. */
export async function endSessionsEverywhere(sql: Query, asker: Asker): Promise<void> {
	await luciaFor(sql, 'learner').invalidateUserSessions(asker.person.id);
}

/** Clears away what has ended; each sign-in does it. */
export async function sweepSessions(sql: Query): Promise<void> {
	await luciaFor(sql, 'learner').deleteExpiredSessions();
}

/** How our cookies are kept. Without `maxAge` a browser forgets it when it closes; 0 takes it away. In seconds. */
export interface CookieLook {
	readonly path: '/';
	readonly httpOnly: true;
	readonly sameSite: 'lax';
	readonly secure: boolean;
	readonly maxAge?: number;
}
/** The cookies of one request and its answer: SvelteKit's, or Node's (cookie.ts). */
export interface Jar {
	get(name: string): string | undefined;
	set(name: string, value: string, look: CookieLook): void;
	delete(name: string, look: CookieLook): void;
}

/** The `__Host-` prefix needs a secure address; on plain http in a hall it would vanish silently. */
const cookieName = (url: URL): string => (url.protocol === 'https:' ? '__Host-skirtwright' : 'skirtwright');

const lookOf = (url: URL): CookieLook => ({ path: '/', httpOnly: true, sameSite: 'lax', secure: url.protocol === 'https:' });

export const readSessionCookie = (jar: Jar, url: URL): string | null => jar.get(cookieName(url)) ?? null;

export function setSessionCookie(jar: Jar, url: URL, id: string): void {
	jar.set(cookieName(url), id, { ...lookOf(url), maxAge: lives[lifeOf(id)].idle.seconds() });
}

export function dropSessionCookie(jar: Jar, url: URL): void {
	jar.delete(cookieName(url), lookOf(url));
}
