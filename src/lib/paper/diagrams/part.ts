// Things that appear in many construction drawings, drawn once. Sheet units, y up, each about a pixel on a phone.
import { polar, type Point } from '../../drafting/geometry/point.ts';
import type { LineKind, Path, Shape } from '../drawing.ts';
import type { Unit } from './number.ts';
import { arcPath, area, circlePath, line, linePath, mark, rect, stroke, words } from './shape.ts';

/** How wide the construction drawings' sheets are. */
export const WIDE = 340;

/** A neatened edge: zigzag stitches over a cut edge. */
export function zigzag(from: Point, to: Point, reach = 4, step = 7): Shape {
	return stroke(comb(from, to, step, (i) => (i % 2 ? reach : -reach)), 'edge');
}
/** A zip's teeth, along the line between them. */
export function teeth(from: Point, to: Point, reach = 5): Shape {
	const stops: Point[] = [];
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
	// One unbroken line, across and along by turns.
	for (let i = 0; Math.floor(i / 2) * 4 < length; i++) {
		const [t, side] = [Math.floor(i / 2) * 4, i % 4 === 1 || i % 4 === 2 ? reach : -reach];
		stops.push([from[0] + ux * t - uy * side, from[1] + uy * t + ux * side]);
	}
	return stroke(linePath(...(stops as [Point, ...Point[]])), 'edge');
}
function comb(from: Point, to: Point, step: number, aside: (i: number) => number): Path {
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	const count = Math.max(1, Math.round(length / step));
	const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
	const stops: Point[] = [];
	for (let i = 0; i <= count; i++) {
		const t = (length * i) / count;
		stops.push([from[0] + ux * t - uy * aside(i), from[1] + uy * t + ux * aside(i)]);
	}
	return linePath(...(stops as [Point, ...Point[]]));
}

/** Cloth seen from its edge: a band of even thickness along a run of points. */
export function layer(run: readonly Point[], fill: 'rightSide' | 'wrongSide' | 'lining' | 'interfacing' | 'tape' = 'rightSide', thick = 7): Shape {
	// A fold may begin where the run before it ends: the point is taken once.
	const points = run.filter((p, i) => i === 0 || Math.hypot(p[0] - run[i - 1]![0], p[1] - run[i - 1]![1]) > 0.5);
	const sides: [Point[], Point[]] = [[], []];
	for (const [i, p] of points.entries()) {
		const [before, after] = [points[i - 1] ?? p, points[i + 1] ?? p];
		const a1 = i > 0 ? Math.atan2(p[1] - before[1], p[0] - before[0]) : Math.atan2(after[1] - p[1], after[0] - p[0]);
		const a2 = i < points.length - 1 ? Math.atan2(after[1] - p[1], after[0] - p[0]) : a1;
		let bend = a2 - a1;
		while (bend > Math.PI) bend -= 2 * Math.PI;
		while (bend < -Math.PI) bend += 2 * Math.PI;
		// A corner's band is wider along its bisector by 1/cos of half the bend.
		const reach = thick / 2 / Math.max(0.4, Math.cos(bend / 2));
		sides[0].push(polar(p, reach, a1 + bend / 2 + Math.PI / 2));
		sides[1].unshift(polar(p, reach, a1 + bend / 2 - Math.PI / 2));
	}
	const ring = [...sides[0], ...sides[1]] as [Point, ...Point[]];
	return area(linePath(...ring), fill, 'edge');
}
/** Points of a fold: half a turn round `centre`, from one angle to another. */
export const bend = (centre: Point, radius: number, from: number, to: number): readonly Point[] =>
	Array.from({ length: 9 }, (_, i) => polar(centre, radius, from + ((to - from) * i) / 8));

/** An iron from above, its tip at `tip`, moving towards `way`. */
export function iron(tip: Point, way: number, size = 62): readonly Shape[] {
	const spot = (part: number, out: number): Point => polar(polar(tip, -size * part, way), out, way + Math.PI / 2);
	const side = [[0.04, 6], [0.12, 11], [0.25, 17], [0.42, 21], [0.6, 23], [0.85, 23], [0.96, 20], [1, 14]] as const;
	const sole = [tip, ...side.map(([part, out]) => spot(part, out)), ...[...side].reverse().map(([part, out]) => spot(part, -out))] as [Point, ...Point[]];
	const grip = [spot(0.36, 0), spot(0.46, 7), spot(0.9, 7), spot(0.9, -7), spot(0.46, -7)] as [Point, ...Point[]];
	return [area(linePath(...sole), 'paper', 'edge'), area(linePath(...grip), 'ink', null)];
}

/** A round glass over a detail at `at`, joined to its large view at `centre`; what is inside is drawn over it. */
export function lens(at: Point, centre: Point, radius: number, inside: readonly Shape[], fill: 'wrongSide' | 'rightSide' | 'paper' | 'lining' = 'paper'): readonly Shape[] {
	const way = Math.atan2(centre[1] - at[1], centre[0] - at[0]);
	return [
		stroke(circlePath(at, 15), 'edge'),
		line(polar(at, 15, way), polar(centre, -radius, way), 'fine'),
		area(circlePath(centre, radius), fill, null), ...inside, stroke(circlePath(centre, radius), 'edge')
	];
}

/** A zip lying up the sheet: two tapes, teeth between them, a stop at each end. */
export function zip(x: number, top: number, bottom: number, tapes: 'tape' | 'paper' = 'tape'): readonly Shape[] {
	return [
		rect([x - 17, bottom - 12], [x + 17, top + 8], tapes, 'edge'),
		rect([x - 6, bottom - 12], [x + 6, top + 8], 'paper'),
		teeth([x, top], [x, bottom], 4), line([x - 7, bottom - 3], [x + 7, bottom - 3], 'cut'), line([x - 7, top + 2], [x + 7, top + 2], 'cut')
	];
}

/** A tape measure along a path; `per` is what it reads for each unit of the sheet. */
export const tape = (along: Path, unit: Unit, marks: readonly { at: number; text: string }[], per = 1, starts = 0, off = 0): Shape => ({
	shape: 'ruler', along, starts, unit, body: 'tape', per, off, marks: marks.map((m) => ({ ...m, voice: 'labelStrong' as const }))
});

/** A broken end: the cloth goes on beyond the sheet. */
export const goesOn = (from: Point, to: Point): Shape => stroke(comb(from, to, 12, (i) => (i % 2 ? 2 : -2)), 'fine');

/** A pin lying across a seam at `at`, its head towards `way`. */
export const pin = (at: Point, way: number): Shape => mark('pin', polar(at, -10, way), way + Math.PI);

/** A run of stitches with its name beside it. */
export const named = (from: Point, to: Point, kind: LineKind, text: string, at: Point, now = false): readonly Shape[] => [line(from, to, kind, now), words(at, text)];

/** A way to go: a curved arrow round `centre`. */
export function swing(centre: Point, radius: number, from: number, to: number): readonly Shape[] {
	return [stroke(arcPath(centre, radius, from, to), 'grain'), mark('arrow', polar(centre, radius, to), to + (to > from ? Math.PI / 2 : -Math.PI / 2))];
}
