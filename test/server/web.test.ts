import { request as ask, type IncomingMessage, type OutgoingHttpHeaders } from 'node:http';
import { createServer } from 'node:net';
import { hostname } from 'node:os';
import { text } from 'node:stream/consumers';
import { createGunzip, gunzipSync } from 'node:zlib';
import { buffer } from 'node:stream/consumers';
import { afterEach, expect, test } from 'vitest';
import { hallAddresses, hostIn } from '../../src/lib/server/host.ts';
import { bodyLimit, openWeb, protocolHeader, type Handler, type Web } from '../../src/lib/server/web.ts';

let web: Web | undefined;
let port = 0;
afterEach(() => web?.close());

const freePort = (): Promise<number> => new Promise((done) => {
	const probe = createServer().listen(0, () => {
		const address = probe.address() as { port: number };
		probe.close(() => done(address.port));
	});
});
async function serve(app: Handler, allowedHosts: readonly string[] = []): Promise<void> {
	port = await freePort();
	web = await openWeb({ host: '127.0.0.1', port, tls: null, allowedHosts });
	web.serve(app);
}
function send(headers: OutgoingHttpHeaders, options: { method?: string; body?: string } = {}): Promise<IncomingMessage> {
	return new Promise((answered, failed) => {
		ask({ host: '127.0.0.1', port, path: '/', method: options.method ?? 'GET', headers: { connection: 'close', ...headers } }, answered)
			.on('error', failed).end(options.body);
	});
}

test('a host’s name is read without its port, and nonsense is none', () => {
	expect(['localhost:3000', 'Hall.Example', '[::1]:3000', '192.0.2.7', '[FD00::1]'].map((header) => hostIn(header))).toEqual(['localhost', 'hall.example', '[::1]', '192.0.2.7', '[fd00::1]']);
	expect(['', 'a b', 'user@host', 'host/path', 'host:port', '::1', 'é.example', undefined].map((header) => hostIn(header))).toEqual(Array(8).fill(null));
});

test('it answers to the machine’s own names and the listed ones, and to no other', async () => {
	await serve((_, response) => response.end('in'), ['class.example']);
	for (const host of [`localhost:${port}`, '127.0.0.1', '[::1]:1', hostname(), `${hostname()}.local`, 'CLASS.example', ...hallAddresses()]) {
		expect([host, (await send({ host })).statusCode]).toEqual([host, 200]);
	}
	for (const host of ['elsewhere.example', 'class.example.evil.example', 'localhost.evil.example', 'user@localhost', 'two words']) {
		const answer = await send({ host });
		expect([host, answer.statusCode]).toEqual([host, 421]);
		expect(await text(answer)).toMatch(/ALLOWED_HOSTS/);
	}
});

test('the protocol is what the connection is, whatever the asker says', async () => {
	await serve((request, response) => response.end(String(request.headers[protocolHeader])));
	expect(await text(await send({ host: 'localhost', [protocolHeader]: 'https', 'x-forwarded-proto': 'https' }))).toBe('http');
});

test('a body over the limit is refused with the limit in the sentence', async () => {
	await serve((_, response) => response.end('in'));
	const body = 'a'.repeat(bodyLimit + 1);
	const answer = await send({ host: 'localhost', 'content-length': body.length }, { method: 'POST', body });
	expect([answer.statusCode, await text(answer)]).toEqual([413, `This is more than Skirtwright takes at once: ${bodyLimit} bytes.\n`]);
	expect((await send({ host: 'localhost', 'content-length': bodyLimit }, { method: 'POST', body: body.slice(1) })).statusCode).toBe(200);
});

test('requests wait until the app is there', async () => {
	port = await freePort();
	web = await openWeb({ host: '127.0.0.1', port, tls: null, allowedHosts: [] });
	const early = send({ host: 'localhost' });
	web.serve((_, response) => response.end('ready'));
	expect(await text(await early)).toBe('ready');
});

test('a port in use is told, with a command that takes another', async () => {
	await serve((_, response) => response.end());
	await expect(openWeb({ host: '127.0.0.1', port, tls: null, allowedHosts: [] })).rejects.toThrow(`Port ${port} is in use, perhaps by another Skirtwright. Stop that one, or take another port: PORT=${port + 1} npm start`);
});

test('files for https that can’t be read, and an address that isn’t here, are told', async () => {
	await expect(openWeb({ host: '127.0.0.1', port: await freePort(), tls: { cert: 'no.pem', key: 'no.key' }, allowedHosts: [] })).rejects.toThrow(/files for https can’t be read.*TLS_CERT/s);
	await expect(openWeb({ host: '203.0.113.7', port: await freePort(), tls: null, allowedHosts: [] })).rejects.toThrow(/doesn’t have the address 203\.0\.113\.7/);
});

