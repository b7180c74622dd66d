import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { workingNames, workingOf, workOut, writeWorking, type Token } from '../../src/lib/lesson/working.ts';

const value = (token: Token) => ('mm' in token ? token.mm : 'number' in token ? Number(token.number) : NaN);
const mm = (mm: number): Token => ({ mm, is: 'a length' });

test('Products go before sums', () => {
	// 750 + 30 + 2 × 15 = 810; 2 × 40 + 2 × 15 = 110; 9 − 2 × 3 + 8 ÷ 4 = 5: arithmetic
	expect(workOut([mm(750), { sign: '+' }, mm(30), { sign: '+' }, { number: '2' }, { sign: '×' }, mm(15)], value)).toBe(810);
	expect(workOut([{ number: '2' }, { sign: '×' }, mm(40), { sign: '+' }, { number: '2' }, { sign: '×' }, mm(15)], value)).toBe(110);
	expect(workOut([mm(9), { sign: '−' }, { number: '2' }, { sign: '×' }, mm(3), { sign: '+' }, mm(8), { sign: '÷' }, { number: '4' }], value)).toBe(5);
});

test('A 30 in waist seam on a half circle is written 30.00 ÷ 3.14 = 9.55', () => {
	// The fact of the trade: 30 ÷ 3.14 = 9.55 in (common practice, no source).
	const radius = (30 * 25.4) / Math.PI;
	expect(writeWorking({ of: 'waist radius', tokens: [mm(30 * 25.4), { sign: '÷' }, { number: '3.14' }], mm: radius }, 'in'))
		.toEqual({ tokens: ['30.00', '÷', '3.14'], comesTo: '9.55' });
});

test('Centimetres take a second place where one would make the written sum come out wrong', () => {
	const sum = (a: number, b: number) => writeWorking({ of: 'sum', tokens: [mm(a), { sign: '+' }, mm(b)], mm: a + b }, 'cm');
	expect(sum(238.7, 560)).toEqual({ tokens: ['23.9', '+', '56.0'], comesTo: null });
	// 23.87 + 56.07 = 79.94, but 23.9 + 56.1 would be 80.0.
	expect(sum(238.7, 560.7)).toEqual({ tokens: ['23.87', '+', '56.07'], comesTo: '79.94' });
});

/** A half circle on a waist seam of 70 cm, so long below its band. */
function draftOf(skirtLength: number, hip?: number): Draft {
	const draft = draftSkirt({ waist: 700, ...(hip !== undefined && { hip }) }, {
		style: 'flared', share: 0.5, length: skirtLength + 40, waistEase: 0, hipEase: 20, panels: 1, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 15,
		hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: null, allowances: { waist: 15, seam: 15 }
	});
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}

test('The zip’s end is the zip and 5 mm for its top stop; the opening and the zip to buy come from no sum', () => {
	// Hip 96 + 2 through 70 on a half circle: 20.8 cm (opening.test.ts), so a zip of 22 cm.
	const draft = draftOf(560, 960);
	const written = (name: string) => writeWorking(workingOf(name, draft)!, 'cm');
	expect(written('hipWithEase')).toEqual({ tokens: ['96.0', '+', '2.0'], comesTo: null });
	expect(written('zipEndBelowSeam')).toEqual({ tokens: ['22.0', '+', '0.5'], comesTo: null });
	for (const name of ['openingBelowSeam', 'zipLength']) expect(written(name)).toEqual({ tokens: [], comesTo: null });
	expect(workingOf('zipEndBelowSeam', draft)!.mm).toBe(225);
});

test('A zip that is shortened has no sum, and without a hip there is no row', () => {
	expect(workingOf('zipEndBelowSeam', draftOf(215, 960))).toBeNull();
	for (const name of ['openingBelowSeam', 'zipLength', 'zipEndBelowSeam']) expect(workingOf(name, draftOf(560))).toBeNull();
	// No opening is needed; the shortest zip is bought all the same.
	expect(workingOf('openingBelowSeam', draftOf(560, 600))).toBeNull();
	expect(workingOf('zipLength', draftOf(560, 600))!.mm).toBe(100);
});

test('In inches the written sum comes to what a calculator makes of it', () => {
	// 620 mm and 40 mm are 24.409 and 1.575 in, 580 mm is 22.835: written 24.41 − 1.57, which a calculator makes 22.84.
	expect(writeWorking({ of: 'length below the band', tokens: [mm(620), { sign: '−' }, mm(40)], mm: 580 }, 'in')).toEqual({ tokens: ['24.41', '−', '1.57'], comesTo: '22.84' });
	// Any sum: within a hundredth and what 3.14 for π costs, 0.05 %.
	const draft = draftOf(560, 960);
	for (const name of workingNames) for (const unit of ['cm', 'in'] as const) {
		const working = workingOf(name, draft)!;
		const { comesTo } = writeWorking(working, unit);
		if (comesTo !== null) expect(Math.abs(Number(comesTo) - working.mm / (unit === 'in' ? 25.4 : 10))).toBeLessThan(0.03 + 0.0006 * working.mm / 10);
	}
});
