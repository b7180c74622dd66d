// The band itself: whether its casing takes the elastic, and what a contour band's shape asks.
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { openWays } from '../way-out.ts';
import { slack } from './slack.ts';

/** How much deeper a casing is than its elastic, so that it slides, mm (from memory). */
const slides = 3;
/** An elastic gathers this much cloth without bulk: the seam to the elastic as it lies (common practice, no source). */
const fullest = 2;

export function bandChecks({ body, skirt, figures }: Drafted): readonly Check[] {
	const { band } = skirt;
	if (band.kind !== 'elastic') return [];
	const least = band.elastic + slides;
	const tight = band.depth < least - slack;
	const elastic = figures.elasticLength ?? 0;
	const fullness = figures.waistSeamGirth / elastic;
	return [
		{
			code: 'casing-depth', severity: tight ? 'stop' : 'good', figures: { depth: band.depth, elastic: band.elastic, least },
			waysOut: tight ? openWays(body, skirt, [{ path: 'skirt.band.depth', value: least }, ...(band.depth > slides ? [{ path: 'skirt.band.elastic', value: band.depth - slides }] : [])]) : []
		},
		{ code: 'elastic-fullness', severity: fullness > fullest ? 'caution' : 'note', figures: { fullness, elastic, waistSeam: figures.waistSeamGirth }, waysOut: [] }
	];
}
