// A drawing cut into sheets. Where they butt, each line is printed once, and each sheet is glued over the ruler and name
// strips of its right and lower neighbours: a strip for glue is there anyway. Where they overlap, each sheet is trimmed
// at its left and its top and laid over the strip in which its neighbour shows the same lines.
import type { Point } from '../drafting/geometry/point.ts';
import { acrossItems, rulerItems } from './check-line.ts';
import { clipConvex, clipPath, type Box } from './clip.ts';
import { linePath } from './diagrams/shape.ts';
import type { Drawing, Shape } from './drawing.ts';
import { cellBox, fewestSheets, isApart, turnPath, windowOf, type Cell, type Grid, type Join } from './grid.ts';
import { inkOf } from './ink-mark.ts';
import { moved } from './item-move.ts';
import { MARGIN, sheetOf, type Item, type PaperName, type Sheet } from './sheet.ts';
import { placeBlocks } from './block-place.ts';

export interface Tile {
	/** From the pattern's upper left, from 0. */
	readonly cell: Cell;
	/** Its own part of the turned drawing, mm. Its window shows the grid's overlap besides. */
	readonly box: Box;
	readonly items: readonly Item[];
}
/** A drawing cut up, in reading order. How many tiles there are is how many sheets it takes. */
export interface Tiling {
	readonly paper: PaperName;
	readonly grid: Grid;
	readonly tiles: readonly Tile[];
}

export function tileDrawing(drawing: Drawing, paper: PaperName, join: Join = 'butt'): Tiling {
	const grid = fewestSheets(drawing, paper, join);
	const inked = inkedTiles(drawing, grid);
	const words = placeBlocks(drawing, grid, inked.map(({ box }) => box));
	const [top, left] = [Math.min(...inked.map((t) => t.cell.row)), Math.min(...inked.map((t) => t.cell.column))];
	const tiles = inked.map(({ cell, box, items }, i) => ({ cell: { row: cell.row - top, column: cell.column - left }, box, items: [...items, ...words[i]!] }));
	return { paper, grid, tiles };
}

/** How many sheets a drawing takes, found without writing on them. */
export const tileCount = (drawing: Drawing, paper: PaperName, join: Join = 'butt'): number => inkedTiles(drawing, fewestSheets(drawing, paper, join)).length;

export interface TileNames {
	readonly unit: 'cm' | 'in';
	/** `Skirt` */
	readonly title: string;
	readonly code: string;
	/** `true size` */
	readonly size: string;
	/** The number of the first of these sheets, and of all sheets of the document. */
	readonly first: number;
	readonly of: number;
}

