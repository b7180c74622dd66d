// Numbers as a person writes them beside a calculator, and what the calculator makes of them.
import { formatLength, mmPer, type Unit } from '../drafting/length.ts';
import type { Key, Sign } from './recipe.ts';

/**
 * A reading or a choice as it is kept: centimetres to a tenth of a millimetre, `75.0` and `74.25`. Inches that lie on a
 * sixteenth are written whole, 3/8 as `0.375`; others, kept in millimetres, to a thousandth: 10 mm is `0.394`.
 */
export function writeKept(mm: number, unit: Unit): string {
	const amount = mm / mmPer[unit];
	if (unit !== 'in') return trim(round(amount, 2), 1);
	return trim(round(amount, isOnSixteenth(mm) ? 4 : 3), 0);
}
export const isOnSixteenth = (mm: number): boolean => Math.abs(mm / 25.4 * 16 - Math.round(mm / 25.4 * 16)) < 1e-6;

/** Half of the last place and more goes up. A ten-millionth of it more, for halves that binary numbers miss. */
const round = (amount: number, places: number): string => (Math.sign(amount) * Math.floor(Math.abs(amount) * 10 ** places + 0.5 + 1e-7) / 10 ** places).toFixed(places);

/** Without the noughts at its end, down to so many places. */
function trim(written: string, least: number): string {
	const [whole = '', decimals = ''] = written.split('.');
	const kept = decimals.replace(/0+$/, '').padEnd(least, '0');
	return kept === '' ? whole : `${whole}.${kept}`;
}

const isSign = (text: string): text is Sign => ['+', '−', '×', '÷'].includes(text);
const isKey = (text: string): text is Key => ['√', 'cos⁻¹', 'sin'].includes(text);

const press: Readonly<Record<Key, (shown: number) => number>> = {
	'√': Math.sqrt, 'cos⁻¹': (shown) => (Math.acos(Math.min(1, shown)) * 180) / Math.PI, sin: (shown) => Math.sin((shown * Math.PI) / 180)
};
const join: Readonly<Record<Sign, (shown: number, next: number) => number>> = {
	'+': (a, b) => a + b, '−': (a, b) => a - b, '×': (a, b) => a * b, '÷': (a, b) => a / b
};

/**
 * What a calculator shows for a step, key by key from the left. Sums stand as it shows them; a product, a quotient or a
 * key is rounded to two places. Either goes on as it is written.
 */
export function calculate(operands: readonly string[], unit: Unit): string {
	let shown = 0;
	let sign: Sign = '+';
	let rounds = false;
	for (const text of operands) {
		if (isSign(text)) sign = text;
		else if (isKey(text)) shown = press[text](shown);
		else shown = join[sign](shown, Number(text));
		rounds ||= isKey(text) || text === '×' || text === '÷';
	}
	return trim(round(shown, rounds ? 2 : 4), unit === 'in' ? 0 : 1);
}

/** The mark on the ruler, as the rest of the app says it. */
const mark = (mm: number, unit: Unit): string => formatLength(mm, unit, { withUnit: false });
const inMm = (written: string, unit: Unit): number => Number(written) * mmPer[unit];

/** From one mark to the next, as the rest of the app reads a ruler. mm */
const division: Readonly<Record<Unit, number>> = { mm: 1, cm: 1, in: 25.4 / 8 };
/** Halfway between two marks, either is right. */
const isHalfway = (mm: number, unit: Unit): boolean => Math.abs((mm / division[unit]) % 1 - 0.5) < 1e-6;

/** Does what is written lead to the same mark as the figure itself, and lie within half a mark of it? */
export function leadsTo(written: string, mm: number, unit: Unit): boolean {
	const meant = inMm(written, unit);
	return Math.abs(meant - mm) <= division[unit] / 2 && (mark(meant, unit) === mark(mm, unit) || isHalfway(mm, unit));
}

/** The figure itself to as many places as it takes to see its mark, three at the least. */
export function writeFiner(mm: number, unit: Unit): string {
	for (let places = 3; places < 8; places++) {
		const written = round(mm / mmPer[unit], places);
		if (mark(inMm(written, unit), unit) === mark(mm, unit)) return written;
	}
	return round(mm / mmPer[unit], 8);
}
