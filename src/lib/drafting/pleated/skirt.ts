// What is to be made in knife or box pleats: the checked choices, millimetres, every default filled in.
import type { ClothKind, HemFinish, PlainBand, ZipAt } from '../skirt.ts';

/** `knife`: every pleat turned one way. `box`: two knife pleats turned away from each other, as wide on top as between. */
export type PleatKind = 'knife' | 'box';

export interface PleatedSkirt {
	readonly style: 'pleated';
	readonly kind: PleatKind;
	/** Finished length, from the band's top edge to the hem fold. */
	readonly length: number;
	readonly waistEase: number;
	/** Of the hip over the closed pleats. */
	readonly hipEase: number;
	/** 4 to 60; a box is one pleat. How far apart they lie follows: the closed girth over their number. */
	readonly pleats: number;
	/** At the hip, from a fold in to the hidden fold behind it: a knife pleat takes twice, a box four times this much cloth. */
	readonly depth: number;
	/** Sewn down along their folds from the waist to the hip, or free below the waist seam. */
	readonly stitchedTo: 'hip' | 'waist';
	readonly band: PlainBand;
	/** Hem allowance below the hem fold; a straight hem, turned up before the pleats are pressed. */
	readonly hem: number;
	readonly hemFinish: HemFinish;
	readonly zipAt: ZipAt;
	readonly zipSeries: 'cm' | 'in';
	/** Absent: woven, which the draft is for. */
	readonly clothKind?: ClothKind;
	/** Usable width, without selvedges. */
	readonly clothWidth: number;
	readonly allowances: { readonly waist: number; readonly seam: number };
}
