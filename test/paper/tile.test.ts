import { describe, expect, it } from 'vitest';
import type { Draft } from '../../src/lib/drafting/draft.ts';
import type { Path } from '../../src/lib/paper/drawing.ts';
import { linesOf } from '../../src/lib/paper/grid.ts';
import { fitScale, judgeCheckLine } from '../../src/lib/paper/check-line.ts';
import { boxOf, clipPath } from '../../src/lib/paper/clip.ts';
import { patternDrawing } from '../../src/lib/paper/pattern.ts';
import { countWords, patternPieces } from '../../src/lib/paper/pattern-piece.ts';
import { patternSheetCount, patternSheets } from '../../src/lib/paper/pattern-sheets.ts';
import { PENS } from '../../src/lib/paper/pen.ts';
import { textLength } from '../../src/lib/paper/letter.ts';
import { MARGIN, PAPERS, points, type Item, type PathItem, type Sheet } from '../../src/lib/paper/sheet.ts';
import { tileDrawing } from '../../src/lib/paper/tile.ts';
import { seeded } from '../drafting/bodies.ts';
import { draftOf, sampleDraft } from './sample-draft.ts';

const options = { paper: 'a4', unit: 'cm', code: 'HALL-3 M', date: '2026-11-25', mark: '1a2b3c4d', scale: 1, join: 'butt' } as const;

function lengthOf({ start, edges }: Path): number {
	let [sum, from] = [0, start];
	for (const { end, centre, turn } of edges) {
		sum += centre ? Math.abs(turn) * Math.hypot(from[0] - centre[0], from[1] - centre[1]) : Math.hypot(end[0] - from[0], end[1] - from[1]);
		from = end;
	}
	return sum;
}

/** Drafts that can be cut, from a seed, so that a failure can be repeated. */
function randomDrafts(seed: number, count: number): readonly Draft[] {
	const random = seeded(seed);
	const drafts: Draft[] = [];
	while (drafts.length < count) {
		const draft = draftOf({
			share: [0.25, 0.33, 0.5, 0.75, 1][Math.floor(random() * 5)]!, panels: 1 + Math.floor(random() * 6), waist: 560 + random() * 600,
			length: 350 + random() * 600, hem: 10 + random() * 30, seam: 10 + random() * 10, zipAt: random() < 0.3 ? 'leftSide' : 'centreBack'
		});
		if (draft) drafts.push(draft);
	}
	return drafts;
}
const drafts = [sampleDraft(), sampleDraft({ share: 1, panels: 2, zipAt: 'leftSide' }), sampleDraft({ share: 0.1, panels: 2, length: 800 }), ...randomDrafts(7, 12)];

/** The box a text takes on its sheet, mm. */
function textBox(item: Extract<Item, { item: 'text' }>): { from: [number, number]; to: [number, number] } {
	const length = textLength(item.text, item.face, item.size);
	const tall = (item.size * 25.4) / 72;
	const left = item.anchor === 'end' ? -length : item.anchor === 'middle' ? -length / 2 : 0;
	const [c, s] = [Math.cos(item.angle ?? 0), Math.sin(item.angle ?? 0)];
	const corners = [[left, -0.22 * tall], [left + length, -0.22 * tall], [left, 0.75 * tall], [left + length, 0.75 * tall]].map(([x, y]) => [item.at[0] + x! * c - y! * s, item.at[1] + x! * s + y! * c] as const);
	return { from: [Math.min(...corners.map((p) => p[0])), Math.min(...corners.map((p) => p[1]))], to: [Math.max(...corners.map((p) => p[0])), Math.max(...corners.map((p) => p[1]))] };
}
function outside(sheet: Sheet): string[] {
	const found: string[] = [];
	for (const item of sheet.items) {
		const half = item.item === 'path' && item.pen ? PENS[item.pen].weight / 2 : 0;
		const box = item.item === 'path' ? boxOf([item.path]) : textBox(item);
		const clear = Math.min(box.from[0], box.from[1], sheet.width - box.to[0], sheet.height - box.to[1]) - half;
		if (clear < MARGIN - 1e-6) found.push(`${sheet.name}: ${item.item === 'text' ? item.text : item.pen} at ${clear} mm`);
	}
	return found;
}

