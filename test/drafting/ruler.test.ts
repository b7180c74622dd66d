import { expect, test } from 'vitest';
import { graduations, rulerMark, rulerPlace, rulers, waistMoves, type Graduation } from '../../src/lib/drafting/ruler.ts';
import { seeded } from './bodies.ts';

const names = Object.keys(graduations) as Graduation[];

test('A length is marked at the nearest division of the ruler', () => {
	expect(rulerMark(222.82, 'mm')).toMatchObject({ divisions: 223, mm: 223 });
	expect(rulerMark(222.82, 'halfCm')).toMatchObject({ divisions: 45, mm: 225 });
	// 26.05 in is marked at 26 (common practice, no source).
	expect(rulerMark(26.05 * 25.4, 'eighth').mm / 25.4).toBeCloseTo(26, 9);
	// 9.55 × 16 = 152.8 (arithmetic).
	expect(rulerMark(9.55 * 25.4, 'sixteenth').divisions).toBe(9 * 16 + 9);
	expect(rulerMark(9.55 * 25.4, 'eighth').divisions).toBe(9 * 8 + 4);
});

test('No mark is further off than half a division, and none is nearer', () => {
	const random = seeded(61);
	for (let i = 0; i < 4000; i++) {
		const graduation = names[i % 4]!;
		const mark = rulerMark(2000 * random(), graduation);
		if (Math.abs(mark.off) > graduations[graduation] / 2 + 1e-9) expect(mark).toBe(graduation);
	}
});

test('A length on a mark stays there, and one that is halfway goes to the further mark', () => {
	for (const graduation of names) for (const divisions of [0, 1, 7, 16, 153, 2000]) {
		const on = divisions * graduations[graduation];
		expect(rulerMark(on, graduation)).toMatchObject({ divisions, off: 0 });
		expect(rulerMark(on + graduations[graduation] / 2, graduation).divisions).toBe(divisions + 1);
	}
	// 28 9/16 in typed as 28.5625 is a mark of its own.
	expect(rulerMark(28.5625 * 25.4, 'sixteenth')).toMatchObject({ divisions: 457 });
});

test('A ruler’s numbers and long marks fall on its divisions', () => {
	for (const { division, numbered, perNumber, perLong } of Object.values(rulers)) {
		expect(division * perNumber).toBeCloseTo(numbered, 9);
		expect(perNumber % perLong).toBe(0);
	}
});

test('A mark is found from the nearest long mark, on or back', () => {
	const place = (mm: number, graduation: Graduation) => rulerPlace(rulerMark(mm, graduation), graduation);
	expect(place(223, 'mm')).toEqual({ from: 225, count: -2 });
	expect(place(222, 'mm')).toEqual({ from: 220, count: 2 });
	expect(place(0, 'mm')).toEqual({ from: 0, count: 0 });
	expect(place(225, 'halfCm')).toEqual({ from: 45, count: 0 });
	// 9 9/16: one past 9 1/2; 9 1/4: halfway, so counted on from 9.
	expect(place(9.5625 * 25.4, 'sixteenth')).toEqual({ from: 152, count: 1 });
	expect(place(9.25 * 25.4, 'sixteenth')).toEqual({ from: 144, count: 4 });
	expect(place(9.875 * 25.4, 'eighth')).toEqual({ from: 80, count: -1 });
});

test('A radius marked 0.5 cm too far out makes the waist of a half circle 1.57 cm longer, and of a full one 3.14', () => {
	// θδ: circle geometry.
	const mark = { divisions: 0, mm: 0, off: 5 };
	expect(waistMoves(mark, Math.PI)).toBeCloseTo(15.7, 1);
	expect(waistMoves(mark, 2 * Math.PI)).toBeCloseTo(31.4, 1);
});

test('Marked on a ruler, the radius of a 70 cm half circle moves its waist by θ times what it is out', () => {
	// r = 222.817 mm (circle geometry). To the millimetre 223: 0.183 out, π × 0.183 = 0.575. To the half
	// centimetre 225: 2.183 out, 6.858. To an eighth 8.7723 in → 8 3/4 = 222.25: 0.567 short, 1.781 (circle geometry).
	const moves = (graduation: Graduation) => waistMoves(rulerMark(700 / Math.PI, graduation), Math.PI);
	expect(moves('mm')).toBeCloseTo(0.575, 2);
	expect(moves('halfCm')).toBeCloseTo(6.858, 2);
	expect(moves('eighth')).toBeCloseTo(-1.78, 2);
});
