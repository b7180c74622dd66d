// A skirt pulled on: its side seams, the casing and the elastic in it.
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing } from '../drawing.ts';
import { num, numIfKnown, numUnit, small, type Unit } from './number.ts';
import { goesOn, iron, layer, pin, WIDE, zigzag } from './part.ts';
import { arrow, leader, line, mark, measured, onTape, rect, sheet, words } from './shape.ts';
import { elasticLap } from '../../drafting/band/elastic.ts';

/** `?` in a skirt that has no elastic. */
const elasticWide = ({ band }: Draft['skirt'], unit: Unit): string => (band.kind === 'elastic' ? small(band.elastic, unit) : '?');

export function sideSeam({ skirt }: Draft, unit: Unit): Drawing {
	const allowance = numUnit(skirt.allowances.seam, unit);
	return sheet(WIDE, 330, `Front and back right sides together. The side is pinned at waist, hem and between, and sewn from waist to hem, ${allowance} from the edge.`, [
		rect([14, 10], [206, 280], 'wrongSide'), line([14, 280], [206, 280], 'cut'), line([206, 10], [206, 280], 'cut'), goesOn([14, 10], [206, 10]),
		line([14, 252], [206, 252], 'stitch'), line([160, 280], [160, 10], 'stitch', true), ...arrow([140, 240], [140, 120], 'grain'),
		...measured([160, 296], [206, 296]), line([212, 296], [226, 296], 'fine'), words([232, 290], allowance, 'figure'),
		pin([160, 252], 0), pin([160, 170], 0), pin([160, 60], 0), ...leader([172, 170], [232, 190], 'pins across'),
		...leader([160, 110], [222, 120], 'to the hem', 'start', 'labelStrong'), words([24, 20], 'wrong side', 'label'), words([24, 261], 'waist line', 'label')
	]);
}

export function casingFold({ figures, skirt }: Draft, unit: Unit): Drawing {
	const [long, half, turn] = [numUnit(figures.bandCutLength, unit), numUnit(figures.bandCutDepth / 2, unit), num(skirt.allowances.waist, unit)];
	return sheet(WIDE, 250, `The casing strip, ${long} long, wrong side up. It is pressed in half along its length, ${half} from each edge, and one long edge is pressed under by ${turn}.`, [
		rect([20, 40], [270, 170], 'wrongSide', 'edge'), goesOn([270, 40], [270, 170]), line([20, 105], [270, 105], 'fold', true), line([20, 64], [270, 64], 'fold'), line([20, 146], [270, 146], 'stitch'),
		...iron([86, 105], Math.PI, 54), ...measured([20, 188], [270, 188]), words([145, 204], long, 'figure', { anchor: 'middle' }),
		...measured([282, 105], [282, 170]), words([290, 134], num(figures.bandCutDepth / 2, unit), 'labelStrong'),
		...measured([282, 40], [282, 64]), words([290, 48], turn, 'labelStrong'),
		words([150, 120], 'fold', 'label'), words([150, 46], 'turn under', 'label'), words([20, 14], 'casing, wrong side up', 'label')
	]);
}

export function casingRing({ skirt }: Draft, unit: Unit): Drawing {
	const [allowance, gap] = [numUnit(skirt.allowances.seam, unit), elasticWide(skirt, unit)];
	return sheet(WIDE, 270, `The casing's two ends, right sides together, sewn ${allowance} from the edge into a ring. In the half that will lie inside, a gap as wide as the elastic, ${gap}, is left open.`, [
		rect([14, 30], [170, 230], 'wrongSide'), line([170, 30], [170, 230], 'cut'), line([14, 30], [170, 30], 'cut'), line([14, 230], [170, 230], 'cut'), goesOn([14, 30], [14, 230]),
		line([14, 130], [170, 130], 'fold'), line([126, 230], [126, 104], 'stitch', true), line([126, 62], [126, 30], 'stitch', true),
		...measured([126, 246], [170, 246]), words([182, 240], allowance, 'figure'), ...measured([186, 62], [186, 104]), words([194, 78], 'gap', 'labelStrong', { under: gap }),
		line([126, 104], [180, 104], 'construction'), line([126, 62], [180, 62], 'construction'),
		...leader([126, 180], [206, 180], 'sew'), words([22, 206], 'outside half', 'label'), words([22, 92], 'inside half', 'label'), words([22, 44], 'wrong side', 'label'), ...leader([170, 130], [206, 140], 'fold')
	]);
}

