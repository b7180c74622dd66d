import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaults } from '../../src/lib/drafting/defaults.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';

const least = { unit: 'cm', body: { waist: 74 }, skirt: { share: 0.5, length: 58 } };
const issues = (value: unknown) => {
	const input = checkInput(value);
	return input.ok ? [] : input.issues.map(({ code, path }) => `${path}: ${code}`);
};
const skirt = (change: object) => ({ ...least, skirt: { ...least.skirt, ...change } });
const body = (change: object) => ({ ...least, body: { ...least.body, ...change } });

test('The whole input of the draft command is read, numbers in its unit', () => {
	expect(checkInput({
		unit: 'cm', body: { waist: 74, hip: 99, waistToHip: 20 },
		skirt: {
			style: 'flared', share: 0.5, length: 58, waistEase: 1, hipEase: 2, panels: 2, band: { kind: 'straight', depth: 4, underlap: 3 },
			hem: 1.5, hemFinish: 'turned', zipAt: 'leftSide', zipSeries: 'in', lining: { shorterBy: 3 }, allowances: { waist: 1.5, seam: 1.5 }
		}
	})).toEqual({
		ok: true, value: {
			unit: 'cm', body: { waist: 740, hip: 990, waistToHip: 200 },
			skirt: {
				style: 'flared', share: 0.5, length: 580, waistEase: 10, hipEase: 20, panels: 2, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' },
				panelShares: null, closure: 'zip', hem: 15, hemFinish: 'turned', hemFacing: 50, zipAt: 'leftSide', zipSeries: 'in', lining: { shorterBy: 30, share: null }, allowances: { waist: 15, seam: 15 }
			}
		}
	});
});

test('What is left out takes its stated default', () => {
	const input = checkInput(least);
	if (!input.ok) throw new Error(JSON.stringify(input.issues));
	expect(input.value.body).toEqual({ waist: 740 });
	expect(input.value.skirt).toEqual({
		style: 'flared', share: 0.5, length: 580, waistEase: defaults.waistEase.value, hipEase: defaults.hipEase.value, panels: 1,
		panelShares: null, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, closure: 'zip', hem: 15, hemFinish: 'narrow', hemFacing: 50, zipAt: 'centreBack', zipSeries: 'cm', lining: null, allowances: { waist: 15, seam: 15 }
	});
	const part = checkInput(skirt({ band: { depth: 3 }, allowances: { seam: 2 }, lining: {} }));
	expect(part).toMatchObject({ ok: true, value: { skirt: { band: { kind: 'straight', depth: 30, underlap: 30 }, allowances: { waist: 15, seam: 20 }, lining: { shorterBy: 25 } } } });
	for (const { because } of Object.values(defaults)) expect(because.length).toBeGreaterThan(5);
});

test('A text is read as a person would type it, in its own unit or the input’s', () => {
	const input = checkInput({ ...least, unit: 'in', body: { waist: '28 1/2', hip: '99,5 cm' }, skirt: { share: 0.5, length: '23 in', hem: '15 mm' } });
	expect(input).toMatchObject({ ok: true, value: { body: { waist: 723.9, hip: 995 }, skirt: { length: expect.closeTo(584.2, 9), hem: 15 } } });
});

test('Every mistake is named at once, each with its path', () => {
	expect(issues({
		unit: 'furlong', body: { waist: 'x', hip: '1,250', waistToHip: null, weight: 60 },
		skirt: { style: 'tiered', share: '0.5', panels: 2.5, band: [], hem: true, hemFinish: 'raw', zipAt: 'front', zipSeries: 1, lining: 'yes', allowances: { waist: -1, sem: 1 }, lenght: 58 }, more: 1
	})).toEqual([
		'unit: not-one-of', 'body.waist: not-a-length', 'body.hip: ambiguous-length', 'body.waistToHip: not-a-length', 'body.weight: unknown-field',
		'skirt.style: not-one-of', 'skirt.share: not-a-number', 'skirt.length: field-missing', 'skirt.panels: not-whole', 'skirt.band: not-an-object', 'skirt.hemFinish: not-one-of',
		'skirt.hem: not-a-length', 'skirt.zipAt: not-one-of', 'skirt.zipSeries: not-one-of', 'skirt.lining: not-an-object', 'skirt.allowances.waist: length-negative',
		'skirt.allowances.sem: unknown-field',
		'skirt.lenght: unknown-field', 'more: unknown-field'
	]);
});

