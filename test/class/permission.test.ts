import { describe, expect, test } from 'vitest';
import { actions, may, type Need, type Role, type Scope } from '../../src/lib/class/permission.ts';

// Written out by hand from what the class needs, not from the table: one line per thing that is allowed, as
// `role resource action: scopes`. Everything that is not here has to be refused.
const listing = `
teacher lesson read: own class other
teacher account read: own
teacher account change: own
teacher class open: own
teacher class read: own class
teacher class join: own class other
teacher class change: class
teacher rules read: class
teacher rules change: class
teacher code read: class
teacher code change: class
teacher people read: class
teacher people admit: class
teacher people change: class
teacher people remove: class
teacher card print: class
teacher figures read: class
teacher progress read: class
teacher help answer: class
teacher clearance decide: class
teacher openings read: class
helper lesson read: own class other
helper account read: own
helper account change: own
helper class read: own class
helper class join: own class other
helper people read: class
helper card print: own
helper figures read: own
helper figures write: own
helper progress read: own class
helper progress write: own
helper help answer: own class
helper clearance ask: own
helper openings read: own
learner lesson read: own class other
learner account read: own
learner account change: own
learner class read: own
learner class join: own class other
learner card print: own
learner figures read: own
learner figures write: own
learner progress read: own
learner progress write: own
learner help answer: own
learner clearance ask: own
learner openings read: own
visitor lesson read: own class other
visitor class join: own class other
`;
const allowed = new Set(
	listing.trim().split('\n').flatMap((line) => {
		const [what, scopes] = line.split(': ');
		return scopes!.split(' ').map((scope) => `${what} ${scope}`);
	})
);

const roles: Role[] = ['teacher', 'helper', 'learner', 'visitor'];
const scopes: Scope[] = ['own', 'class', 'other'];
const needs = Object.entries(actions).flatMap(([resource, can]) => can.map((action) => ({ resource, action }) as Need));

describe('who may do what', () => {
	test.each(roles)('a %s may do what the listing says and nothing else', (role) => {
		for (const need of needs) {
			for (const scope of scopes) {
				const what = `${role} ${need.resource} ${need.action} ${scope}`;
				expect(`${what}: ${may(role, need, scope)}`).toBe(`${what}: ${allowed.has(what)}`);
			}
		}
	});

	test('the listing names nothing that the table has never heard of', () => {
		const known = new Set(roles.flatMap((role) => needs.flatMap((need) => scopes.map((scope) => `${role} ${need.resource} ${need.action} ${scope}`))));
		expect([...allowed].filter((what) => !known.has(what))).toEqual([]);
	});

	test('nobody may touch anything of another class but the written lessons and the door to join', () => {
		const open = needs.filter((need) => roles.some((role) => may(role, need, 'other'))).map(({ resource, action }) => `${resource} ${action}`);
		expect(open.sort()).toEqual(['class join', 'lesson read']);
	});

	test('an action that a resource does not have is refused', () => {
		expect(may('teacher', { resource: 'figures', action: 'constructor' } as never, 'class')).toBe(false);
		expect(may('teacher', { resource: 'toString', action: 'read' } as never, 'class')).toBe(false);
	});
});
