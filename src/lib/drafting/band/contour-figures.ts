// A contour band's angle and radii, apart from its pieces: a page that works out figures carries no outlines.
import type { ContourBand } from '../skirt.ts';

export interface ContourFigures {
	/** Of the sewn part, radians. */
	readonly bandAngle: number;
	/** To the top edge and to the waist seam, mm. */
	readonly bandTopRadius: number;
	readonly bandLowRadius: number;
}

/** A cone's strip, laid flat: the girths are arcs of one angle, a depth apart (circle geometry). `top` is below `lower`. */
export function contourFigures({ depth, lower }: ContourBand, top: number): ContourFigures {
	const bandAngle = (lower - top) / depth;
	const bandTopRadius = top / bandAngle;
	return { bandAngle, bandTopRadius, bandLowRadius: bandTopRadius + depth };
}

/** Its angle with the underlap, measured along the waist seam, and the strips at its ends where they are widest: along the cut top. */
export const contourTurn = (figures: ContourFigures, underlap: number, strip: number, topAllowance: number): number =>
	figures.bandAngle + underlap / figures.bandLowRadius + 2 * Math.asin(Math.min(1, strip / (figures.bandTopRadius - topAllowance)));