test('What stands in the way of the cut is named along with what can’t be read', () => {
	// Two circles in one panel lap; that doesn't hang on the slip beside it.
	expect(issues(skirt({ share: 2, panels: 1, colour: 'red' }))).toEqual(['skirt.colour: unknown-field', 'skirt.panels: panel-laps-itself']);
	expect(issues({ ...skirt({ length: 12, hem: 15, lining: { shorterBy: 20 }, hemFinish: 'raw' }), more: 1 }))
		.toEqual(['skirt.hemFinish: not-one-of', 'more: unknown-field', 'skirt.hem: hem-deeper-than-skirt', 'skirt.lining.shorterBy: lining-too-short']);
	// Without a waist nobody knows whether a panel laps, and the lengths are looked at all the same.
	expect(issues({ ...skirt({ share: 2, panels: 1, length: 12, band: { depth: 15 } }), body: { waist: 'x' } })).toEqual(['body.waist: not-a-length', 'skirt.length: band-deeper-than-length']);
	// Nor does a default stand in for a field that was refused: 74 cm on two circles, in panels that nobody can count.
	expect(issues(skirt({ share: 2, panels: 0 }))).toEqual(['skirt.panels: number-out-of-range']);
	expect(issues(skirt({ length: 12, band: { depth: 'x' }, hem: 15 }))).toEqual(['skirt.band.depth: not-a-length']);
	expect(issues(skirt({ length: 12, band: [], hem: 15 }))).toEqual(['skirt.band: not-an-object']);
});

test('A minus sign is named even where the unit can’t be read, and no other size is', () => {
	expect(issues({ unit: 'furlong', body: { waist: 7400, hip: -1 }, skirt: { share: 0.5, length: -58, hem: -1, waistEase: -1, band: { depth: 9000 } } }))
		.toEqual(['unit: not-one-of', 'body.hip: length-negative', 'skirt.length: length-negative', 'skirt.hem: length-negative']);
	const input = checkInput({ unit: 'furlong', body: { waist: -74 }, skirt: { share: 0.5, length: 58 } });
	// As it came: without a unit it is no number of millimetres.
	expect(input.ok ? [] : input.issues[1]).toMatchObject({ path: 'body.waist', received: -74 });
});

test('Where nothing came, the issue says null', () => {
	const input = checkInput({ body: {} });
	expect(input.ok ? [] : JSON.parse(JSON.stringify(input.issues)).map(({ path, received }: { path: string; received: unknown }) => [path, received]))
		.toEqual([['unit', null], ['skirt', null], ['body.waist', null]]);
});

test('What is missing is named', () => {
	expect(issues({})).toEqual(['unit: field-missing', 'body: field-missing', 'skirt: field-missing']);
	expect(issues({ unit: 'cm', body: {}, skirt: {} })).toEqual(['body.waist: field-missing', 'skirt.share: field-missing', 'skirt.length: field-missing']);
});

test.each([
	[body({ waist: 3 }), 'body.waist: length-out-of-range'], [body({ waist: 251 }), 'body.waist: length-out-of-range'], [body({ hip: 39 }), 'body.hip: length-out-of-range'],
	[body({ hip: 251 }), 'body.hip: length-out-of-range'], [body({ waist: -74 }), 'body.waist: length-negative'], [body({ waist: '-74' }), 'body.waist: length-negative'],
	[body({ waist: NaN }), 'body.waist: not-a-length'], [body({ waist: Infinity }), 'body.waist: not-a-length'], [body({ waist: '1e309' }), 'body.waist: not-a-length'], [body({ waist: { cm: 74 } }), 'body.waist: not-a-length'],
	[skirt({ length: 0 }), 'skirt.length: length-out-of-range'], [skirt({ length: 1e9 }), 'skirt.length: length-out-of-range'], [skirt({ share: 0.09 }), 'skirt.share: number-out-of-range'], [skirt({ share: 2.1 }), 'skirt.share: number-out-of-range'],
	[skirt({ panels: 0 }), 'skirt.panels: number-out-of-range'], [skirt({ panels: 13 }), 'skirt.panels: number-out-of-range'], [skirt({ hem: -1 }), 'skirt.hem: length-negative'], [skirt({ hem: 30 }), 'skirt.hem: length-out-of-range'],
	[skirt({ band: { kind: 'shaped' } }), 'skirt.band.kind: not-one-of'], [skirt({ band: { kind: 'contour' } }), 'skirt.band.lower: field-missing'],
	[skirt({ band: { kind: 'straight', lower: 80 } }), 'skirt.band.lower: unknown-field'], [skirt({ band: { kind: 'elastic' }, closure: 'zip' }), 'skirt.closure: not-one-of'], [skirt({ lining: { share: 0.05 } }), 'skirt.lining.share: number-out-of-range'],
	[skirt({ panels: 2, panelShares: [0.5, 0.6] }), 'skirt.panelShares: shares-not-whole'], [skirt({ panels: 3, panelShares: [0.5, 0.5] }), 'skirt.panelShares: shares-not-whole'], [skirt({ panelShares: 'half' }), 'skirt.panelShares: not-a-list'], [skirt({ band: null }), 'skirt.band: not-an-object'], [skirt({ allowances: { seam: 11 } }), 'skirt.allowances.seam: length-out-of-range']
])('%j is refused', (value, expected) => {
	expect(issues(value)).toEqual([expected]);
});

