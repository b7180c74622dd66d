// Marking out, to scale from the learner's own draft: the two waist lines, the arcs, the walk, the notches, the lining.
import { polar, type Point } from '../../drafting/geometry/point.ts';
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing, Label, Path, Shape } from '../drawing.ts';
import { num, numUnit, small, type Unit } from './number.ts';
import { shellPanels, viewPanel, type PanelView } from './panel.ts';
import { tape } from './part.ts';
import { besideSeam, DOWN, panelLines, rulerRoom } from './sector-part.ts';
import { along, arcPath, area, arrow, line, linePath, mark, measured, stroke, words } from './shape.ts';

/** The first panel, half of it where it is cut on a fold. */
function firstPanel(draft: Draft): PanelView {
	const [piece] = shellPanels(draft.pieces);
	if (!piece) throw new Error(`no skirt panel among ${draft.pieces.length} pieces`);
	return viewPanel(piece, piece.fold !== null);
}

/** The cloth by the waist, beside the fold or middle line, `wide` mm of it and `deep` mm below the stitch line. */
function byTheWaist(draft: Draft, wide: number, deep: number): { readonly end: number; readonly cloth: Path; readonly box: Drawing['box'] } {
	const { waistRadius: r, cutWaistRadius: rc } = draft.figures;
	const end = DOWN + Math.min(draft.figures.panelAngle / 2, Math.asin(Math.min(0.98, wide / (r + deep))));
	const corner: Point = [0, 0];
	const cloth: Path = {
		start: polar(corner, rc, DOWN),
		edges: [
			{ name: '', end: polar(corner, r + deep, DOWN), centre: null, turn: 0 },
			{ name: '', end: polar(corner, r + deep, end), centre: corner, turn: end - DOWN },
			{ name: '', end: polar(corner, rc, end), centre: null, turn: 0 },
			{ name: '', end: polar(corner, rc, DOWN), centre: corner, turn: DOWN - end }
		]
	};
	const right = Math.max(polar(corner, r + deep, end)[0], 0.6 * wide);
	return { end, cloth, box: { from: [0, -(r + deep)], to: [right, Math.max(polar(corner, rc, end)[1], -rc + 1)] } };
}

/** The figure beside a stretch measured between two arcs, as large as the room allows. */
function between(near: number, far: number, angle: number, text: string): Label {
	const middle = polar([0, 0], (near + far) / 2, angle);
	const places = (['figure', 'title', 'labelStrong'] as const).flatMap((voice) => [10, 7, 4, 13].map((y) => words(middle, text, voice, { shift: [12, y], clear: true, rank: 1 })));
	return { ...places[0]!, or: places.slice(1) };
}

export function waistLines(draft: Draft, unit: Unit): Drawing {
	const { waistRadius: r, cutWaistRadius: rc, sweepAngle, waistSeamGirth } = draft.figures;
	const a = draft.skirt.allowances.waist;
	const n = (mm: number): string => num(mm, unit);
	const { end, cloth, box } = byTheWaist(draft, 6.6 * a, 3.6 * a);
	const mistaken = waistSeamGirth + sweepAngle * a;
	const arc = (radius: number): Path => arcPath([0, 0], radius, DOWN, end);
	const at = DOWN + (end - DOWN) * 0.08;
	return {
		alt: `At the waist the cut line lies inside: cut at ${n(rc)} from the corner, stitch at ${n(r)}, ${n(a)} apart. ` +
			`Cut at ${n(r)} by mistake, and the waist sews to ${n(mistaken)} in place of ${n(waistSeamGirth)}.`,
		box, inkMargin: [34, 22, 12, rulerRoom(n(r), n(rc))],
		shapes: [
			area(cloth, 'wrongSide'), stroke(arc(r + a), 'asItWas'), stroke(arc(r), 'stitch'), stroke(arc(rc), 'cut', true),
			line([0, -rc], [0, -(r + 3.6 * a)], 'fold'),
			{ shape: 'ruler', along: linePath([0, -rc], [0, -(r + 3.6 * a)]), starts: rc, unit, body: 'scale', off: 9, marks: [{ at: rc, text: n(rc), voice: 'labelStrong' }, { at: r, text: n(r), voice: 'label' }] },
			along(arcPath([0, 0], rc, DOWN, DOWN + (end - DOWN) * 0.9), `cut line ${n(rc)}`, 'labelStrong', { off: 10, or: [along(arc(rc), 'cut line', 'labelStrong', { off: 10 })] }),
			along(arc(r), `stitch line ${n(r)}`, 'label', { off: -19, or: [along(arc(r), 'stitch line', 'label', { off: -18 })] }),
			...measured(polar([0, 0], rc, at), polar([0, 0], r, at)),
			between(rc, r, DOWN + (end - DOWN) * 0.08, numUnit(a, unit)),
			along(arc(r + a), 'allowance forgotten:', 'label', { off: -20, rank: 1, or: [along(arc(r + a), 'forgotten:', 'label', { off: -20 })] }),
			along(arc(r + a), `the waist sews to ${n(mistaken)}`, 'labelStrong', { off: -41, rank: 1, or: [along(arc(r + a), `it sews to ${n(mistaken)}`, 'labelStrong', { off: -41 }), along(arc(r + a), n(mistaken), 'labelStrong', { off: -41 })] })
		]
	};
}

