// As made: every number by hand arithmetic, written beside it.
import { expect, test } from 'vitest';
import type { AsMade } from '../../../src/lib/drafting/made/reading.ts';
import { asMadeOf, type AsMadeFigures } from '../../../src/lib/drafting/made/as-made.ts';
import { longestIn, panelBox } from '../../../src/lib/drafting/made/cloth.ts';
import { letsThrough } from '../../../src/lib/drafting/made/through.ts';
import { openingBelow } from '../../../src/lib/drafting/opening.ts';
import { draftSkirt, type Draft } from '../../../src/lib/drafting/draft.ts';
import { anySkirt, ansurBody, nhanesBody, seeded } from '../bodies.ts';
import { chordPoints } from '../measured.ts';
import { draftOf } from './sample.ts';

const half = draftOf();
function made(readings: AsMade, draft: Draft = half): AsMadeFigures {
	const figures = asMadeOf(draft, readings);
	if (!figures.ok) throw new Error(JSON.stringify(figures.issues));
	return figures.value;
}
function refusal(readings: AsMade) {
	const figures = asMadeOf(half, readings);
	if (figures.ok) throw new Error('taken');
	return figures.issues;
}

test('A radius drawn 3.2 mm too small on a half circle is a waist 10 mm short', () => {
	// π · 3.2 = 10.05; the band for it is 700 − 10.05 + 30 + 2·15 = 749.95 (circle geometry).
	const { waist, rescues } = made({ radiusDrawn: half.figures.waistRadius - 3.2 });
	expect(waist!.over).toBeCloseTo(-10.05, 2);
	expect(waist!.letOut).toBeCloseTo(10.05, 2);
	expect(waist!.easeIn).toBe(0);
	expect(waist!.sewDeeper).toBeCloseTo(3.2, 9);
	expect(waist!.bandCutLength).toBeCloseTo(749.95, 2);
	expect(rescues).toEqual(['waist-cut-small']);
});

test('A waist 10 mm short is sewn 3.2 mm deeper on half a circle, 1.6 mm on a full one', () => {
	// 10/π = 3.183; 10/2π = 1.592 (circle geometry).
	expect(made({ waistSeamAfterSewing: 690 }).waist!.sewDeeper).toBeCloseTo(3.183, 3);
	expect(made({ waistSeamAfterSewing: 690 }, draftOf({ share: 1, panels: 2 })).waist!.sewDeeper).toBeCloseTo(1.592, 3);
});

test('The cut edge of a half circle on 70 cm is 652.88 mm; stretched to 664, the seam is 711.12', () => {
	// 700 − π·15 = 652.876; 664 + π·15 = 711.124 (circle geometry).
	expect(made({ waistEdgeAfterStaystitch: 652.876 }).waist!.over).toBeCloseTo(0, 3);
	const { waist, rescues } = made({ waistEdgeAfterStaystitch: 664 });
	expect(waist!.seam).toBeCloseTo(711.124, 3);
	expect(waist!.easeIn).toBeCloseTo(11.124, 3);
	expect(rescues).toEqual(['waist-stretched']);
});

test('The reading that was taken last is the one that counts, and one that is as planned asks for nothing', () => {
	const { waists, waist, rescues } = made({ waistSeamAfterSewing: 700, radiusDrawn: 230, waistEdgeAfterStaystitch: 640 });
	expect(waists.map(({ from }) => from)).toEqual(['radiusDrawn', 'waistEdgeAfterStaystitch', 'waistSeamAfterSewing']);
	// 700 + 30 + 2·15
	expect(waist).toMatchObject({ from: 'waistSeamAfterSewing', over: 0, sewDeeper: 0, bandCutLength: 760 });
	expect(rescues).toEqual([]);
	expect(made({})).toEqual({ waists: [], rescues: [] });
});

test('A longer waist needs a shorter opening', () => {
	// Check value 10: G 70, 98 to pass, half a circle: 20.82 cm, and the shops' 22. Its own zip ends 5 mm lower.
	const plan = made({ waistSeamAfterSewing: 700 }).waist!;
	expect(plan.opening! / 10).toBeCloseTo(20.82, 2);
	expect(plan).toMatchObject({ zipLength: 220, zipEndBelowSeam: 225 });
	// 980 is all that has to pass, so at 980 there is nothing to open, and the shortest zip of the shops does.
	expect(made({ waistSeamAfterSewing: 980 }).waist!).toMatchObject({ opening: 0, zipLength: 100, zipEndBelowSeam: 105 });
	expect(made({ waistSeamAfterSewing: 760 }).waist!.opening!).toBeLessThan(plan.opening!);
	// Without a hip nothing is said of it.
	const unknown = made({ waistSeamAfterSewing: 760, zipBought: 100 }, draftOf({}, { waist: 700 }));
	expect(unknown.waist).not.toHaveProperty('opening');
	expect(unknown.zip).not.toHaveProperty('spare');
	expect(unknown.rescues).not.toContain('zip-short');
});

