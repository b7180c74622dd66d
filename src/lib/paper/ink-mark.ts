// Marks of fixed size, as ink on paper: wedges and dots filled, arrow heads and bars drawn.
import { polar, type Point } from '../drafting/geometry/point.ts';
import type { Stretch } from './clip.ts';
import { linePath } from './diagrams/shape.ts';
import type { Path, Shape } from './drawing.ts';
import { turnPoint } from './grid.ts';
import { INK } from './pen.ts';
import type { Item } from './sheet.ts';

type MarkShape = Extract<Shape, { shape: 'mark' }>;

/** Each pointing along +x from its place, ink units, y up. A wedge's base lies on its place and its tip points. */
const FORMS: Readonly<Record<MarkShape['mark'], { readonly runs: readonly (readonly Point[])[]; readonly solid: boolean }>> = {
	notch: { runs: [[[0, 7], [0, -7], [10, 0]]], solid: true },
	doubleNotch: { runs: [[[0, 13], [0, 1], [9, 7]], [[0, -1], [0, -13], [9, -7]]], solid: true },
	dot: { runs: [Array.from({ length: 16 }, (_, i) => polar([0, 0], 3.2, (i * Math.PI) / 8))], solid: true },
	arrow: { runs: [[[-8, 5], [0, 0], [-8, -5]]], solid: false },
	bar: { runs: [[[0, 6], [0, -6]]], solid: false },
	cross: { runs: [[[-5, 5], [5, -5]], [[-5, -5], [5, 5]]], solid: false },
	pin: { runs: [[[0, 0], [-32, 0]]], solid: false }
};

/** A mark at its place in a drawing at true size, cut to a box by the two functions given. */
export function inkOf(mark: MarkShape, turned: boolean, cutArea: (corners: readonly Point[]) => readonly Point[], cutPath: (path: Path) => readonly Stretch[]): readonly Item[] {
	const [x, y] = turnPoint(mark.at, turned);
	const angle = (mark.angle ?? 0) + (turned ? Math.PI / 2 : 0);
	const [c, s] = [Math.cos(angle), Math.sin(angle)];
	const at = ([px, py]: Point): Point => [x + (px * c - py * s) * INK, y + (px * s + py * c) * INK];
	const { runs, solid } = FORMS[mark.mark];
	return runs.flatMap((run): readonly Item[] => {
		const corners = run.map(at) as [Point, ...Point[]];
		if (!solid) return cutPath(linePath(...corners)).map(({ path }) => ({ item: 'path', path, closed: false, pen: 'grain' }));
		const [first, ...rest] = cutArea(corners);
		return first && rest.length > 1 ? [{ item: 'path', path: linePath(first, ...rest), closed: true, pen: null, fill: 0 }] : [];
	});
}
