import { expect, test } from 'vitest';
import { smoothRun } from '../../../src/lib/drafting/geometry/curve.ts';
import { lengthOf, pointAlong, stretches, tangent, type Stretch } from '../../../src/lib/drafting/geometry/measure.ts';
import type { Edge } from '../../../src/lib/drafting/geometry/outline.ts';
import { distance, polar, type Point } from '../../../src/lib/drafting/geometry/point.ts';
import { seeded } from '../bodies.ts';

type Curve = (t: number) => Point;

/** ∫|p′| dt in 400 steps of the five-point Gauss–Legendre rule (its places and weights: any numerical handbook). */
function lengthByGauss(speed: Curve, from: number, to: number): number {
	const [inner, outer] = [Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3];
	const [heavy, light] = [(322 + 13 * Math.sqrt(70)) / 900, (322 - 13 * Math.sqrt(70)) / 900];
	const rule = [[0, 128 / 225], [inner, heavy], [-inner, heavy], [outer, light], [-outer, light]] as const;
	const steps = 400;
	const half = (to - from) / steps / 2;
	let sum = 0;
	for (let i = 0; i < steps; i++) for (const [at, weight] of rule) sum += weight * half * Math.hypot(...speed(from + half * (2 * i + 1 + at)));
	return Math.abs(sum);
}

const stretchesOf = (start: Point, edges: readonly Edge[]): readonly Stretch[] => stretches({ start, edges });

/** How far apart the run and the curve lie at most, seen from 40 places on each edge: to the chord round the nearest of 20,000 places on the curve. */
function apart(start: Point, edges: readonly Edge[], curve: Curve, from: number, to: number): number {
	const dense = Array.from({ length: 20_001 }, (_, i) => from + ((to - from) * i) / 20_000);
	const places = dense.map(curve);
	let worst = 0;
	let near = 0;
	for (const stretch of stretchesOf(start, edges)) {
		for (let i = 0; i <= 40; i++) {
			const point = pointAlong(stretch, i / 40);
			// Both run the same way, so the nearest place never lies behind.
			while (near < 20_000 && distance(places[near + 1]!, point) <= distance(places[near]!, point)) near++;
			const [a, b] = [places[Math.max(0, near - 1)]!, places[Math.min(20_000, near + 1)]!];
			const chord = distance(a, b);
			// Beside a chord so short that the curve leaves it by less than a thousandth of the tolerance.
			worst = Math.max(worst, Math.abs((b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0])) / chord);
		}
	}
	expect(near).toBe(20_000);
	return worst;
}

/** The worst corner between neighbours, radians. */
function corner(start: Point, edges: readonly Edge[]): number {
	const all = stretchesOf(start, edges);
	return Math.max(0, ...all.slice(1).map((next, i) => {
		const [a, b] = [tangent(all[i]!, 1), tangent(next, 0)];
		return Math.abs(Math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]));
	}));
}

test('A circle becomes one arc, whole or in part, either way round', () => {
	const random = seeded(5);
	for (let i = 0; i < 200; i++) {
		const centre: Point = [1000 * random() - 500, 1000 * random() - 500];
		const radius = 10 ** (1 + 3 * random());
		const [from, turn] = [6 * random(), (random() < 0.5 ? -1 : 1) * (0.05 + 6 * random())];
		const edges = smoothRun('rim', (t) => polar(centre, radius, t), (t) => [-Math.sin(t), Math.cos(t)], from, from + turn);
		expect(edges.length).toBe(1);
		expect(edges[0]!.turn).toBeCloseTo(turn, 9);
		expect(distance(edges[0]!.centre!, centre)).toBeLessThan(1e-6);
		expect(edges[0]!.end).toEqual(polar(centre, radius, from + turn));
	}
	const whole = smoothRun('rim', (t) => polar([3, 4], 100, t), (t) => [-Math.sin(t), Math.cos(t)], 0, 2 * Math.PI);
	expect(whole).toEqual([{ name: 'rim', end: polar([3, 4], 100, 2 * Math.PI), centre: [expect.closeTo(3, 9), expect.closeTo(4, 9)], turn: expect.closeTo(2 * Math.PI, 9) }]);
});

