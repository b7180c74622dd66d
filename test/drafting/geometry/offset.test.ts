import { expect, test } from 'vitest';
import { smoothRun } from '../../../src/lib/drafting/geometry/curve.ts';
import { crossesItself } from '../../../src/lib/drafting/geometry/crossing.ts';
import { area, lengthOf, pointAlong, stretches, tangent } from '../../../src/lib/drafting/geometry/measure.ts';
import { offset } from '../../../src/lib/drafting/geometry/offset.ts';
import type { Edge, Outline } from '../../../src/lib/drafting/geometry/outline.ts';
import { distance, polar, type Point } from '../../../src/lib/drafting/geometry/point.ts';
import { seeded } from '../bodies.ts';
import { chordPoints, surveyed } from '../measured.ts';
import { arc, line, polygon, sector, star } from './shapes.ts';

const by = (allowances: Readonly<Record<string, number>>) => ({ name }: Edge): number => allowances[name] ?? allowances.else ?? 0;

/** A panel's cut corner from circle geometry: √(q² − s²) along the seam and s beside it. Both waist and hem. */
function expectSectorCut(r: number, R: number, angle: number, waist: number, seam: number, hem: number): void {
	const cut = offset(sector(r, R, angle), by({ waist, hem, else: seam }))!;
	expect(cut).not.toBeNull();
	const way = polar([0, 0], 1, -angle / 2);
	const local = (p: Point): Point => [p[0] * way[0] + p[1] * way[1], p[0] * way[1] - p[1] * way[0]];
	for (const [corner, q] of [[cut.start, r - waist], [cut.edges[0]!.end, R + hem]] as const) {
		expect(local(corner)[0]).toBeCloseTo(Math.sqrt(q * q - seam * seam), 6);
		expect(local(corner)[1]).toBeCloseTo(seam, 6);
	}
	// The waist arc turns on by the angle of a strip at each end, and so does the hem.
	const turned = (q: number): number => q * (angle + 2 * Math.asin(seam / q));
	expect(lengthOf(cut, 'waist') / turned(r - waist)).toBeCloseTo(1, 9);
	expect(lengthOf(cut, 'hem') / turned(R + hem)).toBeCloseTo(1, 9);
	expect(area(cut) / surveyed(cut)).toBeCloseTo(1, 6);
	expect(crossesItself(cut)).toBe(false);
}

test('A tiny waist whose cut radius is a hair above the seam allowance still has its cut line', () => {
	for (const hair of [10, 1, 0.1, 0.001, 1e-6]) expectSectorCut(30 + hair, 600, 1.2, 15, 15, 20);
	// Two full circles on a girl's waist of 48 cm, in two panels of a whole circle less their strips: r = 38.2 mm.
	expectSectorCut(480 / (4 * Math.PI), 500, 2 * Math.PI / 3, 10, 10, 20);
	// A hair below, the strips leave no waist.
	expect(offset(sector(30 - 1e-6, 600, 1.2), by({ waist: 15, hem: 20, else: 15 }))).toBeNull();
});

test('A shallow flare has its cut line too: a share of 0.1 on a waist of 2 m is drawn with a radius of 3.18 m', () => {
	const angle = 2 * Math.PI * 0.1;
	const r = 2000 / angle;
	expect(r).toBeCloseTo(3183.1, 1);
	for (const panels of [1, 2, 4, 12]) expectSectorCut(r, r + 900, angle / panels, 15, 15, 40);
	// A gore a hundredth of a circle wide with a radius of 100 m.
	expectSectorCut(1e5, 1e5 + 900, 0.005, 15, 15, 40);
});

test('Twelve panels, and two full circles, have their cut lines', () => {
	for (const share of [0.1, 0.5, 1, 2]) {
		const angle = 2 * Math.PI * share;
		expectSectorCut(700 / angle, 700 / angle + 800, angle / 12, 15, 15, 20);
	}
	// Two circles of 62 cm round the waist in three panels, as one panel of a whole circle would lap itself.
	const two = 4 * Math.PI;
	expectSectorCut(620 / two, 620 / two + 600, two / 3, 10, 10, 10);
	expect(offset(sector(620 / two, 620 / two + 600, two / 2), by({ waist: 10, hem: 10, else: 10 }))).toBeNull();
});

