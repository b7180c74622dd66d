import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { meets } from '../../src/lib/paper/label-place.ts';
import { drawingNames, isDrawingName, lessonDrawing } from '../../src/lib/paper/diagrams/lesson.ts';
import { sectorDiagram } from '../../src/lib/paper/diagrams/sector.ts';
import { sharesDiagram } from '../../src/lib/paper/diagrams/shares.ts';
import { layOut, type Screen } from '../../src/lib/paper/screen.ts';
import { draftOf, sampleDraft } from './sample-draft.ts';

/** Words of a screen that lie on each other or leave its frame. */
export function clashes(screen: Screen): string[] {
	const found: string[] = [];
	for (const [i, a] of screen.words.entries()) {
		if (a.discs.some((d) => d.x - d.r < -2 || d.x + d.r > screen.width + 2 || d.y - d.r < -2 || d.y + d.r > screen.height + 2)) found.push(`${a.text} leaves the frame`);
		for (const b of screen.words.slice(i + 1)) if (meets(a.discs, b.discs)) found.push(`${a.text} on ${b.text}`);
	}
	return found;
}

/** Drafts that can be cut: 48 cm to 150 cm round the waist, any share, any number of panels. */
const draftable = fc
	.record({
		share: fc.double({ min: 0.1, max: 2, noNaN: true }), panels: fc.integer({ min: 1, max: 12 }), waist: fc.integer({ min: 480, max: 1500 }),
		length: fc.integer({ min: 250, max: 1100 }), hem: fc.integer({ min: 5, max: 50 }), seam: fc.constantFrom(10, 15, 20), zipAt: fc.constantFrom('centreBack', 'leftSide')
	})
	.filter((sample) => draftOf(sample) !== null);

describe('the sector diagram', () => {
	it('never lays a word on another or off the sheet, for any draft, unit and width', () => {
		fc.assert(
			fc.property(draftable, fc.constantFrom('cm', 'in'), fc.constantFrom('half', 'whole'), fc.constantFrom('waist', 'hem', 'none'), fc.constantFrom(288, 358, 490, 700),
				(sample, unit, layout, emphasis, width) => {
					const screen = layOut(sectorDiagram(sampleDraft(sample), { unit, layout, emphasis }), width);
					expect(clashes(screen)).toEqual([]);
				}),
			{ numRuns: 1000 }
		);
	});

	it('writes the four radii of the half circle on the ruler, to a millimetre', () => {
		const words = layOut(sectorDiagram(sampleDraft(), { unit: 'cm', layout: 'half' })).words.map((w) => w.text);
		// 740 / π = 235.55; less 15; plus 580; plus 20 (circle geometry)
		expect(words).toEqual(expect.arrayContaining(['22.1', '23.6', '81.6', '83.6', 'zip ends, 20.5', 'place on the fold', 'grain']));
	});
	it('writes inches to an eighth', () => {
		const words = layOut(sectorDiagram(sampleDraft(), { unit: 'in', layout: 'half' })).words.map((w) => w.text);
		expect(words).toEqual(expect.arrayContaining(['8 5/8', '9 1/4', '32 1/8', '32 7/8', 'dots 2 in apart']));
	});
	it('speaks every figure in its text alternative', () => {
		const { alt } = sectorDiagram(sampleDraft(), { unit: 'cm', layout: 'half' });
		for (const figure of ['22.1', '23.6', '81.6', '83.6', '20.5']) expect(alt).toContain(figure);
	});
	it('draws the earlier draft as it was, with its figure', () => {
		const drawing = sectorDiagram(sampleDraft({ length: 660 }), { unit: 'cm', layout: 'half', before: sampleDraft() });
		expect(drawing.shapes.filter((s) => s.shape === 'path' && s.line === 'asItWas')).toHaveLength(1);
		expect(layOut(drawing).words.map((w) => w.text)).toContain('as it was, 81.6');
	});
	it('lays front and back beside each other, each with its name, and keeps every word apart', () => {
		for (const share of [0.3, 0.5, 0.75, 1, 1.5]) for (const layout of ['half', 'whole'] as const) for (const width of [288, 358, 490, 700]) {
			const sample = { share, panels: 2, zipAt: 'leftSide' } as const;
			const screen = layOut(sectorDiagram(sampleDraft(sample), { unit: 'cm', layout, emphasis: 'hem', before: sampleDraft({ ...sample, length: 580 }) }), width);
			expect(clashes(screen)).toEqual([]);
			expect(screen.words.map((w) => w.text)).toEqual(expect.arrayContaining(['Front', 'Back']));
		}
		const { from, to } = sectorDiagram(sampleDraft({ panels: 2, zipAt: 'leftSide' }), { unit: 'cm', layout: 'whole' }).box;
		// Two panels of 90°, each as wide as its cut hem: 2 × 835.5 × sin(45° + asin(20/835.5)), and a gap between them.
		expect(to[0] - from[0]).toBeGreaterThan(2 * 2 * 835.5 * Math.sin(Math.PI / 4 + Math.asin(20 / 835.5)));
	});
	it('marks the zip’s end on the seam that has the zip', () => {
		const drawing = sectorDiagram(sampleDraft({ panels: 2, zipAt: 'leftSide' }), { unit: 'cm', layout: 'whole' });
		const notches = drawing.shapes.flatMap((s) => (s.shape === 'mark' && s.mark === 'notch' ? [s.at[0]] : []));
		// Back first: its left side is its first seam, on the sheet's left; the front's left side is its second, on the right.
		expect(notches).toHaveLength(2);
		expect(notches[0]).toBeLessThan(drawing.box.from[0] + (drawing.box.to[0] - drawing.box.from[0]) * 0.25);
		expect(notches[1]).toBeGreaterThan(drawing.box.from[0] + (drawing.box.to[0] - drawing.box.from[0]) * 0.75);
	});
	it('is plain data that survives JSON', () => {
		const drawing = sectorDiagram(sampleDraft(), { unit: 'cm', layout: 'whole' });
		expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
	});
});

