// Lengths that differ round the body, a waist that dips, and hem corners that are folded back.
import { expect, test } from 'vitest';
import type { Body } from '../../src/lib/drafting/body.ts';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { foldBackCorners } from '../../src/lib/drafting/geometry/fold-back.ts';
import { area, lengthOf } from '../../src/lib/drafting/geometry/measure.ts';
import { offset } from '../../src/lib/drafting/geometry/offset.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import { halfCircle } from './bodies.ts';
import { walked } from './measured.ts';

const inch = 25.4;
const body: Body = { waist: 740, hip: 990, waistToHip: 200 };
const drafted = (choices: Partial<Skirt>, of = body) => draftSkirt(of, { ...halfCircle, ...choices });
function draftOf(choices: Partial<Skirt>, of = body): Draft {
	const draft = drafted(choices, of);
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const four = (front: number, side: number, back: number) => ({ front, sideLeft: side, sideRight: side, back });
const between = (draft: Draft) => draft.checks.find(({ code }) => code === 'lengths-between');
const panels = ({ pieces }: Draft) => pieces.filter(({ name }) => /^(panel|front|back)/.test(name));

// The formula (F+2S+B)/4 + (F−B)/2 cos t + (F−2S+B)/4 cos 2t by hand, F 90, S 100, B 70: it turns where cos t = 1/4, at 90 + 10/4 + 10 − 20/16 = 101.25.
test('Lengths of 90, 100 and 70 cm come to 101.25 between front and side, and the draft says so', () => {
	const draft = draftOf({ lengths: four(900, 1000, 700), panels: 2 });
	expect(between(draft)).toMatchObject({ severity: 'note', figures: { shortest: 700, longest: 1000, extreme: expect.closeTo(1012.5, 6), beyond: expect.closeTo(12.5, 6), place: expect.closeTo(Math.acos(0.25) / (2 * Math.PI), 6) } });
	expect(draft.figures.longestLength).toBeCloseTo(1012.5 - 40, 6);
	expect(draft.figures.shortestLength).toBeCloseTo(660, 6);
});

test('A rise that goes one way round runs beyond none of its lengths', () => {
	// |F − B| = 30 is not under 2|F − 2S + B| = 20.
	expect(between(draftOf({ lengths: four(600, 610, 630) }))).toMatchObject({ severity: 'good', figures: { extreme: 630 } });
	expect(between(draftOf({}))).toBeUndefined();
});

// The Perfect Dressmaking System, 1914: lengths of 38, 39 and 39½ in; the rise of 1½ in is made at the waist, the hem is level.
test('Lengths of 38, 39 and 39½ in make a waist that rises 1½ in from front to back over a level hem', () => {
	const lengths = four(38 * inch, 39 * inch, 39.5 * inch);
	const { figures, pieces } = draftOf({ lengths, riseAt: 'waist', panels: 2, zipAt: 'leftSide' });
	expect((figures.waistRadiusFront! - figures.waistRadiusBack!) / inch).toBeCloseTo(1.5, 9);
	const radii = [figures.hemRadiusFront, figures.hemRadiusSideLeft, figures.hemRadiusBack];
	for (const radius of radii) expect(radius).toBeCloseTo(figures.hemRadius, 6);
	// A level hem is one true arc in each panel.
	for (const { stitch } of pieces.filter(({ name }) => name === 'front' || name === 'back')) expect(stitch.edges.filter(({ name }) => name === 'hem')).toHaveLength(1);
	expect((figures.lengthBack! - figures.lengthFront!) / inch).toBeCloseTo(1.5, 9);
});

test('The same lengths made at the hem leave the waist an arc', () => {
	const lengths = four(38 * inch, 39 * inch, 39.5 * inch);
	const { figures, pieces } = draftOf({ lengths, panels: 2, zipAt: 'leftSide' });
	expect(figures.waistRadiusFront).toBe(figures.waistRadius);
	expect(figures.waistRadius).toBe(draftOf({}).figures.waistRadius);
	for (const { stitch } of pieces.filter(({ name }) => name === 'front' || name === 'back')) expect(stitch.edges.filter(({ name }) => name === 'waist')).toHaveLength(1);
	expect((figures.hemRadiusBack! - figures.hemRadiusFront!) / inch).toBeCloseTo(1.5, 9);
});

test.each([
	['the difference at the waist', { lengths: four(600, 620, 660), riseAt: 'waist' }],
	['a dip at centre back', { waistDip: { front: 0, back: 20 } }],
	['dips at both centres', { waistDip: { front: 30, back: 50 }, share: 0.9 }],
	['both', { lengths: { sideLeft: 610, sideRight: 590 }, riseAt: 'waist', waistDip: { front: 5, back: 15 }, share: 0.25 }]
] satisfies readonly (readonly [string, Partial<Skirt>])[])('With %s the waist still measures waist and ease, and every panel has its share of it', (_, choices) => {
	for (const count of [1, 2, 4, 7]) {
		const draft = draftOf({ ...choices, panels: count });
		// 740 + 10, in equal parts, to a hundredth of a millimetre.
		for (const { stitch } of panels(draft)) expect(Math.abs(walked(stitch, 'waist') - 750 / count)).toBeLessThan(0.01);
		expect(panels(draft)).toHaveLength(count);
		// The angles of all panels are still the whole sweep.
		const swept = panels(draft).reduce((sum, { stitch }) => sum + 2 * Math.abs(Math.atan2(stitch.start[1], stitch.start[0])), 0);
		if (count > 2) expect(swept).toBeCloseTo(draft.figures.sweepAngle, 6);
	}
});

test('A dip takes its depth off the length at the centre and leaves the hem where it was', () => {
	const { figures } = draftOf({ waistDip: { front: 5, back: 20 } });
	expect([figures.lengthFront, figures.lengthSideLeft, figures.lengthBack]).toEqual([expect.closeTo(555, 9), expect.closeTo(560, 9), expect.closeTo(540, 9)]);
	for (const radius of [figures.hemRadiusFront, figures.hemRadiusSideLeft, figures.hemRadiusBack]) expect(radius).toBeCloseTo(figures.hemRadius, 6);
});

test('Lengths that are all alike draw what the one length draws', () => {
	for (const choices of [{}, { panels: 5 }, { panels: 2, zipAt: 'leftSide', hemFinish: 'faced', lining: { shorterBy: 25, share: 0.4 } }, { share: 1, closure: 'none', waistEase: 270 }] satisfies readonly Partial<Skirt>[]) {
		const [plain, named] = [draftOf(choices), draftOf({ ...choices, lengths: four(600, 600, 600) })];
		for (const [name, figure] of Object.entries(plain.figures)) expect([name, named.figures[name as keyof Draft['figures']]]).toEqual([name, expect.closeTo(figure, 6)]);
		expect(named.checks.filter(({ code }) => code !== 'lengths-between').map(({ code, severity }) => [code, severity])).toEqual(plain.checks.map(({ code, severity }) => [code, severity]));
	}
});

test('A length that isn’t named is the finished length', () => {
	const { figures } = draftOf({ lengths: { back: 640 } });
	expect([figures.lengthFront, figures.lengthSideLeft, figures.lengthSideRight, figures.lengthBack]).toEqual([560, 560, 560, 600].map((mm) => expect.closeTo(mm, 9)));
});

test('Panels of an uneven skirt are pieces of their own, and lie on the fold only where both sides are alike', () => {
	const told = (choices: Partial<Skirt>) => panels(draftOf({ lengths: four(600, 610, 630), ...choices })).map(({ name, count, fold }) => [name, count, fold?.name]);
	expect(told({ panels: 1 })).toEqual([['panel', 1, 'centre front']]);
	expect(told({ panels: 2, zipAt: 'leftSide' })).toEqual([['back', 1, 'centre back'], ['front', 1, 'centre front']]);
	expect(told({ panels: 4 })).toEqual([['back right', 1, undefined], ['front right', 1, undefined], ['front left', 1, undefined], ['back left', 1, undefined]]);
	expect(told({ panels: 3 })).toEqual([['panel 1', 1, undefined], ['panel 2', 1, 'centre front'], ['panel 3', 1, undefined]]);
	expect(told({ panels: 2, zipAt: 'leftSide', lengths: { sideLeft: 605 } })).toEqual([['back', 1, undefined], ['front', 1, undefined]]);
});

test('Where a front and a back of unequal width meet, the sides are as long as was said', () => {
	const draft = draftOf({ panels: 2, zipAt: 'leftSide', panelShares: [0.46, 0.54], lengths: { front: 600, sideLeft: 618, sideRight: 612, back: 640 } });
	const back = draft.pieces.find(({ name }) => name === 'back')!;
	expect(lengthOf(back.stitch, 'left side')).toBeCloseTo(618 - 40, 6);
	expect(lengthOf(back.stitch, 'right side')).toBeCloseTo(612 - 40, 6);
});

test('A lining follows, shorter everywhere by what was asked, also with less flare', () => {
	const draft = draftOf({ panels: 2, zipAt: 'leftSide', lengths: four(600, 612, 640), lining: { shorterBy: 25, share: 0.4 } });
	const side = (name: string) => lengthOf(draft.pieces.find((piece) => piece.name === name)!.stitch, 'right side');
	expect(side('front') - side('lining front')).toBeCloseTo(25, 6);
	expect(side('back') - side('lining back')).toBeCloseTo(25, 6);
	// At centre back, along the fold, which runs on through the hem.
	expect(draft.pieces.find(({ name }) => name === 'lining back')!.fold!.to[0] - 15 - draft.figures.liningWaistRadius!).toBeCloseTo(640 - 40 - 25, 6);
});

test('An uneven skirt that can’t be cut is refused with a way on that works', () => {
	const steep = drafted({ lengths: four(500, 700, 500), riseAt: 'waist', share: 0.75 });
	expect(steep.ok ? [] : steep.issues.map(({ code, waysOut = [] }) => [code, waysOut[0]])).toEqual([['waist-steep', { path: 'skirt.riseAt', value: 'hem' }]]);
	const slanted = drafted({ lengths: four(300, 500, 300), share: 0.25, panels: 4, hemFinish: 'turned', hemCorner: 'foldedBack', hem: 60 });
	expect(slanted.ok ? [] : slanted.issues.map(({ code, waysOut = [] }) => [code, waysOut[0]])).toEqual([['hem-corner-no-room', { path: 'skirt.hemCorner', value: 'mitred' }]]);
	const crossing = drafted({ lengths: four(900, 500, 900), share: 0.1, panels: 12, hem: 60 });
	expect(crossing.ok ? [] : crossing.issues.map(({ code, waysOut = [] }) => [code, waysOut[0]])).toEqual([['uneven-no-room', { path: 'skirt.hem', value: 10 }]]);
	const gone = drafted({ lengths: { back: 40 } });
	expect(gone.ok ? [] : gone.issues.map(({ code, path }) => [code, path])).toEqual([['band-deeper-than-length', 'skirt.lengths.back']]);
});

test('A turned hem’s corners are folded back on wish: the pieces change, the figures don’t', () => {
	for (const uneven of [{}, { lengths: four(600, 615, 640) }]) {
		const choices: Partial<Skirt> = { ...uneven, panels: 4, share: 0.75, hemFinish: 'turned', hem: 40 };
		const [mitred, folded] = [draftOf(choices), draftOf({ ...choices, hemCorner: 'foldedBack' })];
		expect(folded.figures).toEqual(mitred.figures);
		folded.pieces.forEach((piece, i) => {
			const plain = mitred.pieces[i]!;
			expect(piece.stitch).toEqual(plain.stitch);
			if (piece.name.startsWith('band')) expect(piece.cut).toEqual(plain.cut);
			else {
				expect(piece.cut).toEqual(foldBackCorners(plain.stitch, plain.cut, 'hem', 40));
				expect(area(piece.cut)).not.toBeCloseTo(area(plain.cut), 3);
			}
		});
	}
	expect(draftOf({ hemFinish: 'narrow', hemCorner: 'foldedBack' }).pieces).toEqual(draftOf({ hemFinish: 'narrow' }).pieces);
});

test('An allowance makes an uneven edge as much longer as an arc: by the sweep times its width', () => {
	const { figures, pieces } = draftOf({ lengths: four(600, 615, 640), allowances: { waist: 15, seam: 0 }, hem: 20 });
	const [panel] = pieces;
	const cut = offset(panel!.stitch, ({ name }) => (name === 'hem' ? 20 : 0))!;
	// Level across the seam, so the corners take nothing; plane geometry.
	expect(lengthOf(cut, 'hem') - lengthOf(panel!.stitch, 'hem')).toBeCloseTo(figures.sweepAngle * 20, 6);
	expect(figures.cutHemRadius - figures.hemRadius).toBeCloseTo(20, 9);
});

const read = (skirt: object) => checkInput({ unit: 'cm', body: { waist: 74 }, skirt: { share: 0.5, length: 60, ...skirt } });

test('Lengths are read front, side and back, or each side by itself', () => {
	const lengths = (given: object) => { const input = read({ lengths: given }); return input.ok ? input.value.skirt.lengths : input.issues.map(({ code, path }) => [code, path]); };
	expect(lengths({ front: 60, side: 61, back: '63 cm' })).toEqual(four(600, 610, 630));
	expect(lengths({ side: 61, sideLeft: 62 })).toEqual({ sideLeft: 620, sideRight: 610 });
	expect(lengths({})).toBeUndefined();
	expect(lengths({ front: -1, hem: 3 })).toEqual([['length-negative', 'skirt.lengths.front'], ['unknown-field', 'skirt.lengths.hem']]);
	expect(lengths({ back: 630 })).toEqual([['length-out-of-range', 'skirt.lengths.back']]);
});

test('What isn’t said leaves no trace, so that an old input reads as it always did', () => {
	for (const skirt of [{}, { riseAt: 'waist' }, { waistDip: { front: 0 } }, { hemCorner: 'mitred', riseAt: 'hem', lengths: {} }]) {
		expect(read(skirt)).toEqual(read({}));
	}
	const input = read({ waistDip: { back: 1.5 }, hemCorner: 'foldedBack', lengths: { back: 62 }, riseAt: 'waist' });
	expect(input.ok && input.value.skirt).toMatchObject({ waistDip: { front: 0, back: 15 }, hemCorner: 'foldedBack', lengths: { back: 620 }, riseAt: 'waist' });
});
