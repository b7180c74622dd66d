// The opening, the zip to buy for it, and the allowance it is sewn to.
import type { Body } from '../body.ts';
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
	if (skirt.closure === 'none') return [...checks, ...pullOnChecks({ body, skirt, figures })];
	checks.push(...zipChecks({ body, skirt, figures }), allowanceCheck(body, skirt));
	return checks;
}

/** What has no opening has to go over the hip as it is. */
function pullOnChecks({ body, skirt, figures }: Pick<Drafted, 'body' | 'skirt' | 'figures'>): readonly Check[] {
	if (body.hip === undefined) return [];
	const needed = body.hip + skirt.hipEase;
	// A contour band is narrowest at its top.
	const round = skirt.band.kind === 'contour' ? body.waist + skirt.waistEase : figures.waistSeamGirth;
	const rests = { waistSeam: round, needed };
	if (round >= needed - slack) return [{ code: 'pulls-on', severity: 'good', figures: rests, waysOut: [] }];
	const ways: readonly WayOut[] = [
		{ path: 'skirt.closure', value: 'zip' },
		...(skirt.band.kind === 'contour' || skirt.band.kind === 'elastic' ? [] : [{ path: 'skirt.waistEase', value: needed - body.waist }])
	];
	return [{ code: 'pulls-on', severity: 'stop', figures: rests, waysOut: openWays(body, skirt, ways) }];
}

/** The opening and its zip; nothing can be said without a hip (`hip-missing` does). */
function zipChecks({ body, skirt, figures }: Pick<Drafted, 'body' | 'skirt' | 'figures'>): readonly Check[] {
	const { openingBelowSeam: opening, zipLength, zipEndBelowSeam: zipEnd, skirtLength } = figures;
	if (body.hip === undefined || opening === undefined || zipLength === undefined || zipEnd === undefined) return [];
	const reach = zipLength + topStop;
	const needed = body.hip + skirt.hipEase;
	const rests = { opening, zipLength, zipEnd, skirtLength, needed };
	const checks: Check[] = [];
	if (opening <= 0) checks.push({ code: 'no-opening-needed', severity: 'note', figures: { ...rests, waistSeam: figures.waistSeamGirth }, waysOut: [] });

	// The opening doesn't depend on the length, so a skirt made longer by what is short does it.
	const longer = (reach: number): WayOut => ({ path: 'skirt.length', value: reach + skirt.band.depth });
	if (opening > skirtLength + slack) {
		checks.push({ code: 'opening-longer-than-skirt', severity: 'stop', figures: rests, waysOut: openWays(body, skirt, [longer(reach)]) });
	} else if (reach > skirtLength + slack) {
		checks.push({ code: 'zip-longer-than-skirt', severity: 'caution', figures: { ...rests, reach }, waysOut: openWays(body, skirt, [longer(reach)]) });
	} else if (!zipFor(opening, skirt.zipSeries).inShops) {
		checks.push({ code: 'no-shop-zip', severity: 'caution', figures: { ...rests, longest: shopZips[skirt.zipSeries].at(-1)! }, waysOut: [] });
	} else if (opening > 0) checks.push({ code: 'opening', severity: 'good', figures: rests, waysOut: [] });
	return checks;
}

function allowanceCheck(body: Body, skirt: Skirt): Check {
	const { seam } = skirt.allowances;
	const narrow = seam < least - slack;
	const severity = narrow ? 'caution' : seam > most + slack ? 'note' : 'good';
	const ways: WayOut[] = severity === 'good' ? [] : [{ path: 'skirt.allowances.seam', value: narrow ? least : most }];
	return { code: 'zip-allowance', severity, figures: { seamAllowance: seam, least, most }, waysOut: openWays(body, skirt, ways) };
}
