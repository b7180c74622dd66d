import { expect, test } from 'vitest';
import { crossesItself, crossings } from '../../src/lib/drafting/geometry/crossing.ts';
import { area, bounds, lengthOf, pointAlong, stretches, tangent } from '../../src/lib/drafting/geometry/measure.ts';
import { offset } from '../../src/lib/drafting/geometry/offset.ts';
import type { Outline } from '../../src/lib/drafting/geometry/outline.ts';
import { distance, polar, type Point } from '../../src/lib/drafting/geometry/point.ts';
import { seeded } from './bodies.ts';
import { surveyed, walked } from './measured.ts';

const line = (name: string, end: Point) => ({ name, end, centre: null, turn: 0 });
const arc = (name: string, end: Point, centre: Point, turn: number) => ({ name, end, centre, turn });

const square: Outline = { start: [0, 0], edges: [line('a', [10, 0]), line('b', [10, 10]), line('c', [0, 10]), line('d', [0, 0])] };
/** A half disc of radius 10 on its flat side. */
const halfDisc: Outline = { start: [-10, 0], edges: [line('flat', [10, 0]), arc('round', [-10, 0], [0, 0], Math.PI)] };

function sector(r: number, R: number, angle: number): Outline {
	const at = (radius: number, side: number) => polar([0, 0], radius, (side * angle) / 2);
	return { start: at(r, -1), edges: [line('first', at(R, -1)), arc('hem', at(R, 1), [0, 0], angle), line('second', at(r, 1)), arc('waist', at(r, -1), [0, 0], -angle)] };
}

test('Areas and lengths of a square, a half disc and a sector are those of school geometry', () => {
	expect(area(square)).toBe(100);
	expect(area(halfDisc)).toBeCloseTo(50 * Math.PI, 9);
	// Wherever it lies.
	const moved: Outline = { start: [20, 40], edges: [line('flat', [40, 40]), arc('round', [20, 40], [30, 40], Math.PI)] };
	expect(area(moved)).toBeCloseTo(50 * Math.PI, 9);
	const stood: Outline = { start: [30, 50], edges: [line('flat', [30, 30]), arc('round', [30, 50], [30, 40], Math.PI)] };
	expect(area(stood)).toBeCloseTo(50 * Math.PI, 9);
	expect(lengthOf(halfDisc, 'round')).toBeCloseTo(10 * Math.PI, 9);
	expect(area(sector(10, 20, 1))).toBeCloseTo((400 - 100) / 2, 9);
	expect(() => lengthOf(square, 'hem')).toThrow('no edge hem among a, b, c, d');
});

test('A place along an edge, and the way it runs there', () => {
	const [, round] = stretches(halfDisc);
	expect(pointAlong(round!, 0.5)).toEqual([expect.closeTo(0, 9), expect.closeTo(10, 9)]);
	expect(tangent(round!, 0.5)).toEqual([expect.closeTo(-1, 9), expect.closeTo(0, 9)]);
	const waist = stretches(sector(10, 20, 1))[3]!;
	// Clockwise: in the middle of the waist the run is downwards.
	expect(tangent(waist, 0.5)).toEqual([expect.closeTo(0, 9), expect.closeTo(-1, 9)]);
	expect(tangent(stretches(square)[1]!, 0.3)).toEqual([0, 1]);
});

test('The box round an outline reaches to the outermost points of its arcs', () => {
	expect(bounds(halfDisc)).toEqual({ from: [-10, 0], to: [10, expect.closeTo(10, 9)] });
	const wide = bounds(sector(10, 20, 1.5 * Math.PI));
	expect([...wide.from, ...wide.to]).toEqual([expect.closeTo(-20 * Math.SQRT1_2, 9), expect.closeTo(-20, 9), expect.closeTo(20, 9), expect.closeTo(20, 9)]);
});

test('A square grows by its allowances, edge by edge, with square corners', () => {
	const by: Record<string, number> = { a: 1, b: 2, c: 3, d: 4 };
	const cut = offset(square, ({ name }) => by[name]!)!;
	expect(cut.start).toEqual([-4, -1]);
	expect(cut.edges.map(({ end }) => end)).toEqual([[12, -1], [12, 13], [-4, 13], [-4, -1]]);
	expect(area(cut)).toBe(16 * 14);
});

test('A line that runs on in the same direction keeps its place between the two', () => {
	const split: Outline = { start: [0, 0], edges: [line('a', [5, 0]), line('a on', [10, 0]), line('b', [10, 10]), line('c', [0, 0])] };
	expect(offset(split, () => 2)!.edges[0]!.end).toEqual([5, -2]);
	// Moved by unequal amounts they would never meet.
	expect(offset(split, ({ name }) => (name === 'a' ? 2 : 3))).toBeNull();
});

test('Two arcs of one circle, and two arcs that meet at a corner, are joined too', () => {
	const disc: Outline = { start: [10, 0], edges: [arc('one', [-10, 0], [0, 0], Math.PI), arc('two', [10, 0], [0, 0], Math.PI)] };
	const grown = offset(disc, () => 5)!;
	expect(area(grown)).toBeCloseTo(225 * Math.PI, 6);
	// A lens: two arcs of radius 10 whose centres are 10 apart.
	const [x, half] = [5 * Math.sqrt(3), Math.acos(0.5)];
	const lens: Outline = { start: [x, 0], edges: [arc('over', [-x, 0], [0, -5], 2 * half), arc('under', [x, 0], [0, 5], 2 * half)] };
	const cut = offset(lens, () => 2)!;
	// Radii of 12 with the same centres meet at √(144 − 25).
	expect(cut.start).toEqual([expect.closeTo(Math.sqrt(119), 9), expect.closeTo(0, 9)]);
	expect(area(cut)).toBeCloseTo(surveyed(cut), 3);
});

