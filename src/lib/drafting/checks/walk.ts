// Walking the seams: every sewn pair compared along the stitch line. Alike for every style.
import type { Check } from '../check.ts';
import type { Seam } from '../seam.ts';
import { walkAgrees } from '../walk.ts';

const differs = ({ lengthA, lengthB, ease }: Seam): number => Math.abs(lengthA - lengthB - ease);

/** Pairs agree to `walkAgrees`, or to the ease their style chose. `band`: what else is told of it. */
export function walkChecks(seams: readonly Seam[], band: { readonly underlap: number; readonly cutLength: number }): readonly Check[] {
	const checks: Check[] = [];
	let widest = 0;
	for (const seam of seams) {
		widest = Math.max(widest, differs(seam));
		const { name, lengthA, lengthB, ease } = seam;
		if (differs(seam) > walkAgrees) checks.push({ code: 'seam-walk', severity: 'stop', about: name, figures: { lengthA, lengthB, ease }, waysOut: [] });
	}
	if (checks.length === 0) checks.push({ code: 'seam-walk', severity: 'good', figures: { seams: seams.length, widest }, waysOut: [] });
	const sewn = seams.find(({ name }) => name === 'waist to band');
	if (sewn) checks.push({
		code: 'band-to-waist', severity: differs(sewn) > walkAgrees ? 'stop' : 'good',
		figures: { waistSeam: sewn.lengthA, band: sewn.lengthB, ease: sewn.ease, ...band }, waysOut: []
	});
	return checks;
}