/** The tape swung from the corner: at the waist, or at the hem. */
function arcs(draft: Draft, unit: Unit, hem: boolean): Drawing {
	const f = draft.figures;
	const n = (mm: number): string => num(mm, unit);
	const view = firstPanel(draft);
	const half = view.halfAngle;
	const [near, far] = hem ? [f.hemRadius, f.cutHemRadius] : [f.cutWaistRadius, f.waistRadius];
	const now = hem ? far : far;
	const reach = far * 1.12;
	const end = Math.min(half, 2.2);
	const left = view.half ? 0 : -reach * Math.sin(Math.min(half, Math.PI / 2));
	const from = view.half ? DOWN : DOWN - half;
	const box = hem ? { from: [Math.min(0, view.box.from[0]), -far] as Point, to: [view.box.to[0], Math.max(0, view.box.to[1])] as Point }
		: { from: [left, -reach] as Point, to: [Math.max(reach * Math.sin(Math.min(end, Math.PI / 2)), 0.55 * reach), Math.max(0, -reach * Math.cos(end))] as Point };
	const way = DOWN + Math.min(half, 1.6) * 0.45;
	const arc = (radius: number): Path => arcPath([0, 0], radius, from, DOWN + end);
	const inside = arcPath([0, 0], far, Math.max(from, DOWN + 0.02), DOWN + Math.min(half, 1.5));
	const ring: Path = { start: polar([0, 0], f.cutWaistRadius, from), edges: [
		{ name: '', end: polar([0, 0], reach, from), centre: null, turn: 0 }, { name: '', end: polar([0, 0], reach, DOWN + end), centre: [0, 0], turn: DOWN + end - from },
		{ name: '', end: polar([0, 0], f.cutWaistRadius, DOWN + end), centre: null, turn: 0 }, { name: '', end: polar([0, 0], f.cutWaistRadius, from), centre: [0, 0], turn: from - DOWN - end }
	] };
	const shapes: Shape[] = [
		hem ? area(view.cloth, 'wrongSide') : area(ring, 'wrongSide'),
		line([0, 0], polar([0, 0], f.cutWaistRadius, DOWN + end), 'construction'), ...(view.half ? [line([0, 0], [0, -(hem ? far : reach)], 'fold')] : [line([0, 0], polar([0, 0], f.cutWaistRadius, from), 'construction')]),
		...(hem ? panelLines(view, 'hem') : [stroke(arc(f.cutWaistRadius), 'cut'), stroke(arc(f.waistRadius), 'stitch', true)]),
		tape(linePath([0, 0], polar([0, 0], now, way)), unit, []),
		mark('dot', [0, 0]), mark('dot', polar([0, 0], now, way)),
		words(polar([0, 0], now, way), numUnit(now, unit), 'figure', { clear: true, rank: 1, shift: [14, 24], or: [0.9, 0.75, 0.6, 0.45].flatMap((part) => [
			words(polar([0, 0], now * part, DOWN + Math.min(half, 1.5) * 0.76), numUnit(now, unit), 'figure', { clear: true, rank: 1, anchor: 'middle', shift: [10, 6] }),
			words(polar([0, 0], now * part, DOWN + Math.min(half, 1.5) * 0.8), num(now, unit), 'title', { clear: true, rank: 1, anchor: 'middle', shift: [10, 6] })
		]) }),
		words([0, 0], 'corner', 'label', { shift: [10, -9], rank: 1 }),
		along(inside, hem ? `cut line ${n(far)}` : `stitch line ${n(far)}`, 'labelStrong', { off: -20, rank: 1, clear: true, or: [along(inside, hem ? 'cut line' : 'stitch line', 'labelStrong', { off: -20, clear: true })] }),
		...(hem ? [along(arcPath([0, 0], near, DOWN, DOWN + Math.min(half, 1.5)), 'hem fold', 'label', { off: 7, rank: 2, clear: true })] : [])
	];
	return {
		alt: `The tape lies from the corner and swings from the fold to the ${draft.skirt.panels === 1 ? 'back line' : 'seam line'}. Marks at ${n(now)}${hem ? `; the hem fold is at ${n(near)}` : `; the cut line is nearer, at ${n(near)}`}.`,
		box, inkMargin: [26, 30, 28, 26], shapes
	};
}
export const markArcs = (draft: Draft, unit: Unit): Drawing => arcs(draft, unit, false);
export const hemArcs = (draft: Draft, unit: Unit): Drawing => arcs(draft, unit, true);

