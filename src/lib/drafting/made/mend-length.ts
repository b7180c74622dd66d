// What is short or uneven between waist and hem: a nick, a panel, the cloth, the hem itself.
import type { WayOut } from '../check.ts';
import type { Draft } from '../draft.ts';
import type { MadeHem } from './as-made.ts';
import { longestIn, type Cloth } from './cloth.ts';
import { changed, clearOfNick, leastAllowance, panelAgain, same, slack, type RescueOption } from './option.ts';
import { shallowest } from '../checks/hem.ts';

/** Deeper than this a straight band no longer follows the waist, mm (common practice, no source). */
const deepestBand = 80;

const hemTo = (hem: number): WayOut => ({ path: 'skirt.hem', value: hem });
const lengthTo = (length: number): WayOut => ({ path: 'skirt.length', value: length });

/** A nick `depth` from the hem's cut edge. */
export function nickedHem(draft: Draft, depth: number): readonly RescueOption[] {
	const { skirt } = draft;
	const { hem } = skirt;
	if (depth <= hem - clearOfNick + slack) return [same('hold-in-hem', { left: hem - depth, depth, hem }), ...narrowerHem(draft, depth), panelAgain(draft)];
	const least = depth + clearOfNick - hem;
	return [
		...narrowerHem(draft, depth),
		...changed(draft, 'shorter-nick-in-hem', { shorter: least, length: skirt.length - least, hem }, [lengthTo(skirt.length - least)]),
		...changed(draft, 'shorter', { shorter: depth, length: skirt.length - depth, hem }, [lengthTo(skirt.length - depth)]),
		panelAgain(draft)
	];
}

/** `by` less cloth below the hem fold: the length stays. */
const narrowerHem = (draft: Draft, by: number): readonly RescueOption[] => {
	const { skirt, figures } = draft;
	const hem = skirt.hem - by;
	if (hem < shallowest[skirt.hemFinish] - slack) return [];
	return changed(draft, 'narrower-hem', { hem, less: by, length: skirt.length, cutHemRadius: figures.hemRadius + hem }, [hemTo(hem)]);
};

/** A panel `short` mm short between its cut edges. */
export function shortPanel(draft: Draft, short: number): readonly RescueOption[] {
	const { skirt } = draft;
	const { hem, band } = skirt;
	const depth = band.depth + short;
	// A facing sewn to the edge needs its seam's allowance; the rest of the hem's comes back as length.
	const back = hem - leastAllowance;
	const shorter = Math.max(0, short - back);
	return [
		...narrowerHem(draft, short),
		...(back > 0 ? changed(draft, 'faced-hem', { allowance: leastAllowance, shorter, length: skirt.length - shorter }, [
			hemTo(leastAllowance), ...(shorter > 0 ? [lengthTo(skirt.length - shorter)] : [])
		]) : []),
		...(depth <= deepestBand + slack ? changed(draft, 'deeper-band', {
			depth, bandCutDepth: 2 * depth + 2 * skirt.allowances.waist, length: skirt.length, skirtLength: skirt.length - depth
		}, [{ path: 'skirt.band.depth', value: depth }]) : []),
		...changed(draft, 'shorter', { shorter: short, length: skirt.length - short, hem }, [lengthTo(skirt.length - short)]),
		panelAgain(draft)
	];
}

/** Shares with a name, from wide to narrow. */
const narrower = [3 / 2, 5 / 4, 1, 3 / 4, 2 / 3, 1 / 2, 3 / 8, 1 / 3, 1 / 4] as const;
const mostPanels = 12;

/** Cloth that gives less length than the plan needs. */
export function shortCloth(draft: Draft, cloth: Cloth): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { skirtLength, waistSeamGirth: seam } = figures;
	const gives = (choices: Partial<Pick<typeof skirt, 'share' | 'panels' | 'hem'>>): number => longestIn(cloth, seam, { ...skirt, ...choices });
	const longest = gives({});
	const options: RescueOption[] = [];
	const hem = shallowest[skirt.hemFinish];
	if (hem < skirt.hem && gives({ hem }) >= skirtLength) {
		// Only as narrow as it must be: the box is as large as the cut hem, so every mm of hem is one of length.
		const spared = Math.max(hem, skirt.hem - (skirtLength - longest));
		const fits = gives({ hem: spared }) >= skirtLength - slack ? spared : hem;
		options.push(...changed(draft, 'narrower-hem', { hem: fits, less: skirt.hem - fits, length: skirt.length, cutHemRadius: figures.hemRadius + fits }, [hemTo(fits)]));
	}
	for (let panels = skirt.panels + 1; panels <= mostPanels; panels++) {
		if (gives({ panels }) < skirtLength) continue;
		const found = changed(draft, 'more-panels', { panels, length: skirt.length }, [{ path: 'skirt.panels', value: panels }]);
		options.push(...found);
		if (found.length > 0) break;
	}
	for (const share of narrower) {
		if (share >= skirt.share || gives({ share }) < skirtLength) continue;
		const found = changed(draft, 'less-flare', { share, length: skirt.length }, [{ path: 'skirt.share', value: share }]);
		options.push(...found);
		if (found.length > 0) break;
	}
	if (longest > 0) {
		const length = longest + skirt.band.depth;
		options.push(...changed(draft, 'shorter', { shorter: skirt.length - length, length, hem: skirt.hem }, [lengthTo(length)]));
	}
	return options;
}

/** Cut level: at the height of the highest place, at the height that was chosen, or the same cut with a narrower hem. */
export function dippingHem(draft: Draft, lowest: MadeHem, chosen: MadeHem | null): readonly RescueOption[] {
	const { skirt } = draft;
	const level = ({ above, cutEdgeAbove, mostTrim, dip }: MadeHem): RescueOption['figures'] => ({ above, cutEdgeAbove, mostTrim, dip, hem: skirt.hem });
	const { narrow } = shallowest;
	return [
		same('level-lowest', level(lowest), lowest.trims),
		...(chosen ? [same('level-chosen', level(chosen), chosen.trims)] : []),
		...(skirt.hem > narrow + slack ? changed(draft, 'level-narrow', {
			...level(lowest), hem: narrow, above: lowest.cutEdgeAbove + narrow, lower: skirt.hem - narrow
		}, [hemTo(narrow), { path: 'skirt.hemFinish', value: 'narrow' }], lowest.trims) : [])
	];
}
