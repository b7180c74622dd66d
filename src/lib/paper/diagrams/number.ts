// Figures as they stand on a drawing: to 1 mm or ⅛ in, as a ruler is read.
import { formatLength } from '../../drafting/length.ts';

export type Unit = 'cm' | 'in';

export const num = (mm: number, unit: Unit): string => formatLength(mm, unit, { withUnit: false });
export const numUnit = (mm: number, unit: Unit): string => formatLength(mm, unit);
/** On a drawing, a figure that isn't known yet. */
export const numIfKnown = (mm: number | undefined, unit: Unit): string => (mm === undefined ? '?' : numUnit(mm, unit));
/** A small distance: whole or half millimetres, or sixteenths of an inch. */
export const small = (mm: number, unit: Unit): string => (unit === 'cm' ? `${Math.round(mm * 2) / 2} mm` : formatLength(mm, 'in', { step: 1 / 16 }));
