// As made, not as planned: what each reading on the real thing changes downstream.
import type { Draft } from '../draft.ts';
import { openingBelow, topStop, zipFor } from '../opening.ts';
import { ok, refuse, type Result } from '../result.ts';
import { isUneven } from '../skirt.ts';
import { longestIn } from './cloth.ts';
import { readingIssues, type AsMade } from './reading.ts';
import type { RescueCode } from './rescue-code.ts';
import { letsThrough } from './through.ts';

/** A waist that came out otherwise, and what follows from it. */
export interface MadeWaist {
	/** Where the number comes from; the one that was taken last counts. */
	readonly from: 'radiusDrawn' | 'waistEdgeAfterStaystitch' | 'waistSeamAfterSewing';
	readonly seam: number;
	/** How much more than planned; less than nothing where it is short. */
	readonly over: number;
	/** How much deeper than the planned allowance to sew for the planned waist; less than nothing: nearer the edge. */
	readonly sewDeeper: number;
	/** The band to cut for the seam as it is. */
	readonly bandCutLength: number;
	/** Worked in when the band that is planned goes on; 0 where the seam isn't longer. */
	readonly easeIn: number;
	/** What is missing from the seam for that band; 0 where none is. */
	readonly letOut: number;
	/** The opening it needs, the zip to buy and where it ends; absent where no hip is known. */
	readonly opening?: number;
	readonly zipLength?: number;
	readonly zipEndBelowSeam?: number;
}

export interface MadeZip {
	readonly bought: number;
	/** The least opening, and what the zip has beyond it (less than nothing where it is short); absent where no hip is known. */
	readonly needed?: number;
	readonly spare?: number;
	/** Its end below the waist seam, its top stop set as usual. */
	readonly endBelowSeam: number;
	/** The girth it lets through. */
	readonly letsThrough: number;
}

export interface HemTrim {
	readonly place: number;
	/** Where along the cut edge, from centre front. */
	readonly alongEdge: number;
	readonly distance: number;
	/** How much to cut off there. */
	readonly trim: number;
}

export interface MadeHem {
	readonly highest: number;
	readonly lowest: number;
	/** Between the highest place of the edge and the lowest. */
	readonly dip: number;
	/** The least the hem fold can be above the floor: every place has cloth for it and for its hem. */
	readonly leastAbove: number;
	readonly above: number;
	readonly cutEdgeAbove: number;
	readonly trims: readonly HemTrim[];
	readonly mostTrim: number;
}

export interface MadeCloth {
	/** Below the band, and with it. */
	readonly longestBelowBand: number;
	readonly longest: number;
	/** Longer than planned; less than nothing where it is short. */
	readonly spare: number;
}

export interface AsMadeFigures {
	/** In the order in which they are taken. */
	readonly waists: readonly MadeWaist[];
	/** The last of them; what comes after counts on it. */
	readonly waist?: MadeWaist;
	readonly zip?: MadeZip;
	readonly hem?: MadeHem;
	readonly cloth?: MadeCloth;
	/** What is needed, in the order in which it is mended. */
	readonly rescues: readonly RescueCode[];
}

/** A waist this near is as planned: 2.5 mm on double cloth is what a careful walk agrees to. mm (common practice, no source) */
export const nearWaist = 5;
/** A waist longer by this is eased into the band without a pucker. mm (common practice, no source) */
export const easesIn = 10;
/** A hem within this all round hangs level. mm (common practice, no source) */
export const nearLevel = 5;
/** Two lengths that differ by no more are the same. mm */
const slack = 1e-6;

export function asMadeOf(draft: Draft, made: AsMade): Result<AsMadeFigures> {
	const issues = readingIssues(made);
	if (issues.length > 0) return refuse(...issues);
	const waists = waistsOf(draft, made);
	const waist = waists.at(-1);
	const hem = hemOf(draft, made);
	if (hem && !hem.ok) return hem;
	const zip = zipOf(draft, made, waist?.seam ?? draft.figures.waistSeamGirth);
	const cloth = clothOf(draft, made);
	const found = { waists, ...(waist && { waist }), ...(zip && { zip }), ...(hem && { hem: hem.value }), ...(cloth && { cloth }) };
	return ok({ ...found, rescues: rescuesFor(found) });
}

function waistsOf(draft: Draft, made: AsMade): readonly MadeWaist[] {
	const { sweepAngle } = draft.figures;
	const waists: MadeWaist[] = [];
	// θ·r: circle geometry. Of an uneven waist, the radius where nothing lifts or lowers it; all of it is as much farther out.
	const { waistRadius, waistSeamGirth } = draft.figures;
	if (made.radiusDrawn !== undefined) waists.push(madeWaist(draft, 'radiusDrawn', isUneven(draft.skirt) ? waistSeamGirth + sweepAngle * (made.radiusDrawn - waistRadius) : sweepAngle * made.radiusDrawn));
	// The stitch line lies an allowance outside the cut edge, so it is θ·a longer (circle geometry).
	if (made.waistEdgeAfterStaystitch !== undefined) waists.push(madeWaist(draft, 'waistEdgeAfterStaystitch', made.waistEdgeAfterStaystitch + draft.figures.waistClip));
	if (made.waistSeamAfterSewing !== undefined) waists.push(madeWaist(draft, 'waistSeamAfterSewing', made.waistSeamAfterSewing));
	return waists;
}

