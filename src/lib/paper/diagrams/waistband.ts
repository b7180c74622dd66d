// Trying on, the waistband and its fastening.
import type { Draft } from '../../drafting/draft.ts';
import { figureOf } from '../../lesson/figure.ts';
import type { Drawing, Shape } from '../drawing.ts';
import { num, numUnit, small, type Unit } from './number.ts';
import { bend, goesOn, iron, layer, pin, WIDE } from './part.ts';
import { area, arcPath, arrow, circlePath, leader, line, linePath, mark, measured, rect, sheet, stroke, words } from './shape.ts';

export function tryOn({ body, figures, skirt }: Draft, unit: Unit): Drawing {
	const pass = body.hip === undefined ? null : numUnit(body.hip + skirt.hipEase, unit);
	return sheet(WIDE, 292, `The skirt with its zip open${pass ? ` has to pass ${pass}` : ''}. Worn, its waist stitch line lies level along a narrow tape.`, [
		area(linePath([30, 20], [310, 20], [238, 176], [102, 176]), 'rightSide', 'edge'), line([102, 176], [238, 176], 'cut'),
		line([0, 160], [340, 160], 'fold'), line([110, 160], [230, 160], 'stitch', true), line([170, 176], [170, 20], 'sewn'),
		line([162, 176], [162, 112], 'stitch'), line([178, 176], [178, 112], 'stitch'), line([162, 112], [178, 112], 'stitch'),
		words([8, 168], 'level', 'labelStrong'), words([332, 168], 'level', 'labelStrong', { anchor: 'end' }),
		words([182, 46], 'back seam', 'label', { under: 'hangs straight' }), ...leader([124, 160], [94, 202], 'stitch line', 'end'),
		...(pass ? [words([170, 252], pass, 'figure', { anchor: 'middle', under: 'must pass the opening' }) as Shape] : [])
	]);
}

export function bandPin({ figures, skirt }: Draft, unit: Unit): Drawing {
	const quarter = num(figures.waistSeamGirth / 4, unit);
	const marks: readonly (readonly [number, string])[] = [[40, 'back'], [100, 'side'], [160, 'front'], [220, 'side'], [280, 'back']];
	return sheet(WIDE, 276, `The band laid out: an end allowance of ${num(skirt.allowances.seam, unit)}, four quarters of ${quarter}, an underlap of ${num(skirt.band.underlap, unit)}, and the other allowance. Each mark meets its notch on the waist.`, [
		rect([24, 120], [322, 186], 'wrongSide', 'edge'), line([24, 136], [322, 136], 'stitch'),
		...marks.map(([x]) => line([x, 120], [x, 186], 'measure')), ...[70, 130, 190, 250].map((x) => pin([x, 128], Math.PI / 2)),
		line([308, 120], [308, 186], 'stitch'),
		...marks.map(([x, text]) => words([x, 66], text, x === 160 ? 'labelStrong' : 'label', { anchor: 'middle' })),
		area(linePath([40, 118], [280, 118], [280, 88], [40, 88]), 'rightSide', null), line([40, 118], [280, 118], 'cut', true),
		...marks.map(([x]) => mark('notch', [x, 118], -Math.PI / 2)),
		...measured([100, 200], [160, 200]), words([130, 210], quarter, 'figure', { anchor: 'middle' }), words([130, 246], 'each quarter', 'label', { anchor: 'middle' }),
		...measured([280, 200], [308, 200]), 
		words([336, 212], `underlap ${num(skirt.band.underlap, unit)}`, 'labelStrong', { anchor: 'end' }), ...leader([60, 100], [60, 40], 'skirt', 'middle'), ...leader([300, 132], [312, 44], 'band', 'middle'),
		words([170, 8], 'right sides together', 'label', { anchor: 'middle' })
	]);
}

export function bandStitch({ figures, skirt }: Draft, unit: Unit): Drawing {
	const a = numUnit(skirt.allowances.waist, unit);
	return sheet(WIDE, 236, `Band underneath, skirt on top: sewn ${a} from the edge, from back edge to back edge. The seam measures ${num(figures.waistSeamGirth, unit)}.`, [
		rect([14, 100], [326, 186], 'rightSide', 'edge'),
		area(linePath([34, 186], [306, 186], [330, 14], [10, 14]), 'wrongSide', 'edge'),
		line([34, 186], [306, 186], 'cut'), line([30, 160], [310, 160], 'staystitch'), line([28, 152], [312, 152], 'stitch', true),
		...measured([62, 186], [62, 152]), words([72, 200], a, 'figure'), line([62, 186], [62, 200], 'fine'),
		words([170, 124], 'stitch slowly', 'labelStrong', { anchor: 'middle' }), ...arrow([110, 138], [230, 138], 'grain'),
		words([170, 84], 'skirt, wrong side up', 'label', { anchor: 'middle' }), words([170, 40], num(figures.waistSeamGirth, unit), 'figure', { anchor: 'middle', under: 'seam, end to end' }),
		words([200, 206], 'staystitching', 'label'), line([254, 202], [254, 160], 'fine')
	]);
}

