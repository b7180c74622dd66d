import { expect, test } from 'vitest';
import { crossesItself } from '../../../src/lib/drafting/geometry/crossing.ts';
import { smoothRun } from '../../../src/lib/drafting/geometry/curve.ts';
import { foldBackCorners } from '../../../src/lib/drafting/geometry/fold-back.ts';
import { area, lengthOf } from '../../../src/lib/drafting/geometry/measure.ts';
import { offset } from '../../../src/lib/drafting/geometry/offset.ts';
import type { Edge, Outline } from '../../../src/lib/drafting/geometry/outline.ts';
import { distance, polar, type Point } from '../../../src/lib/drafting/geometry/point.ts';
import { pointAlongRun, runOf } from '../../../src/lib/drafting/geometry/run.ts';
import { seeded } from '../bodies.ts';
import { arc, line, sector } from './shapes.ts';

const by = (hem: number, seam: number, waist: number) => ({ name }: Edge): number => (name === 'hem' ? hem : name === 'waist' ? waist : seam);

/** A gore that widens downwards (y), its hem at y = 0 and 400 wide, its waist 200 wide at y = 600. */
const gore: Outline = { start: [-200, 0], edges: [line('hem', [200, 0]), line('right', [100, 600]), line('waist', [-100, 600]), line('left', [-200, 0])] };

test('Below a straight fold the sides of a gore are the mirror image of those above it', () => {
	const cut = offset(gore, by(40, 15, 10))!;
	const folded = foldBackCorners(gore, cut, 'hem', 40)!;
	expect(folded.edges.map(({ name }) => name)).toEqual(['hem', 'right', 'right', 'waist', 'left', 'left']);
	// The cut side: x = 200 + 15·√(1 + 1/36) at the fold, a sixth narrower each mm up, and so also each mm down.
	const atFold = 200 + 15 * Math.sqrt(1 + 1 / 36);
	expect(folded.start).toEqual([expect.closeTo(-(atFold - 40 / 6), 9), expect.closeTo(-40, 9)]);
	expect(folded.edges[0]!.end).toEqual([expect.closeTo(atFold - 40 / 6, 9), expect.closeTo(-40, 9)]);
	expect(folded.edges[1]!.end).toEqual([expect.closeTo(atFold, 9), expect.closeTo(0, 9)]);
	// The mitre would be wider than what it is turned on to, by twice a sixth of 40 at either end.
	expect(lengthOf(cut, 'hem') - lengthOf(folded, 'hem')).toBeCloseTo(2 * 2 * (40 / 6), 9);
	expect(area(cut) - area(folded)).toBeCloseTo(2 * 40 * (40 / 6), 6);
	// The waist, and the sides above, are those of the mitred cut line.
	expect(folded.edges.slice(2, 4)).toEqual([expect.objectContaining({ end: cut.edges[1]!.end }), cut.edges[2]]);
});

test('It makes no difference where the outline begins', () => {
	const folded = foldBackCorners(gore, offset(gore, by(40, 15, 10))!, 'hem', 40)!;
	for (let shift = 1; shift < 4; shift++) {
		const stitch: Outline = { start: gore.edges[shift - 1]!.end, edges: [...gore.edges.slice(shift), ...gore.edges.slice(0, shift)] };
		const turned = foldBackCorners(stitch, offset(stitch, by(40, 15, 10))!, 'hem', 40)!;
		expect(area(turned)).toBeCloseTo(area(folded), 6);
		for (const name of ['hem', 'left', 'right', 'waist']) {
			const [a, b] = [runOf(turned, name), runOf(folded, name)];
			for (const part of [0, 0.3, 1]) expect(distance(pointAlongRun(a, part), pointAlongRun(b, part))).toBeLessThan(1e-9);
		}
	}
});

test('A sector’s turned hem ends where its seam allowance ends, but for 2sy²/R²', () => {
	const random = seeded(9);
	for (let i = 0; i < 500; i++) {
		const angle = 0.1 + 2 * random();
		const [r, length] = [60 + 10 ** (1 + 2.5 * random()), 300 + 700 * random()];
		const [s, t, R] = [20 * random(), 5 + 45 * random(), r + length];
		const stitch = sector(r, R, angle);
		const cut = offset(stitch, by(t, s, 10))!;
		const folded = foldBackCorners(stitch, cut, 'hem', t)!;
		expect(folded.edges.map(({ name }) => name)).toEqual(['first', 'first', 'hem', 'second', 'second', 'waist']);
		// The raw edge is the one carried through the allowance, on the circle R + t.
		expect(Math.hypot(...folded.edges[1]!.end)).toBeCloseTo(R + t, 6);
		expect(Math.hypot(...folded.edges[0]!.end)).toBeCloseTo(R, 6);
		const below = [folded.edges[0]!.end, folded.edges[1]!.end] as const;
		for (const part of [0.25, 0.5, 0.75, 1]) {
			const p: Point = [below[0][0] + (below[1][0] - below[0][0]) * part, below[0][1] + (below[1][1] - below[0][1]) * part];
			// Turned up, the cloth at R + y lies on that at R − y, at the same angle from the centre, where the cut side is
			// arcsin(s/(R − y)) outside the seam (circle geometry).
			const y = Math.hypot(...p) - R;
			const outside = -angle / 2 - Math.atan2(p[1], p[0]);
			const off = (R + y) * (outside - Math.asin(s / (R - y)));
			// The estimate is the first term of a series; half as much again bounds the rest here.
			expect(Math.abs(off)).toBeLessThan((1.5 * 2 * s * y * y) / (R * R) + 1e-6);
		}
		expect(crossesItself(folded)).toBe(false);
	}
});

