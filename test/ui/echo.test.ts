import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseLength } from '../../src/lib/drafting/length.ts';
import { echoOf, fractionOf, withFraction } from '../../src/lib/ui/echo.ts';

const said = (text: string, unit: 'cm' | 'in') => {
	const echo = echoOf(text, unit);
	return echo && 'text' in echo ? echo.text : echo;
};

test('28½ in is read back as it was typed, and in centimetres', () => {
	expect(said('28½', 'in')).toBe('28 1/2 in, that is 72.4 cm');
	expect(said('72,5', 'cm')).toBe('72.5 cm, that is about 28 1/2 in');
});

test('a unit that was typed stays, and the other one is the field’s', () => {
	expect(said('72.5 cm', 'in')).toBe('72.5 cm, that is about 28 1/2 in');
	expect(said('725 mm', 'cm')).toBe('725 mm, that is 72.5 cm');
	expect(said('28 1/2 in', 'cm')).toBe('28 1/2 in, that is 72.4 cm');
	expect(said('0.72 m', 'cm')).toBe('72.0 cm, that is 28 3/8 in');
});

test('what is finer than a tape is read back without rounding it to the tape', () => {
	expect(said('28 11/16', 'in')).toBe('28 11/16 in, that is 72.9 cm');
	// 725.5 ÷ 25.4 = 28.563, and 8 × 0.563 = 4.504: five eighths.
	expect(said('72.55', 'cm')).toBe('72.55 cm, that is about 28 5/8 in');
});

test('a conversion that a tape would show otherwise is told as about', () => {
	// 27 ÷ 25.4 = 1.063: one inch and an eighth is 1.6 mm more; 2 in are 50.8 mm.
	expect(said('2.7', 'cm')).toBe('2.7 cm, that is about 1 1/8 in');
	expect(said('5.08', 'cm')).toBe('5.08 cm, that is 2 in');
});

test('under 20 mm the other unit goes by sixteenths: 5 mm is no quarter of an inch', () => {
	// 5 ÷ 25.4 = 0.197 and 3/16 = 0.1875; 15 ÷ 25.4 = 0.591 and 9/16 = 0.5625 (0.7 mm less); 1/8 = 3.2 mm.
	expect(said('0.5', 'cm')).toBe('0.5 cm, that is 3/16 in');
	expect(said('1.5', 'cm')).toBe('1.5 cm, that is 9/16 in');
	expect(said('3 mm', 'in')).toBe('3 mm, that is 1/8 in');
	expect(said('19 mm', 'in')).toBe('19 mm, that is 3/4 in');
	expect(said('2', 'cm')).toBe('2.0 cm, that is about 3/4 in');
});

test('an empty field has no echo, and what can’t be read gives the issue and no length', () => {
	expect(echoOf('  ', 'cm')).toBeNull();
	expect(echoOf('abc', 'cm')).toMatchObject({ issue: { code: 'not-a-length' } });
	expect(echoOf('1,250', 'cm')).toMatchObject({ issue: { code: 'ambiguous-length' } });
});

test('a key of eighths puts its fraction after the whole number, in place of another', () => {
	expect(['28', '28 1/2', '28½', '28.25', '', '1/2', '28 in'].map((text) => withFraction(text, '3/4'))).toEqual([
		'28 3/4', '28 3/4', '28 3/4', '28 3/4', '3/4', '3/4', '28 3/4 in'
	]);
});

test('the key that is down is the fraction that was typed, however it was typed', () => {
	expect(['28½', '28.5', '28 2/4', '28', '28.3', 'x', '72 cm'].map((text) => fractionOf(text, 'in'))).toEqual(['1/2', '1/2', '1/2', null, '1/4', null, null]);
});

test('whatever the keys make is a length, with that fraction', () => {
	fc.assert(
		fc.property(fc.nat(300), fc.constantFrom('', ' 1/8', ' 7/8', '.5', '-1/2'), fc.constantFrom('1/8', '1/2', '5/8'), (whole, rest, part) => {
			const made = withFraction(`${whole}${rest}`, part);
			expect(parseLength(made, 'in')).toMatchObject({ ok: true });
			expect(fractionOf(made, 'in')).toBe(part);
		})
	);
});
