import { describe, expect, test } from 'vitest';
import { checkRules, defaultRules } from '../../src/lib/class/gate.ts';
import type { ClassRules } from '../../src/lib/class/rules.ts';
import { parseLength } from '../../src/lib/drafting/length.ts';
import { allIssues, lengthPaths, readRules, startLengths, turnLengths, typedLength, typedRules, typeRules, type TypedRules } from '../../src/routes/classes/rules-form.ts';

const formOf = (typed: TypedRules): FormData => {
	const form = new FormData();
	form.set('unit', typed.unit);
	form.set('written', typed.written);
	form.set('zipSeries', typed.zipSeries);
	for (const path of lengthPaths) form.set(path, typed.lengths[path]);
	for (const choice of typed.open) form.append('open', choice);
	for (const { id, says } of [...typed.gate, { id: '', says: '' }]) {
		form.append('gate-id', id);
		form.append('gate-says', says);
	}
	return form;
};
const read = (typed: TypedRules) => readRules(typedRules(formOf(typed), () => 'own-new'));
const start = typeRules(defaultRules);

describe('rules go through the form', () => {
	test('rules that nobody touches come back the same to the last digit, in either unit', () => {
		const inches: ClassRules = {
			...defaultRules, unit: 'in', zipSeries: 'in',
			allowances: { waist: 15, seam: 15.875, hem: 17 }, tolerances: { readings: 9.525, waistWalk: 4.7625, bandSeam: 5, hemLevel: 12.34 }
		};
		for (const rules of [defaultRules, inches]) {
			const { rules: back, issues } = read(typeRules(rules));
			expect(issues).toEqual([]);
			expect(checkRules(back)).toEqual({ ok: true, value: rules });
		}
	});

	test('every tenth of a millimetre and every sixteenth of an inch is typed so that it reads back', () => {
		for (const unit of ['cm', 'in'] as const) {
			for (const mm of [...Array.from({ length: 400 }, (_, i) => (i + 1) / 10), ...Array.from({ length: 64 }, (_, i) => ((i + 1) / 16) * 25.4)]) {
				const back = parseLength(typedLength(mm, unit), unit);
				expect(back.ok && Math.abs(back.value.mm - mm) < 1e-6, `${mm} mm typed as ${typedLength(mm, unit)} in ${unit}`).toBe(true);
			}
		}
	});

	test('what a class starts with is taken in both units', () => {
		for (const unit of ['cm', 'in'] as const) {
			const { rules, issues } = read({ ...start, unit, written: unit, zipSeries: unit, lengths: startLengths[unit] });
			expect(issues).toEqual([]);
			expect(checkRules(rules).ok).toBe(true);
		}
		expect((read({ ...start, written: 'in', lengths: startLengths.in }).rules as ClassRules).allowances.waist).toBe(15.875);
	});

	test('a length that cannot be read is told once, with everything else that is wrong', () => {
		const { rules, issues } = read({ ...start, unit: 'ell', lengths: { ...start.lengths, 'allowances.hem': 'one', 'allowances.seam': '90', 'tolerances.readings': '' } });
		const checked = checkRules(rules);
		const all = allIssues(issues, checked.ok ? [] : checked.issues).map(({ code, path }) => `${path}: ${code}`).sort();
		expect(all).toEqual(['allowances.hem: not-a-length', 'allowances.seam: length-out-of-range', 'tolerances.readings: length-missing', 'unit: not-a-unit']);
	});

	test('an emptied line leaves the gate, and a new one gets an id of its own', () => {
		const form = formOf({ ...start, gate: start.gate.map((item, i) => (i === 0 ? { ...item, says: '  ' } : item)) });
		form.append('gate-id', '');
		form.append('gate-says', 'The shears are sharp.');
		expect(typedRules(form, () => 'own-abc123').gate).toEqual([...start.gate.slice(1), { id: 'own-abc123', says: 'The shears are sharp.' }]);
	});
});

describe('turning the form to the other unit', () => {
	test('what was not touched starts anew, and what was typed says what it was typed in', () => {
		const typed = { ...start.lengths, 'allowances.seam': '1.7', 'allowances.hem': '2 1/2 in', 'tolerances.readings': 'one' };
		const turned = turnLengths(typed, 'cm', 'in', true);
		expect(turned).toEqual({ ...startLengths.in, 'allowances.seam': '1.7 cm', 'allowances.hem': '2 1/2', 'tolerances.readings': 'one' });
	});

	test('in a class that goes on every length stays the same length', () => {
		for (const [from, to] of [['cm', 'in'], ['in', 'cm']] as const) {
			const turned = turnLengths(startLengths[from], from, to, false);
			for (const path of lengthPaths) expect(parseLength(turned[path], to)).toMatchObject({ value: { mm: (parseLength(startLengths[from][path], from) as { value: { mm: number } }).value.mm } });
		}
	});

	test('there and back again it means the same', () => {
		const typed = { ...start.lengths, 'allowances.seam': '1.7', 'allowances.waist': '12 mm', 'allowances.hem': '3/4 in' };
		const back = turnLengths(turnLengths(typed, 'cm', 'in', true), 'in', 'cm', true);
		for (const path of lengthPaths) expect(parseLength(back[path], 'cm')).toMatchObject({ value: { mm: (parseLength(typed[path], 'cm') as { value: { mm: number } }).value.mm } });
	});
});
