// A drawing at true size cut into sheets that butt: each line is printed once, and each sheet is glued over the ruler
// and name strips of its right and lower neighbours. Butting, since a strip for glue is there anyway and an overlap
// would cost sheets.
import type { Point } from '../drafting/geometry/point.ts';
import { rulerItems } from './check-line.ts';
import { clipConvex, clipPath, type Box } from './clip.ts';
import { linePath } from './diagrams/shape.ts';
import type { Drawing } from './drawing.ts';
import { cellBox, fewestSheets, turnPath, windowOf, type Cell, type Grid } from './grid.ts';
import { inkOf } from './ink-mark.ts';
import { moved } from './item-move.ts';
import { MARGIN, sheetOf, type Item, type PaperName, type Sheet } from './sheet.ts';
import { placeBlocks } from './block-place.ts';

export interface Tile {
	/** From the pattern's upper left, from 0. */
	readonly cell: Cell;
	/** Its window, in the turned drawing's mm. */
	readonly box: Box;
	readonly items: readonly Item[];
}
/** A drawing cut up, in reading order. How many tiles there are is how many sheets it takes. */
export interface Tiling {
	readonly paper: PaperName;
	readonly grid: Grid;
	readonly tiles: readonly Tile[];
}

export function tileDrawing(drawing: Drawing, paper: PaperName): Tiling {
	const grid = fewestSheets(drawing, paper);
	const inked = inkedTiles(drawing, grid);
	const words = placeBlocks(drawing, grid, inked.map(({ box }) => box));
	const [top, left] = [Math.min(...inked.map((t) => t.cell.row)), Math.min(...inked.map((t) => t.cell.column))];
	const tiles = inked.map(({ cell, box, items }, i) => ({ cell: { row: cell.row - top, column: cell.column - left }, box, items: [...items, ...words[i]!] }));
	return { paper, grid, tiles };
}

export interface TileNames {
	readonly unit: 'cm' | 'in';
	/** `Skirt` */
	readonly title: string;
	readonly code: string;
	/** The number of the first of these sheets, and of all sheets of the document. */
	readonly first: number;
	readonly of: number;
}

export function tileSheets({ paper, grid, tiles }: Tiling, names: TileNames): readonly Sheet[] {
	const window = windowOf(paper, grid.sideways);
	const numberAt = (row: number, column: number): number | null => {
		const i = tiles.findIndex(({ cell }) => cell.row === row && cell.column === column);
		return i < 0 ? null : names.first + i;
	};
	return tiles.map(({ cell, box, items }, i): Sheet => {
		const name = `${names.title}, row ${cell.row + 1}, column ${cell.column + 1}`;
		return sheetOf(paper, grid.sideways, name, [
			...rulerItems(names.unit, window.to[1], MARGIN + 0.5),
			...nameStrip(name, names, names.first + i, window),
			...joints(cell, numberAt, window),
			...items.map((item) => moved(item, [window.from[0] - box.from[0], window.from[1] - box.from[1]]))
		]);
	});
}

/** The cells that carry ink of lines, in reading order. */
function inkedTiles(drawing: Drawing, grid: Grid): readonly Tile[] {
	const candidates = new Map<string, Cell>();
	// A sampled run may miss a corner that a line only just cuts: neighbours are looked at as well.
	for (const { row, column } of grid.cells) for (const [r, c] of [[0, 0], [0, 1], [0, -1], [1, 0], [-1, 0]] as const) candidates.set(`${row + r},${column + c}`, { row: row + r, column: column + c });
	const tiles: Tile[] = [];
	for (const cell of [...candidates.values()].sort((a, b) => a.row - b.row || a.column - b.column)) {
		const box = cellBox(cell, grid);
		const cut = (layer: string | undefined): readonly Item[] => drawing.shapes.flatMap((shape): readonly Item[] => {
			if (shape.layer !== layer) return [];
			if (shape.shape === 'mark') return inkOf(shape, grid.turned, (corners) => clipConvex(corners, box), (path) => clipPath(path, box));
			const pen = shape.shape === 'path' ? shape.line : null;
			return shape.shape === 'path' && pen ? clipPath(turnPath(shape.path, grid.turned), box).map(({ path, run }) => ({ item: 'path', path, closed: false, pen, run })) : [];
		});
		const items = cut(undefined);
		// A wedge's corner over a joint, or the bracket at the fold, is no reason for a sheet.
		if (items.some((item) => item.item === 'path' && item.run !== undefined)) tiles.push({ cell, box, items: [...items, ...cut('bracket')] });
	}
	return tiles;
}

function nameStrip(name: string, { code, of }: TileNames, number: number, window: Box): readonly Item[] {
	const y = window.to[1] + 4.6;
	return [
		{ item: 'text', at: [window.from[0], y - 0.6], text: String(number), face: 'heading', size: 17 },
		{ item: 'text', at: [window.from[0] + 12, y], text: name, face: 'labelStrong', size: 9.5 },
		{ item: 'text', at: [window.to[0], y], text: `${code} · sheet ${number} of ${of} · true size`, face: 'label', size: 9, anchor: 'end' }
	];
}

/** Trim lines, the lines that neighbours are laid to, and match marks: half a diamond on either side of a joint. */
function joints({ row, column }: Cell, numberAt: (row: number, column: number) => number | null, { from, to }: Box): readonly Item[] {
	const corners: readonly [Point, Point, Point, Point] = [from, [to[0], from[1]], to, [from[0], to[1]]];
	const sides = [
		{ next: numberAt(row + 1, column), a: corners[0], b: corners[1], into: [0, 1], trim: true },
		{ next: numberAt(row, column + 1), a: corners[1], b: corners[2], into: [-1, 0], trim: true },
		{ next: numberAt(row - 1, column), a: corners[3], b: corners[2], into: [0, -1], trim: false },
		{ next: numberAt(row, column - 1), a: corners[0], b: corners[3], into: [1, 0], trim: false }
	] as const;
	return sides.flatMap(({ next, a, b, into, trim }): readonly Item[] => {
		if (next === null) return [];
		const on = (part: number, deep: number): Point => [a[0] + (b[0] - a[0]) * part + into[0] * deep, a[1] + (b[1] - a[1]) * part + into[1] * deep];
		const half = 2.5 / Math.hypot(b[0] - a[0], b[1] - a[1]);
		const upright = into[0] !== 0;
		const items: Item[] = [{ item: 'path', path: linePath(a, b), closed: false, pen: trim ? 'trim' : 'fine' }];
		for (const part of [0.25, 0.75]) {
			items.push({ item: 'path', path: linePath(on(part - half, 0), on(part + half, 0), on(part, 3)), closed: true, pen: null, fill: 0 });
		}
		// Beside the joint, inside the drawing's window, read along the joint.
		items.push({
			item: 'text', at: on(0.5, upright ? (into[0] < 0 ? 1 : 3.2) : into[1] > 0 ? 1.2 : 3.2), text: trim ? `trim, lay over sheet ${next}` : `sheet ${next} lies to this line`,
			face: 'label', size: 6.5, anchor: 'middle', ...(upright && { angle: Math.PI / 2 })
		});
		return items;
	});
}
