// Is there room at the hip? G + θh against hip and ease.
import type { Check, WayOut } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { isUneven } from '../skirt.ts';
import { openWays } from '../way-out.ts';
import { slack } from './slack.ts';
import { leastShareFor } from './share-search.ts';
import { shareWays } from './share-ways.ts';

export function hipChecks({ body, skirt, figures }: Drafted): readonly Check[] {
	const { hip, waistToHip, waist } = body;
	if (hip === undefined) return [{ code: 'hip-missing', severity: 'caution', figures: {}, waysOut: [], measure: ['hip'] }];
	const checks: Check[] = [];
	if (waist > hip) checks.push({ code: 'waist-over-hip', severity: 'note', figures: { waist, hip }, waysOut: [] });
	if (waistToHip === undefined) return [...checks, { code: 'hip-depth-missing', severity: 'note', figures: { hip }, waysOut: [], measure: ['waistToHip'] }];
	const needed = hip + skirt.hipEase;
	const { waistSeamGirth, hipDepth = 0 } = figures;
	const skirtLength = figures.shortestLength ?? figures.skirtLength;
	// A skirt that ends above the hip has no girth there to look at; its hem must still go round what it reaches.
	if (hipDepth > skirtLength) {
		return [...checks, { code: 'hip-below-hem', severity: 'note', figures: { hipDepth, skirtLength }, waysOut: [] }];
	}
	const girthAtHip = figures.girthAtHip!;
	const rests = { girthAtHip, needed, hip, hipEase: skirt.hipEase, hipDepth, spare: girthAtHip - needed };
	if (girthAtHip >= needed - slack) return [...checks, { code: 'hip-fit', severity: 'good', figures: rests, waysOut: [] }];
	// Where the waist seam itself lies at the hip, no flare helps.
	const leastShare = hipDepth <= 0 ? Infinity
		: isUneven(skirt) ? leastShareFor(body, skirt, ({ base }, sweep) => sweep * (base + hipDepth), needed, skirt.share)
			: (needed - waistSeamGirth) / hipDepth / (2 * Math.PI);
	const ways: WayOut[] = [...shareWays(leastShare)];
	// Less ease, if any is left.
	if (girthAtHip - hip >= 0) ways.push({ path: 'skirt.hipEase', value: girthAtHip - hip });
	return [...checks, { code: 'hip-fit', severity: 'stop', figures: { ...rests, ...(hipDepth > 0 && { leastAngle: 2 * Math.PI * leastShare, leastShare }) }, waysOut: openWays(body, skirt, ways) }];
}
