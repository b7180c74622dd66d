// A flared skirt's figures as sums (circle geometry where a sweep stands in them; the rest is arithmetic).
import { elasticLap } from '../../drafting/band/elastic.ts';
import type { Draft } from '../../drafting/draft.ts';
import { liningBelowZip } from '../../drafting/opening.ts';
import type { Band, FlaredSkirt } from '../../drafting/skirt.ts';
import { figureOf } from '../figure.ts';
import { fixed, number, of, step, sweep, type Book, type Recipe } from '../recipe.ts';
import { openingRecipe, zipEndRecipe, zipRecipe } from './opening.ts';

const waist = of('waist', 'waist');
const ease = of('waistEase', 'ease');
const seam = of('waistSeamGirth', 'waist seam');
const radius = of('waistRadius', 'waist radius');
const hemRadius = of('hemRadius', 'hem radius');
const cutHem = of('cutHemRadius', 'cut radius at the hem');
const depth = of('bandDepth', 'band');
const allowance = of('waistAllowance', 'allowance');
const end = of('seamAllowance', 'end allowance');
const hem = of('hemAllowance', 'hem allowance');
const belowBand = of('skirtLength', 'length below the band');
const hip = of('hip', 'hip');
const hipEase = of('hipEase', 'hip ease');

/** All that is drawn from the waist radius and marked with a ruler. */
const drawn = ['cutWaistRadius', 'hemRadius', 'cutHemRadius', 'waistFacingRadius'];

const recipes: Readonly<Record<string, (draft: Draft) => Recipe | null>> = {
	waistSeamGirth: ({ body, skirt }) => waistSeamRecipe(body, skirt),
	waistRadius: ({ skirt }) => ({ of: 'waist radius', steps: [[seam, '÷', sweep(skirt.share)]], drawn }),
	cutWaistRadius: () => ({ of: 'cut radius at the waist', steps: [[radius, '−', allowance]] }),
	skirtLength: ({ skirt }) => ({ of: skirt.band.depth > 0 ? 'length below the band' : 'length of the skirt', steps: [[of('length', 'finished length'), ...(skirt.band.depth > 0 ? ['−' as const, depth] : [])]] }),
	hemRadius: () => ({ of: 'hem radius', steps: [[radius, '+', belowBand]] }),
	cutHemRadius: () => ({ of: 'cut radius at the hem', steps: [[hemRadius, '+', hem]] }),
	// θR is G + θL: what stands here doesn't carry the radius's rounding round the whole hem.
	hemSweep: ({ skirt }) => ({ of: 'round the hem', steps: [[belowBand, '×', sweep(skirt.share), '+', seam]] }),
	hemToEase: ({ skirt, figures }) => {
		if (skirt.hemFinish === 'bound' || skirt.hemFinish === 'faced') return null;
		const twice = skirt.hemFinish !== 'turned';
		return { of: 'to ease into the hem', mm: (twice ? 1 : 2) * figures.sweepAngle * skirt.hem, steps: [[hem, ...(twice ? [] : ['×' as const, number(2)]), '×', sweep(skirt.share)]] };
	},
	clothLength: ({ figures, skirt: { panels } }) => ({ of: 'along the cloth', steps: [2 * panels * figures.cutHemRadius < figures.bandCutLength ? [of('bandCutLength', 'band')] : [cutHem, '×', number(2 * panels)]] }),
	clothWidth: ({ skirt }) => ({ of: 'across the cloth', steps: [[cutHem, '+', of('seamAllowance', 'back allowance'), ...(skirt.band.kind === 'faced' ? [] : ['+' as const, of('bandCutDepth', 'band')])]] }),
	bandTopGirth: ({ body, skirt }) => (skirt.band.kind === 'contour' ? { of: 'top edge of the band', mm: body.waist + skirt.waistEase, steps: [[waist, '+', ease]] } : null),
	bandTopRadius: ({ skirt, figures }) => (skirt.band.kind === 'contour' && figures.bandTopRadius !== undefined ? {
		of: 'band, radius of the top edge', mm: figures.bandTopRadius, says: 'top edge × depth ÷ (lower edge − top edge)',
		steps: [[seam, '−', of('bandTopGirth', 'top edge')], [of('bandTopGirth', 'top edge'), '×', depth, '÷', step(0)]]
	} : null),
	bandLowRadius: ({ skirt, figures }) => (skirt.band.kind === 'contour' && figures.bandLowRadius !== undefined
		? { of: 'band, radius of the waist seam', mm: figures.bandLowRadius, steps: [[of('bandTopRadius', 'radius of the top edge'), '+', depth]] } : null),
	bandCutLength: ({ skirt }) => (skirt.band.kind === 'faced' ? null : {
		of: skirt.band.kind === 'contour' ? 'band along the waist seam, cut' : 'band, cut length', says: `waist seam + ${skirt.band.underlap > 0 ? 'underlap + ' : ''}both end allowances`,
		steps: [[seam, ...(skirt.band.underlap > 0 ? ['+' as const, of('underlap', 'underlap')] : []), '+', end, '+', end]]
	}),
	bandCutDepth: ({ skirt }) => (skirt.band.kind === 'faced' ? null
		: skirt.band.kind === 'contour' ? { of: 'band, cut depth', says: 'band + both allowances', steps: [[depth, '+', allowance, '+', allowance]] }
			: { of: 'band, cut depth', steps: [[depth, '+', allowance], [step(0), '×', number(2)]] }),
	elasticLength: ({ figures }) => (figures.elasticLength === undefined ? null : {
		of: 'elastic, cut length', mm: figures.elasticLength, steps: [[waist, '×', number('0.9'), '+', fixed(elasticLap, 'lap')]]
	}),
	waistFacingRadius: ({ skirt, figures }) => (skirt.band.kind === 'faced' ? {
		of: 'waist facing, outer radius', mm: figures.waistRadius + skirt.band.facing, steps: [[radius, '+', fixed(skirt.band.facing, 'depth of the facing')]]
	} : null),
	hipWithEase: () => ({ of: 'hip with ease', steps: [[hip, '+', hipEase]] }),
	hipDepth: ({ skirt: { band }, figures }) => (figures.hipDepth === undefined || band.depth === 0 || band.sits === 'above' || figures.hipDepth === 0 ? null : {
		of: 'hip below the waist seam', mm: figures.hipDepth,
		steps: band.sits === 'below' ? [[of('waistToHip', 'waist to hip'), '−', depth]] : [[depth, '÷', number(2)], [of('waistToHip', 'waist to hip'), '−', step(0)]]
	}),
	girthAtHip: ({ skirt, figures }) => (figures.hipDepth === undefined || figures.girthAtHip === undefined || figures.hipDepth > figures.skirtLength ? null : {
		of: 'round the skirt at the hip', mm: figures.girthAtHip, steps: [[of('hipDepth', 'hip below the waist seam'), '×', sweep(skirt.share), '+', seam]], meets: { of: 'hipWithEase', is: 'hip with ease' }
	}),
	liningWaistRadius: ({ skirt, figures }) => (skirt.lining === null || skirt.lining.share === null || figures.liningWaistRadius === undefined ? null : {
		of: 'waist radius of the lining', mm: figures.liningWaistRadius, steps: [[seam, '÷', sweep(skirt.lining.share)]], drawn: ['liningHemRadius', 'liningCutHemRadius']
	}),
	liningHemRadius: ({ skirt }) => (skirt.lining === null ? null : {
		of: 'hem radius of the lining', steps: [[skirt.lining.share === null ? radius : of('liningWaistRadius', 'its waist radius'), '+', belowBand, '−', of('liningShorterBy', 'shorter by')]]
	}),
	liningCutHemRadius: ({ skirt }) => (skirt.lining === null ? null : { of: 'cut radius at the lining’s hem', steps: [[of('liningHemRadius', 'its hem radius'), '+', hem]] }),
	openingBelowSeam: openingRecipe,
	zipLength: zipRecipe,
	zipEndBelowSeam: zipEndRecipe,
	liningOpening: ({ figures }) => (figures.zipEndBelowSeam === undefined || figures.zipEndBelowSeam + liningBelowZip < (figures.liningOpeningBelowSeam ?? 0) ? null
		: { of: 'opening of the lining', steps: [[of('zipEndBelowSeam', 'zip end'), '+', fixed(liningBelowZip, 'room below the zip')]] })
};