test('A straight stretch becomes a line', () => {
	expect(smoothRun('side', (t) => [3 * t, 4 * t], () => [3, 4], 0, 200)).toEqual([{ name: 'side', end: [600, 800], centre: null, turn: 0 }]);
	expect(smoothRun('side', (t) => [3 * t, 4 * t], () => [3, 4], 200, 0)).toEqual([{ name: 'side', end: [0, 0], centre: null, turn: 0 }]);
	// A line that runs on into a circle of radius 100.
	const bent: Curve = (t) => (t < 100 ? [t, 0] : [100 + 100 * Math.sin((t - 100) / 100), 100 - 100 * Math.cos((t - 100) / 100)]);
	const edges = smoothRun('side', bent, (t) => (t < 100 ? [1, 0] : [Math.cos((t - 100) / 100), Math.sin((t - 100) / 100)]), 0, 200);
	expect(edges.map(({ centre }) => centre && [Math.round(centre[0]), Math.round(centre[1])])).toEqual([null, [100, 100]]);
});

test('An ellipse is followed within the tolerance, and is as long as its integral', () => {
	// Half axes from nearly round to five to one.
	for (const [a, b] of [[500, 480], [400, 300], [1000, 200], [80, 30]] as const) {
		const at: Curve = (t) => [a * Math.cos(t), b * Math.sin(t)];
		const speed: Curve = (t) => [-a * Math.sin(t), b * Math.cos(t)];
		for (const [from, to] of [[0, 2 * Math.PI], [0.3, 1.9], [4, 1]] as const) {
			for (const within of [0.5, 0.005]) {
				const edges = smoothRun('rim', at, speed, from, to, within);
				expect(edges.length).toBeLessThanOrEqual(200);
				expect(apart(at(from), edges, at, from, to)).toBeLessThanOrEqual(within);
				expect(corner(at(from), edges)).toBeLessThan(1e-6);
				expect(edges.at(-1)!.end).toEqual(at(to));
			}
			const edges = smoothRun('rim', at, speed, from, to);
			// Lying within 0.005 mm beside a curve, and crossing it at every joint, the run is off by far less than 0.005 mm in all.
			expect(Math.abs(lengthOf({ start: at(from), edges }, 'rim') - lengthByGauss(speed, from, to))).toBeLessThan(0.005);
		}
	}
});

/** The length below the waist seam from centre front (t = 0) round to centre back (π): drafting with unequal lengths. */
const hang = (F: number, S: number, B: number) => ({
	at: (t: number) => (F + 2 * S + B) / 4 + ((F - B) / 2) * Math.cos(t) + ((F - 2 * S + B) / 4) * Math.cos(2 * t),
	slope: (t: number) => (-(F - B) / 2) * Math.sin(t) - ((F - 2 * S + B) / 2) * Math.sin(2 * t)
});

/** The hem of a skirt with those lengths, waist radius r and sweep θ, at the polar angle tθ/2π from centre front. */
function hem(r: number, sweep: number, F: number, S: number, B: number): { at: Curve; speed: Curve } {
	const { at, slope } = hang(F, S, B);
	const k = sweep / (2 * Math.PI);
	return {
		at: (t) => polar([0, 0], r + at(t), k * t),
		speed: (t) => [
			slope(t) * Math.cos(k * t) - k * (r + at(t)) * Math.sin(k * t),
			slope(t) * Math.sin(k * t) + k * (r + at(t)) * Math.cos(k * t)
		]
	};
}

