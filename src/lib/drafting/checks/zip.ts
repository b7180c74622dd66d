// The zip for an opening, and the allowance it is sewn to: alike for every style.
import type { Check, WayOut } from '../check.ts';
import { shopZips, topStop, zipFor } from '../opening.ts';
import { slack } from './slack.ts';

/**
 * A zip's seam allowance, mm: under 15 (⅝ in) it is extended before the zip goes in (Nebraska Extension EC73-422); over
 * 25 it is in the way (common practice, no source).
 */
const least = 15;
const most = 25;

export interface ZipFacts {
	/** Below the waist seam; unknown without a hip, and then nothing is said of the zip. */
	readonly opening: number | undefined;
	readonly zipLength: number | undefined;
	readonly zipEnd: number | undefined;
	readonly skirtLength: number;
	/** What has to pass: the hip and its ease. */
	readonly needed: number | undefined;
	readonly waistSeam: number;
	readonly zipSeries: 'cm' | 'in';
	readonly seamAllowance: number;
}

/**
 * `ways` are what makes room for a zip that reaches this far; `open` keeps of any ways those that leave a skirt that can
 * be cut.
 */
export function zipChecks(facts: ZipFacts, ways: (reach: number) => readonly WayOut[], open: (ways: readonly WayOut[]) => readonly WayOut[]): readonly Check[] {
	return [...lengthChecks(facts, (reach) => open(ways(reach))), allowanceCheck(facts.seamAllowance, open)];
}

function lengthChecks({ opening, zipLength, zipEnd, skirtLength, needed, waistSeam, zipSeries }: ZipFacts, ways: (reach: number) => readonly WayOut[]): readonly Check[] {
	if (needed === undefined || opening === undefined || zipLength === undefined || zipEnd === undefined) return [];
	const reach = zipLength + topStop;
	const rests = { opening, zipLength, zipEnd, skirtLength, needed };
	const checks: Check[] = [];
	if (opening <= 0) checks.push({ code: 'no-opening-needed', severity: 'note', figures: { ...rests, waistSeam }, waysOut: [] });
	if (opening > skirtLength + slack) {
		checks.push({ code: 'opening-longer-than-skirt', severity: 'stop', figures: rests, waysOut: ways(reach) });
	} else if (reach > skirtLength + slack) {
		checks.push({ code: 'zip-longer-than-skirt', severity: 'caution', figures: { ...rests, reach }, waysOut: ways(reach) });
	} else if (!zipFor(opening, zipSeries).inShops) {
		checks.push({ code: 'no-shop-zip', severity: 'caution', figures: { ...rests, longest: shopZips[zipSeries].at(-1)! }, waysOut: [] });
	} else if (opening > 0) checks.push({ code: 'opening', severity: 'good', figures: rests, waysOut: [] });
	return checks;
}

function allowanceCheck(seam: number, open: (ways: readonly WayOut[]) => readonly WayOut[]): Check {
	const narrow = seam < least - slack;
	const severity = narrow ? 'caution' : seam > most + slack ? 'note' : 'good';
	const ways: WayOut[] = severity === 'good' ? [] : [{ path: 'skirt.allowances.seam', value: narrow ? least : most }];
	return { code: 'zip-allowance', severity, figures: { seamAllowance: seam, least, most }, waysOut: open(ways) };
}