export function walkWaist(draft: Draft, unit: Unit): Drawing {
	const { waistRadius: r, cutWaistRadius: rc, panelAngle, waistSeamGirth } = draft.figures;
	const view = firstPanel(draft);
	const reading = (view.half ? panelAngle / 2 : panelAngle) * r;
	const { cloth, box, end } = byTheWaist(draft, Infinity, 0.3 * r);
	const from = view.half ? DOWN : DOWN - panelAngle / 2;
	const to = DOWN + panelAngle / 2;
	const outer = 1.3 * r;
	const ring: Path = view.half && panelAngle / 2 <= end - DOWN + 1e-9 ? cloth : { start: polar([0, 0], rc, from), edges: [
		{ name: '', end: polar([0, 0], outer, from), centre: null, turn: 0 }, { name: '', end: polar([0, 0], outer, to), centre: [0, 0], turn: to - from },
		{ name: '', end: polar([0, 0], rc, to), centre: null, turn: 0 }, { name: '', end: polar([0, 0], rc, from), centre: [0, 0], turn: from - to }
	] };
	const span = Math.min(panelAngle / 2, Math.PI / 2);
	const whole: Drawing['box'] = {
		from: [view.half ? 0 : -outer * Math.sin(span), -outer],
		to: [Math.max(outer * Math.sin(span), 0.7 * r), Math.max(-rc * Math.cos(panelAngle / 2), -outer * Math.cos(panelAngle / 2), -rc * 0.35)]
	};
	const share = num(reading, unit);
	const parts = view.half ? `half of ${num(waistSeamGirth / draft.skirt.panels, unit)}` : `one of ${draft.skirt.panels} panels`;
	const spot: Point = view.half ? [0, Math.max(-0.45 * r, whole.to[1] - 0.3 * r)] : [0, -0.5 * r];
	const more = { anchor: view.half ? 'start' as const : 'middle' as const, under: parts, shift: [view.half ? 14 : 0, 0] as Point };
	return {
		alt: `The tape stands on its edge along the stitch line, from ${view.half ? 'the fold' : 'seam'} to the ${view.half ? `${draft.skirt.panels === 1 ? 'back stitch line' : 'side stitch line'}` : 'next'}. It reads ${share} ${unit}, ${parts}.`,
		box: box.to[0] > 0 ? whole : box, inkMargin: [30, 44, 20, 20],
		shapes: [
			area(ring, 'wrongSide'), stroke(arcPath([0, 0], rc, from, to), 'cut'),
			tape(arcPath([0, 0], r, from, to), unit, []), stroke(arcPath([0, 0], r, from, to), 'stitch'),
			line(polar([0, 0], rc, to), polar([0, 0], outer, to), 'stitch'),
			view.half ? line([0, -rc], [0, -outer], 'fold') : line(polar([0, 0], rc, from), polar([0, 0], outer, from), 'stitch'),
			mark('dot', polar([0, 0], r, from)), mark('dot', polar([0, 0], r, to)),
			words(spot, numUnit(reading, unit), 'figure', { ...more, clear: true, or: [
				words(polar([0, 0], rc, DOWN), numUnit(reading, unit), 'figure', { ...more, shift: [view.half ? 14 : 0, -34], clear: true }),
				words([whole.from[0], whole.to[1]], numUnit(reading, unit), 'figure', { under: parts, shift: [8, -2] })] }),
			along(arcPath([0, 0], rc, from, to), 'cut line', 'label', { off: 8, rank: 2, clear: true }),
			words(polar([0, 0], r, to), share, 'labelStrong', { shift: [8, -8], rank: 1, clear: true, or: [words(polar([0, 0], r, to), share, 'labelStrong', { shift: [10, 18], clear: true })] })
		]
	};
}

