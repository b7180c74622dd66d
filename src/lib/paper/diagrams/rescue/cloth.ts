// What a shorter cloth still gives: the cloth to scale, and the box that one panel needs.
import type { Draft } from '../../../drafting/draft.ts';
import { panelBox, type Cloth } from '../../../drafting/made/cloth.ts';
import type { RescueOption } from '../../../drafting/made/option.ts';
import { shareFraction } from './share.ts';
import type { Drawing } from '../../drawing.ts';
import { num, numUnit, type Unit } from '../number.ts';
import { WIDE } from '../part.ts';
import { rect, sheet, words } from '../shape.ts';
import { number } from './part.ts';

/** Room for the cloth on the sheet. */
const [wide, high] = [300, 150];

export function onCloth(option: RescueOption, draft: Draft, cloth: Cloth, unit: Unit): Drawing {
	const { figures, skirt } = draft;
	const { across, along } = panelBox(figures.panelAngle, figures.cutWaistRadius, figures.cutHemRadius, skirt.allowances.seam);
	// As it fits: across the cloth, or along it.
	const inRow = (size: number): number => Math.floor(cloth.width / size + 1e-6);
	const fits = (w: number, h: number): boolean => inRow(w) > 0 && Math.ceil(skirt.panels / inRow(w)) * h <= cloth.length + 0.01;
	const [w, h] = fits(across, along) ? [across, along] : [along, across];
	// The cloth lies with its length to the right; what no panel reaches isn't drawn.
	const rows = Math.ceil(skirt.panels / Math.max(1, inRow(w)));
	const shown = Math.min(cloth.length, rows * h * 1.08);
	const scale = Math.min(wide / shown, high / cloth.width);
	const top = 240;
	const boxes = Array.from({ length: skirt.panels }, (_, i) => {
		const [row, place] = [Math.floor(i / Math.max(1, inRow(w))), i % Math.max(1, inRow(w))];
		return rect([20 + row * h * scale, top - (place + 1) * w * scale], [20 + (row + 1) * h * scale, top - place * w * scale], 'rightSide', 'cut');
	});
	const length = num(skirt.length, unit);
	const does = option.code === 'more-panels' ? `${skirt.panels} panels` : option.code === 'less-flare' ? `${shareFraction(skirt.share)} of a circle` : option.code === 'narrower-hem' ? `a hem of ${num(skirt.hem, unit)}` : 'a shorter skirt';
	return sheet(WIDE, 252, `The cloth is ${num(cloth.width, unit)} wide and ${num(cloth.length, unit)} long. It gives ${does}, ${length} long with its band. Each panel takes ${num(w, unit)} across and ${num(h, unit)} along; the band and the lining are not drawn.`, [
		rect([20, top - cloth.width * scale], [20 + shown * scale, top], 'wrongSide', 'edge'), ...boxes,
		words([170, 72], does, 'labelStrong', { anchor: 'middle' }), number(38, numUnit(skirt.length, unit), 'long, with its band')
	]);
}
