// What every written page has: the ruler with its check line, the running head, the foot, and the room between.
import type { Point } from '../drafting/geometry/point.ts';
import { acrossItems, CHECK, rulerItems, RULER_STRIP } from './check-line.ts';
import { linePath } from './diagrams/shape.ts';
import { breakLines } from './letter.ts';
import { MARGIN, PAPERS, sheetOf, upright, type Face, type Item, type PaperName, type Pen, type Sheet } from './sheet.ts';

export interface PageOptions {
	readonly paper: PaperName;
	readonly unit: 'cm' | 'in';
	readonly code: string;
	readonly date: string;
}
export interface Room {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

const HEAD = 10;
const FOOT = 9;
export const roomOf = (paper: PaperName): Room => ({
	// A page is read: on a large sheet its lines are no longer than an eye follows.
	left: MARGIN + RULER_STRIP + 4, right: Math.min(PAPERS[paper].width - MARGIN - 3, 290), top: PAPERS[paper].height - MARGIN - HEAD, bottom: MARGIN + FOOT
});

export const ruleLine = (from: Point, to: Point, pen: Pen = 'rule'): Item => ({ item: 'path', path: linePath(from, to), closed: false, pen });
export const word = (at: Point, text: string, face: Face, size: number, anchor: 'start' | 'middle' | 'end' = 'start'): Item => ({ item: 'text', at, text, face, size, anchor });
/** Lines of prose from the foot of the first letters down; returns the foot of the line after the last. */
export function prose(at: Point, width: number, text: string, face: Face, size: number, leading = size * 0.5): { readonly items: readonly Item[]; readonly next: number } {
	const lines = breakLines(text, face, size, width);
	return { items: lines.map((line, i) => word([at[0], at[1] - i * leading], line, face, size)), next: at[1] - lines.length * leading };
}

/** An empty box to tick by hand, its lower left corner at `at`. */
export const tickBox = ([x, y]: Point, side = 4.2): Item => ({ item: 'path', path: linePath([x, y], [x + side, y], [x + side, y + side], [x, y + side]), closed: true, pen: 'sewn' });

export function pageOf({ paper, unit, code, date }: PageOptions, number: number, of: number, name: string, items: readonly Item[]): Sheet {
	const { left, right, top, bottom } = roomOf(paper);
	return sheetOf(paper, upright(paper), name, [
		...rulerItems(unit, top + 4, MARGIN + 0.5),
		word([left, top + 5.5], 'Skirtwright', 'heading', 12),
		word([right, top + 5.5], `${code} · sheet ${number} of ${of}`, 'label', 9.5, 'end'),
		ruleLine([left, top + 2.5], [right, top + 2.5], 'sewn'),
		...items,
		...acrossItems([left, bottom - 2], ''), ruleLine([left + CHECK, bottom - 2], [right, bottom - 2]),
		word([left, bottom - 7.2], 'Check the print: each thick line, up and across, is 100 mm. If yours is not, print again at 100 %.', 'labelStrong', 8),
		word([right, bottom - 7.2], spellDate(date), 'label', 8, 'end')
	]);
}

const MONTHS = ['Jan', 'Feb', 'March', 'April', 'May', 'June', 'July', 'Aug', 'Sept', 'Oct', 'Nov', 'Dec'];
/** `2026-11-25` as 25 Nov 2026, which no country reads another way. */
export function spellDate(date: string): string {
	const found = /^(\d{4})-(\d{2})-(\d{2})/.exec(date);
	const month = found && MONTHS[Number(found[2]) - 1];
	if (!found || !month) throw new Error(`not a date: ${date}`);
	return `${Number(found[3])} ${month} ${found[1]}`;
}

const SHARES: readonly (readonly [number, string])[] = [[0.25, 'quarter circle'], [1 / 3, 'third of a circle'], [0.5, 'half circle'], [0.75, 'three-quarter circle'], [1, 'full circle'], [1.5, 'circle and a half'], [2, 'double circle']];
/** A share of a circle in the trade's words, or as a number. */
export const shareWords = (share: number): string => SHARES.find(([of]) => Math.abs(of - share) < 0.002)?.[1] ?? `${Number(share.toFixed(2))} circle`;