export function notches(draft: Draft, unit: Unit): Drawing {
	const f = draft.figures;
	const view = firstPanel(draft);
	const shapes: Shape[] = [area(view.cloth, 'wrongSide'), ...panelLines(view, 'none')];
	if (view.half) shapes.push(line([0, -f.cutWaistRadius], [0, -f.cutHemRadius], 'fold'));
	const way = DOWN + view.halfAngle;
	const seam = draft.skirt.allowances.seam;
	const put = (radius: number, angle: number, text: string, out: boolean, or: readonly Label[] = []): void => {
		const at = polar([0, 0], radius, angle);
		shapes.push(mark('notch', at, out ? angle + Math.PI : angle));
		const shift: Point = out ? [Math.sign(Math.cos(angle)) * 10, 16] : [0, -12];
		shapes.push(words(at, text, 'label', { shift, anchor: Math.cos(angle) > 0.2 ? 'start' : 'middle', clear: true, rank: 1, or }));
	};
	// In one panel a side lies half way from the centre front to the centre back; of more, a seam lies there.
	const [one, centre] = draft.skirt.panels === 1 ? [true, 'centre front'] : [false, 'centre'];
	const side = DOWN + view.halfAngle / 2;
	if (view.half) {
		const tip = (r: number, angle: number, dx: number, dy: number, text: string): Label => words(polar([0, 0], r, angle), text, 'label', { shift: [dx, dy], clear: true, anchor: dx < 0 ? 'end' : 'start' });
		put(f.cutWaistRadius, DOWN + 0.015, centre, false, [tip(f.waistRadius, DOWN, 10, 20, centre), tip(f.waistRadius, DOWN, 10, 20, one ? 'front' : 'centre')]);
		if (one) put(f.cutWaistRadius, side, 'side', false, [tip(f.cutWaistRadius, side, -8, -4, 'side'), tip(f.waistRadius, side, 8, 18, 'side')]);
		put(f.cutHemRadius, DOWN + 0.01, centre, true, [tip(f.hemRadius, DOWN, 10, -12, centre)]);
		if (one) put(f.cutHemRadius, side, 'side', true, [tip(f.cutHemRadius, side, 8, 20, 'side'), tip(f.hemRadius, side, -6, -10, 'side')]);
	}
	const zipEnd = f.zipEndBelowSeam;
	if (zipEnd !== undefined) {
		const text = `zip end ${num(zipEnd, unit)}`;
		const [fx, fy] = polar([0, 0], f.waistRadius + zipEnd, way);
		shapes.push(mark('notch', [fx - seam * Math.sin(way), fy + seam * Math.cos(way)], way - Math.PI / 2));
		const place = (by: number): Label => besideSeam(view, seam, f.waistRadius + zipEnd + by, 0.3 * f.skirtLength, text, { rank: 1, clear: true });
		shapes.push({ ...place(0), or: [place(0.1 * f.skirtLength), place(0.2 * f.skirtLength)] });
	}
	return {
		alt: `Notches across the cut line: ${one ? 'centre front and side' : 'the centre'} at waist and hem${zipEnd === undefined ? '' : `, and the zip end ${num(zipEnd, unit)} below the waist stitch line`}. Each is ${small(5, unit)} deep.`,
		box: view.box, inkMargin: [30, 34, 28, 30], shapes: [...shapes, words([view.box.to[0], view.box.from[1]], `each ${small(5, unit)} deep`, 'small', { anchor: 'end', rank: 2, clear: true, shift: [24, 18] })]
	};
}

