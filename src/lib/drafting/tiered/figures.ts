// Every figure of a skirt in gathered tiers. Millimetres. Rectangles: arithmetic, where nothing else is named.
import type { Body } from '../body.ts';
import { elasticLength } from '../band/elastic.ts';
import { zipFigures, type ZipFigures } from '../opening.ts';
import { openingThroughRings } from '../ring-opening.ts';
import type { TieredSkirt } from './skirt.ts';

export interface TierFigures {
	/** 1 at the waist. */
	readonly tier: number;
	/** Finished, from join to join, or to the hem fold. */
	readonly length: number;
	readonly ratio: number;
	/** Of its top edge, flat, before gathering; its lower edge is as long. */
	readonly girth: number;
	/** The girth of the seam that it is gathered into. */
	readonly gatheredInto: number;
	/** How much length the gathers take up in that seam. */
	readonly gathered: number;
	/** It is joined from this many equal strips. */
	readonly strips: number;
	/** From seam to seam. */
	readonly stripLength: number;
	readonly stripCutLength: number;
	readonly cutDepth: number;
	/** Cloth along the selvedge: the strips lie across the cloth, one under another. */
	readonly clothLength: number;
}

export interface TieredFigures extends Partial<ZipFigures> {
	readonly waistSeamGirth: number;
	/** Below the band. */
	readonly skirtLength: number;
	readonly tiers: readonly TierFigures[];
	readonly hemSweep: number;
	readonly bandCutLength: number;
	readonly bandCutDepth: number;
	/** 0 under elastic, and where the hip is not known; the whole length where no opening lets the hip through. */
	readonly openingBelowSeam?: number;
	/** For all tiers, without the band. */
	readonly clothLength: number;
	/** Girth of the tier that lies at hip depth, where both are known. */
	readonly girthAtHip?: number;
	/** To cut, its overlap included. */
	readonly elasticLength?: number;
}

export const numbers = (tiers: number): readonly number[] => Array.from({ length: tiers }, (_, i) => i + 1);

/** Straight band: waist and ease. Elastic has to pass the hip, so its ring is as wide as the larger of the two. */
export function waistSeamOf(body: Body, skirt: TieredSkirt): number {
	const waist = body.waist + skirt.waistEase;
	return skirt.band.kind === 'elastic' && body.hip !== undefined ? Math.max(waist, body.hip + skirt.hipEase) : waist;
}

/** Equal: S/n. Growing by g: the first S/(1 + g + g² + …), each next g times it. Given: as given. */
export function tierLengths({ tiers, lengths }: TieredSkirt, skirtLength: number): readonly number[] {
	if (lengths.kind === 'given') return numbers(tiers).map((tier) => lengths.each[tier]!);
	const parts = numbers(tiers).map((tier) => (lengths.kind === 'growing' ? lengths.by ** (tier - 1) : 1));
	const whole = parts.reduce((sum, part) => sum + part, 0);
	return parts.map((part) => (skirtLength * part) / whole);
}

/** Each tier's flat girth: the seam above it times its ratio. */
export function tierGirths(seam: number, { tiers, ratios }: TieredSkirt): readonly number[] {
	let girth = seam;
	return numbers(tiers).map((tier) => (girth *= ratios[tier]!));
}

/** The tier, counted from 0, that lies at a depth below the waist seam. */
export function tierAt(lengths: readonly number[], depth: number): number {
	let end = 0;
	for (let i = 0; i < lengths.length - 1; i++) {
		end += lengths[i]!;
		if (depth <= end) return i;
	}
	return lengths.length - 1;
}

/** Of a skirt that can be cut (cuttable.ts). */
export function tieredFigures(body: Body, skirt: TieredSkirt): TieredFigures {
	const { allowances, band, tiers: count } = skirt;
	const skirtLength = skirt.length - band.depth;
	const seam = waistSeamOf(body, skirt);
	const lengths = tierLengths(skirt, skirtLength);
	const girths = tierGirths(seam, skirt);
	const tiers = numbers(count).map((tier, i): TierFigures => {
		const [length, girth, gatheredInto] = [lengths[i]!, girths[i]!, i === 0 ? seam : girths[i - 1]!];
		// As few strips as the cloth's width allows, and all alike; a billionth of slack for a girth of whole widths.
		const strips = Math.max(1, Math.ceil(girth / (skirt.clothWidth - 2 * allowances.seam) - 1e-9));
		const cutDepth = length + (i === 0 ? allowances.waist : allowances.seam) + (tier === count ? skirt.hem : allowances.seam);
		return {
			tier, length, ratio: skirt.ratios[tier]!, girth, gatheredInto, gathered: girth - gatheredInto, strips,
			stripLength: girth / strips, stripCutLength: girth / strips + 2 * allowances.seam, cutDepth, clothLength: strips * cutDepth
		};
	});
	const { hip, waistToHip } = body;
	const rings = tiers.map(({ girth, length }) => ({ girth, depth: length }));
	// Nothing is said of an opening that nobody could work out. An elastic has none.
	const opening = hip === undefined ? undefined : (openingThroughRings(seam, rings, hip + skirt.hipEase) ?? skirtLength);
	return {
		waistSeamGirth: seam,
		skirtLength,
		tiers,
		hemSweep: girths.at(-1)!,
		bandCutLength: seam + band.underlap + 2 * allowances.seam,
		bandCutDepth: 2 * band.depth + 2 * allowances.waist,
		...(opening !== undefined && { openingBelowSeam: opening }),
		...(opening !== undefined && band.kind === 'straight' && zipFigures(opening, skirt.zipSeries, skirtLength)),
		clothLength: tiers.reduce((sum, { clothLength }) => sum + clothLength, 0),
		...(hip !== undefined && waistToHip !== undefined && { girthAtHip: girths[tierAt(lengths, waistToHip)]! }),
		...(band.kind === 'elastic' && { elasticLength: elasticLength(body.waist) })
	};
}
