import { expect, test } from 'vitest';
import { Fields } from '../../../src/lib/drafting/fields.ts';
import type { Issue } from '../../../src/lib/drafting/result.ts';
import { draftTiered, type TieredDraft } from '../../../src/lib/drafting/tiered/draft.ts';
import { readTiered } from '../../../src/lib/drafting/tiered/input.ts';
import type { TieredSkirt } from '../../../src/lib/drafting/tiered/skirt.ts';
import { seeded } from '../bodies.ts';
import { surveyed, walked } from '../measured.ts';
import { bent, bodies, casesOf, draftsOf, expectPairsMatch, expectSameInEveryUnit, expectSound, fewer, inUnitOf, near, takeAllWaysOn, takeAllWaysOut } from '../sound.ts';
import { anyTiered } from './tiers.ts';

const cases = (count: number, seed: number) => casesOf(count, seed, anyTiered);
const drafted = (count: number, seed: number): Iterable<TieredDraft> => draftsOf(cases(count, seed), draftTiered);

test('No outline crosses itself, every one runs counterclockwise and closes, and every number is a number', () => {
	let looked = 0;
	for (const draft of drafted(bodies, 41)) {
		expectSound(draft);
		looked++;
	}
	expect(looked).toBeGreaterThan(bodies * 0.8);
});

test('Every figure agrees with what is measured on the outlines, and the tiers with the finished length', () => {
	for (const { figures, pieces, skirt, body } of drafted(bodies, 42)) {
		let [length, girth] = [skirt.band.depth, figures.waistSeamGirth];
		for (const tier of figures.tiers) {
			const piece = pieces.find(({ name }) => name === `panel tier ${tier.tier}`)!;
			expect(piece.count).toBe(tier.strips);
			const [top, lower] = [tier.tier === 1 ? 'waist' : 'gathered edge', tier.tier === skirt.tiers ? 'hem' : 'lower edge'];
			near(walked(piece.stitch, top) * piece.count, girth * tier.ratio);
			near(walked(piece.stitch, lower) * piece.count, tier.girth);
			near(walked(piece.stitch, 'first seam'), tier.length);
			near(walked(piece.cut, top), tier.stripCutLength);
			near(walked(piece.cut, 'first seam'), tier.cutDepth);
			near(surveyed(piece.cut), tier.stripCutLength * tier.cutDepth, 1e-6 * tier.stripCutLength * tier.cutDepth);
			// It lies within the cloth, and one strip fewer would not.
			if (!(tier.stripCutLength <= skirt.clothWidth + 1e-5)) expect(tier.stripCutLength).toBeLessThanOrEqual(skirt.clothWidth);
			if (tier.strips > 1) expect(tier.girth / (tier.strips - 1) + 2 * skirt.allowances.seam).toBeGreaterThan(skirt.clothWidth);
			for (const { at } of piece.notches) if (!(at >= 0 && at <= 1)) expect(at).toBe('along its edge');
			length += tier.length;
			girth = tier.girth;
		}
		near(length, skirt.length);
		near(girth, figures.hemSweep);
		if (skirt.band.kind === 'elastic' && body.hip !== undefined) expect(figures.waistSeamGirth).toBeGreaterThanOrEqual(body.hip + skirt.hipEase);
	}
});

test('Every sewn pair matches where it is measured, to 0.01 mm or to the gathers it states', () => {
	let gathered = 0;
	for (const { pieces, seams, checks, figures } of drafted(bodies, 43)) {
		expectPairsMatch({ pieces, seams });
		gathered += seams.filter(({ ease }) => ease > 0).length;
		expect(checks.find(({ code }) => code === 'seam-walk')?.severity).toBe('good');
		for (const tier of figures.tiers.slice(1)) near(seams.find(({ name }) => name === `tier ${tier.tier} to tier ${tier.tier - 1}`)!.ease, tier.gathered);
	}
	expect(gathered).toBeGreaterThan(bodies);
});

test('The notches of two edges sewn together lie at the same places round the skirt', () => {
	for (const { pieces, skirt } of drafted(300, 44)) {
		const places = (tier: number, edge: string, back: boolean) => {
			const piece = pieces.find(({ name }) => name === `panel tier ${tier}`)!;
			return piece.notches.filter((notch) => notch.edge === edge)
				.map(({ at, copy = 1, marks }) => ({ marks, place: (copy - 1 + (back ? 1 - at : at)) / piece.count }));
		};
		const band = pieces.find(({ name }) => name === 'band')!;
		for (let tier = 1; tier <= skirt.tiers; tier++) {
			for (const { marks, place } of places(tier, tier === 1 ? 'waist' : 'gathered edge', true)) {
				const order = skirt.zipAt === 'leftSide' ? ['left side', 'centre back', 'right side', 'centre front'] : ['centre back', 'right side', 'centre front', 'left side'];
				near(place, order.indexOf(marks) / 4, 1e-9);
				if (tier === 1) expect(band.notches.some((notch) => notch.marks === marks)).toBe(true);
			}
		}
	}
});

test('Taking any way out of a check clears it', () => {
	expect(takeAllWaysOut(drafted(Math.max(6000, bodies), 45), draftTiered)).toEqual([
		'casing-depth skirt.band.depth', 'casing-depth skirt.band.elastic', 'gathers-dense skirt.ratios.#', 'hem-to-floor skirt.length',
		'hip-cannot-pass skirt.ratios.#', 'hip-fit skirt.hipEase', 'hip-fit skirt.ratios.#', 'opening-longer-than-skirt skirt.ratios.#', 'stretch-cloth skirt.clothKind', 'stride skirt.ratios.#', 'zip-allowance skirt.allowances.seam',
		'zip-longer-than-skirt skirt.ratios.#'
	]);
});

test('Taking any way on from a refusal makes a skirt that can be cut, as far as that refusal goes', () => {
	const random = seeded(46);
	const refused = bent(cases(Math.max(2000, bodies), 47), ({ body, skirt }) => {
		const hardly: TieredSkirt = {
			...skirt, length: skirt.length * (0.05 + random()), hem: 400 * random(), clothWidth: 100 + 300 * random(), allowances: { waist: 15, seam: 100 * random() },
			...(random() < 0.3 && { ratios: { 1: 3, 2: 3, 3: 3, 4: 3, 5: 3, 6: 3 } })
		};
		return { body, skirt: hardly };
	});
	expect(takeAllWaysOn(refused, draftTiered, () => true)).toEqual([
		'band-deeper-than-length skirt.band.depth', 'cloth-too-narrow skirt.clothWidth', 'hem-deeper-than-tier skirt.hem', 'tier-too-wide skirt.ratios.#',
		'tier-too-wide skirt.tiers', 'tiers-do-not-add-up skirt.length', 'tiers-do-not-add-up skirt.lengths.each.#'
	]);
});

test('A change of unit changes nothing: not a figure, not a check', () => {
	expectSameInEveryUnit(cases(fewer, 48), ({ body, skirt }, unit) => {
		const issues: Issue[] = [];
		const read = readTiered(Fields.of(inUnitOf(skirt, unit, ['tiers', 'ratios', 'by']), 'skirt', unit, issues)!, { unit, issues });
		// What lies outside the limits is refused in every unit alike.
		return read ? draftTiered(body, read) : { ok: false, issues };
	}, () => 1e-6);
});

test('Drafting leaves its input untouched', () => {
	for (const one of cases(200, 49)) {
		const before = structuredClone(one);
		draftTiered(one.body, one.skirt);
		expect(one).toEqual(before);
	}
});
