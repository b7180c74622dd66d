// Panels whole, side by side, middle down: one panel for the lesson, or all of a skirt's different panels for the teacher.
import { polar, type Point } from '../../drafting/geometry/point.ts';
import type { Draft } from '../../drafting/draft.ts';
import type { Piece } from '../../drafting/piece.ts';
import type { Drawing, Label, Shape } from '../drawing.ts';
import { num, type Unit } from './number.ts';
import { type PanelView, viewPanel } from './panel.ts';
import type { SectorOptions } from './sector.ts';
import { besideSeam, DOWN, dotEvery, dotWords, panelLines, pieceName, rulerRoom, spoken, zipNotch } from './sector-part.ts';
import { along, arcPath, area, arrow, line, linePath, mark, stroke, words } from './shape.ts';

export function panelsWhole(draft: Draft, pieces: readonly Piece[], options: SectorOptions): Drawing {
	const { unit, layout } = options;
	const f = draft.figures;
	const views: { view: PanelView; x: number }[] = [];
	let right = 0;
	for (const piece of pieces.slice(0, 4)) {
		const half = layout === 'half' && piece.fold !== null && pieces.length > 1;
		const flat = viewPanel(piece, half);
		const gap = views.length ? 0.08 * (flat.box.to[0] - flat.box.from[0]) + 20 : 0;
		const x = right + gap - flat.box.from[0];
		views.push({ view: viewPanel(piece, half, x), x });
		right = x + flat.box.to[0];
	}
	const tops = Math.max(...views.map(({ view }) => view.box.to[1]));
	const withCorner = -tops < 0.75 * (f.cutHemRadius - f.cutWaistRadius);
	const box = {
		from: [Math.min(0, ...views.map(({ view }) => view.box.from[0])), Math.min(...views.map(({ view }) => view.box.from[1]))] as Point,
		to: [right, withCorner ? Math.max(0, tops) : tops] as Point
	};
	const px = 1 / Math.min(330 / (box.to[0] - box.from[0]), 440 / (box.to[1] - box.from[1]));
	const dots = dotEvery(px, unit);
	const shapes: Shape[] = views.map(({ view }) => area(view.cloth, 'wrongSide'));
	// A slim panel has no room for its radii inside: a ruler stands beside it, joined to its middle line.
	const slim = views.length === 1 && views[0]!.view.halfAngle < 0.42 && !views[0]!.view.half;
	if (slim) shapes.push(...besideRuler(draft, views[0]!.x, box, withCorner, unit));
	// The radii stand on the widest panel, where their figures have room.
	const wide = views.map(({ view }) => view.box.to[0] - view.box.from[0]);
	const main = wide.findIndex((w) => w > Math.max(...wide) - 1e-6);
	for (const [i, { view, x }] of views.entries()) shapes.push(...panel(draft, view, x, i === main && !slim, withCorner, px, options));
	shapes.push(dotWords(dots.text, box));
	const count = draft.skirt.panels === 1 ? 'The skirt panel, opened out' : `${draft.skirt.panels} panels`;
	const n = (mm: number): string => num(mm, unit);
	return {
		alt: `${spoken(draft, unit, `${count}.`)} The waist seam is ${n(f.waistSeamGirth)} and the hem ${n(f.hemSweep)} all round.`,
		box, inkMargin: [slim ? 20 : 28, slim ? 40 : 26, 30, slim ? rulerRoom(n(f.cutWaistRadius), n(f.waistRadius), n(f.hemRadius), n(f.cutHemRadius)) : 26],
		dots: { every: dots.every, inside: views[0]!.view.cloth, also: views.slice(1).map(({ view }) => view.cloth) }, shapes
	};
}

