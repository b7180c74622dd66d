// What a typed length came to, read back: "28 1/2 in, that is 72.4 cm". Never a conversion in place of what was typed.
import { formatLength, parseLength } from '../drafting/length.ts';
import type { Issue } from '../drafting/result.ts';
import type { Unit } from '../class/event.ts';

export type Echo = { readonly mm: number; readonly text: string } | { readonly issue: Issue } | null;

/** Allowances and tolerances, mm: an eighth of an inch is too much of them to be rounded away. */
const small = 20;

/** Null while the field is empty. A length finer than the marks of a tape is read back as it was meant, not rounded. */
export function echoOf(text: string, unit: Unit): Echo {
	if (text.trim() === '') return null;
	const parsed = parseLength(text, unit);
	if (!parsed.ok) return { issue: parsed.issues[0]! };
	const { mm, unit: typed } = parsed.value;
	const own = typed === 'm' ? 'cm' : typed;
	const read = formatLength(mm, own, { step: fine(mm, own) });
	const otherUnit = own === 'in' || (own === 'mm' && unit !== 'in') ? 'cm' : 'in';
	const other = formatLength(mm, otherUnit, otherUnit === 'in' && mm < small ? { step: 1 / 16 } : {});
	return { mm, text: `${read}, that is ${isNear(other, otherUnit, mm) ? '' : 'about '}${other}` };
}

/** Whether the words say the length to half a sixteenth of an inch (0.8 mm), finer than one reads a tape. */
function isNear(words: string, unit: Unit, mm: number): boolean {
	const said = parseLength(words, unit);
	return said.ok && Math.abs(said.value.mm - mm) <= 25.4 / 32;
}

/** The tape's own marks where the length lies on one; else the finest that is typed: ¹⁄₆₄ in or hundredths. */
function fine(mm: number, unit: 'mm' | 'cm' | 'in'): number | undefined {
	const [marks, finest] = unit === 'in' ? [[1 / 8, 1 / 16, 1 / 32, 1 / 64], 0.01] : unit === 'cm' ? [[0.1], 0.01] : [[1], 0.1];
	const per = unit === 'in' ? 25.4 : unit === 'cm' ? 10 : 1;
	return marks.find((step) => Math.abs(mm / per / step - Math.round(mm / per / step)) < 1e-6) ?? finest;
}

/** The typed whole number with this fraction instead of the one it has: the chips under a field in inches. */
export function withFraction(text: string, fraction: string): string {
	const whole = /^\s*(\d+)(?![\d/])/.exec(text.replace(/[¼-¾⅐-⅞]/gu, ' $&'))?.[1];
	const unit = /(?:in|inch|inches|ins|"|″)\s*$/i.exec(text)?.[0].trim();
	return `${whole ? `${whole} ` : ''}${fraction}${unit ? ` ${unit}` : ''}`;
}

/** The fraction at the end of what is typed, in lowest terms, or null. */
export function fractionOf(text: string, unit: Unit): string | null {
	const parsed = parseLength(text, unit);
	if (!parsed.ok || parsed.value.unit !== 'in') return null;
	return /(\d+\/\d+)$/.exec(formatLength(parsed.value.mm, 'in', { step: 1 / 8, withUnit: false }))?.[1] ?? null;
}
