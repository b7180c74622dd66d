import { expect, test } from 'vitest';
import { lengthOf } from '../../../src/lib/drafting/geometry/measure.ts';
import type { Outline } from '../../../src/lib/drafting/geometry/outline.ts';
import { distance } from '../../../src/lib/drafting/geometry/point.ts';
import { pointAlongRun, runLength, runOf, stretchOf, tangentAlongRun } from '../../../src/lib/drafting/geometry/run.ts';
import { arc, line } from './shapes.ts';

/**
 * A running track: 100 long, ends of radius 10; its bottom side and its right end are one run, `hem`, in three edges.
 * School geometry: 100 + 10π long.
 */
const track: Outline = {
	start: [0, -10],
	edges: [line('hem', [100, -10]), arc('hem', [110, 0], [100, 0], Math.PI / 2), arc('hem', [100, 10], [100, 0], Math.PI / 2), line('top', [0, 10]), arc('left', [0, -10], [0, 0], Math.PI)]
};
/** The same track, begun in the middle of its hem. */
const begunAmid: Outline = { start: [110, 0], edges: [...track.edges.slice(2), ...track.edges.slice(0, 2)] };
const whole = 100 + 10 * Math.PI;

test('The length of a run is the sum of its edges, wherever the outline begins', () => {
	expect(lengthOf(track, 'hem')).toBeCloseTo(whole, 9);
	expect(lengthOf(begunAmid, 'hem')).toBeCloseTo(whole, 9);
	expect(lengthOf(track, 'left')).toBeCloseTo(10 * Math.PI, 9);
	expect(runLength(runOf(begunAmid, 'hem'))).toBeCloseTo(whole, 9);
});

test('A run begins after the edge before it and ends before the next, also when the outline begins amid it', () => {
	expect(runOf(begunAmid, 'hem')).toEqual(runOf(track, 'hem'));
	expect(runOf(track, 'hem').map(({ from }) => from)).toEqual([[0, -10], [100, -10], [110, 0]]);
	expect(runOf(track, 'top')).toEqual([{ from: [100, 10], edge: track.edges[3] }]);
	const disc: Outline = { start: [5, 0], edges: [arc('rim', [-5, 0], [0, 0], Math.PI), arc('rim', [5, 0], [0, 0], Math.PI)] };
	expect(runOf(disc, 'rim').map(({ from }) => from)).toEqual([[5, 0], [-5, 0]]);
});

test('A name that no edge has, or that edges apart from each other have, is found out', () => {
	expect(() => runOf(track, 'waist')).toThrow('no edge waist among hem, hem, hem, top, left');
	const apart: Outline = { start: [0, 0], edges: [line('a', [9, 0]), line('b', [9, 9]), line('a', [0, 9]), line('c', [0, 0])] };
	expect(() => runOf(apart, 'a')).toThrow('edges a are no neighbours among a, b, a, c');
});

test('A place along a run counts along all of its edges', () => {
	const hem = runOf(track, 'hem');
	expect(pointAlongRun(hem, 0)).toEqual([0, -10]);
	expect(pointAlongRun(hem, 50 / whole)).toEqual([expect.closeTo(50, 9), -10]);
	// Half way round the first quarter turn: 45°.
	const eighth = pointAlongRun(hem, (100 + 2.5 * Math.PI) / whole);
	expect(eighth).toEqual([expect.closeTo(100 + 10 * Math.SQRT1_2, 9), expect.closeTo(-10 * Math.SQRT1_2, 9)]);
	expect(tangentAlongRun(hem, (100 + 2.5 * Math.PI) / whole)).toEqual([expect.closeTo(Math.SQRT1_2, 9), expect.closeTo(Math.SQRT1_2, 9)]);
	expect(pointAlongRun(hem, 1)).toEqual([expect.closeTo(100, 9), expect.closeTo(10, 9)]);
	expect(tangentAlongRun(hem, 0.1)).toEqual([1, 0]);
});

test('A part of a run is as long as its share, joined up, and ends where the places say', () => {
	const hem = runOf(track, 'hem');
	const places = [0, 0.1, 0.4, 100 / whole, 0.8, 0.95, 1];
	for (const from of places) {
		for (const to of places) {
			const part = stretchOf(hem, from, to);
			expect(runLength(part)).toBeCloseTo(whole * Math.abs(to - from), 9);
			if (from === to) continue;
			expect(distance(part[0]!.from, pointAlongRun(hem, from))).toBeLessThan(1e-9);
			expect(distance(part.at(-1)!.edge.end, pointAlongRun(hem, to))).toBeLessThan(1e-9);
			part.slice(1).forEach(({ from: start }, i) => expect(distance(start, part[i]!.edge.end)).toBeLessThan(1e-9));
			const middle = pointAlongRun(part, 0.5);
			expect(distance(middle, pointAlongRun(hem, (from + to) / 2))).toBeLessThan(1e-9);
		}
	}
	expect(stretchOf(hem, 0, 1)).toEqual(hem);
	// Backwards: the same edges the other way round.
	expect(stretchOf(hem, 1, 0).map(({ edge }) => edge.turn)).toEqual([-Math.PI / 2, -Math.PI / 2, 0]);
	expect(stretchOf(hem, 0.3, 0.3)).toEqual([]);
});
