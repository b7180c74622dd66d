// What was measured on the real thing, and the numbers that count because of it, as rows of the hand-out.
import type { OwnMade } from '../lesson/own-made.ts';
import { num, numUnit } from './diagrams/number.ts';

export type MadeRow = readonly [name: string, aside: string, result: string];

/** So many of a hem's numbers stand beside each other in a row. */
const inRow = 4;

export function madeRows({ asMade, figures, judged }: OwnMade, unit: 'cm' | 'in'): readonly MadeRow[] {
	const waistRows = (name: string, reading: (typeof judged)[number], from: (typeof figures.waists)[number]['from']): readonly MadeRow[] => {
		const waist = figures.waists.find((one) => one.from === from);
		const first: MadeRow = [name, `planned ${num(reading.expected, unit)}`, num(reading.comesTo, unit)];
		if (!waist || from === 'radiusDrawn') return [first];
		if (reading.out) return [first, ['band to cut for it', '', num(waist.bandCutLength, unit)]];
		return waist.easeIn >= 0.5 ? [first, ['ease into the band', '', num(waist.easeIn, unit)]] : [first];
	};
	return judged.flatMap((reading): readonly MadeRow[] => {
		switch (reading.reading) {
			case 'clothAfterWashing': return [['longest skirt the cloth gives', 'below the band, band and lining not counted', num(reading.comesTo, unit)]];
			case 'radiusDrawn': return waistRows('waist that the drawn line sews to', reading, 'radiusDrawn');
			case 'waistAfterStaystitch': return waistRows('waist after staystitching', reading, 'waistEdgeAfterStaystitch');
			case 'waistSeamAfterSewing': return waistRows('sewn waist seam', reading, 'waistSeamAfterSewing');
			case 'zipBought': return figures.zip ? [
				['zip that is there', `opening needs ${num(reading.expected, unit)}`, numUnit(figures.zip.bought, unit)],
				...(reading.out ? [] : [['it ends below the waist stitch line', '', num(figures.zip.endBelowSeam, unit)] as const])
			] : [];
			case 'floor': return figures.hem ? [
				['hem fold above the floor', `lowest that the cloth gives ${num(figures.hem.leastAbove, unit)}`, num(figures.hem.above, unit)],
				...hemRows(figures.hem.trims.map(({ trim }) => num(trim, unit)), asMade.floor?.length ?? 0)
			] : [];
			case 'hemAbove': return [];
		}
	});
}

/** From centre front to the wearer's left, all round. */
const hemRows = (trims: readonly string[], places: number): readonly MadeRow[] =>
	Array.from({ length: Math.ceil(places / inRow) }, (_, row) => [row === 0 ? 'cut off, from centre front leftwards' : '', '', trims.slice(row * inRow, (row + 1) * inRow).join('    ')] as const);
