// The first sheet of a pattern: how many sheets, how to join them, what they make, and the page map.
import type { Point } from '../drafting/geometry/point.ts';
import type { AnyDraft } from '../drafting/style.ts';
import type { Box } from './clip.ts';
import { linePath } from './diagrams/shape.ts';
import type { Drawing, Path } from './drawing.ts';
import { linesOf, pointsAlong, turnPath, type Join } from './grid.ts';
import { squareItems } from './check-line.ts';
import { movedPath } from './item-move.ts';
import { breakLines, textLength } from './letter.ts';
import { pageOf, prose, roomOf, ruleLine, word, type PageOptions, type Room } from './page.ts';
import type { PatternOptions } from './pattern.ts';
import { countWords, pieceTitle, sizeWords, skirtWords, type PatternPiece } from './pattern-piece.ts';
import { scaledPath } from './scaled.ts';
import { isRoll, PAPERS, type Item, type Pen, type Sheet } from './sheet.ts';
import type { Tiling } from './tile.ts';

export interface ShownPiece {
	readonly pattern: PatternPiece;
	readonly drawing: Drawing;
	readonly tiling: Tiling;
	/** Number of its first sheet. */
	readonly first: number;
}
export interface CoverOptions extends PageOptions, PatternOptions {
	readonly join: Join;
}

const CHECK_IT = 'Print this sheet first, alone. Measure the square and the thick lines. Only if they are right, print the rest.';
const JOIN_IT: Readonly<Record<Join, readonly string[]>> = {
	butt: [
		'Trim the right edge and the lower edge of each sheet at its dotted line, where it has one.',
		'Lay each sheet over the strips of the sheets to its right and below, edge to line. The wedges meet as diamonds. Tape or glue.'
	],
	overlap: [
		'Trim the left edge and the upper edge of each sheet at its dotted line, where it has one.',
		'Lay each sheet over the strip of the sheets to its left and above, edge to line, wedge on diamond. Both show the same lines there. Tape or glue.'
	]
};
const EMPTY = 'A sheet that would carry no line isn’t printed: the map leaves its place empty. Tape across from line to line.';
const APART = 'Each piece is whole on its sheet: nothing is joined.';

const NARROW = 51;
/** The list of pieces beside the square: how many are cut of each, and where it lies. */
const besideLines = (pattern: PatternPiece): readonly string[] => breakLines(countWords(pattern), 'read', 9, NARROW);
const besideHeight = (pattern: PatternPiece): number => 7 + besideLines(pattern).length * 4.2;
/** Two sheets of cover where the pieces are too many to stand beside the square. */
export const coverCount = (patterns: readonly PatternPiece[]): number => (patterns.reduce((sum, p) => sum + besideHeight(p), 8) > SQUARE ? 2 : 1);

/** What the square and its words take, mm. */
const SQUARE = 108;

export function coverSheets(draft: AnyDraft, pieces: readonly ShownPiece[], of: number, options: CoverOptions): readonly Sheet[] {
	const room = roomOf(options.paper);
	const { left, right } = room;
	const title = `Pattern, ${skirtWords(draft)}`;
	const on = isRoll(options.paper) ? `on a ${PAPERS[options.paper].says}` : `of ${PAPERS[options.paper].says}`;
	const size = sizeWords(options.scale);
	const items: Item[] = [
		word([left, room.top - 9], title, 'heading', 24),
		...prose([left, room.top - 16.5], right - left, `${of} sheets ${on}, this one among them. ${size.charAt(0).toUpperCase()}${size.slice(1)}. Allowances included. Draft ${options.mark}.`, 'read', 11).items
	];
	let y = room.top - 27;
	const how = [CHECK_IT, ...(pieces.some(({ tiling }) => tiling.tiles.length > 1) ? [...JOIN_IT[options.join], EMPTY] : [APART])];
	for (const [i, text] of how.entries()) {
		items.push(word([left, y], String(i + 1), 'heading', 12));
		const said = prose([left + 8, y], right - left - 8, text, 'read', 10.5);
		items.push(...said.items);
		y = said.next - 1.6;
	}
	const corner: Point = [left, room.bottom + 11];
	items.push(...key(left, room.bottom + 3), ...squareItems(corner));
	const number = (n: number): string => (coverCount(pieces.map(({ pattern }) => pattern)) === 1 ? '' : `, part ${n}`);
	const page = (n: number, content: readonly Item[]): Sheet => pageOf(options, n, of, `${title}${number(n)}`, content);
	if (!number(1)) {
		const map = { left: corner[0] + 5, right: corner[0] + 93, bottom: corner[1] + 4, top: corner[1] + 93 };
		return [page(1, [...items, ...piecesBeside(pieces, [corner[0] + SQUARE + 3, corner[1] + SQUARE - 6]), ...pageMap(pieces, map)])];
	}
	const list = piecesAcross(pieces, room);
	return [page(1, items), page(2, [...list.items, ...pageMap(pieces, { ...room, top: list.next - 4 })])];
}

