import { expect, test } from 'vitest';
import { graduations, rulerMark, waistMoves, type Graduation } from '../../src/lib/drafting/ruler.ts';
import { seeded } from './bodies.ts';

test('A length is marked at the nearest division of the ruler', () => {
	expect(rulerMark(222.82, 'mm')).toMatchObject({ divisions: 223, mm: 223 });
	expect(rulerMark(222.82, 'halfCm')).toMatchObject({ divisions: 45, mm: 225 });
	// 26.05 in is marked at 26 (common practice, no source).
	expect(rulerMark(26.05 * 25.4, 'eighth').mm / 25.4).toBeCloseTo(26, 9);
	expect(rulerMark(9.55 * 25.4, 'sixteenth').divisions).toBe(9 * 16 + 9);
});

test('No mark is further off than half a division', () => {
	const random = seeded(61);
	for (let i = 0; i < 4000; i++) {
		const graduation = (Object.keys(graduations) as Graduation[])[i % 4]!;
		const mark = rulerMark(2000 * random(), graduation);
		if (Math.abs(mark.off) > graduations[graduation] / 2 + 1e-9) expect(mark).toBe(graduation);
	}
});

test('A radius marked 0.5 cm too far out makes the waist of a half circle 1.57 cm longer, and of a full one 3.14', () => {
	// θδ: circle geometry.
	const mark = { divisions: 0, mm: 0, off: 5 };
	expect(waistMoves(mark, Math.PI)).toBeCloseTo(15.7, 1);
	expect(waistMoves(mark, 2 * Math.PI)).toBeCloseTo(31.4, 1);
});
