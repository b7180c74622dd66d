// Every figure of a pleated skirt. Millimetres, angles radians. Folding: folding.ts; the rest is arithmetic.
import type { Body } from '../body.ts';
import { zipFigures, type ZipFigures } from '../opening.ts';
import { openingThroughRings } from '../ring-opening.ts';
import { fold, mostLayers, type Folded, type Folding } from './folding.ts';
import { openingStitched } from './opening.ts';
import type { PleatedSkirt } from './skirt.ts';

export interface PleatedFigures extends ZipFigures {
	readonly waistSeamGirth: number;
	/** Closed: hip and its ease. */
	readonly hipGirth: number;
	/** Below the waist seam, where the taper ends. */
	readonly hipDepth: number;
	/** Below the band. */
	readonly skirtLength: number;
	readonly spacingAtHip: number;
	readonly spacingAtWaist: number;
	readonly depthAtHip: number;
	readonly depthAtWaist: number;
	/** What each pleat takes more at the waist than at the hip; negative where it takes less. */
	readonly taper: number;
	/** How far each line leans from the hip to the waist, and its angle off the grain. */
	readonly lean: number;
	readonly leanAngle: number;
	/** One pleat's cloth, hidden fold to hidden fold. */
	readonly repeat: number;
	/** All pleats laid flat, without seam allowances: the waist edge before folding, and the hem. */
	readonly flatWidth: number;
	readonly hemSweep: number;
	/** Cloth over band, and the most layers on one another, the face counted. */
	readonly meanLayers: number;
	readonly mostLayersAtWaist: number;
	readonly mostLayersAtHip: number;
	readonly panels: number;
	/** Pleats in the wider panels, how many of those there are; the others have one pleat less. */
	readonly pleatsInPanel: number;
	readonly widePanels: number;
	/** How far an under layer's waist edge runs out of the face's when folded along its leaning line. */
	readonly waistStep: number;
	readonly bandCutLength: number;
	readonly bandCutDepth: number;
	readonly openingBelowSeam: number;
	readonly panelCutDepth: number;
	/** Along the selvedge, one panel to a width, without the band. */
	readonly clothLength: number;
}

/** The body that pleats are folded for: its hip and hip depth are known (cuttable.ts). */
export type KnownBody = Body & Required<Pick<Body, 'waist' | 'hip' | 'waistToHip'>>;

export const foldingOf = (body: KnownBody, { kind, pleats, depth, waistEase, hipEase }: PleatedSkirt): Folding =>
	({ kind, pleats, depth, waist: body.waist + waistEase, hip: body.hip + hipEase });

/** Panels of whole pleats, as few as the cloth's width allows and as alike as may be; a billionth of slack for exact widths. */
export function panelsOf({ clothWidth, pleats, allowances }: PleatedSkirt, { repeat }: Folded): { readonly panels: number; readonly most: number; readonly wide: number } {
	const inWidth = Math.max(1, Math.floor((clothWidth - 2 * allowances.seam) / repeat + 1e-9));
	const panels = Math.ceil(pleats / inWidth);
	const most = Math.ceil(pleats / panels);
	// With `most` pleats in all of them there would be this many too many.
	return { panels, most, wide: panels - (most * panels - pleats) };
}

/** Of a skirt that can be cut. */
export function pleatedFigures(body: KnownBody, skirt: PleatedSkirt): PleatedFigures {
	const { allowances, band, kind, depth } = skirt;
	const folding = foldingOf(body, skirt);
	const { waist, hip } = folding;
	const folded = fold(folding);
	const { flatWidth, lean, depthAtWaist, spacingAtHip, spacingAtWaist } = folded;
	const skirtLength = skirt.length - band.depth;
	const { panels, most, wide } = panelsOf(skirt, folded);
	const leanAngle = Math.atan(Math.abs(lean) / body.waistToHip);
	const openingBelowSeam = skirt.stitchedTo === 'hip'
		? openingStitched(waist, hip, body.waistToHip, flatWidth)
		: openingThroughRings(waist, [{ girth: flatWidth, depth: skirtLength }], hip)!;
	const panelCutDepth = skirtLength + allowances.waist + skirt.hem;
	return {
		waistSeamGirth: waist,
		hipGirth: hip,
		hipDepth: body.waistToHip,
		skirtLength,
		spacingAtHip,
		spacingAtWaist,
		depthAtHip: depth,
		depthAtWaist,
		taper: folded.taper,
		lean,
		leanAngle,
		repeat: folded.repeat,
		flatWidth,
		hemSweep: flatWidth,
		meanLayers: flatWidth / waist,
		mostLayersAtWaist: mostLayers(kind, depthAtWaist, spacingAtWaist),
		mostLayersAtHip: mostLayers(kind, depth, spacingAtHip),
		panels,
		pleatsInPanel: most,
		widePanels: wide,
		// Folded along a line α off the grain, the layer behind is turned by 2α against the face.
		waistStep: depthAtWaist * Math.sin(2 * leanAngle),
		bandCutLength: waist + band.underlap + 2 * allowances.seam,
		bandCutDepth: 2 * band.depth + 2 * allowances.waist,
		openingBelowSeam,
		...zipFigures(openingBelowSeam, skirt.zipSeries, skirtLength),
		panelCutDepth,
		clothLength: panels * panelCutDepth
	};
}
