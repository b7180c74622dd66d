import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { may, type Role } from '../../src/lib/class/permission.ts';
import { needOf, routes } from '../../src/lib/class/route.ts';

interface Found { route: string; methods: Set<string> }

/** Every route on disk, with what it answers: pages GET, form actions POST, server files and hatches what they export. */
function walk(): Map<string, Found> {
	const top = new URL('../../src/routes', import.meta.url).pathname;
	const found = new Map<string, Found>();
	for (const file of readdirSync(top, { recursive: true, encoding: 'utf8' })) {
		const parts = file.split(sep);
		const name = parts.pop()!;
		const route = `/${parts.filter((part) => part !== '').join('/')}`;
		const text = /^(\+(page|server)|hatch\.server)/.test(name) ? readFileSync(join(top, file), 'utf8') : '';
		const methods: string[] = [];
		if (/^\+page\.(svelte|md)$/.test(name) || /^\+page(\.server)?\.ts$/.test(name)) methods.push('GET');
		if (/^\+page\.server\.ts$/.test(name) && /export (const|let) actions\b|export \{[^}]*\bactions\b/.test(text)) methods.push('POST');
		if (name === '+server.ts' || name === 'hatch.server.ts') {
			for (const method of ['GET', 'POST', 'PUT', 'PATCH', 'DELETE', 'HEAD', 'OPTIONS', 'fallback']) {
				if (new RegExp(`export (const|let|(async )?function) ${method}\\b|export \\{[^}]*\\b${method}\\b`).test(text)) methods.push(method);
			}
		}
		if (methods.length === 0) continue;
		const entry = found.get(route) ?? { route, methods: new Set<string>() };
		for (const method of methods) entry.methods.add(method);
		found.set(route, entry);
	}
	return found;
}

const onDisk = walk();

describe('every route is in the table', () => {
	test('nothing on disk is unlisted', () => {
		const unlisted = [...onDisk.values()].flatMap(({ route, methods }) =>
			[...methods].filter((method) => needOf(route, method) === null).map((method) => `${method} ${route}`)
		);
		expect(unlisted).toEqual([]);
	});

	test('only GET and POST are answered, so that the table is the whole truth', () => {
		const odd = [...onDisk.values()].filter(({ methods }) => [...methods].some((method) => method !== 'GET' && method !== 'POST'));
		expect(odd).toEqual([]);
	});

	test('nothing is listed that does not exist', () => {
		const missing = Object.entries(routes).flatMap(([route, needs]) =>
			Object.keys(needs).filter((method) => !onDisk.get(route)?.methods.has(method)).map((method) => `${method} ${route}`)
		);
		expect(missing).toEqual([]);
	});
});

describe('what a route needs', () => {
	const enters = (role: Role, route: string, method: string): boolean => {
		const need = needOf(route, method);
		return need === 'anyone' || (need !== null && may(role, need, need.scope));
	};

	test('an unlisted route and an unlisted method are refused', () => {
		expect(needOf('/classes/[class]/secrets', 'GET')).toBeNull();
		expect(needOf('/toString', 'GET')).toBeNull();
		expect(needOf('toString', 'GET')).toBeNull();
		expect(needOf(null, 'GET')).toBeNull();
		expect(needOf('/lessons', 'POST')).toBeNull();
		expect(needOf('/sign-out', 'GET')).toBeNull();
	});

	test('a method that changes things never passes as a look', () => {
		for (const method of ['PUT', 'PATCH', 'DELETE', 'get', '']) expect(needOf('/classes/[class]/numbers', method)).toBeNull();
	});

	test('everything under /classes is closed to learners and visitors', () => {
		for (const route of Object.keys(routes).filter((route) => route.startsWith('/classes'))) {
			for (const method of ['GET', 'POST']) {
				expect(enters('learner', route, method), `${method} ${route}`).toBe(false);
				expect(enters('visitor', route, method), `${method} ${route}`).toBe(false);
			}
		}
	});

	test('everything under /skirt is closed to teachers and visitors', () => {
		for (const route of Object.keys(routes).filter((route) => route.startsWith('/skirt'))) {
			for (const method of ['GET', 'POST']) {
				expect(enters('teacher', route, method), `${method} ${route}`).toBe(false);
				expect(enters('visitor', route, method), `${method} ${route}`).toBe(false);
			}
		}
	});

	test('a helper sees where everyone is, and opens nobody’s figures', () => {
		expect(enters('helper', '/classes/[class]', 'GET')).toBe(true);
		expect(enters('helper', '/classes/[class]/people', 'GET')).toBe(true);
		for (const route of ['/classes/[class]/numbers', '/classes/[class]/numbers/[member]', '/classes/[class]/paper/[member]/pattern.pdf']) {
			expect(enters('helper', route, 'GET')).toBe(false);
		}
		expect(enters('helper', '/classes/[class]/people', 'POST')).toBe(false);
	});
});
