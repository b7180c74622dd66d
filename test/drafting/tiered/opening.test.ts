import { expect, test } from 'vitest';
import { openingThroughRings, type Ring } from '../../../src/lib/drafting/ring-opening.ts';
import { seeded } from '../bodies.ts';

/**
 * The shortest loop through a slit that ends `z` below the waist seam, found on a grid of levels and of places round the
 * skirt (Dijkstra): within a ring a step is straight on the flat cloth, along a seam it costs the seam's own girth. It can
 * only be longer than the true one, and by little.
 */
function gridLoop(seam: number, rings: readonly Ring[], z: number): number {
	const spokes = 121;
	// Levels: every join, and the slit's end; ways bend nowhere else.
	const tops = rings.map((_, i) => rings.slice(0, i).reduce((sum, { depth }) => sum + depth, 0));
	const levels = [...tops.filter((top) => top < z - 1e-9), z];
	const best = new Float64Array(levels.length * spokes).fill(Infinity);
	const done = new Uint8Array(best.length);
	const [start, goal] = [(levels.length - 1) * spokes, levels.length * spokes - 1];
	best[start] = 0;
	for (;;) {
		let [next, least] = [-1, Infinity];
		for (let k = 0; k < best.length; k++) if (!done[k] && best[k]! < least) [next, least] = [k, best[k]!];
		if (next === goal) return least;
		done[next] = 1;
		const [i, j] = [Math.floor(next / spokes), next % spokes];
		for (let ni = Math.max(0, i - 1); ni <= Math.min(levels.length - 1, i + 1); ni++) {
			for (let nj = 0; nj < spokes; nj++) {
				const share = Math.abs(nj - j) / (spokes - 1);
				// Between two levels lies the ring of the upper one; along a level the cheaper: the seam above it.
				const girth = ni === i ? (i === 0 ? seam : levels[i] === z ? rings[tops.findLastIndex((top) => top < z - 1e-9)]!.girth : rings[i - 1]!.girth) : rings[Math.min(i, ni)]!.girth;
				const step = Math.hypot(share * girth, levels[ni]! - levels[i]!);
				const k = ni * spokes + nj;
				if (least + step < best[k]!) best[k] = least + step;
			}
		}
	}
}

test('One gathered ring by hand', () => {
	// G 720, W 1080: √(1 − (2/3)²) = 0.745356; (1000 − 720)/2/0.745356 = 187.83.
	expect(openingThroughRings(720, [{ girth: 1080, depth: 500 }], 1000)).toBeCloseTo(187.83, 2);
	expect(openingThroughRings(720, [{ girth: 1080, depth: 500 }], 720)).toBe(0);
	// No ring reaches 1100.
	expect(openingThroughRings(720, [{ girth: 1080, depth: 500 }], 1100)).toBeNull();
	// A ring without gathers gives nothing: the slit has to pass it, and then climbs in the next as from its foot.
	// √(1 − (720/1080)²) as above, so 100 + 187.83.
	expect(openingThroughRings(720, [{ girth: 720, depth: 100 }, { girth: 1080, depth: 500 }], 1000)).toBeCloseTo(287.83, 2);
});

test('A search over a grid of cloth agrees, through one to four rings', () => {
	const random = seeded(31);
	let checked = 0;
	for (let i = 0; i < 40; i++) {
		const seam = 600 + 300 * random();
		let girth = seam;
		const rings = Array.from({ length: 1 + Math.floor(4 * random()) }, (_, k) => ({ girth: (girth *= (k === 0 ? 1.02 : 1.2) + 0.5 * random()), depth: 60 + 200 * random() }));
		const hip = seam * (1.05 + 0.4 * random());
		const z = openingThroughRings(seam, rings, hip);
		if (z === null || z > rings.reduce((sum, { depth }) => sum + depth, 0)) continue;
		const found = gridLoop(seam, rings, z);
		expect(found).toBeGreaterThan(hip - 0.01);
		// The grid's places are 1/120 of the girth apart. Where the slit has to pass a narrow ring, its loop may be longer.
		const shorter = gridLoop(seam, rings, z * 0.98);
		expect(shorter).toBeLessThan(hip * 1.002);
		checked++;
	}
	expect(checked).toBeGreaterThan(20);
});
