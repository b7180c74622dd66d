// A band that is short, or closes at another place.
import type { Draft } from '../../../drafting/draft.ts';
import type { RescueOption } from '../../../drafting/made/option.ts';
import type { RescueDraft } from '../../../drafting/made/rescue.ts';
import type { Drawing } from '../../drawing.ts';
import { num, numUnit, small, type Unit } from '../number.ts';
import { WIDE } from '../part.ts';
import { line, measured, rect, sheet, words } from '../shape.ts';
import { number } from './part.ts';
import { of } from './waist.ts';

export function pieced(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const [piece, whole, s] = [small(of(option, 'piece'), unit), num(of(option, 'bandCutLength'), unit), small(of(option, 'allowance'), unit)];
	return sheet(WIDE, 236, `The band is ${small(found.fault, unit)} short. Cut a piece ${piece} long and join it, ${s} from both edges. The band is then ${whole} long.`, [
		rect([20, 130], [236, 190], 'wrongSide', 'edge'), rect([236, 130], [316, 190], 'rightSide', 'cut'), line([236, 130], [236, 190], 'stitch', true), line([216, 130], [216, 190], 'fine'),
		...measured([236, 206], [316, 206]), words([316, 214], piece, 'labelStrong', { anchor: 'end' }), words([110, 156], 'band as cut', 'label', { anchor: 'middle' }), words([276, 156], 'piece', 'label', { anchor: 'middle' }),
		words([236, 104], `join, ${s}`, 'label', { anchor: 'middle' }), number(60, whole, 'long in all')
	]);
}

/** The ends: less allowance at both, less underlap, or the fastening moved. */
export function ends(draft: Draft, found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const narrower = option.code === 'narrower-ends';
	const [is, was] = narrower ? [of(option, 'allowance'), draft.skirt.allowances.seam] : [of(option, 'underlap'), draft.skirt.band.underlap];
	const what = narrower ? 'end allowance' : 'underlap';
	const [now, before] = [small(is, unit), small(was, unit)];
	const out = is >= was;
	return sheet(WIDE, 236, `The band isn’t cut. Its ${what} is ${now} in place of ${before}${narrower ? ', at both ends' : ''}. That makes up ${small(found.fault, unit)}.${option.code === 'let-out-zip-seam' ? ` Each zip edge is sewn ${small(of(option, 'perEdge'), unit)} nearer to its cut edge.` : ''}`, [
		rect([20, 120], [316, 190], 'rightSide', 'edge'), line([out ? 226 : 216, 120], [out ? 226 : 216, 190], 'asItWas'), line([out ? 206 : 252, 120], [out ? 206 : 252, 190], 'stitch', true),
		...measured([out ? 206 : 252, 204], [316, 204]), words([316, 212], now, 'labelStrong', { anchor: 'end' }), words([110, 148], 'band', 'label', { anchor: 'middle' }), words([20, 210], `was ${before}`, 'label'),
		words([170, 98], 'band: leave it whole', 'label', { anchor: 'middle' }), number(56, now, what)
	]);
}

/** A band to cut, straight along the grain. */
export function cutBand(option: RescueOption, unit: Unit, was: number): Drawing {
	const [long, before] = [numUnit(of(option, 'bandCutLength'), unit), num(was, unit)];
	const deep = option.figures.bandCutDepth;
	const ease = option.figures.ease;
	return sheet(WIDE, 236, `A band along the straight grain, ${long} long${deep === undefined ? '' : ` and ${num(deep, unit)} deep`}. The one before was planned at ${before}.${ease === undefined ? '' : ` The skirt’s waist is eased in by ${small(ease, unit)}.`}`, [
		rect([20, 120], [316, 190], 'wrongSide', 'cut'), line([60, 155], [276, 155], 'grain'), ...measured([20, 206], [316, 206]), words([170, 162], 'grain', 'label', { anchor: 'middle' }),
		words([170, 98], deep === undefined ? `ease ${small(ease ?? 0, unit)} in` : `${num(deep, unit)} deep`, 'label', { anchor: 'middle' }), number(56, long, `long; was ${before}`)
	]);
}
