import { describe, expect, test } from 'vitest';
import { askIssues } from '../../src/lib/class/ask.ts';
import type { EventBody } from '../../src/lib/class/event.ts';
import { checkSaid } from '../../src/lib/class/said-check.ts';
import { refusalSays } from '../../src/lib/ui/wording/refusal.ts';

const held = { steps: new Set(['wash-cloth', 'cut-skirt']), gate: [{ id: 'cloth', says: 'The cloth is pressed.' }, { id: 'waist', says: 'The waist was read twice.' }] };
const issues = (...bodies: readonly EventBody[]) => {
	const checked = checkSaid(bodies.map((body, counter) => ({ id: `e${counter}`, device: 'd', counter, body })), held);
	return checked.ok ? [] : checked.issues.map(({ path, code }) => `${path}: ${code}`);
};

describe('what a learner says fits her class', () => {
	test.each(['tick', 'untick', 'help', 'helped'] as const)('a %s is about a step of the lesson', (kind) => {
		expect(issues({ kind, step: 'wash-cloth' })).toEqual([]);
		expect(issues({ kind, step: 'no-such-step' })).toEqual(['0.body.step: no-such-step']);
	});

	test('a hand that is up about nothing in particular is fine, and so is a step that her teacher has to clear', () => {
		expect(issues({ kind: 'help' }, { kind: 'helped' }, { kind: 'tick', step: 'cut-skirt' })).toEqual([]);
	});

	test('asking carries every line of the gate and a second person; all that is missing is said at once', () => {
		expect(issues({ kind: 'ask', gate: ['cloth', 'waist'], second: 'Bea' })).toEqual([]);
		expect(issues({ kind: 'tick', step: 'wash-cloth' }, { kind: 'ask', gate: [], second: '' })).toEqual([
			'1.body.gate.cloth: gate-unread', '1.body.gate.waist: gate-unread', '1.body.second: second-missing'
		]);
		expect(issues({ kind: 'ask', gate: ['waist'], second: 'B' })).toEqual(['0.body.gate.cloth: gate-unread']);
		// A line that has left the gate since does no harm.
		expect(issues({ kind: 'ask', gate: ['cloth', 'light', 'waist'], second: 'B' })).toEqual([]);
	});

	test.each(['', ' ', '\u200b', ' \u00a0\t', '—'])('%j is nobody’s name', (second) => {
		expect(askIssues({ gate: [], second }, []).map(({ code }) => code)).toEqual(['second-missing']);
	});

	test('a name that can’t be shown on one line, or is endless', () => {
		expect(askIssues({ gate: [], second: 'B\nea' }, []).map(({ code }) => code)).toEqual(['second-unfit']);
		expect(askIssues({ gate: [], second: 'x'.repeat(41) }, []).map(({ code }) => code)).toEqual(['second-long']);
	});

	test.each(['no-such-step', 'gate-unread', 'second-missing', 'second-unfit', 'second-long'])('%s is said in a sentence', (code) => {
		expect(refusalSays({ code, path: '' })).toMatch(/^[A-Z].+\.$/);
	});
});
