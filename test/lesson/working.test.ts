import { expect, test } from 'vitest';
import { workOut, writeWorking, type Token } from '../../src/lib/lesson/working.ts';

const value = (token: Token) => ('mm' in token ? token.mm : 'number' in token ? Number(token.number) : NaN);
const mm = (mm: number): Token => ({ mm, is: 'a length' });

test('Products go before sums', () => {
	// 750 + 30 + 2 × 15 = 810; 2 × 40 + 2 × 15 = 110; 9 − 2 × 3 + 8 ÷ 4 = 5: arithmetic
	expect(workOut([mm(750), { sign: '+' }, mm(30), { sign: '+' }, { number: '2' }, { sign: '×' }, mm(15)], value)).toBe(810);
	expect(workOut([{ number: '2' }, { sign: '×' }, mm(40), { sign: '+' }, { number: '2' }, { sign: '×' }, mm(15)], value)).toBe(110);
	expect(workOut([mm(9), { sign: '−' }, { number: '2' }, { sign: '×' }, mm(3), { sign: '+' }, mm(8), { sign: '÷' }, { number: '4' }], value)).toBe(5);
});

test('A 30 in waist seam on a half circle is written 30.00 ÷ 3.14 = 9.55', () => {
	// The fact of the trade: 30 ÷ 3.14 = 9.55 in (common practice, no source).
	const radius = (30 * 25.4) / Math.PI;
	expect(writeWorking({ of: 'waist radius', tokens: [mm(30 * 25.4), { sign: '÷' }, { number: '3.14' }], mm: radius }, 'in'))
		.toEqual({ tokens: ['30.00', '÷', '3.14'], comesTo: '9.55' });
});

test('Centimetres take a second place where one would make the written sum come out wrong', () => {
	const sum = (a: number, b: number) => writeWorking({ of: 'sum', tokens: [mm(a), { sign: '+' }, mm(b)], mm: a + b }, 'cm');
	expect(sum(238.7, 560)).toEqual({ tokens: ['23.9', '+', '56.0'], comesTo: null });
	// 23.87 + 56.07 = 79.94, but 23.9 + 56.1 would be 80.0.
	expect(sum(238.7, 560.7)).toEqual({ tokens: ['23.87', '+', '56.07'], comesTo: '79.94' });
});
