// Lengths that were reached and proved before (the instances and figures of the layout's first trials, each layout checked by
// hand-written geometry of its own; measured, not from a book): none may come out longer now, or less certain.
import { expect, test } from 'vitest';
import { answer, quarters, rectangle, sector, straight } from './cases.ts';

const quarter = [12, 75, 90] as const;
const gore = { name: 'gore', count: 6, gore: { top: 14, bottom: 34, length: 72 }, turns: straight };
const tiers = [rectangle('first', 2, 100, 22, [0, 90]), rectangle('second', 3, 120, 24, [0, 90]), rectangle('third', 4, 130, 26, [0, 90])];

test.each([
	['two quarters, middle on the grain', { cloth: { width: 140 }, pieces: [sector('panel', 2, quarter, straight)] }, 122.43],
	['the same on narrower cloth', { cloth: { width: 112 }, pieces: [sector('panel', 2, quarter, straight)] }, 132.04],
	['the same with quarter turns', { cloth: { width: 112 }, pieces: [sector('panel', 2, quarter, quarters)] }, 132.04],
	['the same, edge on the grain', { cloth: { width: 140 }, pieces: [sector('panel', 2, quarter, quarters, true)] }, 76.5],
	['two half circles', { cloth: { width: 150 }, pieces: [sector('panel', 2, [10, 70, 180], straight)] }, 142.29],
	['four quarters', { cloth: { width: 115 }, pieces: [sector('panel', 4, [10, 68, 90], straight)] }, 238.96],
	['one panel and a waistband', { cloth: { width: 140 }, pieces: [sector('panel', 1, [43, 103, 90], quarters, true), rectangle('band', 1, 72, 8, quarters)] }, 104.5],
	['panels, waistband and facings', { cloth: { width: 140 }, pieces: [sector('panel', 2, quarter, straight), rectangle('band', 1, 80, 8, quarters), sector('facing', 2, [12, 18, 90], straight)] }, 122.43],
	['six gores one way', { cloth: { width: 140 }, nap: true, pieces: [gore] }, 144],
	['tiers', { cloth: { width: 140 }, pieces: tiers }, 216],
	['eight narrow panels', { cloth: { width: 150 }, pieces: [sector('panel', 8, [10, 80, 45], straight)] }, 202.09],
	['halves on the fold', {
		cloth: { width: 150 }, folded: true,
		pieces: [{ ...sector('panel', 2, [12, 75, 45], straight, true), fold: true }, { ...rectangle('band', 1, 8, 40, [0]), fold: true }]
	}, 142.54]
])('%s: as short as is known, and proved', (_, asked, known) => {
	const { length, bound, proved, fits } = answer({ ...asked, seconds: 20 });
	expect(fits).toBe(true);
	expect(length! / 10).toBeLessThan(known + 0.01);
	expect(proved).toBe(true);
	expect(bound).toBeGreaterThanOrEqual(length! - 1 - 1e-6);
	// What is known can be laid, so no proof may go beyond it.
	expect(bound / 10).toBeLessThan(known + 0.005);
});

test('Where there is no proof there is an honest bound: no longer than the cloth’s area allows, and said in percent', () => {
	const { length, bound, proved, above } = answer({ cloth: { width: 150 }, seconds: 2, pieces: [sector('panel', 12, [12, 95, 30], straight)] });
	// Each panel’s area: a twelfth of a ring and two strips of 83 × 1.5 cm.
	const area = 12 * ((Math.PI * (95 ** 2 - 12 ** 2)) / 12 + 2 * 83 * 1.5);
	expect(bound / 10).toBeGreaterThanOrEqual(area / 150 - 1e-6);
	// Laid before, so it can be.
	expect(bound / 10).toBeLessThan(250.73);
	expect(length! / 10).toBeLessThan(250.73 * 1.01);
	expect(proved).toBe(false);
	expect(above).toBeCloseTo((length! / bound - 1) * 100, 9);
});
