// The centre back: interfacing and neatening before it, the seam, the zip, the lining's opening.
import type { Point } from '../../drafting/geometry/point.ts';
import type { Draft } from '../../drafting/draft.ts';
import { topStop } from '../../drafting/opening.ts';
import { figureOf } from '../../lesson/figure.ts';
import type { Drawing, FillKind, Shape } from '../drawing.ts';
import { num, numIfKnown, numUnit, small, type Unit } from './number.ts';
import { goesOn, iron, lens, pin, teeth, WIDE, zigzag, zip } from './part.ts';
import { arcPath, arrow, leader, line, linePath, measured, area, mark, onTape, rect, sheet, words } from './shape.ts';

/** A measured height at the right, its figure and two short lines under it. */
function height(x: number, top: number, bottom: number, text: string, under: string, at = (top + bottom) / 2): readonly Shape[] {
	return [...measured([x, top], [x, bottom]), words([x + 12, at], text, 'figure', { under })];
}

/** The opened seam seen from the wrong side: allowances folded back show the right side. */
function opened(width: number, seam: number, allowance: number, tall: number, from: FillKind = 'wrongSide'): readonly Shape[] {
	return [
		rect([0, 0], [width, tall], from), rect([seam - allowance, 0], [seam + allowance, tall], from === 'lining' ? 'lining' : 'rightSide', 'edge'),
		zigzag([seam - allowance, 0], [seam - allowance, tall]), zigzag([seam + allowance, 0], [seam + allowance, tall]), line([0, tall], [width, tall], 'cut')
	];
}

export function interfaceBand({ figures }: Draft, unit: Unit): Drawing {
	const [long, deep] = [numUnit(figures.bandCutLength, unit), num(figures.bandCutDepth, unit)];
	return sheet(WIDE, 226, `The band, ${long} long and ${deep} deep, wrong side up, with interfacing cut to match laid on it, rough side down. The iron is set down and lifted.`, [
		rect([20, 30], [250, 130], 'interfacing', 'edge'),
		goesOn([250, 30], [250, 130]), ...iron([96, 80], Math.PI, 62), ...arrow([184, 80], [224, 80], 'grain'),
		...measured([20, 148], [250, 148]), words([135, 164], long, 'figure', { anchor: 'middle' }), words([135, 206], 'the band, wrong side up', 'label', { anchor: 'middle' }),
		...measured([264, 30], [264, 130]), words([274, 84], deep, 'labelStrong', { under: 'deep' }),
		words([20, 8], 'interfacing, rough side down', 'label')
	]);
}

export function neatenEdges({ skirt }: Draft, unit: Unit): Drawing {
	return sheet(WIDE, 236, `The centre-back edge, neatened with zigzag stitches from waist to hem. The allowance stays ${numUnit(skirt.allowances.seam, unit)} wide.`, [
		rect([14, 10], [150, 190], 'wrongSide'), line([14, 190], [150, 190], 'cut'), line([150, 10], [150, 190], 'cut', true), zigzag([150, 10], [150, 190], 5, 8),
		line([106, 10], [106, 190], 'stitch'), goesOn([14, 10], [150, 10]),
		...measured([106, 206], [150, 206]), words([128, 218], numUnit(skirt.allowances.seam, unit), 'labelStrong', { anchor: 'middle' }),
		words([24, 166], 'waist', 'label'), words([24, 24], 'hem', 'label'), words([24, 100], 'stitch', 'label', { under: 'line' }),
		...lens([150, 96], [250, 128], 56, [area(arcPath([250, 128], 56, Math.PI / 2, 1.5 * Math.PI), 'wrongSide'), line([250, 73], [250, 183], 'cut'), zigzag([246, 80], [246, 176], 10, 16)]),
		words([250, 50], 'zigzag over', 'labelStrong', { anchor: 'middle', under: 'the edge' })
	]);
}

