// The opening, its zip and where the zip ends.
import type { Draft } from '../../drafting/draft.ts';
import { shopZips, topStop, zipFor, type ZipFigures } from '../../drafting/opening.ts';
import { liningShare } from '../../drafting/skirt.ts';
import { number, of, step, type Item, type Recipe } from '../recipe.ts';

const opening = of('openingBelowSeam', 'opening');
const meets = { of: 'hipWithEase', is: 'hip with ease' } as const;

/**
 * The least opening is found by trying, and proved by a sum: the shortest loop of cloth round the opened waist is a taut
 * string past the opening's end, tangent, waist arc, tangent (drafting/opening.ts). √(q² − r²) is √((q + r) × opening).
 */
export function openingRecipe({ skirt, figures }: Draft): Recipe | null {
	const { openingBelowSeam: least, liningOpeningBelowSeam: lining = 0, waistSeamGirth: seam } = figures;
	if (least === undefined || least <= 0) return null;
	const says = 'the shortest loop of cloth past its end reaches round the hip';
	const name = 'least opening below the waist seam';
	// Over a shaped band the string bends at the waist seam, round an uneven waist it follows no arc: no short sum does.
	if (skirt.band.kind === 'contour' || figures.lengthFront !== undefined) return { of: name, steps: [], says };
	// The lining's, where its own is the longer.
	const own = skirt.lining !== null && skirt.lining.share !== null && lining >= least;
	const share = own ? liningShare(skirt) : skirt.share;
	const radius = own ? of('liningWaistRadius', 'waist radius of the lining') : of('waistRadius', 'waist radius');
	const r = seam / (2 * Math.PI * share);
	const fromCorner: readonly Item[] = [radius, '+', opening];
	const half = 180 * share;
	if ((Math.acos(r / (r + least)) * 180) / Math.PI > half) {
		return { of: name, says, meets, proof: true, steps: [fromCorner, [number(Number(half.toFixed(4))), 'sin', '×', step(0), '×', number(2)]] };
	}
	return {
		of: name, says, meets, proof: true,
		steps: [
			fromCorner,
			[step(0), '+', radius],
			[step(1), '×', opening, '√'],
			[radius, '÷', step(0), 'cos⁻¹'],
			[step(3), '×', radius, '×', number('3.1416'), '÷', number(90)],
			[of('waistSeamGirth', 'waist seam'), '−', step(4)],
			[step(2), '×', number(2), '+', step(5)]
		]
	};
}

/** A draft of any style, as far as its zip goes. */
interface Zipped {
	readonly skirt: { readonly zipSeries: 'cm' | 'in' };
	readonly figures: Partial<ZipFigures> & { readonly openingBelowSeam?: number };
}

/** The next in the shops, with the two below it. */
export function zipRecipe({ skirt, figures }: Zipped): Recipe | null {
	const { openingBelowSeam: least, zipLength } = figures;
	if (least === undefined || zipLength === undefined) return null;
	const sold = shopZips[skirt.zipSeries].filter((mm) => mm <= zipLength).slice(-3);
	const says = !zipFor(least, skirt.zipSeries).inShops ? 'longer than the shops’ longest: cut from a roll'
		: least > 0 ? 'the next in the shops that is as long as the opening' : 'the shortest in the shops: no opening is needed';
	return { of: 'zip to buy', steps: [], says, among: sold.at(-1) === zipLength ? sold : [...sold.slice(-2), zipLength] };
}

/** Shortened to fit the skirt, it ends somewhere else. */
export function zipEndRecipe({ figures: { zipLength, zipEndBelowSeam } }: Zipped): Recipe | null {
	if (zipLength === undefined || zipEndBelowSeam === undefined || Math.abs(zipLength + topStop - zipEndBelowSeam) > 1e-9) return null;
	return { of: 'zip end below the waist seam', steps: [[of('zipLength', 'zip'), '+', of('topStop', 'top stop')]] };
}
