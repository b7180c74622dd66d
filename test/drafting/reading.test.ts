import fc from 'fast-check';
import { expect, test } from 'vitest';
import { agree } from '../../src/lib/drafting/reading.ts';

const readings = (...mm: number[]) => mm.map((one) => ({ mm: one }));

test('None, then one, then two that agree: their mean is used', () => {
	expect(agree([], 10)).toEqual({ state: 'none', pair: null, spread: null, used: null });
	expect(agree(readings(725), 10)).toEqual({ state: 'one', pair: null, spread: null, used: null });
	expect(agree(readings(725, 731), 10)).toEqual({ state: 'agreed', pair: [725, 731], spread: 6, used: 728 });
});

test('Two that lie apart are not used, and a third pairs with the one it is closest to', () => {
	expect(agree(readings(725, 745), 10)).toEqual({ state: 'apart', pair: [725, 745], spread: 20, used: null });
	expect(agree(readings(725, 745, 727), 10)).toEqual({ state: 'agreed', pair: [725, 727], spread: 2, used: 726 });
	expect(agree(readings(725, 745, 743), 10)).toEqual({ state: 'agreed', pair: [745, 743], spread: 2, used: 744 });
	expect(agree(readings(700, 745, 722), 10)).toMatchObject({ state: 'apart', pair: [700, 722] });
});

test('Between two that are equally close the later one counts, and older ones than that never do', () => {
	expect(agree(readings(720, 740, 730), 10)).toMatchObject({ pair: [740, 730] });
	expect(agree(readings(730, 700, 760, 730), 10)).toMatchObject({ state: 'apart', pair: [760, 730] });
});

test('Halfway between two on eighths of an inch, the later one counts, whatever the last digits are', () => {
	// The step is any number of eighths; some of these differ by floating error alone.
	let unequal = 0;
	for (let eighth = 200; eighth <= 400; eighth++) {
		for (let step = 1; step <= 24; step++) {
			const [older, before, newest] = [eighth - step, eighth + step, eighth].map((eighths) => (eighths / 8) * 25.4) as [number, number, number];
			if (Math.abs(older - newest) < Math.abs(before - newest)) unequal++;
			expect(agree(readings(older, before, newest), 10).pair).toEqual([before, newest]);
		}
	}
	expect(unequal).toBeGreaterThan(0);
});

test('Exactly the tolerance apart agrees, in inches too', () => {
	expect(agree(readings(28.1 * 25.4, 28.1 * 25.4 + 10), 10).state).toBe('agreed');
	expect(agree(readings(28 * 25.4, 28.4 * 25.4), 0.4 * 25.4).state).toBe('agreed');
	expect(agree(readings(725, 735.01), 10).state).toBe('apart');
});

test('What is used lies between the two, and the readings stay as they are', () => {
	fc.assert(fc.property(fc.array(fc.record({ mm: fc.double({ min: 300, max: 2500, noNaN: true }) }), { maxLength: 6 }), fc.double({ min: 0, max: 50, noNaN: true }), (list, tolerance) => {
		const before = structuredClone(list);
		const { pair, used, spread } = agree(list, tolerance);
		expect(list).toEqual(before);
		if (pair) {
			expect(pair[1]).toBe(list.at(-1)!.mm);
			expect(spread).toBe(Math.abs(pair[0] - pair[1]));
			if (used !== null) expect(used >= Math.min(...pair) && used <= Math.max(...pair)).toBe(true);
		}
	}));
});
