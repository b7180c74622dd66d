// Every request passes here: from our own pages? who is asking? may she? Then the route; then the headers. Only a hatch's
// (server/hatch.ts) doesn't, and goes through the same functions.
import { error, redirect, type Handle, type HandleServerError, type RequestEvent, type ServerInit } from '@sveltejs/kit';
import { needOf } from '$lib/class/route.ts';
import { awayResponse, isAway, isForm, readTyped, type Typed } from '$lib/server/away.ts';
import { database } from '$lib/server/database.ts';
import { logProblem } from '$lib/server/error-line.ts';
import { useHatch } from '$lib/server/hatch.ts';
import { findWho, fromElsewhere, headersFor, isFromHere, refusalOf, type Refusal } from '$lib/server/request.ts';
import { log } from './routes/skirt/[class]/log/hatch.server.ts';

export const init: ServerInit = () => useHatch(log);

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
		if (!isFromHere(request, url)) refuse(fromElsewhere);
		if (isForm(request)) typed = (await readTyped(request.clone())) ?? error(400, 'This did not arrive whole, so nothing was done. Go back and send it again.');
		Object.assign(event.locals, await findWho(database, event.cookies, url, classIn(event)));
		const refused = await refuseEntry(event);
		const response = refused ?? (await resolve(event, { transformPageChunk: ({ html }) => html.replace('%lang%', 'en') }));
		return event.locals.away ? away() : secure(event, response);
	} catch (problem) {
		if (isAway(problem)) return away();
		throw problem;
	}
};

/** The class that the address names, if it names one. */
const classIn = ({ params }: { params: Partial<Record<string, string>> }): string | null => params.class ?? null;

function refuse(refusal: Refusal): never {
	if (refusal.status === 303) redirect(303, refusal.to);
	error(refusal.status, refusal.message);
}

/** A response instead of the route's, when the asker may not enter. What isn't hers looks as if it weren't there. */
async function refuseEntry(event: RequestEvent): Promise<Response | null> {
	const { locals, route, request, url } = event;
	// An address that leads nowhere shows the page that says so.
	if (route.id === null) return null;
	const refusal = refusalOf(route.id, request, url, classIn(event) !== null, locals);
	if (!refusal) return null;
	const looks = request.method === 'GET' || request.method === 'HEAD';
	if (refusal.status !== 404 || !looks || event.isDataRequest || event.isSubRequest) refuse(refusal);
	// SvelteKit answers an error thrown here with a bare page; a lesson that doesn't exist gives the full one. (An address
	// of no route would be asked for over the network, and come back with the headers of that.)
	const page = await event.fetch('/lessons/not-here');
	return new Response(page.body, { status: 404, headers: page.headers });
}

function secure({ locals, url, route, request }: RequestEvent, response: Response): Response {
	// Pages that know who is asking, and pages behind a secret, stay in no cache.
	const isPrivate = locals.asker !== null || needOf(route.id, request.method) !== 'anyone' || url.pathname.startsWith('/link/');
	for (const [name, value] of Object.entries(headersFor(url, isPrivate))) response.headers.set(name, value);
	return response;
}

export const handleError: HandleServerError = ({ error: problem, event, status, message }) => {
	if (isAway(problem)) {
		event.locals.away = true;
		return { message: 'The class’s records can’t be reached for the moment.' };
	}
	// Nothing at that address, or a method it doesn't take: not ours to mend.
	if (status < 500) return { message };
	return logProblem(problem, event.request.method, event.route.id);
};
