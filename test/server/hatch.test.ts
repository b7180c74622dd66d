// The log's hatch over a real port: every refusal that hooks.server.ts gives, and bodies that mean harm.
import { connect } from 'node:net';
import type { Sql } from 'postgres';
import { afterAll, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { defaultGate } from '../../src/lib/class/gate.ts';
import { useDatabase } from '../../src/lib/server/database.ts';
import { readEvents } from '../../src/lib/server/log.ts';
import { openedHatch, openHatch, type Answer } from '../../src/lib/server/hatch.ts';
import { bodyLimit } from '../../src/lib/server/web.ts';
import { log } from '../../src/routes/skirt/[class]/log/hatch.server.ts';
import { openPort, type Port, type Said, type Sending } from './hatch-port.ts';
import { event, makeLearner, makeRoom, tick, type Learner, type Room } from './scene.ts';
import { onEachServer } from './test-database.ts';

const codesIn = ({ text }: Said): readonly string[] => (JSON.parse(text) as { issues: readonly { code: string }[] }).issues.map(({ code }) => code);
const messageIn = ({ text }: Said): string => (JSON.parse(text) as { message: string }).message;
const isAway = Object.assign(new Error('connect ECONNREFUSED'), { code: 'ECONNREFUSED' });
/** A pool whose every query ends so. */
const brokenBy = (problem: Error): Sql => Object.assign(() => Promise.reject(problem), { json: () => null }) as never;

onEachServer('the log’s hatch', (database) => {
	let port: Port;
	let room: Room;
	let wen: Learner;
	let path = '';

	beforeAll(async () => {
		port = await openPort(log);
	});
	afterAll(() => port.close());
	beforeEach(async () => {
		useDatabase(database());
		room = await makeRoom(database());
		wen = await makeLearner(database(), room, 'Wen');
		path = `/skirt/${room.classId}/log`;
	});

	const send = (events: unknown, sending: Sending = {}, to = path): Promise<Said> =>
		port.ask('POST', to, { session: wen.sessionId, body: JSON.stringify({ events }), ...sending });
	/** The head of a request that keeps something, for what no client of Node's sends. */
	const head = (length: string): string =>
		`POST ${path} HTTP/1.1\r\nhost: 127.0.0.1:${port.port}\r\norigin: ${port.origin}\r\nconnection: close\r\ncookie: skirtwright=${wen.sessionId}\r\ncontent-type: application/json\r\n${length}\r\n\r\n`;
	const kept = async (): Promise<readonly string[]> => (await readEvents(database(), wen.asker, wen.memberId)).map(({ id }) => id);

	test('what is sent is kept, said to be, and read again; sent twice it is kept once', async () => {
		const events = [tick(1), tick(2, 'press-cloth')];
		for (const _ of [1, 2]) {
			const said = await send(events);
			expect([said.status, said.headers['content-type']]).toEqual([200, 'application/json']);
			expect((JSON.parse(said.text) as { kept: string[] }).kept.toSorted()).toEqual(events.map(({ id }) => id).toSorted());
		}
		// At one moment too, as two tabs do.
		const more = [tick(3)];
		expect((await Promise.all([send(more), send(more), send(more)])).map(({ status }) => status)).toEqual([200, 200, 200]);
		expect(await kept()).toEqual([...events, ...more].map(({ id }) => id));
		const read = await port.ask('GET', path, { session: wen.sessionId });
		expect([read.status, Object.keys(JSON.parse(read.text) as object)]).toEqual([200, ['events', 'review', 'drafted', 'rules']]);
		const head = await port.ask('HEAD', path, { session: wen.sessionId });
		expect([head.status, head.headers['content-length'], head.text]).toEqual([200, String(Buffer.byteLength(read.text)), '']);
	});

	test('only its own address is its own; a question mark after it changes nothing', async () => {
		for (const other of [`${path}/`, `${path}/more`, `/skirt/${room.classId}`, `/skirt/a/b/log`, '/skirt//log', `/skirt/${room.classId}/logs`, `//x${path}`]) {
			expect([other, (await send([tick(1)], {}, other)).status]).toEqual([other, 418]);
		}
		expect((await send([tick(1)], {}, `${path}?from=phone`)).status).toBe(200);
	});

	test('another site’s request keeps nothing', async () => {
		const wrong = [
			{ origin: 'https://elsewhere.example' }, { origin: 'null' }, { origin: port.origin.replace('http:', 'https:') },
			{ origin: 'http://127.0.0.1:1' }, { 'sec-fetch-site': 'cross-site' }, { 'sec-fetch-site': 'same-site' }
		];
		for (const headers of wrong) {
			const said = await send([tick(1)], { headers });
			expect([headers, said.status, messageIn(said)]).toEqual([headers, 403, 'This came from another site, so nothing was done.']);
		}
		expect((await send([tick(1)], { headers: { origin: port.origin, 'sec-fetch-site': 'same-origin' } })).status).toBe(200);
		expect(await kept()).toHaveLength(1);
	});

	test('another learner’s class, one that isn’t, and one she waits for or was removed from look the same', async () => {
		const theirs = await makeRoom(database());
		const pia = await makeLearner(database(), room, 'Pia', false);
		const answers = [
			await send([tick(1)], {}, `/skirt/${theirs.classId}/log`), await send([tick(1)], {}, '/skirt/nowhere/log'),
			await send([tick(1)], {}, '/skirt/%00/log'), await send([tick(1)], {}, `/skirt/${'a'.repeat(5000)}/log`), await send([tick(1)], { session: pia.sessionId }),
			await port.ask('GET', `/skirt/${theirs.classId}/log`, { session: wen.sessionId })
		];
		expect(answers.map(({ status, text }) => `${status} ${text}`)).toEqual(Array(6).fill('404 {"message":"There is nothing here that is open to you, so nothing was done."}'));
		expect(await port.ask('GET', path, { session: pia.sessionId })).toMatchObject({ status: 303, headers: { location: '/' } });
	});

	test('who is signed out is told that it was not kept, and a look is led to the way in', async () => {
		for (const session of [undefined, '', 'x', `l${'a'.repeat(40)}`, '%00', '"; drop']) {
			const said = await send([tick(1)], { session });
			expect([session, said.status, messageIn(said)]).toEqual([session, 401, 'You are signed out, so this was not kept. Sign in on another tab, then send it again.']);
		}
		expect(await port.ask('GET', path)).toMatchObject({ status: 303, headers: { location: `/sign-in?next=${encodeURIComponent(path)}` } });
	});

	test('a session that opens nothing any more loses its cookie, one that is lengthened has it set again', async () => {
		const dead = await send([tick(1)], { session: `l${'a'.repeat(40)}` });
		expect(dead.headers['set-cookie']).toEqual(['skirtwright=; Max-Age=0; Path=/; HttpOnly; SameSite=Lax']);
		expect((await send([tick(1)])).headers['set-cookie']).toBeUndefined();
		await database()`update sessions set idle_until = now() + interval '1 day' where person_id = ${wen.person.id}`;
		expect((await send([tick(1)])).headers['set-cookie']).toEqual([`skirtwright=${wen.sessionId}; Max-Age=2592000; Path=/; HttpOnly; SameSite=Lax`]);
		const secure = await send([tick(1)], { headers: { cookie: `other=1; skirtwright=${wen.sessionId}; skirtwright=x` } });
		expect(secure.status).toBe(200);
	});

	test('it takes GET and POST and nothing else', async () => {
		for (const method of ['PUT', 'PATCH', 'DELETE', 'OPTIONS', 'TRACE', 'PROPFIND']) {
			const said = await port.ask(method, path, { session: wen.sessionId });
			expect([method, said.status, said.headers.allow]).toEqual([method, 405, 'GET, HEAD, POST']);
		}
	});

	test.each<[string, Sending, number, readonly string[]]>([
		['that isn’t JSON', { body: 'events=1' }, 400, ['not-json']],
		['cut short', { body: '{"events":[' }, 400, ['not-json']],
		['that is missing', {}, 400, ['not-json']],
		['that says it is a form', { body: '{"events":[]}', headers: { 'content-type': 'application/x-www-form-urlencoded' } }, 400, ['not-json']],
		['that says nothing of its kind', { body: '{"events":[]}', headers: { 'content-type': '' } }, 400, ['not-json']],
		['in UTF-16', { body: Buffer.from('{"events":[]}', 'utf16le'), headers: { 'content-type': 'application/json; charset=utf-16' } }, 400, ['not-json']],
		['in Latin-1', { body: Buffer.from('{"events":"½"}', 'latin1') }, 400, ['not-json']],
		['packed', { body: Buffer.from('1f8b08', 'hex'), headers: { 'content-encoding': 'gzip' } }, 400, ['not-json']],
		['nested 30,000 deep', { body: `{"events":${'['.repeat(30_000)}${']'.repeat(30_000)}}` }, 400, Array(5).fill('event-strict-object')],
		['that is null', { body: 'null' }, 400, ['event-array']],
		['without events', { body: '{}' }, 400, ['event-array']],
		['with none', { body: '{"events":[]}' }, 400, ['event-min-length']],
		['with a field of the language’s own', { body: '{"__proto__":{"events":[]},"constructor":1}' }, 400, ['event-array']],
		['with 201 events', { body: JSON.stringify({ events: Array.from({ length: 201 }, (_, index) => tick(index)) }) }, 400, ['event-max-length']],
		['of 70 kB sent in parts', { body: ' '.repeat(70_000), chunked: true }, 413, ['body-large']],
		['of 2 MB sent in parts', { body: ' '.repeat(2_000_000), chunked: true }, 413, ['body-large']]
	])('a body %s is refused in a sentence and keeps nothing', async (_, sending, status, codes) => {
		const said = await port.ask('POST', path, { session: wen.sessionId, ...sending });
		expect([said.status, codesIn(said)]).toEqual([status, codes]);
		expect(said.text).toMatch(/"says":"[A-Z][^"]+/);
		expect(await kept()).toEqual([]);
	});

	test('one that says it is 70 kB is refused before anything is read, and 64 kB is taken', async () => {
		expect(await send([], { body: ' '.repeat(70_000) })).toMatchObject({ status: 413, text: `This is more than Skirtwright takes at once: ${bodyLimit} bytes.\n` });
		const body = JSON.stringify({ events: [tick(1)] });
		for (const chunked of [false, true]) expect((await send([], { body: body.padEnd(bodyLimit), chunked })).status).toBe(200);
	});

	test('a letter that falls between two parts is read whole', async () => {
		const bytes = Buffer.from(JSON.stringify({ events: [event(1, { kind: 'ask', gate: defaultGate.map(({ id }) => id), second: 'Zoë' })] }));
		const middle = bytes.indexOf('ë') + 1;
		const answer = await new Promise<string>((done) => {
			let got = '';
			const socket = connect(port.port, '127.0.0.1');
			socket.on('data', (part) => (got += String(part))).on('close', () => done(got));
			socket.write(head('transfer-encoding: chunked'));
			for (const part of [bytes.subarray(0, middle), bytes.subarray(middle)]) socket.write(Buffer.concat([Buffer.from(`${part.length.toString(16)}\r\n`), part, Buffer.from('\r\n')]));
			socket.write('0\r\n\r\n');
		});
		expect(answer).toContain('200 OK');
		expect((await readEvents(database(), wen.asker, wen.memberId))[0]!.body).toMatchObject({ second: 'Zoë' });
	});

	test('who goes away in the middle of sending is nobody’s trouble', async () => {
		const lines: string[] = [];
		const write = vi.spyOn(process.stderr, 'write').mockImplementation((line) => lines.push(String(line)) > 0);
		await new Promise<void>((gone) => {
			const socket = connect(port.port, '127.0.0.1');
			socket.on('close', () => gone());
			socket.write(`${head('content-length: 500')}{"events":[`, () => {
				setTimeout(() => socket.destroy(), 100);
			});
		});
		expect((await send([tick(1)])).status).toBe(200);
		write.mockRestore();
		expect(lines).toEqual([]);
	});

	test('every answer has its headers and stays in no cache', async () => {
		const answers = [await send([tick(1)]), await send([]), await send([], { session: 'x' }), await send([], { headers: { origin: 'null' } }), await port.ask('PUT', path), await port.ask('GET', path)];
		for (const { headers } of answers) {
			expect(headers).toMatchObject({
				'x-content-type-options': 'nosniff', 'referrer-policy': 'same-origin', 'cross-origin-opener-policy': 'same-origin',
				'cross-origin-resource-policy': 'same-origin', 'cache-control': 'private, no-store'
			});
			expect(headers['permissions-policy']).toContain('camera=()');
		}
	});

	test('while the database is away the answer is 503 with when to come back; afterwards the same is kept', async () => {
		const events = [tick(1)];
		useDatabase(brokenBy(isAway));
		const said = await send(events);
		expect([said.status, said.headers['retry-after'], codesIn(said)]).toEqual([503, '5', ['database-away']]);
		expect((await port.ask('GET', path, { session: wen.sessionId, headers: { accept: 'text/html' } })).text).toContain('We can’t reach the class’s records');
		useDatabase(database());
		expect((await send(events)).status).toBe(200);
	});

	test('what is under way ends when the server closes', async () => {
		let answer: () => void = () => {};
		let arrive: () => void = () => {};
		const arrived = new Promise<void>((here) => (arrive = here));
		const slow = (): Promise<Answer> => new Promise((done) => {
			answer = () => done({ status: 200, json: 'done' });
			arrive();
		});
		const own = await openPort(openHatch('/skirt/[class]/log', { GET: slow, POST: slow }));
		const asked = own.ask('GET', path, { session: wen.sessionId });
		await arrived;
		const closed = own.close();
		answer();
		expect((await asked).text).toBe('"done"');
		await closed;
	});

	test('our own bug is told by an id, and the log has its place under that id, without what was sent', async () => {
		const lines: string[] = [];
		const write = vi.spyOn(process.stderr, 'write').mockImplementation((line) => lines.push(String(line)) > 0);
		useDatabase(brokenBy(new Error('kept 3 events, expected 5')));
		const said = await send([tick(1, 'wash-cloth')]);
		write.mockRestore();
		const { message, id } = JSON.parse(said.text) as { message: string; id: string };
		expect([said.status, message]).toEqual([500, 'Something went wrong here, and it was not your doing.']);
		expect(said.text).not.toMatch(/ at |expected 5/);
		expect(lines).toHaveLength(1);
		expect(JSON.parse(lines[0]!)).toMatchObject({ id, method: 'POST', route: '/skirt/[class]/log', error: 'Error: kept 3 events, expected 5' });
		expect(lines[0]).not.toContain('wash-cloth');
	});
});

test('a hatch looked for before the app has opened one is our own mistake, and says so', () => {
	expect(openedHatch).toThrow(/opened no hatch/);
});
