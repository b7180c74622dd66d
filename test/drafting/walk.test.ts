import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import type { Notch, Piece } from '../../src/lib/drafting/piece.ts';
import type { Seam } from '../../src/lib/drafting/seam.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import { walkOf } from '../../src/lib/drafting/walk.ts';
import { ansurBody, anySkirt, nhanesBody, seeded, halfCircle } from './bodies.ts';
import { walked } from './measured.ts';

const body = { waist: 740, hip: 990, waistToHip: 200 };
const skirt = halfCircle;
function draftOf(choices: Partial<Skirt>): Draft {
	const draft = draftSkirt(body, { ...skirt, ...choices });
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const rowOf = (draft: Pick<Draft, 'pieces' | 'seams'>, name: string) => walkOf(draft).find((row) => row.name === name)!;
const changed = (draft: Draft, name: string, change: (piece: Piece) => Piece): Pick<Draft, 'pieces' | 'seams'> =>
	({ pieces: draft.pieces.map((piece) => (piece.name === name ? change(piece) : piece)), seams: draft.seams });

test('There is a row a seam, in their order', () => {
	const draft = draftOf({ panels: 4, lining: { shorterBy: 25, share: null } });
	expect(walkOf(draft).map(({ name }) => name)).toEqual(draft.seams.map(({ name }) => name));
});

test('A half circle walks: 75 cm of waist on 75 cm of band, the back seam on itself', () => {
	// Waist 740 and ease 10 (arithmetic); 560 below the band, of which 205 are open: a 20 cm zip and 5 mm down (opening.ts).
	const draft = draftOf({});
	const waist = rowOf(draft, 'waist to band');
	expect([waist.lengthA, waist.lengthB, waist.left, waist.ease].map((mm) => Math.round(mm * 1e6) / 1e6 + 0)).toEqual([750, 750, 0, 0]);
	const opening = 205;
	expect(rowOf(draft, 'zip opening').lengthA).toBeCloseTo(opening, 9);
	expect(rowOf(draft, 'centre back').lengthB).toBeCloseTo(560 - opening, 9);
});

test('The band’s notches meet the skirt’s: sides and centre front of one panel, joins of four', () => {
	const one = rowOf(draftOf({}), 'waist to band');
	// A quarter of the seam apart, round from centre back; the underlap begins where the seam ends.
	expect(one.notches.map(({ marks, side, meets, place }) => [marks, side, meets, Math.round(place * 100) / 100])).toEqual([
		['right side', 'a', 'notch', 187.5], ['centre front', 'a', 'notch', 375], ['left side', 'a', 'notch', 562.5], ['underlap', 'b', 'join', 750]
	]);
	const four = rowOf(draftOf({ panels: 4 }), 'waist to band');
	expect(four.notches.map(({ marks, side, meets }) => [marks, side, meets])).toEqual([
		['right side', 'b', 'join'], ['centre front', 'b', 'join'], ['left side', 'b', 'join'], ['underlap', 'b', 'join']
	]);
	expect([one.notchesMeet, four.notchesMeet]).toEqual([true, true]);
});

test('The zip’s end meets the zip’s end', () => {
	const { notches, notchesMeet } = rowOf(draftOf({ panels: 2 }), 'centre back');
	expect(notches.map(({ marks, meets, place, partner }) => [marks, meets, place, partner])).toEqual([['zip end', 'notch', 0, 0]]);
	expect(notchesMeet).toBe(true);
});

test('The band’s facing has no notch: there is nothing to meet, and that is said', () => {
	const row = rowOf(draftOf({}), 'waist to band facing');
	expect([row.unmarked, row.notchesMeet, row.notches.every(({ meets }) => meets === 'none')]).toEqual([true, true, true]);
});

test('Every seam of any skirt on any body walks to 0.01 mm, as measured in small chords, and its notches meet', () => {
	const random = seeded(71);
	let drafted = 0;
	for (let i = 0; i < 400; i++) {
		const draft = draftSkirt(i % 2 ? ansurBody(random) : nhanesBody(random), anySkirt(random));
		if (!draft.ok) continue;
		drafted++;
		for (const row of walkOf(draft.value)) {
			if (!row.lengthsAgree || !row.notchesMeet) expect(row).toBe('a seam that walks');
			if (i % 20) continue;
			// 2,000 chords an arc: short by (turn/2000)²/24 of it, under 1e-5 for two circles.
			const chords = (edges: typeof row.a) => edges.reduce((sum, { piece, edge, from, to }) => sum + walked(draft.value.pieces.find(({ name }) => name === piece)!.stitch, edge) * Math.abs(to - from), 0);
			expect(Math.abs(chords(row.a) - row.lengthA)).toBeLessThan(0.01);
			expect(Math.abs(chords(row.b) - row.lengthB)).toBeLessThan(0.01);
		}
	}
	expect(drafted).toBeGreaterThan(200);
});

test('Lengths are measured on the outlines, whatever the seam says of itself', () => {
	const draft = draftOf({});
	const lying = draft.seams.map((seam): Seam => ({ ...seam, lengthA: 1, lengthB: 1 }));
	expect(walkOf({ pieces: draft.pieces, seams: lying })).toEqual(walkOf(draft));
	const longer = changed(draft, 'band', (band) => ({
		...band, stitch: { start: band.stitch.start, edges: band.stitch.edges.map((edge) => ({ ...edge, end: [edge.end[0] * 1.001, edge.end[1]] as const })) }
	}));
	const row = rowOf(longer, 'waist to band');
	// 750 × 0.001 (arithmetic).
	expect(row.left).toBeCloseTo(-0.75, 9);
	expect(row.lengthsAgree).toBe(false);
});

test('A notch that is moved, lost, or of the other kind is told', () => {
	const draft = draftOf({});
	const withNotch = (change: (notch: Notch) => readonly Notch[]) => changed(draft, 'panel', (panel) => ({ ...panel, notches: panel.notches.flatMap((notch) => (notch.marks === 'centre front' ? change(notch) : [notch])) }));
	const moved = rowOf(withNotch((notch) => [{ ...notch, at: notch.at + 0.01 }]), 'waist to band');
	// The panel's waist edge runs the other way: a hundredth of 750 mm nearer the beginning (arithmetic).
	expect(moved.notches.find(({ marks }) => marks === 'centre front')!.differs).toBeCloseTo(-7.5, 9);
	expect(moved.notchesMeet).toBe(false);
	const lost = rowOf(withNotch(() => []), 'waist to band');
	expect(lost.notches.find(({ marks }) => marks === 'centre front')).toMatchObject({ side: 'b', meets: 'none', partner: null, differs: null });
	expect(lost.notchesMeet).toBe(false);
	expect(rowOf(withNotch((notch) => [{ ...notch, kind: 'double' }]), 'waist to band').notchesMeet).toBe(false);
	expect(rowOf(withNotch((notch) => [notch, { ...notch, at: 0.1 }]), 'waist to band').notchesMeet).toBe(false);
});

/** Two strips of two lengths, notched in their middles, as a style with ease would have them. */
function strips(a: number, b: number, ease: number, notchB = 0.5): Pick<Draft, 'pieces' | 'seams'> {
	const strip = (name: string, length: number, at: number): Piece => {
		const stitch = { start: [0, 0] as const, edges: [[length, 0], [length, 50], [0, 50], [0, 0]].map((end, i) => ({ name: ['top', 'right', 'foot', 'left'][i]!, end: end as unknown as readonly [number, number], centre: null, turn: 0 })) };
		return { name, cloth: 'shell', count: 1, fold: null, grain: { from: [1, 1], to: [2, 1] }, stitch, cut: stitch, notches: [{ edge: 'top', at, kind: 'single', marks: 'middle' }] };
	};
	const edge = (piece: string) => ({ piece, copy: 1, edge: 'top', from: 0, to: 1 });
	return { pieces: [strip('long', a, 0.5), strip('short', b, notchB)], seams: [{ name: 'tier', a: [edge('long')], b: [edge('short')], lengthA: a, lengthB: b, ease }] };
}

test('Ease is what may differ, spread evenly: gathered to half, the middles still meet', () => {
	const gathered = rowOf(strips(2000, 1000, 1000), 'tier');
	expect([gathered.left, gathered.lengthsAgree, gathered.notchesMeet]).toEqual([0, true, true]);
	const short = rowOf(strips(2000, 1000, 900), 'tier');
	expect([short.left, short.lengthsAgree]).toEqual([100, false]);
	expect(rowOf(strips(2000, 1000, 1000, 0.51), 'tier').notches[0]!.differs).toBeCloseTo(-10, 9);
});

test('A piece that a seam names and nobody drew is our own bug, and says so', () => {
	expect(() => walkOf({ pieces: [], seams: strips(1, 1, 0).seams })).toThrow('no piece long to walk');
});