export function tileSheets({ paper, grid, tiles }: Tiling, names: TileNames): readonly Sheet[] {
	const window = windowOf(grid.size);
	const numberAt = (row: number, column: number): number | null => {
		const i = tiles.findIndex(({ cell }) => cell.row === row && cell.column === column);
		return i < 0 ? null : names.first + i;
	};
	return tiles.map(({ cell, box, items }, i): Sheet => {
		const name = `${names.title}, row ${cell.row + 1}, column ${cell.column + 1}`;
		return sheetOf(paper, grid.size, name, [
			...rulerItems(names.unit, window.to[1], MARGIN + 0.5),
			...acrossItems([window.from[0], window.to[1] + 2.1]),
			...nameStrip(name, names, names.first + i, window),
			...joints(cell, numberAt, window, grid.overlap),
			...items.map((item) => moved(item, [window.from[0] - box.from[0], window.from[1] + grid.overlap - box.from[1]]))
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
		const cut = (wanted: (shape: Shape) => boolean, overlap: number): readonly Item[] => drawing.shapes.flatMap((shape): readonly Item[] => {
			if (!wanted(shape)) return [];
			const window: Box = { from: [box.from[0], box.from[1] - overlap], to: [box.to[0] + overlap, box.to[1]] };
			if (shape.shape === 'mark') return inkOf(shape, grid.turned, (corners) => clipConvex(corners, window), (path) => clipPath(path, window));
			const pen = shape.shape === 'path' ? shape.line : null;
			return shape.shape === 'path' && pen ? clipPath(turnPath(shape.path, grid.turned), window).map(({ path, run }) => ({ item: 'path', path, closed: false, pen, run })) : [];
		});
		const own = cut((shape) => !isApart(shape), 0);
		// A wedge's corner over a joint, or the bracket at the fold, is no reason for a sheet.
		if (!own.some((item) => item.item === 'path' && item.run !== undefined)) continue;
		const items = grid.overlap ? cut((shape) => !isApart(shape), grid.overlap) : own;
		tiles.push({ cell, box, items: [...items, ...cut(({ layer }) => layer === 'bracket', grid.overlap)] });
	}
	return tiles;
}

function nameStrip(name: string, { code, of, size }: TileNames, number: number, window: Box): readonly Item[] {
	const y = window.to[1] + 5;
	return [
		{ item: 'text', at: [window.from[0], y - 0.6], text: String(number), face: 'heading', size: 13 },
		{ item: 'text', at: [window.from[0] + 12, y], text: name, face: 'labelStrong', size: 9 },
		{ item: 'text', at: [window.to[0], y], text: `${code} · sheet ${number} of ${of} · ${size}`, face: 'label', size: 8.5, anchor: 'end' }
	];
}

/** Where to trim, where the neighbours lie, and match marks: half a diamond on either side of a joint. */
function joints({ row, column }: Cell, numberAt: (row: number, column: number) => number | null, { from, to }: Box, overlap: number): readonly Item[] {
	const edge = { left: from[0], right: to[0] - overlap, top: to[1], foot: from[1] + overlap };
	const [a, b, c, d]: readonly [Point, Point, Point, Point] = [[edge.left, edge.foot], [edge.right, edge.foot], [edge.right, edge.top], [edge.left, edge.top]];
	const sides = [
		{ next: numberAt(row + 1, column), ends: [a, b], into: [0, 1], first: true },
		{ next: numberAt(row, column + 1), ends: [b, c], into: [-1, 0], first: true },
		{ next: numberAt(row - 1, column), ends: [d, c], into: [0, -1], first: false },
		{ next: numberAt(row, column - 1), ends: [a, d], into: [1, 0], first: false }
	] as const;
	return sides.flatMap(({ next, ends: [a, b], into, first }): readonly Item[] => {
		if (next === null) return [];
		const on = (part: number, deep: number): Point => [a[0] + (b[0] - a[0]) * part + into[0] * deep, a[1] + (b[1] - a[1]) * part + into[1] * deep];
		const half = 2.5 / Math.hypot(b[0] - a[0], b[1] - a[1]);
		const upright = into[0] !== 0;
		// Butting, the sheet before is trimmed and lies on top; overlapping, the sheet after.
		const trim = first === (overlap === 0);
		const items: Item[] = [{ item: 'path', path: linePath(a, b), closed: false, pen: trim ? 'trim' : 'fine' }];
		for (const part of [0.25, 0.75]) {
			const wedge = (deep: number): Item => ({ item: 'path', path: linePath(on(part - half, 0), on(part + half, 0), on(part, deep)), closed: true, pen: null, fill: 0 });
			items.push(wedge(3), ...(first && overlap ? [wedge(-3)] : []));
		}
		// Beside the joint, inside the drawing's window, read along the joint.
		const text = trim ? `trim, lay over sheet ${next}` : `sheet ${next} lies to this line`;
		items.push({
			item: 'text', at: on(0.5, upright ? (into[0] < 0 ? 1 : 3.2) : into[1] > 0 ? 1.2 : 3.2), text, face: 'label', size: 6.5, anchor: 'middle', ...(upright && { angle: Math.PI / 2 })
		});
		return items;
	});
}
