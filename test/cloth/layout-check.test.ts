// The check that every layout passes before anyone sees it: it has to find each thing that can be wrong.
import { expect, test } from 'vitest';
import type { Placement, Question } from '../../src/lib/cloth/cloth.ts';
import { wrongsOf } from '../../src/lib/cloth/layout-check.ts';
import { question, rectangle, sector, straight } from './cases.ts';

const place = (name: string, copy: number, x: number, y: number, turn = 0, on?: Placement['on']): Placement => ({ name, copy, x, y, turn, ...(on && { on }) });
const kinds = (asked: Question, length: number, placements: readonly Placement[]): readonly string[] => wrongsOf(asked, length, placements).map(({ what }) => what);

const two = question({ cloth: { width: 50 }, pieces: [rectangle('band', 2, 40, 10, [0, 90])] });

test('Two bands side by side are right, and touching is no overlap', () => {
	expect(kinds(two, 400, [place('band', 1, 0, 0), place('band', 2, 0, 100)])).toEqual([]);
	expect(kinds(two, 400, [place('band', 1, 0, 0), place('band', 2, 0, 99.99)])).toEqual([]);
});

test('An overlap is found by a corner, along an edge, crosswise, and where two pieces lie exactly on each other', () => {
	for (const [x, y, turn] of [[399, 99, 0], [0, 99.9, 0], [0, 0, 0], [250, -150, Math.PI / 2], [10, 3, 0]] as const) {
		expect(kinds(two, 2000, [place('band', 1, 0, 0), place('band', 2, x, y, turn)])).toContain('overlap');
	}
});

test('A piece inside another is found, and one within a ring’s opening is none', () => {
	const asked = question({ cloth: { width: 150 }, pieces: [sector('panel', 1, [20, 60, 180], [0]), rectangle('tab', 1, 4, 4, [0])] });
	expect(kinds(asked, 3000, [place('panel', 1, 100, 700), place('tab', 1, 450, 680)])).toEqual(['overlap']);
	expect(kinds(asked, 3000, [place('panel', 1, 100, 700), place('tab', 1, 150, 680)])).toEqual([]);
	// The arc itself, not its chord or its box: 200 mm from the centre lies the inner edge.
	expect(kinds(asked, 3000, [place('panel', 1, 100, 700), place('tab', 1, 258.9, 680)])).toEqual([]);
	expect(kinds(asked, 3000, [place('panel', 1, 100, 700), place('tab', 1, 259.1, 680)])).toEqual(['overlap']);
});

test('Beyond the cloth’s edge, its end, and its start are found', () => {
	for (const [x, y] of [[-1, 0], [0, -1], [0, 401]] as const) expect(kinds(two, 400, [place('band', 1, x, y), place('band', 2, 0, 200)])).toContain('outside');
	expect(kinds(two, 399, [place('band', 1, 0, 0), place('band', 2, 0, 200)])).toEqual(['outside', 'outside']);
	const short = question({ cloth: { width: 50, length: 39 }, pieces: [rectangle('band', 1, 39, 10, [0])] });
	expect(kinds(short, 391, [place('band', 1, 1, 0)])).toEqual(['outside']);
});

test('A copy that is missing, laid twice or never asked for is found, and a turn that isn’t allowed', () => {
	expect(kinds(two, 400, [place('band', 1, 0, 0)])).toEqual(['copies']);
	expect(kinds(two, 400, [place('band', 1, 0, 0), place('band', 1, 0, 200)])).toEqual(['copies']);
	expect(kinds(two, 400, [place('band', 1, 0, 0), place('band', 3, 0, 200)])).toContain('copies');
	expect(kinds(two, 800, [place('band', 1, 400, 100, Math.PI), place('band', 2, 0, 200)])).toEqual(['turn']);
});

test('A gap that isn’t kept is found, though nothing overlaps', () => {
	const spaced = question({ cloth: { width: 50 }, gap: 1, pieces: [rectangle('band', 2, 40, 10, [0])] });
	expect(kinds(spaced, 400, [place('band', 1, 0, 0), place('band', 2, 0, 110)])).toEqual([]);
	expect(kinds(spaced, 400, [place('band', 1, 0, 0), place('band', 2, 0, 109)])).toEqual(['gap']);
});

test('A place that can’t be used is kept clear', () => {
	const worn = question({ cloth: { width: 50, length: 60, unusable: [{ x: 10, y: 10, length: 5, width: 5 }] }, pieces: [rectangle('band', 1, 40, 10, [0])] });
	expect(kinds(worn, 600, [place('band', 1, 0, 0)])).toEqual([]);
	expect(kinds(worn, 600, [place('band', 1, 0, 1)])).toEqual(['unusable']);
	expect(kinds(worn, 600, [place('band', 1, 0, 60)])).toEqual(['unusable']);
});

const folded = question({ cloth: { width: 60 }, folded: true, pieces: [sector('panel', 1, [10, 30, 60], straight), rectangle('tab', 2, 20, 5, [0])] });

test('On folded cloth a piece on the fold, and pairs through both layers, are right', () => {
	expect(kinds(folded, 800, [place('panel', 1, 0, 0, 0, 'fold'), place('tab', 1, 400, 10, 0, 'upper'), place('tab', 2, 400, 10, 0, 'lower')])).toEqual([]);
});

test('Folded cloth with one layer forgotten, a piece off the fold, or a piece across it is found', () => {
	const rest = [place('tab', 1, 400, 10, 0, 'upper'), place('tab', 2, 400, 10, 0, 'lower')] as const;
	expect(kinds(folded, 800, [place('panel', 1, 0, 5, 0, 'fold'), ...rest])).toContain('fold');
	expect(kinds(folded, 800, [place('panel', 1, 0, 0), ...rest])).toContain('layers');
	expect(kinds(folded, 800, [place('panel', 1, 0, 0, 0, 'fold'), place('tab', 1, 400, 10, 0, 'upper'), place('tab', 2, 400, 90, 0, 'lower')])).toContain('layers');
	expect(kinds(folded, 800, [place('panel', 1, 0, 0, 0, 'fold'), place('tab', 1, 400, -20, 0, 'upper'), place('tab', 2, 400, -20, 0, 'lower')])).toContain('layers');
	expect(kinds(folded, 800, [place('panel', 1, 0, 100, 0, 'upper'), ...rest])).toContain('layers');
});
