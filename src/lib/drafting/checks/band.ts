// The band itself: whether its casing takes the elastic, and how much cloth the elastic gathers.
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { openWays } from '../way-out.ts';
import { casingCheck } from './casing.ts';

/** An elastic gathers this much cloth without bulk: the seam to the elastic as it lies (common practice, no source). */
const fullest = 2;

export function bandChecks({ body, skirt, figures }: Drafted): readonly Check[] {
	const { band } = skirt;
	if (band.kind !== 'elastic') return [];
	const elastic = figures.elasticLength ?? 0;
	const fullness = figures.waistSeamGirth / elastic;
	return [
		casingCheck(band, (ways) => openWays(body, skirt, ways)),
		{ code: 'elastic-fullness', severity: fullness > fullest ? 'caution' : 'note', figures: { fullness, elastic, waistSeam: figures.waistSeamGirth }, waysOut: [] }
	];
}
