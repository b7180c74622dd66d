// A drawing made for a screen, laid on paper at a stated scale: the same lines, words and rulers, in ink alone.
import type { Point } from '../drafting/geometry/point.ts';
import { circlePath } from './diagrams/shape.ts';
import type { Drawing, FillKind, Path, Voice } from './drawing.ts';
import { readPathData, type ReadPath } from './path-read.ts';
import { pointsAlong, within } from './grid.ts';
import { textLength } from './letter.ts';
import { INK } from './pen.ts';
import { layOut, type Screen } from './screen.ts';
import type { Face, Item } from './sheet.ts';

export interface Laid {
	readonly items: readonly Item[];
	readonly width: number;
	readonly height: number;
}

const FACES: Readonly<Record<Voice, Face>> = { title: 'heading', figure: 'heading', label: 'label', labelStrong: 'labelStrong', small: 'label' };
/** Greys that a copier keeps: cloth is told from paper, and no line is lost in it. */
const GREYS: Readonly<Partial<Record<FillKind, number>>> = { rightSide: 0.95, wrongSide: 0.93, lining: 0.97, ink: 0, paper: 1 };

/** Lays a drawing out so that one mm of cloth is `scale` mm on paper; `at` is its upper left corner on the sheet. */
export function drawingItems(drawing: Drawing, scale: number, at: Point): Laid {
	const screen = screenAt(drawing, scale / INK);
	const put = ([x, y]: Point): Point => [at[0] + x * INK, at[1] - y * INK];
	const putPath = (path: Path): Path => ({ start: put(path.start), edges: path.edges.map((e) => ({ ...e, end: put(e.end), centre: e.centre && put(e.centre), turn: 0 - e.turn })) });
	const items = screen.marks.flatMap((mark): readonly Item[] => {
		const paths = (d: string): readonly ReadPath[] => readPathData(d).filter(({ path }) => path.edges.length > 0);
		if (mark.kind === 'path') {
			const fill = GREYS[mark.fill];
			return paths(mark.d).map(({ path, closed }) => ({ item: 'path', path: putPath(path), closed, pen: mark.line, ...(fill !== undefined && { fill }) }));
		}
		if (mark.kind === 'ink') return paths(mark.d).map(({ path, closed }) => ({ item: 'path', path: putPath(path), closed, pen: mark.solid ? null : 'grain', ...(mark.solid && { fill: 0 }) }));
		if (mark.kind === 'dots') return paths(mark.d).flatMap(({ path }) => scaleDots(path, mark).map((p): Item => ({ item: 'path', path: circlePath(put(p), 0.25), closed: true, pen: null, fill: 0.45 })));
		const text = mark.runs.map((run) => (run.as === 'fraction' ? ` ${run.text}` : run.text)).join('').replace(/ +/g, ' ').trim();
		const size = (mark.size * 72) / 96;
		if (mark.kind === 'text') {
			return [{ item: 'text', at: put(mark.at), text, face: FACES[mark.voice], size, anchor: mark.anchor, ...(mark.turn && { angle: (-mark.turn * Math.PI) / 180 }) }];
		}
		const [along] = paths(mark.d);
		return along ? lettersAlong(putPath(along.path), mark.start * INK, text, FACES[mark.voice], size) : [];
	});
	return { items, width: screen.width * INK, height: screen.height * INK };
}

/** The width in px at which the drawing comes out at so many px to the mm: the layout chooses its scale by the width. */
function screenAt(drawing: Drawing, scale: number): Screen {
	const [, right, , left] = drawing.inkMargin;
	const least = (drawing.box.to[0] - drawing.box.from[0]) * scale + left + right;
	let [low, high] = [least, least];
	let screen = layOut(drawing, low);
	if (screen.scale >= scale - 1e-9) return screen;
	// A tall drawing is held to a screen's height: a wider screen lets it grow.
	while (screen.scale < scale) screen = layOut(drawing, (high *= 1.5));
	for (let i = 0; i < 16; i++) {
		const middle = (low + high) / 2;
		if (layOut(drawing, middle).scale < scale) low = middle;
		else high = middle;
	}
	return layOut(drawing, high);
}

/** The grid of scale dots that lie inside a closed path, px. */
function scaleDots(path: Path, { step, x, y }: { readonly step: number; readonly x: number; readonly y: number }): readonly Point[] {
	const corners = pointsAlong(path, 3);
	const [right, low] = [Math.max(...corners.map((p) => p[0])), Math.max(...corners.map((p) => p[1]))];
	const dots: Point[] = [];
	for (let px = x; px < right; px += step) for (let py = y; py < low; py += step) if (within([px, py], corners)) dots.push([px, py]);
	return dots;
}

/** Words along a path, each set straight where it stands, so that a reader of the file still finds whole words. */
function lettersAlong(path: Path, start: number, text: string, face: Face, size: number): readonly Item[] {
	const stops = pointsAlong(path, 0.5);
	const gap = textLength(' ', face, size);
	let from = start;
	return text.split(' ').map((word): Item => {
		const length = textLength(word, face, size);
		const [a, b] = [stopAt(stops, from), stopAt(stops, from + length)];
		from += length + gap;
		return { item: 'text', at: a, text: word, face, size, angle: Math.atan2(b[1] - a[1], b[0] - a[0]) };
	});
}
function stopAt(stops: readonly Point[], distance: number): Point {
	let left = distance;
	for (let i = 1; i < stops.length; i++) {
		const [p, q] = [stops[i - 1]!, stops[i]!];
		const step = Math.hypot(q[0] - p[0], q[1] - p[1]);
		if (left <= step || i === stops.length - 1) return [p[0] + ((q[0] - p[0]) * left) / step, p[1] + ((q[1] - p[1]) * left) / step];
		left -= step;
	}
	throw new Error('words along a path of no length');
}