describe('the construction drawings', () => {
	it('never lay a word on another or off the sheet, for any draft, unit and width', () => {
		fc.assert(
			fc.property(draftable, fc.constantFrom('cm', 'in'), fc.constantFrom(...drawingNames), fc.constantFrom(288, 326, 358, 490, 700), (sample, unit, name, width) => {
				expect(clashes(layOut(lessonDrawing(name, sampleDraft(sample), { unit }), width))).toEqual([]);
			}),
			{ numRuns: 3000 }
		);
	});
	it('say in words what they show, and are plain data', () => {
		for (const name of drawingNames) {
			const drawing = lessonDrawing(name, sampleDraft(), { unit: 'cm' });
			expect(drawing.alt.length).toBeGreaterThan(20);
			expect(drawing.alt).not.toMatch(/NaN|undefined|Infinity/);
			expect(JSON.stringify(drawing)).not.toContain('null,null');
			expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
		}
	});
	it('say of an opening that nobody could work out that it isn’t known yet, never 0', () => {
		const { body, skirt } = sampleDraft();
		const draft = draftSkirt({ waist: body.waist }, skirt);
		if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
		for (const name of drawingNames) for (const unit of ['cm', 'in'] as const) {
			const { alt, shapes } = lessonDrawing(name, draft.value, { unit });
			const words = [alt, ...shapes.flatMap((shape) => (shape.shape === 'text' ? [shape.text] : []))].join('; ');
			if (/NaN|undefined|(?<![\d.])0(\.0)? (cm|in|mm)/.test(words)) expect(`${name}: ${words}`).toBe('known or unsaid');
		}
	});
	it('speak every large figure in their text alternative', () => {
		for (const name of drawingNames) for (const unit of ['cm', 'in'] as const) {
			const { alt, shapes } = lessonDrawing(name, sampleDraft(), { unit });
			for (const shape of shapes) {
				if (shape.shape === 'text' && shape.voice === 'figure') expect(`${name}: ${alt}`).toContain(shape.text.replace(/ (cm|in|mm|h)$/, ''));
			}
		}
	});
	it('knows its names from any other word', () => {
		expect(isDrawingName('walk-waist')).toBe(true);
		expect(isDrawingName('toString')).toBe(false);
	});
});

describe('the four shares', () => {
	it('gives the radius and hem of each for one waist seam', () => {
		// 740 / (2π × share): quarter 471.1, half 235.5, three-quarter 157.0, full 117.8; hems 2π × share × (radius + 580)
		const words = layOut(sharesDiagram(sampleDraft(), { unit: 'cm' })).words.map((w) => w.text);
		expect(words).toEqual(expect.arrayContaining(['radius 47.1', 'hem 165.1', 'radius 23.6', 'hem 256.2', 'radius 15.7', 'hem 347.3', 'radius 11.8', 'hem 438.4']));
	});
});
