// Two readings of one length: do they agree, and what is used?

/** Lengths in mm. */
export type Agreement =
	| { readonly state: 'none'; readonly pair: null; readonly spread: null; readonly used: null }
	| { readonly state: 'one'; readonly pair: null; readonly spread: null; readonly used: null }
	| { readonly state: 'apart'; readonly pair: readonly [earlier: number, newest: number]; readonly spread: number; readonly used: null }
	| { readonly state: 'agreed'; readonly pair: readonly [earlier: number, newest: number]; readonly spread: number; readonly used: number };

/** How far two readings may differ where no class says otherwise, mm (common practice, no source). */
export const readingTolerance = 10;

/**
 * Distances between readings are the same to within this, so that two readings exactly a tolerance apart agree, and a
 * third halfway between two is halfway, in any unit: eighths of an inch in mm are off in the last digits. mm
 */
const slack = 1e-6;

/**
 * Readings in the order they were taken. The newest pairs with whichever of the two before it is closest (the later,
 * when both are); within `tolerance` they agree and their mean is used.
 */
export function agree(readings: readonly { readonly mm: number }[], tolerance: number): Agreement {
	const newest = readings.at(-1)?.mm;
	const before = readings.at(-2)?.mm;
	if (newest === undefined) return { state: 'none', pair: null, spread: null, used: null };
	if (before === undefined) return { state: 'one', pair: null, spread: null, used: null };
	const older = readings.at(-3)?.mm;
	const earlier = older !== undefined && Math.abs(older - newest) < Math.abs(before - newest) - slack ? older : before;
	const spread = Math.abs(earlier - newest);
	const pair = [earlier, newest] as const;
	return spread <= tolerance + slack ? { state: 'agreed', pair, spread, used: (earlier + newest) / 2 } : { state: 'apart', pair, spread, used: null };
}
