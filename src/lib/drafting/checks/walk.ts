// Walking the seams: every sewn pair compared along the stitch line.
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';

/** Pairs agree to this, or to the ease their style chose. mm */
const agrees = 0.01;

export function walkChecks({ seams, figures, skirt }: Drafted): readonly Check[] {
	const checks: Check[] = [];
	let widest = 0;
	for (const { name, lengthA, lengthB, ease } of seams) {
		const differs = Math.abs(lengthA - lengthB - ease);
		widest = Math.max(widest, differs);
		if (differs > agrees) checks.push({ code: 'seam-walk', severity: 'stop', about: name, figures: { lengthA, lengthB, ease }, waysOut: [] });
	}
	if (checks.length === 0) checks.push({ code: 'seam-walk', severity: 'good', figures: { seams: seams.length, widest }, waysOut: [] });
	const band = seams.find(({ name }) => name === 'waist to band');
	if (band) checks.push({
		code: 'band-to-waist', severity: Math.abs(band.lengthA - band.lengthB) > agrees ? 'stop' : 'good',
		figures: { waistSeam: band.lengthA, band: band.lengthB, underlap: skirt.band.underlap, cutLength: figures.bandCutLength }, waysOut: []
	});
	return checks;
}
