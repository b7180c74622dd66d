// A sheet of paper as plain data: what is on it, in millimetres from its lower left corner, y up. Writers round, once.
import type { Point } from '../drafting/geometry/point.ts';
import type { LineKind, Path } from './drawing.ts';

/** Upright; a sheet may lie on its side. ISO 216 and ANSI/ASME Y14.1. A later size is one more line. */
export const PAPERS = {
	a4: { width: 210, height: 297, says: 'A4' },
	letter: { width: 215.9, height: 279.4, says: 'Letter' },
	a3: { width: 297, height: 420, says: 'A3' },
	tabloid: { width: 279.4, height: 431.8, says: 'Tabloid' },
	a0: { width: 841, height: 1189, says: 'A0' },
	// Rolls are cut off where the drawing ends: what stands here is a cover's length. Widths: 24, 36 and 42 in, as sold.
	roll610: { width: 610, height: 297, says: 'roll of 610 mm' },
	roll914: { width: 914, height: 297, says: 'roll of 914 mm' },
	roll1067: { width: 1067, height: 297, says: 'roll of 1067 mm' }
} as const satisfies Record<string, Size & { says: string }>;
export type PaperName = keyof typeof PAPERS;
export const PAPER_NAMES = Object.keys(PAPERS) as readonly PaperName[];
export const isPaperName = (name: string): name is PaperName => Object.hasOwn(PAPERS, name);
export const isRoll = (paper: PaperName): boolean => paper.startsWith('roll');
/** What goes through a printer on a table, and what a hand-out is laid out for. */
export const DESK_PAPERS = ['a4', 'letter', 'a3', 'tabloid'] as const satisfies readonly PaperName[];

/** mm, as it lies. */
export interface Size {
	readonly width: number;
	readonly height: number;
}

/**
 * The longest stretch of a roll that is one sheet, mm: readers take a page of 14 400 units at most (ISO 32000, annex C),
 * which is 5080 mm. What is longer goes on on the next.
 */
export const LONGEST = 5000;

/** No ink nearer than this to a sheet's edge: few printers reach closer (common practice, no source). */
export const MARGIN = 12;

/** PDF's unit is 1/72 in (ISO 32000). */
export const points = (mm: number): number => (mm * 72) / 25.4;

/** The letters a sheet is set in. `read` for prose and columns of figures, the rest for labels and headings. */
export type Face = 'read' | 'readStrong' | 'label' | 'labelStrong' | 'heading';
/** The lines of the trade, and those that only paper has: the check line, where to trim, rules of a table. */
export type Pen = LineKind | 'check' | 'trim' | 'rule';

export interface PathItem {
	readonly item: 'path';
	readonly path: Path;
	readonly closed: boolean;
	readonly pen: Pen | null;
	/** 0 is ink, 1 is paper. */
	readonly fill?: number;
	/** mm of the line that lie before this stretch, so that dashes run on over a joint. */
	readonly run?: number;
}
export interface TextItem {
	readonly item: 'text';
	/** The foot of the letters. A fraction is typed `5/8` and set as one. */
	readonly at: Point;
	readonly text: string;
	readonly face: Face;
	/** Points. */
	readonly size: number;
	readonly anchor?: 'start' | 'middle' | 'end';
	/** Radians, counterclockwise. */
	readonly angle?: number;
}
export type Item = PathItem | TextItem;

export interface Sheet extends Size {
	readonly paper: PaperName;
	/** What it is, in a line: `Skirt, row 1, column 2`. */
	readonly name: string;
	readonly items: readonly Item[];
}

export const upright = (paper: PaperName): Size => ({ width: PAPERS[paper].width, height: PAPERS[paper].height });
export const sheetOf = (paper: PaperName, { width, height }: Size, name: string, items: readonly Item[]): Sheet => ({ paper, width, height, name, items });
