// Finds a place for each block of words of a tiled pattern, and for its grain: whole, on one sheet that carries lines,
// inside its piece, off its lines.
import type { Point } from '../drafting/geometry/point.ts';
import { boxOf, type Box } from './clip.ts';
import type { Drawing, Label, Shape, Voice } from './drawing.ts';
import { pointsAlong, turnPath, turnPoint, within, type Grid } from './grid.ts';
import { inkMap, type InkMap } from './ink-map.ts';
import { inkOf } from './ink-mark.ts';
import { moved, movedPath } from './item-move.ts';
import { textLength } from './letter.ts';
import { INK } from './pen.ts';
import type { Face, Item } from './sheet.ts';

/** Points for each voice on a pattern; 0.75 pt to the ink unit of the screen. */
export const VOICES: Readonly<Record<Voice, { readonly face: Face; readonly size: number }>> = {
	title: { face: 'heading', size: 20 }, figure: { face: 'heading', size: 22 },
	label: { face: 'label', size: 12 }, labelStrong: { face: 'labelStrong', size: 12 }, small: { face: 'label', size: 10.5 }
};
type TextLabel = Extract<Label, { shape: 'text' }>;
const PAD = 1.5;

/** The room a block of words takes round its place, mm. */
function room(labels: readonly TextLabel[]): Box {
	let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
	for (const { text, voice, shift = [0, 0], anchor = 'start', angle } of labels) {
		const { face, size } = VOICES[voice];
		const length = textLength(text, face, size);
		const em = (size * 25.4) / 72;
		const left = anchor === 'end' ? -length : anchor === 'middle' ? -length / 2 : 0;
		const [sx, sy] = [shift[0] * INK, -shift[1] * INK];
		// A word read upwards runs along y, its letters to the left.
		const corners: readonly Point[] = angle ? [[sx - 0.8 * em, sy + left], [sx + 0.25 * em, sy + left + length]] : [[sx + left, sy - 0.25 * em], [sx + left + length, sy + 0.8 * em]];
		for (const [x, y] of corners) [x0, y0, x1, y1] = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x), Math.max(y1, y)];
	}
	return { from: [x0 - PAD, y0 - PAD], to: [x1 + PAD, y1 + PAD] };
}

const overlap = (a: Box, b: Box): boolean => a.from[0] < b.to[0] && b.from[0] < a.to[0] && a.from[1] < b.to[1] && b.from[1] < a.to[1];
const at = (box: Box, [x, y]: Point): Box => ({ from: [box.from[0] + x, box.from[1] + y], to: [box.to[0] + x, box.to[1] + y] });

/** What moves as one: words that ask for the same place, or the grain with its arrow heads and its word. */
interface Block {
	readonly wanted: Point;
	readonly labels: readonly TextLabel[];
	readonly shapes: readonly Shape[];
}
function blocksOf(drawing: Drawing): readonly Block[] {
	const grain = drawing.shapes.filter((shape) => shape.layer === 'grain');
	const blocks = new Map<string, TextLabel[]>();
	for (const shape of drawing.shapes) if (shape.shape === 'text') blocks.set(shape.at.join(), [...(blocks.get(shape.at.join()) ?? []), shape]);
	const all = [...blocks.values()].map((labels): Block => ({
		wanted: labels[0]!.at, labels, shapes: labels[0]!.layer === 'grain' ? grain.filter((shape) => shape.shape !== 'text') : []
	}));
	// Words that belong to a line or a mark come before what may stand anywhere.
	return all.sort((a, b) => a.labels.length + a.shapes.length - b.labels.length - b.shapes.length);
}

/** The blocks for each of the boxes (the sheets' windows in the turned drawing), in its mm. */
export function placeBlocks(drawing: Drawing, grid: Grid, boxes: readonly Box[]): readonly (readonly Item[])[] {
	const out: Item[][] = boxes.map(() => []);
	const fixed = drawing.shapes.flatMap((shape) => (shape.shape === 'path' && shape.line && shape.layer !== 'grain' ? [shape.path] : []));
	const ink = fixed.flatMap((path) => pointsAlong(turnPath(path, grid.turned), 2));
	const maps = new Map<number, InkMap>();
	const inkOn = (sheet: number): InkMap => {
		const map = maps.get(sheet) ?? inkMap(ink, boxes[sheet]!);
		maps.set(sheet, map);
		return map;
	};
	const pieces = drawing.shapes.flatMap((s) => (s.shape === 'path' && s.fill === 'paper' ? [pointsAlong(turnPath(s.path, grid.turned), 8)] : []));
	const taken: Box[] = [];
	for (const block of blocksOf(drawing)) {
		const labels = block.labels.map((label) => (grid.turned && label.angle ? { ...label, angle: 0 } : label));
		const wanted = turnPoint(block.wanted, grid.turned);
		const lines = block.shapes.flatMap((shape) => (shape.shape === 'path' ? [turnPath(shape.path, grid.turned)] : []));
		const size = around([room(labels), ...(lines.length ? [padded(at(boxOf(lines), [-wanted[0], -wanted[1]]))] : [])]);
		// A word far from its line or notch says nothing: only what belongs to the whole piece may go further.
		const alone = block.labels.length === 1 && block.shapes.length === 0;
		const place = nearestFree(wanted, size, boxes, inkOn, pieces, taken, alone ? NEAR : null, labels.every(({ rank }) => (rank ?? 0) === 0));
		if (!place) continue;
		taken.push(at(size, place.at));
		const by: Point = [place.at[0] - wanted[0], place.at[1] - wanted[1]];
		const put = out[place.sheet]!;
		for (const path of lines) put.push({ item: 'path', path: movedPath(path, by), closed: false, pen: 'grain', run: 0 });
		for (const shape of block.shapes) {
			if (shape.shape === 'mark') put.push(...inkOf(shape, grid.turned, (corners) => corners, (path) => [{ path, run: 0 }]).map((item) => moved(item, by)));
		}
		for (const { text, voice, shift = [0, 0], anchor, angle } of labels) {
			put.push({
				item: 'text', at: [place.at[0] + shift[0] * INK, place.at[1] - shift[1] * INK], text, ...VOICES[voice],
				...(anchor && { anchor }), ...(angle && { angle })
			});
		}
	}
	return out;
}

