import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stretchOf } from '../../src/lib/ui/reading-tape.ts';

const inches = (eighths: number) => (eighths / 8) * 25.4;

test('28½ and 28¾ inches stand among their eighths, the notch half-way at 28⅝', () => {
	const { ticks, pins, from, to, middle } = stretchOf([inches(228), inches(230)], 'in');
	expect(ticks.map(({ text }) => text).filter(Boolean)).toEqual(['28', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8', '29', '1/8', '1/4']);
	expect(pins).toEqual([from, to]);
	expect(middle).toBeCloseTo(50, 9);
	expect(ticks.find(({ text }) => text === '5/8')!.at).toBeCloseTo(50, 9);
});

test('two equal readings in centimetres stand on one pin in the middle of 3 cm', () => {
	const { pins, from, to, ticks } = stretchOf([760, 760], 'cm');
	expect(pins).toEqual([50, 50]);
	expect([from, to]).toEqual([50, 50]);
	expect(ticks.find(({ text }) => text === '76')).toMatchObject({ at: 50, rank: 3 });
});

test('whatever is read, every pin and tick stands on the stretch and no more than 13 numbers are written', () => {
	fc.assert(
		fc.property(fc.array(fc.double({ min: 1, max: 10_000, noNaN: true }), { minLength: 1, maxLength: 4 }), fc.constantFrom('cm' as const, 'in' as const), (readings, unit) => {
			const { ticks, pins } = stretchOf(readings, unit);
			for (const at of [...pins, ...ticks.map((tick) => tick.at)]) {
				expect(at).toBeGreaterThanOrEqual(-1e-6);
				expect(at).toBeLessThanOrEqual(100 + 1e-6);
			}
			expect(ticks.filter(({ text }) => text !== undefined).length).toBeLessThanOrEqual(13);
		})
	);
});
