// Two hundred patterns drawn by lot, of every style, on every sheet, as they come out of the printer: each PDF is read back by
// poppler, its sheets are put together by their match marks, and what they make is measured against the pieces.
import { describe, expect, it } from 'vitest';
import type { Outline } from '../../src/lib/drafting/geometry/outline.ts';
import type { Point } from '../../src/lib/drafting/geometry/point.ts';
import { stretches, edgeLength } from '../../src/lib/drafting/geometry/measure.ts';
import type { Piece } from '../../src/lib/drafting/piece.ts';
import type { CoverOptions } from '../../src/lib/paper/cover.ts';
import { boxOf } from '../../src/lib/paper/clip.ts';
import type { Drawing } from '../../src/lib/paper/drawing.ts';
import { OVERLAP, turnPath, turnPoint, windowOf } from '../../src/lib/paper/grid.ts';
import { patternDrawing } from '../../src/lib/paper/pattern.ts';
import { foldsOf } from '../../src/lib/paper/pattern-line.ts';
import { pieceTitle } from '../../src/lib/paper/pattern-piece.ts';
import { patternSheets, sheetsOfPieces } from '../../src/lib/paper/pattern-sheets.ts';
import { INK } from '../../src/lib/paper/pen.ts';
import { isRoll, MARGIN, PAPERS, PAPER_NAMES, type PaperName } from '../../src/lib/paper/sheet.ts';
import { writePdf } from '../../src/lib/server/pdf.ts';
import { seeded } from '../drafting/bodies.ts';
import { anyDraft, STYLES } from './any-draft.ts';
import { distanceTo } from './distance-to.ts';
import { lengthOf, readPdf, type PrintedSheet, type Stroke } from './read-pdf.ts';

const near = (a: number, b: number, within = 0.05): boolean => Math.abs(a - b) <= within;
const isPen = (weight: number, dashes: number) => (stroke: Stroke): boolean => near(stroke.weight, weight * INK, 0.01) && stroke.dashes === dashes;
/** The look's pens, by weight and dash. */
const [isCut, isStitch, isCheck] = [isPen(2.4, 0), isPen(1.6, 2), isPen(5.5, 0)];
const isFold = isPen(1.6, 4);

interface Placed {
	readonly sheet: PrintedSheet;
	readonly row: number;
	readonly column: number;
	/** Where the sheet's lower left corner lies on the table, mm. */
	readonly at: Point;
}

/** Foots of the match marks, by the way they stand: a joint's wedge is 5 mm wide. */
function marksOf({ wedges }: PrintedSheet): { readonly upright: readonly Point[]; readonly level: readonly Point[] } {
	const feet = wedges.flatMap(([a, b]): readonly { at: Point; upright: boolean }[] =>
		(near(Math.hypot(a[0] - b[0], a[1] - b[1]), 5, 0.01) ? [{ at: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], upright: near(a[0], b[0], 0.01) }] : []));
	return { upright: feet.filter((foot) => foot.upright).map(({ at }) => at), level: feet.filter((foot) => !foot.upright).map(({ at }) => at) };
}
const most = (marks: readonly Point[], axis: 0 | 1, sign: 1 | -1): readonly Point[] => {
	const reach = Math.max(...marks.map((p) => p[axis] * sign));
	return marks.filter((p) => near(p[axis] * sign, reach, 0.5));
};

/** How a sheet lies by the one before it: mark on mark. Null where the two share no joint. */
function beside(before: PrintedSheet, after: PrintedSheet, way: 'right' | 'below'): Point {
	const [a, b] = way === 'right' ? [most(marksOf(before).upright, 0, 1), most(marksOf(after).upright, 0, -1)] : [most(marksOf(before).level, 1, -1), most(marksOf(after).level, 1, 1)];
	const unlike = (marks: readonly Point[]): readonly Point[] => [...new Map(marks.map((p) => [p.map((n) => n.toFixed(1)).join(), p])).values()].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
	const [from, to] = [unlike(a), unlike(b)];
	// Two marks at each joint, and both say the same.
	expect([from.length, to.length]).toEqual([2, 2]);
	const moves = from.map((p, i): Point => [p[0] - to[i]![0], p[1] - to[i]![1]]);
	for (const axis of [0, 1] as const) expect(near(moves[0]![axis], moves[1]![axis], 0.02)).toBe(true);
	return moves[0]!;
}

