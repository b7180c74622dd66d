import { expect, test } from 'vitest';
import { compareDrafts, type Compared } from '../../src/lib/drafting/compare.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import { ansurBody, anySkirt, seeded } from './bodies.ts';

const body = { waist: 690, hip: 960, waistToHip: 200 };
const skirt: Skirt = {
	style: 'flared', share: 0.5, length: 640, waistEase: 10, hipEase: 20, panels: 1, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 20,
	hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: null, allowances: { waist: 15, seam: 15 }
};
function compared(skirts: readonly Skirt[], width?: number): readonly Compared[] {
	const result = compareDrafts(body, skirts, width === undefined ? undefined : { width });
	if (!result.ok) throw new Error(JSON.stringify(result.issues));
	return result.value;
}

test('Half and full circle side by side: hem, hem effort and zip as the check values have them', () => {
	// Waist seam 70 cm, 60 cm long: full hem 446.99 cm (circle geometry); half 70 + π·60 = 258.50.
	const [half, full] = compared([skirt, { ...skirt, share: 1, panels: 2 }]);
	expect(full!.told!.hemSweep).toBeCloseTo(4469.9, 1);
	expect(half!.told!.hemSweep).toBeCloseTo(2585.0, 1);
	expect(full!.apart!.hemSweep).toBeCloseTo(4469.91 - 2584.96, 1);
	// A turn of 2 cm: 25.13 and 12.57 cm (row 6). A narrow hem turned twice by half of it: half as much.
	const of = (one: Compared, finish: string) => one.told!.hem.find((effort) => effort.finish === finish)!;
	expect([of(full!, 'turned').surplus, of(half!, 'turned').surplus].map((mm) => Math.round(mm * 10) / 10)).toEqual([251.3, 125.7]);
	expect(of(full!, 'narrow').surplus).toBeCloseTo(125.66, 1);
	// 2t/(R − t) with R 711.41, t 20 (circle geometry).
	expect(of(full!, 'turned').fraction).toBeCloseTo(40 / 691.41, 5);
	// Opening ≥ 18.22 and 20.82 cm for a hip of 96 and 2 of ease (row 10): the next zips are 20 and 22 (shop lengths, from memory).
	expect([full!.told!.zip, half!.told!.zip]).toEqual([200, 220]);
});

test('What is otherwise is named by its path, and the first differs from nothing', () => {
	const [own, other, same] = compared([skirt, { ...skirt, share: 0.75, panels: 2, band: { kind: 'straight', depth: 50, underlap: 30, sits: 'above' } }, skirt]);
	expect([own!.chosen, other!.chosen, same!.chosen]).toEqual([[], ['skirt.share', 'skirt.panels', 'skirt.band.depth'], []]);
	expect([own!.apart, same!.apart]).toEqual([null, { hemSweep: 0, panelArea: 0, clothArea: 0 }]);
});

test('A half circle needs two cut hem radii along the cloth and a little more than one across', () => {
	const [half] = compared([skirt, skirt], 1400);
	const { cutHemRadius, panelCutArea, bandCutLength, bandCutDepth } = half!.draft!.figures;
	const { cloth } = half!.told!;
	// The straight edges carry 15 mm of allowance beyond the diameter: circle geometry.
	expect(cloth.along).toBeCloseTo(2 * cutHemRadius, 6);
	expect(cloth.across).toBeCloseTo(cutHemRadius + 15, 6);
	expect(cloth.area).toBeCloseTo(panelCutArea + bandCutLength * bandCutDepth, 3);
	expect(cloth.fits).toBe(true);
	expect(cloth.leastLength).toBeCloseTo(2 * cutHemRadius, 6);
});

test('Many panels take what their area takes over the width, and no cloth is made to fit that doesn’t', () => {
	const [six, wide] = compared([{ ...skirt, panels: 6 }, { ...skirt, share: 1, panels: 1 }].map((one) => ({ ...one, panels: Math.max(2, one.panels) })), 900);
	const { cloth } = six!.told!;
	expect(cloth.leastLength).toBeCloseTo(Math.max(cloth.along, cloth.area / 900), 9);
	// Half of a full circle, 2·(711.41 + 20) across its diameter: wider than 90 cm whichever way its middle lies along the grain.
	expect([wide!.told!.cloth.fits, wide!.told!.cloth.leastLength]).toEqual([false, null]);
	expect(compared([skirt, skirt])[0]!.told!.cloth).toMatchObject({ fits: null, leastLength: null });
});

test('A skirt that can’t be cut keeps its place, with what stands in the way', () => {
	const [, lapped, fine] = compared([skirt, { ...skirt, share: 2, panels: 1 }, { ...skirt, share: 0.25 }]);
	expect([lapped!.told, lapped!.draft, lapped!.apart]).toEqual([null, null, null]);
	expect(lapped!.obstacles[0]!.waysOut!.length).toBeGreaterThan(0);
	expect(fine!.told).not.toBeNull();
	// And where the first can't, nothing is measured against it.
	expect(compared([{ ...skirt, share: 2 }, skirt])[1]!.apart).toBeNull();
});

test('What isn’t fit to cut comes before what is thought about', () => {
	// Quarter, waist 70, hip 104, depth 20, ease 2: 101.42 < 106 fails (circle geometry).
	const result = compareDrafts({ waist: 690, hip: 1040, waistToHip: 200 }, [skirt, { ...skirt, share: 0.25 }]);
	if (!result.ok) throw new Error('refused');
	const checks = result.value[1]!.told!.checks;
	expect(checks[0]).toMatchObject({ code: 'hip-fit', severity: 'stop' });
	expect(checks.every(({ severity }) => severity === 'stop' || severity === 'caution')).toBe(true);
});

test('One skirt, five, or a cloth of no width are refused, and a body without a hip has no zip', () => {
	for (const count of [0, 1, 5]) {
		expect(compareDrafts(body, Array.from({ length: count }, () => skirt))).toEqual({ ok: false, issues: [{ code: 'number-out-of-range', path: 'skirts', expected: [2, 4], received: count, figures: { least: 2, most: 4 } }] });
	}
	for (const width of [0, -1, Number.NaN, Infinity]) expect(compareDrafts(body, [skirt, skirt], { width }).ok).toBe(false);
	const bare = compareDrafts({ waist: 690 }, [skirt, skirt]);
	if (!bare.ok) throw new Error('refused');
	expect(bare.value[0]!.told!.zip).toBeNull();
});

test('Any four skirts on any body are compared without a throw or a NaN', () => {
	const random = seeded(81);
	for (let i = 0; i < 150; i++) {
		const result = compareDrafts(ansurBody(random), [anySkirt(random), anySkirt(random), anySkirt(random), anySkirt(random)], { width: 900 + 600 * random() });
		expect(result.ok).toBe(true);
		const text = JSON.stringify(result, (_, value: unknown) => (typeof value === 'number' && Number.isNaN(value) ? 'not a number' : value));
		expect(text).not.toContain('not a number');
	}
});
