import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatLength, mmPer, parseLength, shownLength, type Unit } from '../../src/lib/drafting/length.ts';
import { seeded } from './bodies.ts';

const mm = (text: string, unit: Unit = 'cm'): number | string => {
	const parsed = parseLength(text, unit, 'body.waist');
	return parsed.ok ? parsed.value.mm : parsed.issues[0]!.code;
};

test.each([
	['72,5', 'cm', 725], ['72.5', 'cm', 725], ['72.5cm', 'cm', 725], ['725 mm', 'in', 725], ['0.72 m', 'in', 720], ['72.', 'cm', 720], ['.5', 'cm', 5], [',5', 'cm', 5],
	['28 1/2', 'in', 723.9], ['28½', 'in', 723.9], ['28 ½', 'in', 723.9], ['28-1/2', 'in', 723.9], ['28 - 1/2 in', 'cm', 723.9], ['28+1/2', 'in', 723.9],
	['28 1/2 in', 'cm', 723.9], ['28½"', 'cm', 723.9], ['28.5″', 'cm', 723.9], ["28.5''", 'cm', 723.9], ['28½ in.', 'cm', 723.9], ['28½ Inches', 'cm', 723.9], ['28½ INCH', 'cm', 723.9],
	['½', 'in', 12.7], ['1/2', 'in', 12.7], ['3/2', 'in', 38.1], ['28⅝', 'in', 727.075], ['28 5⁄8', 'in', 727.075], ['28 5∕8', 'in', 727.075], ['28 5／8', 'in', 727.075],
	['７２．５', 'cm', 725], ['٧٢٫٥', 'cm', 725], ['७२.५', 'cm', 725], ['𝟕𝟐.𝟓', 'cm', 725], ['៧២,៥ cm', 'in', 725], ['᠗᠒.᠕', 'cm', 725],
	['\u00a072,5\u202fcm ', 'in', 725], ['\t72.5\u2009cm\n', 'in', 725], ['\ufeff72\u200b.5', 'cm', 725], ['+72.5', 'cm', 725],
	['1,250.5 mm', 'cm', 1250.5], ['1.250,5 mm', 'cm', 1250.5], ['1.250 mm', 'cm', 1.25], ['0,725 m', 'cm', 725], ['72,50', 'cm', 725], ['1,2500', 'cm', 12.5],
	['0', 'cm', 0], ['72.5 centimetres', 'in', 725], ['2 meters', 'in', 2000]
] as const)('%j in %s is %s mm', (text, unit, expected) => {
	expect(mm(text, unit)).toBeCloseTo(expected as number, 9);
});

test('It says which unit it was typed in', () => {
	const unit = (text: string) => { const parsed = parseLength(text, 'cm'); return parsed.ok ? parsed.value.unit : null; };
	expect(['72', '28 in', '725mm', '0.72 m', '72 cm'].map(unit)).toEqual(['cm', 'in', 'mm', 'm', 'cm']);
});

test('1,250 may mean two lengths, so both are given', () => {
	const parsed = parseLength('1,250', 'mm', 'skirt.length');
	expect(parsed).toEqual({ ok: false, issues: [{ code: 'ambiguous-length', path: 'skirt.length', expected: 'length', received: '1,250', figures: { whole: 1250, decimal: 1.25 } }] });
	expect(mm('72,125 in')).toBe('ambiguous-length');
});

test.each([
	['', 'length-missing'], ['   ', 'length-missing'], ['\u200b', 'length-missing'], ['NaN', 'not-a-length'], ['Infinity', 'not-a-length'], ['-Infinity', 'not-a-length'], ['∞', 'not-a-length'],
	['1e309', 'not-a-length'], ['1e3', 'not-a-length'], ['0x1F', 'not-a-length'], ['-72', 'length-negative'], ['−0', 'length-negative'], ['-0', 'length-negative'], ['–5 cm', 'length-negative'],
	['1/0', 'fraction-over-nothing'], ['28 1/0', 'fraction-over-nothing'], ['28 3/2', 'not-a-length'], ['28 2/2', 'not-a-length'], ['28.5 1/2', 'not-a-length'], ['1/2/3', 'not-a-length'], ['7 2', 'not-a-length'], ['72..5', 'not-a-length'],
	['72,5,5', 'not-a-length'], ['72.5.5', 'not-a-length'], ['12 furlongs', 'unit-unknown'], ["5'", 'unit-unknown'], ['5 ft', 'unit-unknown'], ['72 cm mm', 'not-a-length'], ['about 72', 'not-a-length'],
	['cm', 'not-a-length'], ['½½', 'not-a-length'], ['9'.repeat(40), 'length-too-long'], ['100001 mm', 'length-too-long'], ['7'.repeat(65), 'text-too-long'], ['constructor', 'not-a-length'], ['7 constructor', 'unit-unknown'], ['7 __proto__', 'not-a-length']
])('%j is refused as %s', (text, code) => {
	expect(mm(text)).toBe(code);
});

