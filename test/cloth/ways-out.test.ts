// A draft's own pieces on cloth, and what else would do: each way that is said has been laid out, and passes the check.
import { expect, test } from 'vitest';
import { wrongsOf } from '../../src/lib/cloth/layout-check.ts';
import { clothPieces } from '../../src/lib/cloth/draft-pieces.ts';
import { layOut } from '../../src/lib/cloth/lay-out.ts';
import { outlineOf, turned } from '../../src/lib/cloth/shape.ts';
import { questionOf, waysOut, type SkirtOnCloth, type Way } from '../../src/lib/cloth/ways-out.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { area, bounds, stretches } from '../../src/lib/drafting/geometry/measure.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';

const skirt: Skirt = {
	style: 'flared', share: 0.5, length: 600, waistEase: 10, hipEase: 20, panels: 2, band: { kind: 'straight', depth: 40, underlap: 30, sits: 'above' }, hem: 15,
	hemFinish: 'narrow', zipAt: 'centreBack', zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: { shorterBy: 25, share: null }, allowances: { waist: 15, seam: 15 }
};
const body = { waist: 740, hip: 990 };
const bolt = { width: 1400, length: null, unusable: [], folded: false };
const asked: SkirtOnCloth = { body, skirt, of: 'shell', grain: 'middle', cloth: bolt, nap: false, gap: 0, seconds: 2 };
const still = (): number => 0;

function ways(on: SkirtOnCloth): readonly Way[] {
	return [...waysOut(on, still)];
}

test('A draft’s shell, lining and interfacing each give their own pieces, cut outlines with true arcs and none changed in area', () => {
	const draft = draftSkirt(body, skirt);
	if (!draft.ok) throw new Error('no draft');
	const { pieces } = draft.value;
	expect(clothPieces(pieces, 'shell', 'middle', false).map(({ name, count }) => [name, count])).toEqual([['panel', 2], ['band', 1]]);
	expect(clothPieces(pieces, 'lining', 'middle', false).map(({ name }) => name)).toEqual(['lining']);
	expect(clothPieces(pieces, 'interfacing', 'middle', false)).toHaveLength(1);
	for (const grain of ['middle', 'edge'] as const) {
		const [panel] = clothPieces(pieces, 'shell', grain, false);
		const outline = outlineOf(panel!.shape);
		expect(area(outline)).toBeCloseTo(area(pieces.find(({ name }) => name === 'panel')!.cut), 4);
		expect(stretches(outline).some(({ edge }) => edge.centre)).toBe(true);
		// On every turn that is allowed, the middle or one straight edge runs along the cloth.
		for (const turn of panel!.turns) {
			const lines = stretches(turned(outline, turn)).filter(({ edge }) => !edge.centre).map(({ from, edge }) => Math.abs(edge.end[1] - from[1]));
			if (grain === 'edge') expect(Math.min(...lines)).toBeLessThan(1e-6);
			else expect(Math.min(...lines)).toBeGreaterThan(100);
		}
	}
	expect(clothPieces(pieces, 'shell', 'middle', true).every(({ turns }) => turns.length === 1 && turns[0] === 0)).toBe(true);
});

test('A full circle’s ring is laid with its hole: a band goes into it where it fits', () => {
	const ring: Skirt = { ...skirt, share: 1, panels: 1, closure: 'none', length: 450, lining: null, waistEase: 300, band: { kind: 'elastic', depth: 30, underlap: 0, elastic: 25, sits: 'above' } };
	const draft = draftSkirt({ waist: 740 }, ring);
	const drafted = draft.ok ? draft : draftSkirt({ waist: 740, hip: 900 }, ring);
	if (!drafted.ok) throw new Error(JSON.stringify(drafted.issues));
	const whole = drafted.value.pieces.find(({ hole }) => hole);
	expect(whole).toBeDefined();
	const [panel] = clothPieces([whole!], whole!.cloth, 'middle', false);
	expect(area(outlineOf(panel!.shape))).toBeCloseTo(area(whole!.cut) - Math.abs(area(whole!.hole!.cut)), 3);
	const { from, to } = bounds(outlineOf(panel!.shape));
	const tab = { name: 'tab', count: 1, shape: { kind: 'rectangle', length: 80, width: 60 }, turns: [0], half: false } as const;
	const steps = layOut({ cloth: { ...bolt, width: to[1] - from[1] + 1 }, pieces: [panel!, tab], gap: 0, seconds: 3, find: 'length' }, still);
	let step = steps.next();
	while (!step.done) step = steps.next();
	// Nowhere else is there room beside a circle as wide as the cloth without more length.
	expect(step.value.length!).toBeLessThan(to[0] - from[0] + 1);
});

test('By the bolt: each way that is said saves 10 cm or more, and its layout passes the check', () => {
	const found = ways(asked);
	expect(found.map(({ change }) => change.kind)).toContain('edgeOnGrain');
	for (const { change, answer, saves } of found) {
		expect(saves!).toBeGreaterThanOrEqual(100);
		const on = change.kind === 'edgeOnGrain' ? { ...asked, grain: 'edge' as const } : change.kind === 'panels' ? { ...asked, skirt: { ...skirt, panels: change.panels } } : change.kind === 'width' ? { ...asked, cloth: { ...bolt, width: change.width } } : asked;
		expect(wrongsOf(questionOf(on)!, answer.length!, answer.placements)).toEqual([]);
	}
});

test('On a found cloth that is too small: the longest skirt that fits, to a millimetre, and each other way really fits', () => {
	const curtain = { width: 1200, length: 1100, unusable: [{ x: 500, y: 500, length: 100, width: 100 }], folded: false };
	const on = { ...asked, cloth: curtain };
	const found = ways(on);
	const longest = found.find(({ change }) => change.kind === 'length');
	expect(longest).toBeDefined();
	expect(longest!.answer.proved).toBe(true);
	for (const { change, answer } of found) {
		expect(answer.fits).toBe(true);
		const of = change.kind === 'edgeOnGrain' ? { ...on, grain: 'edge' as const }
			: { ...on, skirt: { ...skirt, ...(change.kind === 'panels' ? { panels: change.panels } : change.kind === 'length' ? { length: change.length } : change.kind === 'share' ? { share: change.share } : {}) } };
		expect(wrongsOf(questionOf(of)!, answer.length!, answer.placements)).toEqual([]);
		expect(answer.length!).toBeLessThanOrEqual(curtain.length + 1e-6);
	}
	// A skirt that is longer than the bound is never said to fit.
	expect((longest!.change as { readonly length: number }).length).toBeLessThanOrEqual(longest!.answer.bound + 1e-6);
});

test('Cloth that is enough needs no way out', () => {
	expect(ways({ ...asked, cloth: { width: 1500, length: 3000, unusable: [], folded: false } })).toEqual([]);
});
