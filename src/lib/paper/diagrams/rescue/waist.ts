// Rescues at the waist: where the stitch line was, where it goes now, and what is left alone.
import type { Draft } from '../../../drafting/draft.ts';
import type { RescueOption } from '../../../drafting/made/option.ts';
import type { RescueDraft } from '../../../drafting/made/rescue.ts';
import type { Drawing } from '../../drawing.ts';
import { num, numUnit, small, type Unit } from '../number.ts';
import { WIDE } from '../part.ts';
import { arrow, line, measured, sheet, words } from '../shape.ts';
import { nick, number, rowY, waistRows, type Row } from './part.ts';

/** A figure that this kind of way always has. */
export const of = ({ figures, code }: RescueOption, name: string): number => {
	const value = figures[name];
	if (value === undefined) throw new Error(`${code} has no ${name}`);
	return value;
};

/** Sewn at another distance from the edge than planned. */
export function sewnElsewhere(draft: Draft, option: RescueOption, from: number, unit: Unit, nickDepth?: number): Drawing {
	const planned = draft.skirt.allowances.waist;
	const [was, now] = [small(planned, unit), small(from, unit)];
	const old: Row = { kind: 'asItWas', text: `planned, ${was}` };
	const fresh: Row = { kind: 'stitch', text: `sew here, ${now}`, now: true };
	const deeper = from > planned;
	const ease = option.figures.ease;
	const eased = ease === undefined ? '' : ` ${small(ease, unit)} is eased into the band.`;
	return sheet(WIDE, 262, `The waist edge stays as it is cut. Sew ${now} from it, in place of ${was}: ${small(Math.abs(from - planned), unit)} ${deeper ? 'deeper' : 'nearer to the edge'}.${nickDepth === undefined ? '' : ` The nick, ${small(nickDepth, unit)} deep, ends above the new line.`}${eased}`, [
		...waistRows([{ kind: 'cut', text: 'cut edge: leave it', over: true }, ...(deeper ? [old, fresh] : [fresh, old])], 14, option.code === 'sew-lining-deeper' ? 'lining' : 'wrongSide'),
		...(nickDepth === undefined ? [] : [nick([44, rowY(0) + 16], deeper ? -78 : -30)]),
		...measured([292, rowY(0) + 15], [292, rowY(deeper ? 2 : 1) + 13]), number(58, now, ease === undefined ? 'from the cut edge' : `from the edge; ease ${small(ease, unit)}`)
	]);
}

/** The seam stays where it is planned, and the difference is worked in. */
export function worked(draft: Draft, option: RescueOption, by: number, how: string, unit: Unit): Drawing {
	const seam = num(draft.figures.waistSeamGirth, unit);
	return sheet(WIDE, 262, `The stitch line stays ${small(draft.skirt.allowances.waist, unit)} from the cut edge. ${how} ${small(by, unit)}, so that the waist is ${seam}.`, [
		...waistRows([{ kind: 'cut', text: 'cut edge: leave it', over: true }, { kind: option.code === 'stay-tape' ? 'tack' : 'stitch', text: 'stitch line, as planned', now: true }], 14),
		...arrow([40, 118], [140, 110], 'grain'), ...arrow([300, 118], [200, 110], 'grain'), number(64, small(by, unit), `to work in; then ${seam}`)
	]);
}

/** The waist keeps its length, and the band is cut for it. */
export function newBand(draft: Draft, option: RescueOption, unit: Unit): Drawing {
	const [seam, band] = [num(of(option, 'waistSeam'), unit), numUnit(of(option, 'bandCutLength'), unit)];
	const from = option.figures.fromEdge ?? (option.figures.deeper === undefined ? draft.skirt.allowances.waist : draft.skirt.allowances.waist + option.figures.deeper);
	const was = num(draft.figures.bandCutLength, unit);
	return sheet(WIDE, 262, `Sew the waist ${small(from, unit)} from its cut edge. It measures ${seam}, so cut a new band ${band} long, in place of ${was}.`, [
		...waistRows([{ kind: 'cut', text: 'cut edge: leave it', over: true }, { kind: 'stitch', text: `sew here, ${small(from, unit)}`, now: true }], 104),
		line([24, 84], [316, 84], 'cut', true), line([24, 84], [24, 74], 'cut'), line([316, 84], [316, 74], 'cut'), number(44, band, `band; it was ${was}`)
	]);
}

/** A nick that ends inside the allowance. */
export function heldNick(draft: Draft, option: RescueOption, unit: Unit): Drawing {
	const [left, a] = [small(of(option, 'left'), unit), small(draft.skirt.allowances.waist, unit)];
	return sheet(WIDE, 262, `The nick is ${small(of(option, 'depth'), unit)} deep and ends ${left} above the stitch line, ${a} from the edge. Sew a short row round its tip. Don’t cut.`, [
		...waistRows([{ kind: 'cut', text: 'cut edge: leave it', over: true }, { kind: 'stitch', text: `stitch line, ${a}`, now: true }], 14),
		nick([80, rowY(0) + 7], -24), line([66, rowY(0) - 25], [94, rowY(0) - 25], 'staystitch'), number(64, left, 'left under the nick')
	]);
}

/** A piece cut again to the plan. */
export function panelAgain(found: RescueDraft, option: RescueOption, unit: Unit): Drawing {
	const [cut, stitch, hem] = [num(of(option, 'cutWaistRadius'), unit), num(of(option, 'waistRadius'), unit), num(of(option, 'cutHemRadius'), unit)];
	return sheet(WIDE, 262, `A new piece, measured from the corner: cut the waist at ${cut}, stitch it at ${stitch}, cut the hem at ${hem} ${unit}.${found.code === 'allowance-forgotten' ? ' The cut line is the smaller curve.' : ''}`, [
		...waistRows([{ kind: 'cut', text: `cut at ${cut}`, now: true, over: true }, { kind: 'stitch', text: `stitch at ${stitch}` }], 60),
		line([14, 60], [326, 60], 'cut', true), words([170, 70], `cut the hem at ${hem}`, 'labelStrong', { anchor: 'middle' }),
		words([170, 30], 'all from the corner', 'label', { anchor: 'middle' })
	]);
}