export function backSeam({ figures, skirt }: Draft, unit: Unit): Drawing {
	const { zipEndBelowSeam: zipEnd } = figures;
	const [end, seam] = [numIfKnown(zipEnd, unit), numUnit(skirt.allowances.seam, unit)];
	return sheet(WIDE, 356, `The centre-back edges right sides together. Above the zip end${zipEnd === undefined ? '' : `, ${end} below the waist line`}, they are tacked; from there to the hem they are sewn, ${seam} from the edge.`, [
		rect([14, 10], [206, 310], 'wrongSide'), line([14, 310], [206, 310], 'cut'), line([206, 10], [206, 310], 'cut'), zigzag([206, 10], [206, 310]), goesOn([14, 10], [206, 10]),
		line([14, 282], [206, 282], 'stitch'), line([160, 282], [160, 150], 'tack'), line([160, 150], [160, 10], 'stitch', true),
		line([152, 150], [206, 150], 'fine'), mark('notch', [206, 150], Math.PI), ...height(226, 282, 150, end, 'to zip end', 220),
		line([156, 150], [156, 128], 'stitch'), ...measured([160, 326], [206, 326]), words([183, 335], seam, 'labelStrong', { anchor: 'middle' }),
		words([150, 222], 'tack', 'label', { anchor: 'end' }), words([146, 132], 'backstitch', 'labelStrong', { anchor: 'end' }),
		words([150, 64], 'sew to the hem', 'labelStrong', { anchor: 'end' }), words([24, 258], 'wrong side', 'label'),
		words([24, 291], 'waist line', 'label'), pin([160, 96], 0), pin([160, 40], 0)
	]);
}

export function pressOpen({ skirt }: Draft, unit: Unit): Drawing {
	return sheet(WIDE, 280, `The back seam pressed open on the wrong side, tacking and all. Each allowance is ${numUnit(skirt.allowances.seam, unit)} wide.`, [
		...opened(236, 118, 44, 240), goesOn([0, 0], [236, 0]), line([118, 240], [118, 116], 'tack'), line([118, 116], [118, 0], 'stitch'),
		...iron([118, 80], Math.PI / 2, 66), ...arrow([118, 88], [118, 110], 'grain'), ...measured([118, 254], [162, 254]), words([174, 250], numUnit(skirt.allowances.seam, unit), 'figure'),
		words([10, 212], 'wrong', 'label', { under: 'side' }),
		...leader([118, 180], [248, 190], 'tacked', 'start'), ...leader([118, 100], [248, 100], 'sewn', 'start'),
		...leader([150, 40], [248, 44], 'opened', 'start', 'labelStrong'), line([104, 116], [132, 116], 'sewn')
	]);
}

export function zipTack({ figures }: Draft, unit: Unit): Drawing {
	const { zipEndBelowSeam: zipEnd } = figures;
	const [end, gap] = [numIfKnown(zipEnd, unit), small(topStop, unit)];
	return sheet(WIDE, 380, `The zip lies face down with its teeth on the seam. Its top stop is ${gap} below the waist line, its bottom stop meets the mark${zipEnd === undefined ? '' : ` at ${end}`}. Tack down both tapes.`, [
		...opened(196, 98, 34, 356), goesOn([0, 0], [196, 0]), line([98, 356], [98, 0], 'stitch'), line([0, 326], [196, 326], 'stitch'),
		...zip(98, 312, 96), onTape(line([87, 318], [87, 90], 'tack')), onTape(line([109, 318], [109, 90], 'tack')),
		words([4, 40], 'wrong', 'label', { under: 'side' }),
		...leader([87, 210], [50, 210], 'tack', 'end', 'labelStrong'),
		...height(204, 326, 96, end, 'below waist', 246),
		line([109, 96], [206, 96], 'construction'),
		...lens([98, 318], [282, 318], 46, [
			rect([243, 302], [270, 340], 'tape'), rect([294, 302], [321, 340], 'tape'), teeth([282, 306], [282, 278], 8), line([270, 310], [294, 310], 'cut'),
			onTape(line([243, 332], [270, 332], 'stitch')), onTape(line([294, 332], [321, 332], 'stitch')), line([270, 332], [294, 332], 'stitch'), line([282, 330], [282, 312], 'measure')
		]),
		words([214, 130], `top stop ${gap}`, 'labelStrong', { under: 'below the line' }),
		words([214, 64], 'zip face down', 'label', { under: 'teeth on seam' })
	]);
}

