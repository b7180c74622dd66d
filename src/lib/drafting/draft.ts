import type { Body } from './body.ts';
import { contourFigures } from './band/contour-figures.ts';
import { contourPieces } from './band/contour.ts';
import { stripPieces } from './band/strip.ts';
import type { Check } from './check.ts';
import { checksOf } from './checks/all.ts';
import { obstacles } from './cuttable.ts';
import { facingPieces } from './facing.ts';
import { figuresOf } from './figures.ts';
import { liningBelowZip, type ZipFigures } from './opening.ts';
import { landmarksOf, lining, panelPieces, panelPlaces, shell, type PanelPlace } from './panel.ts';
import type { Piece } from './piece.ts';
import { ok, refuse, type Result } from './result.ts';
import { ringPiece } from './ring.ts';
import type { Seam } from './seam.ts';
import { seamsOf, type BandWork } from './seams.ts';
import { isRing, liningShare, type FlaredSkirt, type Skirt } from './skirt.ts';

/** Every figure of a flared skirt, unrounded; lengths mm, angles radians, areas mm². */
export interface Figures extends Partial<ZipFigures> {
	readonly sweepAngle: number;
	readonly waistSeamGirth: number;
	readonly waistRadius: number;
	readonly cutWaistRadius: number;
	/** Below the band. */
	readonly skirtLength: number;
	/** To the hem fold. */
	readonly hemRadius: number;
	readonly cutHemRadius: number;
	readonly hemSweep: number;
	/** What a single turn of the hem has to ease in, whatever the finish. */
	readonly hemSurplus: number;
	/** Both 0 for a faced waist, which has no band. Of a contour band, along its lower edge. */
	readonly bandCutLength: number;
	readonly bandCutDepth: number;
	/** Of a contour band's sewn part. */
	readonly bandAngle?: number;
	readonly bandTopRadius?: number;
	readonly bandLowRadius?: number;
	/** What an elastic is cut to. */
	readonly elasticLength?: number;
	/** The least opening below the waist seam that lets the hip through; 0 when none is needed. Absent, as the zip is, without a hip. */
	readonly openingBelowSeam?: number;
	/** Of the widest panel, as the three figures below it. */
	readonly panelAngle: number;
	readonly panelCutArea: number;
	readonly panelWaistCutLength: number;
	readonly panelHemCutLength: number;
	/** How much shorter the cut waist edge is than its stitch line, all round: why it is clipped. */
	readonly waistClip: number;
	/** The hip below the waist seam, where its depth is known. */
	readonly hipDepth?: number;
	/** Girth at hip depth, where both are known. */
	readonly girthAtHip?: number;
	readonly liningSweepAngle?: number;
	readonly liningWaistRadius?: number;
	readonly liningHemRadius?: number;
	/** Where there is a lining and the hip is known. */
	readonly liningOpeningBelowSeam?: number;
}

/** All that is told about one skirt, of whatever style. */
export interface DraftOf<Chosen, Told, Back, Who = Body> {
	readonly unit: 'mm';
	readonly body: Who;
	readonly skirt: Chosen;
	readonly figures: Told;
	readonly pieces: readonly Piece[];
	readonly seams: readonly Seam[];
	readonly checks: readonly Back[];
}
export interface Draft extends DraftOf<Skirt, Figures, Check> {}

/** Raised whenever the same inputs may give other figures: a clearance remembers it. */
export const ENGINE = '3';

/**
 * Checked choices → everything that can be told about the skirt. Refuses a skirt that can't be cut (cuttable.ts), with
 * the ways on; what can be cut but shouldn't be is a check with severity `stop`.
 */
export function draftSkirt(body: Body, chosen: Skirt): Result<Draft> {
	const skirt = settled(chosen);
	const inTheWay = obstacles(body, skirt);
	if (inTheWay.length > 0) return refuse(...inTheWay);

	const figures = figuresOf(body, skirt);
	const places = panelPlaces(skirt, figures.sweepAngle);
	const band = bandWork(skirt, figures, places);
	const pieces = piecesOf(body, skirt, figures, places, band);
	const { zipEndBelowSeam: zipEnd, skirtLength, liningHemRadius = 0, liningWaistRadius = 0, liningOpeningBelowSeam = 0 } = figures;
	const liningLength = liningHemRadius - liningWaistRadius;
	const seams = seamsOf({
		places, pieces, skirt, band,
		open: zipEnd === undefined ? 0 : zipEnd / skirtLength,
		liningOpen: zipEnd === undefined ? 0 : Math.min(1, Math.max(zipEnd + liningBelowZip, liningOpeningBelowSeam) / liningLength)
	});
	const drafted: Drafted = { unit: 'mm', body, skirt, figures, pieces, seams };
	return ok({ ...drafted, checks: checksOf(drafted, chosen) });
}

/** What goes together whatever was asked: one panel has its seam at centre back (the check `zip-at-centre-back` says so), and what is pulled on has no underlap. */
function settled(chosen: Skirt): Skirt {
	let skirt = chosen;
	if (skirt.panels === 1 && skirt.zipAt !== 'centreBack') skirt = { ...skirt, zipAt: 'centreBack' };
	if (skirt.closure === 'none' && skirt.band.underlap !== 0) skirt = { ...skirt, band: { ...skirt.band, underlap: 0 } };
	return skirt;
}

function bandWork({ band, zipAt, closure, allowances }: FlaredSkirt, { waistSeamGirth: seam }: Figures, places: readonly PanelPlace[]): BandWork {
	if (band.kind === 'faced') return null;
	const sewn = { seam, underlap: band.underlap, zipAt, start: places[0]!.from, landmarks: landmarksOf(places) };
	return band.kind === 'contour' ? { contour: sewn } : { strip: { ...sewn, kind: band.kind, depth: band.depth, ring: closure === 'none', allowances } };
}

function piecesOf(body: Body, skirt: FlaredSkirt, figures: Figures, places: readonly PanelPlace[], work: BandWork): readonly Piece[] {
	const { allowances, band } = skirt;
	const { waistRadius, hemRadius, liningHemRadius, liningWaistRadius, liningSweepAngle } = figures;
	const size = {
		waistRadius, hemRadius, zipEnd: figures.zipEndBelowSeam,
		waistAllowance: allowances.waist, seamAllowance: allowances.seam, hemAllowance: skirt.hem
	};
	const pieces = isRing(skirt) ? [ringPiece(size, 'panel', 'shell')] : [...panelPieces(places, size, shell)];
	if (work && 'strip' in work) pieces.push(...stripPieces(work.strip));
	else if (work && band.kind === 'contour') pieces.push(...contourPieces(work.contour, contourFigures(band, body.waist + skirt.waistEase), skirt));
	pieces.push(...facingPieces(places, size, skirt));
	if (liningHemRadius === undefined || liningWaistRadius === undefined || liningSweepAngle === undefined) return pieces;
	// The slit in a lining is longer than the zip, and its end isn't notched: it is measured from the zip.
	const linings = { ...size, waistRadius: liningWaistRadius, hemRadius: liningHemRadius, zipEnd: undefined, narrowed: liningSweepAngle / figures.sweepAngle };
	if (isRing(skirt) && liningShare(skirt) === 1) pieces.push(ringPiece(linings, 'lining', 'lining'));
	else pieces.push(...panelPieces(places, linings, lining));
	return pieces;
}

/** A draft before its checks. */
export type Drafted = Omit<Draft, 'checks'>;
