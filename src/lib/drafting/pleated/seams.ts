// Every seam of a pleated skirt: panel to panel at hidden folds, and what is seen of the folded waist to the band.
import type { Piece } from '../piece.ts';
import type { Seam, SeamEdge } from '../seam.ts';
import { measurer } from '../tiered/seams.ts';
import { closureName, waistbandSeams, type WaistbandSize } from '../tiered/waistband.ts';
import type { PleatedFigures } from './figures.ts';
import { seenWaist, type PleatPanel } from './pieces.ts';
import type { PleatedSkirt } from './skirt.ts';

export function pleatedSeams(panels: readonly PleatPanel[], figures: PleatedFigures, pieces: readonly Piece[], skirt: PleatedSkirt, band: WaistbandSize): readonly Seam[] {
	const measure = measurer(pieces);
	const seams: Seam[] = [];
	const open = figures.zipEndBelowSeam / figures.skirtLength;
	panels.forEach((panel, i) => {
		const last = i === panels.length - 1;
		const next = panels[last ? 0 : i + 1]!;
		const add = (name: string, from: number, to: number): void => {
			const a: readonly SeamEdge[] = [{ piece: panel.piece, copy: panel.copy, edge: 'second seam', from: 1 - from, to: 1 - to }];
			const b: readonly SeamEdge[] = [{ piece: next.piece, copy: next.copy, edge: 'first seam', from, to }];
			seams.push({ name, a, b, lengthA: measure(a), lengthB: measure(b), ease: 0 });
		};
		const from = last ? open : 0;
		if (from > 0) add('zip opening', 0, from);
		if (from < 1) add(last ? closureName(skirt.zipAt) : `panel ${i + 1} to panel ${i + 2}`, from, 1);
	});
	return [...seams, ...waistbandSeams(band, seenWaist(panels, figures, skirt), 0, measure)];
}
