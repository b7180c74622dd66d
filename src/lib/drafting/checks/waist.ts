// The waist's curve: how it is clipped, and what a rounded radius does to it. A panel that laps itself is refused (cuttable.ts).
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { rulerMark, waistMoves } from '../ruler.ts';

/** Clipped every 15 mm to 2 mm from the staystitching, which lies 2 to 3 mm from the stitch line (common practice, no source). */
const clipEvery = 15;
const clipStops = 5;

export function waistChecks({ skirt, figures }: Drafted): readonly Check[] {
	const { waistClip, waistSeamGirth, waistRadius, sweepAngle } = figures;
	const checks: Check[] = [];
	const depth = skirt.allowances.waist - clipStops;
	if (depth > 0) {
		const clips = Math.ceil(waistSeamGirth / clipEvery);
		const figures = { waistClip, clips, spacing: waistSeamGirth / clips, depth, allowance: skirt.allowances.waist };
		checks.push({ code: 'waist-clip', severity: 'note', figures, waysOut: [] });
	}
	const mark = rulerMark(waistRadius, 'mm');
	const cost = { waistRadius, marked: mark.mm, off: mark.off, waistMoves: waistMoves(mark, sweepAngle), perMillimetre: sweepAngle };
	checks.push({ code: 'rounding-cost', severity: 'note', figures: cost, waysOut: [] });
	return checks;
}
