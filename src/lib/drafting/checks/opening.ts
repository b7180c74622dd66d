// How a flared skirt is got into: by its zip, or pulled on.
import type { Check, WayOut } from '../check.ts';
import type { Drafted } from '../draft.ts';
import type { Skirt } from '../skirt.ts';
import { openWays } from '../way-out.ts';
import { lengthWays } from './length-ways.ts';
import { slack } from './slack.ts';
import { zipChecks } from './zip.ts';

export function openingChecks({ body, skirt, figures }: Drafted, chosen: Skirt): readonly Check[] {
	const checks: Check[] = [];
	if (chosen.zipAt !== skirt.zipAt) checks.push({ code: 'zip-at-centre-back', severity: 'note', figures: { panels: skirt.panels }, waysOut: [] });
	if (skirt.closure === 'none') return [...checks, ...pullOnChecks({ body, skirt, figures })];
	const { openingBelowSeam: opening, zipLength, zipEndBelowSeam: zipEnd, skirtLength, waistSeamGirth: waistSeam } = figures;
	const needed = body.hip === undefined ? undefined : body.hip + skirt.hipEase;
	const facts = { opening, zipLength, zipEnd, skirtLength, needed, waistSeam, zipSeries: skirt.zipSeries, seamAllowance: skirt.allowances.seam };
	return [...checks, ...zipChecks(facts, (reach) => lengthWays(skirt, reach), (ways) => openWays(body, skirt, ways))];
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
