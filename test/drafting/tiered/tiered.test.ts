import { expect, test } from 'vitest';
import { draftTiered, type TieredDraft } from '../../../src/lib/drafting/tiered/draft.ts';
import type { TieredSkirt } from '../../../src/lib/drafting/tiered/skirt.ts';
import { walked } from '../measured.ts';

const body = { waist: 700, hip: 960, waistToHip: 200 };
const skirt: TieredSkirt = {
	style: 'tiered', length: 790, waistEase: 20, hipEase: 40, tiers: 3, lengths: { kind: 'equal' }, ratios: { 1: 1.5, 2: 1.5, 3: 1.5 },
	band: { kind: 'straight', depth: 40, underlap: 30 }, hem: 20, hemFinish: 'turned', zipAt: 'centreBack', zipSeries: 'cm', cloth: 'light', clothWidth: 1400,
	allowances: { waist: 15, seam: 15 }
};
function draftOf(choices: Partial<TieredSkirt> = {}, who: Parameters<typeof draftTiered>[0] = body): TieredDraft {
	const draft = draftTiered(who, { ...skirt, ...choices });
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const issuesOf = (choices: Partial<TieredSkirt>) => {
	const draft = draftTiered(body, { ...skirt, ...choices });
	return draft.ok ? [] : draft.issues;
};
const checkOf = ({ checks }: TieredDraft, code: string, about?: string) => checks.find((check) => check.code === code && check.about === about);

test('Three tiers gathered one and a half times, by hand', () => {
	const { figures } = draftOf();
	// Arithmetic: waist seam 700 + 20 = 720; 720 · 1.5 = 1080; 1080 · 1.5 = 1620; 1620 · 1.5 = 2430.
	expect(figures.waistSeamGirth).toBe(720);
	expect(figures.tiers.map(({ girth }) => girth)).toEqual([1080, 1620, 2430]);
	expect(figures.hemSweep).toBe(2430);
	// What each seam takes up: 1080 − 720, 1620 − 1080, 2430 − 1620.
	expect(figures.tiers.map(({ gathered }) => gathered)).toEqual([360, 540, 810]);
	// (790 − 40) / 3 = 250 each.
	expect(figures.tiers.map(({ length }) => length)).toEqual([250, 250, 250]);
	// A strip is at most 1400 − 2 · 15 = 1370 from seam to seam: 1080 in one; 1620 and 2430 in two, of 810 and 1215.
	expect(figures.tiers.map(({ strips, stripLength, stripCutLength }) => [strips, stripLength, stripCutLength])).toEqual([[1, 1080, 1110], [2, 810, 840], [2, 1215, 1245]]);
	// 15 + 250 + 15; 15 + 250 + 15; 15 + 250 + 20.
	expect(figures.tiers.map(({ cutDepth }) => cutDepth)).toEqual([280, 280, 285]);
	// 280 + 2 · 280 + 2 · 285 = 1410.
	expect(figures.clothLength).toBe(1410);
	// Band: 720 + 30 + 2 · 15 by 2 · 40 + 2 · 15.
	expect([figures.bandCutLength, figures.bandCutDepth]).toEqual([780, 110]);
	expect(figures.girthAtHip).toBe(1080);
});

test('Tiers growing by a ratio, and tiers as given', () => {
	// 700 = a(1 + 1.5 + 2.25) = 4.75 a, so a = 147.368…
	const growing = draftOf({ length: 740, lengths: { kind: 'growing', by: 1.5 } }).figures.tiers.map(({ length }) => length);
	expect(growing[0]).toBeCloseTo(147.36842, 5);
	expect(growing[1]! / growing[0]!).toBeCloseTo(1.5, 12);
	expect(growing[2]! / growing[1]!).toBeCloseTo(1.5, 12);
	expect(draftOf({ length: 640, lengths: { kind: 'given', each: { 1: 150, 2: 200, 3: 250 } } }).figures.tiers.map(({ length }) => length)).toEqual([150, 200, 250]);
});

test('Given lengths that don’t add up are refused, and either way on mends it', () => {
	// 150 + 200 + 260 = 610; 640 − 40 = 600.
	const [issue] = issuesOf({ length: 640, lengths: { kind: 'given', each: { 1: 150, 2: 200, 3: 260 } } });
	expect(issue).toMatchObject({ code: 'tiers-do-not-add-up', expected: 600, received: 610, waysOut: [{ path: 'skirt.length', value: 650 }, { path: 'skirt.lengths.each.3', value: 250 }] });
});

test('The seam between tiers names its gathers, and every pair agrees to them on the outlines', () => {
	const { seams, pieces } = draftOf();
	const join = seams.find(({ name }) => name === 'tier 2 to tier 1')!;
	expect([join.lengthA, join.lengthB, join.ease]).toEqual([1620, 1080, 540]);
	expect(join.a.map(({ piece, copy }) => [piece, copy])).toEqual([['panel tier 2', 1], ['panel tier 2', 2]]);
	const band = seams.find(({ name }) => name === 'waist to band')!;
	expect([band.lengthA, band.ease]).toEqual([1080, 360]);
	expect(band.lengthB).toBeCloseTo(720, 9);
	const tier = pieces.find(({ name }) => name === 'panel tier 3')!;
	expect([walked(tier.stitch, 'hem') * tier.count, walked(tier.cut, 'hem'), walked(tier.cut, 'first seam')]).toEqual([2430, 1245, 285]);
	expect(tier.notches.filter(({ edge }) => edge === 'gathered edge').map(({ marks, copy, at }) => [marks, copy, at]).sort()).toEqual([['left side', 2, 0.5], ['right side', 1, 0.5]]);
});

test('Seams are named by where they lie', () => {
	expect(draftOf({ tiers: 2, ratios: { 1: 1.5, 2: 1.5 } }).seams.map(({ name }) => name)).toEqual([
		'tier 1 zip opening', 'tier 1 centre back', 'tier 2 panel 1 to panel 2', 'tier 2 centre back', 'tier 2 to tier 1',
		'waist to band', 'waist to band facing', 'band first end', 'band last end', 'underlap'
	]);
	expect(draftOf({ tiers: 1, ratios: { 1: 1.5 }, zipAt: 'leftSide', clothWidth: 2800, band: { kind: 'elastic', depth: 30, underlap: 0, elastic: 25 } }).seams.map(({ name }) => name))
		.toEqual(['tier 1 left side', 'waist to band', 'waist to band facing', 'band ends']);
});

test('Elastic: the casing passes the hip, nothing opens, and the elastic is cut to the waist', () => {
	const draft = draftOf({ band: { kind: 'elastic', depth: 28, underlap: 0, elastic: 25 }, length: 778, ratios: { 1: 1, 2: 1.5, 3: 1.5 } });
	// The larger of 700 + 20 and 960 + 40.
	expect(draft.figures.waistSeamGirth).toBe(1000);
	expect([draft.figures.openingBelowSeam, draft.figures.zipLength]).toEqual([0, undefined]);
	// 0.9 · 700 + 20 (from memory).
	expect(draft.figures.elasticLength).toBe(650);
	// 1000 + 2 · 15; 2 · 28 + 2 · 15.
	expect([draft.figures.bandCutLength, draft.figures.bandCutDepth]).toEqual([1030, 86]);
	expect(checkOf(draft, 'elastic-passes-hip')?.severity).toBe('good');
	expect(checkOf(draft, 'casing-depth')?.severity).toBe('good');
	// 960 / 650 = 1.477.
	expect(checkOf(draft, 'elastic-stretch')).toMatchObject({ severity: 'good', figures: { stretch: expect.closeTo(1.47692, 5) } });
	const tight = draftOf({ band: { kind: 'elastic', depth: 27, underlap: 0, elastic: 25 } });
	expect(checkOf(tight, 'casing-depth')).toMatchObject({ severity: 'stop', waysOut: [{ path: 'skirt.band.depth', value: 28 }, { path: 'skirt.band.elastic', value: 24 }] });
});

test('Too many gathers for the cloth, a first tier that the hip doesn’t fit, and a hem too narrow to step out in', () => {
	const heavy = draftOf({ cloth: 'heavy', ratios: { 1: 1.5, 2: 1.6, 3: 1.5 } });
	expect(checkOf(heavy, 'gathers-dense', 'tier 1')?.severity).toBe('good');
	// 1.6 · 1080 = 1728 gathered into 1080.
	expect(checkOf(heavy, 'gathers-dense', 'tier 2')).toMatchObject({ severity: 'caution', figures: { ratio: 1.6, most: 1.5, join: 1080, girth: 1728, gathered: 648 }, waysOut: [{ path: 'skirt.ratios.2', value: 1.5 }] });
	// 1.2 · 720 = 864 < 960 + 40; 1000/720 = 1.3889 mends it.
	const narrow = checkOf(draftOf({ ratios: { 1: 1.2, 2: 1.5, 3: 1.5 } }), 'hip-fit');
	expect(narrow).toMatchObject({ severity: 'stop', figures: { girthAtHip: 864, needed: 1000 }, waysOut: [{ path: 'skirt.ratios.1', value: expect.closeTo(1.388889, 6) }] });
	// One tier to the ankle: at 950 the step needs 1500 (from memory); 720 · 1.5 = 1080; 1500/720 = 2.0833.
	expect(checkOf(draftOf({ tiers: 1, length: 950 }), 'stride')).toMatchObject({ severity: 'caution', figures: { hemSweep: 1080, needed: 1500 }, waysOut: [{ path: 'skirt.ratios.1', value: expect.closeTo(2.083333, 6) }] });
});

test('A zip that passes the first tier opens the second too', () => {
	// A first tier of 100, 1.2 · 720 = 864, is narrower than 1000: the slit has to reach into the second.
	const draft = draftOf({ length: 640, lengths: { kind: 'given', each: { 1: 100, 2: 200, 3: 300 } }, ratios: { 1: 1.2, 2: 1.5, 3: 1.5 }, zipAt: 'leftSide' });
	expect(draft.figures.openingBelowSeam).toBeGreaterThan(100);
	const names = draft.seams.map(({ name }) => name);
	expect(names.slice(0, 3)).toEqual(['tier 1 zip opening', 'tier 2 zip opening', 'tier 2 left side']);
	const opened = draft.seams.filter(({ name }) => name.endsWith('zip opening')).reduce((sum, { lengthA }) => sum + lengthA, 0);
	expect(opened).toBeCloseTo(draft.figures.zipEndBelowSeam!, 9);
});

test('What can’t be cut is refused with ways on', () => {
	expect(issuesOf({ length: 40 }).map(({ code }) => code)).toEqual(['band-deeper-than-length']);
	expect(issuesOf({ hem: 250 })).toMatchObject([{ code: 'hem-deeper-than-tier', expected: 250, waysOut: [{ path: 'skirt.hem', value: 62.5 }] }]);
	expect(issuesOf({ clothWidth: 120 })).toMatchObject([{ code: 'cloth-too-narrow', waysOut: [{ path: 'skirt.clothWidth', value: 130 }] }]);
	// 720 · 3⁴ = 58 320 > 40 000; 720 · 3³ = 19 440.
	expect(issuesOf({ tiers: 4, ratios: { 1: 3, 2: 3, 3: 3, 4: 3 } })).toMatchObject([{ code: 'tier-too-wide', figures: { girth: 58320 }, waysOut: [{ path: 'skirt.tiers', value: 3 }, { path: 'skirt.ratios.1', value: expect.closeTo(2.0576, 4) }] }]);
});

test('Without a hip the draft asks', () => {
	expect(checkOf(draftOf({}, { waist: 700 }), 'hip-missing')?.severity).toBe('caution');
	// Nobody could work out an opening, so nothing is said of one, nor of a zip.
	for (const name of ['openingBelowSeam', 'zipLength', 'zipEndBelowSeam']) expect(draftOf({}, { waist: 700 }).figures).not.toHaveProperty(name);
	expect(checkOf(draftOf({}, { waist: 700, hip: 960 }), 'hip-depth-missing')?.severity).toBe('note');
});
