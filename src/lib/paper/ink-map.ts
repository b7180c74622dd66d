// Where on a sheet there is ink of lines: asked of many boxes, so it is counted once for all (a summed-area table).
import type { Point } from '../drafting/geometry/point.ts';
import type { Box } from './clip.ts';

/** Is there ink in a box? It may say so of ink up to a square beside it. */
export type InkMap = (box: Box) => boolean;

/** Squares of a mm, or larger ones on a large sheet. */
export function inkMap(ink: readonly Point[], { from, to }: Box): InkMap {
	const [wide, high] = [to[0] - from[0], to[1] - from[1]];
	const side = Math.max(1, Math.sqrt((wide * high) / 1e6));
	const [columns, rows] = [Math.ceil(wide / side) + 1, Math.ceil(high / side) + 1];
	const sums = new Uint32Array((columns + 1) * (rows + 1));
	const at = (column: number, row: number): number => row * (columns + 1) + column;
	const square = (axis: 0 | 1, p: number, most: number): number => Math.max(0, Math.min(most - 1, Math.floor((p - from[axis]) / side)));
	for (const [x, y] of ink) {
		if (x >= from[0] && x <= to[0] && y >= from[1] && y <= to[1]) sums[at(square(0, x, columns) + 1, square(1, y, rows) + 1)]!++;
	}
	for (let row = 1; row <= rows; row++) for (let column = 1; column <= columns; column++) {
		sums[at(column, row)]! += sums[at(column - 1, row)]! + sums[at(column, row - 1)]! - sums[at(column - 1, row - 1)]!;
	}
	return (box) => {
		const [left, right] = [square(0, box.from[0], columns), square(0, box.to[0], columns) + 1];
		const [low, top] = [square(1, box.from[1], rows), square(1, box.to[1], rows) + 1];
		return sums[at(right, top)]! - sums[at(left, top)]! - sums[at(right, low)]! + sums[at(left, low)]! > 0;
	};
}
