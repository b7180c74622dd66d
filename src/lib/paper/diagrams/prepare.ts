// Preparing the cloth: the test seam, the grain, the width.
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing } from '../drawing.ts';
import { num, numUnit, type Unit } from './number.ts';
import { shellPanels, viewPanel } from './panel.ts';
import { tape, WIDE } from './part.ts';
import { area, arrow, leader, line, linePath, measured, rect, sheet, words } from './shape.ts';

export function testSeam({ skirt }: Draft, unit: Unit): Drawing {
	const allowance = numUnit(skirt.allowances.seam, unit);
	return sheet(WIDE, 272, `A scrap of two layers, right sides together, sewn ${allowance} from its cut edges. Beside it a scrap with interfacing fused to the wrong side.`, [
		rect([14, 82], [204, 226], 'wrongSide', 'edge'), line([204, 82], [204, 226], 'cut'),
		line([160, 82], [160, 226], 'stitch', true), ...measured([160, 242], [204, 242]),
		words([216, 234], allowance, 'figure', { under: 'from the edge' }),
		words([26, 196], 'wrong side', 'label'), words([26, 122], 'right sides', 'label', { under: 'together' }),
		...leader([160, 160], [222, 160], 'test seam', 'start', 'labelStrong'), ...leader([204, 108], [222, 108], 'cut edges'),
		rect([14, 12], [204, 64], 'wrongSide', 'edge'), rect([34, 20], [184, 56], 'interfacing', 'edge'),
		...leader([184, 38], [222, 38], 'interfacing')
	]);
}

export function straightenGrain(): Drawing {
	return sheet(WIDE, 262, 'The end of the cloth is crooked. One crosswise thread is pulled out from selvedge to selvedge, and the cloth is cut along the gap it leaves.', [
		area(linePath([24, 12], [316, 12], [316, 250], [24, 204]), 'wrongSide', 'edge'),
		line([31, 12], [31, 205], 'fine'), line([309, 12], [309, 249], 'fine'),
		line([24, 160], [316, 160], 'cut', true), ...arrow([240, 182], [304, 182]),
		words([228, 187], 'pull one thread', 'label', { anchor: 'end' }),
		words([170, 128], 'cut along the gap', 'labelStrong', { anchor: 'middle' }),
		words([54, 84], 'selvedge', 'label', { angle: Math.PI / 2, anchor: 'middle' }), words([298, 84], 'selvedge', 'label', { angle: Math.PI / 2, anchor: 'middle' }),
		...arrow([170, 30], [170, 104], 'grain', true), words([180, 60], 'grain')
	]);
}

export function clothWidth(draft: Draft, unit: Unit): Drawing {
	const [panel] = shellPanels(draft.pieces);
	if (!panel) throw new Error(`no skirt panel among ${draft.pieces.length} pieces`);
	// The fold lies across the cloth, so the width has to hold the half panel along its fold, and beside it the band.
	const { box } = viewPanel(panel, panel.fold !== null);
	const need = box.to[1] - box.from[1] + draft.figures.bandCutDepth;
	return sheet(WIDE, 226, `A tape across the cloth, from inside one selvedge to inside the other. It should read ${num(need, unit)} ${unit} or more.`, [
		rect([14, 14], [326, 150], 'wrongSide', 'edge'), line([28, 14], [28, 150], 'fine'), line([312, 14], [312, 150], 'fine'),
		tape(linePath([28, 118], [312, 118]), unit, [], need / 284),
		line([28, 60], [28, 166], 'edge'), line([312, 60], [312, 166], 'edge'), ...measured([28, 166], [312, 166]),
		words([170, 196], numUnit(need, unit), 'figure', { anchor: 'middle' }),
		words([170, 50], 'or more, inside the selvedges', 'label', { anchor: 'middle' }), words([170, 28], 'wrong side', 'label', { anchor: 'middle' })
	]);
}