test('A zip lets through what the shortest path past its end measures', () => {
	// Check value 10 the other way about: G 70; full 18.22, ¾ 19.18, half 20.82, quarter 24.73 cm let 98 cm through.
	for (const [share, opening] of [[1, 182.2], [0.75, 191.8], [0.5, 208.2], [0.25, 247.3]] as const) {
		expect(letsThrough(700, 2 * Math.PI * share, opening)).toBeCloseTo(980, 0);
	}
	const random = seeded(5);
	for (let i = 0; i < 2000; i++) {
		const [seam, sweep, hip] = [500 + 700 * random(), 2 * Math.PI * (0.1 + 1.9 * random()), 800 + 800 * random()];
		if (hip <= seam) continue;
		const through = letsThrough(seam, sweep, openingBelow(seam, sweep, hip));
		if (!(Math.abs(through - hip) < 1e-6)) expect(through).toBe(hip);
	}
	expect(letsThrough(700, Math.PI, 0)).toBe(700);
});

test('A zip of 20 cm is 8.2 mm short of what 98 cm needs, and one of 22 cm ends 22.5 cm down', () => {
	// 208.2 − 200 (check value 10)
	const short = made({ zipBought: 200 });
	expect(short.zip!.spare).toBeCloseTo(-8.2, 1);
	expect(short.zip!.letsThrough).toBeLessThan(980);
	expect(short.rescues).toEqual(['zip-short']);
	expect(made({ zipBought: 220 })).toMatchObject({ zip: { bought: 220, endBelowSeam: 225 }, rescues: [] });
	// The seam is 600 mm long: 640 less a band of 40.
	expect(made({ zipBought: 600 })).toMatchObject({ zip: { endBelowSeam: 600 }, rescues: ['zip-long'] });
});

// Invented floor readings, to the cut edge: it dips 18 mm at the sides.
const floor = [300, 296, 282, 294, 299, 295, 283, 297].map((distance, i) => ({ place: i / 8, distance }));

test('The hem is level when every place is cut to the height of the highest: 300 and 15 of hem is 315', () => {
	const { hem, rescues } = made({ floor });
	expect(hem).toMatchObject({ highest: 300, lowest: 282, dip: 18, leastAbove: 315, above: 315, cutEdgeAbove: 300, mostTrim: 18 });
	expect(hem!.trims.map(({ trim }) => trim)).toEqual([0, 4, 18, 6, 1, 5, 17, 3]);
	// The cut hem's arc: π·(222.817 + 600 + 15) = 2632.08; an eighth of it 329.01 (circle geometry).
	expect(hem!.trims[1]!.alongEdge).toBeCloseTo(329.01, 2);
	expect(rescues).toEqual(['hem-dips']);
});

test('A chosen height cuts as much more everywhere, and one below the cloth is refused with the least there is', () => {
	expect(made({ floor, hemAbove: 325 }).hem!.trims.map(({ trim }) => trim)).toEqual([10, 14, 28, 16, 11, 15, 27, 13]);
	expect(refusal({ floor, hemAbove: 310 })).toMatchObject([{ code: 'hem-below-cloth', path: 'asMade.hemAbove', expected: 315, figures: { least: 315, short: 5 } }]);
	// 282 + 600 + 15: nothing would be left of the skirt.
	expect(refusal({ floor, hemAbove: 897 })).toMatchObject([{ code: 'hem-above-skirt', figures: { most: 897 } }]);
	expect(made({ floor, hemAbove: 896.9 }).hem!.mostTrim).toBeCloseTo(599.9, 9);
});

test('A one-piece full circle in cloth of 150, 140 and 114 cm is 61.86, 56.86 and 43.86 cm long at most', () => {
	// Check value 16: (150 / 2) − 11.141 − 2 = 61.86 (circle geometry; the seam's strip of 15 mm lies inside the circle).
	for (const [width, longest] of [[1500, 618.6], [1400, 568.6], [1140, 438.6]] as const) {
		expect(longestIn({ width, length: 5000 }, 700, { share: 1, panels: 1, hem: 20, allowances: { waist: 15, seam: 0 } })).toBeCloseTo(longest, 1);
	}
});

test('A half circle in one piece needs its radius and one strip across, and twice its radius along', () => {
	// 222.817 + L + 15 + 15 ≤ 800: L = 547.18, band 40 over it (circle geometry; laid as the lesson lays it).
	const { cloth, rescues } = made({ clothAfterWashing: { width: 800, length: 5000 } });
	expect(cloth!.longestBelowBand).toBeCloseTo(547.18, 2);
	expect(cloth!.longest).toBeCloseTo(587.18, 2);
	expect(cloth!.spare).toBeCloseTo(-52.82, 2);
	expect(rescues).toEqual(['cloth-short']);
	// 2·(222.817 + L + 15) ≤ 1600: L = 562.18.
	expect(made({ clothAfterWashing: { width: 1400, length: 1600 } }).cloth!.longestBelowBand).toBeCloseTo(562.18, 2);
	expect(made({ clothAfterWashing: { width: 300, length: 200 } }).cloth).toMatchObject({ longestBelowBand: 0, longest: 0 });
});

