// A lining beside its skirt.
import type { Draft } from '../../../drafting/draft.ts';
import type { RescueOption } from '../../../drafting/made/option.ts';
import type { RescueDraft } from '../../../drafting/made/rescue.ts';
import type { Drawing, Shape } from '../../drawing.ts';
import { num, small, type Unit } from '../number.ts';
import { WIDE } from '../part.ts';
import { line, measured, rect, sheet, words } from '../shape.ts';
import { number } from './part.ts';
import { of } from './waist.ts';

/** From the top down: the lining, where it ends, the skirt's hem. */
const hems = (rows: readonly Shape[]): readonly Shape[] => [rect([14, 84], [326, 240], 'wrongSide'), rect([14, 84], [326, 110], 'rightSide', 'edge'), words([24, 92], 'skirt’s hem', 'label'), ...rows];

export function longLining(draft: Draft, found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const above = small(of(option, 'above'), unit);
	const is = found.made < 0 ? `${small(-found.made, unit)} below the skirt’s hem` : `${small(found.made, unit)} above the skirt’s hem`;
	if (option.code === 'leave-lining') {
		return sheet(WIDE, 250, `The lining ends ${above} above the skirt’s hem, and stays hidden. Leave it as it is. Don’t cut.`, [
			...hems([rect([14, 160], [326, 240], 'lining', 'edge'), words([24, 204], 'lining', 'label'), ...measured([226, 160], [226, 84])]), number(56, above, 'above: leave it')
		]);
	}
	const [does, by] = option.code === 'trim-lining' ? ['trim off', of(option, 'trim')] : option.code === 'tuck-lining' ? ['tuck, folded', of(option, 'tuck')] : ['deeper hem', of(option, 'deeper')];
	const more = option.code === 'tuck-lining' ? ` A tuck ${small(by, unit)} deep when folded takes up ${small(of(option, 'takesUp'), unit)}.` : option.code === 'deeper-lining-hem' ? ` Its hem turns up ${small(of(option, 'hem'), unit)} in all, ${small(by, unit)} more.` : ` Trim off ${small(by, unit)}.`;
	return sheet(WIDE, 250, `The lining ends ${is}; ${above} above was planned.${more} Don’t cut the skirt.`, [
		...hems([rect([14, 130], [326, 240], 'lining'), line([14, 130], [326, 130], 'asItWas'), line([14, 186], [326, 186], option.code === 'trim-lining' ? 'cut' : 'stitch', true),
			words([24, 214], 'lining', 'label'), words([24, 194], option.code === 'tuck-lining' ? 'tuck here' : 'new hem line', 'labelStrong'), words([24, 138], 'as it is', 'label'), ...measured([226, 186], [226, 110])]),
		number(56, small(by, unit), does)
	]);
}

export function liningAgain(option: RescueOption, unit: Unit): Drawing {
	const [cut, hem] = [num(of(option, 'cutWaistRadius'), unit), num(of(option, 'cutHemRadius'), unit)];
	return sheet(WIDE, 250, `A new lining, measured from the corner: cut the waist at ${cut} and the hem at ${hem} ${unit}.`, [
		rect([14, 84], [326, 200], 'lining'), line([14, 200], [326, 200], 'cut', true), line([14, 84], [326, 84], 'cut', true),
		words([170, 210], `cut the waist at ${cut}`, 'labelStrong', { anchor: 'middle' }), words([170, 136], 'lining', 'label', { anchor: 'middle' }), words([170, 56], `cut the hem at ${hem}`, 'labelStrong', { anchor: 'middle' }), words([170, 20], 'both from the corner', 'label', { anchor: 'middle' })
	]);
}
