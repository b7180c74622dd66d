// A length as people type it and as it is written back. Inside: millimetres.
import { ok, refuse, type Issue, type Result } from './result.ts';

/** Metres are understood and never written. */
export type Unit = 'mm' | 'cm' | 'in';
export type TypedUnit = Unit | 'm';

export interface Length {
	readonly mm: number;
	/** What it was typed in. */
	readonly unit: TypedUnit;
}

export const mmPer: Readonly<Record<TypedUnit, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4 };

/** Longer than any field asks for; a text may not be longer than this many characters. */
const longestText = 64;
/** No length in sewing is longer: 100 m. mm */
const longest = 100_000;

const unitWords: Readonly<Record<string, TypedUnit>> = {
	mm: 'mm', millimetre: 'mm', millimetres: 'mm', millimeter: 'mm', millimeters: 'mm',
	cm: 'cm', centimetre: 'cm', centimetres: 'cm', centimeter: 'cm', centimeters: 'cm',
	m: 'm', metre: 'm', metres: 'm', meter: 'm', meters: 'm',
	in: 'in', ins: 'in', inch: 'in', inches: 'in', '"': 'in'
};

/**
 * Reads a length as a person would type it: `72,5`, `72.5 cm`, `28 1/2`, `28½"`, `28-1/2 in`, `725 mm`, `0.72 m`, in the
 * digits of any script. Without a unit it is in `unit`. Refuses, never throws; `1,250` may mean two lengths, so it is
 * asked about (`figures.whole` and `figures.decimal` are what it may mean, in mm).
 */
