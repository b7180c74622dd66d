import { expect, test } from 'vitest';
import type { ClassRules } from '../../src/lib/class/rules.ts';
import { usualVariants, whatIf, whatIfFrom, whatIfParams, type WhatIfText } from '../../src/routes/skirt/[class]/draft/what-if.ts';
import { sampleDraft } from '../paper/sample-draft.ts';

const { body, skirt } = sampleDraft();
const rulesWith = (share: boolean): ClassRules => ({
	unit: 'cm', zipSeries: 'cm', allowances: { waist: 15, seam: 20, hem: 20 }, tolerances: { readings: 10, waistWalk: 3, bandSeam: 3, hemLevel: 5 },
	open: { share, waistEase: false, bandDepth: false, hemFinish: false }, gate: []
});
const asked = (query: string): WhatIfText => {
	const text = whatIfFrom(new URLSearchParams(query));
	if (!text) throw new Error('nothing asked');
	return text;
};
const answer = (query: string, open = true) => whatIf(body, skirt, asked(query), rulesWith(open), 'cm');

test('An address asks, and what is asked becomes the same address', () => {
	for (const query of ['share1=1', 'length2=70&panels2=4', 'share1=0.75&length3=27%C2%BD&clothWidth=140']) {
		expect(whatIfParams(asked(query)).toString()).toBe(new URLSearchParams(query).toString());
	}
	expect(whatIfFrom(new URLSearchParams('kept=1'))).toBeNull();
	expect(asked(`length1=${'9'.repeat(500)}`).variants[0]!.length).toHaveLength(64);
});

test('Hers comes first, and an empty field keeps her own number', () => {
	const { columns, issues } = answer('share1=1&length2=70');
	expect(issues).toEqual([]);
	expect(columns.map(({ skirt }) => [skirt.share, skirt.length, skirt.panels])).toEqual([[0.5, 620, 1], [1, 620, 2], [0.5, 700, 1]]);
});

test('A flare has the panels it needs unless told, so that none laps itself', () => {
	for (const share of ['0.25', '0.5', '0.75', '1', '1.25', '1.5', '2']) expect([share, answer(`share1=${share}`).columns[1]!.obstacles]).toEqual([share, []]);
	expect(answer('share1=2&panels1=1').columns[1]!.obstacles.length).toBeGreaterThan(0);
});

test('Only what is hers to choose may be taken over', () => {
	expect(answer('share1=1&length2=70&panels3=4').takings).toEqual(['own', 'open', 'length', 'panels']);
	expect(answer('share1=1&panels2=1&share3=2&panels3=1', false).takings).toEqual(['own', 'closed', 'own', 'uncut']);
	expect(answer('share1=1&panels1=6').takings[1]).toBe('panels');
});

test('What can’t be read is named at its field, and the others are still compared', () => {
	const { columns, issues } = answer('share1=7&length2=abc&panels2=0&share3=1&clothWidth=1');
	expect(issues.map(({ path, code }) => [path, code])).toEqual([
		['share1', 'number-out-of-range'], ['panels2', 'number-out-of-range'], ['length2', 'not-a-length'], ['clothWidth', 'length-out-of-range']
	]);
	expect(columns.map(({ skirt }) => skirt.share)).toEqual([0.5, 1]);
	for (const query of ['length1=9999', 'length1=1', 'share1=NaN', 'share1=0x1&panels1=1e9', 'panels1=1.5']) expect([query, answer(query).columns.length, answer(query).issues.length > 0]).toEqual([query, 0, true]);
});

test('A cloth’s width reaches every skirt', () => {
	const { columns, clothWidth } = answer('share1=1&clothWidth=140');
	expect(clothWidth).toBe(1400);
	expect(columns.every(({ told }) => told?.cloth.fits !== null)).toBe(true);
});

test('To begin with there are three others beside hers', () => {
	expect(usualVariants(skirt).variants.map(({ share }) => share)).toEqual(['0.25', '0.75', '1']);
	expect(whatIf(body, skirt, usualVariants(skirt), rulesWith(true), 'cm').columns).toHaveLength(4);
});
