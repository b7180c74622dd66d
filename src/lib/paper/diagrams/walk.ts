// One seam, walked: the pieces it joins, each edge that is sewn marked with tape and with its length.
import { edgeLength, pointAlong, stretches, tangent } from '../../drafting/geometry/measure.ts';
import type { Outline } from '../../drafting/geometry/outline.ts';
import type { Point } from '../../drafting/geometry/point.ts';
import type { Piece } from '../../drafting/piece.ts';
import type { WalkedEdge, WalkRow } from '../../drafting/walk.ts';
import type { Drawing, FillKind, Path, Shape } from '../drawing.ts';
import { textWidth } from '../voice.ts';
import { num, numUnit, type Unit } from './number.ts';
import { extent } from './panel.ts';
import { area, mark, stroke, words } from './shape.ts';

/** What a phone leaves, px: across, and down before a drawing is made smaller. */
const across = 350;
const down = 440;
/** Two lines of words under a block, and the room between blocks, px. */
const caption = 64;
const gap = 16;

interface Block {
	readonly pieces: readonly { readonly piece: Piece; readonly edges: readonly WalkedEdge[] }[];
	readonly title: string;
	readonly under: string;
}

export function walkDrawing(pieces: readonly Piece[], row: WalkRow, { unit }: { readonly unit: Unit }): Drawing {
	const blocks = blocksOf(pieces, row, unit);
	const laid = blocks.map((block) => lay(block));
	const beside = fit(laid, blocks, true);
	const under = fit(laid, blocks, false);
	const sideways = beside.scale > under.scale;
	const { scale } = sideways ? beside : under;
	// A strip stands above the piece that it is sewn to, its lower edge towards it.
	const order = !sideways && blocks.length === 2 && laid[0]!.turned && !laid[1]!.turned ? [1, 0] : blocks.map((_, i) => i);
	const px = 1 / scale;
	const shapes: Shape[] = [];
	const cells = laid.map(({ width }, i) => Math.max(width, room(blocks[i]!) * px));
	const whole = sideways ? cells.reduce((sum, cell) => sum + cell, gap * px * (cells.length - 1)) : Math.max(...cells);
	const tallest = Math.max(...laid.map(({ height }) => height));
	let [x, y] = [0, 0];
	for (const i of order) {
		const { width, height } = laid[i]!;
		const cell = sideways ? cells[i]! : whole;
		shapes.push(...laid[i]!.at([x + (cell - width) / 2, y]));
		const foot: Point = [x + cell / 2, y - (sideways ? tallest : height)];
		shapes.push(words(foot, blocks[i]!.title, 'labelStrong', { anchor: 'middle', shift: [0, 26], under: blocks[i]!.under }));
		if (sideways) x += cell + gap * px;
		else y -= height + (caption + gap) * px;
	}
	const foot = sideways ? -tallest : y + gap * px + caption * px;
	return {
		alt: `${capital(row.name)}. ${blocks.map(({ title, under }) => `${title}: ${under}`).join('; ')}. The edges that are sewn together are marked.`,
		box: { from: [0, foot], to: [whole, 0] }, inkMargin: [12, 4, caption, 4], shapes
	};
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A block a side; one block where an edge is sewn to another of the same piece. */
function blocksOf(pieces: readonly Piece[], { a, b, lengthA, lengthB }: WalkRow, unit: Unit): readonly Block[] {
	const block = (edges: readonly WalkedEdge[], under: string): Block => {
		const names = [...new Set(edges.map(({ piece }) => piece))];
		const shown = names.map((name) => ({ piece: pieces.find((piece) => piece.name === name)!, edges: edges.filter(({ piece }) => piece === name) }));
		return { pieces: shown.map(({ piece, edges }) => ({ piece, edges: edges.filter(({ copy }) => copy === edges[0]!.copy) })), title: titleOf(shown), under };
	};
	const lone = new Set([...a, ...b].map(({ piece, copy }) => `${copy} ${piece}`)).size === 1;
	if (lone) return [block([...a, ...b], `${num(lengthA, unit)} and ${numUnit(lengthB, unit)}`)];
	return [block(a, numUnit(lengthA, unit)), block(b, numUnit(lengthB, unit))];
}

/** "Band", "Panel 2", "Panel, all 4", "Front and back", "5 pieces". */
function titleOf(shown: Block['pieces']): string {
	if (shown.length > 2) return `${shown.length} pieces`;
	const titles = shown.map(({ piece, edges }) => {
		const name = piece.name === 'panel' && piece.count === 1 ? 'skirt' : piece.name;
		const copies = new Set(edges.map(({ copy }) => copy)).size;
		if (piece.count === 1) return name;
		return copies > 1 ? `${name}, ${copies === piece.count ? 'all ' : ''}${copies}` : `${name} ${edges[0]!.copy}`;
	});
	return capital(titles.join(' and '));
}

/** px that a block's words need, on the narrowest screen as well, whose drawing is smaller by 288/358. */
const room = ({ title, under }: Block): number => (1.25 * Math.max(textWidth(title, 'labelStrong', across), textWidth(under, 'label', across))) + 8;

interface Laid {
	readonly width: number;
	readonly height: number;
	/** Whether its pieces are turned so that their waist lies up. */
	readonly turned: boolean;
	/** Its shapes, with its upper left corner at a place. */
	readonly at: (corner: Point) => readonly Shape[];
}

/** The largest scale, px to the mm, at which the blocks fit beside each other or under each other; 0 where their words don't. */
function fit(laid: readonly Laid[], blocks: readonly Block[], sideways: boolean): { readonly scale: number } {
	const fits = (scale: number): boolean => {
		const widths = laid.map(({ width }, i) => Math.max(width * scale, room(blocks[i]!)));
		const heights = laid.map(({ height }) => height * scale + caption);
		return sideways
			? widths.reduce((sum, width) => sum + width, gap * (widths.length - 1)) <= across && Math.max(...heights) <= down
			: Math.max(...laid.map(({ width }) => width * scale)) <= across && heights.reduce((sum, height) => sum + height, gap * (heights.length - 1)) <= down;
	};
	if (sideways && !fits(1e-9)) return { scale: 0 };
	let [low, high] = [1e-9, 10];
	for (let i = 0; i < 40; i++) {
		const middle = (low + high) / 2;
		if (fits(middle)) low = middle;
		else high = middle;
	}
	return { scale: low };
}

/** Sectors run along +x from their corner (piece.ts): turned, so that the waist lies up. Strips lie as they are. */
const isSector = ({ name }: Piece): boolean => /^(panel|front|back|lining)/.test(name);
const turnBy = (piece: Piece) => ([x, y]: Point): Point => (isSector(piece) ? [y, 0 - x] : [x, y]);

/** The pieces of a block in a row. */
function lay({ pieces }: Block): Laid {
	const boxes = pieces.map(({ piece }) => extent(moved(piece.cut, turnBy(piece))));
	const widths = boxes.map(({ from, to }) => to[0] - from[0]);
	const height = Math.max(...boxes.map(({ from, to }) => to[1] - from[1]));
	const between = 0.08 * Math.max(...widths);
	return {
		width: widths.reduce((sum, width) => sum + width, between * (widths.length - 1)), height, turned: pieces.some(({ piece }) => isSector(piece)),
		at: ([left, top]) => {
			let x = left;
			return pieces.flatMap(({ piece, edges }, i) => {
				const turn = turnBy(piece);
				const { from, to } = boxes[i]!;
				const [dx, dy] = [x - from[0], top - to[1]];
				x += widths[i]! + between;
				return pieceShapes(piece, edges, (p) => {
					const [px, py] = turn(p);
					return [px + dx, py + dy];
				}, isSector(piece) ? -Math.PI / 2 : 0);
			});
		}
	};
}

const moved = (path: Path, put: (p: Point) => Point): Path => ({
	start: put(path.start), edges: path.edges.map((edge) => ({ ...edge, end: put(edge.end), centre: edge.centre && put(edge.centre) }))
});

const fills: Readonly<Record<Piece['cloth'], FillKind>> = { shell: 'wrongSide', lining: 'lining', interfacing: 'interfacing' };

function pieceShapes(piece: Piece, edges: readonly WalkedEdge[], put: (p: Point) => Point, turn: number): readonly Shape[] {
	const shapes: Shape[] = [area(moved(piece.cut, put), fills[piece.cloth], 'edge'), { shape: 'path', path: moved(piece.stitch, put), closed: true, line: 'stitch', fill: 'none' }];
	for (const { edge, from, to } of edges) shapes.push(stroke(moved(partOf(piece.stitch, edge, Math.min(from, to), Math.max(from, to)), put), 'cut', true));
	for (const { edge, from, to, copy } of edges) {
		for (const notch of piece.notches) {
			if (notch.edge !== edge || (notch.copy ?? copy) !== copy || notch.at < Math.min(from, to) - 1e-9 || notch.at > Math.max(from, to) + 1e-9) continue;
			const { at, heading } = placeOn(piece.stitch, edge, notch.at);
			// Outlines run counterclockwise: the cloth lies to the left.
			shapes.push(mark(notch.kind === 'double' ? 'doubleNotch' : 'notch', put(at), heading + Math.PI / 2 + turn));
		}
	}
	return shapes;
}

/** `from`…`to`, 0…1 along the edge of this name, which may be a run of several arcs. */
export function partOf(outline: Outline, name: string, from: number, to: number): Path {
	const run = stretches(outline).filter(({ edge }) => edge.name === name);
	const whole = run.reduce((sum, stretch) => sum + edgeLength(stretch), 0);
	let gone = 0;
	const parts = run.flatMap((stretch) => {
		const length = edgeLength(stretch);
		const [low, high] = [Math.max(0, (from * whole - gone) / length), Math.min(1, (to * whole - gone) / length)];
		gone += length;
		if (!(high > low)) return [];
		const { edge } = stretch;
		return [{ start: pointAlong(stretch, low), edge: { ...edge, end: high === 1 ? edge.end : pointAlong(stretch, high), turn: edge.turn * (high - low) } }];
	});
	return { start: parts[0]?.start ?? run[0]!.from, edges: parts.map(({ edge }) => edge) };
}

function placeOn(outline: Outline, name: string, at: number): { readonly at: Point; readonly heading: number } {
	const run = stretches(outline).filter(({ edge }) => edge.name === name);
	let left = at * run.reduce((sum, stretch) => sum + edgeLength(stretch), 0);
	for (const [i, stretch] of run.entries()) {
		const length = edgeLength(stretch);
		if (left > length && i < run.length - 1) {
			left -= length;
			continue;
		}
		const part = Math.min(1, left / length);
		const [x, y] = tangent(stretch, part);
		return { at: pointAlong(stretch, part), heading: Math.atan2(y, x) };
	}
	throw new Error(`no edge ${name}`);
}