export function parseLength(text: string, unit: TypedUnit, path = ''): Result<Length> {
	const issue = (code: string, rest: Partial<Issue> = {}): Result<never> => refuse({ code, path, expected: 'length', received: text.slice(0, longestText), ...rest });
	if (text.length > longestText) return issue('text-too-long', { expected: longestText, figures: { characters: text.length } });
	const plain = plainText(text);
	if (plain === '') return issue('length-missing');

	// A sign, a number with what belongs to it, and the rest, which must be a unit.
	const [, sign = '', number = '', rest = ''] = /^([-+]?) ?([\d.,][\d.,/ +-]*|)(.*)$/s.exec(plain)!;
	if (!/\d/.test(number)) return issue('not-a-length');
	const word = rest.replace(/\.$/, '').trim();
	const typed = word === '' ? unit : Object.hasOwn(unitWords, word) ? unitWords[word] : undefined;
	if (typed === undefined) return issue(/^[a-z"']+$/.test(word) ? 'unit-unknown' : 'not-a-length', { expected: ['cm', 'mm', 'm', 'in'], figures: {} });
	if (sign === '-') return issue('length-negative');

	const amount = readNumber(number.trim());
	if (amount === 'none') return issue('not-a-length');
	if (amount === 'over-nothing') return issue('fraction-over-nothing');
	const per = mmPer[typed];
	if (typeof amount === 'object') return issue('ambiguous-length', { figures: { whole: amount.whole * per, decimal: amount.decimal * per } });
	const mm = amount * per;
	if (!(mm <= longest)) return issue('length-too-long', { expected: longest, figures: { most: longest } });
	return ok({ mm, unit: typed });
}

/** What is not ordinary about signs, spaces and digits is made ordinary. */
function plainText(text: string): string {
	return text
		// A fraction that is one character belongs after its whole number, not in it: 28½ is 28 1/2.
		.replace(/[¼-¾⅐-⅞↉]/gu, ' $&')
		.normalize('NFKC')
		// Marks that can't be seen: directions, joiners, a byte order mark.
		.replace(/[\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff]/g, '')
		.replace(/\p{Nd}/gu, digitOf)
		.replace(/\u066b/g, '.')
		.replace(/\u066c/g, ',')
		.replace(/[\u2044\u2215]/g, '/')
		.replace(/[\u2010-\u2015\u2212]/g, '-')
		.replace(/["\u201c\u201d\u201e]|''|\u2032\u2032|\u2019\u2019/g, '"')
		.replace(/\s+/g, ' ')
		.trim()
		.toLowerCase();
}

/** Unicode keeps each script's digits in a run of ten from 0 to 9, so the value is how far back the run begins. */
function digitOf(digit: string): string {
	const code = digit.codePointAt(0)!;
	let value = 0;
	while (value < 9 && /^\p{Nd}$/u.test(String.fromCodePoint(code - value - 1))) value++;
	return String(value);
}

type Amount = number | { readonly whole: number; readonly decimal: number } | 'none' | 'over-nothing';

function readNumber(text: string): Amount {
	// A fraction, alone or after a whole number: 1/2, 28 1/2, 28-1/2, 28 + 1/2.
	const fraction = /^(?:(\d+) ?[ +-] ?)?(\d+) ?\/ ?(\d+)$/.exec(text);
	if (fraction) {
		const [whole, over, under] = [Number(fraction[1] ?? 0), Number(fraction[2]), Number(fraction[3])];
		if (under === 0) return 'over-nothing';
		return fraction[1] !== undefined && over >= under ? 'none' : whole + over / under;
	}
	// Is one comma, and three digits after it, for thousands or for decimals? Nobody can tell.
	if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return { whole: Number(text.replace(',', '')), decimal: Number(text.replace(',', '.')) };
	if (/^\d*[.,]?\d+$|^\d+[.,]$/.test(text)) return Number(text.replace(',', '.'));
	// Both signs, or one of them twice: the last is the decimal one, the others group thousands.
	if (/^\d{1,3}(,\d{3})+(\.\d*)?$/.test(text)) return Number(text.replaceAll(',', ''));
	if (/^\d{1,3}(\.\d{3})+,\d*$/.test(text)) return Number(text.replaceAll('.', '').replace(',', '.'));
	return 'none';
}

/** A length for setting in type: `28` and 5/8, or `72` and `5` tenths. */
export interface ShownLength {
	readonly unit: Unit;
	readonly negative: boolean;
	readonly whole: string;
	/** Above and below the fraction's line, in lowest terms; null when there is none. */
	readonly fraction: { readonly numerator: number; readonly denominator: number } | null;
	/** What follows the point; empty when there is nothing. */
	readonly decimals: string;
}

/** The finest that is written unless asked: a ruler's marks. In the unit itself. */
const usualStep: Readonly<Record<Unit, number>> = { mm: 1, cm: 0.1, in: 1 / 8 };

/** `step` is in the unit: 0.1 (cm), 1/8 or 1/16 (in: fractions), 0.01 (decimals). A length is rounded to the nearest. */
export function shownLength(mm: number, unit: Unit, step: number = usualStep[unit]): ShownLength {
	const steps = Math.round(Math.abs(mm) / mmPer[unit] / step);
	const negative = mm < 0 && steps > 0;
	const parts = Math.round(1 / step);
	// Halves, quarters, eighths …: written as a fraction in inches.
	if (unit === 'in' && parts > 0 && (parts & (parts - 1)) === 0) {
		let [numerator, denominator] = [steps % parts, parts];
		while (numerator > 0 && numerator % 2 === 0) [numerator, denominator] = [numerator / 2, denominator / 2];
		return { unit, negative, whole: String(Math.floor(steps / parts)), fraction: numerator > 0 ? { numerator, denominator } : null, decimals: '' };
	}
	const places = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
	const [whole = '0', decimals = ''] = (steps * step).toFixed(places).split('.');
	return { unit, negative, whole, fraction: null, decimals };
}

export interface Writing {
	readonly step?: number;
	readonly withUnit?: boolean;
}

/** The canonical text: `28 5/8 in`, `72.5 cm`, `725 mm`. parseLength reads it back to the length rounded to the step. */
export function formatLength(mm: number, unit: Unit, { step, withUnit = true }: Writing = {}): string {
	const { negative, whole, fraction, decimals } = shownLength(mm, unit, step);
	const part = fraction ? `${fraction.numerator}/${fraction.denominator}` : '';
	const number = part === '' ? whole + (decimals && `.${decimals}`) : whole === '0' ? part : `${whole} ${part}`;
	return `${negative ? '−' : ''}${number}${withUnit ? ` ${unit}` : ''}`;
}
