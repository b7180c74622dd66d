// A zip as a shop sells it: in the unit of its own series, with the reader's behind where that is another.
import { formatLength, type Unit } from '../../drafting/length.ts';

const isWhole = (count: number): boolean => Math.abs(count - Math.round(count)) < 1e-6;

/** "22 cm (8 5/8 in)". Series go by whole centimetres or whole inches; a length cut from a roll is in the reader's unit. */
export function zipWords(mm: number | undefined, unit: Unit): string {
	const length = mm ?? 0;
	const sold = isWhole(length / 25.4) ? 'in' : isWhole(length / 10) ? 'cm' : unit;
	const said = formatLength(length, sold, isWhole(length / 10) && sold === 'cm' ? { step: 1 } : {});
	return sold === unit || (unit === 'mm' && sold === 'cm') ? said : `${said} (${formatLength(length, unit)})`;
}