/** Of an elastic the larger of two sums stands last; a contour band's lower edge is read, not worked out. */
export function waistSeamRecipe(body: Draft['body'], { band, waistEase, hipEase: overHip }: Pick<FlaredSkirt, 'waistEase' | 'hipEase'> & { readonly band: Pick<Band, 'kind'> }): Recipe | null {
	if (band.kind === 'contour') return null;
	const round = [[waist, '+', ease], [hip, '+', hipEase]] as const;
	if (band.kind !== 'elastic' || body.hip === undefined) return { of: 'waist seam', steps: [round[0]] };
	return { of: 'waist seam', says: 'waist + ease or hip + hip ease, the longer', steps: body.hip + overHip > body.waist + waistEase ? round : [round[1], round[0]] };
}

export const flaredNames: readonly string[] = Object.keys(recipes);

/** What no such sum gives where lengths differ or the waist dips: its edges are no arcs about the corner, and are measured. */
const ofArcs: ReadonlySet<string> = new Set([
	'waistRadius', 'cutWaistRadius', 'skirtLength', 'hemRadius', 'cutHemRadius', 'hemSweep', 'hemToEase', 'clothLength', 'clothWidth', 'waistFacingRadius', 'girthAtHip',
	'liningWaistRadius', 'liningHemRadius', 'liningCutHemRadius'
]);

export function flaredBook(draft: Draft): Book {
	const uneven = draft.figures.lengthFront !== undefined;
	return {
		recipe: (name) => (uneven && ofArcs.has(name) ? null : recipes[name]?.(draft) ?? null),
		mm: (name) => figureOf(name, draft) ?? (name === 'hipDepth' ? draft.figures.hipDepth : undefined)
	};
}
