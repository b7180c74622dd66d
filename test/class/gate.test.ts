import { describe, expect, test } from 'vitest';
import { checkRules, defaultGate, defaultRules } from '../../src/lib/class/gate.ts';

const codes = (value: unknown): string[] => {
	const checked = checkRules(value);
	return checked.ok ? [] : checked.issues.map(({ code, path }) => `${path}: ${code}`);
};

describe('the rules of a class', () => {
	test('the defaults pass their own check unchanged', () => {
		expect(checkRules(structuredClone(defaultRules))).toEqual({ ok: true, value: defaultRules });
	});

	test('what rules don’t have is left out', () => {
		const checked = checkRules({ ...defaultRules, secret: 1, open: { ...defaultRules.open, everything: true } });
		expect(checked).toEqual({ ok: true, value: defaultRules });
	});

	test('everything wrong is told at once, each at its own path', () => {
		expect(codes({
			...defaultRules, unit: 'ft', allowances: { waist: 150, seam: Number.NaN, hem: '15' }, tolerances: null, open: { share: 'yes' }, gate: []
		})).toEqual([
			'unit: not-a-unit',
			'allowances.waist: length-out-of-range', 'allowances.seam: length-out-of-range', 'allowances.hem: length-out-of-range',
			'tolerances.readings: length-out-of-range', 'tolerances.waistWalk: length-out-of-range',
			'tolerances.bandSeam: length-out-of-range', 'tolerances.hemLevel: length-out-of-range',
			'open.share: not-yes-or-no', 'open.waistEase: not-yes-or-no', 'open.bandDepth: not-yes-or-no', 'open.hemFinish: not-yes-or-no',
			'gate: gate-count'
		]);
	});

	test.each([null, undefined, 7, 'rules', [], () => 1])('%o is no set of rules and throws nothing', (value) => {
		expect(checkRules(value).ok).toBe(false);
	});

	test('a gate’s items are sentences with ids of their own', () => {
		const gate = [{ id: 'cloth', says: 'Washed.' }, { id: 'cloth', says: ' ' }, { id: 'No', says: 'x'.repeat(201) }, null];
		expect(codes({ ...defaultRules, gate })).toEqual([
			'gate.1.id: gate-id', 'gate.1.says: gate-sentence', 'gate.2.id: gate-id', 'gate.2.says: gate-sentence', 'gate.3.id: gate-id', 'gate.3.says: gate-sentence'
		]);
	});

	test('an item is one line that can be shown, however it was typed', () => {
		const checked = checkRules({ ...defaultRules, gate: [{ id: 'cloth', says: ' Washed,\r\n pressed. ' }] });
		expect(checked).toMatchObject({ ok: true, value: { gate: [{ id: 'cloth', says: 'Washed, pressed.' }] } });
		for (const says of ['Was\0hed.', '\u202eWashed.', '\ud800']) {
			expect(codes({ ...defaultRules, gate: [{ id: 'cloth', says }] })).toEqual(['gate.0.says: gate-sentence']);
		}
	});

	test('the gate that a class starts with has the seven items of the trade (common practice, no source)', () => {
		expect(defaultGate.map(({ id }) => id)).toEqual(['cloth', 'waist', 'length', 'grain', 'lines', 'walk', 'second']);
	});
});