test('A whole circle without seam allowance keeps its cut line, and strips make it lap', () => {
	expectSectorCut(111.4, 700, 2 * Math.PI, 15, 0, 20);
	expect(offset(sector(111.4, 700, 2 * Math.PI), by({ else: 1 }))).toBeNull();
	// Just as far round as the strips let it go: 2π − 2·arcsin(s/q).
	const most = 2 * Math.PI - 2 * Math.asin(15 / 96.4);
	expectSectorCut(111.4, 700, most - 1e-9, 15, 15, 20);
	expectSectorCut(111.4, 700, most, 15, 15, 20);
	expect(offset(sector(111.4, 700, most + 1e-6), by({ waist: 15, hem: 20, else: 15 }))).toBeNull();
});

test('Allowances of 0 leave the stitch line as it is', () => {
	for (const stitch of [sector(100, 700, 2), sector(3183, 4083, 0.05), polygon([0, 0], [100, 0], [70, 90])]) {
		const cut = offset(stitch, () => 0)!;
		expect(area(cut)).toBeCloseTo(area(stitch), 6);
		cut.edges.forEach(({ end, turn, centre, name }, i) => {
			const edge = stitch.edges[i]!;
			expect(distance(end, edge.end)).toBeLessThan(1e-9);
			expect(turn).toBeCloseTo(edge.turn, 12);
			expect([centre, name]).toEqual([edge.centre, edge.name]);
		});
	}
});

test('Equal allowances round a disc, a square and a triangle give what school geometry gives', () => {
	const disc: Outline = { start: [10, 0], edges: [arc('rim', [-10, 0], [0, 0], Math.PI), arc('rim', [10, 0], [0, 0], Math.PI)] };
	expect(area(offset(disc, () => 5)!)).toBeCloseTo(225 * Math.PI, 9);
	expect(area(offset(polygon([0, 0], [10, 0], [10, 10], [0, 10]), () => 3)!)).toBeCloseTo(256, 9);
	// A triangle moved out by d is a like triangle about the same incentre: sides grow as (ρ + d)/ρ. 3-4-5: ρ = 1.
	expect(area(offset(polygon([0, 0], [4, 0], [0, 3]), () => 2)!)).toBeCloseTo(6 * 9, 9);
});

test('Unequal neighbours meet at a corner that lies beside each by its own allowance', () => {
	const stitch = polygon([0, 0], [300, -40], [420, 260], [60, 310]);
	const allowances = [10, 25, 0, 40];
	const cut = offset(stitch, ({ name }) => allowances[Number(name.slice(5))]!)!;
	stretches(stitch).forEach((stretch, i) => {
		const [x, y] = tangent(stretch, 0);
		const beside = (p: Point): number => (p[0] - stretch.from[0]) * y - (p[1] - stretch.from[1]) * x;
		expect(beside(cut.edges[i]!.end)).toBeCloseTo(allowances[i]!, 9);
		expect(beside(i === 0 ? cut.start : cut.edges[i - 1]!.end)).toBeCloseTo(allowances[i]!, 9);
	});
});

test('An edge shorter than its allowance keeps its place where it sticks out, and leaves no cut line where it lies in a bay', () => {
	// A strip 3 mm wide with 15 mm all round.
	expect(area(offset(polygon([0, 0], [400, 0], [400, 3], [0, 3]), () => 15)!)).toBeCloseTo(430 * 33, 6);
	// A step of 3 mm: its riser stays 3 mm, because one of its corners goes in and the other out.
	const step = polygon([0, 0], [200, 0], [200, 100], [100, 100], [100, 103], [0, 103]);
	expect(lengthOf(offset(step, () => 15)!, 'side 3')).toBeCloseTo(3, 9);
	// A bay 20 mm wide has no floor left with 15 mm from either side; one of 40 has 10 mm.
	const bay = (wide: number) => polygon([0, 0], [200, 0], [200, 100], [100 + wide, 100], [100 + wide, 50], [100, 50], [100, 100], [0, 100]);
	expect(offset(bay(20), () => 15)).toBeNull();
	expect(lengthOf(offset(bay(40), () => 15)!, 'side 4')).toBeCloseTo(10, 9);
	// A bay with a slanted floor, whose short edge would run backwards.
	const slanted = polygon([0, 0], [200, 0], [200, 100], [110, 40], [105, 40], [0, 100]);
	expect(offset(slanted, () => 15)).toBeNull();
	expect(offset(slanted, () => 2)).not.toBeNull();
});

