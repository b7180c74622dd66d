// A piece of the pattern at true size, with what the cutter needs to read on it. Pieces cut on a fold are drawn to the fold.
import type { Edge, Outline } from '../drafting/geometry/outline.ts';
import { add, distance, polar, scale, subtract, type Point } from '../drafting/geometry/point.ts';
import type { Draft } from '../drafting/draft.ts';
import type { Notch, Piece } from '../drafting/piece.ts';
import { boxOf, pointOn } from './clip.ts';
import { viewPanel } from './diagrams/panel.ts';
import { num, numUnit } from './diagrams/number.ts';
import { area, arrow, line, mark, stroke, words } from './diagrams/shape.ts';
import type { Drawing, Shape } from './drawing.ts';

export interface PatternOptions {
	readonly unit: 'cm' | 'in';
	/** A class code and a learner's initial, never a name. */
	readonly code: string;
}
/** A piece to print, and what else is cut from the same sheets. */
export interface PatternPiece {
	readonly piece: Piece;
	readonly also: readonly Piece[];
}

const CLOTHS = { shell: 'skirt cloth', lining: 'lining', interfacing: 'interfacing' } as const;
const shapeOf = ({ start, edges }: Outline): string => JSON.stringify([start, edges.map(({ end, centre, turn }) => [end, centre, turn])]);
/** Every shape once: interfacing that matches the band is said on the band, not printed again. */
export function patternPieces(pieces: readonly Piece[]): readonly PatternPiece[] {
	const patterns: { piece: Piece; also: Piece[] }[] = [];
	for (const piece of pieces) {
		const same = patterns.find((other) => shapeOf(other.piece.cut) === shapeOf(piece.cut) && shapeOf(other.piece.stitch) === shapeOf(piece.stitch));
		if (same) same.also.push(piece);
		else patterns.push({ piece, also: [] });
	}
	return patterns;
}

export function pieceTitle({ name, cloth }: Piece): string {
	const title = name.replace(/[-_]/g, ' ');
	if (/^panel/.test(title) && cloth === 'shell') return title === 'panel' ? 'Skirt' : `Skirt ${title}`;
	return title.charAt(0).toUpperCase() + title.slice(1);
}
const cutWords = ({ count, cloth, fold }: Piece): string => `cut ${count} in ${CLOTHS[cloth]}${fold ? ', on the fold' : ''}`;
export const countWords = ({ piece, also }: PatternPiece): string => [piece, ...also].map(cutWords).join('; ');

/** Middle down and half of it where it lies on a fold; a band as it is, along the sheet. */
export function patternDrawing(pattern: PatternPiece, draft: Draft, { unit, code }: PatternOptions): Drawing {
	const { piece } = pattern;
	const folded = piece.fold !== null && Math.abs(piece.fold.from[1]) < 1e-9 && Math.abs(piece.fold.to[1]) < 1e-9;
	const isPanel = piece.cut.edges.some((edge) => edge.centre);
	const turn = (p: Point): Point => (folded || isPanel ? [p[1], 0 - p[0]] : p);
	const shapes: Shape[] = [];
	if (folded || isPanel) {
		const view = viewPanel(piece, folded);
		shapes.push(area(view.cloth, 'paper'));
		for (const { path } of view.stitch) shapes.push(stroke(path, 'stitch'));
		for (const { path } of view.cut) shapes.push(stroke(path, 'cut'));
	} else shapes.push(area(piece.cut, 'paper'), stroke(piece.stitch, 'stitch'), stroke(piece.cut, 'cut'));
	if (folded) shapes.push(...foldLine(turn(piece.fold!.from), turn(piece.fold!.to)));
	const [from, to] = grainShown(piece, folded);
	const [a, b] = [turn(from), turn(to)];
	const middle = scale(add(a, b), 0.5);
	shapes.push(...onLayer('grain', [...arrow(a, b, 'grain', true), words(middle, 'grain', 'label', { shift: [8, -7] })]));
	for (const { name, from, to } of piece.lines ?? []) {
		shapes.push(line(turn(from), turn(to), 'fold'), words(turn(add(scale(from, 0.75), scale(to, 0.25))), name, 'small', { anchor: 'middle' }));
	}
	for (const { from, edge } of edgesOf(piece.stitch)) {
		const inner = pointOn(from, edge, folded ? 0.3 : 0.5);
		const says = edge.name === 'waist' ? 'waist stitch line' : edge.name === 'hem' ? 'hem fold line' : 'stitch line';
		if (!folded || inner[1] > 0) shapes.push(words(turn(inner), says, 'small', { anchor: 'middle' }));
	}
	for (const notch of piece.notches) shapes.push(...notchShapes(notch, piece, folded, turn));

	const box = boxOf(shapes.flatMap((shape) => (shape.shape === 'path' ? [shape.path] : [])));
	// The block of words stands by the fold or the middle; the tiler moves it to a sheet that carries lines.
	const at: Point = isPanel || folded
		? [folded ? 60 : 0, box.from[1] + (box.to[1] - box.from[1]) * 0.45]
		: [box.from[0] + Math.min(120, (box.to[0] - box.from[0]) / 2), (box.from[1] + box.to[1]) / 2];
	const { share, allowances, hem } = draft.skirt;
	const lines = [
		countWords(pattern), `${code} · true size`,
		`allowances are included: seams ${num(allowances.seam, unit)}, waist ${num(allowances.waist, unit)}${isPanel ? `, hem ${num(hem, unit)}` : ''} ${unit}`
	];
	const block: readonly Shape[] = [
		words(at, pieceTitle(piece), 'title', { anchor: 'start', shift: [0, -22] }),
		...lines.map((text, i) => words(at, text, 'small', { anchor: 'start', shift: [0, i * 19] }))
	];
	return {
		alt: `${pieceTitle(piece)} for a skirt of ${share} of a circle, at true size. ${countWords(pattern)}. Waist line ${numUnit(draft.figures.waistRadius, unit)} from the corner.`,
		box, inkMargin: [0, 0, 0, 0], shapes: [...shapes, ...block]
	};
}