function besideRuler(draft: Draft, x: number, box: Drawing['box'], withCorner: boolean, unit: Unit): readonly Shape[] {
	const f = draft.figures;
	const top = withCorner ? 0 : Math.max(Math.floor(-box.to[1] / 100) * 100, -box.to[1]);
	const left = box.from[0];
	const marks = [
		{ at: f.cutWaistRadius, voice: 'labelStrong' }, { at: f.waistRadius, voice: 'label' },
		{ at: f.hemRadius, voice: 'label' }, { at: f.cutHemRadius, voice: 'labelStrong' }
	] as const;
	return [
		...marks.map(({ at }) => line([left, -at], [x, -at], 'construction')),
		...(withCorner ? [mark('dot', [x, 0]), line([x, 0], [x, -f.cutWaistRadius], 'construction')] : [words([left, box.to[1]], 'from the corner', 'small', { shift: [-62, -8], rank: 1 })]),
		{ shape: 'ruler', along: linePath([left, -top], [left, -f.cutHemRadius]), starts: top, unit, body: 'scale', off: 9, marks: marks.map(({ at, voice }) => ({ at, voice, text: num(at, unit) })) }
	];
}

function panel(draft: Draft, view: PanelView, x: number, main: boolean, withCorner: boolean, px: number, { unit, emphasis = 'waist', before }: SectorOptions): readonly Shape[] {
	const f = draft.figures;
	const n = (mm: number): string => num(mm, unit);
	const [r, R, rc, Rc] = [f.waistRadius, f.hemRadius, f.cutWaistRadius, f.cutHemRadius];
	const half = view.halfAngle;
	const from = view.half ? DOWN : DOWN - half;
	const L = R - r;
	const corner: Point = [x, 0];
	const shapes: Shape[] = [];
	if (withCorner && main) {
		for (const angle of [from, DOWN + half]) shapes.push(line(corner, polar(corner, rc, angle), 'construction'));
	}
	if (before) {
		for (const key of ['waistRadius', 'hemRadius'] as const) {
			const was = before.figures[key];
			if (Math.abs(was - f[key]) < 0.5) continue;
			const reach = Math.min(half, before.figures.panelAngle / 2);
			const arc = arcPath(corner, was, view.half ? DOWN : DOWN - reach, DOWN + reach);
			const text = `as it was, ${n(was)}`;
			shapes.push(stroke(arc, 'asItWas'));
			shapes.push(along(arc, text, 'label', { off: 6, rank: 1, clear: true, or: [along(arc, text, 'label', { off: -17, clear: true })] }));
		}
	}
	shapes.push(...panelLines(view, emphasis));
	if (view.piece.fold) {
		shapes.push(line([x, -rc], [x, -Rc], 'fold', emphasis === 'fold'));
		const at: Point = [x, -(r + 0.62 * L)];
		const turn = { angle: Math.PI / 2, anchor: 'middle', rank: 3, clear: true, shift: [-8, 0] as Point } as const;
		shapes.push(words(at, view.piece.fold.name, 'label', { ...turn, or: [words(at, 'fold', 'label', turn), words(at, 'fold', 'label', { ...turn, shift: [19, 0] })] }));
	}
	shapes.push(...names(view, x, r, L, half));
	if (main) {
		if (withCorner) shapes.push(mark('dot', corner), ...radiusArrow(corner, rc, DOWN - (view.half ? -0.3 : 0.3) * half, n(rc), half, emphasis !== 'hem'));
		const hemArrow = DOWN + 0.52 * half;
		const hemFrom = withCorner ? corner : polar(corner, rc, hemArrow);
		if (emphasis === 'hem' || !withCorner || half > 0.5) {
			shapes.push(...arrow(hemFrom, polar(corner, R, hemArrow), 'grain'));
			shapes.push(besideArrow(corner, r + 0.55 * L, hemArrow, n(R), emphasis === 'hem'));
		}
	}
	const waistArc = arcPath(corner, r, from, DOWN + half);
	shapes.push(along(waistArc, `waist ${n(rc)} to cut`, 'label', { off: -17, rank: 2, clear: true, or: [along(waistArc, 'waist', 'label', { off: -17, clear: true })] }));
	const hemArc = arcPath(corner, R, view.half ? DOWN : Math.max(DOWN - half, DOWN - 1.5), view.half ? DOWN + Math.min(half, 1.5) : DOWN - 0.05);
	const wide = arcPath(corner, R, Math.max(from, DOWN - 1.2), DOWN + Math.min(half, 1.2));
	shapes.push(along(hemArc, `hem, all round ${n(f.hemSweep)}`, 'label', { off: 8, rank: 2, clear: true, or: [along(wide, `hem, all round ${n(f.hemSweep)}`, 'label', { off: 8, clear: true }), along(wide, 'hem fold', 'label', { off: 8, clear: true }), along(wide, 'hem', 'label', { off: 8, clear: true })] }));
	const cutArc = arcPath(corner, Rc, Math.max(from, DOWN - 1), DOWN + Math.min(half, 1));
	shapes.push(along(cutArc, `cut line ${n(Rc)}`, 'labelStrong', { off: -18, rank: 2, or: [along(cutArc, 'cut line', 'labelStrong', { off: -18 }), along(cutArc, 'cut', 'labelStrong', { off: -18 })] }));
	const zipEnd = f.zipEndBelowSeam;
	if (zipEnd !== undefined && zipEnd < L && zipOn(view.piece)) {
		shapes.push(zipNotch(draft, view, zipEnd, x));
		const text = `zip ends, ${n(zipEnd)}`;
		const beside = (at: number, t: string): Label => besideSeam(view, draft.skirt.allowances.seam, at, 100 * px, t, { rank: 2, clear: true }, x);
		shapes.push({ ...beside(r + zipEnd, text), or: [beside(r + zipEnd + 30 * px, text), beside(r + zipEnd, `zip ${n(zipEnd)}`)] });
	}
	return shapes;
}

