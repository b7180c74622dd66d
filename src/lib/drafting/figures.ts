// Every figure of a flared skirt in closed form (drafting by sectors: circle geometry). Millimetres and radians.
import type { Body } from './body.ts';
import type { Figures } from './draft.ts';
import { openingBelow, topStop, zipFor } from './opening.ts';
import type { FlaredSkirt } from './skirt.ts';

/** The whole sweep at the stitch lines for a share of a full circle. */
export const sweepAngle = (share: number): number => 2 * Math.PI * share;
export const waistRadius = (seam: number, sweep: number): number => seam / sweep;

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

/** Of a skirt that can be cut (cuttable.ts). */
export function figuresOf(body: Body, skirt: FlaredSkirt): Figures {
	const { allowances, lining } = skirt;
	const sweep = sweepAngle(skirt.share);
	const seam = body.waist + skirt.waistEase;
	const radius = waistRadius(seam, sweep);
	const cutWaistRadius = radius - allowances.waist;
	const skirtLength = skirt.length - skirt.band.depth;
	const hemRadius = radius + skirtLength;
	const cutHemRadius = hemRadius + skirt.hem;
	const panelAngle = sweep / skirt.panels;
	const { hip, waistToHip } = body;
	// Nothing is said of an opening that nobody could work out.
	const opening = hip === undefined ? undefined : openingBelow(seam, sweep, hip + skirt.hipEase);
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
		bandCutLength: seam + skirt.band.underlap + 2 * allowances.seam,
		bandCutDepth: 2 * skirt.band.depth + 2 * allowances.waist,
		...(opening !== undefined && openingFigures(opening, skirt.zipSeries, skirtLength)),
		panelAngle,
		panelCutArea: cutArea(panelAngle, cutWaistRadius, cutHemRadius, allowances.seam),
		panelWaistCutLength: cutWaistRadius * cutAngle(panelAngle, cutWaistRadius, allowances.seam),
		panelHemCutLength: cutHemRadius * cutAngle(panelAngle, cutHemRadius, allowances.seam),
		waistClip: sweep * allowances.waist,
		...(hip !== undefined && waistToHip !== undefined && { girthAtHip: seam + sweep * Math.min(waistToHip, skirtLength) }),
		...(lining && { liningHemRadius: hemRadius - lining.shorterBy, ...(opening !== undefined && { liningOpeningBelowSeam: opening }) })
	};
}

type OpeningFigures = Required<Pick<Figures, 'openingBelowSeam' | 'zipLength' | 'zipEndBelowSeam'>>;
function openingFigures(openingBelowSeam: number, series: FlaredSkirt['zipSeries'], skirtLength: number): OpeningFigures {
	const { length } = zipFor(openingBelowSeam, series);
	return { openingBelowSeam, zipLength: length, zipEndBelowSeam: Math.min(length + topStop, skirtLength) };
}