/**
 * What the tiler may treat apart: the `grain` may be moved along with its words, since any parallel line will do; the
 * `bracket` at the fold is printed where sheets are, and is no reason for one.
 */
const onLayer = (layer: 'grain' | 'bracket', shapes: readonly Shape[]): readonly Shape[] => shapes.map((shape) => ({ ...shape, layer }));

/** The fold, with arrows that point at it. */
function foldLine(from: Point, to: Point): readonly Shape[] {
	const length = distance(from, to);
	const along = scale(subtract(to, from), 1 / length);
	const inset = Math.min(12, length / 8);
	const at = (d: number, x: number): Point => [from[0] + along[0] * d + x, from[1] + along[1] * d];
	const [a, b] = [length * 0.12, length * 0.88];
	return [
		line(from, to, 'fold'),
		...onLayer('bracket', [line(at(a, inset), at(b, inset), 'measure'), ...arrow(at(a, inset), at(a, 1), 'measure'), ...arrow(at(b, inset), at(b, 1), 'measure')]),
		words(at(length * 0.3, inset + 3), 'place on the fold', 'labelStrong', { anchor: 'middle', angle: Math.PI / 2 })
	];
}

const GRAIN = 120;
/** The grain where it can be seen: on the half that is drawn, by the fold, short enough for one sheet. */
function grainShown({ grain, cut }: Piece, folded: boolean): readonly [Point, Point] {
	const { from, to } = grain;
	const length = Math.min(GRAIN, distance(from, to));
	const way = scale(subtract(to, from), 1 / distance(from, to));
	const middle = scale(add(from, to), 0.5);
	const centred = (at: Point): readonly [Point, Point] => [subtract(at, scale(way, length / 2)), add(at, scale(way, length / 2))];
	if (!folded) return centred(middle);
	// Along the fold it moves aside; across it, it begins a little off the fold.
	const width = boxOf([cut]).to[1];
	if (Math.abs(way[1]) < 1e-6) return centred([middle[0], Math.min(30, width / 2)]);
	const off = 25;
	const at = add(middle, scale(way, (off - middle[1]) / way[1]));
	return [at, add(at, scale(way, way[1] > 0 ? length : -length))];
}

/** An outline's edges, each with the point where it begins. */
const edgesOf = ({ start, edges }: Outline): readonly { from: Point; edge: Edge }[] => edges.map((edge, i) => ({ from: i ? edges[i - 1]!.end : start, edge }));

/** Wedges stand on the cut line and point into the cloth, across from their place on the stitch line. */
function notchShapes(notch: Notch, piece: Piece, folded: boolean, turn: (p: Point) => Point): readonly Shape[] {
	const [sewn, cut] = [piece.stitch, piece.cut].map((outline) => edgesOf(outline).find(({ edge }) => edge.name === notch.edge));
	if (!sewn || !cut) throw new Error(`a notch on ${piece.name} names no edge: ${notch.edge}`);
	const on = pointOn(sewn.from, sewn.edge, notch.at);
	const foot = nearest(on, cut.from, cut.edge);
	if (folded && foot[1] < -1e-6) return [];
	const inwards = distance(on, foot) > 1e-9 ? subtract(on, foot) : inside(sewn.from, sewn.edge, notch.at);
	const [p, q] = [turn(foot), turn(add(foot, inwards))];
	const angle = Math.atan2(q[1] - p[1], q[0] - p[0]);
	return [
		mark(notch.kind === 'double' ? 'doubleNotch' : 'notch', p, angle),
		words(polar(p, distance(on, foot) + 5, angle), notch.copy === undefined ? notch.marks : `${notch.marks}, piece ${notch.copy} only`, 'small', { anchor: 'middle' })
	];
}
/** Left of a counterclockwise edge. */
function inside(from: Point, edge: Edge, part: number): Point {
	const [a, b] = [pointOn(from, edge, Math.max(0, part - 1e-4)), pointOn(from, edge, Math.min(1, part + 1e-4))];
	return [a[1] - b[1], b[0] - a[0]];
}
function nearest(p: Point, from: Point, edge: Edge): Point {
	if (edge.centre) return polar(edge.centre, distance(from, edge.centre), Math.atan2(p[1] - edge.centre[1], p[0] - edge.centre[0]));
	const along = subtract(edge.end, from);
	const part = ((p[0] - from[0]) * along[0] + (p[1] - from[1]) * along[1]) / (along[0] ** 2 + along[1] ** 2);
	return add(from, scale(along, part));
}
