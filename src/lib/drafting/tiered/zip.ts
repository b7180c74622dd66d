// What the opening asks of a zip, for any skirt with a straight waist seam.
import type { Check, WayOut } from '../check.ts';
import { slack } from '../checks/slack.ts';
import { shopZips, topStop, zipFor } from '../opening.ts';

/** Seam allowance a zip is sewn to, mm: least as in Nebraska Extension EC73-422 (⅝ in), most common practice, no source. */
const allowance = { least: 15, most: 25 } as const;

export interface ZipFacts {
	readonly hip: number;
	readonly waistSeamGirth: number;
	readonly opening: number;
	/** 0 where nothing opens. */
	readonly zipLength: number;
	readonly skirtLength: number;
	readonly zipSeries: 'cm' | 'in';
	readonly seamAllowance: number;
}

/** `ways` are what shortens the opening or lengthens the skirt, so that a zip reaching this far has room. */
export function zipChecks(facts: ZipFacts, ways: (reach: number) => readonly WayOut[]): readonly Check[] {
	const { hip, waistSeamGirth, opening, zipLength, skirtLength, zipSeries, seamAllowance } = facts;
	if (opening <= 0) return [{ code: 'no-opening-needed', severity: 'note', figures: { waistSeamGirth, hip }, waysOut: [] }];
	const rests = { opening, zipLength, skirtLength, hip };
	const reach = zipLength + topStop;
	const check: Check = opening > skirtLength + slack
		? { code: 'opening-longer-than-skirt', severity: 'stop', figures: rests, waysOut: ways(reach) }
		: reach > skirtLength + slack
			? { code: 'zip-longer-than-skirt', severity: 'caution', figures: { ...rests, reach }, waysOut: ways(reach) }
			: !zipFor(opening, zipSeries).inShops
				? { code: 'no-shop-zip', severity: 'caution', figures: { ...rests, longest: shopZips[zipSeries].at(-1)! }, waysOut: [] }
				: { code: 'opening', severity: 'good', figures: rests, waysOut: [] };
	const { least, most } = allowance;
	const narrow = seamAllowance < least - slack;
	const severity = narrow ? 'caution' : seamAllowance > most + slack ? 'note' : 'good';
	const width = severity === 'good' ? [] : [{ path: 'skirt.allowances.seam', value: narrow ? least : most }];
	return [check, { code: 'zip-allowance', severity, figures: { seamAllowance, least, most }, waysOut: width }];
}
