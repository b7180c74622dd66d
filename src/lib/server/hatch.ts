// A hatch: an address that is answered over Node's own request and response, with everything that hooks.server.ts does for
// the others. For what a whole class asks for all the time: making SvelteKit's request and answer costs more than a tick.
import type { IncomingMessage, ServerResponse } from 'node:http';
import { isHttpError } from '@sveltejs/kit';
import { awayResponse, isAway } from './away.ts';
import { cookiesOf } from './cookie.ts';
import { database } from './database.ts';
import { logProblem } from './error-line.ts';
import { findWho, fromElsewhere, headersFor, isFromHere, refusalOf, wrongMethod, type Asked, type Refusal, type Who } from './request.ts';
import { protocolHeader } from './web.ts';

/** Answers the request, or gives false and leaves it alone. */
export type Hatch = (request: IncomingMessage, response: ServerResponse) => boolean;

export interface Answer {
	readonly status: number;
	readonly json: unknown;
	/** The rest of what is sent isn't waited for. */
	readonly hangUp?: true;
}
/** Reached only by who may. */
export type Answering = (who: Who & { readonly sql: ReturnType<typeof database> }, classId: string, request: IncomingMessage) => Promise<Answer>;

/** `route` is one of class/route.ts, with one `[class]`. What it needs stands there; GET and POST are all it takes. */
export function openHatch(route: string, answers: { readonly GET: Answering; readonly POST: Answering }): Hatch {
	const address = new RegExp(`^${route.replace('[class]', '([^/?#]+)')}(?:\\?|$)`);

	async function answer(request: IncomingMessage, response: ServerResponse, classId: string): Promise<void> {
		const { method = '', headers } = request;
		const asked: Asked = { method, headers: { get: (name) => headers[name]?.toString() ?? null } };
		const url = urlOf(request);
		if (!url) return send(response, { status: 400, json: { message: 'This address could not be read, so nothing was done.' } });
		for (const [name, value] of Object.entries(headersFor(url, true))) response.setHeader(name, value);
		try {
			if (!isFromHere(asked, url)) return refuse(response, fromElsewhere);
			if (method !== 'GET' && method !== 'HEAD' && method !== 'POST') return refuse(response, wrongMethod);
			const who = await findWho(database, cookiesOf(request, response), url, classId);
			const refusal = refusalOf(route, asked, url, true, who);
			if (refusal) return refuse(response, refusal);
			send(response, await answers[method === 'POST' ? 'POST' : 'GET']({ ...who, sql: database() }, classId, request));
		} catch (problem) {
			// She went away in the middle: there is nobody to tell.
			if (request.destroyed && !request.complete) return void response.destroy();
			if (isAway(problem)) return sendAway(response, awayResponse(asked, url, []));
			if (isHttpError(problem)) return send(response, { status: problem.status, json: problem.body });
			send(response, { status: 500, json: logProblem(problem, method, route) });
		}
	}

	return (request, response) => {
		const [, classId] = address.exec(request.url ?? '') ?? [];
		if (classId !== undefined) void answer(request, response, classId);
		return classId !== undefined;
	};
}

/** As SvelteKit has it: the protocol from the header that only we set, the host as the browser names it. */
function urlOf({ headers, url }: IncomingMessage): URL | null {
	const protocol = headers[protocolHeader] === 'https' ? 'https' : 'http';
	const address = `${protocol}://${headers.host}${url}`;
	return URL.canParse(address) ? new URL(address) : null;
}

function send(response: ServerResponse, { status, json, hangUp }: Answer): void {
	const text = JSON.stringify(json);
	response.setHeader('content-type', 'application/json');
	response.setHeader('content-length', Buffer.byteLength(text));
	if (hangUp) response.setHeader('connection', 'close');
	response.writeHead(status).end(text);
}

function refuse(response: ServerResponse, refusal: Refusal): void {
	if (refusal.status === 405) response.setHeader('allow', 'GET, HEAD, POST');
	if (refusal.status !== 303) return send(response, { status: refusal.status, json: { message: refusal.message } });
	response.setHeader('location', refusal.to);
	response.writeHead(303).end();
}

async function sendAway(response: ServerResponse, page: Response): Promise<void> {
	for (const [name, value] of page.headers) response.setHeader(name, value);
	response.writeHead(page.status).end(await page.text());
}

// The built app carries its own copy of this module; both find the hatch here.
const held = globalThis as { [key: symbol]: Hatch | undefined };
const key = Symbol.for('skirtwright.hatch');

/** The app's hatch, for whoever serves the app to ask first. */
export function useHatch(hatch: Hatch): void {
	held[key] = hatch;
}
export function openedHatch(): Hatch {
	const hatch = held[key];
	if (!hatch) throw new Error('the app opened no hatch: hooks.server.ts does so when it starts');
	return hatch;
}
