// Is there room to step out? Hem girth at least 110 cm at the knee to 150 at the ankle, or a slit (from memory).
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { lengthOfRound } from '../profile.ts';
import { isUneven } from '../skirt.ts';
import { openWays } from '../way-out.ts';
import { leastShareFor, measuredWithin } from './share-search.ts';
import { slack } from './slack.ts';
import { shareWays } from './share-ways.ts';

/** A finished length that ends about the knee, and one about the ankle, mm (from memory; a floor reading would tell). */
const knee = { length: 600, girth: 1100 };
const ankle = { length: 950, girth: 1500 };

/** Undefined for a skirt that ends clear above the knee, where a step needs no more than the hip has. mm */
export function strideNeeds(length: number): number | undefined {
	if (length < knee.length - 100) return undefined;
	const part = Math.min(1, Math.max(0, (length - knee.length) / (ankle.length - knee.length)));
	return knee.girth + part * (ankle.girth - knee.girth);
}

export function strideChecks({ body, skirt, figures }: Drafted): readonly Check[] {
	const { hemSweep, waistSeamGirth, skirtLength, longestLength } = figures;
	const needed = strideNeeds(longestLength === undefined ? skirt.length : longestLength + skirt.band.depth);
	if (needed === undefined) return [];
	const enough = hemSweep >= needed - slack;
	// Of an uneven skirt it is looked for where it is wanted.
	const leastShare = !isUneven(skirt) ? Math.max(0, (needed - waistSeamGirth) / skirtLength / (2 * Math.PI))
		: enough ? undefined : leastShareFor(body, skirt, (profile) => lengthOfRound(profile, profile.hem), needed + measuredWithin, skirt.share);
	const rests = { hemSweep, needed, ...(leastShare !== undefined && { leastShare }) };
	if (enough) return [{ code: 'stride', severity: 'good', figures: rests, waysOut: [] }];
	return [{ code: 'stride', severity: 'caution', figures: rests, waysOut: openWays(body, skirt, shareWays(leastShare ?? Infinity)) }];
}
