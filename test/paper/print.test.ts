// The pattern and the hand-out as they come out of the printer: the PDF is read back by poppler and measured.
import { describe, expect, it } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { cutAngle } from '../../src/lib/drafting/figures.ts';
import type { Point } from '../../src/lib/drafting/geometry/point.ts';
import { windowOf } from '../../src/lib/paper/grid.ts';
import { handoutSheets } from '../../src/lib/paper/handout.ts';
import { patternDrawing } from '../../src/lib/paper/pattern.ts';
import { patternPieces, pieceTitle } from '../../src/lib/paper/pattern-piece.ts';
import { patternSheetCount, patternSheets } from '../../src/lib/paper/pattern-sheets.ts';
import { MARGIN, PAPERS, type PaperName } from '../../src/lib/paper/sheet.ts';
import { tileDrawing } from '../../src/lib/paper/tile.ts';
import { writePdf } from '../../src/lib/server/pdf.ts';
import { ansurBody, seeded, type Random } from '../drafting/bodies.ts';
import { lengthOf, readPdf, type PrintedSheet, type Stroke } from './read-pdf.ts';
import { sampleDraft } from './sample-draft.ts';

const date = '2026-11-25';
const plain = { date, mark: '1a2b3c4d', scale: 1, join: 'butt' } as const;
const print = (sheets: Parameters<typeof writePdf>[0]): Promise<Uint8Array> => writePdf(sheets, { title: 'A skirt', lang: 'en-GB', date: new Date(`${date}T00:00:00Z`) });

/** A skirt that people sew, lined, for a body of ANSUR II; seeded. */
function someDraft(random: Random): Draft {
	const between = (least: number, most: number): number => least + (most - least) * random();
	for (;;) {
		const drafted = draftSkirt(ansurBody(random), {
			style: 'flared', share: [0.25, 0.5, 0.75, 1, between(0.3, 1)][Math.floor(random() * 5)]!, length: between(350, 650), waistEase: 10, hipEase: 20, panels: 1 + Math.floor(random() * 4),
			band: { kind: 'straight', depth: between(25, 50), underlap: 30, sits: 'above' }, hem: between(8, 30), hemFinish: 'narrow', zipAt: random() < 0.5 ? 'centreBack' : 'leftSide',
			zipSeries: 'cm', closure: 'zip', panelShares: null, hemFacing: 50, lining: { shorterBy: 25, share: null }, allowances: { waist: between(10, 15), seam: between(15, 20) }
		});
		if (drafted.ok) return drafted.value;
	}
}

const near = (a: number, b: number, within = 0.05): boolean => Math.abs(a - b) <= within;
/** Weights of the look's lines, mm: an ink unit is 1/96 in. */
const unit = 25.4 / 96;
const isCut = ({ weight, dashes }: Stroke): boolean => near(weight, 2.4 * unit, 0.01) && dashes === 0;
const isStitch = ({ weight, dashes }: Stroke): boolean => near(weight, 1.6 * unit, 0.01) && dashes === 2;
const isFold = ({ weight, dashes }: Stroke): boolean => near(weight, 1.6 * unit, 0.01) && dashes === 4;
const isTrim = ({ weight, dashes }: Stroke): boolean => near(weight, 0.8 * unit, 0.01) && dashes === 2;

function checksItself(sheet: PrintedSheet): void {
	const checkLines = sheet.strokes.filter(({ weight }) => near(weight, 5.5 * unit, 0.01));
	// One up and one across.
	expect(checkLines).toHaveLength(2);
	const [up, across] = [0, 1].map((axis) => checkLines.filter(({ points: [a, b] }) => near(a![axis]!, b![axis]!, 0.001)));
	for (const line of [up, across]) {
		expect(line).toHaveLength(1);
		expect(Math.abs(lengthOf(line![0]!.points) - 100)).toBeLessThan(0.05);
	}
	expect(sheet.words).not.toMatch(/NaN|undefined|Infinity|null/);
	// Ink is read in pixels of half a millimetre.
	expect(sheet.clear).toBeGreaterThanOrEqual(MARGIN - 0.5);
}

const sizeOf = (sheet: PrintedSheet): readonly number[] => [sheet.width, sheet.height].sort((a, b) => a - b);

