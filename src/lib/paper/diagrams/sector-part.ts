// What the sector diagrams share: edges told by their place, zip notches, dots, and the spoken text.
import { polar, type Point } from '../../drafting/geometry/point.ts';
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing, Label, Path, Shape } from '../drawing.ts';
import type { PanelView } from './panel.ts';
import { textWidth } from '../voice.ts';
import { num, type Unit } from './number.ts';
import { along, linePath, mark, stroke, words } from './shape.ts';

/** Angles on the sheet: straight down from the corner. */
export const DOWN = -Math.PI / 2;

/** Edges by what they are: the arc nearest the corner is the waist, the farthest the hem, the rest are seams. */
export function sorted(lines: PanelView['cut']): { waist: readonly Path[]; hem: readonly Path[]; seams: readonly Path[] } {
	const radius = (path: Path): number => {
		const centre = path.edges[0]?.centre;
		return centre ? Math.hypot(path.start[0] - centre[0], path.start[1] - centre[1]) : 0;
	};
	const radii = lines.map(({ path }) => radius(path)).filter((r) => r > 0);
	const [least, most] = [Math.min(...radii), Math.max(...radii)];
	return {
		waist: lines.filter(({ path }) => radius(path) > 0 && radius(path) < least + 1e-6).map((l) => l.path),
		hem: lines.filter(({ path }) => radius(path) > most - 1e-6).map((l) => l.path),
		seams: lines.filter(({ path }) => radius(path) === 0).map((l) => l.path)
	};
}

/** The panel's lines; `now` lies under the cut line that the hand goes to next. */
export function panelLines(view: PanelView, now: 'waist' | 'hem' | 'seam' | 'none' | 'fold'): readonly Shape[] {
	const [cut, stitch] = [sorted(view.cut), sorted(view.stitch)];
	const shapes: Shape[] = [];
	for (const kind of ['seams', 'hem', 'waist'] as const) {
		for (const path of stitch[kind]) shapes.push(stroke(path, 'stitch'));
		for (const path of cut[kind]) shapes.push(stroke(path, 'cut', kind === now || (kind === 'seams' && now === 'seam')));
	}
	return shapes;
}

/** The seam with the zip: on the sheet's right (1) or left (−1). Half a panel shows its right. */
export function zipSide(view: PanelView): 1 | -1 {
	if (view.half) return 1;
	let [from, side]: [Point, 1 | -1] = [view.piece.stitch.start, -1];
	for (const edge of view.piece.stitch.edges) {
		// A seam lies on the side of the middle line that its own middle lies on.
		if (from[1] + edge.end[1] > 0 && view.piece.notches.some((n) => n.edge === edge.name && n.marks.startsWith('zip'))) side = 1;
		from = edge.end;
	}
	return side;
}

/** The wedge at the zip's end, across the cut line of its seam and pointing into the cloth. */
export function zipNotch({ figures, skirt }: Draft, view: PanelView, zipEnd: number, x = 0): Shape {
	const seam = skirt.allowances.seam;
	const side = zipSide(view);
	const way = DOWN + side * view.halfAngle;
	const q = figures.waistRadius + zipEnd;
	const [fx, fy] = polar([x, 0], q, way);
	const at: Point = [fx - side * seam * Math.sin(way), fy + side * seam * Math.cos(way)];
	return mark('notch', at, way - (side * Math.PI) / 2);
}

/** A label outside the seam with the zip, its middle at `from` mm from the corner. */
export function besideSeam(view: PanelView, seam: number, from: number, room: number, text: string, more: Parameters<typeof along>[3], x = 0): Label {
	const side = zipSide(view);
	const way = DOWN + side * view.halfAngle;
	const aside = (r: number): Point => {
		const [px, py] = polar([x, 0], r, way);
		return [px - side * seam * Math.sin(way), py + side * seam * Math.cos(way)];
	};
	// It reads from left to right, so outwards on the right and inwards on the left.
	return along(linePath(aside(from - side * room), aside(from + side * room)), text, 'label', { off: 8, ...more });
}

/** 5 cm or 2 in dots, wider apart where they would crowd. `px` is about a pixel in mm. */
export function dotEvery(px: number, unit: Unit): { readonly every: number; readonly text: string } {
	const wide = 50 / px < 11;
	if (unit === 'cm') return wide ? { every: 100, text: 'dots 10 cm apart' } : { every: 50, text: 'dots 5 cm apart' };
	return wide ? { every: 101.6, text: 'dots 4 in apart' } : { every: 50.8, text: 'dots 2 in apart' };
}
export function dotWords(text: string, box: Drawing['box']): Label {
	const [x0, y0] = box.from;
	const [x1, y1] = box.to;
	const end = { anchor: 'end', clear: true } as const;
	return words([x1, y0], text, 'small', {
		...end, rank: 2, shift: [0, -4],
		or: [
			words([x1, y1], text, 'small', { ...end, shift: [0, 14] }),
			words([x0, y1], text, 'small', { clear: true, shift: [4, 14] }),
			words([x1, y0], text, 'small', { ...end, shift: [0, 20] }),
			words([x0, y0], text, 'small', { clear: true, shift: [0, 20] })
		]
	});
}

/** Ink to the left of the sheet that a ruler with these marks needs. */
export const rulerRoom = (...texts: readonly string[]): number => 34 + Math.max(...texts.map((text) => textWidth(text, 'labelStrong', 358)));

/** A piece's name in the trade's words, and how many are cut. */
export function pieceName(view: PanelView): readonly [string, string] {
	const name = view.piece.name;
	const title = /^panel/.test(name) ? (view.piece.count > 1 ? 'Panel' : 'Skirt') : name.charAt(0).toUpperCase() + name.slice(1);
	return [title, `cut ${view.piece.count}${view.piece.fold ? ' on the fold' : ''}`];
}

export function spoken(draft: Draft, unit: Unit, opening: string): string {
	const f = draft.figures;
	const n = (mm: number): string => num(mm, unit);
	const zip = f.zipEndBelowSeam !== undefined ? ` The zip ends ${n(f.zipEndBelowSeam)} below the waist line.` : '';
	return `${opening} Measured from the corner: cut the waist at ${n(f.cutWaistRadius)}, stitch it at ${n(f.waistRadius)}; ` +
		`the hem fold is at ${n(f.hemRadius)}, cut the hem at ${n(f.cutHemRadius)}.${zip} In ${unit === 'cm' ? 'centimetres' : 'inches'}.`;
}
