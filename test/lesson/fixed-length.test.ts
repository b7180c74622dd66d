import { expect, test } from 'vitest';
import { fixedLength } from '../../src/lib/lesson/fixed-length.ts';

test.each([
	[5, 'cm', { whole: '5', unit: 'mm' }],
	[2.5, 'cm', { whole: '2.5', unit: 'mm' }],
	[100, 'cm', { whole: '10', unit: 'cm' }],
	// 1 in is 25.4 mm exactly: 2 mm is 1.26 sixteenths, 6 mm 3.8, 30 mm 18.9.
	[2, 'in', { whole: '', fraction: '1/16', unit: 'in' }],
	[6, 'in', { whole: '', fraction: '1/4', unit: 'in' }],
	[30, 'in', { whole: '1', fraction: '3/16', unit: 'in' }],
	[25.4, 'in', { whole: '1', unit: 'in' }],
	[0.5, 'in', { whole: '', fraction: '1/16', unit: 'in' }]
] as const)('%s mm is said in %s', (mm, unit, said) => {
	expect(fixedLength(mm, unit)).toEqual(said);
});