test('A hem with unequal lengths meets them at front, side and back, and its run keeps to it', () => {
	// 90, 100 and 70 cm: L(t) = 90 + 10 cos t − 10 cos 2t, which peaks where cos t = ¼, at 90 + 2.5 + 8.75 = 101.25 (calculus by hand).
	const { at } = hang(900, 1000, 700);
	expect([at(0), at(Math.PI / 2), at(Math.PI)]).toEqual([expect.closeTo(900, 9), expect.closeTo(1000, 9), expect.closeTo(700, 9)]);
	for (const [share, G] of [[0.1, 700], [0.5, 700], [1, 700], [2, 600], [1, 2000]] as const) {
		const sweep = 2 * Math.PI * share;
		const curve = hem(G / sweep, sweep, 900, 1000, 700);
		const edges = smoothRun('hem', curve.at, curve.speed, -Math.PI, Math.PI);
		const start = curve.at(-Math.PI);
		expect(apart(start, edges, curve.at, -Math.PI, Math.PI)).toBeLessThanOrEqual(0.005);
		expect(corner(start, edges)).toBeLessThan(1e-6);
		expect(edges.length).toBeLessThanOrEqual(200);
		expect(Math.abs(lengthOf({ start, edges }, 'hem') - lengthByGauss(curve.speed, -Math.PI, Math.PI))).toBeLessThan(0.005);
		// The longest length below the waist is that of the overshoot, 101.25 cm.
		const reaches = stretchesOf(start, edges).flatMap((stretch) => Array.from({ length: 101 }, (_, i) => Math.hypot(...pointAlong(stretch, i / 100))));
		expect(Math.max(...reaches) - G / sweep).toBeCloseTo(1012.5, 2);
	}
});

test('Equal lengths give the one arc of a level hem', () => {
	const curve = hem(111.41, 2 * Math.PI, 600, 600, 600);
	expect(smoothRun('hem', curve.at, curve.speed, -1, 1)).toEqual([
		{ name: 'hem', end: curve.at(1), centre: [expect.closeTo(0, 9), expect.closeTo(0, 9)], turn: expect.closeTo(2, 9) }
	]);
});

test('Random hems, straight sweeps to two circles, stay within the tolerance in at most 200 edges', () => {
	const random = seeded(12);
	for (let i = 0; i < 60; i++) {
		const sweep = 2 * Math.PI * (0.1 + 1.9 * random());
		const [r, F, S, B] = [(500 + 1500 * random()) / sweep, 300 + 900 * random(), 300 + 900 * random(), 300 + 900 * random()];
		const curve = hem(r, sweep, F, S, B);
		const [from, to] = [-Math.PI * random(), Math.PI * random()];
		const edges = smoothRun('hem', curve.at, curve.speed, from, to);
		expect(edges.length).toBeLessThanOrEqual(200);
		expect(apart(curve.at(from), edges, curve.at, from, to)).toBeLessThanOrEqual(0.005);
		expect(corner(curve.at(from), edges)).toBeLessThan(1e-6);
		expect(edges).toEqual(smoothRun('hem', curve.at, curve.speed, from, to));
	}
});

test('A hem that 200 edges cannot follow so closely is followed as closely as they can', () => {
	const curve = hem(700 / Math.PI, Math.PI, 1690, 553, 2490);
	const edges = smoothRun('hem', curve.at, curve.speed, -Math.PI, Math.PI);
	expect(edges.length).toBeGreaterThan(190);
	expect(edges.length).toBeLessThanOrEqual(200);
	expect(corner(curve.at(-Math.PI), edges)).toBeLessThan(1e-6);
	expect(apart(curve.at(-Math.PI), edges, curve.at, -Math.PI, Math.PI)).toBeLessThan(0.03);
	expect(Math.abs(lengthOf({ start: curve.at(-Math.PI), edges }, 'hem') - lengthByGauss(curve.speed, -Math.PI, Math.PI))).toBeLessThan(0.005);
});

test('A curve that is not smooth is found out, and a single corner is rounded by a hundredth of a millimetre', () => {
	const saw: Curve = (t) => [t, Math.abs(((t + 0.3) % 2) - 1) * 400];
	expect(() => smoothRun('side', saw, (t) => [1, Math.sign(((t + 0.3) % 2) - 1) * 400], 0, 400)).toThrow('100 stretches of the curve side still lie');
	const bent: Curve = (t) => [t, Math.abs(t - 1)];
	const edges = smoothRun('side', bent, (t) => [1, Math.sign(t - 1)], 0, 3);
	expect(apart([0, 1], edges, bent, 0, 3)).toBeLessThan(0.01);
	expect(corner([0, 1], edges)).toBeLessThan(1e-6);
});
