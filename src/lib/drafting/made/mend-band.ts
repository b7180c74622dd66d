// A band that is short, tight or loose. G the planned seam, θ the sweep.
import type { Draft } from '../draft.ts';
import { easesIn } from './as-made.ts';
import { changed, leastAllowance, leastByZip, leastUnderlap, same, slack, stripFor, type RescueOption } from './option.ts';

const bandAgain = ({ figures }: Draft, longer = 0): RescueOption =>
	same('cut-band-again', { bandCutLength: figures.bandCutLength + longer, bandCutDepth: figures.bandCutDepth });
const underlapTo = (draft: Draft, code: 'smaller-underlap' | 'move-fastening-out' | 'move-fastening-in' | 'let-out-zip-seam', underlap: number, figures: RescueOption['figures']): readonly RescueOption[] =>
	(underlap >= leastUnderlap - slack ? changed(draft, code, { underlap, ...figures }, [{ path: 'skirt.band.underlap', value: underlap }]) : []);

/** A band cut `short` mm short. */
export function shortBand(draft: Draft, short: number): readonly RescueOption[] {
	const { skirt, figures } = draft;
	const { allowances, band, waistEase } = skirt;
	const ends = allowances.seam - short / 2;
	const nearer = short / figures.sweepAngle;
	const left = allowances.waist - nearer;
	return [
		...(ends >= leastAllowance - slack ? [same('narrower-ends', { allowance: ends, short })] : []),
		...underlapTo(draft, 'smaller-underlap', band.underlap - short, { short }),
		// A join takes an allowance from the band and one from the piece.
		same('piece-on', { piece: short + 2 * allowances.seam, short, allowance: allowances.seam, bandCutLength: figures.bandCutLength }),
		// A waist with less ease is sewn x/θ nearer to the edge (circle geometry).
		...(waistEase - short >= 0 && left >= leastAllowance - slack ? changed(draft, 'band-less-ease', {
			waistEase: waistEase - short, waistSeam: figures.waistSeamGirth - short, nearer, allowance: left, skirtLength: figures.skirtLength + nearer
		}, [{ path: 'skirt.waistEase', value: waistEase - short }, { path: 'skirt.length', value: skirt.length + nearer }]) : []),
		bandAgain(draft)
	];
}

/** The closed band should go round `by` mm more. */
export function tightBand(draft: Draft, by: number): readonly RescueOption[] {
	const { body, skirt, figures } = draft;
	const { allowances, band } = skirt;
	const { sweepAngle: sweep, waistRadius, skirtLength, bandCutLength } = figures;
	const strip = stripFor(by, 2, waistRadius);
	const deeper = by / sweep;
	return [
		...(by <= easesIn + slack ? underlapTo(draft, 'move-fastening-out', band.underlap - by, { by }) : []),
		// The band gives from its underlap what the seam lets out.
		...(strip !== undefined && allowances.seam - strip >= leastByZip - slack
			? underlapTo(draft, 'let-out-zip-seam', band.underlap - by, { by, perEdge: strip, allowance: allowances.seam - strip }) : []),
		...(deeper < skirtLength ? changed(draft, 'lower-with-new-band', {
			by, deeper, waistSeam: figures.waistSeamGirth + by, bandCutLength: bandCutLength + by, skirtLength: skirtLength - deeper
		}, [{ path: 'body.waist', value: body.waist + by }, { path: 'skirt.length', value: skirt.length - deeper }]) : []),
		bandAgain(draft, by)
	];
}

/** The closed band should go round `by` mm less. */
export function looseBand(draft: Draft, by: number): readonly RescueOption[] {
	const { body, skirt, figures } = draft;
	const { sweepAngle: sweep, waistSeamGirth: planned, waistRadius, hemRadius, bandCutLength, skirtLength } = figures;
	const narrower = (planned - by) / waistRadius;
	const edges = 2 * skirt.panels;
	return [
		...(by <= easesIn + slack ? [
			...underlapTo(draft, 'move-fastening-in', skirt.band.underlap + by, { by }),
			same('shorter-band', { by, ease: by, bandCutLength: bandCutLength - by })
		] : []),
		// A wedge at every seam, its point at the corner: a sector of the sweep (G − x)/r (circle geometry).
		...changed(draft, 'take-in', {
			by, edges, atWaist: by / edges, atHem: (hemRadius * (sweep - narrower)) / edges, share: narrower / (2 * Math.PI), waistSeam: planned - by,
			bandCutLength: bandCutLength - by, skirtLength
		}, [{ path: 'body.waist', value: body.waist - by }, { path: 'skirt.share', value: narrower / (2 * Math.PI) }]),
		bandAgain(draft, -by)
	];
}
