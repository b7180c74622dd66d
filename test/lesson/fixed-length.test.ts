import { expect, test } from 'vitest';
import { fixedLength } from '../../src/lib/lesson/fixed-length.ts';

test.each([
	[5, 'cm', '5 mm'],
	[2.5, 'cm', '2.5 mm'],
	[100, 'cm', '10 cm'],
	// 1 in is 25.4 mm exactly: 2 mm is 1.26 sixteenths, 6 mm 3.8, 30 mm 18.9.
	[2, 'in', '1/16 in'],
	[6, 'in', '1/4 in'],
	[30, 'in', '1 3/16 in'],
	[25.4, 'in', '1 in'],
	[0.5, 'in', '1/16 in']
] as const)('%s mm is said in %s as %s', (mm, unit, said) => {
	expect(fixedLength(mm, unit)).toBe(said);
});
