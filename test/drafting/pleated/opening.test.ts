import { expect, test } from 'vitest';
import { openingStitched } from '../../../src/lib/drafting/pleated/opening.ts';
import { seeded } from '../bodies.ts';

/** The shortest way on a cone between two points of radius q that are `turn` apart and must stay outside radius r. */
function onCone(q: number, r: number, turn: number): number {
	const angle = Math.acos(Math.min(1, r / q));
	return angle <= turn / 2 ? 2 * Math.sqrt(q * q - r * r) + r * (turn - 2 * angle) : 2 * q * Math.sin(turn / 2);
}

/** The shortest loop through a slit that ends y below the hip: up to any place of the hip line, over the cone, and back (searched in small steps). */
function loop(seam: number, hip: number, depth: number, flat: number, y: number): number {
	const sweep = (hip - seam) / depth;
	let least = Infinity;
	for (let k = 0; k <= 4000; k++) {
		const aside = k / 8000;
		least = Math.min(least, 2 * Math.hypot(y, aside * flat) + onCone(hip / sweep, seam / sweep, sweep * (1 - 2 * aside)));
	}
	return least;
}

test('The opening is the least that lets the hip through, says a search', () => {
	const random = seeded(51);
	let over = 0;
	for (let i = 0; i < 300; i++) {
		const [seam, depth] = [550 + 600 * random(), 150 + 100 * random()];
		const hip = seam * (1.02 + 0.5 * random());
		const flat = hip * (1.05 + 2 * random());
		const opening = openingStitched(seam, hip, depth, flat);
		expect(opening).toBeGreaterThanOrEqual(depth);
		expect(loop(seam, hip, depth, flat, opening - depth)).toBeGreaterThan(hip - 1e-3);
		let [low, high] = [0, opening - depth];
		for (let k = 0; k < 30; k++) {
			const middle = (low + high) / 2;
			if (loop(seam, hip, depth, flat, middle) >= hip) high = middle;
			else low = middle;
		}
		over = Math.max(over, opening - depth - high);
	}
	// The search steps 1/8000 of the girth.
	expect(over).toBeLessThan(0.05);
	expect(over).toBeGreaterThan(-0.05);
});
