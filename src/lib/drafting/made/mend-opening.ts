// A zip that isn't the one in the plan.
import type { Draft } from '../draft.ts';
import { topStop } from '../opening.ts';
import { changed, same, slack, type RescueOption } from './option.ts';
import { letsThrough } from './through.ts';

/** So much of an opening is closed with hooks or press studs, mm (common practice, no source). */
const closesByHand = 50;
/** Sewn seam that a zip leaves above the hem, mm (common practice, no source). */
const leastSeam = 50;
/** Tape left beyond a new bottom stop, mm (common practice, no source). */
const tapeEnd = 20;

export function shortZip(draft: Draft, bought: number, needed: number): readonly RescueOption[] {
	const { body, skirt, figures } = draft;
	const gap = needed - bought;
	const options: RescueOption[] = [];
	if (gap <= closesByHand + slack) options.push(same('longer-slit', { opening: needed, zip: bought, gap }));
	const ease = letsThrough(figures.waistSeamGirth, figures.sweepAngle, bought) - (body.hip ?? 0);
	if (body.hip !== undefined && ease >= 0) {
		options.push(...changed(draft, 'less-hip-ease', { hipEase: ease, less: skirt.hipEase - ease, zip: bought }, [{ path: 'skirt.hipEase', value: ease }]));
	}
	return [...options, same('buy-longer', { zipLength: figures.zipLength ?? needed, opening: needed, zipEnd: figures.zipEndBelowSeam ?? needed })];
}

/** `zip` is the length that is wanted. */
export function longZip({ figures }: Draft, bought: number, zip: number): readonly RescueOption[] {
	const { skirtLength } = figures;
	const over = bought - zip;
	const end = Math.min(zip + topStop, skirtLength);
	return [
		same('shorten-zip', { stop: zip, cut: Math.min(bought, zip + tapeEnd), over, zipEnd: end }),
		...(bought + topStop <= skirtLength - leastSeam + slack ? [same('longer-opening', { zipEnd: bought + topStop, seam: skirtLength - bought - topStop })] : []),
		same('trim-at-top', { over, zipEnd: end })
	];
}
