import { expect, test } from 'vitest';
import { contourOpening } from '../../src/lib/drafting/band/contour-opening.ts';
import { contourFigures, type ContourFigures } from '../../src/lib/drafting/band/contour-figures.ts';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { area } from '../../src/lib/drafting/geometry/measure.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';
import { openingBelow } from '../../src/lib/drafting/opening.ts';
import { checkAnyInput } from '../../src/lib/drafting/style.ts';
import { seeded } from './bodies.ts';
import { walked } from './measured.ts';

/** Drafted from an input in cm, as the command takes it. */
function draftOf(skirt: object, body: object = { waist: 69, hip: 98, waistToHip: 20 }): Draft {
	const input = checkInput({ unit: 'cm', body, skirt: { share: 0.5, length: 64, waistEase: 1, hipEase: 2, ...skirt } });
	if (!input.ok) throw new Error(JSON.stringify(input.issues));
	const draft = draftSkirt(input.value.body, input.value.skirt);
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const piece = (draft: Draft, name: string) => draft.pieces.find((one) => one.name === name)!;

test('A contour band of half a circle’s angle, 70 at the top and 4 deep, is 82.57 round below', () => {
	// Circle geometry: 70 + π·4 = 82.566. Given that lower edge back, its angle is π and its top radius 70/π = 22.282.
	const { bandAngle, bandTopRadius, bandLowRadius } = contourFigures({ kind: 'contour', depth: 40, underlap: 0, sits: 'below', lower: 700 + Math.PI * 40 }, 700);
	expect((700 + Math.PI * 40) / 10).toBeCloseTo(82.57, 2);
	expect(bandAngle).toBeCloseTo(Math.PI, 12);
	expect([bandTopRadius, bandLowRadius]).toEqual([expect.closeTo(222.817, 3), expect.closeTo(262.817, 3)]);
});

test('A contour band’s outlines measure as its figures say, and the skirt hangs from its lower edge', () => {
	const draft = draftOf({ band: { kind: 'contour', depth: 4, underlap: 3, lower: 78 } });
	expect(draft.figures.waistSeamGirth).toBe(780);
	const band = piece(draft, 'band').stitch;
	// Waist and ease at the top, the lower girth at the seam, and 3 cm of underlap along it: at the top 3 cm · 700/780.
	expect(walked(band, 'waist')).toBeCloseTo(810, 3);
	expect(walked(band, 'top')).toBeCloseTo(700 + (30 * 700) / 780, 3);
	expect(walked(band, 'last end')).toBeCloseTo(40, 6);
	expect(draft.pieces.filter(({ name }) => name.startsWith('band')).map(({ name }) => name)).toEqual(['band', 'band facing', 'band interfacing']);
});

/**
 * The shortest way over a contour band from the waist seam to the middle opposite the slit, by Dijkstra over points on
 * both its edges: two points are joined where the straight line between them stays on the cloth.
 */
function wayOver({ bandAngle, bandTopRadius: top, bandLowRadius: low }: ContourFigures, from: number): number {
	const many = 260;
	const half = bandAngle / 2;
	const nodes = Array.from({ length: many + 1 }, (_, i) => from + ((half - from) * i) / many).flatMap((angle) => [[angle, low], [angle, top]] as const);
	const best = nodes.map(([angle, radius]) => (angle === from && radius === low ? 0 : Infinity));
	const done = nodes.map(() => false);
	for (;;) {
		const next = best.reduce((found, value, i) => (!done[i] && (found < 0 || value < best[found]!) ? i : found), -1);
		if (next < 0 || best[next] === Infinity) break;
		done[next] = true;
		const [a, r] = nodes[next]!;
		nodes.forEach(([b, q], i) => {
			const way = Math.sqrt(r * r + q * q - 2 * r * q * Math.cos(b - a));
			// How near the line comes to the centre between its ends; a hair is allowed along the top's own chords.
			const [x, y] = [r * Math.cos(a), r * Math.sin(a)];
			const [dx, dy] = [q * Math.cos(b) - x, q * Math.sin(b) - y];
			const part = way === 0 ? 0 : Math.min(1, Math.max(0, -(x * dx + y * dy) / (way * way)));
			if (Math.hypot(x + part * dx, y + part * dy) < top - 0.01) return;
			best[i] = Math.min(best[i]!, best[next]! + way);
		});
	}
	return Math.min(...nodes.flatMap(([angle], i) => (angle === half ? [best[i]!] : [])), ...nodes.map(([angle, radius], i) => {
		// Straight across to the middle, where that foot lies on the band.
		const foot = radius * Math.cos(half - angle);
		return foot >= top ? best[i]! + radius * Math.sin(half - angle) : Infinity;
	}));
}

test.each([[78, 0.5], [82, 0.25], [74, 1]])('The opening under a contour band of %s cm below agrees with a search over points of the cloth (share %s)', (lower, share) => {
	const band = contourFigures({ kind: 'contour', depth: 50, underlap: 0, sits: 'below', lower: lower * 10 }, 700);
	const sweep = 2 * Math.PI * share;
	const radius = (lower * 10) / sweep;
	const opening = contourOpening(band, { radius, sweep, girth: 1000 });
	const q = radius + opening;
	// From the slit's end to each of many points on the seam, then over the band.
	let least = Infinity;
	for (let i = 0; i <= 40; i++) {
		const angle = ((sweep / 2) * i) / 40;
		const touch = Math.acos(radius / q);
		const below = angle <= touch ? Math.sqrt(radius ** 2 + q ** 2 - 2 * radius * q * Math.cos(angle)) : Math.sqrt(q ** 2 - radius ** 2) + radius * (angle - touch);
		least = Math.min(least, 2 * (below + wayOver(band, (angle * radius) / band.bandLowRadius)));
	}
	// The search can only find ways that are a little longer.
	expect(least).toBeGreaterThan(1000 - 0.05);
	expect(least).toBeLessThan(1003);
});

test('A band that is hardly there leaves the opening as it is without one', () => {
	const random = seeded(61);
	for (let i = 0; i < 100; i++) {
		const [seam, sweep] = [600 + 500 * random(), 1 + 5 * random()];
		const girth = seam * (1.05 + 0.4 * random());
		const band = contourFigures({ kind: 'contour', depth: 0.01, underlap: 0, sits: 'below', lower: seam }, seam - 0.01);
		// It takes no more than its own hundredth of a millimetre off the string.
		const opening = contourOpening(band, { radius: seam / sweep, sweep, girth });
		expect(opening).toBeGreaterThan(openingBelow(seam, sweep, girth - 0.05));
		expect(opening).toBeLessThan(openingBelow(seam, sweep, girth + 0.05));
	}
});

test('An elastic goes over the hip: its seam is the larger of waist and hip with their ease, and nothing opens', () => {
	const { figures, seams, skirt } = draftOf({ band: { kind: 'elastic' } });
	expect([figures.waistSeamGirth, figures.openingBelowSeam, figures.zipLength, skirt.closure]).toEqual([1000, 0, undefined, 'none']);
	// Nine tenths of 69 cm and 2 cm of lap (from memory).
	expect(figures.elasticLength).toBeCloseTo(641, 9);
	expect(seams.some(({ name }) => name.includes('opening'))).toBe(false);
	expect(seams.find(({ name }) => name === 'band ends')).toMatchObject({ lengthA: 70, lengthB: 70 });
	// A waist above the hip counts by itself.
	expect(draftOf({ band: { kind: 'elastic' } }, { waist: 110, hip: 100 }).figures.waistSeamGirth).toBe(1110);
});

test('A full circle in one piece that is pulled on is a ring without a seam', () => {
	const draft = draftOf({ share: 1, band: { kind: 'elastic' } });
	const ring = piece(draft, 'panel');
	expect(ring.stitch.edges.map(({ name }) => name)).toEqual(['hem']);
	expect(walked(ring.hole!.stitch, 'waist')).toBeCloseTo(1000, 2);
	expect(area(ring.cut) + area(ring.hole!.cut)).toBeCloseTo(draft.figures.panelCutArea, 3);
	expect(draft.seams.map(({ name }) => name)).toEqual(['waist to band', 'waist to band facing', 'band ends']);
});

test('Facings are the skirt’s own shape: the waist’s to the depth asked, the hem’s up from the fold', () => {
	const { figures, pieces, seams } = draftOf({ panels: 2, band: { kind: 'faced', facing: 6 }, hemFinish: 'faced', hemFacing: 5 });
	expect(figures.skirtLength).toBe(640);
	const named = (name: string) => pieces.find((one) => one.name === name)!;
	expect(walked(named('waist facing').stitch, 'waist')).toBeCloseTo(350, 3);
	expect(walked(named('waist facing').stitch, 'free edge')).toBeCloseTo((Math.PI * (figures.waistRadius + 60)) / 2, 3);
	expect(walked(named('hem facing').stitch, 'hem')).toBeCloseTo(figures.hemSweep / 2, 3);
	for (const name of ['waist facing to waist', 'hem facing to hem']) {
		const seam = seams.find((one) => one.name === name)!;
		expect(seam.lengthA).toBeCloseTo(seam.lengthB, 9);
	}
});

test('Panels of other widths take their shares of waist and hem; a back and a front meet where the sides are', () => {
	const { pieces, figures } = draftOf({ panels: 2, zipAt: 'leftSide', panelShares: [0.48, 0.52] });
	expect(pieces.slice(0, 2).map(({ name, stitch }) => [name, Math.round(walked(stitch, 'waist') * 100) / 100])).toEqual([['back', 336], ['front', 364]]);
	expect(walked(pieces[1]!.stitch, 'hem')).toBeCloseTo(0.52 * figures.hemSweep, 3);
	expect(pieces.slice(0, 2).map(({ fold }) => fold?.name)).toEqual(['centre back', 'centre front']);
});

test('A lining of less flare hangs from the same waist seam, and the longer of the two slits counts', () => {
	const { figures } = draftOf({ share: 1, panels: 2, lining: { shorterBy: 3, share: 0.5 } });
	expect(figures.liningWaistRadius! * figures.liningSweepAngle!).toBeCloseTo(figures.waistSeamGirth, 9);
	expect(figures.liningHemRadius! - figures.liningWaistRadius!).toBeCloseTo(figures.skirtLength - 30, 9);
	// Waist seam 70, 100 to pass: half a circle needs the longer slit.
	expect(figures.openingBelowSeam).toBeCloseTo(openingBelow(700, Math.PI, 1000), 9);
	expect(openingBelow(700, Math.PI, 1000)).toBeGreaterThan(openingBelow(700, 2 * Math.PI, 1000));
});

test('Where the band sits moves the hip against the waist seam by nothing, half its depth or all of it', () => {
	const depth = (sits: string) => draftOf({ band: { depth: 5, sits } }).figures.hipDepth;
	expect([depth('above'), depth('centred'), depth('below')]).toEqual([200, 175, 150]);
});

test('A style that nobody drafts is answered with those that can be', () => {
	const read = checkAnyInput({ unit: 'cm', body: { waist: 74 }, skirt: { style: 'bell', share: 0.5, length: 58 } });
	expect(!read.ok && read.issues.map(({ code, path, expected }) => ({ code, path, expected }))).toEqual([{ code: 'not-one-of', path: 'skirt.style', expected: ['flared', 'tiered', 'pleated'] }]);
});
