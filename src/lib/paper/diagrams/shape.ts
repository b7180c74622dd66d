// Small words for putting a Drawing together.
import { polar, type Point } from '../../drafting/geometry/point.ts';
import type { Drawing, FillKind, Label, LineKind, Path, Shape, Voice } from '../drawing.ts';

export const linePath = (...points: readonly [Point, ...Point[]]): Path => ({
	start: points[0],
	edges: points.slice(1).map((end) => ({ name: '', end, centre: null, turn: 0 }))
});
/** An arc round `centre` from one angle to another, counterclockwise when `to` is larger. */
export const arcPath = (centre: Point, radius: number, from: number, to: number): Path => ({
	start: polar(centre, radius, from),
	edges: [{ name: '', end: polar(centre, radius, to), centre, turn: to - from }]
});
export const circlePath = (centre: Point, radius: number): Path => arcPath(centre, radius, 0, 2 * Math.PI);

export const stroke = (path: Path, line: LineKind, now = false): Shape => ({ shape: 'path', path, closed: false, line, fill: 'none', now });
/** The same stroke, lying on a tape. */
export const onTape = (shape: Shape): Shape => (shape.shape === 'path' ? { ...shape, onTape: true } : shape);
export const area = (path: Path, fill: FillKind, line: LineKind | null = null): Shape => ({ shape: 'path', path, closed: true, line, fill });
export const line = (from: Point, to: Point, kind: LineKind, now = false): Shape => stroke(linePath(from, to), kind, now);
export const rect = (from: Point, to: Point, fill: FillKind, kind: LineKind | null = null): Shape =>
	area(linePath(from, [to[0], from[1]], to, [from[0], to[1]]), fill, kind);

type More = Partial<Pick<Extract<Label, { shape: 'text' }>, 'shift' | 'anchor' | 'angle' | 'under' | 'rank' | 'clear' | 'or'>>;
export const words = (at: Point, text: string, voice: Voice = 'label', more: More = {}): Label => ({ shape: 'text', at, text, voice, ...more });
type MoreAlong = Partial<Pick<Extract<Label, { shape: 'textAlong' }>, 'off' | 'rank' | 'clear' | 'or'>>;
export const along = (path: Path, text: string, voice: Voice = 'label', more: MoreAlong = {}): Label => ({ shape: 'textAlong', path, text, voice, ...more });
export const mark = (kind: Extract<Shape, { shape: 'mark' }>['mark'], at: Point, angle = 0, shift?: Point): Shape =>
	shift ? { shape: 'mark', mark: kind, at, angle, shift } : { shape: 'mark', mark: kind, at, angle };

/** A line with an arrow head at its end, or at both ends. */
export function arrow(from: Point, to: Point, kind: LineKind = 'grain', both = false): readonly Shape[] {
	const way = Math.atan2(to[1] - from[1], to[0] - from[0]);
	return [line(from, to, kind), mark('arrow', to, way), ...(both ? [mark('arrow', from, way + Math.PI)] : [])];
}
/** A measured stretch, barred at both ends. */
export function measured(from: Point, to: Point): readonly Shape[] {
	const way = Math.atan2(to[1] - from[1], to[0] - from[0]);
	return [line(from, to, 'measure'), mark('bar', from, way), mark('bar', to, way)];
}
/** Words at the end of a thin line that leads to what they name. */
export function leader(to: Point, at: Point, text: string, anchor: 'start' | 'middle' | 'end' = 'start', voice: Voice = 'label'): readonly Shape[] {
	const shift: Point = anchor === 'start' ? [4, 5] : anchor === 'end' ? [-4, 5] : [0, at[1] < to[1] ? 16 : -6];
	return [line(at, to, 'fine'), words(at, text, voice, { anchor, shift })];
}

/** A Drawing on a sheet of its own: `width` by `height` units, each about a pixel on a phone. */
export const sheet = (width: number, height: number, alt: string, shapes: readonly Shape[]): Drawing => ({
	alt,
	box: { from: [0, 0], to: [width, height] },
	inkMargin: [2, 2, 2, 2],
	shapes
});