test('The box round a panel is the box round its outline, for any panel', () => {
	const random = seeded(23);
	let looked = 0;
	for (let i = 0; i < 600; i++) {
		const draft = draftSkirt(i % 2 ? ansurBody(random) : nhanesBody(random), anySkirt(random));
		if (!draft.ok) continue;
		const { pieces, figures, skirt } = draft.value;
		const panel = pieces.find(({ name }) => /^(panel|front|back)/.test(name))!;
		let [from, x0, x1, y0, y1] = [panel.cut.start, Infinity, -Infinity, Infinity, -Infinity];
		for (const edge of panel.cut.edges) {
			for (const [x, y] of chordPoints(from, edge)) [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
			from = edge.end;
		}
		const box = panelBox(figures.panelAngle, figures.cutWaistRadius, figures.cutHemRadius, skirt.allowances.seam);
		// 2,000 chords on a radius of metres: 0.01 mm.
		if (!(Math.abs(box.along - (x1 - x0)) < 0.02 && Math.abs(box.across - (y1 - y0)) < 0.02)) expect(box).toEqual({ along: x1 - x0, across: y1 - y0 });
		looked++;
	}
	expect(looked).toBeGreaterThan(400);
});

test('Near a half turn the corners of a tight waist may lie further back than the hem’s', () => {
	// Half the panel's angle 1.55, strips of 30 mm: the waist's corners stand at 1.55 + arcsin(30/40) = 2.398, 40·cos = −29.44; the hem's at 1.593, 700·cos = −15.45. Circle geometry.
	expect(panelBox(3.1, 40, 700, 30)).toEqual({ across: 1400, along: expect.closeTo(729.44, 2) });
	// Well past a half turn, at 2 rad, they are the hem’s: 700·cos(2.043) = −318.3 against 400·cos(2.075) = −193.3.
	expect(panelBox(4, 400, 700, 30)).toEqual({ across: 1400, along: expect.closeTo(1018.31, 2) });
});

test('What can’t be a reading is named by its path', () => {
	expect(refusal({ radiusDrawn: 0, zipBought: NaN, waistSeamAfterSewing: -3 }).map(({ path }) => path)).toEqual(['asMade.radiusDrawn', 'asMade.zipBought', 'asMade.waistSeamAfterSewing']);
	expect(refusal({ floor: floor.slice(0, 7) })).toMatchObject([{ code: 'floor-places', expected: [8, 16], received: 7 }]);
	expect(refusal({ floor: [...floor, { place: 0.125, distance: 296 }] })).toMatchObject([{ code: 'place-twice', path: 'asMade.floor.8.place' }]);
	expect(refusal({ floor: [...floor, { place: 1, distance: 296 }] })).toMatchObject([{ code: 'number-out-of-range', path: 'asMade.floor.8.place' }]);
	expect(refusal({ clothAfterWashing: { width: 0, length: Infinity } }).map(({ path }) => path)).toEqual(['asMade.clothAfterWashing.width', 'asMade.clothAfterWashing.length']);
});

test('On any skirt and body, readings near the plan give finite numbers that survive JSON', () => {
	const random = seeded(41);
	for (let i = 0; i < 1500; i++) {
		const draft = draftSkirt(i % 3 ? nhanesBody(random) : { waist: 700 }, anySkirt(random));
		if (!draft.ok) continue;
		const { figures } = draft.value;
		const about = (mm: number): number => mm * (0.9 + 0.2 * random());
		const result = asMadeOf(draft.value, {
			radiusDrawn: about(figures.waistRadius), waistSeamAfterSewing: about(figures.waistSeamGirth), zipBought: about(220),
			clothAfterWashing: { width: 900 + 600 * random(), length: 500 + 3000 * random() }, floor: Array.from({ length: 12 }, (_, k) => ({ place: k / 12, distance: 300 + 20 * random() }))
		});
		if (!result.ok) throw new Error(JSON.stringify(result.issues));
		expect(JSON.parse(JSON.stringify(result.value))).toEqual(result.value);
		const { waist, hem } = result.value;
		// What is sewn deeper adds θ a millimetre, and brings the planned waist.
		expect(waist!.seam + figures.sweepAngle * waist!.sewDeeper).toBeCloseTo(figures.waistSeamGirth, 6);
		for (const { distance, trim } of hem!.trims) expect(distance + trim).toBeCloseTo(hem!.cutEdgeAbove, 9);
	}
});
