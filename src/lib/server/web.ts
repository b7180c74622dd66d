// The web server round the built app: which names it answers to, how long it waits, how it stops.
import { readFileSync } from 'node:fs';
import { createServer as createHttp, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { createServer as createHttps } from 'node:https';
import { CannotStart } from './cannot-start.ts';
import { compressText } from './compression.ts';
import { hostIn, ownHosts } from './host.ts';
import type { Settings } from './settings.ts';

export type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/** The app reads the protocol from this header (its setting PROTOCOL_HEADER); only we set it. */
export const protocolHeader = 'x-skirtwright-protocol';

/** In bytes; the app's setting BODY_SIZE_LIMIT. */
export const bodyLimit = 65_536;

export interface Web {
	/** Lets requests through to the app; until then they wait. */
	serve(app: Handler): void;
	close(): Promise<void>;
}

/** Takes the port at once, so that a port in use is told before anything is built. */
export async function openWeb(settings: Pick<Settings, 'host' | 'port' | 'tls' | 'allowedHosts'>): Promise<Web> {
	const { host, port, tls, allowedHosts } = settings;
	let serve: (app: Handler) => void = () => {};
	const app = new Promise<Handler>((ready) => (serve = ready));

	const answer: Handler = (request, response) => {
		const name = hostIn(request.headers.host);
		if (name === null || !(allowedHosts.includes(name) || ownHosts().includes(name))) {
			return refuse(response, 421, 'Skirtwright does not answer to this name. Whoever looks after this computer can add it to ALLOWED_HOSTS.');
		}
		if (Number(request.headers['content-length'] ?? 0) > bodyLimit) {
			return refuse(response, 413, `This is more than Skirtwright takes at once: ${bodyLimit} bytes.`);
		}
		request.headers[protocolHeader] = tls ? 'https' : 'http';
		compressText(request, response);
		void app.then((handle) => handle(request, response));
	};

	const server = tls ? createHttps(readTls(tls), answer) : createHttp(answer);
	// In milliseconds. Nobody needs longer for 64 kB, and a slow sender mustn't hold a place.
	server.headersTimeout = 10_000;
	server.requestTimeout = 30_000;
	server.keepAliveTimeout = 10_000;
	await listen(server, host, port);
	return { serve, close: () => close(server) };
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
	response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', connection: 'close' }).end(`${sentence}\n`);
}

function readTls({ cert, key }: NonNullable<Settings['tls']>): { cert: Buffer; key: Buffer } {
	try {
		return { cert: readFileSync(cert), key: readFileSync(key) };
	} catch (problem) {
		throw new CannotStart(`The files for https can’t be read: ${(problem as Error).message}. Look at TLS_CERT and TLS_KEY.`);
	}
}

function listen(server: Server, host: string | undefined, port: number): Promise<void> {
	const sentences: Record<string, string> = {
		EADDRINUSE: `Port ${port} is in use, perhaps by another Skirtwright. Stop that one, or take another port: PORT=${port + 1} npm start`,
		EACCES: `This user may not open port ${port}. Take one above 1023: PORT=3000 npm start`,
		EADDRNOTAVAIL: `This computer doesn’t have the address ${host} that HOST names.`,
		ENOTFOUND: `HOST names ${host}, which has no address.`
	};
	return new Promise((listening, failed) => {
		server.once('error', (problem: NodeJS.ErrnoException) => {
			const sentence = sentences[problem.code ?? ''];
			failed(sentence ? new CannotStart(sentence) : problem);
		});
		server.listen(port, host, () => listening());
	});
}

/** Lets what is under way end, for five seconds. */
function close(server: Server): Promise<void> {
	return new Promise((closed) => {
		server.close(() => closed());
		server.closeIdleConnections();
		setTimeout(() => server.closeAllConnections(), 5000).unref();
	});
}