interface Laid {
	readonly title: string;
	readonly sheets: number;
	readonly strokes: readonly Stroke[];
}
/** Trims and lays the printed sheets edge to edge, by the row and column printed on each; y up from the first window's upper left. */
function assemble(sheets: readonly PrintedSheet[], paper: PaperName): readonly Laid[] {
	const pieces: { title: string; sheets: number; strokes: Stroke[] }[] = [];
	for (const sheet of sheets) {
		const said = /(\S.*?), row (\d+), column (\d+)/.exec(sheet.words.replace(/^\s*\d+ +/, ''));
		if (!said) throw new Error(`no name on a sheet: ${sheet.words.slice(0, 200)}`);
		const title = said[1]!.replace(/^.*\s{2,}/, '');
		let piece = pieces[pieces.length - 1];
		if (piece?.title !== title) pieces.push((piece = { title, sheets: 0, strokes: [] }));
		piece.sheets++;
		const { from, to } = windowOf(sheet);
		for (const trim of sheet.strokes.filter(isTrim)) {
			// A trim line is the window's right side or its lower one.
			expect(trim.points.every(([x]) => near(x, to[0])) || trim.points.every(([, y]) => near(y, from[1]))).toBe(true);
		}
		const [column, row] = [Number(said[3]) - 1, Number(said[2]) - 1];
		const lay = ([x, y]: Point): Point => [x - from[0] + column * (to[0] - from[0]), y - to[1] - row * (to[1] - from[1])];
		const own = sheet.strokes.filter((stroke) => (isCut(stroke) || isStitch(stroke) || isFold(stroke)) && stroke.points.every(([x]) => x > from[0] - 0.01));
		// No sheet is printed for nothing.
		expect(own.reduce((sum, { points }) => sum + lengthOf(points), 0)).toBeGreaterThan(0);
		piece.strokes.push(...own.map((stroke) => ({ ...stroke, points: stroke.points.map(lay) })));
	}
	return pieces;
}

/** Measures the sewn and cut arcs of each panel against circle geometry, and every band's cut line. */
function measure(draft: Draft, laid: readonly Laid[], paper: PaperName): void {
	const { figures: f, skirt } = draft;
	const patterns = patternPieces(draft.pieces);
	expect(laid.map(({ title }) => title)).toEqual(patterns.map(({ piece }) => pieceTitle(piece)));
	for (const [i, pattern] of patterns.entries()) {
		const { piece } = pattern;
		const strokes = laid[i]!.strokes;
		const total = (those: readonly Stroke[]): number => those.reduce((sum, { points }) => sum + lengthOf(points), 0);
		const isPanel = piece.cut.edges.some(({ centre }) => centre);
		const part = isPanel && piece.fold ? 0.5 : 1;
		if (!isPanel) {
			const corners = [piece.cut.start, ...piece.cut.edges.map(({ end }) => end)];
			expect(Math.abs(total(strokes.filter(isCut)) - lengthOf(corners))).toBeLessThan(0.05 * laid[i]!.sheets);
			continue;
		}
		// Only where the drawing's corner lies is taken from the tiling: the upper left of its first row and column.
		const { tiles, grid } = tileDrawing(patternDrawing(pattern, draft, { ...plain, unit: 'cm', code: 'X' }), paper);
		const { cell, box } = tiles[0]!;
		const [left, top] = [box.from[0] - cell.column * grid.width, box.to[1] + cell.row * grid.height];
		const fromCorner = ([x, y]: Point): number => Math.hypot(x + left, y + top);
		const hemRadius = piece.cloth === 'lining' ? f.liningHemRadius! : f.hemRadius;
		const arcs = [
			{ radius: f.waistRadius, angle: f.panelAngle, is: isStitch }, { radius: hemRadius, angle: f.panelAngle, is: isStitch },
			{ radius: f.cutWaistRadius, angle: cutAngle(f.panelAngle, f.cutWaistRadius, skirt.allowances.seam), is: isCut },
			{ radius: hemRadius + skirt.hem, angle: cutAngle(f.panelAngle, hemRadius + skirt.hem, skirt.allowances.seam), is: isCut }
		];
		const curves = strokes.filter(({ curved }) => curved);
		let measured = 0;
		for (const { radius, angle, is } of arcs) {
			const arc = curves.filter((stroke) => is(stroke) && near(fromCorner(stroke.points[0]!), radius, 3));
			for (const { points } of arc) for (const point of points) expect(Math.abs(fromCorner(point) - radius)).toBeLessThan(0.05);
			expect(Math.abs(total(arc) - radius * angle * part)).toBeLessThan(0.05);
			measured += arc.length;
		}
		// And no curve of a line is left that wasn't measured.
		expect(measured).toBe(curves.length);
	}
}