/** The sheets of one piece put together by their marks. Sheets that meet no other at a side are laid by row and column, as the map says. */
function assemble(sheets: readonly PrintedSheet[], join: CoverOptions['join']): readonly Placed[] {
	const named = sheets.map((sheet) => {
		const [, row, column] = /, row (\d+), column (\d+)/.exec(sheet.words)!;
		return { sheet, row: Number(row), column: Number(column) };
	});
	const placed = new Map<(typeof named)[number], Point>();
	const gap = join === 'overlap' ? OVERLAP : 0;
	for (const first of named) {
		if (placed.has(first)) continue;
		const { from, to } = windowOf(first.sheet);
		placed.set(first, [(first.column - 1) * (to[0] - from[0] - gap), -(first.row - 1) * (to[1] - from[1] - gap)]);
		const queue = [first];
		for (let here = queue.shift(); here; here = queue.shift()) {
			const at = placed.get(here)!;
			for (const next of named) {
				const [down, right] = [next.row - here.row, next.column - here.column];
				if (placed.has(next) || Math.abs(down) + Math.abs(right) !== 1) continue;
				const way = right !== 0 ? 'right' : 'below';
				const move = right + down > 0 ? beside(here.sheet, next.sheet, way) : beside(next.sheet, here.sheet, way).map((n) => -n) as unknown as Point;
				placed.set(next, [at[0] + move[0], at[1] + move[1]]);
				queue.push(next);
			}
		}
	}
	return named.map((one) => ({ ...one, at: placed.get(one)! }));
}

/** How much of a run of points lies inside a box: where sheets overlap, a strip is printed on both and counts once. */
function lengthIn(points: readonly Point[], from: Point, to: Point): number {
	let sum = 0;
	for (let i = 1; i < points.length; i++) {
		const [p, q] = [points[i - 1]!, points[i]!];
		let [enters, leaves] = [0, 1];
		for (const axis of [0, 1] as const) {
			const run = q[axis] - p[axis];
			const [a, b] = [(from[axis] - p[axis]) / run, (to[axis] - p[axis]) / run].sort((x, y) => x - y) as [number, number];
			if (run === 0) { if (p[axis] < from[axis] || p[axis] > to[axis]) leaves = -1; } else [enters, leaves] = [Math.max(enters, a), Math.min(leaves, b)];
		}
		if (leaves > enters) sum += (leaves - enters) * Math.hypot(q[0] - p[0], q[1] - p[1]);
	}
	return sum;
}

const perimeter = (outline: Outline): number => stretches(outline).reduce((sum, stretch) => sum + edgeLength(stretch), 0);