function madeWaist({ body, skirt, figures }: Draft, from: MadeWaist['from'], seam: number): MadeWaist {
	const { sweepAngle, waistSeamGirth, skirtLength } = figures;
	const over = seam - waistSeamGirth;
	const opening = openingFor(body, skirt, sweepAngle, seam);
	const zip = opening === undefined ? undefined : zipFor(opening, skirt.zipSeries);
	return {
		from, seam, over,
		// A waist short by x is mended by sewing x/θ deeper (circle geometry). Not −0.
		sewDeeper: over === 0 ? 0 : -over / sweepAngle,
		bandCutLength: seam + skirt.band.underlap + 2 * skirt.allowances.seam,
		easeIn: Math.max(0, over), letOut: Math.max(0, -over),
		...(opening !== undefined && zip && { opening, zipLength: zip.length, zipEndBelowSeam: Math.min(zip.length + topStop, skirtLength) })
	};
}

function zipOf({ body, skirt, figures }: Draft, { zipBought: bought }: AsMade, seam: number): MadeZip | undefined {
	if (bought === undefined) return undefined;
	const { sweepAngle, skirtLength } = figures;
	const needed = openingFor(body, skirt, sweepAngle, seam);
	return {
		bought, ...(needed !== undefined && { needed, spare: bought - needed }),
		endBelowSeam: Math.min(bought + topStop, skirtLength), letsThrough: letsThrough(seam, sweepAngle, bought)
	};
}

const openingFor = (body: Draft['body'], skirt: Draft['skirt'], sweep: number, seam: number): number | undefined =>
	body.hip === undefined ? undefined : openingBelow(seam, sweep, body.hip + skirt.hipEase);

/**
 * The hem fold is level when it is as high above the floor everywhere; the cut edge lies the hem allowance below it. What
 * hangs lower than that is cut off; where the edge is higher there is no cloth, so the fold can't be lower than the
 * highest place and its hem.
 */
function hemOf({ skirt, figures }: Draft, { floor, hemAbove }: AsMade): Result<MadeHem> | undefined {
	if (!floor) return undefined;
	const distances = floor.map(({ distance }) => distance);
	const [highest, lowest] = [Math.max(...distances), Math.min(...distances)];
	const leastAbove = highest + skirt.hem;
	const above = hemAbove ?? leastAbove;
	if (above < leastAbove - slack) {
		return refuse({
			code: 'hem-below-cloth', path: 'asMade.hemAbove', expected: leastAbove, received: above,
			figures: { least: leastAbove, highest, hem: skirt.hem, short: leastAbove - above }
		});
	}
	const cutEdgeAbove = above - skirt.hem;
	const round = figures.sweepAngle * figures.cutHemRadius;
	const trims = floor.map(({ place, distance }) => ({ place, alongEdge: round * place, distance, trim: Math.max(0, cutEdgeAbove - distance) }));
	// Is so much to go that the skirt is gone?
	const mostTrim = cutEdgeAbove - lowest;
	const most = lowest + figures.skirtLength + skirt.hem;
	if (mostTrim >= figures.skirtLength) {
		return refuse({ code: 'hem-above-skirt', path: hemAbove === undefined ? 'asMade.floor' : 'asMade.hemAbove', expected: most, received: above, figures: { most, mostTrim, skirtLength: figures.skirtLength } });
	}
	return ok({ highest, lowest, dip: highest - lowest, leastAbove, above, cutEdgeAbove, trims, mostTrim });
}

function clothOf({ skirt, figures }: Draft, { clothAfterWashing }: AsMade): MadeCloth | undefined {
	if (!clothAfterWashing) return undefined;
	const longestBelowBand = longestIn(clothAfterWashing, figures.waistSeamGirth, skirt);
	return { longestBelowBand, longest: longestBelowBand > 0 ? longestBelowBand + skirt.band.depth : 0, spare: longestBelowBand - figures.skirtLength };
}

function rescuesFor({ waist, zip, hem, cloth }: Omit<AsMadeFigures, 'rescues'>): readonly RescueCode[] {
	const codes: RescueCode[] = [];
	if (cloth && cloth.spare < -slack) codes.push('cloth-short');
	if (waist && waist.over > easesIn + slack) codes.push(waist.from === 'radiusDrawn' ? 'waist-cut-large' : 'waist-stretched');
	if (waist && waist.over < -nearWaist - slack) codes.push('waist-cut-small');
	if (zip?.spare !== undefined && zip.spare < -slack) codes.push('zip-short');
	// A zip may end as far below as the seam leaves; longer than that it is shortened.
	if (zip && zip.endBelowSeam < zip.bought + topStop - slack) codes.push('zip-long');
	if (hem && hem.dip > nearLevel + slack) codes.push('hem-dips');
	return codes;
}
