import fc from 'fast-check';
import { expect, test } from 'vitest';
import { walkOf } from '../../src/lib/drafting/walk.ts';
import { partOf, walkDrawing } from '../../src/lib/paper/diagrams/walk.ts';
import { meets } from '../../src/lib/paper/label-place.ts';
import { layOut, type Screen } from '../../src/lib/paper/screen.ts';
import { draftOf, sampleDraft } from './sample-draft.ts';

/** Words that lie on each other or leave the frame. */
function clashes({ words, width, height }: Screen): readonly string[] {
	return words.flatMap(({ text, discs }, i) => [
		...(discs.some(({ x, y, r }) => x - r < -2 || x + r > width + 2 || y - r < -2 || y + r > height + 2) ? [`${text} leaves the frame`] : []),
		...words.slice(i + 1).filter((other) => meets(discs, other.discs)).map((other) => `${text} on ${other.text}`)
	]);
}
const drawings = (sample: Parameters<typeof sampleDraft>[0], unit: 'cm' | 'in' = 'cm') => {
	const draft = sampleDraft(sample);
	return walkOf(draft).map((row) => ({ row, drawing: walkDrawing(draft.pieces, row, { unit }) }));
};

test('No word of any seam’s drawing lies on another or leaves the sheet', () => {
	const draftable = fc.record({
		share: fc.double({ min: 0.1, max: 2, noNaN: true }), panels: fc.integer({ min: 1, max: 12 }), waist: fc.integer({ min: 480, max: 1500 }),
		length: fc.integer({ min: 250, max: 1100 }), zipAt: fc.constantFrom('centreBack', 'leftSide')
	}).filter((sample) => draftOf(sample) !== null);
	fc.assert(fc.property(draftable, fc.constantFrom('cm', 'in'), fc.constantFrom(288, 358, 490, 700), (sample, unit, width) => {
		for (const { row, drawing } of drawings(sample, unit)) expect([row.name, ...clashes(layOut(drawing, width))]).toEqual([row.name]);
	}), { numRuns: 150 });
});

test('Both pieces are named with their lengths, and said in the text alternative', () => {
	const waist = drawings({}).find(({ row }) => row.name === 'waist to band')!.drawing;
	// The sample's waist seam is 740 mm.
	expect(layOut(waist).words.map(({ text }) => text)).toEqual(expect.arrayContaining(['Skirt', 'Band']));
	expect(waist.alt).toBe('Waist to band. Skirt: 74.0 cm; Band: 74.0 cm. The edges that are sewn together are marked.');
	expect(drawings({ panels: 4 }).find(({ row }) => row.name === 'waist to band')!.drawing.alt).toContain('Panel, all 4: 74.0 cm');
	expect(drawings({ panels: 4 }).find(({ row }) => row.name === 'centre front')!.drawing.alt).toContain('Panel 2: 58.0 cm; Panel 3: 58.0 cm');
	expect(drawings({ panels: 2, zipAt: 'leftSide' }).find(({ row }) => row.name === 'waist to band')!.drawing.alt).toContain('Back and front: 74.0 cm');
});

test('An edge sewn to another of its own piece is drawn once, both edges marked', () => {
	const seam = drawings({}).find(({ row }) => row.name === 'centre back')!.drawing;
	const marked = seam.shapes.filter((shape) => shape.shape === 'path' && shape.now);
	expect(marked).toHaveLength(2);
	expect(seam.shapes.filter((shape) => shape.shape === 'path' && shape.fill === 'wrongSide')).toHaveLength(1);
});

test('What is marked is as long as the seam, and its notches lie on it', () => {
	for (const { row, drawing } of drawings({ panels: 2 })) {
		const marked = drawing.shapes.flatMap((shape) => (shape.shape === 'path' && shape.now ? [shape.path] : []));
		const length = marked.reduce((sum, path) => sum + path.edges.reduce((part, edge, i) => {
			const from = path.edges[i - 1]?.end ?? path.start;
			return part + (edge.centre ? Math.abs(edge.turn) * Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1]) : Math.hypot(edge.end[0] - from[0], edge.end[1] - from[1]));
		}, 0), 0);
		// Of two like panels one is drawn for both, so a side of two copies shows half its length.
		const shown = (edges: typeof row.a) => edges.filter(({ copy, piece }) => edges.find((edge) => edge.piece === piece)!.copy === copy).reduce((sum, edge) => sum + edge.length, 0);
		expect(length).toBeCloseTo(shown(row.a) + shown(row.b), 6);
	}
});

test('A part of a run of arcs under one name is counted along the whole run', () => {
	const outline = { start: [0, 0] as const, edges: [
		{ name: 'hem', end: [10, 0] as const, centre: null, turn: 0 }, { name: 'hem', end: [20, 10] as const, centre: [10, 10] as const, turn: Math.PI / 2 },
		{ name: 'side', end: [0, 0] as const, centre: null, turn: 0 }
	] };
	const whole = 10 + 5 * Math.PI;
	const part = partOf(outline, 'hem', 5 / whole, 1);
	expect(part.start[0]).toBeCloseTo(5, 9);
	expect(part.edges.map(({ end }) => end)).toEqual([[10, 0], [20, 10]]);
	const later = partOf(outline, 'hem', (10 + 2.5 * Math.PI) / whole, 1);
	expect(later.edges).toHaveLength(1);
	expect(later.edges[0]!.turn).toBeCloseTo(Math.PI / 4, 9);
});

test('The drawing is plain data that survives JSON', () => {
	for (const { drawing } of drawings({ panels: 3 })) expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
});