const page = `<!doctype html>${'<p>Lay the waist on the fold.</p>'.repeat(5000)}`;
const sendPage: Handler = (_, response) => {
	response.setHeader('content-type', 'text/html; charset=utf-8');
	response.setHeader('content-length', Buffer.byteLength(page));
	response.setHeader('etag', '"abc"');
	response.writeHead(200);
	response.end(page);
};

test('a page goes out as gzip to who takes it, and comes out the same', async () => {
	await serve(sendPage);
	const answer = await send({ host: 'localhost', 'accept-encoding': 'br, gzip' });
	expect(answer.headers).toMatchObject({ 'content-encoding': 'gzip', vary: 'accept-encoding', etag: 'W/"abc"' });
	expect(answer.headers['content-length']).toBeUndefined();
	const sent = await buffer(answer);
	expect(sent.length).toBeLessThan(page.length / 20);
	expect(gunzipSync(sent).toString()).toBe(page);
});

test('it goes out as it is to who doesn’t, and when it is asked for the head only', async () => {
	await serve(sendPage);
	for (const accepts of ['', 'br', 'gzip;q=0', 'identity, gzip; q=0.0']) {
		const answer = await send({ host: 'localhost', 'accept-encoding': accepts });
		expect([accepts, answer.headers['content-encoding'], await text(answer)]).toEqual([accepts, undefined, page]);
	}
	expect((await send({ host: 'localhost', 'accept-encoding': 'gzip' }, { method: 'HEAD' })).headers['content-encoding']).toBeUndefined();
});

test('what fits one packet goes out as it is, as the answer to a tick does', async () => {
	for (const [length, encoding] of [[999, undefined], [1000, 'gzip']] as const) {
		await serve((_, response) => {
			response.setHeader('content-type', 'application/json');
			response.setHeader('content-length', length);
			response.writeHead(200);
			response.end('1'.repeat(length));
		});
		expect((await send({ host: 'localhost', 'accept-encoding': 'gzip' })).headers['content-encoding']).toBe(encoding);
		await web?.close();
	}
});

test('what is encoded already, has no body or is no text is left alone', async () => {
	const heads: [number, Record<string, string>][] = [
		[200, { 'content-type': 'text/html', 'content-encoding': 'br' }], [304, { 'content-type': 'text/html' }], [204, { 'content-type': 'text/html' }],
		[200, { 'content-type': 'application/pdf' }], [200, { 'content-type': 'text/event-stream' }]
	];
	let turn = 0;
	await serve((_, response) => {
		const [status, headers] = heads[turn++]!;
		for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
		response.writeHead(status).end(status === 200 ? 'body' : undefined);
	});
	for (const [status, headers] of heads) {
		const answer = await send({ host: 'localhost', 'accept-encoding': 'gzip' });
		expect([status, answer.headers['content-encoding'], await text(answer)]).toEqual([status, headers['content-encoding'], status === 200 ? 'body' : '']);
	}
});

test('a page that comes in parts is sent in parts, and a slow reader holds the writer back', async () => {
	let go: () => void = () => {};
	const later = new Promise<void>((resolve) => (go = resolve));
	const much = Array.from({ length: 200 }, (_, index) => Buffer.from(Array.from({ length: 50_000 }, (_, at) => (index * 7919 + at * 104_729) % 251)).toString('base64'));
	let waited = 0;
	await serve(async (_, response) => {
		response.setHeader('content-type', 'text/html');
		response.writeHead(200);
		response.write('first');
		await later;
		for (const part of much) {
			if (!response.write(part)) {
				waited++;
				await new Promise((drained) => response.once('drain', drained));
			}
		}
		response.end();
	});
	const stream = (await send({ host: 'localhost', 'accept-encoding': 'gzip' })).pipe(createGunzip());
	const first = await new Promise<Buffer>((part) => stream.once('data', part));
	expect(first.toString()).toBe('first');
	go();
	expect(await text(stream)).toBe(much.join(''));
	expect(waited).toBeGreaterThan(0);
});

test('closing lets a request that is under way end', async () => {
	let answer: () => void = () => {};
	let arrived: () => void = () => {};
	const here = new Promise<void>((resolve) => (arrived = resolve));
	await serve((_, response) => {
		answer = () => response.end('done');
		arrived();
	});
	const asked = send({ host: 'localhost' });
	await here;
	const closed = web!.close();
	answer();
	expect(await text(await asked)).toBe('done');
	await closed;
	web = undefined;
	await expect(send({ host: 'localhost' })).rejects.toMatchObject({ code: 'ECONNREFUSED' });
});
