// Figures as they stand on a drawing: to 1 mm or ⅛ in, as a ruler is read.
export type Unit = 'cm' | 'in';

export function num(mm: number, unit: Unit): string {
	if (unit === 'cm') return (mm / 10).toFixed(1);
	const eighths = Math.round((mm / 25.4) * 8);
	const whole = Math.floor(eighths / 8);
	const rest = eighths % 8;
	if (rest === 0) return String(whole);
	const by = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
	return `${whole ? `${whole} ` : ''}${rest / by}/${8 / by}`;
}
/** A small distance: whole or half millimetres, or eighths of an inch. */
export const small = (mm: number, unit: Unit): string => (unit === 'cm' ? `${Math.round(mm * 2) / 2} mm` : `${num(mm, 'in')} in`);
export const numUnit = (mm: number, unit: Unit): string => `${num(mm, unit)} ${unit}`;
