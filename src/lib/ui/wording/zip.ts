// A zip as a shop sells it: in the unit of its own series, with the reader's behind where that is another.
import { formatLength, type Unit } from '../../drafting/length.ts';

const isWhole = (count: number): boolean => Math.abs(count - Math.round(count)) < 1e-6;

/** The unit of the series they are sold in; what is cut from a roll is in the reader's. */
export const zipUnit = (lengths: readonly number[], unit: Unit): Unit =>
	(lengths.every((mm) => isWhole(mm / 25.4)) ? 'in' : lengths.every((mm) => isWhole(mm / 10)) ? 'cm' : unit);

/** "22 cm (8 5/8 in)". Series go by whole centimetres or whole inches; a length cut from a roll is in the reader's unit. */
export function zipWords(mm: number | undefined, unit: Unit): string {
	const length = mm ?? 0;
	const sold = zipUnit([length], unit);
	const said = formatLength(length, sold, isWhole(length / 10) && sold === 'cm' ? { step: 1 } : {});
	return sold === unit || (unit === 'mm' && sold === 'cm') ? said : `${said} (${formatLength(length, unit)})`;
}
