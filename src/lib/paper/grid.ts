// How a drawing lies on a grid of sheets: which way round, and which sheets of the grid carry ink.
import type { Point } from '../drafting/geometry/point.ts';
import { boxOf, pointOn, type Box } from './clip.ts';
import { RULER_STRIP } from './check-line.ts';
import type { Drawing, Path, Shape } from './drawing.ts';
import { isRoll, LONGEST, MARGIN, upright, type PaperName, type Size } from './sheet.ts';

/** Ink of lines reaches half its weight over a joint: this much room is kept for it. */
const SPARE = 1;
/** The strip over the drawing for the sheet's name. It and the ruler's strip are what the neighbour is glued to. */
export const NAME_STRIP = 9;

/** The part of a sheet that belongs to the drawing, mm on the sheet. */
export const windowOf = ({ width, height }: Size): Box => ({
	from: [MARGIN + RULER_STRIP + SPARE, MARGIN + SPARE], to: [width - MARGIN - SPARE, height - MARGIN - SPARE - NAME_STRIP]
});

/** How sheets are joined: edge to edge, or with the ink in a strip at the right and the foot printed again on the next. */
export type Join = 'butt' | 'overlap';
/** mm of drawing that neighbours share where they overlap (common practice, no source). */
export const OVERLAP = 12;

export interface Cell {
	/** From the top, from the left, from 0. */
	readonly row: number;
	readonly column: number;
}
export interface Grid {
	/** Of each sheet, as it lies. */
	readonly size: Size;
	/** Is the drawing turned a quarter to the left? */
	readonly turned: boolean;
	/** The drawing's point (after turning) at the grid's upper left corner. */
	readonly corner: Point;
	/** How far it is from one sheet's window to the next. */
	readonly width: number;
	readonly height: number;
	/** What a window shows beyond that, at its right and its foot. */
	readonly overlap: number;
	readonly cells: readonly Cell[];
}

export const turnPoint = (p: Point, turned: boolean): Point => (turned ? [0 - p[1], p[0]] : p);
export const turnPath = (path: Path, turned: boolean): Path =>
	turned ? { start: turnPoint(path.start, true), edges: path.edges.map((e) => ({ ...e, end: turnPoint(e.end, true), centre: e.centre && turnPoint(e.centre, true) })) } : path;

/** Points a few mm apart along a path. */
export function pointsAlong(path: Path, apart: number): readonly Point[] {
	const points: Point[] = [path.start];
	let from = path.start;
	for (const edge of path.edges) {
		const length = edge.centre ? Math.abs(edge.turn) * Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1]) : Math.hypot(edge.end[0] - from[0], edge.end[1] - from[1]);
		const steps = Math.max(1, Math.ceil(length / apart));
		for (let i = 1; i <= steps; i++) points.push(pointOn(from, edge, i / steps));
		from = edge.end;
	}
	return points;
}

/** Is a point within a closed run of corners? A ray to the right crosses its sides an odd number of times. */
export function within([x, y]: Point, corners: readonly Point[]): boolean {
	let odd = false;
	for (const [i, a] of corners.entries()) {
		const b = corners[(i + 1) % corners.length]!;
		if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) odd = !odd;
	}
	return odd;
}

/** The lines that a sheet is printed for. */
export const linesOf = (drawing: Drawing): readonly Path[] => drawing.shapes.flatMap((shape) => (shape.shape === 'path' && shape.line && !isApart(shape) ? [shape.path] : []));
/** What no sheet is printed for: the grain, which moves along with its words, and the bracket at the fold (pattern.ts). */
export const isApart = ({ layer }: Shape): boolean => layer === 'grain' || layer === 'bracket';
export const cellAt = ([x, y]: Point, { corner, width, height }: Pick<Grid, 'corner' | 'width' | 'height'>): Cell => ({
	column: Math.floor((x - corner[0]) / width), row: Math.ceil((corner[1] - y) / height) - 1
});
/** The box of a cell, in the turned drawing's mm, without what it shows of its neighbours. */
export const cellBox = ({ row, column }: Cell, { corner, width, height }: Grid): Box => ({
	from: [corner[0] + column * width, corner[1] - (row + 1) * height], to: [corner[0] + (column + 1) * width, corner[1] - row * height]
});

/** Where the grid may begin, in parts of a window: moved so, it may miss a corner of the drawing. */
const SHIFTS = [0, 1 / 6, 2 / 6, 3 / 6, 4 / 6, 5 / 6] as const;

/** The ways a sheet may lie; a roll is as long as the drawing is high. */
function sizesOf(paper: PaperName, high: number): readonly Size[] {
	const { width, height } = upright(paper);
	if (!isRoll(paper)) return [{ width, height }, { width: height, height: width }];
	const around = windowOf({ width, height: 0 });
	// Never so short that its ruler has no check line.
	return [{ width, height: Math.min(LONGEST, Math.max(170, Math.ceil(high + 1 + around.from[1] - around.to[1]))) }];
}

/** The cells in which points lie; their least corner is that of the grid. */
function cellsWith(points: readonly Point[], place: Pick<Grid, 'corner' | 'width' | 'height'>): readonly Cell[] {
	const seen = new Set<number>();
	const cells: Cell[] = [];
	let last = -1;
	for (const point of points) {
		const cell = cellAt(point, place);
		const key = cell.row * 100_000 + cell.column;
		// The next point is most often in the same cell.
		if (key === last || seen.has(key)) continue;
		last = key;
		seen.add(key);
		cells.push(cell);
	}
	return cells;
}

/** The way that takes the fewest sheets, and of a roll the shortest stretch; among equals, upright and unturned. */
export function fewestSheets(drawing: Drawing, paper: PaperName, join: Join = 'butt'): Grid {
	const overlap = join === 'overlap' ? OVERLAP : 0;
	let best: Grid | null = null;
	for (const turned of [false, true]) {
		const lines = linesOf(drawing).map((path) => turnPath(path, turned));
		const box = boxOf(lines);
		const points = lines.flatMap((path) => pointsAlong(path, 3));
		for (const size of sizesOf(paper, box.to[1] - box.from[1])) {
			const view = windowOf(size);
			const [width, height] = [view.to[0] - view.from[0] - overlap, view.to[1] - view.from[1] - overlap];
			// Along a roll nothing is gained by moving.
			for (const x of SHIFTS) for (const y of isRoll(paper) ? [0] : SHIFTS) {
				const place = { corner: [box.from[0] - 0.5 - x * width, box.to[1] + 0.5 + y * height] as Point, width, height };
				const cells = cellsWith(points, place);
				const shorter = best !== null && cells.length === best.cells.length && size.width === best.size.width && size.height < best.size.height;
				if (!best || cells.length < best.cells.length || shorter) best = { ...place, size, turned, overlap, cells };
			}
		}
	}
	if (!best) throw new Error('a drawing of no lines');
	return best;
}
