// Every figure of a flared skirt in closed form (drafting by sectors: circle geometry). Millimetres and radians.
import { contourFigures } from './band/contour-figures.ts';
import { contourOpening } from './band/contour-opening.ts';
import { elasticLength } from './band/elastic.ts';
import type { Body } from './body.ts';
import type { Figures } from './draft.ts';
import { openingBelow, zipFigures } from './opening.ts';
import { sweepAngle, waistRadius } from './sweep.ts';
import { isRing, liningShare, type Band, type FlaredSkirt } from './skirt.ts';

/** The stitch line's girth: of a contour band its lower edge, of an elastic what must go over the hip. Without a hip, an elastic's is unknown and the waist's stands in. */
export function waistSeamOf(body: Body, { band, waistEase, hipEase }: FlaredSkirt): number {
	const waist = body.waist + waistEase;
	if (band.kind === 'contour') return band.lower;
	return band.kind === 'elastic' && body.hip !== undefined ? Math.max(waist, body.hip + hipEase) : waist;
}

/** How far the waist seam lies below the measured waist line. mm */
export const seamBelowWaist = ({ sits, depth }: Band): number => (sits === 'below' ? depth : sits === 'centred' ? depth / 2 : 0);

/** The angle of an arc of radius q in a panel, carried through the parallel strips of seam allowance on both sides. */
export const cutAngle = (panelAngle: number, radius: number, strip: number): number => panelAngle + 2 * Math.asin(strip / radius);

/**
 * Between two arcs and two straight edges, each moved aside by `strip`: ∫ q·cutAngle(q) dq from the inner to the outer
 * radius, with ∫ q·arcsin(s/q) dq = (q²·arcsin(s/q) + s·√(q² − s²))/2.
 */
export function cutArea(panelAngle: number, inner: number, outer: number, strip: number): number {
	const strips = (q: number): number => q * q * Math.asin(strip / q) + strip * Math.sqrt((q - strip) * (q + strip));
	return (panelAngle * (outer - inner) * (outer + inner)) / 2 + strips(outer) - strips(inner);
}

/** The widest panel's angle, and the strip of allowance along its straight edges: a ring has none. */
export function widestPanel(skirt: FlaredSkirt): { readonly angle: number; readonly strip: number } {
	const widest = skirt.panelShares ? Math.max(...skirt.panelShares) : 1 / skirt.panels;
	return { angle: sweepAngle(skirt.share) * widest, strip: isRing(skirt) ? 0 : skirt.allowances.seam };
}

/** Of a skirt that can be cut (cuttable.ts). */
export function figuresOf(body: Body, skirt: FlaredSkirt): Figures {
	const { allowances, lining, band } = skirt;
	const { hip, waistToHip } = body;
	const sweep = sweepAngle(skirt.share);
	const seam = waistSeamOf(body, skirt);
	const radius = waistRadius(seam, sweep);
	const cutWaistRadius = radius - allowances.waist;
	const skirtLength = skirt.length - band.depth;
	const hemRadius = radius + skirtLength;
	const cutHemRadius = hemRadius + skirt.hem;
	const { angle: panelAngle, strip } = widestPanel(skirt);
	const contour = band.kind === 'contour' ? contourFigures(band, body.waist + skirt.waistEase) : null;
	const hipDepth = waistToHip === undefined ? undefined : Math.max(0, waistToHip - seamBelowWaist(band));
	// Nothing is said of an opening that nobody could work out. What is pulled on has none.
	const least = (angle: number): number | undefined =>
		hip === undefined ? undefined
			: skirt.closure === 'none' ? 0
				: contour ? contourOpening(contour, { radius: seam / angle, sweep: angle, girth: hip + skirt.hipEase }) : openingBelow(seam, angle, hip + skirt.hipEase);
	const opening = least(sweep);
	const liningSweep = lining ? sweepAngle(liningShare(skirt)) : undefined;
	const liningOpening = liningSweep === undefined ? undefined : liningSweep === sweep ? opening : least(liningSweep);
	// A lining of less flare needs the longer slit, and one zip serves both.
	const needed = opening === undefined ? undefined : Math.max(opening, liningOpening ?? 0);
	return {
		sweepAngle: sweep,
		waistSeamGirth: seam,
		waistRadius: radius,
		cutWaistRadius,
		skirtLength,
		hemRadius,
		cutHemRadius,
		hemSweep: sweep * hemRadius,
		hemSurplus: 2 * sweep * skirt.hem,
		...bandFigures(skirt, seam),
		...contour,
		...(band.kind === 'elastic' && { elasticLength: elasticLength(body.waist) }),
		...(needed !== undefined && { openingBelowSeam: needed }),
		...(needed !== undefined && skirt.closure === 'zip' && zipFigures(needed, skirt.zipSeries, skirtLength)),
		panelAngle,
		panelCutArea: cutArea(panelAngle, cutWaistRadius, cutHemRadius, strip),
		panelWaistCutLength: cutWaistRadius * cutAngle(panelAngle, cutWaistRadius, strip),
		panelHemCutLength: cutHemRadius * cutAngle(panelAngle, cutHemRadius, strip),
		waistClip: sweep * allowances.waist,
		...(hipDepth !== undefined && { hipDepth }),
		...(hip !== undefined && hipDepth !== undefined && { girthAtHip: seam + sweep * Math.min(hipDepth, skirtLength) }),
		...(lining && liningSweep !== undefined && {
			liningSweepAngle: liningSweep, liningWaistRadius: seam / liningSweep, liningHemRadius: seam / liningSweep + skirtLength - lining.shorterBy,
			...(liningOpening !== undefined && { liningOpeningBelowSeam: liningOpening })
		})
	};
}

/** A strip folded along its length; a contour band is as long as its lower edge. */
function bandFigures({ band, allowances }: FlaredSkirt, seam: number): Pick<Figures, 'bandCutLength' | 'bandCutDepth'> {
	if (band.kind === 'faced') return { bandCutLength: 0, bandCutDepth: 0 };
	const sides = band.kind === 'contour' ? band.depth : 2 * band.depth;
	return { bandCutLength: seam + band.underlap + 2 * allowances.seam, bandCutDepth: sides + 2 * allowances.waist };
}
