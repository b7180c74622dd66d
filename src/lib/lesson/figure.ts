// The figures that a lesson may show in a sentence: each a pure function from the reader's draft to millimetres.
import { clipDepth, staystitchOff } from '../drafting/clip.ts';
import type { Draft } from '../drafting/draft.ts';
import { liningBelowZip, topStop } from '../drafting/opening.ts';

type Of = (draft: Draft) => number | undefined;

/** Along the selvedge: two hem radii for each half-circle panel and nothing to spare, or the band where a short skirt's is the longer. */
const clothLength = ({ figures, skirt }: Draft): number => Math.max(skirt.panels * 2 * figures.cutHemRadius, figures.bandCutLength);
const liningCutHemRadius = ({ figures, skirt }: Draft): number | undefined => add(figures.liningHemRadius, skirt.hem);
/** What isn't there stays so. */
const add = (mm: number | undefined, more: number): number | undefined => (mm === undefined ? undefined : mm + more);
const times = (by: number, mm: number | undefined): number | undefined => (mm === undefined ? undefined : by * mm);

export const figures = {
	waist: ({ body }) => body.waist,
	hip: ({ body }) => body.hip,
	/** Round the hip with its ease: what the opening must let through. */
	hipWithEase: ({ body, skirt }) => (body.hip === undefined ? undefined : body.hip + skirt.hipEase),
	waistToHip: ({ body }) => body.waistToHip,
	waistEase: ({ skirt }) => skirt.waistEase,
	hipEase: ({ skirt }) => skirt.hipEase,
	length: ({ skirt }) => skirt.length,
	bandDepth: ({ skirt }) => skirt.band.depth,
	underlap: ({ skirt }) => skirt.band.underlap,
	seamAllowance: ({ skirt }) => skirt.allowances.seam,
	waistAllowance: ({ skirt }) => skirt.allowances.waist,
	hemAllowance: ({ skirt }) => skirt.hem,
	/** One turn of a hem turned twice. */
	hemTurn: ({ skirt }) => skirt.hem / 2,
	waistSeamGirth: ({ figures }) => figures.waistSeamGirth,
	halfWaistSeam: ({ figures }) => figures.waistSeamGirth / 2,
	quarterWaistSeam: ({ figures }) => figures.waistSeamGirth / 4,
	waistRadius: ({ figures }) => figures.waistRadius,
	cutWaistRadius: ({ figures }) => figures.cutWaistRadius,
	/** A notch is snipped 5 mm deep, and never over a third of the least allowance: it stays clear of every stitch line (common practice, no source). */
	notchDepth: ({ skirt }) => Math.min(5, skirt.allowances.waist / 3, skirt.allowances.seam / 3, skirt.hem / 3),
	/** The lining's waist is tacked to the skirt's outside the stitch line, and the layers are graded (common practice, no source). */
	tackFromEdge: ({ skirt }) => (skirt.allowances.waist * 2) / 3,
	gradedLining: ({ skirt }) => skirt.allowances.waist * 0.4,
	gradedSkirt: ({ skirt }) => skirt.allowances.waist * 0.6,
	/** 6 mm from a hem's raw edge, or 1.5 mm inside the first turn's fold where that is less (common practice, no source). */
	easestitchFromEdge: ({ skirt }) => Math.min(6, skirt.hem / 2 - 1.5),
	/** From the cut edge to the staystitching. */
	staystitchFromEdge: ({ skirt }) => skirt.allowances.waist - staystitchOff,
	clipDepth: ({ skirt }) => clipDepth(skirt.allowances.waist) ?? undefined,
	/** Round the cut edge: shorter than the stitch line, since it lies inside the curve. */
	cutWaistEdge: ({ figures }) => figures.waistSeamGirth - figures.waistClip,
	waistClip: ({ figures }) => figures.waistClip,
	/** A waist line that is 10 mm short reaches it so much further out: circle geometry. */
	deeperForTen: ({ figures }) => 10 / figures.sweepAngle,
	/** What the waist would sew to if the radius were taken for the cut line. */
	waistIfMistaken: ({ figures, skirt }) => figures.waistSeamGirth + figures.sweepAngle * skirt.allowances.waist,
	skirtLength: ({ figures }) => figures.skirtLength,
	hemRadius: ({ figures }) => figures.hemRadius,
	cutHemRadius: ({ figures }) => figures.cutHemRadius,
	hemSweep: ({ figures }) => figures.hemSweep,
	/** What a hem turned twice has to ease in. */
	narrowHemSurplus: ({ figures, skirt }) => figures.sweepAngle * skirt.hem,
	cutSkirtLength: ({ figures, skirt }) => skirt.allowances.waist + figures.skirtLength + skirt.hem,
	clothLength,
	/** Across the cloth: from the cut centre-back edge to the cut hem at the fold, and beside it the strip for the band. */
	clothWidth: ({ figures, skirt }) => figures.cutHemRadius + skirt.allowances.seam + figures.bandCutDepth,
	/** A tenth more: it may shrink by 5 %, and its ends are straightened (common practice, no source). */
	clothToBuy: (draft) => 1.1 * clothLength(draft),
	/** The lining is laid as the skirt is, with no band beside it. */
	liningClothLength: (draft) => times(2, liningCutHemRadius(draft)),
	liningClothWidth: (draft) => add(liningCutHemRadius(draft), draft.skirt.allowances.seam),
	liningClothToBuy: (draft) => times(2.2, liningCutHemRadius(draft)),
	bandCutLength: ({ figures }) => figures.bandCutLength,
	bandCutDepth: ({ figures }) => figures.bandCutDepth,
	/** Of a casing: the elastic it takes, and what that is cut to. */
	elasticWidth: ({ skirt }) => (skirt.band.kind === 'elastic' ? skirt.band.elastic : undefined),
	elasticLength: ({ figures }) => figures.elasticLength,
	/** Half a casing's depth, where its fold is pressed. */
	foldedCasing: ({ figures }) => figures.bandCutDepth / 2,
	/** One panel's waist seam. */
	panelWaistSeam: ({ figures, skirt }) => figures.waistSeamGirth / skirt.panels,
	openingBelowSeam: ({ figures }) => figures.openingBelowSeam,
	zipLength: ({ figures }) => figures.zipLength,
	/** From the waist line down to the zip's top stop. */
	topStop: () => topStop,
	zipEndBelowSeam: ({ figures }) => figures.zipEndBelowSeam,
	/** The lining's opening ends below the zip's, or lower where it must; unknown where the zip's end is. */
	liningOpening: ({ figures }) => (figures.zipEndBelowSeam === undefined ? undefined : Math.max(figures.zipEndBelowSeam + liningBelowZip, figures.liningOpeningBelowSeam ?? 0)),
	liningShorterBy: ({ skirt }) => skirt.lining?.shorterBy,
	liningHemRadius: ({ figures }) => figures.liningHemRadius,
	liningCutHemRadius
} satisfies Record<string, Of>;

export type FigureName = keyof typeof figures;

/** In mm, or undefined where the draft doesn't have it (no hip read, no lining). */
export const figureOf = (name: string, draft: Draft): number | undefined => (figures as Record<string, Of>)[name]?.(draft);
