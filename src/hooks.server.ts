// Every request passes here: from our own pages? who is asking? may she? Then the route; then the headers.
import { error, redirect, type Handle, type HandleServerError, type RequestEvent } from '@sveltejs/kit';
import { needOf, routes } from '$lib/class/route.ts';
import { awayResponse, isAway, isForm, readTyped, type Typed } from '$lib/server/away.ts';
import { database } from '$lib/server/database.ts';
import { drawLetters } from '$lib/server/digest.ts';
import { describeError } from '$lib/server/error-line.ts';
import { isFromHere, mayEnter, roleOf } from '$lib/server/request.ts';
import { dropSessionCookie, openSession, readSessionCookie, setSessionCookie } from '$lib/server/session.ts';

export const handle: Handle = async ({ event, resolve }) => {
	const { request, url } = event;
	event.locals.asker = null;
	event.locals.membership = null;
	// Asked for only by who needs it: the written lessons open without a database.
	Object.defineProperty(event.locals, 'sql', { get: database });
	// What a form says, in case the database is away and it has to be sent again.
	let typed: Typed = [];
	const away = () => secure(event, awayResponse(request, url, typed));
	try {
		if (!isFromHere(request, url)) error(403, 'This came from another site, so nothing was done.');
		if (isForm(request)) typed = (await readTyped(request.clone())) ?? error(400, 'This did not arrive whole, so nothing was done. Go back and send it again.');
		await findAsker(event);
		const refused = await refuseEntry(event);
		const response = refused ?? (await resolve(event, { transformPageChunk: ({ html }) => html.replace('%lang%', 'en') }));
		return event.locals.away ? away() : secure(event, response);
	} catch (problem) {
		if (isAway(problem)) return away();
		throw problem;
	}
};

/** The class that the address names, if it names one. */
const classIn = (params: Partial<Record<string, string>>): string | null => params.class ?? null;

async function findAsker({ locals, cookies, url, params }: RequestEvent): Promise<void> {
	const id = readSessionCookie(cookies, url);
	if (id === null) return;
	const opened = await openSession(locals.sql, id, classIn(params));
	if (!opened) return dropSessionCookie(cookies, url);
	if (opened.fresh) setSessionCookie(cookies, url, id);
	locals.asker = opened.asker;
	locals.membership = opened.membership;
}

/** The same for what isn't there and what isn't hers. */
const nothingHere = 'There is nothing here that is open to you, so nothing was done.';

/** A response instead of the route's, when the asker may not enter. What isn't hers looks as if it weren't there. */
async function refuseEntry(event: RequestEvent): Promise<Response | null> {
	const { locals, route, request, url, params } = event;
	// An address that leads nowhere shows the page that says so.
	if (route.id === null) return null;
	const need = needOf(route.id, request.method);
	if (!need && Object.hasOwn(routes, route.id)) error(405, 'This address takes nothing of that kind, so nothing was done.');
	if (!need) error(404, nothingHere);
	const inClass = classIn(params) !== null;
	if (mayEnter(need, roleOf(locals.asker, inClass, locals.membership))) return null;

	const looks = request.method === 'GET' || request.method === 'HEAD';
	if (!locals.asker) {
		if (looks) redirect(303, `/sign-in?next=${encodeURIComponent(url.pathname)}`);
		error(401, 'You are signed out, so this was not kept. Sign in on another tab, then send it again.');
	}
	// She has asked to join and waits to be let in: the front page says so.
	if (looks && locals.membership?.status === 'asked') redirect(303, '/');
	if (looks && !event.isDataRequest && !event.isSubRequest) {
		// SvelteKit answers an error thrown here with a bare page; a lesson that doesn't exist gives the full one. (An address
		// of no route would be asked for over the network, and come back with the headers of that.)
		const page = await event.fetch('/lessons/not-here');
		return new Response(page.body, { status: 404, headers: page.headers });
	}
	error(404, nothingHere);
}

function secure({ locals, url, route, request }: RequestEvent, response: Response): Response {
	const headers = response.headers;
	headers.set('x-content-type-options', 'nosniff');
	headers.set('referrer-policy', 'same-origin');
	headers.set('cross-origin-opener-policy', 'same-origin');
	headers.set('cross-origin-resource-policy', 'same-origin');
	headers.set('permissions-policy', 'camera=(), microphone=(), geolocation=(), payment=(), usb=()');
	if (url.protocol === 'https:') headers.set('strict-transport-security', 'max-age=31536000');
	// Pages that know who is asking, and pages behind a secret, stay in no cache.
	if (locals.asker || needOf(route.id, request.method) !== 'anyone' || url.pathname.startsWith('/link/')) {
		headers.set('cache-control', 'private, no-store');
	}
	return response;
}

export const handleError: HandleServerError = ({ error: problem, event, status, message }) => {
	if (isAway(problem)) {
		event.locals.away = true;
		return { message: 'The class’s records can’t be reached for the moment.' };
	}
	// Nothing at that address, or a method it doesn't take: not ours to mend.
	if (status < 500) return { message };
	const id = drawLetters(8);
	process.stderr.write(`${JSON.stringify({ id, at: new Date().toISOString(), method: event.request.method, route: event.route.id, ...describeError(problem) })}\n`);
	return { message: 'Something went wrong here, and it was not your doing.', id };
};
