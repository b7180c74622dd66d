// The lining against the shell: shorter, wide enough, and open far enough.
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { liningBelowZip } from '../opening.ts';
import { lengthOfRound } from '../profile.ts';
import { farther } from '../shape.ts';
import { liningShare } from '../skirt.ts';
import { openWays } from '../way-out.ts';
import { lengthWays } from './length-ways.ts';
import { leastShareFor, measuredWithin } from './share-search.ts';
import { slack } from './slack.ts';
import { shareWays } from './share-ways.ts';
import { strideNeeds } from './stride.ts';

/** Less than this and the lining shows below the hem as the cloth drops, mm (common practice, no source). */
const least = 15;
const usual = 25;

export function liningChecks({ body, skirt, figures }: Drafted): readonly Check[] {
	const { lining } = skirt;
	const { liningHemRadius, liningWaistRadius, liningSweepAngle, liningOpeningBelowSeam, waistSeamGirth, hipDepth } = figures;
	if (!lining || liningHemRadius === undefined || liningWaistRadius === undefined || liningSweepAngle === undefined) return [];
	const { shortestLength, longestLength } = figures;
	const uneven = shortestLength !== undefined && longestLength !== undefined;
	const length = uneven ? figures.skirtLength - lining.shorterBy : liningHemRadius - liningWaistRadius;
	const shortest = uneven ? shortestLength - lining.shorterBy : length;
	const short = lining.shorterBy < least - slack;
	const checks: Check[] = [{
		code: 'lining-shorter', severity: short ? 'caution' : 'good', figures: { shorterBy: lining.shorterBy, least },
		waysOut: short ? openWays(body, skirt, [{ path: 'skirt.lining.shorterBy', value: usual }]) : []
	}];

	// Round the hip where it reaches so far, and round a step at its own hem.
	const { hip } = body;
	const hem = liningSweepAngle * liningHemRadius;
	const atHip = hip !== undefined && hipDepth !== undefined && hipDepth <= shortest
		? { girth: uneven ? liningSweepAngle * (liningWaistRadius + hipDepth) : waistSeamGirth + liningSweepAngle * hipDepth, needed: hip + skirt.hipEase, depth: hipDepth } : null;
	const stride = strideNeeds((uneven ? longestLength + skirt.band.depth : skirt.length) - lining.shorterBy);
	const rows = [
		...(atHip ? [{ ...atHip, about: 'hip' }] : []),
		...(stride === undefined ? [] : [{ girth: hem, needed: stride, depth: length, about: 'stride' }])
	];
	for (const { girth, needed, depth, about } of rows) {
		const tight = girth < needed - slack;
		const leastShare = !uneven ? Math.max(0, (needed - waistSeamGirth) / depth / (2 * Math.PI))
			: !tight ? undefined : leastShareFor(body, skirt, about === 'hip' ? ({ base }, sweep) => sweep * (base + depth)
				: (profile) => lengthOfRound(profile, farther(profile.hem, -lining.shorterBy)), needed + measuredWithin, liningShare(skirt));
		checks.push({
			code: 'lining-fit', about, severity: !tight ? 'good' : about === 'hip' ? 'stop' : 'caution', figures: { girth, needed, depth, ...(leastShare !== undefined && { leastShare }) },
			waysOut: tight ? openWays(body, skirt, shareWays(leastShare ?? Infinity, lining.share === null ? 'skirt.share' : 'skirt.lining.share')) : []
		});
	}

	const opening = liningOpeningBelowSeam;
	const { zipEndBelowSeam } = figures;
	if (opening !== undefined && zipEndBelowSeam !== undefined) {
		const tooShort = opening > length + slack;
		const opens = Math.min(length, Math.max(zipEndBelowSeam + liningBelowZip, opening));
		checks.push({
			code: 'lining-opening', severity: tooShort ? 'stop' : 'good', figures: { opening, opens, length },
			waysOut: tooShort ? openWays(body, skirt, lengthWays(skirt, opening + lining.shorterBy)) : []
		});
	}
	return checks;
}