export function bandClip(draft: Draft, unit: Unit): Drawing {
	const { lining } = draft.skirt;
	const [graded, skirt] = [figureOf('gradedLining', draft)!, figureOf('gradedSkirt', draft)!].map((mm) => small(mm, unit));
	const clips: Shape[] = [];
	for (let x = 46; x <= 294; x += 31) clips.push(line([x, 200], [x, 150], 'cut'), line([x - 4, 200], [x, 150], 'fine'), line([x + 4, 200], [x, 150], 'fine'));
	return sheet(WIDE, 282, `The allowances clipped every ${small(15, unit)}, ${small(2, unit)} short of the staystitching. Graded: ${lining ? `lining ${graded}, ` : ''}skirt ${skirt}, band whole.`, [
		rect([14, 96], [326, 200], 'wrongSide'), line([14, 200], [326, 200], 'cut'), ...clips, line([14, 138], [326, 138], 'staystitch', true), line([14, 124], [326, 124], 'stitch'),
		...measured([139, 214], [170, 214]), words([180, 208], small(15, unit), 'figure'), words([24, 216], 'clip every', 'label'),
		...leader([263, 146], [258, 250], `stop ${small(2, unit)} short`, 'middle'), words([170, 104], 'stitch line', 'label', { anchor: 'middle' }),
		layer([[14, 66], [320, 66]], 'rightSide', 10), layer([[14, 54], [200, 54]], 'wrongSide', 10), ...(lining ? [layer([[14, 42], [140, 42]], 'lining', 10), words([152, 22], `lining ${graded}`, 'label')] : []), line([90, 34], [90, 76], 'stitch'),
		words([210, 42], `skirt ${skirt}`, 'label'), words([318, 78], 'band whole', 'label', { anchor: 'end' }), words([14, 8], 'edge view', 'small')
	]);
}

export function bandPress(): Drawing {
	return sheet(WIDE, 250, 'Band and allowances pressed up, away from the skirt, with the tip of the iron.', [
		rect([14, 134], [220, 226], 'wrongSide', 'edge'), area(linePath([34, 134], [200, 134], [220, 12], [14, 12]), 'lining', null), line([34, 134], [14, 12], 'edge'), line([200, 134], [220, 12], 'edge'),
		rect([34, 134], [200, 160], 'rightSide', 'edge'), line([14, 134], [220, 134], 'stitch', true), ...iron([116, 146], Math.PI / 2, 66), ...arrow([240, 120], [240, 190], 'grain'),
		words([252, 150], 'press up', 'labelStrong'), words([116, 196], 'band', 'label', { anchor: 'middle' }), ...leader([200, 147], [236, 214], 'allowances', 'start'), words([26, 24], 'lining', 'label'), ...leader([212, 134], [252, 102], 'seam', 'start')
	]);
}

export function bandFold({ skirt }: Draft, unit: Unit): Drawing {
	const deep = numUnit(skirt.band.depth, unit);
	const fold = bend([150, 196], 12, Math.PI, 0);
	return sheet(WIDE, 250, `The band cut across: folded in half, ${deep} deep, its free edge turned under by ${num(skirt.allowances.waist, unit)} and felled over the seam inside.`, [
		layer([[138, 84], [138, 196], ...fold, [162, 92], ...bend([155, 88], 6, 0, -Math.PI), [149, 110]], 'rightSide', 8),
		layer([[146, 140], [146, 84], [138, 74], [138, 12]], 'rightSide', 8), layer([[154, 126], [154, 76], [160, 64], [160, 16]], 'lining', 6),
		line([130, 84], [156, 84], 'cut'), ...measured([110, 84], [110, 212]), words([100, 148], deep, 'figure', { anchor: 'end', under: 'band deep' }),
		...leader([164, 88], [206, 88], 'fell here', 'start', 'labelStrong'), ...leader([162, 196], [206, 206], 'fold, the top', 'start'), ...leader([151, 130], [206, 146], 'allowances', 'start'),
		...leader([134, 34], [84, 34], 'skirt', 'end'), ...leader([164, 30], [206, 30], 'lining'), words([100, 226], 'outside', 'small', { anchor: 'end' }), words([206, 230], 'inside', 'small')
	]);
}

export function hook({ skirt }: Draft, unit: Unit): Drawing {
	const edge = small(3, unit);
	return sheet(WIDE, 226, `The hook is sewn inside the upper end, ${edge} from its edge; the bar on the underlap, ${num(skirt.band.underlap, unit)} long, where the hook falls.`, [
		rect([14, 60], [160, 132], 'rightSide', 'edge'), goesOn([14, 60], [14, 132]), rect([160, 60], [250, 132], 'rightSide', 'edge'), line([160, 60], [160, 132], 'cut'),
		line([210, 84], [210, 108], 'cut'),
		stroke(arcPath([144, 96], 8, Math.PI / 2, Math.PI * 1.5), 'edge', true), line([144, 104], [154, 104], 'edge'), line([144, 88], [154, 88], 'edge'), stroke(circlePath([136, 104], 3), 'edge'), stroke(circlePath([136, 88], 3), 'edge'),
		...measured([154, 146], [160, 146]), line([157, 146], [157, 162], 'fine'), words([150, 170], edge, 'figure', { anchor: 'middle' }), words([192, 176], 'from the edge', 'label'),
		...measured([160, 44], [250, 44]), words([205, 20], `underlap ${num(skirt.band.underlap, unit)}`, 'labelStrong', { anchor: 'middle' }),
		words([26, 92], 'upper end', 'label'), ...leader([138, 82], [100, 38], 'hook inside', 'end'), ...leader([210, 96], [264, 96], 'bar', 'start')
	]);
}
