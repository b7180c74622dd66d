// A sheet of paper as plain data: what is on it, in millimetres from its lower left corner, y up. Writers round, once.
import type { Point } from '../drafting/geometry/point.ts';
import type { LineKind, Path } from './drawing.ts';

/** Upright; a sheet may lie on its side. ISO 216 and ANSI/ASME Y14.1. A later size is one more line. */
export const PAPERS = {
	a4: { width: 210, height: 297, says: 'A4' },
	letter: { width: 215.9, height: 279.4, says: 'Letter' }
} as const satisfies Record<string, { width: number; height: number; says: string }>;
export type PaperName = keyof typeof PAPERS;
export const isPaperName = (name: string): name is PaperName => Object.hasOwn(PAPERS, name);

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

export interface Sheet {
	readonly paper: PaperName;
	/** mm, as it lies. */
	readonly width: number;
	readonly height: number;
	/** What it is, in a line: `Skirt, row 1, column 2`. */
	readonly name: string;
	readonly items: readonly Item[];
}

export function sheetOf(paper: PaperName, sideways: boolean, name: string, items: readonly Item[]): Sheet {
	const { width, height } = PAPERS[paper];
	return { paper, width: sideways ? height : width, height: sideways ? width : height, name, items };
}
