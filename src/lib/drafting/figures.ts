// Every figure of a flared skirt in closed form (drafting by sectors: circle geometry). Millimetres and radians.
import { contourFigures } from './band/contour-figures.ts';
import { contourOpening } from './band/contour-opening.ts';
import { elasticLength } from './band/elastic.ts';
import type { Body } from './body.ts';
import type { Figures } from './draft.ts';
import { openingBelow, zipFigures } from './opening.ts';
import { isLevelWaist, zipPlace, type Profile } from './profile.ts';
import { roundOpening } from './round-opening.ts';
import { sweepAngle, waistRadius } from './sweep.ts';
import { isRing, liningShare, type Band, type FlaredSkirt } from './skirt.ts';
import { unevenOf, type Profiles, type Uneven } from './uneven.ts';
import { waistSeamOf } from './waist-seam.ts';

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
export function figuresOf(body: Body, skirt: FlaredSkirt, profiles: Profiles | null): Figures {
	const { allowances, lining, band } = skirt;
	const { hip, waistToHip } = body;
	const sweep = sweepAngle(skirt.share);
	const seam = waistSeamOf(body, skirt);
	const uneven = profiles && unevenOf(skirt, profiles.shell);
	const radius = uneven ? uneven.profile.base : waistRadius(seam, sweep);
	const cutWaistRadius = radius - allowances.waist;
	const skirtLength = uneven ? uneven.skirtLength : skirt.length - band.depth;
	const hemRadius = radius + skirtLength;
	const cutHemRadius = hemRadius + skirt.hem;
	const { angle: panelAngle, strip } = widestPanel(skirt);
	const contour = band.kind === 'contour' ? contourFigures(band, body.waist + skirt.waistEase) : null;
	const hipDepth = waistToHip === undefined ? undefined : Math.max(0, waistToHip - seamBelowWaist(band));
	// Nothing is said of an opening that nobody could work out. What is pulled on has none.
	const least = (angle: number, profile: Profile | null | undefined): number | undefined => {
		if (hip === undefined) return undefined;
		if (skirt.closure === 'none') return 0;
		const girth = hip + skirt.hipEase;
		const level = contour ? contourOpening(contour, { radius: seam / angle, sweep: angle, girth }) : openingBelow(seam, angle, girth);
		if (!profile || isLevelWaist(skirt)) return level;
		// Above an uneven waist a contour band's string is taken as above a level one, or as without the band: the longer.
		const round = roundOpening(profile, { seam, at: zipPlace(skirt), girth });
		return contour ? Math.max(level, round) : round;
	};
	const opening = least(sweep, profiles?.shell);
	const liningSweep = lining ? sweepAngle(liningShare(skirt)) : undefined;
	const liningOpening = liningSweep === undefined ? undefined : liningSweep === sweep ? opening : least(liningSweep, profiles?.lining);
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
		...uneven?.told,
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
		...(hip !== undefined && hipDepth !== undefined && { girthAtHip: uneven ? girthAt(uneven, sweep, hipDepth) : seam + sweep * Math.min(hipDepth, skirtLength) }),
		...(lining && liningSweep !== undefined && {
			liningSweepAngle: liningSweep, ...liningRadii(profiles?.lining?.base ?? seam / liningSweep, skirtLength - lining.shorterBy),
			...(liningOpening !== undefined && { liningOpeningBelowSeam: liningOpening })
		})
	};
}

/** Level with the hip the cloth is an arc about the corner, as far below the waist at the sides as the hip is. */
const girthAt = ({ profile, told }: Uneven, sweep: number, depth: number): number => sweep * (profile.base + Math.min(depth, told.shortestLength ?? 0));

const liningRadii = (radius: number, length: number): Pick<Figures, 'liningWaistRadius' | 'liningHemRadius'> => ({ liningWaistRadius: radius, liningHemRadius: radius + length });

/** A strip folded along its length; a contour band is as long as its lower edge. */
function bandFigures({ band, allowances }: FlaredSkirt, seam: number): Pick<Figures, 'bandCutLength' | 'bandCutDepth'> {
	if (band.kind === 'faced') return { bandCutLength: 0, bandCutDepth: 0 };
	const sides = band.kind === 'contour' ? band.depth : 2 * band.depth;
	return { bandCutLength: seam + band.underlap + 2 * allowances.seam, bandCutDepth: sides + 2 * allowances.waist };
}
