// Hanging, levelling, the hem, and the chains that join skirt and lining.
import type { Point } from '../../drafting/geometry/point.ts';
import type { Draft } from '../../drafting/draft.ts';
import type { Drawing, Shape } from '../drawing.ts';
import { num, numUnit, small, type Unit } from './number.ts';
import { bend, goesOn, iron, layer, pin, WIDE } from './part.ts';
import { arcPath, area, arrow, line, linePath, mark, measured, rect, sheet, stroke, words } from './shape.ts';

/** A skirt hanging from its band, its hem dipping by `dip` at its sides. */
function hanging(top: number, bottom: number, dip: number): readonly Shape[] {
	const hem: Point[] = [];
	for (let i = 0; i <= 16; i++) {
		const x = 50 + 240 * (i / 16);
		hem.push([x, bottom + dip * 0.5 * Math.cos((i / 16) * 6 * Math.PI) + 3 * Math.sin(i)]);
	}
	const outline = [[118, top - 16], ...hem, [222, top - 16]] as unknown as [Point, ...Point[]];
	return [
		area(linePath(...outline), 'rightSide', 'edge'), rect([116, top - 16], [224, top], 'rightSide', 'edge'), stroke(linePath(...(hem as [Point, ...Point[]])), 'cut'),
		line([144, top - 18], [118, bottom + 20], 'fine'), line([196, top - 18], [222, bottom + 20], 'fine')
	];
}

export function hang(): Drawing {
	return sheet(WIDE, 272, 'The skirt hangs by its band, zip closed and open all round, for 24 hours. Its hem drops where the cloth is on the bias.', [
		line([60, 258], [280, 258], 'edge'), line([170, 258], [170, 236], 'edge'), line([118, 236], [222, 236], 'cut'),
		line([126, 236], [126, 216], 'edge'), line([214, 236], [214, 216], 'edge'), ...hanging(216, 50, 16),
		words([170, 128], '24 h', 'figure', { anchor: 'middle' }), words([170, 106], 'by the band', 'label', { anchor: 'middle' }), words([240, 206], 'zip closed', 'label'),
		words([170, 8], 'the hem drops on the bias', 'label', { anchor: 'middle' }), ...arrow([70, 44], [70, 26], 'grain'), ...arrow([270, 44], [270, 26], 'grain')
	]);
}

export function levelMark(_draft: Draft, unit: Unit): Drawing {
	return sheet(WIDE, 262, 'A ruler stands on the floor. One height is marked at 8 to 16 places round the hem, on a skirt that is worn and still.', [
		...hanging(240, 72, 18), line([8, 20], [332, 20], 'cut'), line([52, 106], [288, 106], 'stitch', true),
		...[70, 103, 136, 169, 202, 235, 268].map((x) => mark('cross', [x, 106])),
		{ shape: 'ruler', along: linePath([28, 20], [28, 168]), starts: 0, unit, body: 'tape', numbers: true, per: 4, marks: [] },
		line([28, 106], [66, 106], 'construction'), words([170, 124], 'one height', 'labelStrong', { anchor: 'middle' }), words([240, 224], '8 to 16', 'labelStrong', { under: 'places' }),
		words([290, 28], 'floor', 'label', { anchor: 'end' }), ...arrow([306, 22], [306, 104], 'grain', true)
	]);
}

export function levelTrim({ skirt }: Draft, unit: Unit): Drawing {
	const hem = numUnit(skirt.hem, unit);
	const curve = (y: number, kind: 'stitch' | 'cut' | 'asItWas', now = false): Shape => stroke(arcPath([170, 560 + y], 560, -Math.PI / 2 - 0.28, -Math.PI / 2 + 0.28), kind, now);
	return sheet(WIDE, 236, `The floor marks joined in one smooth hem line; the cut line lies ${hem} below it.`, [
		area({ start: [14, 226], edges: [{ name: '', end: [14, 22], centre: null, turn: 0 }, { name: '', end: [326, 22], centre: null, turn: 0 }, { name: '', end: [326, 226], centre: null, turn: 0 }] }, 'wrongSide', null),
		curve(118, 'stitch'), curve(70, 'cut', true), ...[-0.24, -0.16, -0.08, 0, 0.08, 0.16, 0.24].map((a) => mark('cross', [170 + 560 * Math.sin(a), 678 - 560 * Math.cos(a)])),
		stroke(linePath([14, 52], [80, 32], [150, 40], [240, 28], [326, 46]), 'asItWas'), ...measured([256, 124], [256, 77]), words([246, 90], hem, 'figure', { anchor: 'end' }),
		words([170, 142], 'hem line, joining the marks', 'label', { anchor: 'middle' }), words([170, 50], 'cut here', 'labelStrong', { anchor: 'middle' }), words([24, 206], 'wrong side', 'label'), words([170, 4], 'the edge as it hung', 'label', { anchor: 'middle' }), line([170, 18], [170, 36], 'fine')
	]);
}