describe('a pattern cut into sheets', () => {
	it('loses no ink and prints none twice: each line’s stretches add up to the line', () => {
		for (const draft of drafts) {
			for (const pattern of patternPieces(draft.pieces)) {
				const drawing = patternDrawing(pattern, draft, options);
				for (const paper of ['a4', 'letter'] as const) {
					const tiling = tileDrawing(drawing, paper);
					for (const pen of ['cut', 'stitch', 'fold', 'grain'] as const) {
						const drawn = drawing.shapes.flatMap((s) => (s.shape === 'path' && s.line === pen ? [lengthOf(s.path)] : [])).reduce((a, b) => a + b, 0);
						const isLine = (item: Item): item is PathItem => item.item === 'path' && item.pen === pen && item.run !== undefined;
						const printed = tiling.tiles.flatMap(({ items }) => items.filter(isLine).map(({ path }) => lengthOf(path))).reduce((a, b) => a + b, 0);
						expect(printed).toBeCloseTo(drawn, 4);
					}
				}
			}
		}
	});
	it('prints only sheets that carry lines, each with its ruler, its label and nothing in the margin', () => {
		for (const draft of drafts) {
			for (const paper of ['a4', 'letter'] as const) {
				for (const unit of ['cm', 'in'] as const) {
					const sheets = patternSheets(draft, { ...options, paper, unit });
					expect(sheets.flatMap(outside)).toEqual([]);
					for (const sheet of sheets) {
						const checks = sheet.items.flatMap((item) => (item.item === 'path' && item.pen === 'check' ? [lengthOf(item.path)] : []));
						expect(checks).toHaveLength(2);
						for (const check of checks) expect(check).toBeCloseTo(100, 9);
						const texts = sheet.items.flatMap((item) => (item.item === 'text' ? [item.text] : []));
						expect(texts).toContain('this line is 100 mm; if yours is not, print again at 100 %');
						expect(texts.some((text) => text.includes('HALL-3 M'))).toBe(true);
					}
					for (const sheet of sheets.slice(1)) expect(sheet.items.filter((item) => item.item === 'path' && item.run !== undefined).length, sheet.name).toBeGreaterThan(0);
				}
			}
		}
	});
	it('puts every word on the pattern once and whole', () => {
		for (const draft of drafts) {
			const words = patternPieces(draft.pieces).flatMap((pattern) => patternDrawing(pattern, draft, options).shapes.flatMap((s) => (s.shape === 'text' ? [s.text] : [])));
			const printed = patternSheets(draft, options).slice(1).flatMap(({ items }) => items.flatMap((item) => (item.item === 'text' ? [item.text] : [])));
			for (const word of new Set(words)) expect(printed.filter((text) => text === word).length, word).toBe(words.filter((text) => text === word).length);
		}
	});
	it('says the number of sheets before any is printed', () => {
		for (const draft of drafts.slice(0, 4)) expect(patternSheetCount(draft, options)).toBe(patternSheets(draft, options).length);
	});
	it('gives each joint two wedges on both its sheets, at the same places', () => {
		const [pattern] = patternPieces(sampleDraft().pieces);
		const tiling = tileDrawing(patternDrawing(pattern!, sampleDraft(), options), 'a4');
		const sheets = patternSheets(sampleDraft(), options).slice(1, 1 + tiling.tiles.length);
		const { width, height } = tiling.grid;
		const places = sheets.map((sheet, i) => {
			const { row, column } = tiling.tiles[i]!.cell;
			return sheet.items.flatMap((item) => {
				// A joint's wedge is 5 mm wide at its foot and filled.
				if (item.item !== 'path' || item.fill !== 0 || item.path.edges.length !== 2) return [];
				const [a, b] = [item.path.start, item.path.edges[0]!.end];
				if (Math.abs(Math.hypot(a[0] - b[0], a[1] - b[1]) - 5) > 1e-6) return [];
				return [[(a[0] + b[0]) / 2 + column * width, (a[1] + b[1]) / 2 - row * height].map((n) => n.toFixed(4)).join()];
			});
		}).flat();
		const joints = tiling.tiles.flatMap(({ cell }) => tiling.tiles.filter((t) => (t.cell.row === cell.row + 1 && t.cell.column === cell.column) || (t.cell.column === cell.column + 1 && t.cell.row === cell.row)));
		expect(new Set(places).size).toBe(joints.length * 2);
		expect(places).toHaveLength(joints.length * 4);
	});
	it('says on the band that its interfacing is cut to match, and prints it once', () => {
		const patterns = patternPieces(sampleDraft().pieces);
		expect(patterns.map(({ piece }) => piece.name)).toEqual(['panel', 'band', 'lining']);
		expect(patterns[1]!.also.map(({ name }) => name)).toEqual(['band interfacing']);
		expect(countWords(patterns[1]!)).toBe('cut 1 in skirt cloth; cut 1 in interfacing');
	});
	it('names nobody: the code it is given is all that says whose it is', () => {
		const texts = patternSheets(sampleDraft(), options).flatMap(({ items }) => items.flatMap((item) => (item.item === 'text' ? [item.text] : [])));
		// The readings themselves are on no sheet of a pattern.
		expect(texts.some((text) => /\b(waist, read|hip)\b/.test(text))).toBe(false);
	});
	it('takes no more sheets than its bounding box would', () => {
		for (const draft of drafts) {
			for (const pattern of patternPieces(draft.pieces)) {
				const drawing = patternDrawing(pattern, draft, options);
				const box = boxOf(linesOf(drawing));
				const { grid, tiles } = tileDrawing(drawing, 'a4');
				const [wide, high] = [box.to[0] - box.from[0] + 1, box.to[1] - box.from[1] + 1];
				const [w, h] = grid.turned ? [high, wide] : [wide, high];
				expect(tiles.length).toBeLessThanOrEqual(Math.ceil(w / grid.width) * Math.ceil(h / grid.height));
			}
		}
	});
});