describe('the printed pattern', () => {
	const random = seeded(20261125);
	const cases = (['a4', 'letter'] as const).flatMap((paper) => (['cm', 'in'] as const).flatMap((unit) => [1, 2].map((n) => ({ paper, unit, n, draft: someDraft(random) }))));

	it.each(cases)('is true on $paper in $unit, for skirt $n drawn by lot', async ({ paper, unit, draft }) => {
		const options = { ...plain, paper, unit, code: 'WREN B' };
		const printed = readPdf(await print(patternSheets(draft, options)));
		expect(printed.sheets).toHaveLength(patternSheetCount(draft, options));
		const { width, height } = PAPERS[paper];
		for (const sheet of printed.sheets) {
			expect(sizeOf(sheet)[0]).toBeCloseTo(width, 2);
			expect(sizeOf(sheet)[1]).toBeCloseTo(height, 2);
			checksItself(sheet);
		}
		for (const [i, sheet] of printed.sheets.entries()) expect(sheet.words).toContain(`sheet ${i + 1} of ${printed.sheets.length}`);
		measure(draft, assemble(printed.sheets.slice(1), paper), paper);
	}, 60_000);

	it('has a mark at 4 in on an inch sheet, 101.6 mm from the top of the check line', async () => {
		const [, sheet] = readPdf(await print(patternSheets(sampleDraft(), { ...plain, paper: 'letter', unit: 'in', code: 'WREN B' }))).sheets;
		const check = sheet!.strokes.find(({ weight, points: [a, b] }) => near(weight, 5.5 * unit, 0.01) && near(a![0], b![0], 0.001))!;
		const top = Math.max(...check.points.map(([, y]) => y));
		const mark = sheet!.strokes.filter((stroke) => isCut(stroke) && stroke.points.every(([x]) => x < windowOf(sheet!).from[0]));
		expect(mark).toHaveLength(1);
		// 4 × 25.4
		expect(top - mark[0]!.points[0]![1]).toBeCloseTo(101.6, 1);
	});

	it('is the same, byte for byte, for the same draft and date, and another for another date', async () => {
		const sheets = () => patternSheets(sampleDraft(), { ...plain, paper: 'a4', unit: 'cm', code: 'WREN B' });
		const [first, again] = [await print(sheets()), await print(sheets())];
		expect(Buffer.compare(first, again)).toBe(0);
		const later = await writePdf(sheets(), { title: 'A skirt', lang: 'en-GB', date: new Date('2026-11-26T00:00:00Z') });
		expect(Buffer.compare(first, later)).not.toBe(0);
	});
});

const gate = [{ id: 'corner', says: 'The corner is marked and the fold lies straight.' }, { id: 'walked', says: 'A second person walked the waist.' }];
const stages = [{ id: 'mark', title: 'Mark and cut', minutes: 60, steps: [{ id: 'fold', title: 'Fold the cloth' }, { id: 'corner', title: 'Mark the corner' }] }] as unknown as Parameters<typeof handoutSheets>[1]['stages'];

describe('the printed hand-out', () => {
	const random = seeded(4);
	const cases = (['a4', 'letter'] as const).flatMap((paper) => (['cm', 'in'] as const).map((unit) => ({ paper, unit, draft: someDraft(random) })));

	it.each(cases)('keeps to its sheets on $paper in $unit', async ({ paper, unit, draft }) => {
		const printed = readPdf(await print(handoutSheets(draft, { paper, unit, code: 'WREN B', date, stages, gate, bodyFigures: false })));
		for (const sheet of printed.sheets) {
			expect([sheet.width, sheet.height].map((mm) => Math.round(mm * 10) / 10)).toEqual([PAPERS[paper].width, PAPERS[paper].height]);
			checksItself(sheet);
		}
		const words = printed.sheets.map((sheet) => sheet.words).join('\n');
		for (const says of ['Waist stitch line', 'Waist cut line', 'Hem cut line', 'Ready to cut', 'Your figures', 'Fold the cloth', '25 Nov 2026']) expect(words).toContain(says);
	});

	it('is A4 to pdfinfo: 595.276 by 841.89 points (ISO 216; ISO 32000, 1 unit = 1/72 in)', async () => {
		const { info } = readPdf(await print(handoutSheets(sampleDraft(), { paper: 'a4', unit: 'cm', code: 'WREN B', date, stages, gate, bodyFigures: false })));
		expect(info).toMatch(/Page +1 size: +595\.276 x 841\.89 pts \(A4\)/);
	});
});