export function casingPin({ skirt, figures }: Draft, unit: Unit): Drawing {
	const quarter = num(figures.waistSeamGirth / 4, unit);
	return sheet(WIDE, 270, `The casing ring lies round the skirt's waist, right sides together, raw edges level. Quarter marks meet, ${quarter} apart. It is sewn ${numUnit(skirt.allowances.waist, unit)} from the edge.`, [
		rect([20, 10], [320, 200], 'rightSide'), goesOn([20, 10], [320, 10]), rect([20, 96], [320, 200], 'wrongSide', 'edge'), line([20, 200], [320, 200], 'cut'), line([20, 160], [320, 160], 'stitch', true),
		mark('notch', [70, 200], -Math.PI / 2), mark('notch', [270, 200], -Math.PI / 2), pin([70, 176], Math.PI / 2), pin([170, 176], Math.PI / 2), pin([270, 176], Math.PI / 2),
		...measured([70, 216], [270, 216]), words([170, 228], `a quarter, ${quarter}`, 'labelStrong', { anchor: 'middle' }), words([70, 226], 'side', 'label', { anchor: 'middle' }), words([270, 226], 'front', 'label', { anchor: 'middle' }),
		words([170, 124], 'casing, wrong side up', 'label', { anchor: 'middle' }), words([170, 50], 'skirt, right side', 'label', { anchor: 'middle' }), words([20, 250], 'raw edges level', 'label')
	]);
}

export function casingClose({ skirt }: Draft, unit: Unit): Drawing {
	return sheet(WIDE, 250, `Cut across: the casing is folded over the seam to the inside, its turned edge ${small(2, unit)} past the seam, and stitched through all layers beside it. The tunnel is ${numUnit(skirt.band.depth, unit)} deep.`, [
		layer([[150, 20], [150, 110], [142, 118], [142, 200], [150, 212], [162, 212], [170, 200], [170, 96]], 'rightSide'), layer([[158, 20], [158, 140]], 'wrongSide'),
		line([132, 100], [182, 100], 'stitch', true), ...measured([116, 106], [116, 214]), words([104, 156], numUnit(skirt.band.depth, unit), 'figure', { anchor: 'end' }),
		...leader([170, 100], [210, 92], 'stitch beside', 'start', 'labelStrong'), words([214, 68], 'the turn', 'label'),
		...leader([156, 180], [210, 180], 'tunnel'), ...leader([158, 40], [210, 34], 'skirt'), words([20, 226], 'outside', 'label'), words([190, 226], 'inside', 'label')
	]);
}

export function elasticThread({ skirt, figures }: Draft, unit: Unit): Drawing {
	const [wide, long] = [elasticWide(skirt, unit), numIfKnown(figures.elasticLength, unit)];
	return sheet(WIDE, 230, `Elastic ${wide} wide and ${long} long goes in through the gap on a safety pin. Its other end is pinned to the cloth, so that it can't slip in.`, [
		rect([20, 70], [320, 150], 'rightSide', 'edge'), line([20, 80], [320, 80], 'stitch'), goesOn([20, 70], [20, 150]), goesOn([320, 70], [320, 150]),
		rect([96, 96], [236, 132], 'interfacing', 'edge'), rect([40, 40], [80, 132], 'interfacing', 'edge'), line([80, 90], [80, 138], 'edge'), line([96, 90], [96, 138], 'edge'),
		pin([60, 58], 0), pin([242, 114], 0), ...arrow([256, 114], [306, 114], 'grain'), words([168, 110], 'elastic', 'labelStrong', { anchor: 'middle' }),
		words([92, 52], 'pin the end', 'label'), ...leader([242, 120], [250, 172], 'safety pin'), ...leader([88, 138], [96, 172], 'gap'), words([24, 208], long, 'figure'), words([330, 20], `${wide} wide`, 'label', { anchor: 'end' })
	]);
}

export function elasticJoin(_: Draft, unit: Unit): Drawing {
	const lap = small(elasticLap, unit);
	return sheet(WIDE, 220, `The two ends of the elastic lie flat on each other by ${lap}, not twisted, and are sewn together in a square with a cross.`, [
		rect([20, 70], [210, 140], 'interfacing', 'edge'), rect([130, 80], [320, 150], 'interfacing', 'edge'), goesOn([20, 70], [20, 140]), goesOn([320, 80], [320, 150]),
		line([138, 90], [202, 90], 'stitch'), line([202, 90], [202, 132], 'stitch'), line([202, 132], [138, 132], 'stitch'), line([138, 132], [138, 90], 'stitch'), line([138, 90], [202, 132], 'stitch', true), line([138, 132], [202, 90], 'stitch', true),
		zigzag([130, 80], [130, 150]), ...measured([130, 168], [210, 168]), words([170, 182], lap, 'figure', { anchor: 'middle' }), words([40, 40], 'a square, then a cross', 'label'), words([40, 14], 'try it on first', 'labelStrong')
	]);
}
