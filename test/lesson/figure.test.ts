import { expect, test } from 'vitest';
import type { Draft } from '../../src/lib/drafting/draft.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { figureOf } from '../../src/lib/lesson/figure.ts';
import { workingOf } from '../../src/lib/lesson/flared-working.ts';

/** A half circle with a narrow hem of 15 mm, 15 mm allowances, a band of 40 mm and 10 mm of ease. */
function draftOf(waist: number, length: number, lined = true, cut = { waist: 15, seam: 15, hem: 15 }): Draft {
	const draft = draftSkirt({ waist, hip: waist + 250 }, {
		style: 'flared', share: 0.5, length, waistEase: 10, hipEase: 20, panels: 1, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: cut.hem,
		hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: lined ? { shorterBy: 25, share: null } : null, allowances: { waist: cut.waist, seam: cut.seam }
	});
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const cm = (name: string, draft: Draft) => Math.round(figureOf(name, draft)!) / 10;

test('The cloth holds the skirt and, beside it, the band along the grain', () => {
	// Waist seam 75: r = 75 ÷ 3.1416 = 23.87; cut hem radius 23.87 + 56 + 1.5 = 81.37. Band 81 × 11 (75 + 3 + 2 × 1.5, 2 × 4 + 2 × 1.5).
	// Across 81.37 + 1.5 + 11 = 93.87; along 2 × 81.37 = 162.75; a tenth more 179.02: circle geometry.
	const draft = draftOf(740, 600);
	expect([cm('clothWidth', draft), cm('clothLength', draft), cm('clothToBuy', draft)]).toEqual([93.9, 162.7, 179]);
	// The lining's hem is 2.5 higher and it has no band: 81.37 − 2.5 = 78.87; across + 1.5 = 80.37; along 157.75; a tenth more 173.52.
	expect([cm('liningClothWidth', draft), cm('liningClothLength', draft), cm('liningClothToBuy', draft)]).toEqual([80.4, 157.7, 173.5]);
	for (const name of ['liningClothWidth', 'liningClothLength', 'liningClothToBuy']) expect(figureOf(name, draftOf(740, 600, false))).toBeUndefined();
});

test('A short skirt’s band may be longer than the skirt is along the cloth', () => {
	// Waist seam 151: 2 × (151 ÷ 3.1416 + 21 + 1.5) = 141.1, and the band 151 + 3 + 2 × 1.5 = 157.
	const draft = draftOf(1500, 250);
	expect(cm('clothLength', draft)).toBe(157);
	expect(workingOf('clothLength', draft, 'cm')!.steps).toEqual([{ operands: [{ written: '157.0', is: 'band' }], result: '157.0' }]);
});

test('A clip ends 2 mm or more short of the staystitching, and the check says the same depth as the lesson', () => {
	for (const waist of [9.5, 15, 25]) {
		const draft = draftOf(740, 600, true, { waist, seam: 15, hem: 15 });
		const depth = figureOf('clipDepth', draft)!;
		// The staystitching lies 2 to 3 mm from the stitch line.
		expect(waist - 3 - depth).toBeGreaterThanOrEqual(2);
		expect(draft.checks.find(({ code }) => code === 'waist-clip')?.figures.depth).toBe(depth);
	}
	expect(figureOf('clipDepth', draftOf(740, 600))).toBe(10);
	expect(figureOf('clipDepth', draftOf(740, 600, true, { waist: 5, seam: 15, hem: 15 }))).toBeUndefined();
});

test('Snips, tacking, grading and easestitching stay inside the allowances that a class sets', () => {
	// With 15 mm all round: snips of 5, tacking at 10, layers of 6 and 9, easestitching at 6 (common practice, no source).
	const usual = draftOf(740, 600);
	expect(['notchDepth', 'tackFromEdge', 'gradedLining', 'gradedSkirt', 'easestitchFromEdge'].map((name) => figureOf(name, usual))).toEqual([5, 10, 6, 9, 6]);
	for (const cut of [{ waist: 5, seam: 5, hem: 5 }, { waist: 10, seam: 12, hem: 10 }, { waist: 40, seam: 5, hem: 100 }, { waist: 5, seam: 40, hem: 10 }]) {
		const draft = draftOf(740, 600, true, cut);
		const mm = (name: string) => figureOf(name, draft)!;
		expect(mm('notchDepth')).toBeLessThan(Math.min(cut.waist, cut.seam, cut.hem) - 3);
		expect(mm('notchDepth')).toBeGreaterThan(1);
		expect(mm('tackFromEdge')).toBeGreaterThan(3);
		expect(mm('tackFromEdge')).toBeLessThan(cut.waist);
		expect(mm('gradedLining')).toBeLessThan(mm('gradedSkirt'));
		expect(mm('gradedSkirt')).toBeLessThan(cut.waist);
		expect(mm('easestitchFromEdge')).toBeGreaterThan(0);
		expect(mm('easestitchFromEdge')).toBeLessThan(mm('hemTurn'));
	}
});
