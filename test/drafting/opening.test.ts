import { expect, test } from 'vitest';
import { openingBelow, shopZips, zipFor } from '../../src/lib/drafting/opening.ts';
import { seeded } from './bodies.ts';

/** The length of the shortest loop past a slit that ends z below the seam, as the design states it. */
function loop(z: number, r: number, theta: number): number {
	const q = r + z;
	const beta = Math.acos(Math.min(1, r / q));
	return beta <= theta / 2 ? 2 * Math.sqrt(q * q - r * r) + r * (theta - 2 * beta) : 2 * q * Math.sin(theta / 2);
}

/**
 * A taut string found by search: on a grid of the cloth in polar steps, the shortest way from one edge of the slit's end
 * to the other that never leaves the cloth (Dijkstra). It can only be longer than the true one, and by little.
 */
function gridLoop(z: number, r: number, theta: number): number {
	const [rings, spokes, reach] = [30, 96, 30];
	const radius = (i: number) => r + (z * i) / (rings - 1);
	const between = theta / (spokes - 1);
	const distances = new Float64Array(rings * spokes).fill(Infinity);
	const done = new Uint8Array(rings * spokes);
	const [start, goal] = [(rings - 1) * spokes, rings * spokes - 1];
	distances[start] = 0;
	for (;;) {
		let [next, least] = [-1, Infinity];
		for (let k = 0; k < distances.length; k++) if (!done[k] && distances[k]! < least) [next, least] = [k, distances[k]!];
		if (next === goal) return distances[goal]!;
		done[next] = 1;
		const [i, j] = [Math.floor(next / spokes), next % spokes];
		for (let ni = 0; ni < rings; ni++) {
			for (let nj = Math.max(0, j - reach); nj <= Math.min(spokes - 1, j + reach); nj++) {
				const step = stepOnCloth(radius(i), radius(ni), between * Math.abs(nj - j), r);
				const k = ni * spokes + nj;
				if (distances[next]! + step < distances[k]!) distances[k] = distances[next]! + step;
			}
		}
	}
}

/** Straight, where the straight way stays on the cloth; along the waist's own curve; else not at all. */
function stepOnCloth(from: number, to: number, turn: number, r: number): number {
	if (turn > Math.PI) return Infinity;
	const straight = Math.sqrt(from * from + to * to - 2 * from * to * Math.cos(turn));
	const passesNearest = from * Math.cos(turn) < to && to * Math.cos(turn) < from;
	if (!passesNearest || straight < 1e-12 || (from * to * Math.sin(turn)) / straight >= r) return straight;
	return from === r && to === r ? r * turn : Infinity;
}

test('The opening found is the least: the loop there is exactly the hip, and a hair above it is shorter', () => {
	const random = seeded(11);
	for (let i = 0; i < 2000; i++) {
		const [seam, theta] = [400 + 1200 * random(), 0.6 + 12 * random()];
		const hip = seam * (1 + 0.8 * random());
		const z = openingBelow(seam, theta, hip);
		const r = seam / theta;
		if (Math.abs(loop(z, r, theta) - hip) > 1e-6) expect(loop(z, r, theta)).toBe(hip);
		expect(loop(z * 0.999, r, theta)).toBeLessThan(hip);
	}
});

test('The same by bisection on the stated loop, over shallow and deep flares', () => {
	const random = seeded(12);
	for (let i = 0; i < 500; i++) {
		const [seam, theta] = [400 + 1200 * random(), 0.6 + 12 * random()];
		const hip = seam * (1 + 0.8 * random());
		let [low, high] = [0, 10_000];
		for (let k = 0; k < 80; k++) {
			const middle = (low + high) / 2;
			if (loop(middle, seam / theta, theta) >= hip) high = middle;
			else low = middle;
		}
		if (Math.abs(openingBelow(seam, theta, hip) - high) > 1e-6) expect(openingBelow(seam, theta, hip)).toBe(high);
	}
});

test.each([[1, 182.2], [0.75, 191.8], [0.5, 208.2], [0.25, 247.3]])('A search over a grid of cloth agrees on a share of %s', (share, z) => {
	const theta = 2 * Math.PI * share;
	const found = gridLoop(z, 700 / theta, theta);
	expect(found).toBeGreaterThan(979.9);
	expect(found).toBeLessThan(980 * 1.005);
});

test('No opening is needed where the hip passes through the waist seam, and the shortest zip is bought', () => {
	expect(openingBelow(1000, Math.PI, 1000)).toBe(0);
	expect(openingBelow(1000, Math.PI, 900)).toBe(0);
	expect(zipFor(0, 'cm')).toEqual({ length: 100, inShops: true });
	expect(zipFor(0, 'in')).toEqual({ length: 4 * 25.4, inShops: true });
});

test('The zip is the least shop length that is not under the opening', () => {
	expect(zipFor(182.2, 'cm').length).toBe(200);
	expect(zipFor(200, 'cm').length).toBe(200);
	expect(zipFor(200.1, 'cm').length).toBe(220);
	// 182.2 mm is 7.17 in.
	expect(zipFor(182.2, 'in').length).toBeCloseTo(8 * 25.4, 9);
	for (const series of ['cm', 'in'] as const) for (const length of shopZips[series]) expect(zipFor(length, series)).toEqual({ length, inShops: true });
});

test('Beyond the longest zip in the shops it is cut from a roll, to the next whole centimetre or inch', () => {
	expect(zipFor(601, 'cm')).toEqual({ length: 610, inShops: false });
	expect(zipFor(22.2 * 25.4, 'in').length).toBeCloseTo(23 * 25.4, 9);
});