const sheetsSaid = ({ tiling, first }: ShownPiece): string => (tiling.tiles.length === 1 ? String(first) : `${first} to ${first + tiling.tiles.length - 1}`);

function piecesBeside(pieces: readonly ShownPiece[], [x, top]: Point): readonly Item[] {
	const items: Item[] = [word([x, top], 'Pieces', 'heading', 12), word([x + NARROW, top], 'sheets', 'label', 9, 'end')];
	let y = top - 3;
	for (const shown of pieces) {
		items.push(ruleLine([x, y], [x + NARROW, y]), word([x, y - 4.4], pieceTitle(shown.pattern.piece), 'labelStrong', 10), word([x + NARROW, y - 4.4], sheetsSaid(shown), 'read', 10, 'end'));
		items.push(...besideLines(shown.pattern).map((text, i) => word([x, y - 8.6 - i * 4.2], text, 'read', 9)));
		y -= besideHeight(shown.pattern);
	}
	return items;
}

/** One line a piece, over the width of a sheet; closer where there are many. */
function piecesAcross(pieces: readonly ShownPiece[], { left, right, top, bottom }: Room): { readonly items: readonly Item[]; readonly next: number } {
	const row = Math.min(6.4, (top - bottom) / 2 / pieces.length);
	let y = top - 9;
	const items: Item[] = [word([left, y], 'Pieces', 'heading', 12), word([right, y], 'sheets', 'label', 9, 'end')];
	for (const shown of pieces) {
		y -= row;
		items.push(
			ruleLine([left, y + row * 0.69], [right, y + row * 0.69]), word([left, y], pieceTitle(shown.pattern.piece), 'labelStrong', Math.min(10, row * 1.9)),
			word([left + 42, y], countWords(shown.pattern), 'read', Math.min(10, row * 1.9)), word([right, y], sheetsSaid(shown), 'read', Math.min(10, row * 1.9), 'end')
		);
	}
	return { items, next: y - 4 };
}

const KEY: readonly (readonly [Pen | 'notch', string])[] = [['cut', 'cut line'], ['stitch', 'stitch line'], ['fold', 'fold'], ['grain', 'grain'], ['notch', 'notch'], ['trim', 'trim the sheet']];
function key(left: number, y: number): readonly Item[] {
	let x = left;
	return KEY.flatMap(([pen, says]): readonly Item[] => {
		const [at, long] = [x, pen === 'notch' ? 4 : 10];
		x += long + 6 + textLength(says, 'label', 8);
		const sample: Item = pen === 'notch'
			? { item: 'path', path: linePath([at, y + 2.6], [at + 3.6, y + 2.6], [at + 1.8, y]), closed: true, pen: null, fill: 0 }
			: ruleLine([at, y + 1.1], [at + long, y + 1.1], pen);
		return [sample, word([at + long + 1.5, y], says, 'label', 8)];
	});
}

