// Every seam of a pleated skirt: panel to panel at hidden folds, and what is seen of the folded waist to the band.
import { stripJoins, type StripBand } from '../band/strip.ts';
import { closureName } from '../closure.ts';
import type { Piece } from '../piece.ts';
import type { Join, Seam } from '../seam.ts';
import { measured } from '../seams.ts';
import type { PleatedFigures } from './figures.ts';
import { seenWaist, type PleatPanel } from './pieces.ts';
import type { PleatedSkirt } from './skirt.ts';

export function pleatedSeams(panels: readonly PleatPanel[], figures: PleatedFigures, pieces: readonly Piece[], skirt: PleatedSkirt, band: StripBand): readonly Seam[] {
	const joins: Join[] = [];
	const open = figures.zipEndBelowSeam / figures.skirtLength;
	panels.forEach((panel, i) => {
		const last = i === panels.length - 1;
		const next = panels[last ? 0 : i + 1]!;
		const add = (name: string, from: number, to: number): void => {
			joins.push({
				name, ease: 0,
				a: [{ piece: panel.piece, copy: panel.copy, edge: 'second seam', from: 1 - from, to: 1 - to }],
				b: [{ piece: next.piece, copy: next.copy, edge: 'first seam', from, to }]
			});
		};
		const from = last ? open : 0;
		if (from > 0) add('zip opening', 0, from);
		if (from < 1) add(last ? closureName(skirt.zipAt) : `panel ${i + 1} to panel ${i + 2}`, from, 1);
	});
	return measured([...joins, ...stripJoins(seenWaist(panels, figures, skirt), band, 0)], pieces);
}
