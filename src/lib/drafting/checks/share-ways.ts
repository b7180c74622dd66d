// Ways out that take more flare.
import type { WayOut } from '../check.ts';

/** Shares that have a name or are easily folded, as fractions of a circle. */
const named = [1 / 4, 1 / 3, 3 / 8, 1 / 2, 2 / 3, 3 / 4, 1, 5 / 4, 3 / 2, 2];
const mostShare = 2;

/** The least share that does, and the next one with a name: of the skirt, or of the lining by itself. */
export function shareWays(least: number, path = 'skirt.share'): readonly WayOut[] {
	if (!(least <= mostShare)) return [];
	const next = named.find((share) => share >= least)!;
	// One part in a billion more, so that a rounding in the last digit doesn't undo it.
	const ways: WayOut[] = [{ path, value: Math.min(mostShare, least * (1 + 1e-9)) }];
	return next - least < 1e-6 ? [{ path, value: next }] : [...ways, { path, value: next }];
}
