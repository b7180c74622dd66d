// Lengths as they stand in a sentence.
import { formatLength, type Unit } from '../../drafting/length.ts';

/** A length as a ruler shows it. */
export const long = (mm: number | undefined, unit: Unit): string => formatLength(mm ?? 0, unit);
/** A small length: millimetres to the half where the unit is metric, sixteenths in inches. */
export const fine = (mm: number | undefined, unit: Unit): string => {
	if (unit === 'in') return formatLength(mm ?? 0, 'in', { step: 1 / 16 });
	return Math.abs(mm ?? 0) < 50 ? `${String(Math.round((mm ?? 0) * 2) / 2).replace('-', '−')} mm` : formatLength(mm ?? 0, unit);
};
