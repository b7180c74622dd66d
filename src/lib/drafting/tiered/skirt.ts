// What is to be made, gathered tier under gathered tier: the checked choices, millimetres, every default filled in.
import type { ClothKind, ElasticBand, HemFinish, PlainBand, ZipAt } from '../skirt.ts';

/** Tiers are counted from 1 at the waist; keyed by that number, so that a path such as `ratios.2` names a tier as a person would. */
export type PerTier = Readonly<Record<string, number>>;

/** A separate strip folded over elastic, a closed ring: nothing opens. */
export type ElasticCasing = Omit<ElasticBand, 'sits'>;

/** How the length below the band is shared over the tiers. */
export type TierLengths =
	| { readonly kind: 'equal' }
	/** Each tier `by` times as long as the one above it. */
	| { readonly kind: 'growing'; readonly by: number }
	| { readonly kind: 'given'; readonly each: PerTier };

/** How much gathering a cloth lies well under. */
export type ClothWeight = 'light' | 'medium' | 'heavy';

export interface TieredSkirt {
	readonly style: 'tiered';
	/** Finished length, from the band's top edge to the hem fold. */
	readonly length: number;
	readonly waistEase: number;
	readonly hipEase: number;
	/** 1 to 6. */
	readonly tiers: number;
	readonly lengths: TierLengths;
	/** Each tier's top edge over what it is gathered into: 1 to 3 for the first, 1.2 to 3 for the others. */
	readonly ratios: PerTier;
	readonly band: PlainBand | ElasticCasing;
	/** Hem allowance below the hem fold. The hem is straight, so it turns up without easing. */
	readonly hem: number;
	readonly hemFinish: HemFinish;
	/** Where every tier has a join, and the zip lies under a straight band. */
	readonly zipAt: ZipAt;
	readonly zipSeries: 'cm' | 'in';
	readonly cloth: ClothWeight;
	/** Absent: woven, which the draft is for. */
	readonly clothKind?: ClothKind;
	/** Usable width, without selvedges. */
	readonly clothWidth: number;
	/** `seam` is also that of the joins between tiers. */
	readonly allowances: { readonly waist: number; readonly seam: number };
}
