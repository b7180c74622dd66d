// Random questions: every layout passes the check, none that can be laid is ever ruled out, and one input has one answer.
import clipping from 'polygon-clipping';
import { expect, test } from 'vitest';
import type { Answer } from '../../src/lib/cloth/answer.ts';
import { wrongsOf } from '../../src/lib/cloth/layout-check.ts';
import { checkQuestion } from '../../src/lib/cloth/question.ts';
import { answer, quarters, question, rectangle, sector, seeded, straight } from './cases.ts';

type Random = () => number;
const one = <T>(random: Random, from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
const round = (value: number): number => Math.round(value * 10) / 10;
const turnsOf = (random: Random): readonly number[] => one(random, [straight, [0], quarters, [0, 90], [0, 45]]);

function anyPieces(random: Random): readonly object[] {
	const pieces: object[] = [];
	const kinds = 1 + Math.floor(random() * 3);
	for (let k = 0; k < kinds; k++) {
		const name = `piece ${k}`;
		const count = 1 + Math.floor(random() * (k === 0 ? 3 : 2));
		const kind = random();
		if (kind < 0.5) {
			const inner = round(8 + 30 * random());
			pieces.push(sector(name, count, [inner, round(inner + 5 + 40 * random()), one(random, [30, 45, 60, 90, 120, 180])], turnsOf(random), random() < 0.4));
		} else if (kind < 0.8) pieces.push(rectangle(name, count, round(10 + 60 * random()), round(4 + 20 * random()), turnsOf(random)));
		else pieces.push({ name, count, gore: { top: round(5 + 10 * random()), bottom: round(15 + 20 * random()), length: round(30 + 40 * random()) }, turns: turnsOf(random) });
	}
	return pieces;
}

/** Until it has no piece that is wider or longer than its cloth. */
function anyQuestion(random: Random): object {
	for (;;) {
		const asked = tryQuestion(random);
		const read = checkQuestion(asked);
		if (read.ok) return asked;
		expect(new Set(['wider-than-cloth', 'longer-than-cloth', 'crosses-itself'])).toContain(read.issues[0]!.code);
	}
}

function tryQuestion(random: Random): object {
	const found = random() < 0.3;
	const folded = random() < 0.2;
	return {
		cloth: {
			width: one(random, folded ? [280, 300] : [115, 140, 150, 160]),
			...(found && { length: round(120 + 150 * random()), unusable: Array.from({ length: Math.floor(random() * 3) }, () => ({ x: round(90 * random()), y: round(90 * random()), length: round(3 + 20 * random()), width: round(3 + 20 * random()) })) })
		},
		folded, gap: one(random, [0, 0, 0, 0.5, 1]), nap: random() < 0.2, seconds: 0.05, pieces: anyPieces(random)
	};
}

test('500 random questions: each layout passes the check, and no bound is above its layout', () => {
	const random = seeded(11);
	let [laid, proved] = [0, 0];
	for (let i = 0; i < 500; i++) {
		const asked = anyQuestion(random);
		const given = answer(asked, 1 + i);
		if (given.length === null) {
			expect(given.fits, JSON.stringify(asked)).not.toBe(true);
			continue;
		}
		laid++;
		proved += given.proved ? 1 : 0;
		expect(wrongsOf(question(asked), given.length, given.placements), JSON.stringify(asked)).toEqual([]);
		expect(given.bound, JSON.stringify(asked)).toBeLessThanOrEqual(given.length + 1e-6);
	}
	expect(laid).toBeGreaterThan(450);
	expect(proved).toBeGreaterThan(250);
});

test('The same seed gives the same answer, to the last digit', () => {
	const random = seeded(23);
	for (let i = 0; i < 12; i++) {
		const asked = anyQuestion(random);
		const given: readonly Answer[] = [answer(asked, 7), answer(asked, 7)];
		expect(given[1]).toEqual(given[0]);
	}
});

/** A cloth cut right through along random lines, so that its pieces are known to fit it: convex ones and, along a zigzag, others. */
function cutUp(random: Random, length: number, width: number): readonly [number, number][][] {
	let pieces: [number, number][][] = [[[0, 0], [length, 0], [length, width], [0, width]]];
	for (let cut = 0; cut < 2; cut++) {
		const angle = Math.PI * random();
		const [nx, ny] = [Math.cos(angle), Math.sin(angle)];
		const at = nx * length * (0.3 + 0.4 * random()) + ny * width * (0.3 + 0.4 * random());
		const far = 1000;
		const [cx, cy] = [nx * at, ny * at];
		// A strip with one bent side, so that some pieces have a bay in them.
		const bend = 4 * (random() - 0.5);
		const side: [number, number][] = [[cx - ny * far, cy + nx * far], [cx + nx * bend, cy + ny * bend], [cx + ny * far, cy - nx * far], [cx + ny * far + nx * far, cy - nx * far + ny * far], [cx - ny * far + nx * far, cy + nx * far + ny * far]];
		pieces = pieces.flatMap((piece) => [...clipping.intersection([piece], [side]), ...clipping.difference([piece], [side])].map(([ring]) => ring!.slice(0, -1).map(([x, y]): [number, number] => [x, y])));
	}
	return pieces;
}

test('A length that is known to do is never ruled out: cloth cut into pieces, and asked for again', () => {
	const random = seeded(31);
	let proved = 0;
	for (let i = 0; i < 60; i++) {
		const [length, width] = [round(40 + 60 * random()), round(40 + 60 * random())];
		const pieces = cutUp(random, length, width).map((outline, k) => ({ name: `piece ${k}`, outline, turns: one(random, [[0], straight]) }));
		const asked = { cloth: { width }, seconds: 0.4, pieces };
		const { bound, length: got, proved: sure } = answer(asked);
		expect(bound, JSON.stringify(asked)).toBeLessThanOrEqual(length * 10 + 0.05);
		if (sure) {
			proved++;
			expect(got!).toBeLessThanOrEqual(length * 10 + 1.05);
		}
	}
	expect(proved).toBeGreaterThan(20);
});

test('A found cloth that is known to be enough is never said to be too small', () => {
	const random = seeded(37);
	for (let i = 0; i < 40; i++) {
		const [length, width] = [round(40 + 60 * random()), round(40 + 60 * random())];
		const pieces = cutUp(random, length, width).map((outline, k) => ({ name: `piece ${k}`, outline, turns: [0] }));
		const { fits } = answer({ cloth: { width, length: length + 0.02 }, seconds: 0.3, pieces });
		expect(fits, JSON.stringify({ width, length, pieces })).not.toBe(false);
	}
});