export function hemEasestitch(_draft: Draft, unit: Unit): Drawing {
	const row = small(6, unit);
	return sheet(WIDE, 222, `A row of long stitches ${row} from the raw edge, drawn up a little so that the edge curls by itself.`, [
		rect([14, 60], [326, 206], 'wrongSide'), line([14, 60], [326, 60], 'cut'), line([14, 92], [290, 92], 'tack', true), stroke(linePath([290, 92], [308, 100], [322, 90], [334, 98]), 'sewn'),
		...measured([70, 92], [70, 60]), words([82, 66], row, 'figure'), words([170, 44], 'raw edge', 'label', { anchor: 'middle' }), words([26, 178], 'wrong side', 'label'),
		words([170, 108], 'long stitches', 'labelStrong', { anchor: 'middle' }), ...arrow([300, 130], [330, 130], 'grain'), words([292, 135], 'draw up', 'label', { anchor: 'end' }), words([170, 14], 'mostly near the sides', 'label', { anchor: 'middle' })
	]);
}

/** The depth of one turn. */
const turn = ({ skirt }: Draft): number => (skirt.hemFinish === 'narrow' ? skirt.hem / 2 : skirt.hem);

export function hemFirstTurn(draft: Draft, unit: Unit): Drawing {
	const deep = unit === 'cm' ? small(turn(draft), unit) : numUnit(turn(draft), unit);
	return sheet(WIDE, 250, `The edge turned up once by ${deep} to the wrong side and pressed; below, the same seen from its edge.`, [
		rect([14, 110], [326, 240], 'wrongSide'), rect([14, 110], [240, 158], 'rightSide', 'edge'), line([14, 110], [240, 110], 'fold', true), line([240, 110], [326, 62], 'cut'), area(linePath([240, 110], [326, 110], [326, 62]), 'wrongSide', null),
		line([240, 158], [326, 110], 'fine'), ...measured([50, 110], [50, 158]), words([62, 124], deep, 'figure'), ...iron([206, 140], Math.PI / 2 + 2.4, 58), words([26, 214], 'wrong side', 'label'),
		words([170, 182], 'lift the iron', 'labelStrong', { anchor: 'middle' }), words([100, 88], 'first fold', 'label', { anchor: 'middle' }),
		layer([[326, 46], [60, 46], ...bend([60, 36], 10, Math.PI / 2, Math.PI * 1.5), [130, 26]], 'rightSide', 8), words([146, 16], 'raw edge', 'label')
	]);
}

export function hemSecondTurn(draft: Draft, unit: Unit): Drawing {
	const deep = unit === 'cm' ? small(turn(draft), unit) : numUnit(turn(draft), unit);
	return sheet(WIDE, 250, `Turned up again by ${deep}, so that the raw edge is shut in; stitched ${small(1, unit)} from the upper fold. Below, the same seen from its edge.`, [
		rect([14, 110], [326, 240], 'wrongSide'), rect([14, 110], [326, 158], 'rightSide', 'edge'), line([14, 110], [326, 110], 'fold'), line([14, 158], [326, 158], 'fold'), line([14, 150], [326, 150], 'stitch', true),
		...measured([50, 110], [50, 158]), words([62, 118], deep, 'figure'), words([26, 214], 'wrong side', 'label'), words([170, 172], 'stitch by the fold', 'labelStrong', { anchor: 'middle' }), words([312, 122], 'hem line', 'label', { anchor: 'end' }), words([170, 88], 'hem fold', 'label', { anchor: 'middle' }),
		...[214].map((x) => pin([x, 134], -Math.PI / 2)),
		layer([[326, 62], [60, 62], ...bend([60, 45], 17, Math.PI / 2, Math.PI * 1.5), [140, 28], ...bend([140, 37], 9, -Math.PI / 2, Math.PI / 2), [86, 46]], 'rightSide', 8), line([134, 70], [134, 20], 'stitch'), words([164, 26], 'raw edge shut in', 'label')
	]);
}

export function threadChain({ skirt }: Draft, unit: Unit): Drawing {
	const shorter = skirt.lining ? num(skirt.lining.shorterBy, unit) : null;
	const links: Shape[] = [];
	for (let i = 0; i < 6; i++) links.push(stroke(arcPath([170 + (i % 2 ? 3 : -3), 142 - i * 13], 7, 0, 2 * Math.PI), 'edge'));
	return sheet(WIDE, 236, `A thread chain of ${small(30, unit)} joins the lining's hem to the skirt's${shorter ? `; the lining ends ${shorter} above it` : ''}.`, [
		rect([14, 22], [326, 220], 'wrongSide'), rect([14, 22], [326, 52], 'rightSide', 'edge'), rect([14, 150], [326, 220], 'lining', 'edge'), line([14, 164], [326, 164], 'stitch'), line([14, 46], [326, 46], 'stitch'),
		...links, mark('dot', [170, 152]), mark('dot', [170, 64]), stroke(linePath([170, 70], [170, 60]), 'edge'), ...measured([206, 152], [206, 64]), words([218, 100], small(30, unit), 'figure', { under: 'chain' }),
		words([26, 186], 'lining', 'label'), words([26, 100], 'skirt, wrong', 'label', { under: 'side' }), words([170, 4], 'the skirt’s hem', 'label', { anchor: 'middle' }), goesOn([14, 220], [326, 220]), 
	]);
}