/** Where in a small sheet a number stands clearest of the lines drawn over it: nine places are looked at. */
function clearest([x0, y0]: Point, [x1, y1]: Point, size: number, ink: readonly Point[]): Point {
	const tall = (size * 25.4) / 72;
	const half = tall * 0.6;
	const near = ink.filter(([x, y]) => x >= x0 && x <= x1 && y >= y0 && y <= y1);
	let [best, room]: [Point, number] = [[x0, y0], -1];
	for (const fx of [0.5, 0.22, 0.78]) {
		for (const fy of [0.5, 0.16, 0.84]) {
			const [x, y]: Point = [x0 + (x1 - x0) * fx, y0 + (y1 - y0) * fy];
			const clear = Math.min(3, ...near.map((p) => Math.hypot((p[0] - x) * (half / tall), p[1] - y)));
			if (clear > room + 1e-9) [best, room] = [[x, y - tall * 0.34], clear];
		}
	}
	return best;
}

/** Each piece small, with the sheets it lies on, set side by side at the largest scale that fits. */
function pageMap(pieces: readonly ShownPiece[], room: Room): readonly Item[] {
	const maps = pieces.map(({ pattern, drawing, tiling, first }) => {
		const { grid, tiles } = tiling;
		const boxes = tiles.map(({ box }) => box);
		const all: Box = {
			from: [Math.min(...boxes.map((b) => b.from[0])), Math.min(...boxes.map((b) => b.from[1]))],
			to: [Math.max(...boxes.map((b) => b.to[0])), Math.max(...boxes.map((b) => b.to[1]))]
		};
		return { title: pieceTitle(pattern.piece), lines: linesOf(drawing).map((path) => turnPath(path, grid.turned)), boxes, all, first };
	});
	const gap = 8;
	for (let scale = 1 / 8; ; scale *= 0.96) {
		let [x, y, tall] = [room.left, room.top, 0];
		const places: Point[] = [];
		for (const { all, title } of maps) {
			// A slim piece takes as much room as its name.
			const [wide, high] = [Math.max((all.to[0] - all.from[0]) * scale, textLength(title, 'labelStrong', 9)), (all.to[1] - all.from[1]) * scale + 6];
			if (x > room.left && x + wide > room.right) [x, y, tall] = [room.left, y - tall - gap, 0];
			places.push([x, y - high]);
			[x, tall] = [x + wide + gap, Math.max(tall, high)];
			if (x - gap > room.right + 1e-6) tall = Infinity;
		}
		// Under 1:400 nothing could be read: then the map runs off, which is our own mistake.
		if (scale < 1 / 400) throw new Error(`no room for a page map between ${room.top} and ${room.bottom} mm`);
		if (y - tall < room.bottom) continue;
		return maps.flatMap(({ title, lines, boxes, all, first }, i) => {
			const [px, py] = places[i]!;
			const put = ([mx, my]: Point): Point => [px + (mx - all.from[0]) * scale, py + (my - all.from[1]) * scale];
			const small = Math.min(8, Math.max(4.5, (boxes[0]!.to[0] - boxes[0]!.from[0]) * scale));
			const ink = lines.flatMap((path) => pointsAlong(path, 6).map(put));
			return [
				word([px, py + (all.to[1] - all.from[1]) * scale + 2], title, 'labelStrong', 9),
				...boxes.flatMap((box, n): readonly Item[] => [
					{ item: 'path', path: linePath(put(box.from), put([box.to[0], box.from[1]]), put(box.to), put([box.from[0], box.to[1]])), closed: true, pen: 'rule' },
					word(clearest(put(box.from), put(box.to), small, ink), String(first + n), 'label', small, 'middle')
				]),
				...lines.map((path): Item => ({ item: 'path', path: movedPath(scaledPath(path, scale), [px - all.from[0] * scale, py - all.from[1] * scale]), closed: false, pen: 'rule' }))
			];
		});
	}
}
