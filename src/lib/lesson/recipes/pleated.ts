// A pleated skirt's figures as sums: arithmetic on the folding (drafting/pleated/folding.ts).
import { topStop } from '../../drafting/opening.ts';
import type { PleatedDraft } from '../../drafting/pleated/draft.ts';
import { pairs } from '../../drafting/pleated/folding.ts';
import { number, of, step, type Book, type Recipe } from '../recipe.ts';
import { zipEndRecipe, zipRecipe } from './opening.ts';

const seam = of('waistSeamGirth', 'waist seam');
const round = of('hipGirth', 'hip with ease');
const deep = of('depthAtHip', 'depth of a pleat');
const end = of('seamAllowance', 'end allowance');
const depth = of('bandDepth', 'band');
const allowance = of('waistAllowance', 'allowance');

export function pleatedBook(draft: PleatedDraft): readonly [Book, readonly string[]] {
	const { body, skirt, figures } = draft;
	const count = number(skirt.pleats);
	/** A pair of folds takes its depth twice. */
	const times = 2 * pairs[skirt.kind];
	const opens = figures.taper >= 0;
	const recipes: Readonly<Record<string, Recipe | null>> = {
		waistSeamGirth: { of: 'waist seam', steps: [[of('waist', 'waist'), '+', of('waistEase', 'ease')]] },
		hipGirth: { of: 'hip with ease', steps: [[of('hip', 'hip'), '+', of('hipEase', 'hip ease')]] },
		skirtLength: { of: 'length below the band', steps: [[of('length', 'finished length'), '−', depth]] },
		spacingAtWaist: { of: 'from pleat to pleat at the waist', steps: [[seam, '÷', count]] },
		spacingAtHip: { of: 'from pleat to pleat at the hip', steps: [[round, '÷', count]] },
		taper: {
			of: `each pleat takes ${opens ? 'more' : 'less'} at the waist`, mm: Math.abs(figures.taper),
			steps: [opens ? [round, '−', seam] : [seam, '−', round], [step(0), '÷', count]]
		},
		depthAtWaist: {
			of: 'depth of a pleat at the waist', says: `depth of a pleat ${opens ? '+' : '−'} what it takes ${opens ? 'more' : 'less'} ÷ ${times}`,
			steps: [[of('taper', 'taper'), '÷', number(times)], [deep, opens ? '+' : '−', step(0)]]
		},
		// From all the pleats at once: sixty roundings of one would come to millimetres.
		flatWidth: { of: 'pleats laid flat', says: `hip with ease + ${times} depths for each of ${skirt.pleats} pleats`, steps: [[deep, '×', number(times), '×', count, '+', round]] },
		panelCutDepth: { of: 'panel, cut depth', steps: [[of('skirtLength', 'length below the band'), '+', allowance, '+', of('hemAllowance', 'hem allowance')]] },
		clothLength: { of: 'along the cloth, all panels', steps: [[of('panelCutDepth', 'cut depth'), '×', number(figures.panels)]] },
		bandCutLength: { of: 'band, cut length', steps: [[seam, ...(skirt.band.underlap > 0 ? ['+' as const, of('underlap', 'underlap')] : []), '+', end, '+', end]] },
		bandCutDepth: { of: 'band, cut depth', steps: [[depth, '+', allowance], [step(0), '×', number(2)]] },
		openingBelowSeam: figures.openingBelowSeam > 0 ? { of: 'least opening below the waist seam', steps: [], says: 'the shortest loop of cloth past its end reaches round the hip' } : null,
		zipLength: zipRecipe(draft),
		zipEndBelowSeam: zipEndRecipe(draft)
	};
	const known: Readonly<Record<string, number | undefined>> = {
		waist: body.waist, hip: body.hip, waistToHip: body.waistToHip, waistEase: skirt.waistEase, hipEase: skirt.hipEase, length: skirt.length, bandDepth: skirt.band.depth, underlap: skirt.band.underlap, topStop,
		seamAllowance: skirt.allowances.seam, waistAllowance: skirt.allowances.waist, hemAllowance: skirt.hem, ...figures
	};
	return [{ recipe: (name) => recipes[name] ?? null, mm: (name) => known[name] }, Object.keys(recipes)];
}
