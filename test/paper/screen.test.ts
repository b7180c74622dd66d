import { describe, expect, it } from 'vitest';
import type { Drawing, Ruler, Shape } from '../../src/lib/paper/drawing.ts';
import { arcPath, line, linePath, words } from '../../src/lib/paper/diagrams/shape.ts';
import { pathData, pathLength, placePath, movedAside, stationAt } from '../../src/lib/paper/path-data.ts';
import { spread } from '../../src/lib/paper/ruler-ticks.ts';
import { layOut } from '../../src/lib/paper/screen.ts';
import { runs, textWidth } from '../../src/lib/paper/voice.ts';

const drawing = (shapes: readonly Shape[], to: readonly [number, number] = [100, 100]): Drawing => ({ alt: 'a square', box: { from: [0, 0], to }, inkMargin: [10, 20, 30, 40], shapes });
const ruler = (more: Partial<Ruler> = {}): Ruler => ({ shape: 'ruler', along: linePath([0, 0], [100, 0]), starts: 0, unit: 'cm', body: 'scale', marks: [], ...more });

describe('laying a drawing out', () => {
	it('fits the box between its margins and keeps its proportions', () => {
		// (358 − 20 − 40) / 100 px to the mm; height 100 of them and the margins 10 and 30
		const screen = layOut(drawing([line([0, 0], [100, 100], 'cut')]), 358);
		expect(screen.scale).toBeCloseTo(2.98, 10);
		expect(screen.height).toBe(338);
		expect(screen.marks[0]).toMatchObject({ kind: 'path', d: 'M40 308L338 10' });
	});
	it('holds a tall drawing to the height of a phone', () => {
		const screen = layOut(drawing([], [10, 1000]), 358);
		expect(screen.height).toBeLessThanOrEqual(Math.ceil(1.4 * 358));
	});
	it('keeps a word its distance in px from its place at any width', () => {
		for (const width of [288, 358, 700]) {
			const screen = layOut(drawing([words([0, 0], 'hem', 'label', { shift: [5, -7] })], [100, 50]), width);
			const text = screen.marks.find((m) => m.kind === 'text');
			// The box is 50 mm tall and lies under a margin of 10 px.
			expect(text?.kind === 'text' && text.at).toEqual([45, Math.round((10 + 50 * screen.scale - 7) * 10) / 10]);
		}
	});
	it('moves a word that would lie on another to its next place, and leaves out one that has none', () => {
		const taken = words([50, 50], 'waist', 'label', { anchor: 'middle' });
		const moved = words([50, 50], 'front', 'label', { anchor: 'middle', rank: 1, or: [words([50, 50], 'front', 'label', { anchor: 'middle', shift: [0, 40] })] });
		const lost = words([50, 50], 'back', 'label', { anchor: 'middle', rank: 2 });
		const screen = layOut(drawing([lost, moved, taken]), 358);
		expect(screen.words.map((w) => w.text)).toEqual(['waist', 'front']);
	});
	it('keeps a word that asks for it off the lines', () => {
		const across = words([50, 50], 'grain', 'label', { anchor: 'middle', clear: true, rank: 1, shift: [0, 5] });
		expect(layOut(drawing([line([0, 50], [100, 50], 'cut'), across])).words).toEqual([]);
		expect(layOut(drawing([line([0, 20], [100, 20], 'cut'), across])).words.map((w) => w.text)).toEqual(['grain']);
	});
	it('leaves the drawing as it was', () => {
		const given = drawing([ruler(), words([0, 0], 'a')]);
		const copy = structuredClone(given);
		layOut(given);
		expect(given).toEqual(copy);
	});
});

describe('a ruler', () => {
	const laid = (r: Ruler, width = 358) => layOut(drawing([r], [100, 0]), width).words.map((w) => w.text);
	it('numbers centimetres as far apart as they can be read', () => {
		expect(laid(ruler())).toEqual(['0', '2', '4', '6', '8', '10']);
	});
	it('counts inches, not centimetres, in inches', () => {
		expect(laid(ruler({ unit: 'in' }))).toEqual(['0', '1', '2', '3']);
	});
	it('begins with the reading it is told', () => {
		expect(laid(ruler({ starts: 200 }))[0]).toBe('20');
	});
	it('writes the learner’s mark and not the number it would touch', () => {
		const texts = laid(ruler({ marks: [{ at: 41, text: '4.1', voice: 'labelStrong' }] }));
		expect(texts).toContain('4.1');
		expect(texts).not.toContain('4');
	});
	it('moves close marks apart equally and leaves far ones', () => {
		expect(spread([100, 104, 300], 18)).toEqual([{ index: 0, by: -7 }, { index: 1, by: 7 }, { index: 2, by: 0 }]);
	});
});

describe('a path in px', () => {
	it('turns the other way when y runs down, and is as long', () => {
		const placed = placePath(arcPath([0, 0], 10, 0, Math.PI / 2), { scale: 2, x: 0, y: 0 });
		expect(placed.edges[0]?.turn).toBeCloseTo(-Math.PI / 2, 12);
		expect(pathLength(placed)).toBeCloseTo(10 * Math.PI, 9);
	});
	it('writes an arc of more than half a turn as two', () => {
		expect(pathData(arcPath([0, 0], 10, 0, 2 * Math.PI), true)).toBe('M10 0A10 10 0 0 1 -10 0A10 10 0 0 1 10 0Z');
	});
	it('moves aside to its left, for lines and arcs alike', () => {
		// Running right, left is up: y less by 5.
		expect(movedAside(linePath([0, 0], [10, 0]), 5).start).toEqual([0, -5]);
		const arc = movedAside(placePath(arcPath([0, 0], 10, 0, 1), { scale: 1, x: 0, y: 0 }), 4);
		// Counterclockwise on the sheet, left is towards the centre.
		expect(Math.hypot(...arc.start)).toBeCloseTo(6, 12);
	});
	it('knows the way it runs half way along', () => {
		const { at, heading } = stationAt(linePath([0, 0], [10, 0], [10, 10]), 15);
		expect(at).toEqual([10, 5]);
		expect(heading).toBeCloseTo(Math.PI / 2, 12);
	});
});

describe('words and figures', () => {
	it('build a fraction close to its whole number and set a unit small after a large figure', () => {
		expect(runs('28 5/8 in', 'figure')).toEqual([{ text: '28', as: 'words' }, { text: '5/8', as: 'fraction' }, { text: ' in', as: 'unit' }]);
		expect(runs('zip ends, 6 3/8', 'label')).toEqual([{ text: 'zip ends, 6', as: 'words' }, { text: '3/8', as: 'fraction' }]);
		expect(runs('cut 1', 'label')).toEqual([{ text: 'cut 1', as: 'words' }]);
	});
	it('are never set under 14 px', () => {
		for (const voice of ['title', 'figure', 'label', 'labelStrong', 'small'] as const) {
			const screen = layOut(drawing([words([50, 50], '8', voice)]), 288);
			expect(screen.marks.every((m) => m.kind !== 'text' || m.size >= 14)).toBe(true);
		}
	});
	it('are about as wide as the font makes them', () => {
		// Ten figures at 16 px measured 93.3 px in Chromium (Commissioner at 650).
		expect(textWidth('0123456789', 'labelStrong', 358)).toBeCloseTo(93.3, 0);
	});
});