export function zipStitch({ figures }: Draft, unit: Unit): Drawing {
	const { zipEndBelowSeam: zipEnd } = figures;
	const away = small(6, unit);
	return sheet(WIDE, 330, `From the right side, stitch each side of the zip from the bottom up, ${away} from the seam, and across below the stop${zipEnd === undefined ? '' : ` at ${numUnit(zipEnd, unit)}`}.`, [
		rect([0, 0], [200, 300], 'rightSide'), line([0, 300], [200, 300], 'cut'), goesOn([0, 0], [200, 0]), line([100, 300], [100, 0], 'sewn'), line([0, 274], [200, 274], 'stitch'),
		line([72, 70], [72, 300], 'stitch', true), line([128, 70], [128, 300], 'stitch'), line([72, 70], [128, 70], 'stitch'),
		...arrow([54, 90], [54, 168], 'grain'), ...arrow([146, 90], [146, 168], 'grain'),
		words([44, 214], 'first', 'labelStrong', { anchor: 'middle' }), words([160, 214], 'second', 'labelStrong', { anchor: 'middle' }),
		words([10, 16], 'right side', 'label'), ...leader([190, 274], [210, 254], 'waist line'),
		...measured([100, 312], [128, 312]), line([134, 312], [206, 312], 'fine'), words([212, 304], away, 'figure'),
		words([212, 284], 'from seam', 'label'), ...leader([128, 70], [206, 70], 'zip ends', 'start'),
		words([210, 40], numIfKnown(zipEnd, unit), 'labelStrong'), words([212, 168], 'bottom up', 'label', { under: 'on each side' })
	]);
}

export function zipOpen({ figures }: Draft, unit: Unit): Drawing {
	const { zipEndBelowSeam: zipEnd } = figures;
	return sheet(WIDE, 300, `The tacking is taken out and the zip is open${zipEnd === undefined ? '' : ` for ${numUnit(zipEnd, unit)}`}. Closed, the two waist lines meet.`, [
		area(linePath([0, 0], [200, 0], [200, 270], [136, 270], [100, 60], [64, 270], [0, 270]), 'rightSide', null),
		line([0, 270], [64, 270], 'cut'), line([136, 270], [200, 270], 'cut'), goesOn([0, 0], [200, 0]),
		teeth([64, 258], [99, 62], 4), teeth([136, 258], [101, 62], 4), line([92, 60], [108, 60], 'cut'), line([100, 56], [100, 0], 'sewn'),
		line([40, 270], [84, 44], 'stitch'), line([160, 270], [116, 44], 'stitch'), line([84, 44], [116, 44], 'stitch'),
		line([0, 246], [44, 246], 'stitch', true), line([156, 246], [200, 246], 'stitch', true),
		words([8, 200], 'right', 'label', { under: 'side' }), ...height(216, 246, 60, numIfKnown(zipEnd, unit), 'open', 160),
		words([6, 279], 'level', 'labelStrong'), words([196, 279], 'level', 'labelStrong', { anchor: 'end' })
	]);
}

