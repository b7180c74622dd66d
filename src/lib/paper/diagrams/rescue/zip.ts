// A zip that is short or long, beside the opening it is for.
import type { RescueOption } from '../../../drafting/made/option.ts';
import type { RescueDraft } from '../../../drafting/made/rescue.ts';
import type { Drawing, Shape } from '../../drawing.ts';
import { numUnit, small, type Unit } from '../number.ts';
import { WIDE, zip } from '../part.ts';
import { line, measured, rect, sheet, words } from '../shape.ts';
import { of } from './waist.ts';

const waist = 226;
const cloth: readonly Shape[] = [rect([14, 14], [206, 240], 'wrongSide'), line([14, waist], [206, waist], 'stitch'), words([20, waist - 22], 'waist', 'label')];
const seam = (from: number): Shape => line([110, from], [110, 14], 'stitch', true);
const height = (to: number, text: string, under: string, at: number, strong = true): readonly Shape[] => [
	...measured([226, waist], [226, to]), line([127, to], [226, to], 'fine'), words([238, at], text, strong ? 'labelStrong' : 'label', { under })
];

export function shortZip(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const [needed, bought] = [numUnit(found.planned, unit), numUnit(found.made, unit)];
	if (option.code === 'longer-slit') {
		const gap = small(of(option, 'gap'), unit);
		return sheet(WIDE, 270, `The opening needs ${needed} and the zip is ${bought} long. Leave the seam open ${gap} below the zip, and close that with hooks.`, [
			...cloth, ...zip(110, waist - 6, 110, 'paper'), line([110, 98], [110, 66], 'tack', true), line([98, 66], [122, 66], 'cut'), seam(66),
			...height(110, bought, 'zip', 176, false), words([226, 92], gap, 'labelStrong', { under: 'with hooks' }), words([226, 40], needed, 'label', { under: 'in all' })
		]);
	}
	if (option.code === 'less-hip-ease') {
		const ease = small(of(option, 'hipEase'), unit);
		return sheet(WIDE, 270, `The zip of ${bought} goes in as it is. It leaves ${ease} of ease as the skirt is drawn over the hip. Try that on before you sew.`, [
			...cloth, ...zip(110, waist - 6, 100, 'paper'), seam(86), ...height(100, bought, 'zip', 176), words([226, 60], ease, 'labelStrong', { under: 'hip ease' })
		]);
	}
	const [buy, end] = [numUnit(of(option, 'zipLength'), unit), numUnit(of(option, 'zipEnd'), unit)];
	return sheet(WIDE, 270, `The opening needs ${needed}. A zip of ${buy} ends ${end} below the waist seam. The one that is there is ${bought} long.`, [
		...cloth, ...zip(110, waist - 6, 70, 'paper'), seam(56), line([92, 110], [128, 110], 'asItWas'), ...height(70, end, 'zip ends', 150), words([226, 46], buy, 'labelStrong', { under: 'zip to buy' })
	]);
}

export function longZip(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const bought = numUnit(found.made, unit);
	if (option.code === 'shorten-zip') {
		const [stop, cut] = [numUnit(of(option, 'stop'), unit), numUnit(of(option, 'cut'), unit)];
		return sheet(WIDE, 270, `The zip is ${bought} long. Sew a new stop across the teeth ${stop} from its top stop. Cut the tape at ${cut}, never above the new stop.`, [
			...cloth, ...zip(110, waist - 6, 40, 'paper'), line([94, 108], [126, 108], 'sewn', true), line([88, 76], [132, 76], 'cut', true),
			...height(108, stop, 'new stop', 176), words([226, 74], cut, 'labelStrong', { under: 'cut here' })
		]);
	}
	if (option.code === 'longer-opening') {
		const [end, left] = [numUnit(of(option, 'zipEnd'), unit), numUnit(of(option, 'seam'), unit)];
		return sheet(WIDE, 270, `The zip of ${bought} goes in whole. The seam starts ${end} below the waist seam, and ${left} of it is sewn to the hem.`, [
			...cloth, ...zip(110, waist - 6, 76, 'paper'), seam(62), line([92, 120], [128, 120], 'asItWas'), ...height(76, end, 'seam starts', 150), words([226, 44], left, 'label', { under: 'of seam' })
		]);
	}
	const [over, end] = [numUnit(of(option, 'over'), unit), numUnit(of(option, 'zipEnd'), unit)];
	return sheet(WIDE, 306, `The zip is set with its bottom ${end} below the waist seam, so that ${over} stands above. Cut that off when the slider is below and the band is sewn across.`, [
		...cloth, ...zip(110, 284, 76, 'paper'), seam(62), line([88, 252], [132, 252], 'cut', true),
		...measured([226, 284], [226, waist]), words([238, 262], over, 'labelStrong', { under: 'cut last' }), words([226, 130], end, 'label', { under: 'zip ends' })
	]);
}
