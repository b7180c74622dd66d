// Rescues between waist and hem: a nick near the hem, a short panel, cloth that shrank, a hem that dips.
import type { Draft } from '../../../drafting/draft.ts';
import type { Point } from '../../../drafting/geometry/point.ts';
import type { RescueOption } from '../../../drafting/made/option.ts';
import type { RescueDraft } from '../../../drafting/made/rescue.ts';
import type { Drawing, Shape } from '../../drawing.ts';
import { num, numUnit, small, type Unit } from '../number.ts';
import { goesOn, WIDE } from '../part.ts';
import { line, linePath, mark, measured, sheet, stroke, words } from '../shape.ts';
import { hemRows, nick, number } from './part.ts';
import { of } from './waist.ts';

/** What is wrong, as it stands at the hem's edge. */
const wrong = ({ code }: RescueDraft, y: number): readonly Shape[] => (code === 'nick-near-hem' ? [nick([296, y], 26)] : []);
const said = ({ code, fault }: RescueDraft, unit: Unit): string => (code === 'nick-near-hem' ? ` The nick is ${small(fault, unit)} deep.` : code === 'panel-short' ? ` The panel is ${small(fault, unit)} short.` : '');

export function heldInHem(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const [left, hem] = [small(of(option, 'left'), unit), small(of(option, 'hem'), unit)];
	return sheet(WIDE, 236, `The nick is ${small(found.fault, unit)} deep in a hem of ${hem}, and ends ${left} below the fold. The hem shuts it in. Don’t cut.`, [
		...hemRows([{ kind: 'fold', text: `hem fold, ${hem} up`, now: true, y: 152 }, { kind: 'cut', text: 'cut edge: leave it', y: 92 }], 222), nick([290, 92], 40), goesOn([14, 222], [326, 222]), number(60, left, 'left above the nick')
	]);
}

/** The fold stays and there is less cloth under it. */
export function narrower(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const hem = small(of(option, option.code === 'faced-hem' ? 'allowance' : 'hem'), unit);
	const faced = option.code === 'faced-hem';
	const shorter = faced ? of(option, 'shorter') : 0;
	return sheet(WIDE, 260, `Cut ${hem} below the hem fold${faced ? ', and sew a facing there' : ''}.${said(found, unit)} ${shorter > 0 ? `The skirt is ${small(shorter, unit)} shorter` : 'The skirt keeps its length'}, ${num(of(option, 'length'), unit)} with its band.`, [
		...hemRows([
			{ kind: 'fold', text: shorter > 0 ? `new hem line, ${small(shorter, unit)} up` : 'hem fold: leave it', y: 184 },
			{ kind: 'cut', text: `cut here, ${hem} below`, now: true, y: 138 }, { kind: 'asItWas', text: 'edge as planned', y: 92 }
		], 250), ...wrong(found, 92), goesOn([14, 250], [326, 250]), ...measured([308, 184], [308, 138]), number(60, hem, faced ? 'for the facing’s seam' : 'hem')
	]);
}

export function shorter(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const [by, length] = [small(of(option, 'shorter'), unit), num(of(option, 'length'), unit)];
	return sheet(WIDE, 260, `The hem line moves up by ${by} all round.${said(found, unit)} The skirt is then ${length} long, with its band.`, [
		...hemRows([{ kind: 'fold', text: `new hem line, ${by} up`, now: true, y: 184 }, { kind: 'asItWas', text: 'hem line as planned', y: 138 }, { kind: 'cut', text: 'edge as it is', y: 92 }], 250),
		...wrong(found, 92), goesOn([14, 250], [326, 250]), ...measured([308, 184], [308, 138]), number(60, length, 'long, with its band')
	]);
}

export function deeperBand(draft: Draft, option: RescueOption, unit: Unit): Drawing {
	const [depth, was, cut] = [num(of(option, 'depth'), unit), num(draft.skirt.band.depth, unit), numUnit(of(option, 'bandCutDepth'), unit)];
	return sheet(WIDE, 250, `The band is made ${depth} deep in place of ${was}, cut ${cut} deep. The skirt keeps its length, ${num(of(option, 'length'), unit)} with its band.`, [
		stroke(linePath([60, 150], [60, 226], [230, 226], [230, 150], [60, 150]), 'cut', true), line([60, 192], [230, 192], 'asItWas'), stroke(linePath([60, 150], [36, 84], [254, 84], [230, 150]), 'edge'),
		...measured([246, 150], [246, 226]), words([258, 194], depth, 'labelStrong', { under: `was ${was}` }), words([146, 166], 'band', 'label', { anchor: 'middle' }), words([146, 104], 'skirt', 'label', { anchor: 'middle' }), number(54, cut, 'cut deep')
	]);
}

/** Each place as it hangs, and the line it is cut to. Heights are drawn larger than they are, so that the dip can be seen. */
export function levelled(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const trims = [...(option.trims ?? [])].sort((a, b) => a.place - b.place);
	const most = Math.max(...trims.map(({ trim }) => trim), 1e-9);
	const spot = (place: number, trim: number): Point => [30 + 280 * place, 150 - (trim / most) * 50];
	const edge = trims.map(({ place, trim }) => spot(place, trim));
	const [first, ...rest] = edge;
	const [above, hem, cut] = [numUnit(of(option, 'above'), unit), small(of(option, 'hem'), unit), num(of(option, 'cutEdgeAbove'), unit)];
	const listed = trims.map(({ trim }) => (trim < 0.25 ? '0' : small(trim, unit))).join(', ');
	return sheet(WIDE, 290, `The hem dips by ${small(found.fault, unit)}. Fold it ${above} above the floor, cut it at ${cut}, ${hem} below the fold. From centre front round to the left, cut off: ${listed}.`, [
		line([14, 206], [326, 206], 'fold'), words([24, 214], `hem fold, ${num(of(option, 'above'), unit)} up`, 'label'), line([14, 150], [326, 150], 'cut', true), words([24, 158], `cut here, ${cut} up`, 'labelStrong'),
		...(first ? [stroke(linePath(first, ...rest), 'asItWas')] : []), ...edge.map((at) => mark('cross', at)),
		line([14, 34], [326, 34], 'edge'), words([170, 10], 'floor', 'label', { anchor: 'middle' }), words([170, 76], 'as it hangs', 'label', { anchor: 'middle' }),
		words([170, 256], above, 'figure', { anchor: 'middle' }), words([326, 44], `most off: ${small(of(option, 'mostTrim'), unit)}`, 'labelStrong', { anchor: 'end' })
	]);
}