export function liningOpening(draft: Draft, unit: Unit): Drawing {
	const open = figureOf('liningOpening', draft);
	return sheet(WIDE, 310, `The lining's back seam is sewn from ${open === undefined ? 'the end of its opening' : `${numUnit(open, unit)} below the waist line`} to the hem. Above it both edges are pressed back, ${small(10, unit)} apart.`, [
		...opened(200, 100, 30, 280, 'lining'), goesOn([0, 0], [200, 0]), area(linePath([92, 280], [108, 280], [108, 100], [100, 92], [92, 100]), 'paper', 'edge'),
		line([100, 92], [100, 0], 'stitch', true), line([0, 254], [92, 254], 'stitch'), line([108, 254], [200, 254], 'stitch'),
		...measured([92, 292], [108, 292]), words([116, 287], `${small(10, unit)} apart`, 'label'), ...height(216, 254, 92, numIfKnown(open, unit), 'stays open', 180),
		words([8, 230], 'lining', 'label'), words([8, 200], 'wrong', 'label', { under: 'side' }), words([54, 64], 'sew', 'labelStrong', { anchor: 'end' }),
		words([216, 60], 'backstitch at', 'labelStrong', { under: 'the mark' }), line([104, 92], [210, 66], 'fine'),
		...(draft.skirt.zipAt === 'centreBack' ? [] : [words([216, 16], 'left side', 'label')])
	]);
}

export function liningWaist(_draft: Draft, unit: Unit): Drawing {
	const row = small(10, unit);
	const cb: Point = [170, 206];
	return sheet(WIDE, 240, `Skirt inside out with the lining over it: wrong sides together, waists tacked ${row} from the edge, from the centre front outwards.`, [
		area(linePath([34, 12], [306, 12], [256, 196], [84, 196]), 'wrongSide', 'edge'), area(linePath([56, 34], [284, 34], [250, 196], [90, 196]), 'lining', 'edge'),
		line([84, 196], [256, 196], 'cut'), line([86, 182], [254, 182], 'tack', true), line([84, 166], [256, 166], 'stitch'),
		mark('notch', [170, 196], -Math.PI / 2), mark('notch', [112, 196], -Math.PI / 2), mark('notch', [228, 196], -Math.PI / 2),
		words(cb, 'centre front', 'label', { anchor: 'middle' }), words([92, 206], 'side', 'label', { anchor: 'middle' }), words([248, 206], 'side', 'label', { anchor: 'middle' }),
		words([170, 90], 'lining', 'title', { anchor: 'middle', under: 'right side out' }), words([170, 18], 'skirt, wrong side', 'label', { anchor: 'middle' }),
		...measured([272, 196], [272, 182]), words([280, 184], row, 'labelStrong'), words([170, 146], 'stitch lines meet', 'label', { anchor: 'middle' }),
		...arrow([150, 174], [110, 174], 'grain'), ...arrow([190, 174], [230, 174], 'grain')
	]);
}

export function liningFell(_draft: Draft, unit: Unit): Drawing {
	const clear = small(5, unit);
	return sheet(WIDE, 270, `The folded edge of the lining is felled to the zip tape by hand, ${clear} clear of the teeth.`, [
		rect([0, 0], [210, 240], 'lining'), line([0, 240], [210, 240], 'cut'), goesOn([0, 0], [210, 0]), rect([70, 30], [140, 240], 'paper'),
		rect([76, 22], [134, 240], 'tape', 'edge'), rect([98, 22], [112, 240], 'paper'), teeth([105, 240], [105, 32], 5), line([96, 30], [114, 30], 'cut'),
		onTape(line([86, 240], [86, 22], 'edge')), onTape(line([124, 240], [124, 22], 'edge')), onTape(line([82, 240], [82, 26], 'staystitch')), onTape(line([128, 240], [128, 26], 'staystitch')),
		...measured([105, 254], [124, 254]), line([130, 254], [216, 254], 'fine'), words([222, 246], clear, 'figure'), words([222, 222], 'clear of', 'label', { under: 'the teeth' }),
		...leader([128, 150], [218, 150], 'fell here', 'start', 'labelStrong'), words([8, 120], 'lining', 'label'), ...leader([114, 80], [218, 80], 'zip tape'),
		...leader([140, 30], [218, 30], 'right side')
	]);
}
