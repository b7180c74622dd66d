import type { Body } from './body.ts';
import { contourFigures } from './band/contour-figures.ts';
import { contourPieces } from './band/contour.ts';
import { stripPieces } from './band/strip.ts';
import type { Check } from './check.ts';
import { checksOf } from './checks/all.ts';
import { plainObstacles } from './cuttable.ts';
import { figuresOf } from './figures.ts';
import { layerPieces, layersOf, type Layer } from './layer.ts';
import { measuredFigures } from './measured.ts';
import { liningBelowZip, type ZipFigures } from './opening.ts';
import { landmarksOf, type PanelPlace } from './panel.ts';
import type { Piece } from './piece.ts';
import { ok, refuse, type Result } from './result.ts';
import type { Seam } from './seam.ts';
import { seamsOf, type BandWork } from './seams.ts';
import type { FlaredSkirt, Skirt } from './skirt.ts';
import { trialObstacles } from './trial.ts';
import { profilesOf } from './uneven.ts';

/** Every figure of a flared skirt, unrounded; lengths mm, angles radians, areas mm². */
export interface Figures extends Partial<ZipFigures> {
	readonly sweepAngle: number;
	readonly waistSeamGirth: number;
	/** Of a waist that is no arc about the corner, where nothing lifts or lowers it, as the cut radius. */
	readonly waistRadius: number;
	readonly cutWaistRadius: number;
	/** Below the band; where lengths differ, along the seam with the zip. */
	readonly skirtLength: number;
	/** To the hem fold. Of a hem that is no arc about the corner, what an even one as long round would have. */
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
	/** Where lengths differ or the waist dips: below the band, as it is cut, at the centres and the sides; and wherever it is least and greatest. */
	readonly lengthFront?: number;
	readonly lengthSideLeft?: number;
	readonly lengthSideRight?: number;
	readonly lengthBack?: number;
	readonly shortestLength?: number;
	readonly longestLength?: number;
	/** From the corner to the waist seam and to the hem fold, likewise. */
	readonly waistRadiusFront?: number;
	readonly waistRadiusSideLeft?: number;
	readonly waistRadiusSideRight?: number;
	readonly waistRadiusBack?: number;
	readonly hemRadiusFront?: number;
	readonly hemRadiusSideLeft?: number;
	readonly hemRadiusSideRight?: number;
	readonly hemRadiusBack?: number;
	/** Of the widest panel (of an uneven skirt, of the one with the most cloth), as the three figures below it. */
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
	const inTheWay = plainObstacles(body, skirt);
	if (inTheWay.length > 0) return refuse(...inTheWay);
	const profiles = profilesOf(body, skirt);
	if (profiles === 'steep') return refuse(...trialObstacles(body, skirt));

	const planned = figuresOf(body, skirt, profiles);
	const layers = layersOf(skirt, planned, profiles);
	const drawn = drawnLayers(layers);
	if (!drawn) return refuse(...trialObstacles(body, skirt));
	const { places } = layers[0]!;
	const band = bandWork(skirt, planned, places);
	const pieces = [...drawn[0]!, ...bandPieces(body, skirt, band), ...drawn.slice(1).flat()];
	const figures = profiles ? { ...planned, ...measuredFigures(layers, drawn, planned) } : planned;
	const { zipEndBelowSeam: zipEnd, skirtLength, liningOpeningBelowSeam = 0 } = figures;
	const liningLength = skirtLength - (skirt.lining?.shorterBy ?? 0);
	const seams = seamsOf({
		places, pieces, skirt, band,
		open: zipEnd === undefined ? 0 : zipEnd / skirtLength,
		liningOpen: zipEnd === undefined ? 0 : Math.min(1, Math.max(zipEnd + liningBelowZip, liningOpeningBelowSeam) / liningLength)
	});
	const drafted: Drafted = { unit: 'mm', body, skirt, figures, pieces, seams };
	return ok({ ...drafted, checks: checksOf(drafted, chosen) });
}

/** Each layer's pieces; null where one has no cut line, which for an even skirt with mitred corners is our own bug: plainObstacles says there is room. */
function drawnLayers(layers: readonly Layer[]): readonly (readonly Piece[])[] | null {
	const drawn: (readonly Piece[])[] = [];
	for (const layer of layers) {
		const pieces = layerPieces(layer);
		if (!pieces && !layer.size.shape && !layer.size.foldedBack) throw new Error(`no cut line round a panel of radius ${layer.size.waistRadius} with allowances ${layer.size.waistAllowance} and ${layer.size.seamAllowance}`);
		if (!pieces) return null;
		drawn.push(pieces);
	}
	return drawn;
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

function bandPieces(body: Body, skirt: FlaredSkirt, work: BandWork): readonly Piece[] {
	if (work && 'strip' in work) return stripPieces(work.strip);
	return work && skirt.band.kind === 'contour' ? contourPieces(work.contour, contourFigures(skirt.band, body.waist + skirt.waistEase), skirt) : [];
}

/** A draft before its checks. */
export type Drafted = Omit<Draft, 'checks'>;
