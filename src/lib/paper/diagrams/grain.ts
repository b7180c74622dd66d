// The two grains and the bias between them.
import type { Drawing } from '../drawing.ts';
import { WIDE } from './part.ts';
import { area, arrow, line, linePath, rect, sheet, words } from './shape.ts';

/** True bias: 45° to the selvedge, where cloth stretches most (Nebraska Extension G91-1028). */
export function grainBias(): Drawing {
	return sheet(WIDE, 300, 'A square of cloth with its selvedge on the left. The straight grain runs along the selvedge, the crosswise grain across it, and the true bias at 45 degrees between them. A corner folded up along the bias lays the cut edge on the selvedge.', [
		rect([24, 14], [264, 254], 'rightSide', 'edge'), line([32, 14], [32, 254], 'fine'),
		area(linePath([264, 14], [264, 134], [144, 14]), 'wrongSide', 'edge'), line([264, 134], [144, 14], 'fold', true),
		...arrow([64, 60], [64, 236], 'grain', true), words([86, 150], 'straight grain', 'label', { angle: Math.PI / 2, anchor: 'middle' }),
		...arrow([84, 236], [248, 236], 'grain', true), words([166, 216], 'crosswise grain', 'label', { anchor: 'middle' }),
		...arrow([96, 46], [224, 174], 'grain', true), words([146, 118], 'true bias', 'labelStrong', { angle: Math.PI / 4, anchor: 'middle' }),
		words([18, 134], 'selvedge', 'label', { angle: Math.PI / 2, anchor: 'middle' }),
		words([272, 118], 'most', 'label', { under: 'stretch' }), words([272, 60], 'fold on', 'label', { under: 'bias' }),
		words([276, 236], 'gives a', 'label', { under: 'little' }), words([40, 282], 'stretches least along the selvedge', 'label')
	]);
}