test('A refusal of what can’t be a person’s has its best guess', () => {
	const guess = (waist: number | string, unit = 'cm') => {
		const input = checkInput({ ...least, unit, body: { waist }, skirt: { share: 0.5, length: '58 cm' } });
		return input.ok ? null : input.issues[0]!.figures?.guess;
	};
	// 28 said for cm was inches; 725 and 7.25 are off by ten.
	expect(guess(28)).toBeCloseTo(28 * 25.4, 6);
	expect(guess(725)).toBeCloseTo(725, 6);
	expect(guess(7.25)).toBeCloseTo(725, 6);
	expect(guess(280, 'in')).toBeCloseTo(28 * 25.4, 6);
	// The unit of the text counts, not the input's: 28 cm and 28 mm were inches.
	expect(guess('28 cm', 'in')).toBeCloseTo(28 * 25.4, 6);
	expect(guess('28 mm')).toBeCloseTo(28 * 25.4, 6);
	// Of two that would do, the one nearer the middle: 99 cm rather than 9.9 in.
	const short = checkInput({ ...least, unit: 'cm', body: { waist: 74 }, skirt: { share: 0.5, length: 9.9 } });
	expect(short.ok ? null : short.issues[0]!.figures?.guess).toBeCloseTo(990, 6);
});

test('What no likely slip explains is refused without a guess', () => {
	for (const [waist, unit] of [[300, 'cm'], [275, 'cm'], [3000, 'mm'], ['300 cm', 'in'], [2, 'cm'], [31_000, 'mm']] as const) {
		const input = checkInput({ ...least, unit, body: { waist }, skirt: { share: 0.5, length: '58 cm' } });
		expect(input.ok ? null : input.issues[0]!.figures, `${waist} ${unit}`).toEqual({ least: 300, most: 2500, given: expect.any(Number) as number });
	}
});

test.each([null, undefined, 7, 'text', true, [], [least], () => 1, Symbol('x'), 10n, new Map(), new Date(0)])('%s is no input, and is refused', (value) => {
	const input = checkInput(value);
	expect(input.ok).toBe(false);
	expect(JSON.parse(JSON.stringify(input))).toEqual(JSON.parse(JSON.stringify(input)));
});

test('Names from the prototype are neither read nor taken', () => {
	expect(issues(JSON.parse('{"unit":"cm","body":{"waist":74,"__proto__":{"hip":99}},"skirt":{"share":0.5,"length":58,"constructor":1}}')))
		.toEqual(['body.__proto__: unknown-field', 'skirt.constructor: unknown-field']);
	const inherited = Object.create({ waist: 74 }) as object;
	expect(issues({ ...least, body: inherited })).toEqual(['body.waist: field-missing']);
	expect(({} as Record<string, unknown>).hip).toBeUndefined();
});

test('Anything at all is either checked or refused with plain issues, and what is checked can be handed to the draft', () => {
	const leaf = fc.oneof(fc.double(), fc.integer({ min: -5, max: 300 }), fc.string({ unit: 'binary', maxLength: 12 }), fc.constantFrom(null, true, '72,5', '28½ in', 'narrow', 'cm', 'in', 'flared'));
	const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
	const input = fc.oneof(fc.anything(), fc.record({
		unit: fc.constantFrom('cm', 'in', 'mm', 'x'),
		body: fc.oneof({ weight: 5, arbitrary: fc.record({ waist: fc.oneof(leaf, fc.integer({ min: 28, max: 120 })), hip: leaf, extra: leaf }, { requiredKeys: [] }) }, leaf),
		skirt: fc.oneof({ weight: 5, arbitrary: fc.record({ share: fc.oneof(leaf, fc.double({ min: 0.1, max: 2, noNaN: true })), length: fc.oneof(leaf, fc.integer({ min: 20, max: 110 })), panels: some(fc.integer({ min: 0, max: 13 })), hem: some(leaf), band: some(leaf), lining: some(leaf) }, { requiredKeys: ['share', 'length'] }) }, leaf)
	}));
	fc.assert(fc.property(input, (value) => {
		const checked = checkInput(value);
		if (checked.ok) {
			const draft = draftSkirt(checked.value.body, checked.value.skirt);
			if (!draft.ok) expect(draft.issues.length).toBeGreaterThan(0);
		} else {
			expect(checked.issues.length).toBeGreaterThan(0);
			for (const { code, path } of checked.issues) expect([typeof code, typeof path]).toEqual(['string', 'string']);
			JSON.stringify(checked.issues);
		}
	}), { numRuns: 3000 });
});

test('Checking leaves its input untouched', () => {
	const value = structuredClone(least);
	checkInput(value);
	expect(value).toEqual(least);
});
