// One panel as it lies on folded cloth: half of it, its fold at the left with a ruler from the corner.
import { polar, type Point } from '../../drafting/geometry/point.ts';
import type { Draft } from '../../drafting/draft.ts';
import type { Piece } from '../../drafting/piece.ts';
import type { Drawing, Label, Shape } from '../drawing.ts';
import { num } from './number.ts';
import { viewPanel } from './panel.ts';
import type { SectorOptions } from './sector.ts';
import { besideSeam, DOWN, dotEvery, dotWords, panelLines, pieceName, rulerRoom, spoken, zipNotch } from './sector-part.ts';
import { along, arcPath, area, arrow, line, linePath, mark, stroke, words } from './shape.ts';

export function halfOnFold(draft: Draft, piece: Piece, { unit, emphasis = 'waist', before }: SectorOptions): Drawing {
	const f = draft.figures;
	const n = (mm: number): string => num(mm, unit);
	const view = viewPanel(piece, true);
	const half = view.halfAngle;
	const [r, R, rc, Rc] = [f.waistRadius, f.hemRadius, f.cutWaistRadius, f.cutHemRadius];
	// A shallow flare's corner lies far off: then the sheet begins above the waist and the ruler says so.
	const top = view.box.to[1];
	const withCorner = -top < 0.75 * (Rc - rc);
	const sheetTop = withCorner ? Math.max(0, top) : top;
	const width = Math.max(view.box.to[0], 1);
	const box = { from: [Math.min(0, view.box.from[0]), -Rc] as Point, to: [width, sheetTop] as Point };
	// About a pixel, in mm, on a phone.
	const px = 1 / Math.min(274 / (box.to[0] - box.from[0]), 440 / (box.to[1] - box.from[1]));
	const dots = dotEvery(px, unit);
	const shapes: Shape[] = [area(view.cloth, 'wrongSide')];

	// The corner, its construction lines and the radius that the hand draws next.
	if (withCorner) {
		shapes.push(line([0, 0], [0, -rc], 'construction'), line([0, 0], polar([0, 0], rc, DOWN + half), 'construction'));
	}
	if (before) shapes.push(...asItWas(before, draft, half, n));
	shapes.push(...panelLines(view, emphasis));
	shapes.push(line([0, -rc], [0, -Rc], 'fold', emphasis === 'fold'));
	if (withCorner) shapes.push(mark('dot', [0, 0]));
	shapes.push(...radius(emphasis === 'hem' ? Rc : rc, emphasis === 'hem' ? Math.min(half * 0.55, 0.9) : Math.min(half * 0.3, 0.5), withCorner, n, rc, half));

	const starts = withCorner ? 0 : Math.floor(-top / 100) * 100;
	shapes.push({
		shape: 'ruler', along: linePath([0, withCorner ? 0 : -Math.max(starts, -top)], [0, -Rc]), starts: withCorner ? 0 : Math.max(starts, -top),
		unit, body: 'scale', off: 9,
		marks: [
			{ at: rc, text: n(rc), voice: 'labelStrong' }, { at: r, text: n(r), voice: 'label' },
			{ at: R, text: n(R), voice: 'label' }, { at: Rc, text: n(Rc), voice: 'labelStrong' }
		]
	});
	if (!withCorner) shapes.push(words([0, sheetTop], 'from the corner', 'small', { anchor: 'start', shift: [-62, -10], rank: 1 }));

	// The fold's bracket, the grain, the names.
	const L = R - r;
	const inset = Math.min(15 * px, 0.5 * r * Math.tan(Math.min(half, 1)));
	const [a, b]: [Point, Point] = [[inset, -(r + 0.2 * L)], [inset, -(r + 0.72 * L)]];
	shapes.push(line(a, b, 'grain'), ...arrow(a, [2 * px, a[1]]), ...arrow(b, [2 * px, b[1]]));
	const turn = { angle: Math.PI / 2, anchor: 'middle', clear: true, rank: 1, shift: [19, 0] as Point } as const;
	const beside: Point = [inset, (a[1] + b[1]) / 2];
	shapes.push(words(beside, 'place on the fold', 'label', { ...turn, or: [words(beside, 'on the fold', 'label', turn), words(beside, 'fold', 'label', turn)] }));
	shapes.push(...grain(piece, r, L, half, px));
	// The bracket says where the fold is.
	shapes.push(...named(pieceName(view)[0], `cut ${piece.count}`, r, L, half));

	// Words along the lines. Each arc is used where it runs most level.
	const stitchArc = arcPath([0, 0], r, DOWN + 0.04, DOWN + Math.min(half, 1.9));
	shapes.push(along(stitchArc, `stitch line ${n(r)}`, 'label', { off: -17, rank: 1, clear: true, or: [
		along(stitchArc, `stitch ${n(r)}`, 'label', { off: -17, clear: true }),
		along(arcPath([0, 0], r, DOWN + half * 0.3, DOWN + half), 'stitch', 'label', { off: -17, clear: true })
	] }));
	const hemEnd = DOWN + Math.min(half, 1.5);
	const foldArc = arcPath([0, 0], R, DOWN + 0.06, hemEnd);
	shapes.push(along(foldArc, 'stitch line, the hem fold', 'label', { off: 7, rank: 1, clear: true, or: [
		along(foldArc, 'the hem fold', 'label', { off: 7, clear: true }), along(foldArc, 'hem fold', 'label', { off: 7, clear: true })
	] }));
	const cutArc = arcPath([0, 0], Rc, DOWN + 0.03, hemEnd);
	shapes.push(along(cutArc, `cut line ${n(Rc)}`, 'labelStrong', { off: -18, rank: 1, or: [along(cutArc, 'cut line', 'labelStrong', { off: -18 }), along(cutArc, 'cut', 'labelStrong', { off: -18 })] }));

	// The seam, with the zip's end.
	const seam = draft.skirt.allowances.seam;
	const seamName = draft.skirt.zipAt === 'leftSide' ? 'side seam' : 'back seam';
	const zipEnd = f.zipEndBelowSeam;
	if (zipEnd !== undefined && zipEnd < L) {
		shapes.push(zipNotch(draft, view, zipEnd));
		const at = r + zipEnd;
		const text = `zip ends, ${n(zipEnd)}`;
		const place = (from: number, t: string): Label => besideSeam(view, seam, from, 110 * px, t, { rank: 1, clear: true });
		shapes.push({ ...place(at, text), or: [place(at + 40 * px, text), place(at - 30 * px, text), place(at, `zip ${n(zipEnd)}`)] });
	}
	shapes.push(besideSeam(view, seam, r + 0.8 * L, 70 * px, seamName, { rank: 3, clear: true }));
	shapes.push(dotWords(dots.text, box));
	return {
		alt: spoken(draft, unit, `Half of the skirt, as it lies on the folded cloth.`),
		box, inkMargin: [half > 1.2 ? 30 : 26, half > 1.3 ? 14 : 40, 26, rulerRoom(n(rc), n(r), n(R), n(Rc))],
		dots: { every: dots.every, inside: view.cloth }, shapes
	};
}

