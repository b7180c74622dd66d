// The longest skirt that a piece of cloth gives. Panels alone: the band and the lining are not counted.
import { sweepAngle } from '../sweep.ts';
import type { FlaredSkirt } from '../skirt.ts';

export interface Cloth {
	readonly width: number;
	readonly length: number;
}

/** The box round one panel's cut line: `across` its middle line and `along` it (circle geometry; the strips are parallel). */
export function panelBox(panelAngle: number, inner: number, outer: number, strip: number): { readonly across: number; readonly along: number } {
	const half = panelAngle / 2;
	const atHem = Math.min(Math.PI, half + Math.asin(strip / outer));
	const atWaist = Math.min(Math.PI, half + Math.asin(strip / inner));
	return {
		across: 2 * outer * (atHem >= Math.PI / 2 ? 1 : Math.sin(atHem)),
		// The waist's corners lie furthest back, past a half turn the hem's; near it the strips of allowance decide.
		along: outer - Math.min(outer * Math.cos(atHem), inner * Math.cos(atWaist))
	};
}

/** Do so many boxes fit, row on row, all lying the same way? */
const fits = (across: number, along: number, panels: number, { width, length }: Cloth): boolean =>
	[[across, along], [along, across]].some(([wide, high]) => {
		const inRow = Math.floor(width / wide! + 1e-9);
		return inRow > 0 && Math.ceil(panels / inRow) * high! <= length + 1e-6;
	});

/**
 * The longest skirt below the band, mm; 0 where the cloth gives none. Each panel takes the box round it, so that a cutter
 * who lets panels lie into each other gets a little more. The box grows with the length, so it is found by halving.
 */
export function longestIn(cloth: Cloth, seam: number, skirt: Pick<FlaredSkirt, 'share' | 'panels' | 'allowances' | 'hem'>): number {
	const sweep = sweepAngle(skirt.share);
	const radius = seam / sweep;
	const inner = radius - skirt.allowances.waist;
	if (inner <= skirt.allowances.seam) return 0;
	const fitting = (length: number): boolean => {
		const { across, along } = panelBox(sweep / skirt.panels, inner, radius + length + skirt.hem, skirt.allowances.seam);
		return fits(across, along, skirt.panels, cloth);
	};
	let [low, high] = [0, Math.max(cloth.width, cloth.length)];
	if (!fitting(low)) return 0;
	for (let i = 0; i < 60; i++) {
		const middle = (low + high) / 2;
		if (fitting(middle)) low = middle;
		else high = middle;
	}
	return low;
}
