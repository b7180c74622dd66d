// Two pieces against brute force: every height from edge to edge in steps of 2 mm, and at each the least distance at which the one
// clears the other, worked out band by band. Nothing of the layout's own geometry takes part.
import { expect, test } from 'vitest';
import type { Point } from '../../src/lib/drafting/geometry/point.ts';
import { pointAlong, stretches } from '../../src/lib/drafting/geometry/measure.ts';
import { outlineOf, turned } from '../../src/lib/cloth/shape.ts';
import { answer, quarters, question, rectangle, sector, seeded, straight } from './cases.ts';

type Drawn = readonly Point[];

function drawn(piece: ReturnType<typeof question>['pieces'][number], turn: number): Drawn {
	return stretches(turned(outlineOf(piece.shape), turn)).flatMap((stretch) =>
		(stretch.edge.centre ? Array.from({ length: 48 }, (_, i) => pointAlong(stretch, (i + 1) / 48)) : [stretch.edge.end]));
}
const reach = (points: Drawn, axis: 0 | 1): readonly [number, number] => [Math.min(...points.map((p) => p[axis])), Math.max(...points.map((p) => p[axis]))];

/** mm between two levels; heights are tried in the same steps. */
const step = 2;

interface Profile {
	readonly low: number;
	/** In each band of heights from low × step on: the farthest to the right that the piece comes, and to the left. */
	readonly right: readonly number[];
	readonly left: readonly number[];
}

function profile(points: Drawn): Profile {
	const [y0, y1] = reach(points, 1);
	const low = Math.floor(y0 / step);
	const bands = Math.floor(y1 / step) - low + 1;
	const [right, left] = [new Array<number>(bands).fill(-Infinity), new Array<number>(bands).fill(Infinity)];
	points.forEach(([qx, qy], i) => {
		const [px, py] = points[(i + points.length - 1) % points.length]!;
		for (let k = Math.floor(Math.min(py, qy) / step); k <= Math.floor(Math.max(py, qy) / step); k++) {
			// The part of the edge within this band.
			const at = (y: number): number => (py === qy ? px : px + ((qx - px) * (Math.min(Math.max(y, Math.min(py, qy)), Math.max(py, qy)) - py)) / (qy - py));
			const xs = py === qy ? [px, qx] : [at(k * step), at((k + 1) * step)];
			right[k - low] = Math.max(right[k - low]!, ...xs);
			left[k - low] = Math.min(left[k - low]!, ...xs);
		}
	});
	return { low, right, left };
}

/** How far to the right b has to be, `up` steps higher than drawn, to clear a: never too little. */
function slide(a: Profile, b: Profile, up: number): number {
	let most = -Infinity;
	for (let k = Math.max(a.low, b.low + up); k < Math.min(a.low + a.right.length, b.low + up + b.left.length); k++) {
		most = Math.max(most, a.right[k - a.low]! - b.left[k - up - b.low]!);
	}
	return most;
}

/** A length at which the two can be laid on this width, and nearly the shortest: b right of a, or a right of b, at every height. */
function brute(first: Drawn, second: Drawn, width: number): number {
	let best = Infinity;
	for (const [a, b] of [[first, second], [second, first]] as const) {
		const [[ax0, ax1], [bx0, bx1]] = [reach(a, 0), reach(b, 0)];
		const [[ay0, ay1], [by0, by1]] = [reach(a, 1), reach(b, 1)];
		if (ay1 - ay0 > width || by1 - by0 > width) return Infinity;
		const [profileA, profileB] = [profile(a), profile(b)];
		// Only the difference of heights counts, as long as both stay on the cloth.
		for (let up = Math.ceil((ay1 - by0 - width + 1e-6) / step) - 1; up <= Math.floor((width - by1 + ay0) / step); up++) {
			if (Math.max(ay1, by1 + up * step) - Math.min(ay0, by0 + up * step) > width) continue;
			const right = Math.max(slide(profileA, profileB, up), ax0 - bx0);
			best = Math.min(best, Math.max(ax1, bx1 + right) - Math.min(ax0, bx0 + right));
		}
	}
	return best;
}

test('Two pieces come out as short as brute force finds them, and are never proved longer: 40 pairs', () => {
	const random = seeded(41);
	const round = (value: number): number => Math.round(value * 10) / 10;
	let met = 0;
	for (let i = 0; i < 40; i++) {
		const piece = (name: string) => {
			const inner = round(8 + 20 * random());
			const turns = random() < 0.5 ? straight : quarters;
			return random() < 0.75
				? sector(name, 1, [inner, round(inner + 15 + 40 * random()), [30, 60, 90, 120][Math.floor(random() * 4)]!], turns, random() < 0.5)
				: rectangle(name, 1, round(20 + 60 * random()), round(5 + 20 * random()), turns);
		};
		const asked = { cloth: { width: round(112 + 20 * random()) }, seconds: 2, pieces: [piece('one'), piece('two')] };
		const { pieces: [one, two], cloth } = question(asked);
		let best = Infinity;
		for (const a of one!.turns) for (const b of two!.turns) best = Math.min(best, brute(drawn(one!, a), drawn(two!, b), cloth.width));
		const { length, bound, proved } = answer(asked);
		expect(proved, JSON.stringify(asked)).toBe(true);
		// Brute force lays its pieces as drawn by chords, which stray less than 0.3 mm here.
		expect(length!, JSON.stringify(asked)).toBeLessThan(best + 1 + 0.3);
		expect(bound, JSON.stringify(asked)).toBeLessThan(best + 0.3);
		if (best - length! < 8) met++;
	}
	expect(met).toBeGreaterThan(30);
});