/** The arrow from the corner and its figure; without a corner, the figure over the waist. */
function radius(to: number, at: number, withCorner: boolean, n: (mm: number) => string, rc: number, half: number): readonly Shape[] {
	const text = n(to);
	if (!withCorner) {
		const over: Point = polar([0, 0], to, DOWN + half * 0.5);
		const more = { anchor: 'middle', clear: true, rank: 1 } as const;
		return [words(over, text, 'figure', { ...more, shift: [8, -14], or: [words(over, text, 'labelStrong', { ...more, shift: [8, -10] })] })];
	}
	const end = polar([0, 0], to, DOWN + at);
	const places: Label[] = [];
	// A figure on a long arrow stands beside it, a third from its head.
	if (to !== rc) {
		for (const part of [0.62, 0.7, 0.54, 0.46, 0.78]) for (const [anchor, x, y] of [['start', 10, 4], ['end', -10, 20]] as const) {
			places.push(words(polar([0, 0], to * part, DOWN + at), text, 'figure', { anchor, clear: true, rank: 1, shift: [x, y] }));
		}
	}
	const put = (angle: number, from: number, voice: 'figure' | 'title' | 'labelStrong'): void => {
		places.push(words(polar([0, 0], from, DOWN + Math.min(angle, 2.4)), text, voice, { anchor: 'middle', clear: true, rank: 1, shift: [0, voice === 'figure' ? 10 : 7] }));
	};
	// First between the arrow and the seam, then nearer the fold, smaller if need be; last outside the corner.
	for (const voice of ['figure', 'title'] as const) {
		for (const turn of [0.66, 0.7, 0.74, 0.62, 0.58, 0.8, 0.2]) {
			for (const part of [0.52, 0.56, 0.48, 0.6, 0.44, 0.66]) put(half * turn, to === rc ? rc * part : to * (0.45 + part / 4), voice);
		}
	}
	for (const part of [0.52, 0.6, 0.44]) for (const turn of [0.66, 0.74, 0.58]) put(half * turn, to * part, 'labelStrong');
	for (const voice of ['figure', 'title', 'labelStrong'] as const) for (const part of [0.5, 0.7, 0.9, 0.3]) put(half * 1.3, to * part, voice);
	const [first, ...rest] = places;
	return [...arrow([0, 0], end), { ...first!, or: rest }];
}

