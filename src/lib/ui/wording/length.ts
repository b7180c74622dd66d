// What stands in the way of reading a length: what happened, and how to mend it. Apart from the other issues, so that a
// page with a length to type carries no more words than these.
import type { Issue } from '../../drafting/result.ts';
import type { Unit } from '../../drafting/length.ts';
import { long } from './long.ts';

export type Says = (issue: Issue, unit: Unit) => string;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const came = ({ received }: Issue): string => (typeof received === 'string' || typeof received === 'number' ? `“${String(received)}”` : 'that');
const example: Readonly<Record<Unit, string>> = { cm: '72.5', mm: '725', in: '28 1/2' };

/** Every code of `parseLength` and `checkLength`. */
export const lengthSays: Readonly<Record<string, Says>> = {
	'length-missing': (_, unit) => `Nothing is written here yet. Write a length, such as ${example[unit]}.`,
	'not-a-length': (issue, unit) => `${capital(came(issue))} isn’t read as a length. Write it as a number, such as ${example[unit]}.`,
	'text-too-long': () => 'That is too long for a length. Write the number and its unit, nothing else.',
	'unit-unknown': (issue) => `The unit in ${came(issue)} isn’t known here. Write cm, mm, m or in.`,
	'length-negative': () => 'A length can’t be less than nothing. Write it without the minus sign.',
	'fraction-over-nothing': () => 'A fraction can’t have 0 below its line. Check the fraction.',
	'ambiguous-length': ({ figures, received }, unit) => `“${String(received)}” can be read two ways: ${long(figures?.whole, unit)} or ${long(figures?.decimal, unit)}. Write it with a point, or without the comma.`,
	'length-too-long': (_, unit) => `That is longer than any cloth. Check the number and its unit; a length here is like ${example[unit]}.`,
	'length-out-of-range': (issue, unit) => {
		const { least, most, given, guess } = issue.figures ?? {};
		const said = given === undefined ? 'That' : long(given, unit);
		return guess === undefined
			? `${said} can’t be right here. Write a length from ${long(least, unit)} to ${long(most, unit)}.`
			: `${said} looks like a slip. Did you mean ${guessed(guess, given, unit)}?`;
	}
};

/** A guess in the unit that makes sense of it: 28 cm, or 28 mm, was perhaps 28 in. */
function guessed(guess: number, given: number | undefined, unit: Unit): string {
	const mixed = given !== undefined && [2.54, 25.4, 1 / 2.54].some((ratio) => Math.abs(guess / given / ratio - 1) < 0.01);
	if (!mixed) return long(guess, unit);
	return unit === 'in' ? long(guess, 'cm') : long(guess, 'in');
}

/** The sentence for what `parseLength` refused. */
export const lengthSentence = (issue: Issue, unit: Unit): string => lengthSays[issue.code]!(issue, unit);
