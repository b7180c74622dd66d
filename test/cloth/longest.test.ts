// The greatest radius on found cloth; figures from the layout's first trials (see shortest.test.ts).
import { expect, test } from 'vitest';
import { answer, quarters, rectangle, sector, straight } from './cases.ts';

const worn = { width: 135, length: 200, unusable: [{ x: 80, y: 52.5, length: 40, width: 30 }] };

test.each([
	['two quarters, edge on the grain, round a worn place', { cloth: worn, pieces: [sector('panel', 2, [12, 75, 90], quarters, true)] }, 93.5],
	['the same, middle on the grain', { cloth: worn, pieces: [sector('panel', 2, [12, 75, 90], straight)] }, 87.4],
	['four quarters and a waistband', { cloth: { width: 240, length: 260 }, pieces: [sector('panel', 4, [11, 75, 90], quarters, true), rectangle('band', 1, 78, 8, quarters)] }, 128.4],
	['one panel and a waistband', { cloth: { width: 140, length: 150 }, pieces: [sector('panel', 1, [43, 75, 90], quarters, true), rectangle('band', 1, 76, 8, quarters)] }, 138.5],
	['two half circles', { cloth: { width: 150, length: 150 }, pieces: [sector('panel', 2, [10, 70, 180], quarters, true)] }, 73.8]
])('%s: as great as is known, and proved', (_, asked, known) => {
	const { outer, bound, proved } = answer({ ...asked, find: 'outer', seconds: 20 });
	expect(outer! / 10).toBeGreaterThan(known - 0.05);
	expect(proved).toBe(true);
	expect(bound - outer!).toBeLessThanOrEqual(1 + 1e-6);
	expect(bound / 10).toBeGreaterThan(known - 0.05);
});

test('Cloth that is too small even for the shortest panel is told as that, for certain', () => {
	const { fits, proved, placements, outer } = answer({ cloth: { width: 18, length: 6 }, find: 'outer', seconds: 5, pieces: [sector('panel', 2, [10, 20, 90], straight)] });
	expect([fits, proved, placements, outer]).toEqual([false, true, [], null]);
});