test('A concave curve tighter than its allowance would fold over itself, and has no cut line', () => {
	// A half round bay of radius 20 in the top of a square.
	const bitten = (radius: number): Outline => ({
		start: [0, 0],
		edges: [line('bottom', [200, 0]), line('right', [200, 100]), line('top', [100 + radius, 100]), arc('bay', [100 - radius, 100], [100, 100], -Math.PI), line('top left', [0, 100]), line('left', [0, 0])]
	});
	expect(offset(bitten(20), () => 20)).toBeNull();
	expect(offset(bitten(20), () => 25)).toBeNull();
	// With 15 mm the bay's radius is 5, cut off at 15 mm above the old edge: it never gets there.
	expect(offset(bitten(20), () => 15)).toBeNull();
	// With 10 mm the moved bay has radius 10 and touches the moved top at one place; with 9 it has room.
	expect(offset(bitten(20), () => 9)).not.toBeNull();
	// A wave of tight curves: y = 10 cos(x/6) is curved by 1/3.6 mm at its crests.
	const wave = (t: number): Point => [-6 * t, 10 * Math.cos(t)];
	const top = smoothRun('top', wave, (t) => [-6, -10 * Math.sin(t)], -20, 20);
	const stitch: Outline = { start: wave(-20), edges: [...top, line('left', [-120, -100]), line('bottom', [120, -100]), line('right', wave(-20))] };
	expect(crossesItself(stitch)).toBe(false);
	expect(offset(stitch, by({ top: 3, else: 10 }))).not.toBeNull();
	expect(offset(stitch, by({ top: 4, else: 10 }))).toBeNull();
	expect(offset(stitch, by({ top: 15, else: 10 }))).toBeNull();
});

test('Far parts of a piece that would reach into each other have no cut line', () => {
	// A horseshoe whose waist leaves a gap of 0.08 rad: strips of s turn on by arcsin(s/200) each, so s is at most 200·sin 0.04.
	const shoe = sector(200, 400, 2 * Math.PI - 0.08);
	const most = 200 * Math.sin(0.04);
	expect(offset(shoe, by({ waist: 0, hem: 10, else: most - 0.001 }))).not.toBeNull();
	expect(offset(shoe, by({ waist: 0, hem: 10, else: most + 0.001 }))).toBeNull();
	// Two prongs 30 mm apart.
	const prongs = polygon([0, 0], [100, 0], [100, 200], [65, 200], [65, 50], [35, 50], [35, 200], [0, 200]);
	expect(offset(prongs, () => 14.9)).not.toBeNull();
	expect(offset(prongs, () => 15.1)).toBeNull();
	// Hooks that reach towards each other past a wide bay.
	const hooks = polygon([0, 0], [200, 0], [200, 200], [110, 200], [110, 180], [170, 180], [170, 40], [30, 40], [30, 180], [90, 180], [90, 200], [0, 200]);
	expect(offset(hooks, () => 9.9)).not.toBeNull();
	expect(offset(hooks, () => 10.1)).toBeNull();
});

