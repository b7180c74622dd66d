// Compresses pages and data on their way out. Files of the build are compressed already and pass untouched.
// Secrets and typed text can share a page, but another site can't have one fetched with a person's cookie (SameSite),
// so lengths tell it nothing.
import type { IncomingMessage, ServerResponse } from 'node:http';
import { constants, createGzip } from 'node:zlib';

const isText = (type: unknown): boolean => typeof type === 'string' && /^(text\/(html|plain|sveltekit-data)|application\/json|image\/svg\+xml)\b/.test(type);
const takesGzip = (accepts: unknown): boolean => typeof accepts === 'string' && /\bgzip\b(?!\s*;\s*q=0(\.0*)?\s*(,|$))/i.test(accepts);

/** In bytes. A shorter answer fits one packet as it is, and setting up gzip takes as long as keeping a tick. */
const least = 1000;

/** Makes `response` send its text as gzip, where the asker takes it and it isn't encoded yet. */
export function compressText(request: IncomingMessage, response: ServerResponse): void {
	if (request.method === 'HEAD' || !takesGzip(request.headers['accept-encoding'])) return;
	const head = response.writeHead.bind(response);

	response.writeHead = ((status: number, ...rest: never[]) => {
		const bodied = status >= 200 && status !== 204 && status !== 304;
		const short = Number(response.getHeader('content-length') ?? Infinity) < least;
		if (bodied && !short && isText(response.getHeader('content-type')) && !response.hasHeader('content-encoding')) {
			response.setHeader('content-encoding', 'gzip');
			response.appendHeader('vary', 'accept-encoding');
			response.removeHeader('content-length');
			const tag = response.getHeader('etag');
			if (typeof tag === 'string' && !tag.startsWith('W/')) response.setHeader('etag', `W/${tag}`);
			sendThroughGzip(response);
		}
		return head(status, ...rest);
	}) as typeof response.writeHead;
}

function sendThroughGzip(response: ServerResponse): void {
	const send = { write: response.write.bind(response), end: response.end.bind(response) };
	// What has been written so far goes out at once, so that a page that comes in parts still does.
	const gzip = createGzip({ level: 5, flush: constants.Z_SYNC_FLUSH });
	gzip.on('data', (chunk: Buffer) => {
		if (!send.write(chunk)) gzip.pause();
	});
	gzip.on('end', () => send.end());
	gzip.on('drain', () => response.emit('drain'));
	response.on('drain', () => gzip.resume());
	response.on('close', () => gzip.destroy());

	response.write = ((...args: Parameters<typeof gzip.write>) => gzip.write(...args)) as typeof response.write;
	response.end = ((...args: Parameters<typeof gzip.end>) => {
		gzip.end(...args);
		return response;
	}) as typeof response.end;
}
