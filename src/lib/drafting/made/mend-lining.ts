// A lining that is tight at the waist, or longer than it should be.
import type { Draft } from '../draft.ts';
import { changed, leastAllowance, same, slack, stripFor, type RescueOption } from './option.ts';

/** Less than this and the lining shows as the cloth drops, mm (common practice, no source; as checks/lining.ts has it). */
const leastAbove = 15;

/** The lining's waist is `short` mm shorter than the skirt's: x/θ deeper mends it (circle geometry). */
export function tightLining(draft: Draft, short: number): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { sweepAngle: sweep, waistSeamGirth: planned } = figures;
	const deeper = short / sweep;
	const edges = 2 * skirt.panels;
	const strip = stripFor(short, edges, (planned - short) / sweep);
	return [
		same('sew-lining-deeper', { deeper, fromEdge: skirt.allowances.waist + deeper, waistSeam: planned }),
		...(strip !== undefined && skirt.allowances.seam - strip >= leastAllowance - slack
			? [same('let-out-lining', { edges, perEdge: strip, allowance: skirt.allowances.seam - strip, waistSeam: planned })] : []),
		same('cut-lining-again', { cutWaistRadius: figures.cutWaistRadius, waistRadius: figures.waistRadius, cutHemRadius: (figures.liningHemRadius ?? 0) + skirt.hem, waistSeam: planned })
	];
}

/** The lining ends `above` mm above the skirt's hem, and `planned` mm was wanted. */
export function longLining(draft: Draft, above: number, planned: number): readonly RescueOption[] {
	const long = planned - above;
	return [
		...(above >= leastAbove - slack ? changed(draft, 'leave-lining', { above }, [{ path: 'skirt.lining.shorterBy', value: above }]) : []),
		same('trim-lining', { trim: long, above: planned }),
		same('deeper-lining-hem', { hem: draft.skirt.hem + long, deeper: long, above: planned }),
		same('tuck-lining', { tuck: long / 2, takesUp: long, above: planned })
	];
}
