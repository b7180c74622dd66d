// What stands beside a sum: where the ruler reads something else, what the numbers are kept in, which zips there are.
import { formatLength } from '../../drafting/length.ts';
import type { Working } from '../../lesson/working.ts';
import type { Unit } from '../../class/event.ts';
import { zipUnit } from './zip.ts';

/** Under this, mm, an allowance that is kept in millimetres is said in sixteenths elsewhere: 10 mm is 3/8 in, and 0.394 in a sum. */
const small = 20;

/** Does the last line already say what the ruler reads? */
export const isMark = ({ steps, mm }: Working, unit: Unit): boolean => steps.at(-1)?.result === formatLength(mm, unit, { withUnit: false });

export const finerWords = (finer: string): string => `To more places it is ${finer}.`;

/** "0.394 is 10 mm, 0.591 is 15 mm." Null in centimetres, and where all lie on the sixteenths of a ruler. */
export function keptWords(workings: readonly Working[], unit: Unit): string | null {
	if (unit !== 'in') return null;
	const off = (mm: number): boolean => mm < small && Math.abs((mm / 25.4) * 16 - Math.round((mm / 25.4) * 16)) > 1e-6;
	const kept = new Map(workings.flatMap(({ inputs }) => inputs.flatMap(({ mm, written, worked }) => (!worked && off(mm) ? [[written, mm] as const] : []))));
	return kept.size === 0 ? null : `${[...kept].map(([written, mm]) => `${written} is ${Math.round(mm * 10) / 10} mm`).join(', ')}.`;
}

/** A whole sum in a line: "waist radius: waist seam ÷ 3.14. 75.0 ÷ 3.14 = 23.89, on the tape 23.9 cm." */
export function workingWords(working: Working, unit: Unit): string {
	const { of, formula, steps, mm, finer } = working;
	const sums = steps.map(({ operands, result }) => `${operands.map(({ written }) => written).join(' ')} = ${result}, `).join('');
	const kept = keptWords([working], unit);
	return [`${of}: ${formula}. ${sums}on the tape ${formatLength(mm, unit)}.`, ...(finer === null ? [] : [finerWords(finer)]), ...(kept === null ? [] : [kept])].join(' ');
}

/** "15, 18, 20 cm": as shops sell them. */
export function amongWords(among: readonly number[], unit: Unit): string {
	const sold = zipUnit(among, unit);
	const said = among.map((mm) => formatLength(mm, sold, { withUnit: false }).replace(/\.0$/, ''));
	return `${said.join(', ')} ${sold}`;
}
