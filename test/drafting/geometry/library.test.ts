// The same outlines measured by general-purpose libraries that share no code with ours: @flatten-js/core knows true arcs,
// clipper2-ts moves polygons outwards.
import Flatten from '@flatten-js/core';
import { areaD, EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import { expect, test } from 'vitest';
import { crossesItself, crossings } from '../../../src/lib/drafting/geometry/crossing.ts';
import { smoothRun } from '../../../src/lib/drafting/geometry/curve.ts';
import { foldBackCorners } from '../../../src/lib/drafting/geometry/fold-back.ts';
import { area, bounds, edgeLength, lengthOf, pointAlong, stretches, type Stretch } from '../../../src/lib/drafting/geometry/measure.ts';
import { offset } from '../../../src/lib/drafting/geometry/offset.ts';
import type { Outline } from '../../../src/lib/drafting/geometry/outline.ts';
import { distance, type Point } from '../../../src/lib/drafting/geometry/point.ts';
import { seeded } from '../bodies.ts';
import { chordPoints } from '../measured.ts';
import { sector, star } from './shapes.ts';

const theirs = ([x, y]: Point): Flatten.Point => new Flatten.Point(x, y);

function shapeOf({ from, edge }: Stretch): Flatten.Segment | Flatten.Arc {
	if (!edge.centre) return new Flatten.Segment(theirs(from), theirs(edge.end));
	const angleTo = (p: Point): number => Math.atan2(p[1] - edge.centre![1], p[0] - edge.centre![0]);
	return new Flatten.Arc(theirs(edge.centre), distance(from, edge.centre), angleTo(from), angleTo(edge.end), edge.turn > 0);
}

const polygonOf = (outline: Outline): Flatten.Polygon => new Flatten.Polygon(stretches(outline).map(shapeOf));

/** Stitch lines, and the cut lines round them, mitred and folded back. */
function* outlines(seed: number, count: number): Generator<Outline> {
	const random = seeded(seed);
	for (let i = 0; i < count; i++) {
		const r = 40 + 400 * random();
		const panel = sector(r, r + 300 + 700 * random(), 0.05 + 5 * random());
		const hem = 5 + 40 * random();
		const cut = offset(panel, ({ name }) => (name === 'hem' ? hem : 15));
		const bowed = star(random, 0.5);
		for (const outline of [panel, cut, cut && foldBackCorners(panel, cut, 'hem', hem), bowed, offset(bowed, () => 12)]) {
			if (outline && !crossesItself(outline)) yield outline;
		}
	}
}

test('Areas, lengths and boxes are those that another library finds on true arcs', () => {
	let compared = 0;
	for (const outline of outlines(101, 300)) {
		const polygon = polygonOf(outline);
		// Where an arc's centre lies kilometres away the library's sum loses a digit or two.
		expect(polygon.area() / Math.abs(area(outline))).toBeCloseTo(1, 7);
		for (const stretch of stretches(outline)) expect(shapeOf(stretch).length).toBeCloseTo(edgeLength(stretch), 6);
		const { from, to } = bounds(outline);
		const { xmin, ymin, xmax, ymax } = polygon.box;
		for (const [ours, other] of [[from[0], xmin], [from[1], ymin], [to[0], xmax], [to[1], ymax]] as const) expect(ours).toBeCloseTo(other, 6);
		compared++;
	}
	expect(compared).toBeGreaterThan(1000);
});

test('Two edges meet where another library says they meet', () => {
	const random = seeded(102);
	let [met, apart] = [0, 0];
	for (let i = 0; i < 1500; i++) {
		const [a, b] = [stretches(star(random, 0.6)), stretches(star(random, 0.6))];
		for (const one of a.slice(0, 3)) {
			for (const other of b.slice(0, 3)) {
				const ours = crossings(one, other);
				const found = shapeOf(one).intersect(shapeOf(other));
				// So near to an edge's end it is a matter of each library's own slack.
				const ends = [one.from, one.edge.end, other.from, other.edge.end];
				if ([...ours, ...found.map(({ x, y }): Point => [x, y])].some((p) => ends.some((end) => distance(p, end) < 1e-4))) continue;
				expect(ours.length).toBe(found.length);
				for (const point of ours) expect(Math.min(...found.map(({ x, y }) => distance(point, [x, y])))).toBeLessThan(1e-5);
				if (ours.length > 0) met++;
				else apart++;
			}
		}
	}
	expect(met).toBeGreaterThan(1000);
	expect(apart).toBeGreaterThan(1000);
});

test('An outline crosses itself where another library says that it does', () => {
	const random = seeded(103);
	const found = { true: 0, false: 0 };
	for (let i = 0; i < 1500; i++) {
		const outline = star(random, 0.7);
		const simple = polygonOf(outline).isValid();
		expect(crossesItself(outline)).toBe(!simple);
		found[simple ? 'false' : 'true']++;
	}
	expect(found.true).toBeGreaterThan(50);
	expect(found.false).toBeGreaterThan(50);
});

test('Every place on a cut line lies at its allowance from the stitch line, and at the mitres farther', () => {
	const random = seeded(104);
	let [compared, at] = [0, 0];
	for (let i = 0; i < 250; i++) {
		const stitch = star(random, 0.5);
		const allowance = 1 + 30 * random();
		const cut = crossesItself(stitch) ? null : offset(stitch, () => allowance);
		if (!cut) continue;
		const polygon = polygonOf(stitch);
		for (const stretch of stretches(cut)) {
			for (const part of [0, 0.1, 0.3, 0.5, 0.8]) {
				const [away] = polygon.distanceTo(theirs(pointAlong(stretch, part)));
				expect(away).toBeGreaterThan(allowance - 1e-6);
				compared++;
				if (away < allowance + 1e-6) at++;
			}
		}
	}
	expect(compared).toBeGreaterThan(2000);
	expect(at / compared).toBeGreaterThan(0.5);
});

const pathOf = (outline: Outline): PathD => stretches(outline).flatMap(({ from, edge }) => chordPoints(from, edge).slice(0, -1).map(([x, y]) => ({ x, y })));

test('A polygon’s cut line is the one that a polygon-moving library gives, mitres and all', () => {
	const random = seeded(105);
	let [same, folded] = [0, 0];
	for (let i = 0; i < 2500; i++) {
		const stitch = star(random, 0);
		const allowance = 1 + 150 * random();
		// Mitres up to a thousand times the allowance, so that none is cut short; six decimals.
		const moved = inflatePathsD([pathOf(stitch)], allowance, JoinType.Miter, EndType.Polygon, 1000, 6);
		const cut = offset(stitch, () => allowance);
		if (!cut) {
			folded++;
			continue;
		}
		same++;
		expect(moved.length).toBe(1);
		expect(areaD(moved[0]!) / area(cut)).toBeCloseTo(1, 6);
		// The library rounds corners to a millionth, which a long mitre makes a thousandfold.
		for (const { end } of cut.edges) expect(Math.min(...moved[0]!.map(({ x, y }) => distance(end, [x, y])))).toBeLessThan(0.01);
	}
	expect(same).toBeGreaterThan(1000);
	expect(folded).toBeGreaterThan(50);
});

test('Where our offset finds no room in a polygon, the library loses an edge of it too', () => {
	const random = seeded(106);
	let refused = 0;
	for (let i = 0; i < 2500; i++) {
		const stitch = star(random, 0);
		const allowance = 1 + 150 * random();
		if (offset(stitch, () => allowance)) continue;
		const moved = inflatePathsD([pathOf(stitch)], allowance, JoinType.Miter, EndType.Polygon, 1000, 6);
		const corners = moved.reduce((sum, path) => sum + path.length, 0);
		expect(moved.length !== 1 || corners !== stitch.edges.length).toBe(true);
		refused++;
	}
	expect(refused).toBeGreaterThan(50);
});

test('A smooth run moved outwards encloses what the library’s moved chords enclose', () => {
	for (const [a, b] of [[500, 300], [120, 60], [1500, 1400]] as const) {
		const rim = smoothRun('rim', (t) => [a * Math.cos(t), b * Math.sin(t)], (t) => [-a * Math.sin(t), b * Math.cos(t)], 0, 2 * Math.PI);
		const ellipse: Outline = { start: rim.at(-1)!.end, edges: rim };
		for (const allowance of [5, 15, 40]) {
			const cut = offset(ellipse, () => allowance)!;
			const chords: PathD = Array.from({ length: 20_000 }, (_, i) => ({ x: a * Math.cos((i * Math.PI) / 10_000), y: b * Math.sin((i * Math.PI) / 10_000) }));
			const moved = inflatePathsD([chords], allowance, JoinType.Miter, EndType.Polygon, 2, 6);
			// 0.005 mm all along the rim, and what the chords cut off.
			expect(Math.abs(areaD(moved[0]!) - area(cut))).toBeLessThan(0.005 * lengthOf(cut, 'rim'));
			// And Steiner's formula for a convex outline: A + L·d + π·d².
			expect(area(cut)).toBeCloseTo(area(ellipse) + lengthOf(ellipse, 'rim') * allowance + Math.PI * allowance ** 2, 4);
		}
	}
});
