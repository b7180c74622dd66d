// Two more ways with a zip: under one lap, and hidden in the seam.
import type { Draft } from '../../drafting/draft.ts';
import { topStop } from '../../drafting/opening.ts';
import type { Drawing } from '../drawing.ts';
import { numUnit, small, type Unit } from './number.ts';
import { goesOn, layer, teeth, WIDE, zip } from './part.ts';
import { arrow, leader, line, measured, onTape, rect, sheet, words } from './shape.ts';

/** The lap's stitching lies this far from its fold, and the other fold this far outside the seam line, mm (common practice, no source). */
const lap = 10;
const under = 3;

export function zipLap({ figures: { zipEndBelowSeam: end } }: Draft, unit: Unit): Drawing {
	const [wide, out] = [small(lap, unit), small(under, unit)];
	return sheet(WIDE, 372, `A lapped zip from the right side and cut across. One fold is sewn close to the teeth, ${out} outside the seam line; the other lies over it and is sewn ${wide} from its fold, and across below the stop${end === undefined ? '' : `, ${numUnit(end, unit)} below the waist line`}.`, [
		rect([0, 110], [200, 330], 'rightSide'), line([0, 330], [200, 330], 'cut'), goesOn([0, 110], [200, 110]), line([100, 330], [100, 110], 'sewn'), line([0, 306], [200, 306], 'stitch'),
		line([60, 330], [60, 150], 'stitch', true), line([60, 150], [100, 150], 'stitch', true), ...arrow([44, 160], [44, 230], 'grain'),
		...measured([60, 340], [100, 340]), line([106, 340], [204, 340], 'fine'), words([212, 332], wide, 'figure'), words([212, 306], 'from the fold', 'label'),
		...leader([100, 250], [206, 250], 'the lap’s fold'), ...leader([80, 150], [206, 168], 'zip ends'), words([12, 126], 'right side', 'label'),
		// Cut across: the under side, the zip, the lap over it.
		layer([[0, 62], [152, 62], [152, 70], [96, 70]], 'rightSide'), layer([[336, 46], [178, 46], [178, 54], [236, 54]], 'rightSide'),
		layer([[112, 38], [148, 38]], 'tape', 5), layer([[172, 38], [214, 38]], 'tape', 5), teeth([150, 38], [170, 38], 5),
		words([0, 8], 'cut across', 'label'), words([0, 84], 'lap', 'labelStrong'), words([336, 66], `other fold, ${out} out`, 'label', { anchor: 'end' }), ...leader([160, 38], [176, 18], 'zip')
	]);
}

export function zipHidden({ figures: { zipEndBelowSeam: end } }: Draft, unit: Unit): Drawing {
	const [gap, at] = [small(topStop, unit), end === undefined ? undefined : numUnit(end, unit)];
	return sheet(WIDE, 340, `An invisible zip lies open, face down on the right side, its teeth on the stitch line and its top stop ${gap} below the waist line. The teeth are rolled flat and the row lies in the groove beside them, down to the mark${at === undefined ? '' : ` at ${at}`}.`, [
		rect([0, 0], [200, 310], 'rightSide'), line([0, 310], [200, 310], 'cut'), line([200, 310], [200, 0], 'cut'), goesOn([0, 0], [200, 0]),
		line([130, 310], [130, 0], 'stitch'), line([0, 284], [200, 284], 'stitch'),
		rect([130, 40], [164, 276], 'tape', 'edge'), teeth([130, 270], [130, 44], 5), onTape(line([139, 270], [139, 76], 'stitch', true)), line([122, 76], [170, 76], 'construction'),
		...leader([130, 200], [212, 236], 'teeth on the', 'start'), words([212, 214], 'stitch line', 'label', { shift: [4, 5] }),
		...leader([139, 150], [212, 166], 'in the groove', 'start', 'labelStrong'), ...leader([170, 76], [212, 92], 'to the mark'),
		...(at === undefined ? [] : [words([216, 66], at, 'labelStrong')]), ...leader([200, 284], [212, 290], 'waist line'),
		...arrow([112, 250], [112, 140], 'grain'), words([10, 16], 'right side', 'label'), words([10, 150], 'zip face', 'label', { under: 'down' })
	]);
}

export function zipHiddenBelow(_: Draft, unit: Unit): Drawing {
	return sheet(WIDE, 300, `Both sides are in and the zip is closed. The seam below is pinned right sides together and sewn from ${small(5, unit)} above the end of the zip rows to the hem, with the zip's tail pulled out of the way.`, [
		rect([0, 0], [200, 280], 'wrongSide'), line([0, 280], [200, 280], 'cut'), line([200, 280], [200, 0], 'cut'), goesOn([0, 0], [200, 0]),
		line([140, 280], [140, 150], 'sewn'), line([140, 158], [140, 0], 'stitch', true), ...arrow([122, 130], [122, 40], 'grain'),
		...zip(222, 262, 156), line([222, 144], [238, 112], 'edge'),
		...leader([140, 216], [96, 216], 'zip row', 'end'), ...leader([140, 154], [96, 154], 'start here', 'end', 'labelStrong'), words([8, 16], 'wrong side', 'label'),
		words([236, 92], 'tail, out', 'label', { under: 'of the way' }), ...leader([140, 60], [212, 40], 'to the hem')
	]);
}