function grain(piece: Piece, r: number, L: number, half: number, px: number): readonly Shape[] {
	// The piece's own direction; the sheet turns it a quarter round with the panel.
	const way = Math.atan2(piece.grain.to[1] - piece.grain.from[1], piece.grain.to[0] - piece.grain.from[0]) + DOWN;
	const turned = Math.abs(Math.cos(way)) > 0.05 ? (Math.cos(way) < 0 ? way + Math.PI : way) : Math.PI / 2;
	const centre = polar([0, 0], r + 0.36 * L, DOWN + half * 0.64);
	// How far it may reach before it meets the seam or the fold.
	const across = (r + 0.36 * L) * Math.sin(Math.min(half * 0.36, 1));
	const reach = Math.min(0.2 * L, Math.max(12 * px, across * (Math.abs(Math.cos(turned)) > 0.5 ? 0.75 : 1)));
	const [from, to] = [polar(centre, reach, turned + Math.PI), polar(centre, reach, turned)];
	const path = linePath(from, to);
	return [...arrow(from, to, 'grain', true), along(path, 'grain', 'label', { off: 6, rank: 1, clear: true, or: [along(path, 'grain', 'label', { off: -17, clear: true }), words(to, 'grain', 'label', { clear: true, shift: [6, -4] })] })];
}

/** The piece's name where the panel has room for it. */
function named(title: string, count: string, r: number, L: number, half: number): readonly Shape[] {
	const spots: Point[] = [];
	for (const depth of [0.58, 0.66, 0.5, 0.74, 0.42]) for (const part of [0.45, 0.55, 0.35]) spots.push(polar([0, 0], r + depth * L, DOWN + half * Math.min(part, 1.1 / half)));
	const at = (p: Point, alone: boolean): Label => words(p, title, 'title', { anchor: 'middle', clear: true, rank: 2, ...(alone ? {} : { under: count }) });
	const [first, ...rest] = [...spots.map((p) => at(p, false)), ...spots.map((p) => at(p, true))];
	return [{ ...first!, or: rest }];
}

/** Where waist and hem lay in an earlier draft. */
function asItWas(before: Draft, now: Draft, half: number, n: (mm: number) => string): readonly Shape[] {
	const shapes: Shape[] = [];
	const end = DOWN + Math.min(half, before.figures.panelAngle / 2);
	for (const key of ['waistRadius', 'hemRadius'] as const) {
		const was = before.figures[key];
		if (Math.abs(was - now.figures[key]) < 0.5) continue;
		const arc = arcPath([0, 0], was, DOWN, end);
		shapes.push(stroke(arc, 'asItWas'), along(arc, `as it was, ${n(was)}`, 'label', { off: 6, rank: 1, clear: true, or: [along(arc, `as it was, ${n(was)}`, 'label', { off: -17, clear: true })] }));
	}
	return shapes;
}
