import type { Outline } from './geometry/outline.ts';
import type { Point } from './geometry/point.ts';

/** A mark across the cut line that meets its partner on the edge sewn to it. `at` is 0…1 along the stitch edge. */
export interface Notch {
	readonly edge: string;
	readonly at: number;
	/** Single in front, double at the back (common practice, no source). */
	readonly kind: 'single' | 'double';
	/** What it marks, in the trade's words: `centre front`, `zip end`. */
	readonly marks: string;
	/** Only on this copy of the piece (1…count); absent: on every copy. */
	readonly copy?: number;
}

/** A line drawn on the piece and not cut or sewn along: where it is folded, or where its seam line ends. */
export interface InnerLine {
	readonly name: string;
	readonly from: Point;
	readonly to: Point;
}

/**
 * One shape of cloth. Skirt and lining panels have the sector's centre at the origin and their middle along +x,
 * so the waist is the inner arc; a band lies along +x. Outlines are whole (unfolded). Right side up, a skirt's panels
 * follow one another counterclockwise from centre front to the wearer's left, centre back and right.
 */
export interface Piece {
	/** Skirt panels begin with `panel`, `front` or `back`; linings with `lining`; bands with `band`. */
	readonly name: string;
	readonly cloth: 'shell' | 'lining' | 'interfacing';
	readonly count: number;
	/** The line of symmetry to lay on a fold of the cloth, if the piece is cut on one. */
	readonly fold: { readonly name: string; readonly from: Point; readonly to: Point } | null;
	/** The straight grain, a line inside the piece. */
	readonly grain: { readonly from: Point; readonly to: Point };
	/** Edge by edge in the same order and with the same names in both outlines. */
	readonly stitch: Outline;
	readonly cut: Outline;
	/** A hole inside the outlines, clockwise: the waist of a ring. */
	readonly hole?: { readonly stitch: Outline; readonly cut: Outline };
	readonly notches: readonly Notch[];
	readonly lines?: readonly InnerLine[];
}
