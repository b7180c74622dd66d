import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Fields } from '../../../src/lib/drafting/fields.ts';
import type { Issue } from '../../../src/lib/drafting/result.ts';
import { draftPleated } from '../../../src/lib/drafting/pleated/draft.ts';
import { pleatedDefaults, readPleated } from '../../../src/lib/drafting/pleated/input.ts';

function read(value: object, unit: 'cm' | 'mm' | 'in' = 'cm') {
	const issues: Issue[] = [];
	const skirt = readPleated(Fields.of(value, 'skirt', unit, issues)!, { unit, issues });
	return { skirt, issues: issues.map(({ code, path }) => `${path}: ${code}`) };
}

test('What is left out takes its stated default', () => {
	expect(read({ style: 'pleated', length: 60 })).toEqual({
		issues: [], skirt: {
			style: 'pleated', kind: 'knife', length: 600, waistEase: 10, hipEase: 20, pleats: 20, depth: 30, stitchedTo: 'hip', band: { kind: 'straight', depth: 40, underlap: 30 },
			hem: 30, hemFinish: 'turned', zipAt: 'centreBack', zipSeries: 'cm', clothWidth: 1400, allowances: { waist: 15, seam: 15 }
		}
	});
	for (const { because } of Object.values(pleatedDefaults)) expect(because.length).toBeGreaterThan(5);
});

test('Everything said is read, numbers in the unit and texts as typed', () => {
	expect(read({ kind: 'box', length: '24 in', pleats: 12, depth: '2', stitchedTo: 'waist', band: { depth: '1 1/4 in' }, clothWidth: 112, allowances: { seam: 2 } })).toMatchObject({
		issues: [], skirt: {
			kind: 'box', length: expect.closeTo(609.6, 9), pleats: 12, depth: 20, stitchedTo: 'waist', band: { depth: 31.75, underlap: 30 }, clothWidth: 1120, allowances: { waist: 15, seam: 20 }
		}
	});
});

test('Every mistake is named at once, each with its path', () => {
	expect(read({ style: 'tiered', kind: 'accordion', pleats: 3, depth: 40, stitchedTo: 'knee', band: { kind: 'elastic' }, hem: -1, clothWidth: true, spacing: 5 })).toEqual({
		skirt: undefined, issues: [
			'skirt.style: not-one-of', 'skirt.kind: not-one-of', 'skirt.length: field-missing', 'skirt.pleats: number-out-of-range', 'skirt.depth: length-out-of-range',
			'skirt.stitchedTo: not-one-of', 'skirt.band.kind: not-one-of', 'skirt.hem: length-negative', 'skirt.clothWidth: not-a-length', 'skirt.spacing: unknown-field'
		]
	});
	expect(read({ length: 60, pleats: 20.5 }).issues).toEqual(['skirt.pleats: not-whole']);
});

test('Anything at all is either read or refused, and what is read can be handed to the draft', () => {
	const leaf = fc.oneof(fc.double(), fc.integer({ min: -5, max: 300 }), fc.string({ unit: 'binary', maxLength: 12 }), fc.constantFrom(null, true, '72,5', 'box', 'waist'));
	// Mostly left out, now and then anything.
	const some = (value: fc.Arbitrary<unknown>) => fc.oneof({ weight: 12, arbitrary: fc.constant(undefined) }, { weight: 4, arbitrary: value }, leaf);
	const value = fc.record({
		length: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 20, max: 110 }) }, leaf), kind: some(fc.constantFrom('knife', 'box')), pleats: some(fc.integer({ min: 4, max: 60 })),
		depth: some(fc.double({ min: 0.5, max: 30, noNaN: true })), stitchedTo: some(fc.constantFrom('hip', 'waist')), hem: some(leaf), clothWidth: some(fc.integer({ min: 30, max: 300 })),
		hipEase: some(fc.integer({ min: -5, max: 50 })), band: some(leaf)
	}, { requiredKeys: ['length'] });
	let drafted = 0;
	fc.assert(fc.property(value, (anything) => {
		const { skirt, issues } = read(anything);
		if (!skirt) expect(issues.length).toBeGreaterThan(0);
		else {
			const draft = draftPleated({ waist: 740, hip: 990, waistToHip: 200 }, skirt);
			if (draft.ok) drafted++;
			else expect(draft.issues.length).toBeGreaterThan(0);
		}
	}), { numRuns: 2000 });
	expect(drafted).toBeGreaterThan(100);
});
