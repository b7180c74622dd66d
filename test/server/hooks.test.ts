import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { Sql } from 'postgres';
import { handle, handleError } from '../../src/hooks.server.ts';
import { routes } from '../../src/lib/class/route.ts';
import { makePerson } from '../../src/lib/server/person.ts';
import { beginSession } from '../../src/lib/server/session.ts';
import { remove, setRole } from '../../src/lib/server/member.ts';
import { log } from '../../src/routes/skirt/[class]/log/hatch.server.ts';
import { openPort, type Port } from './hatch-port.ts';
import { makeLearner, makeRoom } from './scene.ts';
import { onEachServer } from './test-database.ts';

// The hook asks for the database; here it gets the test's.
const held = vi.hoisted(() => ({ sql: undefined as unknown }));
vi.mock('../../src/lib/server/database.ts', () => ({ database: () => held.sql }));

type Who = 'visitor' | 'teacher' | 'helper' | 'learner' | 'at the door' | 'removed' | 'teacher elsewhere' | 'learner elsewhere';

// Who enters, route by route and by hand: t the class's teacher, h its helper, l its learners; `teaches` whoever may
// open classes; `signed in` everyone with a session; `anyone`. All others are refused.
const listing = `
GET / anyone
GET /sign-in anyone
POST /sign-in anyone
POST /sign-out anyone
GET /link/[token] anyone
POST /link/[token] anyone
GET /card anyone
POST /card anyone
GET /join anyone
POST /join anyone
GET /join/[code] anyone
POST /join/[code] anyone
GET /lessons anyone
GET /lessons/[slug] anyone
GET /lessons/[slug]/[part] anyone
GET /lessons/[slug]/mend/[stage] anyone
POST /lessons/[slug]/mend/[stage] anyone
GET /account signed in
POST /account signed in
GET /classes teaches
GET /classes/new teaches
POST /classes/new teaches
GET /classes/[class] th
POST /classes/[class] th
GET /classes/[class]/change t
POST /classes/[class]/change t
GET /classes/[class]/numbers t
GET /classes/[class]/numbers/[member] t
POST /classes/[class]/numbers/[member] t
GET /classes/[class]/people th
POST /classes/[class]/people t
GET /classes/[class]/people/poster t
GET /classes/[class]/people/[member]/card t
POST /classes/[class]/people/[member]/card t
GET /classes/[class]/rules t
POST /classes/[class]/rules t
GET /classes/[class]/paper/[member]/handout.pdf t
GET /classes/[class]/paper/[member]/pattern.pdf t
GET /skirt/[class] hl
POST /skirt/[class] hl
GET /skirt/[class]/measure hl
GET /skirt/[class]/measure/[measurement] hl
POST /skirt/[class]/measure/[measurement] hl
GET /skirt/[class]/draft hl
POST /skirt/[class]/draft hl
GET /skirt/[class]/gate hl
POST /skirt/[class]/gate hl
GET /skirt/[class]/make/[part] hl
POST /skirt/[class]/make/[part] hl
GET /skirt/[class]/mend/[stage] hl
POST /skirt/[class]/mend/[stage] hl
GET /skirt/[class]/log hl
POST /skirt/[class]/log hl
GET /skirt/[class]/card hl
POST /skirt/[class]/card hl
GET /skirt/[class]/paper hl
GET /skirt/[class]/paper/handout.pdf hl
GET /skirt/[class]/paper/pattern.pdf hl
GET /skirt/[class]/openings hl
`;
const lines = listing.trim().split('\n').map((line) => {
	const [method, route, ...who] = line.split(' ');
	return { method: method!, route: route!, who: who.join(' ') };
});
const everyone: readonly Who[] = ['visitor', 'teacher', 'helper', 'learner', 'at the door', 'removed', 'teacher elsewhere', 'learner elsewhere'];
const mayEnter = (listed: string, who: Who): boolean => {
	if (listed === 'anyone') return true;
	if (listed === 'signed in') return who !== 'visitor';
	if (listed === 'teaches') return who === 'teacher' || who === 'teacher elsewhere';
	const letter = { teacher: 't', helper: 'h', learner: 'l' }[who as string];
	return letter !== undefined && listed.includes(letter);
};

test('the listing by hand has every route and method of the table, and the table has every one of the listing’s', () => {
	const table = Object.entries(routes).flatMap(([route, needs]) => Object.keys(needs).map((method) => `${method} ${route}`));
	expect(lines.map(({ method, route }) => `${method} ${route}`).sort()).toEqual(table.sort());
});