describe('a path cut by a box', () => {
	it('keeps exactly the part inside: a circle of radius 5 about the corner of a box is cut to a quarter (circle geometry)', () => {
		const circle: Path = { start: [5, 0], edges: [{ name: '', end: [5, 0], centre: [0, 0], turn: 2 * Math.PI }] };
		const stretches = clipPath(circle, { from: [0, 0], to: [10, 10] });
		expect(stretches.reduce((sum, { path }) => sum + lengthOf(path), 0)).toBeCloseTo((5 * Math.PI) / 2, 9);
	});
});

describe('paper and its scale', () => {
	it('turns millimetres into points: A4 and A0, 10 cm, 4 in (ISO 216; ISO 32000, 1 unit = 1/72 in)', () => {
		expect(points(PAPERS.a4.width)).toBeCloseTo(595.276, 3);
		expect(points(PAPERS.a4.height)).toBeCloseTo(841.89, 3);
		expect(points(841)).toBeCloseTo(2383.94, 2);
		expect(points(1189)).toBeCloseTo(3370.39, 2);
		expect(points(100)).toBeCloseTo(283.465, 3);
		expect(points(4 * 25.4)).toBeCloseTo(288, 9);
	});
	it('refuses a check line of 94.1 mm and says what was done: A4 fitted to Letter, 0.9407 (ISO 216 and US Letter, arithmetic)', () => {
		expect(fitScale('a4', 'letter')).toBeCloseTo(0.9407, 4);
		expect(judgeCheckLine(94.1)).toEqual({ right: false, scale: 0.941, likely: { made: 'a4', fittedTo: 'letter' } });
	});
	it('takes a check line that a ruler reads as 100 mm, and no other', () => {
		expect(judgeCheckLine(100).right).toBe(true);
		expect(judgeCheckLine(99.6).right).toBe(true);
		expect(judgeCheckLine(99)).toEqual({ right: false, scale: 0.99, likely: null });
	});
});