const around = (boxes: readonly Box[]): Box => ({
	from: [Math.min(...boxes.map((b) => b.from[0])), Math.min(...boxes.map((b) => b.from[1]))], to: [Math.max(...boxes.map((b) => b.to[0])), Math.max(...boxes.map((b) => b.to[1]))]
});
/** An arrow head is wider than its line. */
const padded = ({ from, to }: Box): Box => ({ from: [from[0] - 2.5, from[1] - 2.5], to: [to[0] + 2.5, to[1] + 2.5] });

/** Nothing within this of a window's side: match marks and their words stand there. */
const SIDE = 5;
/** How far apart the places are that are tried. */
const APART = 6;

/** How many rings of places are tried for a single word, and on how many sheets. */
const NEAR = { rings: 8, sheets: 2 } as const;
const FAR = { rings: Infinity, sheets: 12 } as const;

/**
 * The nearest place inside a piece and off every line; where there is none, off every line; else where it was wanted,
 * if it must be written at all.
 */
function nearestFree(
	wanted: Point, size: Box, boxes: readonly Box[], inkOn: (sheet: number) => InkMap, pieces: readonly (readonly Point[])[], taken: readonly Box[],
	near: typeof NEAR | null, must: boolean
): { at: Point; sheet: number } | null {
	const search = near ?? FAR;
	const away = (p: Point): number => Math.hypot(p[0] - wanted[0], p[1] - wanted[1]);
	// Where the block's place may lie so that the block is whole on the sheet, and the nearest of them.
	const spans = boxes.map((box, sheet) => {
		const [low, high]: [Point, Point] = [[box.from[0] + SIDE - size.from[0], box.from[1] + SIDE - size.from[1]], [box.to[0] - SIDE - size.to[0], box.to[1] - SIDE - size.to[1]]];
		const near: Point = [Math.max(low[0], Math.min(high[0], wanted[0])), Math.max(low[1], Math.min(high[1], wanted[1]))];
		return { sheet, low, high, near };
	}).filter(({ low, high }) => high[0] >= low[0] && high[1] >= low[1]).sort((a, b) => away(a.near) - away(b.near));
	const [first] = spans;
	if (!first) throw new Error(`no sheet holds a block of words ${size.to[0] - size.from[0]} mm wide`);
	const inPiece = ({ from, to }: Box): boolean => pieces.length === 0 || pieces.some((corners) => within([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], corners));
	for (const wants of [inPiece, () => true]) {
		for (const { sheet, low, high, near } of spans.slice(0, search.sheets)) {
			const inked = inkOn(sheet);
			const free = (stand: Point): boolean => {
				const here = at(size, stand);
				return !inked(here) && !taken.some((other) => overlap(other, here)) && wants(here);
			};
			for (const ring of ringsAround(near, low, high, search.rings)) {
				const [stand] = ring.filter(free).sort((a, b) => away(a) - away(b));
				if (stand) return { at: stand, sheet };
			}
		}
	}
	return must ? { at: first.near, sheet: first.sheet } : null;
}

/** Places round `near` within a box, a square ring after the other, so that the search ends near where it began. */
function* ringsAround(near: Point, low: Point, high: Point, rings: number): Generator<readonly Point[]> {
	const reach = Math.max(near[0] - low[0], high[0] - near[0], near[1] - low[1], high[1] - near[1]);
	yield [near];
	for (let ring = 1; ring <= rings && ring * APART < reach + APART; ring++) {
		const places: Point[] = [];
		for (let i = -ring; i < ring; i++) for (const [x, y] of [[i, -ring], [ring, i], [-i, ring], [-ring, -i]] as const) {
			const place: Point = [near[0] + x * APART, near[1] + y * APART];
			if (place[0] >= low[0] && place[0] <= high[0] && place[1] >= low[1] && place[1] <= high[1]) places.push(place);
		}
		yield places;
	}
}
