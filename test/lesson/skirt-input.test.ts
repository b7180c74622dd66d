import { expect, test } from 'vitest';
import type { ClassRules } from '../../src/lib/class/rules.ts';
import { fixedChoices, rulesOn } from '../../src/lib/lesson/open.ts';
import { skirtInput } from '../../src/lib/lesson/skirt-input.ts';
import type { LessonStyle } from '../../src/lib/lesson/style.ts';

const style: LessonStyle = {
	style: 'flared', band: 'straight', share: 0.5, panels: 1, waistEase: 10, hipEase: 20, bandDepth: 40, underlap: 30, hem: 15, hemFinish: 'narrow',
	zipAt: 'centreBack', liningShorterBy: 25, fixed: [], least: { waist: 0, seam: 0, hem: 0 }
};
const rules = (open: boolean): ClassRules => ({
	unit: 'cm', zipSeries: 'cm', allowances: { waist: 12, seam: 18, hem: 20 },
	tolerances: { readings: 10, waistWalk: 5, bandSeam: 5, hemLevel: 5 },
	open: { share: open, waistEase: open, bandDepth: open, hemFinish: open }, gate: []
});
const choices = { share: 0.75, panels: 2, zipAt: 'leftSide', waistEase: 5, hipEase: 30, bandDepth: 50, hem: 30, hemFinish: 'turned' } as const;

test('The lesson gives the style, the class its allowances, the learner her measurements', () => {
	expect(skirtInput(style, rules(true), {}, { waist: 740, hip: 990, waistToHip: 200, length: 600 })).toEqual({
		unit: 'mm',
		body: { waist: 740, hip: 990, waistToHip: 200 },
		skirt: {
			style: 'flared', share: 0.5, panels: 1, zipAt: 'centreBack', length: 600, waistEase: 10, hipEase: 20,
			band: { kind: 'straight', depth: 40, underlap: 30 }, hem: 20, hemFinish: 'narrow', zipSeries: 'cm', lining: { shorterBy: 25 },
			allowances: { waist: 12, seam: 18 }
		}
	});
});

test('A choice counts where the class leaves it open, and is as if unmade where it does not', () => {
	const measured = { waist: 740, length: 600 };
	expect(skirtInput(style, rules(true), choices, measured)).toMatchObject({
		skirt: { share: 0.75, panels: 2, zipAt: 'leftSide', waistEase: 5, hipEase: 30, band: { depth: 50 }, hem: 30, hemFinish: 'turned' }
	});
	expect(skirtInput(style, rules(false), choices, measured)).toEqual(skirtInput(style, rules(false), {}, measured));
});

test('What the lesson fixes is as if unmade, even under older rules that open it', () => {
	const measured = { waist: 740, length: 600 };
	const closed = { ...style, fixed: ['panels', 'hemFinish'] } as const;
	expect(skirtInput(closed, rules(true), choices, measured)).toMatchObject({
		skirt: { share: 0.5, panels: 1, zipAt: 'centreBack', hem: 20, hemFinish: 'narrow', waistEase: 5, hipEase: 30, band: { depth: 50 } }
	});
	expect(fixedChoices(closed)).toEqual(['share', 'hemFinish']);
	expect(rulesOn(closed, rules(true))).toEqual({ ...rules(true), open: { share: false, waistEase: true, bandDepth: true, hemFinish: false } });
	expect(rulesOn(style, rules(true))).toEqual(rules(true));
});

test('A measurement not yet taken is left out, and a lesson without a lining asks for none', () => {
	const { liningShorterBy: _, ...unlined } = style;
	const input = skirtInput(unlined, rules(true), {}, { waist: 740 }) as { body: object; skirt: object };
	expect(input.body).toEqual({ waist: 740 });
	expect(Object.keys(input.skirt)).not.toContain('length');
	expect(Object.keys(input.skirt)).not.toContain('lining');
});
