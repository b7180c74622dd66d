import type { Body } from './body.ts';
import type { Check } from './check.ts';
import type { Piece } from './piece.ts';
import type { Seam } from './seam.ts';
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
	/** The least opening below the waist seam that lets the hip through; 0 when no hip is known or none is needed. */
	readonly openingBelowSeam: number;
	/** The zip to buy: the least shop length that is not under the opening. */
	readonly zipLength: number;
	/** Where the seam starts below the waist line: the zip's bottom stop. */
	readonly zipEndBelowSeam: number;
	readonly panelAngle: number;
	readonly panelCutArea: number;
	readonly panelWaistCutLength: number;
	readonly panelHemCutLength: number;
	/** How much shorter the cut waist edge is than its stitch line, all round: why it is clipped. */
	readonly waistClip: number;
	/** Girth at hip depth, where both are known. */
	readonly girthAtHip?: number;
	readonly liningHemRadius?: number;
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
export const ENGINE = '1';