// Of the kinds that the well-known lists of naughty strings have; each written here for its kind.
const naughty = [
	'undefined', 'null', 'true', 'NULL', '\\', "'; DROP TABLE", '<script>', '${7}', '{{7}}', '%s%n', '../..', '\0', '\u0007', '\ud800', '\udfff7', '🧵', '👩‍🦽', 'ﷺ', 'Ṱ̺̺̕o͞ ̷i̲̬', '\u202e5.27', '１２３٤٥', '1;2', '1_000', '1٬250', '0b1', '1n', '--1', '+-1', '1-', '1/-2', '1//2',
	'⅟2', '↉', '½/0', '1⁄', '⁄2', '১২৩', '〇', '一二', 'Ⅻ', '²', '7²', '①', '𝟘', '1,,0', '.', ',', '. ,', '-', '/', '"', "''", '″″', 'in in', 'e', 'E5', '1E5', '1e-7', '١٬٢٥٠', '\r\n', '7\u00857', ' ', 'ⅷ', '4½½', '7″7'
];
test('Nothing that is typed makes it throw, and what it takes is a length', () => {
	const look = (text: string) => {
		for (const unit of ['mm', 'cm', 'in', 'm'] as const) {
			const parsed = parseLength(text, unit);
			if (parsed.ok) {
				if (!(Number.isFinite(parsed.value.mm) && parsed.value.mm >= 0 && !Object.is(parsed.value.mm, -0))) expect(text).toBe(parsed.value.mm);
			} else if (parsed.issues.length !== 1) expect(parsed.issues).toHaveLength(1);
		}
	};
	naughty.forEach(look);
	fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 70 }), look), { numRuns: 5000 });
	fc.assert(fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,/ -+½⅝"incm٧７−⁄'), maxLength: 14 }), look), { numRuns: 20_000 });
});

test('Printing and parsing are inverses over 10⁵ lengths', () => {
	const random = seeded(21);
	const steps: readonly (readonly [Unit, number])[] = [['mm', 1], ['mm', 0.1], ['cm', 0.1], ['cm', 0.01], ['cm', 0.5], ['in', 1 / 8], ['in', 1 / 16], ['in', 1 / 64], ['in', 0.01]];
	for (let i = 0; i < 100_000; i++) {
		const [unit, step] = steps[i % steps.length]!;
		const length = 3000 * random() ** 2;
		const text = formatLength(length, unit, { step });
		// In another unit, so that the text says its own.
		const parsed = parseLength(text, unit === 'in' ? 'cm' : 'in');
		if (!parsed.ok) throw new Error(`${text}: ${JSON.stringify(parsed.issues)}`);
		const rounded = Math.round(length / mmPer[unit] / step) * step * mmPer[unit];
		if (Math.abs(parsed.value.mm - rounded) > 1e-9 || parsed.value.unit !== unit) expect(text).toBe(rounded);
		if (formatLength(parsed.value.mm, unit, { step }) !== text) expect(formatLength(parsed.value.mm, unit, { step })).toBe(text);
		// The same without its unit, typed in a field that has that unit.
		const bare = parseLength(formatLength(length, unit, { step, withUnit: false }), unit);
		if (!bare.ok || Math.abs(bare.value.mm - rounded) > 1e-9) expect(text).toBe(bare);
	}
});

test('Lengths are written as a ruler shows them', () => {
	expect(formatLength(727.075, 'in')).toBe('28 5/8 in');
	expect(formatLength(724, 'in')).toBe('28 1/2 in');
	expect(formatLength(724, 'in', { step: 1 / 16 })).toBe('28 1/2 in');
	expect(formatLength(3.175, 'in')).toBe('1/8 in');
	expect(formatLength(0, 'in')).toBe('0 in');
	expect(formatLength(725.04, 'cm')).toBe('72.5 cm');
	expect(formatLength(720, 'cm')).toBe('72.0 cm');
	expect(formatLength(725.4, 'mm')).toBe('725 mm');
	expect(formatLength(-5, 'cm')).toBe('−0.5 cm');
	expect(formatLength(-0.1, 'cm')).toBe('0.0 cm');
	// Rounds up to a whole: no 28 8/8.
	expect(formatLength(28.99 * 25.4, 'in', { withUnit: false })).toBe('29');
});

test('For setting in type a length comes apart into its parts', () => {
	expect(shownLength(727.075, 'in')).toEqual({ unit: 'in', negative: false, whole: '28', fraction: { numerator: 5, denominator: 8 }, decimals: '' });
	expect(shownLength(725, 'cm')).toEqual({ unit: 'cm', negative: false, whole: '72', fraction: null, decimals: '5' });
	expect(shownLength(12.7, 'in', 1 / 16).fraction).toEqual({ numerator: 1, denominator: 2 });
});
