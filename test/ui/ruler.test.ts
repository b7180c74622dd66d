import { expect, test } from 'vitest';
import { rulerMark, type Graduation } from '../../src/lib/drafting/ruler.ts';
import { graduationWords, markFound, markOff, markReads, waistMoved } from '../../src/lib/ui/wording/ruler.ts';

const say = (mm: number, graduation: Graduation): readonly string[] => {
	const mark = rulerMark(mm, graduation);
	return [markReads(mark, graduation), markFound(mark, graduation), markOff(mark)];
};

test('9.55 in is told as a person with a ruler finds it', () => {
	// 9.55 in is 242.57 mm; 9 9/16 is 242.8875, 0.3 more; 9 1/2 is 241.3, 1.3 less (arithmetic).
	expect(say(9.55 * 25.4, 'sixteenth')).toEqual(['9 9/16 in', '1 sixteenth past 9 1/2 in', '0.3 mm more than worked out']);
	expect(say(9.55 * 25.4, 'eighth')).toEqual(['9 1/2 in', 'on the mark of 9 1/2 in', '1.3 mm less than worked out']);
	expect(say(9.55 * 25.4, 'mm')).toEqual(['24.3 cm', '2 millimetres before 24.5 cm', '0.4 mm more than worked out']);
	expect(say(9.55 * 25.4, 'halfCm')).toEqual(['24.5 cm', 'on the mark of 24.5 cm', '2.4 mm more than worked out']);
});

test('26.05 in is marked at 26', () => {
	for (const graduation of ['eighth'] as const) expect(say(26.05 * 25.4, graduation)).toEqual(['26 in', 'on the mark of 26 in', '1.3 mm less than worked out']);
	// To a sixteenth, 26 1/16 is nearer: 26.05 × 16 = 416.8.
	expect(say(26.05 * 25.4, 'sixteenth')[0]).toBe('26 1/16 in');
});

test('What is on a mark is as worked out, and less than an inch has no whole number', () => {
	expect(say(220, 'mm')).toEqual(['22 cm', 'on the mark of 22 cm', 'as worked out']);
	expect(say(9.525, 'eighth')).toEqual(['3/8 in', '1 eighth before 1/2 in', 'as worked out']);
	expect(say(1, 'mm')).toEqual(['0.1 cm', '1 millimetre past 0 cm', 'as worked out']);
});

test('The waist is longer, shorter, or as it was', () => {
	expect([waistMoved(1.57), waistMoved(-0.26), waistMoved(0.04)]).toEqual([
		'The waist comes out 1.6 mm longer.', 'The waist comes out 0.3 mm shorter.', 'The waist stays as it is.'
	]);
});

test('Every graduation has words', () => {
	expect(Object.values(graduationWords).every((words) => words.startsWith('every '))).toBe(true);
});