test('Neighbours in a run stay tangent neighbours, their corner exactly beside the old one', () => {
	const random = seeded(3);
	for (let i = 0; i < 60; i++) {
		const sweep = 2 * Math.PI * (0.05 + 0.4 * random());
		const r = (500 + 1500 * random()) / (2 * sweep);
		const [F, B] = [300 + 900 * random(), 300 + 900 * random()];
		const S = (F + B) / 2 + 100 * (random() - 0.5);
		const L = (t: number): number => (F + 2 * S + B) / 4 + ((F - B) / 2) * Math.cos(t) + ((F - 2 * S + B) / 4) * Math.cos(2 * t);
		const slope = (t: number): number => (-(F - B) / 2) * Math.sin(t) - ((F - 2 * S + B) / 2) * Math.sin(2 * t);
		const k = sweep / Math.PI;
		const at = (t: number): Point => polar([0, 0], r + L(t), k * t);
		const way = (t: number): Point => [
			slope(t) * Math.cos(k * t) - k * (r + L(t)) * Math.sin(k * t),
			slope(t) * Math.sin(k * t) + k * (r + L(t)) * Math.cos(k * t)
		];
		const hem = smoothRun('hem', at, way, 0, Math.PI);
		const stitch: Outline = {
			start: [r, 0],
			edges: [line('first', at(0)), ...hem, line('second', polar([0, 0], r, sweep)), arc('waist', [r, 0], [0, 0], -sweep)]
		};
		const allowance = 5 + 45 * random();
		const cut = offset(stitch, by({ hem: allowance, else: 15 }))!;
		expect(cut.edges.map(({ name }) => name)).toEqual(stitch.edges.map(({ name }) => name));
		const [old, moved] = [stretches(stitch), stretches(cut)];
		for (let j = 1; j < hem.length; j++) {
			const [x, y] = tangent(old[j]!, 1);
			const beside: Point = [old[j]!.edge.end[0] + y * allowance, old[j]!.edge.end[1] - x * allowance];
			// A line in the run stands for an arc that turns by 2·10⁻⁷ at most: 10⁻⁵ mm at 50 mm.
			expect(distance(moved[j]!.edge.end, beside)).toBeLessThan(2e-5);
			const [a, b] = [tangent(moved[j]!, 1), tangent(moved[j + 1]!, 0)];
			expect(Math.abs(a[0] * b[1] - a[1] * b[0])).toBeLessThan(1e-6);
		}
	}
});

/** The least distance from chords along one outline to chords along another. */
function gap(cut: Outline, stitch: Outline): number {
	const walls = stretches(stitch).flatMap(({ from, edge }) => {
		const points = chordPoints(from, edge).filter((_, i) => !edge.centre || i % 20 === 0);
		return points.slice(1).map((to, i) => [points[i]!, to] as const);
	});
	let least = Infinity;
	for (const stretch of stretches(cut)) {
		for (let i = 0; i < 25; i++) {
			const p = pointAlong(stretch, i / 25);
			for (const [a, b] of walls) {
				const [x, y] = [b[0] - a[0], b[1] - a[1]];
				const part = Math.max(0, Math.min(1, ((p[0] - a[0]) * x + (p[1] - a[1]) * y) / (x * x + y * y)));
				least = Math.min(least, Math.hypot(p[0] - a[0] - x * part, p[1] - a[1] - y * part));
			}
		}
	}
	return least;
}

test('Round any outline, a cut line that there is lies nowhere nearer than the allowance and nowhere crosses itself', () => {
	const random = seeded(77);
	let [cuts, refusals] = [0, 0];
	for (let i = 0; i < 400; i++) {
		const stitch = star(random, 0.5);
		if (crossesItself(stitch) || area(stitch) < 0) continue;
		const allowance = 1 + 39 * random();
		const cut = offset(stitch, () => allowance);
		if (!cut) {
			refusals++;
			continue;
		}
		cuts++;
		expect(crossesItself(cut)).toBe(false);
		// Chords along an arc of the stitch line lie beside it by at most a hundredth of a millimetre.
		expect(gap(cut, stitch)).toBeGreaterThan(allowance - 0.01);
		expect(area(cut)).toBeGreaterThan(area(stitch));
	}
	expect(cuts).toBeGreaterThan(100);
	expect(refusals).toBeGreaterThan(50);
});
