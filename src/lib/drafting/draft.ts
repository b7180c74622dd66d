import type { Body } from './body.ts';
import { bandPieces } from './band.ts';
import type { Check } from './check.ts';
import { checksOf } from './checks/all.ts';
import { obstacles } from './cuttable.ts';
import { figuresOf } from './figures.ts';
import { panelPieces, panelPlaces } from './panel.ts';
import type { Piece } from './piece.ts';
import { ok, refuse, type Result } from './result.ts';
import type { Seam } from './seam.ts';
import { seamsOf } from './seams.ts';
import type { Skirt } from './skirt.ts';

/** Every figure of a flared skirt, unrounded; lengths mm, angles radians, areas mm². */
export interface Figures {
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
	readonly bandCutLength: number;
	readonly bandCutDepth: number;
	/** The least opening below the waist seam that lets the hip through; 0 when none is needed. Absent, as all three are, without a hip. */
	readonly openingBelowSeam?: number;
	/** The zip to buy: the least shop length that is not under the opening. */
	readonly zipLength?: number;
	/** Where the seam starts below the waist line: the zip's bottom stop, its length and the top stop's 5 mm down, or the hem fold if that comes first. */
	readonly zipEndBelowSeam?: number;
	readonly panelAngle: number;
	readonly panelCutArea: number;
	readonly panelWaistCutLength: number;
	readonly panelHemCutLength: number;
	/** How much shorter the cut waist edge is than its stitch line, all round: why it is clipped. */
	readonly waistClip: number;
	/** Girth at hip depth, where both are known. */
	readonly girthAtHip?: number;
	readonly liningHemRadius?: number;
	/** Where there is a lining and the hip is known. */
	readonly liningOpeningBelowSeam?: number;
}

export interface Draft {
	readonly unit: 'mm';
	readonly body: Body;
	readonly skirt: Skirt;
	readonly figures: Figures;
	readonly pieces: readonly Piece[];
	readonly seams: readonly Seam[];
	readonly checks: readonly Check[];
}

/** Raised whenever the same inputs may give other figures: a clearance remembers it. */
export const ENGINE = '2';

/**
 * Checked choices → everything that can be told about the skirt. Refuses a skirt that can't be cut (cuttable.ts), with
 * the ways on; what can be cut but shouldn't be is a check with severity `stop`.
 */
export function draftSkirt(body: Body, chosen: Skirt): Result<Draft> {
	// One panel has one seam, and it lies at centre back; the check `zip-at-centre-back` says so.
	const skirt: Skirt = chosen.panels === 1 && chosen.zipAt !== 'centreBack' ? { ...chosen, zipAt: 'centreBack' } : chosen;
	const inTheWay = obstacles(body, skirt);
	if (inTheWay.length > 0) return refuse(...inTheWay);

	const figures = figuresOf(body, skirt);
	const places = panelPlaces(skirt, figures.sweepAngle);
	const size = {
		waistRadius: figures.waistRadius, hemRadius: figures.hemRadius, zipEnd: figures.zipEndBelowSeam,
		waistAllowance: skirt.allowances.waist, seamAllowance: skirt.allowances.seam, hemAllowance: skirt.hem
	};
	const pieces = [...panelPieces(places, size, 'shell'), ...bandPieces(places, figures.waistSeamGirth, skirt)];
	// The slit in a lining is longer than the zip, and its end isn't notched: it is measured from the zip.
	if (figures.liningHemRadius !== undefined) pieces.push(...panelPieces(places, { ...size, hemRadius: figures.liningHemRadius, zipEnd: undefined }, 'lining'));
	const seams = seamsOf({
		places, pieces, skirt, waistSeam: figures.waistSeamGirth, zipEnd: figures.zipEndBelowSeam, liningOpening: figures.liningOpeningBelowSeam
	});
	const drafted: Drafted = { unit: 'mm', body, skirt, figures, pieces, seams };
	return ok({ ...drafted, checks: checksOf(drafted, chosen) });
}

/** A draft before its checks. */
export type Drafted = Omit<Draft, 'checks'>;
