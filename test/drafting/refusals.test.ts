import { expect, test } from 'vitest';
import type { Body } from '../../src/lib/drafting/body.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { readingsMissing } from '../../src/lib/drafting/pleated/cuttable.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';

const skirt: Skirt = {
	style: 'flared', share: 0.5, length: 600, waistEase: 0, hipEase: 0, panels: 2, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 15,
	hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: null, allowances: { waist: 15, seam: 15 }
};
const issues = (waist: number, choices: Partial<Skirt>) => {
	const draft = draftSkirt({ waist }, { ...skirt, ...choices });
	return draft.ok ? [] : draft.issues;
};

test('One panel of a full circle with a seam laps itself, and two are the way on', () => {
	expect(issues(700, { share: 1, panels: 1 })).toMatchObject([{ code: 'panel-laps-itself', path: 'skirt.panels', expected: 2, received: 1, waysOut: [{ path: 'skirt.panels', value: 2 }] }]);
	// Two full circles in two panels lap, in three they don't.
	expect(issues(1400, { share: 2, panels: 2 })).toMatchObject([{ waysOut: [{ path: 'skirt.panels', value: 3 }] }]);
});

test('A panel may come as near to lapping as its allowances leave room for', () => {
	// θ/n + 2·arcsin(s / cut waist radius) ≤ 2π: share 0.95 on 70 cm has r 117.27, cut 102.27, and 2·arcsin(15/102.27) = 0.2944 rad = 0.0469 of a turn.
	expect(issues(700, { share: 0.95, panels: 1 })).toEqual([]);
	expect(issues(700, { share: 0.96, panels: 1 })).toMatchObject([{ code: 'panel-laps-itself' }]);
});

test('A cut waist radius that is not larger than the seam allowance leaves no room', () => {
	// Two circles on 30 cm: r = 23.87, cut 8.87.
	const [issue] = issues(300, { share: 2, panels: 4 });
	expect(issue).toMatchObject({ code: 'no-room-for-allowance', path: 'skirt.share', figures: { cutWaistRadius: expect.closeTo(8.873, 3), seamAllowance: 15 } });
	expect(issue!.waysOut!.map(({ path }) => path)).toEqual(['skirt.share', 'skirt.allowances.waist', 'skirt.allowances.seam']);
	// Exactly as large is not larger.
	expect(issues(30 * 2 * Math.PI, { share: 1, panels: 4 })).toHaveLength(1);
	// Less than nothing.
	expect(issues(300, { share: 2, panels: 4, allowances: { waist: 40, seam: 5 } })).toMatchObject([{ code: 'no-room-for-allowance' }]);
});

test('A band as deep as the length, a hem as deep as the skirt, and a lining shortened to nothing are refused together', () => {
	expect(issues(700, { length: 40 }).map(({ code, path }) => [code, path])).toEqual([['band-deeper-than-length', 'skirt.length']]);
	expect(issues(700, { length: 100, hem: 60, lining: { shorterBy: 60, share: null } }).map(({ code, path }) => [code, path])).toEqual([['hem-deeper-than-skirt', 'skirt.hem'], ['lining-too-short', 'skirt.lining.shorterBy']]);
});

test('A refusal for want of a reading names the reading to take, and the draft stands once it is there', () => {
	const elastic: Skirt = { ...skirt, closure: 'none', band: { kind: 'elastic', depth: 40, underlap: 0, sits: 'above', elastic: 30 } };
	const missing = draftSkirt({ waist: 700 }, elastic);
	expect(missing).toMatchObject({ ok: false, issues: [{ code: 'elastic-needs-hip', path: 'body.hip', received: null, measure: ['hip'] }] });
	expect(draftSkirt({ waist: 700, hip: 960 }, elastic).ok).toBe(true);
	const pleats = readingsMissing({ waist: 700 });
	expect(pleats.map(({ code, measure }) => [code, measure])).toEqual([['pleats-need-hip', ['hip']], ['pleats-need-hip-depth', ['waistToHip']]]);
	expect(readingsMissing({ waist: 700, hip: 960, waistToHip: 200 })).toEqual([]);
	const plain = (body: Body) => { const draft = draftSkirt(body, skirt); return draft.ok ? draft.value.checks.flatMap(({ code, measure }) => (measure ? [[code, measure]] : [])) : []; };
	expect(plain({ waist: 700 })).toEqual([['hip-missing', ['hip']]]);
	expect(plain({ waist: 700, hip: 960 })).toEqual([['hip-depth-missing', ['waistToHip']]]);
	expect(plain({ waist: 700, hip: 960, waistToHip: 200 })).toEqual([]);
});
