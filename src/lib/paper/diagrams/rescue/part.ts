// What the rescue drawings share. Sheet units, y up; lines stand in their order, not to scale, and carry her numbers.
import type { Point } from '../../../drafting/geometry/point.ts';
import { polar } from '../../../drafting/geometry/point.ts';
import type { FillKind, LineKind, Path, Shape } from '../../drawing.ts';
import { WIDE } from '../part.ts';
import { along, arcPath, area, line, linePath, stroke, words } from '../shape.ts';

/** A line across the sheet with its words under it (or over it). */
export interface Row {
	readonly kind: LineKind;
	readonly text: string;
	/** The line that the hand goes to next. */
	readonly now?: boolean;
	readonly over?: boolean;
}

const corner: Point = [WIDE / 2, 720];
/** Half of the cloth's width on the sheet. */
const side = 150;
/** How far a waist's first line lies from the corner, and each of the others from the one before. */
const [first, step] = [500, 46];

const reach = (radius: number): number => Math.asin(side / radius);
const arc = (radius: number): Path => arcPath(corner, radius, -Math.PI / 2 - reach(radius), -Math.PI / 2 + reach(radius));
/** The height of a waist's line at the sheet's middle. */
export const rowY = (row: number): number => corner[1] - first - step * row;

/** Cloth by the waist: its lines are hollow, the corner lies above. The first row is the cut edge. */
export function waistRows(rows: readonly Row[], bottom: number, fill: FillKind = 'wrongSide'): readonly Shape[] {
	const half = reach(first);
	const [start, end] = [polar(corner, first, -Math.PI / 2 - half), polar(corner, first, -Math.PI / 2 + half)];
	const cloth: Path = { start, edges: [
		{ name: '', end, centre: corner, turn: 2 * half },
		{ name: '', end: [end[0], bottom], centre: null, turn: 0 }, { name: '', end: [start[0], bottom], centre: null, turn: 0 }
	] };
	return [
		area(cloth, fill),
		...rows.flatMap(({ kind, text, now = false, over = false }, i) => [
			stroke(arc(first + step * i), kind, now),
			along(arc(first + step * i), text, now ? 'labelStrong' : 'label', { off: over ? 8 : -20 })
		])
	];
}

/** Cloth by the hem: straight lines, the cloth above the lowest. From the top down. */
export function hemRows(rows: readonly (Row & { readonly y: number })[], top: number): readonly Shape[] {
	const lowest = Math.min(...rows.map(({ y }) => y));
	return [
		area(linePath([14, lowest], [326, lowest], [326, top], [14, top]), 'wrongSide'),
		...rows.flatMap(({ kind, text, now = false, y }) => [line([14, y], [326, y], kind, now), words([24, y + 6], text, now ? 'labelStrong' : 'label')])
	];
}

/** A nick: a small open wedge from an edge at `at`, its tip `deep` further; down into a waist, up into a hem. */
export const nick = (at: Point, deep: number): Shape => stroke(linePath([at[0] - 7, at[1]], [at[0], at[1] + deep], [at[0] + 7, at[1]]), 'cut');

/** The number to use, and what it is, low on the sheet. */
export const number = (y: number, text: string, under: string): Shape => words([WIDE / 2, y], text, 'figure', { anchor: 'middle', under });
