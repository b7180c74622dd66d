// Whether a tiered skirt can be cut at all: what stands in the way, each with the ways on.
import type { Body } from '../body.ts';
import type { WayOut } from '../check.ts';
import type { Issue } from '../result.ts';
import { numbers, tierGirths, tierLengths, waistSeamOf } from './figures.ts';
import type { TieredSkirt } from './skirt.ts';

/** Given lengths add up to within this. mm */
const agrees = 0.01;
/** A tier wider than this is a slip in a ratio: no sewing table holds 40 m of gathers (common practice, no source). mm */
export const widestTier = 40_000;
/** The narrowest cloth that is worth joining, between its seams (common practice, no source). mm */
const narrowest = 100;

export function tieredObstacles(body: Body, skirt: TieredSkirt): readonly Issue[] {
	const issues: Issue[] = [];
	const { band, tiers, hem } = skirt;
	const skirtLength = skirt.length - band.depth;
	if (skirtLength <= 0) {
		issues.push({
			code: 'band-deeper-than-length', path: 'skirt.length', expected: band.depth, received: skirt.length,
			figures: { length: skirt.length, bandDepth: band.depth }, waysOut: [{ path: 'skirt.band.depth', value: Math.min(40, skirt.length / 4) }]
		});
	} else {
		const each = tierLengths(skirt, skirtLength);
		const sum = each.reduce((total, length) => total + length, 0);
		if (Math.abs(sum - skirtLength) > agrees) issues.push(apart(skirt, sum, skirtLength, each.at(-1)!));
		const last = each.at(-1)!;
		if (hem >= last) {
			issues.push({
				code: 'hem-deeper-than-tier', path: 'skirt.hem', expected: last, received: hem,
				figures: { hem, tier: tiers, tierLength: last }, waysOut: [{ path: 'skirt.hem', value: last / 4 }]
			});
		}
	}
	const usable = skirt.clothWidth - 2 * skirt.allowances.seam;
	if (usable < narrowest) {
		issues.push({
			code: 'cloth-too-narrow', path: 'skirt.clothWidth', expected: narrowest + 2 * skirt.allowances.seam, received: skirt.clothWidth,
			figures: { clothWidth: skirt.clothWidth, usable }, waysOut: [{ path: 'skirt.clothWidth', value: narrowest + 2 * skirt.allowances.seam }]
		});
	}
	const girths = tierGirths(waistSeamOf(body, skirt), skirt);
	const widest = girths.at(-1)!;
	if (widest > widestTier) {
		const fewer = girths.findLastIndex((girth) => girth <= widestTier) + 1;
		// Given lengths then no longer add up, which has ways on of its own.
		const ways: WayOut[] = fewer > 0 ? [{ path: 'skirt.tiers', value: fewer }] : [];
		// Or fewer gathers where they are densest, if that alone is enough.
		const steepest = numbers(tiers).reduce((most, tier) => (skirt.ratios[tier]! > skirt.ratios[most]! ? tier : most), 1);
		const eased = (skirt.ratios[steepest]! * widestTier) / widest;
		if (eased >= (steepest === 1 ? 1 : 1.2)) ways.push({ path: `skirt.ratios.${steepest}`, value: eased * (1 - 1e-9) });
		issues.push({
			code: 'tier-too-wide', path: `skirt.ratios.${steepest}`, expected: widestTier, received: skirt.ratios[steepest],
			figures: { girth: widest, most: widestTier, tier: tiers }, waysOut: ways
		});
	}
	return issues;
}

/** Either the finished length follows the tiers, or the last tier takes what is left. */
function apart({ tiers, length, band }: TieredSkirt, sum: number, skirtLength: number, last: number): Issue {
	const ways: WayOut[] = [{ path: 'skirt.length', value: sum + band.depth }];
	const left = last + skirtLength - sum;
	if (left > 0) ways.push({ path: `skirt.lengths.each.${tiers}`, value: left });
	return {
		code: 'tiers-do-not-add-up', path: 'skirt.lengths.each', expected: skirtLength, received: sum,
		figures: { sum, skirtLength, length, differs: sum - skirtLength }, waysOut: ways
	};
}
