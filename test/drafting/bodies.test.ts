import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { area } from '../../src/lib/drafting/geometry/measure.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import { ansurBody, anySkirt, anyStyle, nhanesBody, seeded, type Random } from './bodies.ts';
import { surveyed, walked } from './measured.ts';
import { bent, bodies, both, casesOf, draftsOf, expectPairsMatch, expectSameInEveryUnit, expectSound, fewer, inUnitOf, near, takeAllWaysOn, takeAllWaysOut, type Case } from './sound.ts';

const cases = (count: number, seed: number, chosen: (random: Random, waist: number) => Skirt = anySkirt) => casesOf(count, seed, chosen);
const drafted = (count: number, seed: number, chosen?: (random: Random, waist: number) => Skirt): Iterable<Draft> => draftsOf(cases(count, seed, chosen), draftSkirt);

test('The sampled bodies have the means of the surveys they are drawn from', () => {
	const random = seeded(7);
	const drawn = Array.from({ length: 20000 }, () => ansurBody(random));
	const mean = (of: (body: ReturnType<typeof ansurBody>) => number) => drawn.reduce((sum, body) => sum + of(body), 0) / drawn.length;
	// ANSUR II 2012: means of ln waist and ln hip (cm) and of waist to hip.
	expect(mean(({ waist }) => Math.log(waist / 10))).toBeCloseTo(4.4488, 2);
	expect(mean(({ hip }) => Math.log(hip / 10))).toBeCloseTo(4.6235, 2);
	expect(mean(({ waistToHip }) => waistToHip / 10)).toBeCloseTo(19.22, 1);
	expect(mean(({ waistToFloor }) => waistToFloor / 10)).toBeCloseTo(102.6, 1);
	// 0.9 % of them have a waist over the hip, says the survey; the normal model gives near that.
	expect(drawn.filter(({ waist, hip }) => waist > hip).length / drawn.length).toBeLessThan(0.02);
});

test('Every figure agrees with the length measured on the outlines to 0.01 mm', () => {
	let looked = 0;
	for (const { figures, pieces, skirt } of drafted(bodies, 1)) {
		looked++;
		const shell = pieces.filter(({ name }) => /^(panel|front|back)/.test(name));
		expect(shell.reduce((sum, { count }) => sum + count, 0)).toBe(skirt.panels);
		let [waist, hem] = [0, 0];
		for (const panel of shell) {
			waist += panel.count * walked(panel.stitch, 'waist');
			hem += panel.count * walked(panel.stitch, 'hem');
			near(walked(panel.cut, 'waist'), figures.panelWaistCutLength);
			near(walked(panel.cut, 'hem'), figures.panelHemCutLength);
			near(walked(panel.stitch, panel.stitch.edges[0]!.name), figures.skirtLength);
			near(surveyed(panel.cut) / figures.panelCutArea, 1, 1e-6);
			near(area(panel.cut) / figures.panelCutArea, 1, 1e-9);
			// The cut waist's arc, without the strips of seam allowance, is shorter by the clip; its radius is the figure.
			near(Math.hypot(...panel.cut.edges[3]!.end), figures.cutWaistRadius);
			near(Math.hypot(...panel.cut.edges[1]!.end), figures.cutHemRadius);
		}
		near(waist, figures.waistSeamGirth);
		near(hem, figures.hemSweep);
		near(figures.waistSeamGirth - figures.sweepAngle * figures.cutWaistRadius, figures.waistClip);
		// The interfacing is cut to match the band: the shopping list says so of both.
		for (const { cut } of pieces.filter(({ name }) => name.startsWith('band'))) {
			near(walked(cut, 'waist'), figures.bandCutLength);
			near(walked(cut, 'last end'), figures.bandCutDepth);
		}
	}
	expect(looked).toBeGreaterThan(bodies * 0.8);
});

test('Seam allowances are parallel strips: every cut edge lies its own allowance outside its stitch edge', () => {
	for (const { pieces, skirt } of drafted(500, 2)) {
		for (const { stitch, cut } of pieces) {
			stitch.edges.forEach((edge, i) => {
				const cutEdge = cut.edges[i]!;
				expect(cutEdge.name).toBe(edge.name);
				const from = i === 0 ? stitch.start : stitch.edges[i - 1]!.end;
				const expected = edge.name === 'hem' ? skirt.hem : /waist|facing/.test(edge.name) ? skirt.allowances.waist : skirt.allowances.seam;
				const [dx, dy] = [edge.end[0] - from[0], edge.end[1] - from[1]];
				// Distance of the cut edge's end from the stitch line, outwards: to the right of the way a line runs.
				const outside = edge.centre
					? Math.sign(edge.turn) * (Math.hypot(cutEdge.end[0], cutEdge.end[1]) - Math.hypot(edge.end[0], edge.end[1]))
					: ((cutEdge.end[0] - from[0]) * dy - (cutEdge.end[1] - from[1]) * dx) / Math.hypot(dx, dy);
				near(outside, expected, 1e-6);
			});
		}
	}
});

test('No outline crosses itself, every one runs counterclockwise and closes, and every number is a number', () => {
	for (const draft of both(drafted(bodies, 3), drafted(bodies, 33, anyStyle))) expectSound(draft);
});