onEachServer('the hook', (database) => {
	let classId = '';
	let port: Port;
	const cookies = new Map<Who, string>();

	beforeAll(async () => {
		const sql: Sql = database();
		held.sql = sql;
		port = await openPort(log);
		const [room, other] = [await makeRoom(sql), await makeRoom(sql)];
		classId = room.classId;
		const [helper, gone] = [await makeLearner(sql, room, 'Jory'), await makeLearner(sql, room, 'Ines')];
		await setRole(sql, room.teacher, classId, helper.memberId, 'helper');
		await remove(sql, room.teacher, classId, gone.memberId);
		cookies.set('teacher', await beginSession(sql, room.teacher.person));
		cookies.set('helper', helper.sessionId);
		cookies.set('learner', (await makeLearner(sql, room, 'Wen')).sessionId);
		cookies.set('at the door', (await makeLearner(sql, room, 'Pia', false)).sessionId);
		cookies.set('removed', gone.sessionId);
		cookies.set('teacher elsewhere', await beginSession(sql, other.teacher.person));
		cookies.set('learner elsewhere', (await makeLearner(sql, other, 'Noor')).sessionId);
	});

	afterAll(() => port.close());

	interface Answer { entered: boolean; status: number; to?: string; headers?: Headers; body?: string; membership?: unknown }

	/** The one that isn't SvelteKit's, asked over its port. What it is sent is no events: 400 says that it was looked into. */
	async function askHatch(who: Who | string, method: string, headers: Record<string, string> = {}): Promise<Answer> {
		const answer = await port.ask(method, `/skirt/${classId}/log`, { session: cookies.get(who as Who) ?? who, headers });
		return { entered: answer.status === 200 || answer.status === 400, status: answer.status, to: answer.headers.location };
	}

	/** One request through the hook, as SvelteKit would make it. */
	async function ask(who: Who | string, method: string, route: string | null, given: { headers?: Record<string, string>; fail?: unknown; data?: boolean } = {}): Promise<Answer> {
		if (route === '/skirt/[class]/log') return askHatch(who, method, given.headers);
		const url = new URL(`http://192.0.2.7:3000${(route ?? '/nowhere').replace('[class]', classId).replace(/\[\w+\]/g, 'some')}`);
		const headers = new Headers({ accept: 'text/html', ...(method === 'GET' ? {} : { origin: url.origin }), ...given.headers });
		const jar = new Map([['skirtwright', cookies.get(who as Who) ?? who]]);
		const event = {
			request: new Request(url, { method, headers }), url, route: { id: route }, params: route?.includes('[class]') ? { class: classId } : {},
			locals: {} as App.Locals, isDataRequest: given.data ?? false, isSubRequest: false,
			cookies: { get: (name: string) => jar.get(name), set() {}, delete: (name: string) => void jar.delete(name) },
			fetch: async () => new Response('the page that says so', { status: 404 })
		};
		let entered = false;
		const resolve = async () => {
			entered = true;
			if (given.fail) handleError({ error: given.fail, event: event as never, status: 500, message: 'Internal Error' });
			return new Response('<html lang="%lang%">', { headers: { 'content-type': 'text/html' } });
		};
		try {
			const response = await handle({ event: event as never, resolve: resolve as never });
			return { entered, status: response.status, headers: response.headers, body: await response.text(), membership: event.locals.membership };
		} catch (problem) {
			const { status, location } = problem as { status: number; location?: string };
			return { entered, status, to: location };
		}
	}

	test.each(everyone)('a %s enters the routes of the listing and no other', async (who) => {
		for (const { method, route, who: listed } of lines) {
			const { entered, status } = await ask(who, method, route);
			expect(`${who}, ${method} ${route}: ${entered}`).toBe(`${who}, ${method} ${route}: ${mayEnter(listed, who)}`);
			expect(status).toBeLessThan(500);
			if (!entered) expect([303, 401, 404]).toContain(status);
		}
	});

	test('a route that isn’t listed is refused, whoever asks, and a method that isn’t is told so', async () => {
		for (const who of everyone) {
			expect(await ask(who, 'GET', '/classes/[class]/secrets')).toMatchObject({ entered: false, status: 404 });
			expect(await ask(who, 'POST', '/lessons')).toMatchObject({ entered: false, status: 405 });
			for (const method of ['PUT', 'PATCH', 'DELETE']) expect(await ask(who, method, '/classes/[class]/numbers')).toMatchObject({ entered: false, status: 405 });
		}
	});

	test('a visitor is shown the way in, with the way back; what she sends is told to be unsaved', async () => {
		expect(await ask('visitor', 'GET', '/skirt/[class]')).toMatchObject({ status: 303, to: `/sign-in?next=${encodeURIComponent(`/skirt/${classId}`)}` });
		expect(await ask('visitor', 'POST', '/skirt/[class]/log')).toMatchObject({ status: 401 });
	});

	test('who waits at the door is sent to the front page, which says so', async () => {
		expect(await ask('at the door', 'GET', '/skirt/[class]')).toMatchObject({ status: 303, to: '/' });
	});

	test('what isn’t hers looks as if it weren’t there, also when only its data is asked for', async () => {
		expect(await ask('learner', 'GET', '/classes/[class]')).toMatchObject({ entered: false, status: 404, body: 'the page that says so' });
		expect(await ask('learner', 'GET', '/classes/[class]', { data: true })).toMatchObject({ entered: false, status: 404 });
	});

	test('the membership of the class in the address is there for the route', async () => {
		expect((await ask('learner', 'GET', '/skirt/[class]')).membership).toMatchObject({ classId, role: 'learner', status: 'admitted', name: 'Wen' });
		expect((await ask('learner', 'GET', '/account')).membership).toBeNull();
	});

	test('another site’s request changes nothing, whoever’s browser sends it', async () => {
		for (const origin of ['https://elsewhere.example', 'http://192.0.2.7:3001', 'null']) {
			expect(await ask('learner', 'POST', '/skirt/[class]/log', { headers: { origin } })).toMatchObject({ entered: false, status: 403 });
		}
		expect(await ask('learner', 'POST', '/skirt/[class]/log', { headers: { 'sec-fetch-site': 'cross-site' } })).toMatchObject({ status: 403 });
	});

	test('a form that did not arrive whole is told so, before anyone looks into it', async () => {
		for (const type of ['multipart/form-data', 'multipart/form-data; boundary=x', 'text/plain']) {
			expect(await ask('learner', 'POST', '/skirt/[class]/gate', { headers: { 'content-type': type } })).toMatchObject({ entered: false, status: 400 });
		}
		expect(await ask('learner', 'POST', '/skirt/[class]/gate', { headers: { 'content-type': 'application/x-www-form-urlencoded' } })).toMatchObject({ entered: true });
	});

	test('an id that opens nothing is a visitor’s', async () => {
		for (const id of ['', 'x', `t${'a'.repeat(40)}`, '\0']) expect(await ask(id, 'GET', '/account')).toMatchObject({ entered: false, status: 303 });
	});

	test('private pages stay in no cache, every page has its headers, and says its language', async () => {
		const page = await ask('learner', 'GET', '/skirt/[class]');
		expect(page.headers!.get('cache-control')).toBe('private, no-store');
		expect((await ask('visitor', 'GET', '/link/[token]')).headers!.get('cache-control')).toBe('private, no-store');
		expect((await ask('visitor', 'GET', '/lessons')).headers!.get('cache-control')).toBeNull();
		for (const name of ['x-content-type-options', 'referrer-policy', 'cross-origin-opener-policy', 'permissions-policy']) expect(page.headers!.get(name)).toBeTruthy();
	});

	test('when the database goes away before or while a page is made, the answer is 503 and says so', async () => {
		const away = Object.assign(new Error('connect ECONNREFUSED'), { code: 'ECONNREFUSED' });
		const during = await ask('learner', 'GET', '/skirt/[class]', { fail: away });
		expect([during.status, during.body!.includes('can’t reach')]).toEqual([503, true]);
		const sql = held.sql;
		held.sql = Object.assign(() => Promise.reject(away), { begin: () => Promise.reject(away) });
		const before = await ask('learner', 'GET', '/skirt/[class]').finally(() => void (held.sql = sql));
		expect([before.status, before.headers!.get('retry-after')]).toEqual([503, '5']);
		expect((await ask('learner', 'GET', '/skirt/[class]')).status).toBe(200);
	});
});

test('our own bug is logged under an id that the person can quote, without what was typed', () => {
	const lines: string[] = [];
	const write = vi.spyOn(process.stderr, 'write').mockImplementation((line) => lines.push(String(line)) > 0);
	const event = { request: new Request('http://192.0.2.7/skirt/abc?waist=725'), route: { id: '/skirt/[class]' }, locals: {} };
	const shown = handleError({ error: new Error('placed 3 pieces, expected 5'), event: event as never, status: 500, message: 'Internal Error' }) as App.Error;
	const missing = handleError({ error: new Error('Not found'), event: event as never, status: 404, message: 'Not Found' }) as App.Error;
	write.mockRestore();
	expect(shown.id).toMatch(/^[0-9a-z]{8}$/);
	expect(lines).toHaveLength(1);
	expect(JSON.parse(lines[0]!)).toMatchObject({ id: shown.id, method: 'GET', route: '/skirt/[class]', error: 'Error: placed 3 pieces, expected 5' });
	expect(lines[0]).not.toContain('725');
	expect(missing.id).toBeUndefined();
});
