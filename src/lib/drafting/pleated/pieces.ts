// The panels of a pleated skirt: whole pleats from hidden fold to hidden fold, so that the joins are hidden.
import { startPlace } from '../closure.ts';
import { landmarksBetween } from '../panel.ts';
import type { InnerLine, Notch, Piece } from '../piece.ts';
import type { SeamEdge } from '../seam.ts';
import { cutOf, stripOutline } from '../strip.ts';
import type { PleatedFigures } from './figures.ts';
import { creases, seenAtWaist, type Crease } from './folding.ts';
import type { PleatedSkirt } from './skirt.ts';

/** One panel in its order round the body; `firstPleat` counts from 0 at the seam with the zip. */
export interface PleatPanel {
	readonly piece: string;
	readonly copy: number;
	readonly pleats: number;
	readonly firstPleat: number;
}

/** The wider panels first. */
export function pleatPanels({ panels, pleatsInPanel, widePanels }: PleatedFigures): readonly PleatPanel[] {
	const alike = widePanels === panels;
	let firstPleat = 0;
	return Array.from({ length: panels }, (_, i) => {
		const wide = i < widePanels;
		const pleats = wide ? pleatsInPanel : pleatsInPanel - 1;
		const panel = { piece: alike ? 'panel' : wide ? 'panel wide' : 'panel narrow', copy: wide ? i + 1 : i + 1 - widePanels, pleats, firstPleat };
		firstPleat += pleats;
		return panel;
	});
}

const names = { fold: 'fold line', placement: 'placement line', inner: 'inner fold' } as const;

const linesOf = (figures: PleatedFigures, { kind, pleats }: PleatedSkirt): readonly Crease[] => creases(
	{ kind, pleats, depth: figures.depthAtHip, waist: figures.waistSeamGirth, hip: figures.hipGirth },
	{ ...figures }
);

export function pleatPieces(panels: readonly PleatPanel[], figures: PleatedFigures, skirt: PleatedSkirt): readonly Piece[] {
	const lines = linesOf(figures, skirt);
	return panels.filter(({ copy }) => copy === 1).map((panel) => {
		const wide = panel.pleats * figures.repeat;
		const stitch = stripOutline({ first: 'first seam', second: 'second seam', top: 'waist', lower: 'hem' }, wide, figures.skirtLength);
		const { waist, seam } = skirt.allowances;
		const copies = panels.filter(({ piece }) => piece === panel.piece);
		return {
			name: panel.piece,
			cloth: 'shell',
			count: copies.length,
			fold: null,
			// Pleats fall along the lengthwise grain, which runs down the skirt.
			grain: { from: [figures.skirtLength * 0.1, 0], to: [figures.skirtLength * 0.9, 0] },
			stitch,
			cut: cutOf(stitch, (edge) => (edge === 'waist' ? waist : edge === 'hem' ? skirt.hem : seam)),
			notches: [...lineNotches(panel, lines, figures), ...landmarkNotches(copies, lines, figures, skirt), ...zipNotches(panel, copies, panels, figures)],
			lines: [...innerLines(panel, lines, figures), hipLine(wide, figures, skirt)]
		};
	});
}

/** Every line of every pleat, with its distance from the panel's first seam; the last hidden fold is the second seam. */
function every({ pleats }: PleatPanel, lines: readonly Crease[], { repeat }: PleatedFigures): readonly Crease[] {
	return Array.from({ length: pleats }, (_, i) => i * repeat)
		.flatMap((start) => lines.map(({ kind, hip, waist }) => ({ kind, hip: start + hip, waist: start + waist })))
		.slice(0, -1);
}

/** From the waist to the hip, and from there to the hem: two straight lines that share a name. */
function innerLines(panel: PleatPanel, lines: readonly Crease[], figures: PleatedFigures): readonly InnerLine[] {
	const half = (panel.pleats * figures.repeat) / 2;
	return every(panel, lines, figures).flatMap(({ kind, hip, waist }): InnerLine[] => [
		{ name: names[kind], from: [0, waist - half], to: [figures.hipDepth, hip - half] },
		{ name: names[kind], from: [figures.hipDepth, hip - half], to: [figures.skirtLength, hip - half] }
	]);
}

