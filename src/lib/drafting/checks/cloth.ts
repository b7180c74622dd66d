// What holds for the whole draft: the cloth it is for, and whether its length is one that is worn.
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { measurements } from '../measurement.ts';

export function clothChecks({ skirt }: Drafted): readonly Check[] {
	const [shortest, longest] = measurements.length.usual;
	const worn = skirt.length >= shortest && skirt.length <= longest;
	return [
		{ code: 'length-plausible', severity: worn ? 'good' : 'caution', figures: { length: skirt.length, shortest, longest }, waysOut: [] },
		// The opening, the ease and the walk all take cloth that doesn't stretch.
		{ code: 'woven-cloth', severity: 'note', figures: {}, waysOut: [] }
	];
}