/** Everything about one pattern that a printer could get wrong. */
async function prove(draft: ReturnType<typeof anyDraft>, options: CoverOptions): Promise<void> {
	const { paper, scale, join } = options;
	const bytes = await writePdf(patternSheets(draft, options), { title: 'A skirt', lang: 'en-GB', date: new Date(0) });
	const printed = readPdf(bytes, 1);
	for (const sheet of printed.sheets) {
		const sides = [sheet.width, sheet.height];
		if (isRoll(paper)) expect(sides[0]).toBeCloseTo(PAPERS[paper].width, 2);
		else for (const [i, side] of [PAPERS[paper].width, PAPERS[paper].height].entries()) expect(sides.toSorted((a, b) => a - b)[i]).toBeCloseTo(side, 2);
		// 14 400 units of 1/72 in (ISO 32000).
		expect(Math.max(...sides)).toBeLessThanOrEqual((14_400 * 25.4) / 72);
		const checks = sheet.strokes.filter(isCheck);
		expect(checks).toHaveLength(2);
		for (const [axis, { points }] of [...checks].sort((a, b) => Math.abs(b.points[0]![0] - b.points[1]![0]) - Math.abs(a.points[0]![0] - a.points[1]![0])).entries()) {
			expect(lengthOf(points)).toBeCloseTo(100, 1);
			expect(near(points[0]![1 - axis]!, points[1]![1 - axis]!, 0.001)).toBe(true);
		}
		// Ink is read in pixels of a millimetre.
		expect(sheet.clear).toBeGreaterThanOrEqual(MARGIN - 1);
	}
	const tiled = printed.sheets.filter(({ words }) => /, row \d+, column \d+/.test(words));
	let next = 0;
	for (const { pattern, count } of sheetsOfPieces(draft, options)) {
		const { piece } = pattern;
		const sheets = tiled.slice(next, (next += count));
		for (const { words } of sheets) expect(words).toContain(`${pieceTitle(piece)}, row`);
		const placed = assemble(sheets, join);
		measure(piece, placed, { laid: layingOf(patternDrawing(pattern, draft, options), piece, placed, scale), scale, join });
	}
	expect(next).toBe(tiled.length);
}

const boxOfPoints = (points: readonly Point[]): readonly [Point, Point] =>
	[[Math.min(...points.map((p) => p[0])), Math.min(...points.map((p) => p[1]))], [Math.max(...points.map((p) => p[0])), Math.max(...points.map((p) => p[1]))]];
/** The points of some strokes, on the table. */
function onTable({ sheet, at }: Placed, is: (stroke: Stroke) => boolean): readonly Point[] {
	const { from, to } = windowOf(sheet);
	return sheet.strokes.filter((stroke) => is(stroke) && stroke.points.every(([x]) => x > from[0] - 0.01)).flatMap(({ points }) => points.map(([x, y]): Point => [at[0] + x - from[0], at[1] + y - to[1]]));
}

/** Where the piece lies on the table: its cut line's box on the printed one's, a quarter turned or not, whichever is nearer. */
function layingOf(drawing: Drawing, piece: Piece, placed: readonly Placed[], scale: number): (outline: Outline) => Outline {
	const cut = drawing.shapes.flatMap((shape) => (shape.shape === 'path' && shape.line === 'cut' ? [shape.path] : []));
	const seen = placed.flatMap((one) => onTable(one, isCut));
	const [corner] = boxOfPoints(seen);
	const middleDown = piece.fold !== null || piece.cut.edges.some(({ centre }) => centre);
	const ways = [false, true].map((turned) => {
		const { from } = boxOf(cut.map((path) => turnPath(path, turned)));
		const lay = (p: Point): Point => {
			const [x, y] = turnPoint((middleDown ? [p[1], -p[0]] : p).map((n) => n / scale) as unknown as Point, turned);
			return [x - from[0] + corner[0], y - from[1] + corner[1]];
		};
		const laid = ({ start, edges }: Outline): Outline => ({ start: lay(start), edges: edges.map((e) => ({ ...e, end: lay(e.end), centre: e.centre && lay(e.centre) })) });
		const lines = [piece.cut, ...(piece.hole ? [piece.hole.cut] : [])].map(laid);
		const off = Math.max(...seen.filter((_, i) => i % 7 === 0).map((p) => Math.min(...lines.map((line) => distanceTo(line, p)))));
		return { laid, off };
	});
	return ways.sort((a, b) => a.off - b.off)[0]!.laid;
}

