import { parse } from 'devalue';
import { describe, expect, test } from 'vitest';
import { awayResponse, isAway, isForm, readTyped } from '../../src/lib/server/away.ts';
import { describeError } from '../../src/lib/server/error-line.ts';
import { isFromHere, roleOf } from '../../src/lib/server/request.ts';

const post = (headers: Record<string, string>) => new Request('http://192.0.2.7:3000/join', { method: 'POST', headers });
const here = new URL('http://192.0.2.7:3000/join');

describe('requests from our own pages', () => {
	test.each([
		['a form on localhost or https', { 'sec-fetch-site': 'same-origin', origin: 'http://192.0.2.7:3000' }, true],
		['a form on plain http in a hall, where browsers send no fetch metadata', { origin: 'http://192.0.2.7:3000' }, true],
		['an address typed or a page reloaded', { 'sec-fetch-site': 'none' }, true],
		['another site', { 'sec-fetch-site': 'cross-site', origin: 'https://elsewhere.example' }, false],
		['another site that leaves the metadata out', { origin: 'https://elsewhere.example' }, false],
		['a neighbour under the same name', { 'sec-fetch-site': 'same-site', origin: 'http://other.192.0.2.7:3000' }, false],
		['the same host on another port', { origin: 'http://192.0.2.7:3001' }, false],
		['https for http', { origin: 'https://192.0.2.7:3000' }, false],
		['a sandboxed frame', { origin: 'null' }, false],
		['metadata that contradicts the origin', { 'sec-fetch-site': 'same-origin', origin: 'https://elsewhere.example' }, false],
		['neither header', {}, false]
	])('%s', (_, headers, taken) => {
		expect(isFromHere(post(headers), here)).toBe(taken);
	});

	test('looking is open to every site’s links', () => {
		expect(isFromHere(new Request(here, { headers: { 'sec-fetch-site': 'cross-site' } }), here)).toBe(true);
	});
});

describe('the role in which someone asks', () => {
	const asker = { person: { id: 'p', name: 'Hanne', canTeach: true }, sessionId: 's' };
	const membership = { classId: 'c', lesson: 'l', memberId: 'm', role: 'learner', status: 'admitted', name: 'Hanne' } as const;

	test('in a class it is the membership’s, and outside it what she may be at all', () => {
		expect(roleOf(null, false, null)).toBe('visitor');
		expect(roleOf(asker, false, null)).toBe('teacher');
		expect(roleOf({ ...asker, person: { ...asker.person, canTeach: false } }, false, null)).toBe('learner');
		expect(roleOf(asker, true, null)).toBe('visitor');
		expect(roleOf(asker, true, membership)).toBe('learner');
	});

	test('who waits at the door or has been removed is a visitor', () => {
		for (const status of ['asked', 'removed'] as const) expect(roleOf(asker, true, { ...membership, status })).toBe('visitor');
	});
});

describe('when the database is away', () => {
	test('the driver’s and the server’s ways of saying so are known, and nothing else is taken for it', () => {
		for (const code of ['ECONNREFUSED', 'CONNECTION_CLOSED', '57P01', '57P03', '08006']) expect(isAway(Object.assign(new Error('x'), { code }))).toBe(true);
		for (const problem of [Object.assign(new Error('x'), { code: '23505' }), new Error('x'), null, undefined, 'ECONNREFUSED']) expect(isAway(problem)).toBe(false);
	});

	const html = { accept: 'text/html' };

	test('a page says so and tries again by itself', async () => {
		const got = awayResponse(new Request(here, { headers: html }), here, []);
		expect([got.status, got.headers.get('retry-after'), got.headers.get('cache-control')]).toEqual([503, '5', 'no-store']);
		expect(await got.text()).toContain('http-equiv="refresh"');
	});

	test('a form that was sent is not sent again by itself, and all that was typed but a passphrase is on the page to send', async () => {
		const body = new URLSearchParams([['waist', '72 ½"><script>'], ['second', '74,3'], ['passphrase', 'seven pins in a tin']]);
		const request = new Request(here, { method: 'POST', headers: html, body });
		expect(isForm(request)).toBe(true);
		const typed = (await readTyped(request.clone()))!;
		expect(typed).toEqual([['waist', '72 ½"><script>'], ['second', '74,3']]);
		const page = await awayResponse(request, new URL('http://192.0.2.7:3000/join?/ask&x="y'), typed).text();
		expect(page).not.toContain('http-equiv="refresh"');
		expect(page).toContain('action="/join?/ask&#38;x=%22y"');
		expect(page).toContain('<input type="hidden" name="waist" value="72 ½&#34;&#62;&#60;script&#62;">');
		expect(page).toContain('name="second" value="74,3"');
		expect(page).not.toContain('seven pins');
	});

	test('a form sent by the script stays on its page with what was typed', async () => {
		const answer = awayResponse(new Request(here, { method: 'POST', headers: { accept: 'application/json', 'x-sveltekit-action': 'true' } }), here, []);
		const { type, data } = await answer.json();
		expect([type, parse(data)]).toEqual(['failure', { issues: [{ code: 'database-away', path: '' }] }]);
	});

	test('a program gets JSON', async () => {
		const answer = awayResponse(new Request(here, { method: 'POST', headers: { accept: 'application/json' } }), here, []);
		expect(await answer.json()).toEqual({ issues: [{ code: 'database-away', path: '' }] });
	});
});

describe('what the log keeps of an error', () => {
	test('our own bug’s numbers and place', () => {
		const line = describeError(new Error('placed 3 pieces, expected 5'));
		expect(line.error).toBe('Error: placed 3 pieces, expected 5');
		expect(line.where[0]).toMatch(/^at /);
	});

	test('of the database’s errors the codes and names, never its sentence, which quotes what was sent', () => {
		const problem = Object.assign(new Error('invalid input syntax for type uuid: "Wen 72,5"'), { name: 'PostgresError', code: '22P02', table_name: 'events' });
		const line = describeError(problem);
		expect(line.error).toBe('PostgresError 22P02 events');
		expect(JSON.stringify(line)).not.toContain('Wen');
	});

	test('what isn’t an error is named by its kind alone', () => {
		expect(describeError('Wen 72,5')).toEqual({ error: 'string', where: [] });
	});
});
