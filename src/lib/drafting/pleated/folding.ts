// The arithmetic of folding: what a pleat takes, and where its lines lie on the flat cloth. Millimetres.
import type { PleatKind } from './skirt.ts';

/** How often a pleat folds back on itself: a knife pleat has one pair of folds, a box two. */
export const pairs: Readonly<Record<PleatKind, number>> = { knife: 1, box: 2 };

export interface Folding {
	readonly kind: PleatKind;
	readonly pleats: number;
	/** At the hip. */
	readonly depth: number;
	/** Closed girths: what is seen when the pleats lie folded. */
	readonly waist: number;
	readonly hip: number;
}

export interface Folded {
	/** From a pleat to the next, closed: girth / pleats. */
	readonly spacingAtHip: number;
	readonly spacingAtWaist: number;
	/** What each pleat takes more at the waist than at the hip: (hip − waist) / pleats. Less where the waist is the larger. */
	readonly taper: number;
	/** How far each fold and placement line leans from the hip to the waist: a pair takes taper / pairs, half on each line. */
	readonly lean: number;
	/** A pair takes 2 × depth at the hip and 2 × lean more at the waist, and its hidden fold lies midway: depth + lean. */
	readonly depthAtWaist: number;
	/** The cloth of one pleat, hidden fold to hidden fold: what is seen, and a depth in and out again for every pair. */
	readonly repeat: number;
	/** Of all pleats: H + 2nd for knife, H + 4nd for box pleats. The same from hip to hem. */
	readonly flatWidth: number;
}

export function fold({ kind, pleats, depth, waist, hip }: Folding): Folded {
	const taper = (hip - waist) / pleats;
	const lean = taper / pairs[kind] / 2;
	const repeat = hip / pleats + 2 * pairs[kind] * depth;
	return { spacingAtHip: hip / pleats, spacingAtWaist: waist / pleats, taper, lean, depthAtWaist: depth + lean, repeat, flatWidth: pleats * repeat };
}

/** A line down the skirt: straight from the waist to the hip, and along the grain from there to the hem. */
export interface Crease {
	/** A `fold` is brought onto a `placement`; the `inner` fold is hidden behind. */
	readonly kind: 'fold' | 'placement' | 'inner';
	/** From the start of its pleat's repeat. */
	readonly hip: number;
	readonly waist: number;
}

/**
 * The lines of one repeat, from a hidden fold to a hidden fold.
 * Knife: in by a depth to the placement line, what is seen (s), the fold, and in by a depth again.
 * Box: the same twice with s/2, the second the other way about: what lies between two boxes is bounded by placement lines,
 * the box itself by folds.
 */
export function creases({ kind, depth }: Folding, { spacingAtHip, lean, repeat }: Folded): readonly Crease[] {
	const line = (of: Crease['kind'], hip: number, leans: number): Crease => ({ kind: of, hip, waist: hip + leans });
	const seen = spacingAtHip / pairs[kind];
	// Folds and placement lines lean towards each other over what is seen, which is narrower at the waist.
	const first = (of: Crease['kind'], second: Crease['kind'], start: number): readonly Crease[] =>
		[line(of, start + depth, lean), line(second, start + depth + seen, -lean), line('inner', start + 2 * depth + seen, 0)];
	if (kind === 'knife') return first('placement', 'fold', 0);
	return [...first('placement', 'placement', 0), ...first('fold', 'fold', repeat / 2)];
}

/** Where what is seen begins and ends at the waist, in one repeat. */
export function seenAtWaist(lines: readonly Crease[]): readonly (readonly [from: number, to: number])[] {
	const edges = lines.filter(({ kind }) => kind !== 'inner');
	return Array.from({ length: edges.length / 2 }, (_, i) => [edges[2 * i]!.waist, edges[2 * i + 1]!.waist] as const);
}

/**
 * The most layers of cloth that lie on one another, for pleats of this depth and spacing: what is seen, and two more for
 * every pleat behind it. A knife pleat reaches behind as many others as its depth has spacings. The two halves of a box
 * reach in from both its folds: each behind depth/spacing boxes, and once more for what is left over, both of them where
 * twice that is more than the box is wide.
 */
export function mostLayers(kind: PleatKind, depth: number, spacing: number): number {
	const whole = Math.floor(depth / spacing + 1e-9);
	const left = Math.max(0, depth - whole * spacing);
	const part = left <= 1e-9 * spacing ? 0 : kind === 'knife' || 2 * left <= (spacing / 2) * (1 + 1e-9) ? 1 : 2;
	return 1 + 2 * (whole * pairs[kind] + part);
}
