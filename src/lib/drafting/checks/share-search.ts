// The least flare that makes an uneven skirt wide enough, where no formula gives it.
import type { Body } from '../body.ts';
import { profileOf, type Profile } from '../profile.ts';
import type { FlaredSkirt } from '../skirt.ts';
import { sweepAngle } from '../sweep.ts';
import { waistSeamOf } from '../waist-seam.ts';

const mostShare = 2;

/**
 * By halving, since girths grow with the flare; a share at which the waist can't be drawn counts as none. `from` doesn't
 * reach. Infinity where two circles don't either.
 */
export function leastShareFor(body: Body, skirt: FlaredSkirt, girth: (profile: Profile, sweep: number) => number, needed: number, from: number): number {
	const seam = waistSeamOf(body, skirt);
	const reaches = (share: number): boolean => {
		const sweep = sweepAngle(share);
		const profile = profileOf(skirt, seam, sweep);
		return profile !== null && girth(profile, sweep) >= needed;
	};
	if (!reaches(mostShare)) return Infinity;
	let [low, high] = [from, mostShare];
	for (let i = 0; i < 50; i++) {
		const middle = (low + high) / 2;
		if (reaches(middle)) high = middle;
		else low = middle;
	}
	return high;
}

/** A hem is measured on its outlines; its length by the rule differs from that by less. mm */
export const measuredWithin = 0.01;
