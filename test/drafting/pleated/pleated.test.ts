import { expect, test } from 'vitest';
import { draftPleated, type PleatedDraft } from '../../../src/lib/drafting/pleated/draft.ts';
import { creases, fold, mostLayers, seenAtWaist } from '../../../src/lib/drafting/pleated/folding.ts';
import type { PleatedSkirt } from '../../../src/lib/drafting/pleated/skirt.ts';
import { walked } from '../measured.ts';

const body = { waist: 700, hip: 960, waistToHip: 200 };
const skirt: PleatedSkirt = {
	style: 'pleated', kind: 'knife', length: 640, waistEase: 20, hipEase: 40, pleats: 20, depth: 30, stitchedTo: 'hip', band: { kind: 'straight', depth: 40, underlap: 30 },
	hem: 30, hemFinish: 'turned', zipAt: 'centreBack', zipSeries: 'cm', clothWidth: 1400, allowances: { waist: 15, seam: 15 }
};
function draftOf(choices: Partial<PleatedSkirt> = {}, who: Parameters<typeof draftPleated>[0] = body): PleatedDraft {
	const draft = draftPleated(who, { ...skirt, ...choices });
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const issuesOf = (choices: Partial<PleatedSkirt>, who: Parameters<typeof draftPleated>[0] = body) => {
	const draft = draftPleated(who, { ...skirt, ...choices });
	return draft.ok ? [] : draft.issues;
};
const checkOf = ({ checks }: PleatedDraft, code: string) => checks.find((check) => check.code === code);

test('Twenty knife pleats by hand', () => {
	const { figures } = draftOf();
	// Arithmetic of folding: G = 700 + 20 = 720, H = 960 + 40 = 1000; spacing 1000/20 = 50 at the hip, 720/20 = 36 at the waist.
	expect(figures).toMatchObject({
		waistSeamGirth: 720, hipGirth: 1000, spacingAtHip: 50, spacingAtWaist: 36,
		// Each pleat takes 50 − 36 = 14 more at the waist, 7 on each line; 30 + 7 = 37 deep.
		taper: 14, lean: 7, depthAtWaist: 37,
		// 50 + 2 · 30 = 110 a pleat; 20 · 110 = 1000 + 20 · 2 · 30 = 2200 flat.
		repeat: 110, flatWidth: 2200, hemSweep: 2200,
		// 1400 − 2 · 15 = 1370 holds 12 pleats of 110; 20 pleats take two panels of 10.
		panels: 2, pleatsInPanel: 10, widePanels: 2,
		// 2200/720; a depth of 37 reaches past one spacing of 36: 1 + 2 · 2 layers. At the hip 30 < 50: 3.
		meanLayers: 2200 / 720, mostLayersAtWaist: 5, mostLayersAtHip: 3,
		// 640 − 40 + 15 + 30 = 645 a panel.
		skirtLength: 600, panelCutDepth: 645, clothLength: 1290, bandCutLength: 780, bandCutDepth: 110
	});
	// tan = 7/200: 2.0045°.
	expect((figures.leanAngle * 180) / Math.PI).toBeCloseTo(2.0045, 4);
});

test('Twelve box pleats by hand', () => {
	const { figures } = draftOf({ kind: 'box', pleats: 12, depth: 20 });
	// 1000/12 = 83.33 and 720/12 = 60; each pleat takes 23.33 more at the waist, a pair 11.67, each line 5.833.
	expect(figures.taper).toBeCloseTo(23.3333, 4);
	expect(figures.lean).toBeCloseTo(5.8333, 4);
	expect(figures.depthAtWaist).toBeCloseTo(25.8333, 4);
	// 1000 + 12 · 4 · 20 = 1960.
	expect(figures.flatWidth).toBeCloseTo(1960, 9);
	// A box is 60/2 = 30 wide at the waist; two halves of 25.83 lie over each other behind it: 5 layers. At the hip 2 · 20 ≤ 41.67: 3.
	expect([figures.mostLayersAtWaist, figures.mostLayersAtHip]).toEqual([5, 3]);
});

test('The lines of a knife pleat and of a box, flat', () => {
	const lines = (kind: 'knife' | 'box', depth: number) => {
		const folding = { kind, pleats: 20, depth, waist: 720, hip: 1000 };
		return creases(folding, fold(folding));
	};
	// In by 30, what is seen, 50, and in by 30 again; at the waist 7 further in on both sides: 37 + 36 + 37.
	expect(lines('knife', 30)).toEqual([{ kind: 'placement', hip: 30, waist: 37 }, { kind: 'fold', hip: 80, waist: 73 }, { kind: 'inner', hip: 110, waist: 110 }]);
	// A box of 10 deep: 10 + 25 + 10 and 10 + 25 + 10; each line leans 3.5: 13.5 + 18 + 13.5.
	expect(lines('box', 10)).toEqual([
		{ kind: 'placement', hip: 10, waist: 13.5 }, { kind: 'placement', hip: 35, waist: 31.5 }, { kind: 'inner', hip: 45, waist: 45 },
		{ kind: 'fold', hip: 55, waist: 58.5 }, { kind: 'fold', hip: 80, waist: 76.5 }, { kind: 'inner', hip: 90, waist: 90 }
	]);
	expect(seenAtWaist(lines('box', 10))).toEqual([[13.5, 31.5], [58.5, 76.5]]);
});

/** Layers counted by folding a strip of 40 pleats and looking down on it at many places. */
function layersByFolding(kind: 'knife' | 'box', depth: number, spacing: number): number {
	// Where each stretch of cloth comes to lie: face by face, with two layers of `depth` behind the fold.
	const lying: (readonly [number, number])[] = [];
	for (let i = 0; i < 40; i++) {
		const start = i * spacing;
		if (kind === 'knife') lying.push([start, start + spacing], [start + spacing - depth, start + spacing], [start + spacing - depth, start + spacing]);
		else {
			const half = spacing / 2;
			lying.push([start, start + half], [start + half, start + spacing]);
			// Behind the box, from both its folds.
			for (let layer = 0; layer < 2; layer++) lying.push([start + half, start + half + depth], [start + spacing - depth, start + spacing]);
		}
	}
	let most = 0;
	for (let k = 0; k < 2000; k++) {
		const at = 20 * spacing + (spacing * (k + 0.5)) / 2000;
		most = Math.max(most, lying.filter(([from, to]) => from < at && at < to).length);
	}
	return most;
}

test.each(['knife', 'box'] as const)('The most layers of %s pleats agree with a folded strip', (kind) => {
	for (const depth of [5, 9, 12, 15, 19, 24, 26, 31, 45, 59, 61, 70, 88, 101]) {
		for (const spacing of [20, 33, 60]) expect([depth, spacing, mostLayers(kind, depth, spacing)]).toEqual([depth, spacing, layersByFolding(kind, depth, spacing)]);
	}
});

test('Panels begin and end at hidden folds, with their lines and snips', () => {
	const draft = draftOf({ pleats: 25 });
	// 1000/25 + 60 = 100 a pleat, 13 to a width: two panels, of 13 and 12.
	const [wide, narrow] = draft.pieces;
	expect([wide, narrow].map((piece) => [piece!.name, piece!.count])).toEqual([['panel wide', 1], ['panel narrow', 1]]);
	expect([walked(wide!.stitch, 'waist'), walked(narrow!.stitch, 'hem'), walked(wide!.cut, 'hem'), walked(wide!.cut, 'first seam')]).toEqual([1300, 1200, 1330, 645]);
	const named = (name: string) => wide!.lines!.filter((line) => line.name === name);
	// Two stretches each: 13 folds, 13 placement lines, and the 12 hidden folds between; the outer two are the seams.
	expect([named('fold line').length, named('placement line').length, named('inner fold').length]).toEqual([26, 26, 24]);
	// (40 − 28.8)/2 = 5.6: the first placement line from 30 + 5.6 at the waist to 30 at the hip, counted from the seam at −650.
	expect(named('placement line')[0]).toEqual({ name: 'placement line', from: [0, expect.closeTo(-614.4, 9)], to: [200, -620] });
	expect(named('placement line')[1]).toEqual({ name: 'placement line', from: [200, -620], to: [600, -620] });
	expect(wide!.notches.filter(({ marks, edge }) => marks === 'fold line' && edge === 'waist').length).toBe(13);
	expect(draft.seams.map(({ name }) => name)).toEqual(['panel 1 to panel 2', 'zip opening', 'centre back', 'waist to band', 'waist to band facing', 'band first end', 'band last end', 'underlap']);
});

test('The folded waist edge is as long as the band, counted by what is seen', () => {
	for (const kind of ['knife', 'box'] as const) {
		const waist = draftOf({ kind, depth: 12 }).seams.find(({ name }) => name === 'waist to band')!;
		expect(waist.a.length).toBe(kind === 'knife' ? 20 : 40);
		// 20 · 36 = 720, as much as 40 · 18.
		expect(waist.lengthA).toBeCloseTo(720, 9);
		expect(waist.lengthB).toBeCloseTo(720, 9);
		expect(waist.ease).toBe(0);
	}
});

test('Free pleats open as gathers do; stitched ones need the slit to reach below the hip', () => {
	// √(1 − (720/2200)²) = 0.944930; (1000 − 720)/2/0.944930 = 148.159.
	expect(draftOf({ stitchedTo: 'waist' }).figures.openingBelowSeam).toBeCloseTo(148.159, 3);
	// θ = 280/200 = 1.4, q = 1000/1.4 = 714.286, arccos 0.72 = 0.767 > 0.7, so the chord: half of what it lacks of 1000, with a share a
	// of the girth aside, is m = 500 − 714.286·sin(0.7(1 − 2a)). At the turn m·1000·cos(0.7(1 − 2a)) = 2200²·a: a = 0.00724, m = 45.40;
	// √(45.40² − (0.00724 · 2200)²) = 42.52, below 200.
	expect(draftOf().figures.openingBelowSeam).toBeCloseTo(242.52, 2);
	// Nothing has to open, and the shortest zip of the shops, 10 cm, keeps the making the same; its stop lies 5 mm down.
	expect(draftOf({ hipEase: 0 }, { waist: 980, hip: 960, waistToHip: 200 }).figures).toMatchObject({ openingBelowSeam: 0, zipLength: 100, zipEndBelowSeam: 105 });
});

test('Pleats that lie under each other are told at the hip and at the waist, with a depth that lies free', () => {
	// 60 > 50.
	expect(checkOf(draftOf({ depth: 60 }), 'pleats-overlap')).toMatchObject({ severity: 'caution', about: 'knife', waysOut: [{ path: 'skirt.depth', value: 50 }] });
	expect(checkOf(draftOf({ depth: 50 }), 'pleats-overlap')?.severity).toBe('good');
	// A box: a quarter of 1000/10 = 25.
	expect(checkOf(draftOf({ kind: 'box', pleats: 10, depth: 26 }), 'pleats-overlap')).toMatchObject({ severity: 'caution', waysOut: [{ path: 'skirt.depth', value: 25 }] });
	// At the waist 36 − 7 = 29 lies free.
	expect(checkOf(draftOf(), 'waist-bulk')).toMatchObject({ severity: 'note', figures: { mostLayers: 5 }, waysOut: [{ path: 'skirt.depth', value: 29 }] });
	// 67/36 reaches under two: 1 + 2 · 2 = 5; 77/36 under three: 7.
	expect(checkOf(draftOf({ depth: 70 }), 'waist-bulk')).toMatchObject({ severity: 'caution', figures: { mostLayers: 7 } });
});

test('A taper too steep for the fold, and one that eats the pleat', () => {
	// 4 pleats: 280/4/2 = 35 in 200: 9.93°; in 150 13.1°. tan 10° = 0.17633: 280/(2 · 150 · 0.17633) = 5.29, so 6 pleats.
	expect(checkOf(draftOf({ pleats: 4, depth: 60 }), 'taper-steep')?.severity).toBe('good');
	expect(checkOf(draftOf({ pleats: 4, depth: 60 }, { ...body, waistToHip: 150 }), 'taper-steep')).toMatchObject({ severity: 'caution', waysOut: [{ path: 'skirt.pleats', value: 6 }] });
	// G 1120, H 1000: each of 20 pleats 6 less, 3 on each line. 5 − 3 = 2 is under half of 5; 3 − 3 = 0 is no fold.
	const larger = { waist: 1100, hip: 960, waistToHip: 200 };
	expect(checkOf(draftOf({ depth: 5 }, larger), 'taper-shallows')).toMatchObject({
		severity: 'caution', figures: { depthAtWaist: 2 }, waysOut: [{ path: 'skirt.depth', value: 6 }, { path: 'skirt.pleats', value: 24 }, { path: 'skirt.hipEase', value: 160 }]
	});
	expect(issuesOf({ depth: 3 }, larger)).toMatchObject([{ code: 'taper-eats-pleat', path: 'skirt.depth', expected: 4, waysOut: [{ path: 'skirt.depth', value: 4.01 }, { path: 'skirt.pleats', value: 31 }, { path: 'skirt.hipEase', value: 160 }] }]);
});

test('A hem too narrow to step out in has deeper pleats or more of them as ways out', () => {
	// 8 knife pleats of 15: 1000 + 8 · 30 = 1240; at 950 the step needs 1500 (from memory): 500/2/8 = 31.25 deep, or 250/15 = 16.7: 17 pleats.
	expect(checkOf(draftOf({ length: 950, pleats: 8, depth: 15 }), 'stride')).toMatchObject({
		severity: 'caution', figures: { hemSweep: 1240, needed: 1500 }, waysOut: [{ path: 'skirt.depth', value: 31.25 }, { path: 'skirt.pleats', value: 17 }]
	});
});

test('What can’t be cut or folded is refused', () => {
	expect(issuesOf({}, { waist: 700 }).map(({ code, path }) => [code, path])).toEqual([['pleats-need-hip', 'body.hip'], ['pleats-need-hip-depth', 'body.waistToHip']]);
	expect(issuesOf({ length: 240 })).toMatchObject([{ code: 'pleats-end-above-hip', waysOut: [{ path: 'skirt.length', value: 290 }] }]);
	expect(issuesOf({ hem: 600 })).toMatchObject([{ code: 'hem-deeper-than-skirt' }]);
	// 4 pleats of 250 + 2 · 300 = 850 on a cloth of 800 − 30.
	expect(issuesOf({ pleats: 4, depth: 300, clothWidth: 800 })).toMatchObject([{ code: 'pleat-wider-than-cloth', figures: { repeat: 850, room: 770 } }]);
	expect(checkOf(draftOf({ hipEase: -10 }), 'hip-fit')).toMatchObject({ severity: 'stop', waysOut: [{ path: 'skirt.hipEase', value: 0 }] });
});
