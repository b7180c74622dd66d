// The first sheet of a pattern: how many sheets, how to join them, what they make, and the page map.
import type { Point } from '../drafting/geometry/point.ts';
import type { Draft } from '../drafting/draft.ts';
import type { Box } from './clip.ts';
import { linePath } from './diagrams/shape.ts';
import type { Drawing, Path } from './drawing.ts';
import { linesOf, pointsAlong, turnPath } from './grid.ts';
import { movedPath } from './item-move.ts';
import { textLength } from './letter.ts';
import { pageOf, prose, roomOf, ruleLine, shareWords, word, type PageOptions, type Room } from './page.ts';
import { countWords, pieceTitle, type PatternPiece } from './pattern.ts';
import { PAPERS, type Item, type Pen, type Sheet } from './sheet.ts';
import type { Tiling } from './tile.ts';

export interface ShownPiece {
	readonly pattern: PatternPiece;
	readonly drawing: Drawing;
	readonly tiling: Tiling;
	/** Number of its first sheet. */
	readonly first: number;
}

const HOW = [
	'Print this sheet first, alone. Measure the thick line on its ruler. Only if it is 100 mm, print the rest.',
	'Trim the right edge and the lower edge of each sheet at its dotted line, where it has one.',
	'Lay each sheet over the strips of the sheets to its right and below, edge to line. The wedges meet as diamonds. Tape or glue.',
	'A sheet that would carry no line isn’t printed: the map leaves its place empty. Tape across from line to line.'
];

export function coverSheet(draft: Draft, pieces: readonly ShownPiece[], of: number, options: PageOptions): Sheet {
	const room = roomOf(options.paper);
	const { left, right } = room;
	const share = shareWords(draft.skirt.share);
	const items: Item[] = [
		word([left, room.top - 9], `Pattern, ${share}`, 'heading', 24),
		word([left, room.top - 16.5], `${of} sheets of ${PAPERS[options.paper].says}, this one among them. True size, allowances included.`, 'read', 11)
	];
	let y = room.top - 26;
	for (const [i, text] of HOW.entries()) {
		items.push(word([left, y], String(i + 1), 'heading', 12));
		const said = prose([left + 8, y], right - left - 8, text, 'read', 10.5);
		items.push(...said.items);
		y = said.next - 1.6;
	}
	y -= 4;
	items.push(word([left, y], 'Pieces', 'heading', 12), word([right, y], 'sheets', 'label', 9, 'end'));
	for (const { pattern, tiling, first } of pieces) {
		y -= 6.4;
		const last = first + tiling.tiles.length - 1;
		items.push(
			ruleLine([left, y + 4.4], [right, y + 4.4]), word([left, y], pieceTitle(pattern.piece), 'labelStrong', 10),
			word([left + 42, y], countWords(pattern), 'read', 10), word([right, y], first === last ? String(first) : `${first} to ${last}`, 'read', 10, 'end')
		);
	}
	items.push(...key(left, room.bottom + 4), ...pageMap(pieces, { ...room, top: y - 8, bottom: room.bottom + 12 }));
	return pageOf(options, 1, of, `Pattern, ${share}`, items);
}

const KEY: readonly (readonly [Pen, string])[] = [['cut', 'cut line'], ['stitch', 'stitch line'], ['fold', 'fold of the cloth'], ['grain', 'grain'], ['trim', 'trim the sheet']];
function key(left: number, y: number): readonly Item[] {
	let x = left;
	return KEY.flatMap(([pen, says]): readonly Item[] => {
		const at = x;
		x += 16 + textLength(says, 'label', 8);
		return [ruleLine([at, y + 1.1], [at + 10, y + 1.1], pen), word([at + 11.5, y], says, 'label', 8)];
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
		for (const { all } of maps) {
			const [wide, high] = [(all.to[0] - all.from[0]) * scale, (all.to[1] - all.from[1]) * scale + 6];
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
				...lines.map((path): Item => ({ item: 'path', path: movedPath(scaled(path, scale), [px - all.from[0] * scale, py - all.from[1] * scale]), closed: false, pen: 'rule' }))
			];
		});
	}
}
const scaled = (path: Path, by: number): Path => ({
	start: [path.start[0] * by, path.start[1] * by],
	edges: path.edges.map((e) => ({ ...e, end: [e.end[0] * by, e.end[1] * by], centre: e.centre && [e.centre[0] * by, e.centre[1] * by] }))
});
