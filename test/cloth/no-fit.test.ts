// No-fit regions against a second opinion: do the pieces overlap, by another library's intersection?
import clipping from 'polygon-clipping';
import { expect, test } from 'vitest';
import { convolve } from '../../src/lib/cloth/convolution.ts';
import { noFit } from '../../src/lib/cloth/no-fit.ts';
import { contourArea, polygonOf, type Contour, type Polygon } from '../../src/lib/cloth/polygon.ts';
import { depth, inside, opposite, quarterTurned, regionOf } from '../../src/lib/cloth/region.ts';
import { outlineOf, polygonOutline, turned, type Shape } from '../../src/lib/cloth/shape.ts';
import { area } from '../../src/lib/drafting/geometry/measure.ts';
import { seeded } from './cases.ts';

const sectorOf = (inner: number, outer: number, degrees: number, edgeOnGrain: boolean): Shape =>
	({ kind: 'sector', inner, outer, angle: (degrees * Math.PI) / 180, strip: 15, edgeOnGrain });

/** Sectors of every kind, bands, gores, and a bent strip that others fit into. */
function anyShape(random: () => number): Shape {
	const kind = random();
	if (kind < 0.55) return sectorOf(60 + 300 * random(), 400 + 500 * random(), 20 + 200 * random(), random() < 0.5);
	if (kind < 0.7) return { kind: 'rectangle', length: 100 + 700 * random(), width: 40 + 200 * random() };
	if (kind < 0.85) return { kind: 'gore', top: 50 + 100 * random(), bottom: 150 + 200 * random(), length: 300 + 400 * random() };
	return { kind: 'cut', outline: polygonOutline([[0, 0], [500, 0], [500, 400], [420, 400], [420, 80], [80, 80], [80, 300 + 100 * random()], [0, 400]]) };
}

const ring = (contour: Contour, dx: number, dy: number): [number, number][] =>
	Array.from({ length: contour.length / 2 }, (_, i) => [contour[2 * i]! / 1000 + dx, contour[2 * i + 1]! / 1000 + dy]);
const sharedArea = (a: Contour, b: Contour, dx: number, dy: number): number => clipping.intersection([ring(a, 0, 0)], [ring(b, dx, dy)])
	.flatMap((rings) => rings.map((points) => Math.abs(contourArea(Float64Array.from(points.flat()))))).reduce((total, one) => total + one, 0);

test('An offset is forbidden exactly where the two pieces share cloth: 150 pairs, 40 offsets each', () => {
	const random = seeded(5);
	let [forbidden, asked] = [0, 0];
	for (let pair = 0; pair < 150; pair++) {
		const turn = [0, Math.PI / 2, Math.PI, 2 * Math.PI * random()][Math.floor(random() * 4)]!;
		const [first, second] = [anyShape(random), anyShape(random)];
		const a = polygonOf(outlineOf(first), 'outer', 1);
		const b = polygonOf(turned(outlineOf(second), turn), 'outer', 1);
		const region = regionOf(noFit([a], [b]));
		for (let i = 0; i < 40; i++) {
			const x = region.x0 + (region.x1 - region.x0) * (random() * 1.1 - 0.05);
			const y = region.y0 + (region.y1 - region.y0) * (random() * 1.1 - 0.05);
			const shared = sharedArea(a, b, x, y);
			const deep = depth(region, x, y);
			// A hundredth of a millimetre either way is rounding to micrometres.
			if (deep > 0.01) expect(shared, `${JSON.stringify([first, second, turn, x, y])}`).toBeGreaterThan(0);
			if (shared > 100) expect(deep, `${JSON.stringify([first, second, turn, x, y])}`).toBeGreaterThan(0);
			forbidden += deep > 0 ? 1 : 0;
			asked++;
		}
	}
	expect(forbidden / asked).toBeGreaterThan(0.3);
	expect(forbidden / asked).toBeLessThan(0.9);
});

test('Two convex pieces forbid what school geometry says: of two rectangles, one as long and as wide as both together', () => {
	const a = polygonOf(outlineOf({ kind: 'rectangle', length: 300, width: 80 }), 'outer', 1);
	const b = polygonOf(outlineOf({ kind: 'rectangle', length: 120, width: 50 }), 'outer', 1);
	const { x0, y0, x1, y1, ax } = regionOf(noFit([a], [b]));
	expect([x0, y0, x1, y1, ax.length]).toEqual([-120, -50, 300, 80, 4]);
});

test('The convolution winds once round a point well inside, whatever the corners', () => {
	const [u, disc] = [polygonOf(outlineOf({ kind: 'rectangle', length: 10, width: 10 }), 'inner', 1), polygonOf(outlineOf(sectorOf(0.001, 100, 90, true)), 'inner', 1)];
	const total = convolve([u], [disc]).reduce((sum, run) => sum + contourArea(run), 0);
	// Of convex pieces: both areas and the mixed one. A square of side s beside a quarter disc: from the union itself.
	const union: Polygon = noFit([u], [disc.map((v) => -v)]);
	expect(union.reduce((sum, run) => sum + contourArea(run), 0) / total).toBeCloseTo(1, 2);
});

test('A region turned or taken the other way round is that of the pieces so', () => {
	const random = seeded(9);
	const [a, b] = [outlineOf(sectorOf(120, 750, 90, true)), outlineOf(sectorOf(60, 300, 150, false))];
	const region = regionOf(noFit([polygonOf(a, 'outer', 1)], [polygonOf(b, 'outer', 1)]));
	const back = regionOf(noFit([polygonOf(b, 'outer', 1)], [polygonOf(a, 'outer', 1)]));
	for (let i = 0; i < 400; i++) {
		const [x, y] = [region.x0 + (region.x1 - region.x0) * random(), region.y0 + (region.y1 - region.y0) * random()];
		expect(inside(opposite(region), -x, -y)).toBe(inside(region, x, y));
		expect(inside(quarterTurned(region, 1), -y, x)).toBe(inside(region, x, y));
		if (depth(region, x, y) > 0.01) expect(inside(back, -x, -y)).toBe(true);
	}
});

test('Of a true outline the inner polygon is no larger and the outer no smaller, and both are close', () => {
	const random = seeded(3);
	for (let i = 0; i < 200; i++) {
		const outline = outlineOf(anyShape(random));
		const [inner, outer] = [polygonOf(outline, 'inner', 0.05), polygonOf(outline, 'outer', 0.05)].map((contour) => contourArea(contour) / 1e6) as [number, number];
		const whole = area(outline);
		// Corners are rounded to micrometres: over edges of a metre that is some mm².
		expect(inner).toBeLessThan(whole + 4);
		expect(outer).toBeGreaterThan(whole - 4);
		expect(outer - inner).toBeLessThan(0.0016 * whole + 10);
	}
});
