import type { Measurement } from './body.ts';

/** A change that clears a check: set the choice at `path` to `value` (mm, radians, a share, a count, or a word). */
export interface WayOut {
	/** Dotted path into the draft's input, such as `skirt.share`. */
	readonly path: string;
	readonly value: number | string;
	/** What else it brings, for the sentence. */
	readonly figures?: Readonly<Record<string, number>>;
}

/** Every code a check may have; `ui/wording/check.ts` has the words for each. */
export const checkCodes = [
	'seam-walk', 'hip-fit', 'hip-missing', 'hip-depth-missing', 'hip-below-hem', 'waist-over-hip',
	'pulls-on', 'casing-depth', 'elastic-fullness', 'opening', 'no-opening-needed', 'no-shop-zip', 'opening-longer-than-skirt', 'zip-longer-than-skirt', 'zip-allowance', 'zip-at-centre-back',
	'hem-surplus', 'waist-clip', 'rounding-cost', 'band-to-waist', 'stride', 'lining-shorter', 'lining-fit', 'lining-opening',
	'lengths-between', 'length-plausible', 'hem-to-floor', 'woven-cloth', 'stretch-cloth', 'readings-apart', 'slip-by-ten', 'units-mixed', 'digits-swapped'
] as const;
export type CheckCode = (typeof checkCodes)[number];

/** What the draft tells back. No prose: `ui/wording` has the sentence for each code. */
export interface Check {
	readonly code: CheckCode;
	/** `good`: looked at and right. `note`: worth knowing. `caution`: think first. `stop`: not fit to cut. */
	readonly severity: 'good' | 'note' | 'caution' | 'stop';
	/** The figures it rests on, in mm (angles in radians, shares as fractions). */
	readonly figures: Readonly<Record<string, number>>;
	/** Which seam or piece it is about, where there are several. */
	readonly about?: string;
	readonly waysOut: readonly WayOut[];
	/** Readings to take before it can be looked at. */
	readonly measure?: readonly Measurement[];
}