const hipLine = (wide: number, { hipDepth }: PleatedFigures, { stitchedTo }: PleatedSkirt): InnerLine =>
	({ name: stitchedTo === 'hip' ? 'hip line, stitched down to here' : 'hip line', from: [hipDepth, -wide / 2], to: [hipDepth, wide / 2] });

/** Folds and placement lines are snipped at both ends; the waist edge itself runs back towards the first seam. */
function lineNotches(panel: PleatPanel, lines: readonly Crease[], figures: PleatedFigures): readonly Notch[] {
	const wide = panel.pleats * figures.repeat;
	return every(panel, lines, figures).filter(({ kind }) => kind !== 'inner').flatMap(({ kind, hip, waist }): Notch[] => [
		{ edge: 'waist', at: 1 - waist / wide, kind: 'single', marks: names[kind] },
		{ edge: 'hem', at: hip / wide, kind: 'single', marks: names[kind] }
	]);
}

/** Where the band's notches meet the folded waist: a place round the body is a share of what is seen. */
function landmarkNotches(copies: readonly PleatPanel[], lines: readonly Crease[], figures: PleatedFigures, { pleats, zipAt }: PleatedSkirt): readonly Notch[] {
	const start = startPlace(zipAt);
	return copies.flatMap(({ copy, firstPleat, pleats: count }) => {
		const place = (pleat: number): number => start + pleat / pleats;
		// A landmark where two panels meet is the seam itself, hidden; it is marked where the next pleat's face begins.
		return landmarksBetween(place(firstPleat) - 1e-6, place(firstPleat + count) - 1e-6).filter(({ at }) => at > start + 1e-6).map(({ at, mark }): Notch => {
			const along = (at - start) * pleats - firstPleat;
			const pleat = Math.floor(along + 1e-9);
			const from = pleat * figures.repeat + onFace(lines, (along - pleat) * figures.spacingAtWaist);
			return { edge: 'waist', at: 1 - from / (count * figures.repeat), kind: mark.kind, marks: mark.marks, ...(copies.length > 1 && { copy }) };
		});
	});
}

/** The place on a pleat's flat cloth that lies `along` what is seen of it at the waist. */
function onFace(lines: readonly Crease[], along: number): number {
	let left = Math.max(0, along);
	const seen = seenAtWaist(lines);
	for (const [from, to] of seen) {
		if (left < to - from) return from + left;
		left -= to - from;
	}
	return seen.at(-1)![1];
}

/** The zip's end, on the first panel's first seam and the last panel's second. */
function zipNotches(panel: PleatPanel, copies: readonly PleatPanel[], panels: readonly PleatPanel[], { zipEndBelowSeam, skirtLength }: PleatedFigures): readonly Notch[] {
	const part = zipEndBelowSeam / skirtLength;
	if (part <= 0 || part >= 1 - 1e-9) return [];
	const notch = (edge: string, at: number, copy: number): Notch => ({ edge, at, kind: 'single', marks: 'zip end', ...(copies.length > 1 && { copy }) });
	const [first, last] = [panels[0]!, panels.at(-1)!];
	return [
		...(panel.piece === first.piece ? [notch('first seam', part, first.copy)] : []),
		...(panel.piece === last.piece ? [notch('second seam', 1 - part, last.copy)] : [])
	];
}

/** What the band is sewn to: only what is seen of the folded waist edge, in order round the body. */
export function seenWaist(panels: readonly PleatPanel[], figures: PleatedFigures, skirt: PleatedSkirt): readonly SeamEdge[] {
	const seen = seenAtWaist(linesOf(figures, skirt));
	return panels.flatMap(({ piece, copy, pleats }) => Array.from({ length: pleats }, (_, i) => i).flatMap((i) =>
		seen.map(([from, to]): SeamEdge => ({
			piece, copy, edge: 'waist', from: 1 - (i + from / figures.repeat) / pleats, to: 1 - (i + to / figures.repeat) / pleats
		}))
	));
}
