import { expect, test } from 'vitest';
import { checkAsMade } from '../../../src/lib/drafting/made/made-input.ts';

const issuesOf = (value: unknown): readonly string[] => {
	const result = checkAsMade(value, 'cm');
	return result.ok ? [] : result.issues.map(({ code, path }) => `${code} ${path}`);
};
const floor = Array.from({ length: 8 }, (_, i) => ({ place: i / 8, distance: 30 }));

test('Readings are read in the unit that was said, and as a person would type them', () => {
	const result = checkAsMade({ radiusDrawn: 22.3, zipBought: '8 in', liningAbove: -0.5, clothAfterWashing: { width: 148, length: '2.6 m' }, floor }, 'cm');
	// 8 · 25.4 = 203.2
	expect(result).toEqual({ ok: true, value: {
		radiusDrawn: 223, zipBought: expect.closeTo(203.2, 9), liningAbove: -5, clothAfterWashing: { width: 1480, length: 2600 }, floor: floor.map(({ place }) => ({ place, distance: 300 }))
	} });
	expect(checkAsMade({}, 'in')).toEqual({ ok: true, value: {} });
});

test('Each slip is named by its path, all of them at once', () => {
	expect(issuesOf({ radiusDrawn: 'about 20', zipBought: -3, clothAfterWashing: { width: 140 }, zip: 20 })).toEqual([
		'not-a-length asMade.radiusDrawn', 'length-negative asMade.zipBought', 'field-missing asMade.clothAfterWashing.length', 'unknown-field asMade.zip'
	]);
	expect(issuesOf({ nickDepth: 0 })).toEqual(['length-out-of-range asMade.nickDepth']);
	expect(issuesOf({ bandLength: 5000 })).toEqual(['length-out-of-range asMade.bandLength']);
});

test('The places round the hem are a list of 8 to 16, each once, from 0 to 1', () => {
	expect(issuesOf({ floor: floor.slice(3) })).toEqual(['floor-places asMade.floor']);
	expect(issuesOf({ floor: [...floor, ...floor, floor[0]] })).toEqual(['floor-places asMade.floor']);
	expect(issuesOf({ floor: 'level' })).toEqual(['floor-places asMade.floor']);
	expect(issuesOf({ floor: [...floor.slice(1), { place: 1.5, distance: 'x' }] })).toEqual(['number-out-of-range asMade.floor.7.place', 'not-a-length asMade.floor.7.distance']);
	expect(issuesOf({ floor: [...floor.slice(1), 7] })).toEqual(['not-an-object asMade.floor.7']);
	expect(issuesOf({ floor: [...floor, floor[3]] })).toEqual(['place-twice asMade.floor.8.place']);
});

test('Whatever comes, nothing throws', () => {
	for (const value of [null, undefined, 3, 'x', [], [floor], { floor: null }, { floor: [null] }, { clothAfterWashing: [] }, Object.create({ floor: 3 }) as unknown, JSON.parse('{"__proto__":{"floor":1}}') as unknown]) {
		const result = checkAsMade(value, 'mm');
		if (!result.ok) expect(result.issues.every(({ code, path }) => code !== '' && path.startsWith('asMade'))).toBe(true);
	}
	expect(checkAsMade(null, 'cm').ok).toBe(false);
});
