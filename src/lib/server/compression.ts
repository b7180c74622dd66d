// Compresses pages and data on their way out. Files of the build are compressed already and pass untouched.
// Secrets and typed text can share a page, but another site can't have one fetched with a person's cookie (SameSite),
// so lengths tell it nothing.
import type { IncomingMessage, ServerResponse } from 'node:http';
import { constants, createGzip, type Gzip } from 'node:zlib';

const isText = (type: unknown): boolean => typeof type === 'string' && /^(text\/(html|plain|sveltekit-data)|application\/json|image\/svg\+xml)\b/.test(type);
const takesGzip = (accepts: unknown): boolean => typeof accepts === 'string' && /\bgzip\b(?!\s*;\s*q=0(\.0*)?\s*(,|$))/i.test(accepts);

/** In bytes. A shorter answer fits one packet as it is, and setting up gzip takes as long as keeping a tick. */
const least = 1000;

/** Makes `response` send its text as gzip, where the asker takes it and it isn't encoded yet. */
export function compressText(request: IncomingMessage, response: ServerResponse): void {
	if (request.method === 'HEAD' || !takesGzip(request.headers['accept-encoding'])) return;
	const send = { head: response.writeHead.bind(response), write: response.write.bind(response), end: response.end.bind(response) };
	let gzip: Gzip | null = null;

	function begin(): Gzip {
		// What has been written so far goes out at once, so that a page that comes in parts still does.
		const stream = createGzip({ level: 5, flush: constants.Z_SYNC_FLUSH });
		stream.on('data', (chunk: Buffer) => {
			if (!send.write(chunk)) stream.pause();
		});
		stream.on('end', () => send.end());
		stream.on('drain', () => response.emit('drain'));
		response.on('drain', () => stream.resume());
		response.on('close', () => stream.destroy());
		return stream;
	}

	response.writeHead = ((status: number, ...rest: never[]) => {
		const bodied = status >= 200 && status !== 204 && status !== 304;
		const short = Number(response.getHeader('content-length') ?? Infinity) < least;
		if (bodied && !short && isText(response.getHeader('content-type')) && !response.hasHeader('content-encoding')) {
			response.setHeader('content-encoding', 'gzip');
			response.appendHeader('vary', 'accept-encoding');
			response.removeHeader('content-length');
			const tag = response.getHeader('etag');
			if (typeof tag === 'string' && !tag.startsWith('W/')) response.setHeader('etag', `W/${tag}`);
			gzip = begin();
		}
		return send.head(status, ...rest);
	}) as typeof response.writeHead;
	response.write = ((...args: Parameters<typeof send.write>) => (gzip ?? { write: send.write }).write(...args)) as typeof response.write;
	response.end = ((...args: Parameters<typeof send.end>) => {
		if (!gzip) return send.end(...args);
		gzip.end(...args);
		return response;
	}) as typeof response.end;
}
