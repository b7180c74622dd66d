// What the draft tells back, check by check; the thresholds are the design's.
import { expect, test } from 'vitest';
import type { Body } from '../../src/lib/drafting/body.ts';
import { strideNeeds } from '../../src/lib/drafting/checks/stride.ts';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import { anySkirt, seeded } from './bodies.ts';

const skirt: Skirt = {
	style: 'flared', share: 0.5, length: 600, waistEase: 0, hipEase: 20, panels: 2, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 15,
	hemFinish: 'turned', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: null, allowances: { waist: 15, seam: 15 }
};
function draftOf(body: Body, choices: Partial<Skirt> = {}): Draft {
	const draft = draftSkirt(body, { ...skirt, ...choices });
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const check = (draft: Draft, code: string, about?: string) => draft.checks.find((one) => one.code === code && (about === undefined || one.about === about));

test('The hem is eased from 4 % and another finish is advised from 12 %, for the finish chosen', () => {
	// Full circle, 700 mm waist, 600 long: R = 671.408. Turned once by t: 2t / (R − t); twice by h/2: h / (R − h/2). Circle geometry.
	const severity = (hem: number, hemFinish: Skirt['hemFinish']) => check(draftOf({ waist: 700 }, { share: 1, hem, hemFinish }), 'hem-surplus')?.severity;
	// 2·13.16/(671.408 − 13.16) = 3.998 %; 2·13.17/… = 4.001 %; 2·38/633.4 = 11.999 %; 2·38.01/… = 12.002 %.
	expect([13.16, 13.17, 38, 38.01].map((hem) => severity(hem, 'turned'))).toEqual(['good', 'note', 'note', 'caution']);
	expect([26.32, 26.34, 76, 76.02].map((hem) => severity(hem, 'narrow'))).toEqual(['good', 'note', 'note', 'caution']);
});

test('The way out of a deep hem is the deepest that eases flat, to half a millimetre', () => {
	// R = 671.408: t = 0.04·R / 2.04 = 13.165, and twice that for a hem turned twice.
	const deepest = (hemFinish: Skirt['hemFinish']) => check(draftOf({ waist: 700 }, { share: 1, hem: 60, hemFinish }), 'hem-surplus')?.waysOut;
	expect(deepest('turned')).toEqual([{ path: 'skirt.hem', value: 13 }]);
	expect(deepest('narrow')).toEqual([{ path: 'skirt.hem', value: 26 }]);
});

test('The zip’s end is marked on both edges of its seam, and nowhere when there is none or it reaches the hem', () => {
	const marks = (body: Body, choices: Partial<Skirt> = {}) => draftOf(body, choices).pieces.flatMap(({ notches }) => notches).filter(({ marks }) => marks === 'zip end');
	// 220 of 560 mm.
	expect(marks({ waist: 700, hip: 960 })).toEqual([
		{ edge: 'first seam', at: 225 / 560, kind: 'single', marks: 'zip end', copy: 1 }, { edge: 'second seam', at: 1 - 225 / 560, kind: 'single', marks: 'zip end', copy: 2 }
	].map((notch) => ({ ...notch, at: expect.closeTo(notch.at, 12) })));
	expect(marks({ waist: 700 })).toEqual([]);
	expect(marks({ waist: 700, hip: 960 }, { length: 255 })).toEqual([]);
});

test('The waist is clipped to 5 mm from its stitch line, at most 15 mm apart', () => {
	// Half circle: the edge is θ·15 = 47.12 mm shorter. 700/15 = 46.7, so 47 clips, 700/47 = 14.894 mm apart and 15 − 5 = 10 deep.
	expect(check(draftOf({ waist: 700 }), 'waist-clip')?.figures).toMatchObject({ waistClip: expect.closeTo(47.124, 3), clips: 47, spacing: expect.closeTo(14.894, 3), depth: 10 });
	expect(check(draftOf({ waist: 700 }, { allowances: { waist: 3, seam: 15 } }), 'waist-clip')).toBeUndefined();
});

test('A step needs 110 cm at the knee and 150 at the ankle (from memory), and above the knee nothing', () => {
	expect([499, 500, 600, 775, 950, 1100].map(strideNeeds)).toEqual([undefined, 1100, 1100, 1300, 1500, 1500]);
	// A quarter circle on 60 cm: 600 + (π/2)·560 = 1479.6 round the hem.
	expect(check(draftOf({ waist: 600 }, { share: 0.25 }), 'stride')).toMatchObject({ severity: 'good', figures: { hemSweep: expect.closeTo(1479.6, 1), needed: 1100 } });
	// A tenth of a circle: 600 + 0.2π·560 = 951.9; least share (1100 − 600)/560/2π = 0.1421.
	expect(check(draftOf({ waist: 600 }, { share: 0.1 }), 'stride')).toMatchObject({ severity: 'caution', figures: { leastShare: expect.closeTo(0.1421, 4) } });
});

test('Without readings the draft says which it lacks, and assumes nothing', () => {
	const codes = (body: Body) => draftOf(body).checks.map(({ code }) => code).filter((code) => code.startsWith('hip'));
	expect(codes({ waist: 740 })).toEqual(['hip-missing']);
	expect(codes({ waist: 740, hip: 990 })).toEqual(['hip-depth-missing']);
	expect(codes({ waist: 740, hip: 990, waistToHip: 200 })).toEqual(['hip-fit']);
	expect(codes({ waist: 740, hip: 990, waistToHip: 570 })).toEqual(['hip-below-hem']);
	expect(draftOf({ waist: 740, hip: 990 }).figures.girthAtHip).toBeUndefined();
});

test('Without a hip nothing is said of the opening, its zip or the lining’s slit, and nothing is marked or left open', () => {
	const draft = draftOf({ waist: 740 }, { lining: { shorterBy: 25, share: null } });
	for (const name of ['openingBelowSeam', 'zipLength', 'zipEndBelowSeam', 'liningOpeningBelowSeam', 'girthAtHip']) expect(draft.figures).not.toHaveProperty(name);
	expect(draft.checks.map(({ code }) => code).filter((code) => /opening|^zip-longer|shop-zip/.test(code))).toEqual([]);
	expect(check(draft, 'hip-missing')?.severity).toBe('caution');
	// There is a zip all the same, and its allowance is looked at.
	expect(check(draft, 'zip-allowance')?.severity).toBe('good');
	expect(draft.pieces.flatMap(({ notches }) => notches).filter(({ marks }) => marks === 'zip end')).toEqual([]);
	expect(draft.seams.filter(({ name }) => name.endsWith('opening'))).toEqual([]);
});

test('A waist larger than the hip is noted, and takes the shortest zip where the waist seam lets the hip through', () => {
	const draft = draftOf({ waist: 1050, hip: 1000, waistToHip: 200 });
	expect(check(draft, 'waist-over-hip')?.severity).toBe('note');
	expect(check(draft, 'no-opening-needed')?.severity).toBe('note');
	// The shortest zip in the shops, and 5 mm for its top stop.
	expect(draft.figures).toMatchObject({ openingBelowSeam: 0, zipLength: 100, zipEndBelowSeam: 105 });
	expect(draftOf({ waist: 1080, hip: 1060 }, { zipSeries: 'in' }).figures).toMatchObject({ openingBelowSeam: 0, zipLength: 4 * 25.4, zipEndBelowSeam: 4 * 25.4 + 5 });
	const short = draftOf({ waist: 1080, hip: 1060 }, { length: 140 });
	expect(check(short, 'zip-longer-than-skirt')).toMatchObject({ severity: 'caution', waysOut: [{ path: 'skirt.length', value: 145 }] });
	expect(short.figures.zipEndBelowSeam).toBe(100);
});

test('An opening longer than the skirt stops; a zip longer than it is shortened; one longer than shops sell is cut from a roll', () => {
	// The opening for a hip of 98 through 70 cm on a half circle is 208.2 mm, and the zip 220, which ends 5 mm lower than it is long (opening.test.ts).
	const of = (skirtLength: number, body: Body = { waist: 700, hip: 960 }) => draftOf(body, { length: skirtLength + 40 });
	expect(check(of(208), 'opening-longer-than-skirt')?.severity).toBe('stop');
	expect(check(of(215), 'zip-longer-than-skirt')?.severity).toBe('caution');
	expect(of(215).figures.zipEndBelowSeam).toBe(215);
	expect(check(of(224), 'zip-longer-than-skirt')?.severity).toBe('caution');
	expect(check(of(225), 'opening')?.severity).toBe('good');
	expect(of(300).figures).toMatchObject({ zipLength: 220, zipEndBelowSeam: 225 });
	const long = of(900, { waist: 600, hip: 2000 });
	expect(check(long, 'no-shop-zip')?.severity).toBe('caution');
	expect(long.figures.zipLength).toBeGreaterThanOrEqual(long.figures.openingBelowSeam!);
	expect(long.figures.zipLength! % 10).toBe(0);
});

test('A lining is looked at for itself: how much shorter, round the hip, at a step, and its slit', () => {
	const body = { waist: 700, hip: 960, waistToHip: 200 };
	const lined = (choices: Partial<Skirt>) => draftOf(body, { lining: { shorterBy: 25, share: null }, ...choices });
	expect(check(lined({}), 'lining-shorter')?.severity).toBe('good');
	expect(check(lined({ lining: { shorterBy: 14, share: null } }), 'lining-shorter')?.severity).toBe('caution');
	expect(check(lined({}), 'lining-fit', 'hip')?.severity).toBe('good');
	expect(check(lined({ share: 0.2 }), 'lining-fit', 'hip')?.severity).toBe('stop');
	// 700 + 0.22π·535 = 1069.8 mm round the lining's hem, where 1100 is asked.
	expect(check(lined({ share: 0.11, lining: { shorterBy: 25, share: null } }), 'lining-fit', 'stride')?.severity).toBe('caution');
	expect(check(lined({ length: 260, lining: { shorterBy: 25, share: null } }), 'lining-opening')?.severity).toBe('stop');
	expect(check(lined({}), 'lining-opening')?.figures.opens).toBe(240);
	// None is needed, yet the lining is left open below the short zip: 105 + 15.
	expect(check(draftOf({ waist: 1050, hip: 1000 }, { lining: { shorterBy: 25, share: null } }), 'lining-opening')?.figures.opens).toBe(120);
	expect(draftOf(body).checks.some(({ code }) => code.startsWith('lining'))).toBe(false);
});

test('A length that is hardly ever worn is asked about', () => {
	const severity = (length: number) => check(draftOf({ waist: 700 }, { length }), 'length-plausible')?.severity;
	expect([249, 250, 1150, 1151].map(severity)).toEqual(['caution', 'good', 'good', 'caution']);
});

test('The draft is for woven cloth, and always says so', () => {
	expect(check(draftOf({ waist: 700 }), 'woven-cloth')?.severity).toBe('note');
});

test('Grain, fold and inner lines lie on their piece', () => {
	const random = seeded(81);
	for (let i = 0; i < 500; i++) {
		const draft = draftSkirt({ waist: 740, hip: 990 }, anySkirt(random));
		if (!draft.ok) continue;
		const { figures, pieces } = draft.value;
		for (const { name, grain, fold, lines, stitch, cut } of pieces) {
			if (name.startsWith('band')) {
				const [length, depth] = stitch.edges[1]!.end;
				for (const [x, y] of [grain.from, grain.to, ...(lines ?? []).flatMap(({ from, to }) => [from, to])]) expect(x >= 0 && x <= length && y >= 0 && y <= depth).toBe(true);
				expect(lines?.[0]?.from[1]).toBe(depth / 2);
				continue;
			}
			const hem = Math.hypot(...stitch.edges[1]!.end);
			for (const end of [grain.from, grain.to]) {
				const inside = Math.hypot(...end) > figures.waistRadius && Math.hypot(...end) < hem && Math.abs(Math.atan2(end[1], end[0])) <= figures.panelAngle / 2;
				if (!inside) expect([name, end, figures]).toBe('inside');
			}
			if (fold) expect([fold.from[0], fold.to[0]]).toEqual([expect.closeTo(Math.hypot(...cut.edges[2]!.end), 6), expect.closeTo(Math.hypot(...cut.edges[1]!.end), 6)]);
		}
	}
});
