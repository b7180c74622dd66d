// A tiered skirt's figures as sums: arithmetic, tier by tier.
import { elasticLap } from '../../drafting/band/elastic.ts';
import { topStop } from '../../drafting/opening.ts';
import type { TieredDraft } from '../../drafting/tiered/draft.ts';
import type { TierFigures } from '../../drafting/tiered/figures.ts';
import type { TieredSkirt } from '../../drafting/tiered/skirt.ts';
import { fixed, number, of, step, type Book, type Item, type Recipe } from '../recipe.ts';
import { waistSeamRecipe } from './flared.ts';
import { zipEndRecipe, zipRecipe } from './opening.ts';

const seam = of('waistSeamGirth', 'waist seam');
const end = of('seamAllowance', 'seam allowance');
const depth = of('bandDepth', 'band');
const allowance = of('waistAllowance', 'allowance');

/** A ratio to four places: under 0.1 mm in 2 m. */
const ratio = (value: number): Item => number(Number(value.toFixed(4)));

/** `tier2Girth` and its like. */
type Part = keyof Pick<TierFigures, 'length' | 'girth' | 'gathered' | 'stripLength' | 'stripCutLength' | 'cutDepth' | 'clothLength'>;
const parts: readonly Part[] = ['length', 'girth', 'gathered', 'stripLength', 'stripCutLength', 'cutDepth', 'clothLength'];
const nameOf = (tier: number, part: Part): string => `tier${tier}${part.charAt(0).toUpperCase()}${part.slice(1)}`;

function tierRecipe({ skirt }: TieredDraft, told: TierFigures, part: Part): Recipe | null {
	const { tier } = told;
	const own = (which: Part, is: string): Item => of(nameOf(tier, which), is);
	const above = tier === 1 ? seam : of(nameOf(tier - 1, 'girth'), `tier ${tier - 1}`);
	const recipe = (says: string, ...steps: readonly (readonly Item[])[]): Recipe => ({ of: `tier ${tier}, ${says}`, mm: told[part], steps });
	switch (part) {
		case 'length': return lengthRecipe(skirt, told);
		case 'girth': return recipe('flat', [above, '×', ratio(told.ratio)]);
		case 'gathered': return recipe('taken up by the gathers', [own('girth', 'flat'), '−', above]);
		case 'stripLength': return told.strips === 1 ? null : recipe(`each of ${told.strips} strips`, [own('girth', 'flat'), '÷', number(told.strips)]);
		case 'stripCutLength': return recipe('strip, cut length', [told.strips === 1 ? own('girth', 'flat') : own('stripLength', 'strip'), '+', end, '+', end]);
		case 'cutDepth': return recipe('strip, cut depth', [own('length', 'length'), '+', tier === 1 ? allowance : end, '+', tier === skirt.tiers ? of('hemAllowance', 'hem allowance') : end]);
		case 'clothLength': return recipe('along the cloth', [own('cutDepth', 'cut depth'), '×', number(told.strips)]);
	}
}

function lengthRecipe({ lengths, tiers }: TieredSkirt, told: TierFigures): Recipe | null {
	const whole = of('skirtLength', 'length below the band');
	const recipe = (steps: Recipe['steps'], says?: string): Recipe => ({ of: `tier ${told.tier}, length`, mm: told.length, steps, ...(says && { says }) });
	if (lengths.kind === 'given') return null;
	if (lengths.kind === 'equal') return recipe([[whole, '÷', number(tiers)]]);
	const sum = Array.from({ length: tiers }, (_, i) => lengths.by ** i).reduce((all, one) => all + one, 0);
	const part = Number((lengths.by ** (told.tier - 1)).toFixed(4));
	return recipe([[whole, '×', number(part), '÷', ratio(sum)]], `its part of the length below the band: ${part} of ${Number(sum.toFixed(4))}`);
}

export function tieredBook(draft: TieredDraft): readonly [Book, readonly string[]] {
	const { body, skirt, figures } = draft;
	const recipes: Record<string, Recipe | null> = {
		waistSeamGirth: waistSeamRecipe(body, skirt),
		skirtLength: { of: 'length below the band', steps: [[of('length', 'finished length'), '−', depth]] }
	};
	const known: Record<string, number | undefined> = {
		waist: body.waist, hip: body.hip, waistToHip: body.waistToHip, waistEase: skirt.waistEase, hipEase: skirt.hipEase, length: skirt.length, bandDepth: skirt.band.depth, underlap: skirt.band.underlap, topStop,
		seamAllowance: skirt.allowances.seam, waistAllowance: skirt.allowances.waist, hemAllowance: skirt.hem,
		waistSeamGirth: figures.waistSeamGirth, skirtLength: figures.skirtLength, bandCutLength: figures.bandCutLength, bandCutDepth: figures.bandCutDepth,
		openingBelowSeam: figures.openingBelowSeam, zipLength: figures.zipLength, zipEndBelowSeam: figures.zipEndBelowSeam, clothLength: figures.clothLength, elasticLength: figures.elasticLength
	};
	for (const told of figures.tiers) {
		for (const part of parts) {
			recipes[nameOf(told.tier, part)] = tierRecipe(draft, told, part);
			known[nameOf(told.tier, part)] = told[part];
		}
	}
	recipes.clothLength = {
		of: 'along the cloth, all tiers', steps: [figures.tiers.flatMap(({ tier }, i) => [...(i > 0 ? ['+' as const] : []), of(nameOf(tier, 'clothLength'), `tier ${tier}`)])]
	};
	recipes.bandCutLength = { of: 'band, cut length', steps: [[seam, ...(skirt.band.underlap > 0 ? ['+' as const, of('underlap', 'underlap')] : []), '+', end, '+', end]] };
	recipes.bandCutDepth = { of: 'band, cut depth', steps: [[depth, '+', allowance], [step(0), '×', number(2)]] };
	recipes.elasticLength = { of: 'elastic, cut length', steps: [[of('waist', 'waist'), '×', number('0.9'), '+', fixed(elasticLap, 'lap')]] };
	const least = figures.openingBelowSeam ?? 0;
	recipes.openingBelowSeam = least > 0 ? { of: 'least opening below the waist seam', steps: [], says: 'the shortest loop of cloth past its end reaches round the hip' } : null;
	recipes.zipLength = zipRecipe(draft);
	recipes.zipEndBelowSeam = zipEndRecipe(draft);
	return [{ recipe: (name) => recipes[name] ?? null, mm: (name) => known[name] }, Object.keys(recipes)];
}
