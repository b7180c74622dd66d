// The lines on a pattern piece that are neither cut nor sewn: its fold, its grain, where it is folded.
import { add, distance, scale, subtract, type Point } from '../drafting/geometry/point.ts';
import type { Piece } from '../drafting/piece.ts';
import { boxOf } from './clip.ts';
import { arrow, line, words } from './diagrams/shape.ts';
import type { Shape } from './drawing.ts';

/**
 * `grain` may be moved along with its words, since any parallel line will do; the `bracket` at the fold is printed where
 * sheets are, and is no reason for one. `mirror`, `inner` and `hole` tell a writer what a line is for.
 */
export type PatternLayer = 'grain' | 'bracket' | 'mirror' | 'inner' | 'hole';
export const onLayer = (layer: PatternLayer, shapes: readonly Shape[]): readonly Shape[] => shapes.map((shape) => ({ ...shape, layer }));

type Turn = (p: Point) => Point;

/** Where a half piece lies on the fold: a ring on both sides of its hole. */
export function foldsOf({ fold, hole }: Piece): readonly (readonly [Point, Point])[] {
	if (!fold) return [];
	return [[fold.from, fold.to], ...(hole ? [[scale(fold.from, -1), scale(fold.to, -1)] as const] : [])];
}

/** The fold, with arrows that point at it. */
export function foldLine(from: Point, to: Point): readonly Shape[] {
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

/** On a whole piece the fold is only where its halves mirror each other. */
export const mirrorLines = (piece: Piece, turn: Turn): readonly Shape[] => onLayer('mirror', foldsOf(piece).map(([from, to]) => line(turn(from), turn(to), 'fold')));

const GRAIN = 120;
/** The grain where it can be seen: on the half that is drawn, by the fold, short enough for one sheet. */
export function grainShown({ grain, cut, hole }: Piece, folded: boolean): readonly [Point, Point] {
	const { from, to } = grain;
	const length = Math.min(GRAIN, distance(from, to));
	const way = scale(subtract(to, from), 1 / distance(from, to));
	const middle = scale(add(from, to), 0.5);
	const centred = (at: Point): readonly [Point, Point] => [subtract(at, scale(way, length / 2)), add(at, scale(way, length / 2))];
	// A ring's grain lies beside its hole, on the half that is drawn.
	if (!folded || hole) return centred(middle);
	// Along the fold it moves aside; across it, it begins a little off the fold.
	const width = boxOf([cut]).to[1];
	if (Math.abs(way[1]) < 1e-6) return centred([middle[0], Math.min(30, width / 2)]);
	const off = 25;
	const at = add(middle, scale(way, (off - middle[1]) / way[1]));
	return [at, add(at, scale(way, way[1] > 0 ? length : -length))];
}

export function grainLine(piece: Piece, folded: boolean, turn: Turn): readonly Shape[] {
	const [from, to] = grainShown(piece, folded);
	const [a, b] = [turn(from), turn(to)];
	return onLayer('grain', [...arrow(a, b, 'grain', true), words(scale(add(a, b), 0.5), 'grain', 'label', { shift: [8, -7] })]);
}

/** Lines to fold along or to sew to; on a half piece only what lies on it. */
export function innerLines({ lines = [] }: Piece, folded: boolean, turn: Turn): readonly Shape[] {
	return lines.flatMap(({ name, from, to }): readonly Shape[] => {
		const [low, high] = from[1] <= to[1] ? [from, to] : [to, from];
		if (folded && high[1] <= 1e-6) return [];
		const met: Point = !folded || low[1] >= 0 ? low : add(low, scale(subtract(high, low), -low[1] / (high[1] - low[1])));
		return onLayer('inner', [line(turn(met), turn(high), 'fold'), words(turn(add(scale(met, 0.75), scale(high, 0.25))), name, 'small', { anchor: 'middle' })]);
	});
}
