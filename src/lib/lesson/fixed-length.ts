// Lengths that a lesson states the same for everyone: `<Figure mm="5" />`, `within="5 mm"`.
import { formatLength, type Unit } from '../drafting/length.ts';

/** Below this, mm, a length in centimetres is said in millimetres. */
const SMALL = 50;

/** `5 mm`, `2.5 mm`, `10 cm`; in inches to the nearest 1/16 and never 0: a tolerance of 1 mm is `1/16 in`. */
export function fixedLength(mm: number, unit: Unit): string {
	if (unit === 'in') return formatLength(Math.max(mm, 25.4 / 16), 'in', { step: 1 / 16 });
	return unit === 'mm' || mm < SMALL ? `${Math.round(mm * 2) / 2} mm` : `${Math.round(mm) / 10} cm`;
}
