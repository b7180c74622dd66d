import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { formatLength, mmPer } from '../../src/lib/drafting/length.ts';
import { draftPleated } from '../../src/lib/drafting/pleated/draft.ts';
import type { AnyDraft } from '../../src/lib/drafting/style.ts';
import { draftTiered } from '../../src/lib/drafting/tiered/draft.ts';
import { workingNames, workingOf, workingsOf } from '../../src/lib/lesson/flared-working.ts';
import { anyWorkingsOf } from '../../src/lib/lesson/style-working.ts';
import type { Working } from '../../src/lib/lesson/working.ts';
import { anySkirt, anyStyle, halfCircle, nhanesBody, seeded } from '../drafting/bodies.ts';
import { press, pressWithProductsFirst } from './hand-calculator.ts';

const units = ['cm', 'in'] as const;
type Unit = (typeof units)[number];
/** Half a mark of the ruler: 1 mm, or 1/8 in. */
const half = { cm: 0.5, in: 25.4 / 16 } as const;

function draftOf(body: { waist: number; hip?: number; waistToHip?: number }, skirt: Draft['skirt']): Draft {
	const draft = draftSkirt(body, skirt);
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const sum = ({ steps }: Working): readonly string[] => steps.map(({ operands, result }) => `${operands.map(({ written }) => written).join(' ')} = ${result}`);
const sums = (name: string, draft: Draft, unit: Unit) => sum(workingOf(name, draft, unit)!);

/** Every drawn body and skirt that can be cut, readings as a tape gives them: whole millimetres or sixteenths, or a mean of two. */
const drafts: readonly Draft[] = (() => {
	const random = seeded(5);
	return Array.from({ length: 900 }, (_, i) => {
		const drawn = nhanesBody(random);
		const grain = [0.5, 25.4 / 16, 25.4 / 32, 0][i % 4]!;
		const taped = (mm: number): number => (grain === 0 ? mm : Math.round(mm / grain) * grain);
		const body = { waist: taped(drawn.waist), hip: taped(drawn.hip), waistToHip: taped(drawn.waistToHip) };
		const wild = i % 2 ? anyStyle(random, body.waist) : anySkirt(random);
		// Three in four choose round lengths, as people do.
		const skirt = JSON.parse(JSON.stringify(wild), (key, value: unknown) => (typeof value === 'number' && !['share', 'panels'].includes(key) && !/^\d+$/.test(key) ? taped(value) : value)) as Draft['skirt'];
		return draftSkirt(i % 7 === 0 ? { waist: body.waist } : body, skirt);
	}).flatMap((draft) => (draft.ok ? [draft.value] : []));
})();

/** Halfway between two marks, either is right. */
const halfway = (mm: number, unit: Unit): boolean => Math.abs(((mm / half[unit] / 2) % 1) - 0.5) < 1e-5;

/** What any working must hold, whatever the style. */
function holds(working: Working, unit: Unit, results: ReadonlyMap<string, string>): void {
	const { steps, inputs, mm, finer, proof, meets, name } = working;
	const per = mmPer[unit];
	const fail = (why: string) => expect.soft(why, `${name}: ${sum(working).join('; ')}, ${mm / per} ${unit}`).toBe('');
	const before: string[] = [];
	for (const { operands, result } of steps) {
		const written = operands.map((operand) => operand.written);
		if (Number(press(written)) !== Number(result)) fail(`${written.join(' ')} comes to ${press(written)}`);
		const plain = !written.some((text) => text === '√' || text === 'cos⁻¹' || text === 'sin');
		if (plain && Math.abs(pressWithProductsFirst(written) - Number(press(written))) > 0.005001) fail('products first come to something else');
		for (const { written: text, is } of operands) {
			const input = inputs.find((one) => one.is === is);
			if (is !== undefined && input && input.written !== text) fail(`${is} is written ${text} and ${input.written}`);
		}
		before.push(result);
	}
	for (const input of inputs) {
		const former = results.get(input.name);
		if (input.worked && former !== undefined && former !== input.written) fail(`${input.is} came to ${former} and goes on as ${input.written}`);
		if (!input.worked && Math.abs(Number(input.written) * per - input.mm) > (unit === 'in' ? 0.0127 : 0.05) + 1e-6) fail(`${input.is} is kept as ${input.mm}`);
	}
	const last = before.at(-1);
	if (last === undefined) return;
	const off = proof ? Math.abs(Number(last) - Number(meets!.written)) * per : Math.abs(Number(last) * per - mm);
	if (finer === null && off > half[unit] + 1e-6) fail(`it is ${off} mm out and doesn’t say so`);
	if (finer === null && !proof && off > 1e-6 && !halfway(mm, unit) && formatLength(Number(last) * per, unit) !== formatLength(mm, unit)) fail('it leads to another mark and doesn’t say so');
	if (finer !== null && formatLength(Number(finer) * per, unit) !== formatLength(mm, unit)) fail(`the finer number ${finer} leads to another mark`);
}

test('Any flared skirt can be followed with a calculator from the readings to the ruler, in both units', () => {
	expect(drafts.length).toBeGreaterThan(700);
	const met = new Set<string>();
	for (const draft of drafts) {
		for (const unit of units) {
			const workings = workingsOf(draft, unit);
			const results = new Map(workings.flatMap(({ name, steps, proof }) => (steps.length > 0 && !proof ? [[name, steps.at(-1)!.result] as const] : [])));
			for (const working of workings) {
				holds(working, unit, results);
				met.add(working.name);
				expect(working.formula).not.toMatch(/undefined|NaN|^$/);
			}
			// What goes on as a result has a row to come from.
			for (const input of workings.flatMap(({ inputs }) => inputs)) if (input.worked) expect(results.get(input.name)).toBe(input.written);
		}
	}
	expect([...met].sort()).toEqual([...workingNames].sort());
});

test('On a half circle the finer number stands in under one row in twenty-five', () => {
	const random = seeded(3);
	for (const unit of units) {
		// Readings as they are taken: half centimetres, or eighths of an inch. Inches have allowances in eighths.
		const grain = unit === 'cm' ? 5 : 25.4 / 8;
		const inInches = { ...halfCircle, length: 24 * 25.4, waistEase: 9.525, band: { kind: 'straight', depth: 38.1, underlap: 31.75, sits: 'above' }, hem: 15.875, allowances: { waist: 15.875, seam: 15.875 } } as const;
		const rows = Array.from({ length: 300 }, () => nhanesBody(random)).flatMap(({ waist, hip, waistToHip }) => {
			const [w, h, d] = [waist, hip, waistToHip].map((mm) => Math.round(mm / grain) * grain) as [number, number, number];
			return workingsOf(draftOf({ waist: w, hip: h, waistToHip: d }, unit === 'cm' ? halfCircle : inInches), unit);
		});
		expect(rows.filter(({ finer }) => finer !== null).length / rows.length).toBeLessThan(0.04);
	}
});

test('A tiered and a pleated skirt are followed the same way', () => {
	const random = seeded(8);
	const pick = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
	const between = (least: number, most: number): number => Math.round(least + (most - least) * random());
	let followed = 0;
	for (let i = 0; i < 300; i++) {
		const { waist, hip, waistToHip } = nhanesBody(random);
		const body = { waist: Math.round(waist), hip: Math.round(hip), waistToHip: Math.round(waistToHip) };
		const tiers = between(1, 6);
		const perTier = (of: () => number) => Object.fromEntries(Array.from({ length: tiers }, (_, tier) => [tier + 1, of()]));
		const shared = {
			length: between(500, 1000), waistEase: between(0, 30), hipEase: between(0, 60), hem: between(10, 40), hemFinish: 'turned', zipAt: 'centreBack', zipSeries: pick<'cm' | 'in'>(['cm', 'in']),
			clothWidth: between(900, 1500), allowances: { waist: 15, seam: between(10, 20) }, band: { kind: 'straight', depth: between(20, 50), underlap: 30 }
		} as const;
		const drawn: readonly ReturnType<typeof draftTiered | typeof draftPleated>[] = [
			draftTiered(body, {
				...shared, style: 'tiered', tiers, cloth: 'medium', ratios: perTier(() => between(120, 250) / 100), lengths: i % 2 ? { kind: 'equal' } : { kind: 'growing', by: 1 + between(0, 8) / 20 },
				band: i % 3 ? shared.band : { kind: 'elastic', depth: 40, underlap: 0, elastic: 30 }
			}),
			draftPleated(body, { ...shared, style: 'pleated', kind: pick<'knife' | 'box'>(['knife', 'box']), pleats: between(6, 40), depth: between(15, 50), stitchedTo: pick<'hip' | 'waist'>(['hip', 'waist']) })
		];
		for (const draft of drawn) {
			if (!draft.ok) continue;
			followed++;
			for (const unit of units) {
				const workings = anyWorkingsOf(draft.value as AnyDraft, unit);
				const results = new Map(workings.flatMap(({ name, steps }) => (steps.length > 0 ? [[name, steps.at(-1)!.result] as const] : [])));
				for (const working of workings) holds(working, unit, results);
			}
		}
	}
	expect(followed).toBeGreaterThan(300);
});

test('A waist seam of 30 in on a half circle is worked 30 ÷ 3.14 = 9.55, and 3/8 in is taken off as 0.375', () => {
	// 30 ÷ 3.14 = 9.55 and 9.55 + 16 + 1/2 = 26.05, marked at 26 (common practice, no source).
	const draft = draftOf({ waist: 30 * 25.4 }, { ...halfCircle, waistEase: 0, length: 19 * 25.4, hem: 12.7, band: { kind: 'straight', depth: 76.2, underlap: 25.4, sits: 'above' }, allowances: { waist: 9.525, seam: 15.875 } });
	expect(sums('waistRadius', draft, 'in')).toEqual(['30 ÷ 3.14 = 9.55']);
	expect(sums('cutWaistRadius', draft, 'in')).toEqual(['9.55 − 0.375 = 9.175']);
	expect(sums('skirtLength', draft, 'in')).toEqual(['19 − 3 = 16']);
	expect(sums('hemRadius', draft, 'in')).toEqual(['9.55 + 16 = 25.55']);
	expect(sums('cutHemRadius', draft, 'in')).toEqual(['25.55 + 0.5 = 26.05']);
	expect(formatLength(workingOf('cutHemRadius', draft, 'in')!.mm, 'in')).toBe('26 in');
	expect(workingOf('waistRadius', draft, 'in')!.formula).toBe('waist seam ÷ 3.14');
});

test('What is kept in millimetres is written to a thousandth of an inch: 10 mm is 0.394', () => {
	// 10 ÷ 25.4 = 0.3937, 740 ÷ 25.4 = 29.1339: arithmetic
	const draft = draftOf({ waist: 740 }, { ...halfCircle, allowances: { waist: 10, seam: 15 } });
	expect(workingOf('cutWaistRadius', draft, 'in')!.inputs.map(({ is, written, worked }) => [is, written, worked])).toEqual([['waist radius', '9.4', true], ['allowance', '0.394', false]]);
	expect(sums('waistSeamGirth', draft, 'in')).toEqual(['29.134 + 0.394 = 29.528']);
});

test('3.14 gives way to 3.1416 where the ruler would show it', () => {
	// 76.6 ÷ 3.14 = 24.395, marked at 24.4; 76.6 ÷ π = 24.383, marked so too. Round the hem 56 × 3.14 + 76.6 = 252.44 and with π 252.53: 252.4 and 252.5.
	const draft = draftOf({ waist: 756 }, halfCircle);
	expect(sums('waistRadius', draft, 'cm')).toEqual(['76.6 ÷ 3.14 = 24.39']);
	expect(sums('hemSweep', draft, 'cm')).toEqual(['56.0 × 3.1416 + 76.6 = 252.53']);
	// 75.22 ÷ 3.14 = 23.955 would be marked at 24.0; 75.22 ÷ π = 23.943 is marked at 23.9.
	expect(sums('waistRadius', draftOf({ waist: 742.2 }, halfCircle), 'cm')).toEqual(['75.22 ÷ 3.1416 = 23.94']);
	expect(sums('hemRadius', draftOf({ waist: 742.2 }, halfCircle), 'cm')).toEqual(['23.94 + 56.0 = 79.94']);
});

test('The least opening is proved by its loop: tangents and waist arc reach round the hip', () => {
	// Check value: waist seam 70, hip 96 and 2 on a half circle, 20.82 cm (shortest path; test/drafting/opening.test.ts).
	const draft = draftOf({ waist: 700, hip: 960 }, { ...halfCircle, waistEase: 0 });
	expect(sums('openingBelowSeam', draft, 'cm')).toEqual([
		'22.29 + 20.82 = 43.11', '43.11 + 22.29 = 65.4', '65.4 × 20.82 √ = 36.9', '22.29 ÷ 43.11 cos⁻¹ = 58.87', '58.87 × 22.29 × 3.1416 ÷ 90 = 45.8', '70.0 − 45.8 = 24.2', '36.9 × 2 + 24.2 = 98.0'
	]);
	expect(workingOf('openingBelowSeam', draft, 'cm')).toMatchObject({ proof: true, finer: null, meets: { is: 'hip with ease', written: '98.0' } });
	// A shallow skirt's loop is a chord, 2q·sin(θ/2): a tenth of a circle turns through 36°, half of it 18.
	const shallow = workingOf('openingBelowSeam', draftOf({ waist: 700, hip: 960 }, { ...halfCircle, share: 0.1 }), 'cm')!;
	expect(shallow.steps[1]!.operands.slice(0, 2).map(({ written }) => written)).toEqual(['18', 'sin']);
});

test('The zip to buy is the next in the shops, with the two before it', () => {
	const draft = draftOf({ waist: 700, hip: 960 }, { ...halfCircle, waistEase: 0 });
	expect(workingOf('zipLength', draft, 'cm')).toMatchObject({ mm: 220, steps: [], among: [180, 200, 220], formula: 'the next in the shops that is as long as the opening' });
	expect(sums('zipEndBelowSeam', draft, 'cm')).toEqual(['22.0 + 0.5 = 22.5']);
	// No opening is needed; the shortest zip is bought all the same.
	const wide = draftOf({ waist: 700, hip: 600 }, halfCircle);
	expect(workingOf('openingBelowSeam', wide, 'cm')).toBeNull();
	expect(workingOf('zipLength', wide, 'cm')).toMatchObject({ mm: 100, among: [100], formula: 'the shortest in the shops: no opening is needed' });
	// Beyond the shops' longest: 22 in is the last.
	const long = draftOf({ waist: 500, hip: 1700 }, { ...halfCircle, zipSeries: 'in' });
	expect(workingOf('zipLength', long, 'in')!.formula).toBe('longer than the shops’ longest: cut from a roll');
});

test('A zip that is shortened has no sum, and without a hip there is no row', () => {
	const short = draftOf({ waist: 700, hip: 960 }, { ...halfCircle, waistEase: 0, length: 255 });
	expect(workingOf('zipEndBelowSeam', short, 'cm')).toBeNull();
	for (const name of ['hipWithEase', 'girthAtHip', 'openingBelowSeam', 'zipLength', 'zipEndBelowSeam']) expect(workingOf(name, draftOf({ waist: 700 }, halfCircle), 'cm')).toBeNull();
});

test('Bands, facings and linings are worked too', () => {
	// Contour band: half a sector, top 70, depth 4, lower edge 82.57 (circle geometry): 70 × 4 ÷ 12.57 = 22.28.
	const contour = draftOf({ waist: 700, hip: 960 }, { ...halfCircle, waistEase: 0, band: { kind: 'contour', depth: 40, underlap: 30, sits: 'below', lower: 825.7 }, allowances: { waist: 15, seam: 15 } });
	expect(sums('bandTopRadius', contour, 'cm')).toEqual(['82.57 − 70.0 = 12.57', '70.0 × 4.0 ÷ 12.57 = 22.28']);
	expect(sums('bandLowRadius', contour, 'cm')).toEqual(['22.28 + 4.0 = 26.28']);
	expect(workingOf('waistSeamGirth', contour, 'cm')).toBeNull();
	// Elastic: 0.9 × 70 + 2 = 65; the casing goes over the hip, 96 + 2 = 98.
	const elastic = draftOf({ waist: 700, hip: 960 }, { ...halfCircle, waistEase: 0, closure: 'none', band: { kind: 'elastic', depth: 40, underlap: 0, sits: 'above', elastic: 30 } });
	expect(sums('elasticLength', elastic, 'cm')).toEqual(['70.0 × 0.9 + 2.0 = 65.0']);
	expect(sums('waistSeamGirth', elastic, 'cm')).toEqual(['70.0 + 0.0 = 70.0', '96.0 + 2.0 = 98.0']);
	// Girth at 20 below: 70 + 20 × 3.14 = 132.8, and with π 132.83, against 98 (circle geometry).
	expect(workingOf('girthAtHip', draftOf({ waist: 700, hip: 960, waistToHip: 200 }, { ...halfCircle, waistEase: 0 }), 'cm')).toMatchObject({ meets: { written: '98.0' }, steps: [{ result: '132.8' }] });
	// A lining of a quarter circle: 75 ÷ 1.57 = 47.77.
	const lined = draftOf({ waist: 740, hip: 960 }, { ...halfCircle, lining: { share: 0.25, shorterBy: 25 } });
	expect(workingOf('liningWaistRadius', lined, 'cm')!.steps[0]!.operands[0]).toEqual({ written: '75.0', is: 'waist seam' });
	// A hem of 1.5 turned once eases in 1.5 × 2 × 3.14 = 9.42 (circle geometry).
	expect(sums('hemToEase', draftOf({ waist: 740 }, { ...halfCircle, hemFinish: 'turned' }), 'cm')).toEqual(['1.5 × 2 × 3.14 = 9.42']);
});
