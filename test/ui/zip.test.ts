// A zip is said as the shop sells it.
import { expect, test } from 'vitest';
import { shopZips } from '../../src/lib/drafting/opening.ts';
import { zipWords } from '../../src/lib/ui/wording/zip.ts';

test('a zip of either series is said in its own unit, with the reader’s behind', () => {
	expect(zipWords(220, 'cm')).toBe('22 cm');
	expect(zipWords(220, 'in')).toBe('22 cm (8 5/8 in)');
	expect(zipWords(9 * 25.4, 'in')).toBe('9 in');
	expect(zipWords(9 * 25.4, 'cm')).toBe('9 in (22.9 cm)');
	for (const mm of shopZips.cm) expect(zipWords(mm, 'in')).toMatch(/^\d+ cm \(/);
	for (const mm of shopZips.in) expect(zipWords(mm, 'cm')).toMatch(/^\d+ in \(/);
});

test('a length cut from a roll is in the reader’s unit', () => {
	expect(zipWords(723.4, 'in')).toBe('28 1/2 in');
	expect(zipWords(723.4, 'cm')).toBe('72.3 cm');
});