test('Every sewn pair matches where it is measured on the outlines', () => {
	for (const draft of both(drafted(bodies, 4), drafted(bodies, 44, anyStyle))) {
		expectPairsMatch(draft);
		expect(draft.checks.find(({ code }) => code === 'seam-walk')?.severity).toBe('good');
	}
});

test('A change of unit changes nothing: not a figure, not a check', () => {
	const plain = ['share', 'panels', 'panelShares', 'clothKind'];
	expectSameInEveryUnit(both(cases(fewer, 5), cases(fewer, 55, anyStyle)), ({ body, skirt }, unit) => {
		const input = checkInput({ unit, body: inUnitOf(body, unit, plain), skirt: inUnitOf(skirt, unit, plain) });
		return input.ok ? draftSkirt(input.value.body, input.value.skirt) : input;
	}, (figure) => 1e-6 * Math.max(1, figure / 1e6));
});

test('Drafting leaves its input untouched', () => {
	for (const { body, skirt } of cases(200, 6)) {
		const before = structuredClone({ body, skirt });
		draftSkirt(body, skirt);
		expect({ body, skirt }).toEqual(before);
	}
});

test('Taking any way out of a check clears it', () => {
	const many = 2 * Math.max(2000, bodies);
	// None of them is an empty promise: each was taken.
	expect(takeAllWaysOut(both(drafted(many, 8), drafted(many, 88, anyStyle)), draftSkirt)).toEqual([
		'casing-depth skirt.band.depth', 'casing-depth skirt.band.elastic', 'hem-surplus skirt.hem', 'hem-surplus skirt.hemFinish', 'hem-to-floor skirt.length', 'hem-to-floor skirt.lengths.back', 'hem-to-floor skirt.lengths.front', 'hip-fit skirt.hipEase', 'hip-fit skirt.share', 'lining-fit skirt.lining.share', 'lining-fit skirt.share',
		'lining-opening skirt.length', 'lining-opening skirt.lengths.back', 'lining-opening skirt.lengths.sideLeft', 'lining-shorter skirt.lining.shorterBy', 'opening-longer-than-skirt skirt.length', 'opening-longer-than-skirt skirt.lengths.back', 'opening-longer-than-skirt skirt.lengths.sideLeft', 'pulls-on skirt.closure', 'pulls-on skirt.waistEase', 'stretch-cloth skirt.clothKind', 'stride skirt.share',
		'zip-allowance skirt.allowances.seam', 'zip-longer-than-skirt skirt.length', 'zip-longer-than-skirt skirt.lengths.back', 'zip-longer-than-skirt skirt.lengths.sideLeft'
	]);
});

test('Taking any way on from a refusal makes a skirt that can be cut, as far as that refusal goes', () => {
	const random = seeded(9);
	const many = Math.max(2000, bodies);
	// Small waists, full flares, wide allowances: where there is no room.
	const tight = bent(Array(many).keys(), () => {
		const body = { waist: nhanesBody(random).waist * (0.3 + 0.5 * random()) };
		return {
			body, skirt: {
				...anySkirt(random), share: 0.8 + 1.2 * random(), panels: 1 + Math.floor(random() * 3),
				allowances: { waist: 40 * random(), seam: 60 * random() }, hem: 400 * random(), lining: { shorterBy: 500 * random(), share: null }
			}
		};
	});
	// Every kind of band and facing, on skirts that are hardly there.
	const styled = bent(cases(many, 99, anyStyle), ({ body, skirt }) => ({ body, skirt: { ...skirt, length: 60 + 740 * random() } }));
	// What mends a missing reading is the reading; a band deeper than its skirt has two ends to choose from.
	const mends = (path: string) => /^skirt\.(band\.(kind|lower|depth|facing)|lining|hem|riseAt|waistDip|lengths\b(?!\.))/.test(path);
	expect(takeAllWaysOn(both<Case<Skirt>>(tight, styled), draftSkirt, mends)).toEqual([
		'band-laps-itself skirt.band.kind', 'band-not-wider-below skirt.band.kind', 'facing-deeper-than-skirt skirt.band.facing', 'facing-deeper-than-skirt skirt.hemFacing',
		'hem-deeper-than-skirt skirt.hem', 'lining-fuller skirt.lining.share', 'lining-laps-itself skirt.lining.share', 'lining-too-short skirt.lining.shorterBy',
		'no-room-for-allowance skirt.allowances.seam', 'no-room-for-allowance skirt.allowances.waist', 'no-room-for-allowance skirt.share', 'panel-laps-itself skirt.panels',
		'uneven-no-room skirt.hem', 'uneven-no-room skirt.lengths.back', 'uneven-no-room skirt.lengths.sideLeft', 'uneven-no-room skirt.panels',
		'waist-steep skirt.lengths.back', 'waist-steep skirt.lengths.front', 'waist-steep skirt.lengths.sideLeft', 'waist-steep skirt.lengths.sideRight', 'waist-steep skirt.riseAt', 'waist-steep skirt.waistDip.back', 'waist-steep skirt.waistDip.front'
	]);
});
