import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import type { Seam } from '../../src/lib/drafting/seam.ts';
import type { Skirt } from '../../src/lib/drafting/skirt.ts';
import { anySkirt, seeded, halfCircle } from './bodies.ts';

const body = { waist: 740, hip: 990, waistToHip: 200 };
const skirt = halfCircle;
function draftOf(choices: Partial<Skirt>): Draft {
	const draft = draftSkirt(body, { ...skirt, ...choices });
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const names = (choices: Partial<Skirt>) => draftOf(choices).seams.map(({ name }) => name);
const band = ['waist to band', 'waist to band facing', 'band first end', 'band last end', 'underlap'];

test('Seams are named by where they lie round the body', () => {
	expect(names({})).toEqual(['zip opening', 'centre back', ...band]);
	expect(names({ panels: 2 })).toEqual(['centre front', 'zip opening', 'centre back', ...band]);
	expect(names({ panels: 2, zipAt: 'leftSide' })).toEqual(['right side', 'zip opening', 'left side', ...band]);
	expect(names({ panels: 4 })).toEqual(['right side', 'centre front', 'left side', 'zip opening', 'centre back', ...band]);
	expect(names({ panels: 3 })).toEqual(['panel 1 to panel 2', 'panel 2 to panel 3', 'zip opening', 'centre back', ...band]);
	expect(names({ panels: 4, zipAt: 'leftSide' })).toEqual(['centre back', 'right side', 'centre front', 'zip opening', 'left side', ...band]);
});

test('One panel has its seam at centre back, whatever was asked, and the draft says so', () => {
	const draft = draftOf({ zipAt: 'leftSide' });
	expect(draft.skirt.zipAt).toBe('centreBack');
	expect(draft.checks.find(({ code }) => code === 'zip-at-centre-back')?.severity).toBe('note');
	expect(draftOf({}).checks.some(({ code }) => code === 'zip-at-centre-back')).toBe(false);
});

test('Two panels with the zip at the left side are a front and a back, each cut on its fold', () => {
	const panels = draftOf({ panels: 2, zipAt: 'leftSide' }).pieces.filter(({ cloth, name }) => cloth === 'shell' && name !== 'band');
	expect(panels.map(({ name, count, fold }) => [name, count, fold?.name])).toEqual([['back', 1, 'centre back'], ['front', 1, 'centre front']]);
});

test('One panel is cut on the centre front fold, its grain square to its middle', () => {
	const [panel] = draftOf({}).pieces;
	expect([panel!.name, panel!.count, panel!.fold?.name]).toEqual(['panel', 1, 'centre front']);
	expect(panel!.grain.from[0]).toBe(panel!.grain.to[0]);
	const [many] = draftOf({ panels: 6 }).pieces;
	expect([many!.name, many!.count, many!.fold, many!.grain.from[1], many!.grain.to[1]]).toEqual(['panel', 6, null, 0, 0]);
});

test('The seam with the zip is sewn from the zip’s end to the hem, and the slit above it is a row of its own', () => {
	const { seams, figures } = draftOf({ panels: 2 });
	const [slit, sewn] = ['zip opening', 'centre back'].map((name) => seams.find((seam) => seam.name === name)!);
	expect(slit!.lengthA).toBeCloseTo(figures.zipEndBelowSeam!, 9);
	expect(slit!.lengthA + sewn!.lengthA).toBeCloseTo(figures.skirtLength, 9);
	const part = figures.zipEndBelowSeam! / figures.skirtLength;
	// The last panel's second edge runs from hem to waist, so it is counted backwards.
	expect(sewn!.b).toEqual([{ piece: 'panel', copy: 1, edge: 'first seam', from: part, to: 1 }]);
	expect(sewn!.a).toEqual([{ piece: 'panel', copy: 2, edge: 'second seam', from: 1 - part, to: 0 }]);
});

/** Each stretch of each edge that is sewn to something, once per row and side. */
const sides = (seams: readonly Seam[]) => seams.flatMap(({ a, b }) => [...a, ...b]);

test('Every edge but the hems is sewn over its whole length: nothing is forgotten and nothing is sewn twice', () => {
	const random = seeded(51);
	for (let i = 0; i < 300; i++) {
		const draft = draftSkirt(body, anySkirt(random));
		if (!draft.ok) continue;
		const { pieces, seams } = draft.value;
		for (const piece of pieces.filter(({ cloth }) => cloth !== 'interfacing')) {
			for (const { name } of piece.stitch.edges) {
				for (let copy = 1; copy <= piece.count; copy++) {
					const covered = sides(seams).filter((side) => side.piece === piece.name && side.edge === name && side.copy === copy).reduce((sum, { from, to }) => sum + Math.abs(to - from), 0);
					// A shell's waist takes the band, its facing and the lining; a lining's only the shell; a slit is bound by the zip.
					const times = name === 'hem' ? 0 : name === 'waist' && piece.cloth === 'shell' && piece.name !== 'band' ? (draft.value.skirt.lining ? 3 : 2) : 1;
					if (Math.abs(covered - times) > 1e-9) expect([piece.name, copy, name, covered]).toBe(times);
				}
			}
		}
	}
});

test('Copies named in seams exist, once each round the waist', () => {
	const { seams, pieces } = draftOf({ panels: 12 });
	expect(pieces[0]!.count).toBe(12);
	expect(seams.find(({ name }) => name === 'waist to band')!.a.map(({ copy }) => copy)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
});

test('Notches on the waist meet those on the band: centre front single, sides single, centre back double', () => {
	const random = seeded(52);
	for (let i = 0; i < 300; i++) {
		const draft = draftSkirt(body, anySkirt(random));
		if (!draft.ok) continue;
		const { pieces, seams, figures } = draft.value;
		const row = seams.find(({ name }) => name === 'waist to band')!;
		const bandPiece = pieces.find(({ name }) => name === 'band')!;
		const bandLength = figures.waistSeamGirth + draft.value.skirt.band.underlap;
		const onBand = new Map(bandPiece.notches.map((notch) => [notch.marks, notch]));
		let gone = 0;
		for (const side of row.a) {
			const piece = pieces.find(({ name }) => name === side.piece)!;
			const length = figures.waistSeamGirth / row.a.length;
			for (const notch of piece.notches.filter(({ edge, copy }) => edge === 'waist' && (copy ?? side.copy) === side.copy)) {
				const along = row.b[0]!.from * bandLength + gone + Math.abs(notch.at - side.from) * length;
				const partner = onBand.get(notch.marks)!;
				expect([notch.marks, partner.kind]).toEqual([notch.marks, notch.marks === 'centre back' ? 'double' : 'single']);
				expect(Math.abs(partner.at * bandLength - along)).toBeLessThan(1e-6);
			}
			gone += length;
		}
	}
});

test('The underlap reaches from the left back, or under the front at the left side', () => {
	const at = (zipAt: Skirt['zipAt']) => draftOf({ panels: 2, zipAt }).seams.find(({ name }) => name === 'waist to band')!.b[0]!;
	expect([at('centreBack').from, at('centreBack').to]).toEqual([0, 750 / 780]);
	expect([at('leftSide').from, at('leftSide').to]).toEqual([30 / 780, 1]);
});

test('A lining is joined at the waist, is shorter by what was asked, and its slit ends below the zip', () => {
	const { seams, figures, pieces } = draftOf({ panels: 2, lining: { shorterBy: 25, share: null } });
	expect(seams.filter(({ name }) => name.startsWith('lining')).map(({ name }) => name)).toEqual(['lining centre front', 'lining opening', 'lining centre back', 'lining to waist']);
	expect(figures.liningHemRadius).toBeCloseTo(figures.hemRadius - 25, 9);
	expect(seams.find(({ name }) => name === 'lining opening')!.lengthA).toBeCloseTo(figures.zipEndBelowSeam! + 15, 9);
	expect(pieces.filter(({ cloth }) => cloth === 'lining').map(({ name, count }) => [name, count])).toEqual([['lining', 2]]);
	expect(draftOf({ lining: null }).pieces.some(({ cloth }) => cloth === 'lining')).toBe(false);
});

test('Without a hip nobody knows the opening, so the seam is drawn whole and the draft asks', () => {
	const draft = draftSkirt({ waist: 740 }, skirt);
	if (!draft.ok) throw new Error('refused');
	expect(draft.value.seams.some(({ name }) => name === 'zip opening')).toBe(false);
	expect(draft.value.checks.find(({ code }) => code === 'hip-missing')?.severity).toBe('caution');
});
