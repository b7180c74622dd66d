// A hatch behind the web server on a port of its own, and requests to it as a browser on that port would send them.
import { request, type IncomingHttpHeaders, type OutgoingHttpHeaders } from 'node:http';
import { createServer, type AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';
import type { Hatch } from '../../src/lib/server/hatch.ts';
import { openWeb } from '../../src/lib/server/web.ts';

export interface Said {
	readonly status: number;
	readonly headers: IncomingHttpHeaders;
	readonly text: string;
}
export interface Sending {
	/** What is in the cookie. */
	readonly session?: string;
	readonly headers?: OutgoingHttpHeaders;
	readonly body?: string | Uint8Array;
	/** Its length isn't told beforehand. */
	readonly chunked?: boolean;
}
export interface Port {
	readonly origin: string;
	readonly port: number;
	ask(method: string, path: string, sending?: Sending): Promise<Said>;
	close(): Promise<void>;
}

/** What no hatch takes is told by 418, the status that nothing of ours uses. */
export async function openPort(hatch: Hatch): Promise<Port> {
	const port = await freePort();
	const web = await openWeb({ host: '127.0.0.1', port, tls: null, allowedHosts: [] });
	web.serve((asked, response) => {
		if (!hatch(asked, response)) response.writeHead(418).end();
	});
	const origin = `http://127.0.0.1:${port}`;
	return {
		origin,
		port,
		close: () => web.close(),
		ask: (method, path, { session, headers, body, chunked } = {}) => new Promise((said, failed) => {
			const sent = request({
				host: '127.0.0.1', port, path, method, agent: false,
				headers: {
					...(session === undefined ? {} : { cookie: `skirtwright=${session}` }),
					...(method === 'GET' || method === 'HEAD' ? {} : { origin, 'content-type': 'application/json' }),
					...(body === undefined || chunked ? {} : { 'content-length': Buffer.byteLength(body) }),
					...headers
				}
			}, (answer) => text(answer).then((text) => said({ status: answer.statusCode!, headers: answer.headers, text }), failed));
			sent.on('error', failed);
			if (body !== undefined) sent.write(body);
			sent.end();
		})
	};
}

const freePort = (): Promise<number> => new Promise((done) => {
	const probe = createServer().listen(0, '127.0.0.1', () => {
		const { port } = probe.address() as AddressInfo;
		probe.close(() => done(port));
	});
});