export function liningCut(draft: Draft, unit: Unit): Drawing {
	const f = draft.figures;
	const n = (mm: number): string => num(mm, unit);
	const piece = draft.pieces.find((p) => p.cloth === 'lining') ?? shellPanels(draft.pieces)[0];
	if (!piece) throw new Error(`no panel among ${draft.pieces.length} pieces`);
	const view = viewPanel(piece, piece.fold !== null);
	const hem = f.liningHemRadius ?? f.hemRadius;
	const cut = Math.max(...piece.cut.edges.map((edge) => (edge.centre ? Math.hypot(edge.end[0], edge.end[1]) : 0)));
	const end = DOWN + view.halfAngle;
	const from = view.half ? DOWN : DOWN - view.halfAngle;
	const level = DOWN + Math.min(view.halfAngle, 1.5);
	const skirtHem = arcPath([0, 0], f.cutHemRadius, from, end);
	const cutArc = arcPath([0, 0], cut, Math.max(from, DOWN - 1), level);
	const box = viewPanel(shellPanels(draft.pieces)[0] ?? piece, view.half).box;
	return {
		alt: `The lining, cut from the same corner: its waist like the skirt's, its hem cut at ${n(cut)}. The skirt's hem is cut at ${n(f.cutHemRadius)}.`,
		box: { from: box.from, to: [box.to[0], Math.max(0, box.to[1])] }, inkMargin: [26, 26, 30, view.half ? rulerRoom(n(cut), n(f.cutWaistRadius)) : 26],
		shapes: [
			area(view.cloth, 'lining'), stroke(skirtHem, 'asItWas'), ...panelLines(view, 'hem'),
			...(view.half ? [line([0, -f.cutWaistRadius], [0, -cut], 'fold') as Shape, {
				shape: 'ruler', along: linePath([0, 0], [0, -f.cutHemRadius]), starts: 0, unit, body: 'scale', off: 9,
				marks: [{ at: f.cutWaistRadius, text: n(f.cutWaistRadius), voice: 'label' }, { at: cut, text: n(cut), voice: 'labelStrong' }]
			} as Shape] : []),
			mark('dot', [0, 0]),
			words(polar([0, 0], f.waistRadius + 0.4 * (hem - f.waistRadius), DOWN + view.halfAngle * (view.half ? 0.5 : 0)), 'Lining', 'title', { anchor: 'middle', under: view.half ? 'on the fold' : `cut ${piece.count}`, clear: true, rank: 1 }),
			along(cutArc, `cut the lining at ${n(cut)}`, 'labelStrong', { off: 22, rank: 1, clear: true, or: [along(cutArc, `lining ${n(cut)}`, 'labelStrong', { off: 22, clear: true }), along(cutArc, n(cut), 'labelStrong', { off: 22 })] }),
			along(arcPath([0, 0], f.cutHemRadius, Math.max(from, DOWN - 1), level), 'the skirt’s hem', 'label', { off: -20, rank: 2, clear: true })
		]
	};
}

export function staystitch(draft: Draft, unit: Unit): Drawing {
	const { waistRadius: r, cutWaistRadius: rc } = draft.figures;
	const a = draft.skirt.allowances.waist;
	// Inside the allowance, 2 to 3 mm from the stitch line (common practice, no source).
	const row = r - Math.min(2.5, a / 3);
	const { end, cloth, box } = byTheWaist(draft, 5 * a, 2.2 * a);
	const arc = (radius: number): Path => arcPath([0, 0], radius, DOWN, end);
	const at = DOWN + (end - DOWN) * 0.5;
	const before = DOWN + (end - DOWN) * 0.08;
	return {
		alt: `Staystitching in the waist allowance, ${small(row - rc, unit)} from the cut edge and ${small(r - row, unit)} short of the stitch line, sewn towards the centre front.`,
		box, inkMargin: [40, 20, 10, 20],
		shapes: [
			area(cloth, 'wrongSide'), stroke(arc(rc), 'cut'), stroke(arc(row), 'staystitch', true), stroke(arc(r), 'stitch'), line([0, -rc], [0, -(r + 2.2 * a)], 'fold'),
			along(arc(rc), 'cut edge', 'label', { off: 10 }), along(arc(r), 'stitch line', 'label', { off: -20 }),
			...measured(polar([0, 0], rc, before), polar([0, 0], row, before)),
			between(rc, row, before, small(row - rc, unit)),
			...arrow(polar([0, 0], r + 1.5 * a, at), polar([0, 0], r + 1.5 * a, DOWN + (end - DOWN) * 0.12)),
			along(arcPath([0, 0], r + 1.5 * a, DOWN, end), 'to centre front', 'labelStrong', { off: -20, rank: 1, or: [along(arc(r + 1.5 * a), 'to front', 'labelStrong', { off: -20 })] }),
			words([0, -(r + 1.9 * a)], 'fold', 'small', { shift: [8, 4], rank: 2, clear: true })
		]
	};
}
