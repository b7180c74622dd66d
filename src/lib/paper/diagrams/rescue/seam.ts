// A wedge taken in at the seams, or a strip let out.
import type { Draft } from '../../../drafting/draft.ts';
import type { Point } from '../../../drafting/geometry/point.ts';
import type { RescueOption } from '../../../drafting/made/option.ts';
import type { Drawing } from '../../drawing.ts';
import { num, numUnit, small, type Unit } from '../number.ts';
import { WIDE } from '../part.ts';
import { area, line, linePath, measured, sheet, words } from '../shape.ts';
import { of } from './waist.ts';

const [top, foot] = [216, 44];

/** A panel with its two seams as they were and as they are sewn now. */
function panel(waist: readonly [was: number, now: number], hem: readonly [was: number, now: number]): Parameters<typeof sheet>[3] {
	const at = (x: number, y: number): Point => [120 + x, y];
	const outline = [at(-waist[0] - 12, top), at(waist[0] + 12, top), at(hem[0] + 12, foot), at(-hem[0] - 12, foot)] as const;
	return [
		area(linePath(...outline), 'wrongSide', 'cut'),
		...[-1, 1].flatMap((side) => [
			line(at(side * waist[0], top), at(side * hem[0], foot), 'asItWas'), line(at(side * waist[1], top), at(side * hem[1], foot), 'stitch', true)
		])
	];
}

export function takenIn(draft: Draft, option: RescueOption, unit: Unit): Drawing {
	const [waist, hem] = [small(of(option, 'atWaist'), unit), numUnit(of(option, 'atHem'), unit)];
	const fromEdge = option.figures.fromEdge;
	const girth = num(of(option, 'waistSeam'), unit);
	return sheet(WIDE, 262, `Each seam edge is sewn further in: ${waist} at the waist, ${hem} at the hem, in one straight line.${fromEdge === undefined ? '' : ` The waist is sewn ${small(fromEdge, unit)} from its edge.`} The waist is then ${girth}. Don’t cut until it has been tried on.`, [
		...panel([40, 24], [94, 62]),
		...measured([144, top + 14], [160, top + 14]), words([202, top + 8], waist, 'labelStrong', { under: 'each edge' }),
		...measured([182, foot - 14], [214, foot - 14]), words([240, foot - 8], hem, 'labelStrong', { under: 'each edge' }),
		words([8, 240], fromEdge === undefined ? 'waist' : `waist, ${small(fromEdge, unit)}`, 'label'),
		words([214, 146], girth, 'figure', { under: 'waist after it' }), words([120, 12], draft.skirt.panels > 1 ? `${draft.skirt.panels} panels` : 'one panel', 'label', { anchor: 'middle' })
	]);
}

export function letOut(option: RescueOption, edges: number, unit: Unit): Drawing {
	const [strip, left] = [small(of(option, 'perEdge'), unit), small(of(option, 'allowance'), unit)];
	return sheet(WIDE, 262, `Each of ${edges} seam edges is sewn ${strip} nearer to its cut edge, from waist to hem. ${left} of allowance is left. Don’t trim it.`, [
		...panel([28, 40], [72, 84]), words([120, 230], 'waist', 'label', { anchor: 'middle' }), words([120, 20], 'hem', 'label', { anchor: 'middle' }),
		words([222, 158], strip, 'figure', { under: 'let out each' }), words([222, 96], left, 'labelStrong', { under: 'is left' })
	]);
}
