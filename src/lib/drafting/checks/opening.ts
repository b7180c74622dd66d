// The opening, the zip to buy for it, and the allowance it is sewn to.
import type { Check, WayOut } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { shopZips, topStop, zipFor } from '../opening.ts';
import type { Skirt } from '../skirt.ts';
import { openWays } from '../way-out.ts';
import { slack } from './slack.ts';

/**
 * A zip's seam allowance, mm: under 15 (⅝ in) it is extended before the zip goes in (Nebraska Extension EC73-422); over
 * 25 it is in the way (common practice, no source).
 */
const least = 15;
const most = 25;

export function openingChecks({ body, skirt, figures }: Drafted, chosen: Skirt): readonly Check[] {
	const checks: Check[] = [];
	if (chosen.zipAt !== skirt.zipAt) checks.push({ code: 'zip-at-centre-back', severity: 'note', figures: { panels: skirt.panels }, waysOut: [] });
	if (body.hip === undefined) return checks;
	const { openingBelowSeam: opening, zipLength, zipEndBelowSeam: zipEnd, skirtLength } = figures;
	const reach = zipLength + topStop;
	const needed = body.hip + skirt.hipEase;
	const rests = { opening, zipLength, zipEnd, skirtLength, needed };
	if (opening <= 0) {
		return [...checks, { code: 'no-opening-needed', severity: 'note', figures: { waistSeam: figures.waistSeamGirth, needed }, waysOut: [] }];
	}

	// The opening doesn't depend on the length, so a skirt made longer by what is short does it.
	const longer = (reach: number): WayOut => ({ path: 'skirt.length', value: reach + skirt.band.depth });
	if (opening > skirtLength + slack) {
		checks.push({ code: 'opening-longer-than-skirt', severity: 'stop', figures: rests, waysOut: openWays(body, skirt, [longer(reach)]) });
	} else if (reach > skirtLength + slack) {
		checks.push({ code: 'zip-longer-than-skirt', severity: 'caution', figures: { ...rests, reach }, waysOut: openWays(body, skirt, [longer(reach)]) });
	} else if (!zipFor(opening, skirt.zipSeries).inShops) {
		checks.push({ code: 'no-shop-zip', severity: 'caution', figures: { ...rests, longest: shopZips[skirt.zipSeries].at(-1)! }, waysOut: [] });
	} else checks.push({ code: 'opening', severity: 'good', figures: rests, waysOut: [] });

	const { seam } = skirt.allowances;
	const narrow = seam < least - slack;
	const severity = narrow ? 'caution' : seam > most + slack ? 'note' : 'good';
	const ways: WayOut[] = severity === 'good' ? [] : [{ path: 'skirt.allowances.seam', value: narrow ? least : most }];
	checks.push({ code: 'zip-allowance', severity, figures: { seamAllowance: seam, least, most }, waysOut: openWays(body, skirt, ways) });
	return checks;
}
