// The waist's curve: how it is clipped, and what a rounded radius does to it. A panel that laps itself is refused (cuttable.ts).
import type { Check } from '../check.ts';
import { clipDepth, clipEvery } from '../clip.ts';
import type { Drafted } from '../draft.ts';
import { rulerMark, waistMoves } from '../ruler.ts';

export function waistChecks({ skirt, figures }: Drafted): readonly Check[] {
	const { waistClip, waistSeamGirth, waistRadius, sweepAngle } = figures;
	const checks: Check[] = [];
	const depth = clipDepth(skirt.allowances.waist);
	if (depth !== null) {
		const clips = Math.ceil(waistSeamGirth / clipEvery);
		const figures = { waistClip, clips, spacing: waistSeamGirth / clips, depth, allowance: skirt.allowances.waist };
		checks.push({ code: 'waist-clip', severity: 'note', figures, waysOut: [] });
	}
	const mark = rulerMark(waistRadius, 'mm');
	const cost = { waistRadius, marked: mark.mm, off: mark.off, waistMoves: waistMoves(mark, sweepAngle), perMillimetre: sweepAngle };
	checks.push({ code: 'rounding-cost', severity: 'note', figures: cost, waysOut: [] });
	return checks;
}
