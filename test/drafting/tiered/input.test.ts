import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Fields } from '../../../src/lib/drafting/fields.ts';
import type { Issue } from '../../../src/lib/drafting/result.ts';
import { draftTiered } from '../../../src/lib/drafting/tiered/draft.ts';
import { readTiered, tieredDefaults } from '../../../src/lib/drafting/tiered/input.ts';

function read(value: object, unit: 'cm' | 'mm' | 'in' = 'cm') {
	const issues: Issue[] = [];
	const skirt = readTiered(Fields.of(value, 'skirt', unit, issues)!, { unit, issues });
	return { skirt, issues: issues.map(({ code, path }) => `${path}: ${code}`) };
}

test('What is left out takes its stated default', () => {
	expect(read({ style: 'tiered', length: 80 })).toEqual({
		issues: [], skirt: {
			style: 'tiered', length: 800, waistEase: 10, hipEase: 20, tiers: 3, lengths: { kind: 'equal' }, ratios: { 1: 1.5, 2: 1.5, 3: 1.5 },
			band: { kind: 'straight', depth: 40, underlap: 30 }, hem: 20, hemFinish: 'turned', zipAt: 'centreBack', zipSeries: 'cm', cloth: 'light', clothWidth: 1400,
			allowances: { waist: 15, seam: 15 }
		}
	});
	for (const { because } of Object.values(tieredDefaults)) expect(because.length).toBeGreaterThan(5);
});

test('Everything said is read, numbers in the unit and texts as typed', () => {
	const { skirt, issues } = read({
		style: 'tiered', length: '31 1/2', tiers: 2, ratio: 1.4, ratios: { 1: 1 }, lengths: { kind: 'given', each: { 1: 10, 2: '50 cm' } },
		band: { kind: 'elastic', elastic: 1 }, cloth: 'heavy', clothWidth: 54, hem: 1
	}, 'in');
	expect(issues).toEqual([]);
	expect(skirt).toMatchObject({
		length: 31.5 * 25.4, tiers: 2, ratios: { 1: 1, 2: 1.4 }, lengths: { kind: 'given', each: { 1: 254, 2: 500 } }, band: { kind: 'elastic', elastic: 25.4, depth: 28.4 },
		cloth: 'heavy', clothWidth: 54 * 25.4, hem: 25.4
	});
	expect(read({ length: 80, lengths: { kind: 'growing' } }).skirt?.lengths).toEqual({ kind: 'growing', by: tieredDefaults.growth.value });
});

test('Every mistake is named at once, each with its path', () => {
	expect(read({
		style: 'flared', tiers: 7, ratio: 4, ratios: { 2: 1.1, 5: 1.5 }, lengths: { kind: 'equal', by: 2 }, band: { kind: 'elastic', underlap: 3 }, cloth: 'thick', clothWidth: 5, sharee: 1
	})).toEqual({
		skirt: undefined, issues: [
			'skirt.style: not-one-of', 'skirt.length: field-missing', 'skirt.tiers: number-out-of-range', 'skirt.ratio: number-out-of-range', 'skirt.ratios.2: number-out-of-range',
			'skirt.ratios.5: unknown-field', 'skirt.lengths.by: unknown-field', 'skirt.band.underlap: length-out-of-range', 'skirt.cloth: not-one-of', 'skirt.clothWidth: length-out-of-range', 'skirt.sharee: unknown-field'
		]
	});
	expect(read({ length: 80, lengths: { kind: 'given', each: { 1: 20 } } }).issues).toEqual(['skirt.lengths.each.2: field-missing', 'skirt.lengths.each.3: field-missing']);
	expect(read({ length: 80, lengths: { kind: 'given' }, band: { kind: 'contour' } }).issues).toEqual(['skirt.lengths.each: field-missing', 'skirt.band.kind: not-one-of']);
});

test('Anything at all is either read or refused, and what is read can be handed to the draft', () => {
	const leaf = fc.oneof(fc.double(), fc.integer({ min: -5, max: 300 }), fc.string({ unit: 'binary', maxLength: 12 }), fc.constantFrom(null, true, '72,5', 'elastic', 'given', 'growing', 1.5, 2));
	const group = fc.dictionary(fc.constantFrom('1', '2', '3', 'kind', 'by', 'each', 'depth', 'elastic'), leaf);
	// Mostly left out, now and then anything.
	const some = (value: fc.Arbitrary<unknown>) => fc.oneof({ weight: 12, arbitrary: fc.constant(undefined) }, { weight: 4, arbitrary: value }, leaf);
	const value = fc.record({
		length: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 20, max: 110 }) }, leaf), tiers: some(fc.integer({ min: 1, max: 6 })), ratio: some(fc.double({ min: 1.2, max: 3 })),
		ratios: some(group), lengths: some(group), band: some(group), hem: some(leaf), clothWidth: some(fc.integer({ min: 30, max: 300 }))
	}, { requiredKeys: ['length'] });
	let drafted = 0;
	fc.assert(fc.property(value, (anything) => {
		const { skirt, issues } = read(anything);
		if (!skirt) expect(issues.length).toBeGreaterThan(0);
		else {
			const draft = draftTiered({ waist: 740, hip: 990, waistToHip: 200 }, skirt);
			if (draft.ok) drafted++;
			else expect(draft.issues.length).toBeGreaterThan(0);
		}
	}), { numRuns: 2000 });
	expect(drafted).toBeGreaterThan(100);
});
