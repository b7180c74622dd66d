// What a request is, before any route sees it: from our own pages or not, who asks, whether she may.
import { may, type Role } from '../class/permission.ts';
import { needOf, routes, type RouteNeed } from '../class/route.ts';
import type { Asker, Membership, Query } from './asker.ts';
import { dropSessionCookie, openSession, readSessionCookie, setSessionCookie, type Jar } from './session.ts';

/** As much of a request as is judged here, whether SvelteKit carries it or Node. */
export interface Asked {
	readonly method: string;
	readonly headers: { get(name: string): string | null };
}

/**
 * Whether a request that changes things comes from our own pages. Browsers send `Sec-Fetch-Site` to https and
 * localhost only, so on plain http in a hall `Origin` decides. A request with neither comes from no form of ours.
 */
export function isFromHere(request: Asked, url: URL): boolean {
	if (request.method === 'GET' || request.method === 'HEAD') return true;
	const site = request.headers.get('sec-fetch-site');
	if (site !== null && site !== 'same-origin' && site !== 'none') return false;
	const origin = request.headers.get('origin');
	return origin === null ? site !== null : origin === url.origin;
}

/** The role in which someone asks: in a class, what she is there once admitted; elsewhere, what she may be at all. */
export function roleOf(asker: Asker | null, inClass: boolean, membership: Membership | null): Role {
	if (!asker) return 'visitor';
	if (inClass) return membership?.status === 'admitted' ? membership.role : 'visitor';
	return asker.person.canTeach ? 'teacher' : 'learner';
}

export const mayEnter = (need: RouteNeed, role: Role): boolean => need === 'anyone' || may(role, need, need.scope);

export interface Who {
	readonly asker: Asker | null;
	/** The asker's membership of the class in the address, if it names one. */
	readonly membership: Membership | null;
}

/** The database is asked for only where there is a cookie: the written lessons open without one. */
export async function findWho(database: () => Query, jar: Jar, url: URL, classId: string | null): Promise<Who> {
	const id = readSessionCookie(jar, url);
	if (id === null) return { asker: null, membership: null };
	const opened = await openSession(database(), id, classId);
	if (!opened) {
		dropSessionCookie(jar, url);
		return { asker: null, membership: null };
	}
	if (opened.fresh) setSessionCookie(jar, url, id);
	return { asker: opened.asker, membership: opened.membership };
}

export type Refusal = { readonly status: 303; readonly to: string } | { readonly status: 401 | 403 | 404 | 405; readonly message: string };

export const fromElsewhere: Refusal = { status: 403, message: 'This came from another site, so nothing was done.' };
export const wrongMethod: Refusal = { status: 405, message: 'This address takes nothing of that kind, so nothing was done.' };
/** The same for what isn't there and what isn't hers. */
const nothingHere: Refusal = { status: 404, message: 'There is nothing here that is open to you, so nothing was done.' };

/** Why she may not enter the route; null when she may. `inClass`: whether the address names a class. */
export function refusalOf(route: string, { method }: Asked, { pathname }: URL, inClass: boolean, { asker, membership }: Who): Refusal | null {
	const need = needOf(route, method);
	if (!need) return Object.hasOwn(routes, route) ? wrongMethod : nothingHere;
	if (mayEnter(need, roleOf(asker, inClass, membership))) return null;
	const looks = method === 'GET' || method === 'HEAD';
	if (!asker) {
		if (looks) return { status: 303, to: `/sign-in?next=${encodeURIComponent(pathname)}` };
		return { status: 401, message: 'You are signed out, so this was not kept. Sign in on another tab, then send it again.' };
	}
	// She has asked to join and waits to be let in: the front page says so.
	if (looks && membership?.status === 'asked') return { status: 303, to: '/' };
	return nothingHere;
}

/** What goes with every answer. `isPrivate`: who is asking is known, or the address is a secret, so it stays in no cache. */
export const headersFor = (url: URL, isPrivate: boolean): Readonly<Record<string, string>> => ({
	'x-content-type-options': 'nosniff',
	'referrer-policy': 'same-origin',
	'cross-origin-opener-policy': 'same-origin',
	'cross-origin-resource-policy': 'same-origin',
	'permissions-policy': 'camera=(), microphone=(), geolocation=(), payment=(), usb=()',
	...(url.protocol === 'https:' && { 'strict-transport-security': 'max-age=31536000' }),
	...(isPrivate && { 'cache-control': 'private, no-store' })
});