test('A sector’s cut corners lie where the moved seam meets the moved arc: √(q² − s²) along the seam', () => {
	const random = seeded(31);
	for (let i = 0; i < 2000; i++) {
		// Tiny waists, radii near the allowance, and a shallow flare with a radius of metres.
		const r = 10 ** (1.3 + 2.7 * random());
		const [strip, inside, hem] = [0.9 * r * random() * 0.45, 0.5 * r * random(), 60 * random()];
		const q = r - inside;
		const room = 2 * Math.PI - 2 * Math.asin(strip / q);
		const angle = Math.min(room, 0.05 + 6.2 * random());
		const stitch = sector(r, r + 900, angle);
		const cut = offset(stitch, ({ name }) => (name === 'waist' ? inside : name === 'hem' ? hem : strip))!;
		const way = polar([0, 0], 1, -angle / 2);
		const along = (p: Point) => p[0] * way[0] + p[1] * way[1];
		const Q = r + 900 + hem;
		if (Math.abs(along(cut.start) - Math.sqrt(q * q - strip * strip)) > 1e-6) expect(along(cut.start)).toBe(Math.sqrt(q * q - strip * strip));
		if (Math.abs(along(cut.edges[0]!.end) - Math.sqrt(Q * Q - strip * strip)) > 1e-6) expect(along(cut.edges[0]!.end)).toBe(Math.sqrt(Q * Q - strip * strip));
		const waist = q * (angle + 2 * Math.asin(strip / q));
		if (Math.abs(lengthOf(cut, 'waist') - waist) > 1e-6) expect(lengthOf(cut, 'waist')).toBe(waist);
		if (Math.abs(walked(cut, 'waist') / waist - 1) > 1e-6) expect(walked(cut, 'waist')).toBe(waist);
	}
});

test('Where there is no room for the allowance there is no cut line', () => {
	// The seam strips are wider than the cut waist circle.
	expect(offset(sector(20, 500, 1), ({ name }) => (name === 'waist' ? 10 : 12))).toBeNull();
	// The allowance is larger than the radius.
	expect(offset(sector(20, 500, 1), () => 21)).toBeNull();
});

test('Edges cross where they cross', () => {
	const cross = crossings({ from: [0, 0], edge: line('a', [10, 10]) }, { from: [0, 10], edge: line('b', [10, 0]) });
	expect(cross).toEqual([[5, 5]]);
	expect(crossings({ from: [0, 0], edge: line('a', [4, 4]) }, { from: [0, 10], edge: line('b', [10, 0]) })).toEqual([]);
	const through = crossings({ from: [0, -5], edge: line('a', [0, 15]) }, { from: [10, 0], edge: halfDisc.edges[1]! });
	// Only the upper half of the circle is there.
	expect(through).toEqual([[expect.closeTo(0, 9), expect.closeTo(10, 9)]]);
	const rings = crossings({ from: [10, 0], edge: arc('a', [-10, 0], [0, 0], Math.PI) }, { from: [20, 0], edge: arc('b', [0, 0], [10, 0], Math.PI) });
	expect(rings).toEqual([[expect.closeTo(5, 9), expect.closeTo(5 * Math.sqrt(3), 9)]]);
});

test('An outline that crosses itself is found out, and one that does not is left in peace', () => {
	expect(crossesItself(square)).toBe(false);
	expect(crossesItself(halfDisc)).toBe(false);
	expect(crossesItself(sector(100, 900, 6.2))).toBe(false);
	const bow: Outline = { start: [0, 0], edges: [line('a', [10, 10]), line('b', [10, 0]), line('c', [0, 10]), line('d', [0, 0])] };
	expect(crossesItself(bow)).toBe(true);
	// A panel of more than a whole circle lies on itself; two sides of a whole circle touch.
	expect(crossesItself(sector(100, 900, 6.4))).toBe(true);
	expect(crossesItself(sector(100, 900, 2 * Math.PI))).toBe(false);
});

test('Offsetting leaves the stitch line untouched', () => {
	const stitch = sector(100, 900, 2);
	const before = structuredClone(stitch);
	offset(stitch, () => 15);
	expect(stitch).toEqual(before);
	expect(distance(stitch.start, stitch.edges[3]!.end)).toBe(0);
});

test('An arc so shallow that its centre lies kilometres away still adds its sliver and no more', () => {
	// Over a chord c an arc of height h encloses 2ch/3, but for a share of about (h/c)² (Archimedes, for the parabola).
	for (const height of [0.01, 1e-3, 1e-5]) {
		const radius = 250_000 / height / 2 + height / 2;
		const half = Math.asin(500 / radius);
		const shallow: Outline = { start: [-500, 0], edges: [line('low', [500, 0]), line('side', [500, 10]), arc('top', [-500, 10], [0, 10 + height - radius], 2 * half), line('other', [-500, 0])] };
		expect(area(shallow)).toBeCloseTo(10_000 + (2 / 3) * 1000 * height, 6);
	}
});