test('The error named for a half circle of 70 cm and 60 long is 0.07 mm', () => {
	const stitch = sector(222.8, 822.8, Math.PI);
	const folded = foldBackCorners(stitch, offset(stitch, by(40, 15, 15))!, 'hem', 40)!;
	const p = folded.edges[1]!.end;
	const off = 862.8 * (-Math.PI / 2 - Math.atan2(p[1], p[0]) - Math.asin(15 / 782.8));
	expect(Math.abs(off)).toBeCloseTo(0.07, 2);
	// A mitre would end 1.5 mm short of the seam allowance.
	const mitre = offset(stitch, by(40, 15, 15))!.edges[0]!.end;
	expect(862.8 * (-Math.PI / 2 - Math.atan2(mitre[1], mitre[0]) - Math.asin(15 / 782.8))).toBeCloseTo(-1.53, 1);
});

test('Curved sides are mirrored as arcs, and a hem in several edges keeps those between its ends', () => {
	// A barrel: sides bulge outwards, arcs of radius 500 round (∓300, 300).
	const half = Math.asin(0.6);
	const barrel: Outline = {
		start: [-100, 0],
		edges: [line('hem', [0, 0]), line('hem', [100, 0]), arc('right', [100, 600], [-300, 300], 2 * half), line('waist', [-100, 600]), arc('left', [-100, 0], [300, 300], 2 * half)]
	};
	const folded = foldBackCorners(barrel, offset(barrel, by(40, 15, 10))!, 'hem', 40)!;
	const right = folded.edges[2]!;
	expect(right.name).toBe('right');
	expect(right.centre).toEqual([expect.closeTo(-300, 9), expect.closeTo(-300, 9)]);
	// Radius 515; on the raw edge, y = −40, as far out as at y = +40 above.
	expect(folded.edges[1]!.end).toEqual([expect.closeTo(-300 + Math.sqrt(515 ** 2 - 260 ** 2), 9), expect.closeTo(-40, 9)]);
	expect(folded.edges[0]!.end).toEqual([expect.closeTo(0, 9), expect.closeTo(-40, 9)]);
	expect(right.end).toEqual([expect.closeTo(-300 + Math.sqrt(515 ** 2 - 300 ** 2), 9), expect.closeTo(0, 9)]);
	expect(distance(right.end, right.centre!)).toBeCloseTo(distance(folded.edges[1]!.end, right.centre!), 9);
});

test('A hem of unequal lengths is folded back too', () => {
	const at = (t: number): Point => polar([0, 0], 822 + 60 * Math.cos(t), t / 2);
	const way = (t: number): Point => {
		const [R, slope] = [822 + 60 * Math.cos(t), -60 * Math.sin(t)];
		return [slope * Math.cos(t / 2) - (R / 2) * Math.sin(t / 2), slope * Math.sin(t / 2) + (R / 2) * Math.cos(t / 2)];
	};
	// From 0.5 to 2: at neither end does the hem meet its seam squarely.
	const hem = smoothRun('hem', at, way, 0.5, 2);
	const stitch: Outline = {
		start: polar([0, 0], 222, 0.25),
		edges: [line('first', at(0.5)), ...hem, line('second', polar([0, 0], 222, 1)), arc('waist', polar([0, 0], 222, 0.25), [0, 0], -0.75)]
	};
	const cut = offset(stitch, by(30, 15, 15))!;
	const folded = foldBackCorners(stitch, cut, 'hem', 30)!;
	expect(folded.edges.length).toBe(cut.edges.length + 2);
	expect(folded.edges.filter(({ name }) => name === 'hem').slice(1, -1)).toEqual(cut.edges.filter(({ name }) => name === 'hem').slice(1, -1));
	expect(crossesItself(folded)).toBe(false);
	// Mirrored in the hem's direction at the fold, each side leaves it at the angle at which it came.
	const fold = folded.edges[0]!.end;
	const [x, y] = [fold[0] - hem[0]!.centre![0], fold[1] - hem[0]!.centre![1]];
	const squareOff = ([a, b]: Point, [c, d]: Point): number => Math.abs((c - a) * x + (d - b) * y) / Math.hypot(x, y) / Math.hypot(c - a, d - b);
	expect(squareOff(cut.start, fold)).toBeCloseTo(squareOff(fold, folded.edges[1]!.end), 9);
	expect(squareOff(fold, folded.edges[1]!.end)).toBeLessThan(0.9999);
});

test('Without a hem allowance nothing is folded, and where a hem is deeper than the side is long there is no room', () => {
	const plain = offset(gore, by(0, 15, 10))!;
	expect(foldBackCorners(gore, plain, 'hem', 0)).toBe(plain);
	expect(foldBackCorners(gore, offset(gore, by(590, 15, 10))!, 'hem', 590)).not.toBeNull();
	expect(foldBackCorners(gore, offset(gore, by(620, 15, 10))!, 'hem', 620)).toBeNull();
	// A hem arched with a radius of 40 has no raw edge left at 40 deep.
	const arched: Outline = {
		start: [-30, 0],
		edges: [arc('hem', [30, 0], [0, -Math.sqrt(700)], -2 * Math.asin(0.75)), line('right', [30, 300]), line('waist', [-30, 300]), line('left', [-30, 0])]
	};
	expect(foldBackCorners(arched, offset(arched, by(0, 2, 5))!, 'hem', 40)).toBeNull();
	expect(() => foldBackCorners(gore, plain, 'edge', 5)).toThrow('no hem edge with sides among hem, right, waist, left');
});