/** Does the piece carry the zip's end? Its own notches say so. */
const zipOn = (piece: Piece): boolean => piece.notches.some((notch) => notch.marks.startsWith('zip'));

function radiusArrow(corner: Point, to: number, way: number, text: string, half: number, strong: boolean): readonly Shape[] {
	const places: Label[] = [];
	for (const voice of strong ? (['figure', 'title', 'labelStrong'] as const) : (['labelStrong', 'label'] as const)) {
		for (const part of [0.5, 0.62, 0.4]) for (const turn of [0.28, -0.32, 0.5, -0.6]) {
			places.push(words(polar(corner, to * part, way + turn * Math.min(half, 1.6)), text, voice, { anchor: 'middle', clear: true, rank: 1, shift: [0, 7] }));
		}
		// Over the corner, where the panel leaves the sheet free.
		places.push(words(corner, text, voice, { anchor: 'middle', clear: true, rank: 1, shift: [0, -10] }), words(corner, text, voice, { clear: true, rank: 1, shift: [12, 4] }));
	}
	const [first, ...rest] = places;
	return [...arrow(corner, polar(corner, to, way)), { ...first!, or: rest }];
}

function besideArrow(corner: Point, at: number, way: number, text: string, strong: boolean): Label {
	const voices = strong ? (['figure', 'title', 'labelStrong'] as const) : (['labelStrong'] as const);
	const places = voices.flatMap((voice) => [1, 1.15, 0.85, 1.3].flatMap((by) => [
		words(polar(corner, at * by, way), text, voice, { clear: true, rank: 1, shift: [9, 0] }),
		words(polar(corner, at * by, way), text, voice, { clear: true, rank: 1, anchor: 'end', shift: [-9, 12] })
	]));
	const [first, ...rest] = places;
	return { ...first!, or: rest };
}

function names(view: PanelView, x: number, r: number, L: number, half: number): readonly Shape[] {
	const [title, count] = pieceName(view);
	const spots = [0.5, 0.42, 0.6, 0.34, 0.7].flatMap((depth) =>
		(view.half ? [0.5, 0.35, 0.72, 0.22, 0.8] : [-0.45, -0.25, 0.3, 0]).map((part) => polar([x, 0], r + depth * L, DOWN + half * part)));
	const at = (p: Point, alone: boolean): Label => words(p, title, 'title', { anchor: 'middle', clear: true, rank: 1, ...(alone ? {} : { under: count }) });
	const plain = (p: Point): Label => words(p, title, 'labelStrong', { anchor: 'middle', clear: true, rank: 1 });
	const [first, ...rest] = [...spots.map((p) => at(p, false)), ...spots.map((p) => at(p, true)), ...spots.map(plain),
		// Over the waist, where the panel itself has no room.
		words([x, -r], title, 'labelStrong', { anchor: 'middle', clear: true, rank: 1, shift: [0, -22] }), words([x, -r], title, 'label', { anchor: view.half ? 'start' : 'middle', clear: true, rank: 1, shift: [0, -16] })];
	return [{ ...first!, or: rest }];
}