function measure(piece: Piece, placed: readonly Placed[], { laid, scale, join }: { readonly laid: (outline: Outline) => Outline; readonly scale: number; readonly join: CoverOptions['join'] }): void {
	const [first] = placed;
	const part = piece.fold ? 0.5 : 1;
	const folds: readonly Outline[] = [...foldsOf(piece), ...(piece.lines ?? []).map(({ from, to }) => [from, to] as const)]
		.map(([from, to]) => ({ start: from, edges: [{ name: '', end: to, centre: null, turn: 0 }] }));
	const wanted = [
		{ is: isCut, part, outlines: [piece.cut, ...(piece.hole ? [piece.hole.cut] : [])] },
		{ is: isStitch, part, outlines: [piece.stitch, ...(piece.hole ? [piece.hole.stitch] : [])] },
		{ is: isFold, part: 1, outlines: folds }
	];
	const { from, to } = windowOf(first!.sheet);
	const strip = join === 'overlap' ? OVERLAP : 0;
	const inked = new Set<Placed>();
	for (const { is, part, outlines } of wanted) {
		const lines = outlines.map(laid);
		let length = 0;
		for (const one of placed) {
			// The ruler's own mark at 4 in is beside the window.
			for (const { points } of one.sheet.strokes.filter((stroke) => is(stroke) && stroke.points.every(([x]) => x > from[0] - 0.01))) {
				inked.add(one);
				length += lengthIn(points, [from[0], from[1] + strip], [to[0] - strip, to[1]]);
				for (const [x, y] of points) {
					// On the table, from the first window's upper left.
					const at: Point = [one.at[0] + x - from[0], one.at[1] + y - to[1]];
					const off = Math.min(...lines.map((line) => distanceTo(line, at)));
					if (off >= 0.05) expect(off, `${piece.name} at ${String(at)}`).toBeLessThan(0.05);
				}
			}
		}
		const whole = outlines.reduce((sum, outline) => sum + perimeter(outline), 0) * part / scale;
		// Each sheet's ends are read to 0.003 mm, and nothing may be lost or printed twice.
		expect(Math.abs(length - whole), `${piece.name}: ${length} printed, ${whole} drawn`).toBeLessThan(0.05 + 0.005 * placed.length);
	}
	expect(inked.size).toBe(placed.length);
}

/** Large sheets more often: a small one takes thirty times as many to read. */
const LOTS: readonly PaperName[] = ['a0', 'a0', 'a0', 'roll610', 'roll610', 'roll914', 'roll914', 'roll914', 'roll1067', 'roll1067', 'a3', 'tabloid'];

describe('a pattern printed and put together', () => {
	const random = seeded(200);
	const one = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
	const cases = Array.from({ length: 200 }, (_, i) => ({
		n: i + 1, style: STYLES[i % 3]!, draft: anyDraft(random, STYLES[i % 3]!),
		options: {
			paper: i < PAPER_NAMES.length ? PAPER_NAMES[i]! : one(LOTS), join: one(['butt', 'overlap'] as const), unit: one(['cm', 'in'] as const), scale: one([1, 1, 1, 4, 5] as const),
			code: 'WREN B', date: '2026-11-25', mark: '1a2b3c4d'
		}
	}));
	it('was drawn on every sheet, both ways of joining, every scale and every style', () => {
		for (const [key, all] of [['paper', PAPER_NAMES], ['join', ['butt', 'overlap']], ['unit', ['cm', 'in']], ['scale', [1, 4, 5]]] as const) expect(new Set(cases.map(({ options }) => options[key]))).toEqual(new Set<unknown>(all));
		expect(cases.some(({ draft }) => draft.pieces.some(({ hole }) => hole))).toBe(true);
	});
	for (let from = 0; from < cases.length; from += 20) {
		it(`is true in every line, for ${from + 1} to ${from + 20} of 200`, async () => {
			for (const { n, style, draft, options } of cases.slice(from, from + 20)) {
				try {
					await prove(draft, options);
				} catch (error) {
					throw new Error(`draft ${n}, ${style}, ${JSON.stringify(options)}: ${error instanceof Error ? error.message : String(error)}`, { cause: error });
				}
			}
		}, 300_000);
	}
});
