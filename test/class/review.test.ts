import { describe, expect, test } from 'vitest';
import type { EventBody, LoggedEvent } from '../../src/lib/class/event.ts';
import { flagsOf, queue, reviewState, seenFigures, type Waiting } from '../../src/lib/class/review.ts';
import { foldSkirt } from '../../src/lib/class/skirt-state.ts';

const state = (...bodies: readonly EventBody[]) =>
	foldSkirt(bodies.map((body, counter): LoggedEvent => ({ id: `e${counter}`, device: 'd', by: 'p', at: counter, counter, body })));
const ask: EventBody = { kind: 'ask', gate: [], second: 'Bea' };
const figures = { waistRadius: 2308, hemSweep: 21_000 };
const clear: EventBody = { kind: 'clear', digest: 'aaa', engine: '1', figures };
const now = { digest: 'aaa', engine: '1', figures };
const nothing = { apart: [], once: [], stops: [], cuttingSteps: [] };

describe('where a learner stands with cutting', () => {
	test('before asking, waiting, returned', () => {
		expect(reviewState(state(), now)).toBe('not-asked');
		expect(reviewState(state(ask), now)).toBe('asked');
		expect(reviewState(state(ask, { kind: 'return', action: 'Again.' }), now)).toBe('returned');
		expect(reviewState(state(ask, { kind: 'return', action: 'Again.' }, ask), now)).toBe('asked');
	});

	test('cleared while nothing changes, whichever engine says so', () => {
		expect(reviewState(state(ask, clear), now)).toBe('cleared');
		expect(reviewState(state(ask, clear), { ...now, engine: '2' })).toBe('cleared');
	});

	test('a changed input voids the clearance, and so does one that can’t be drafted any more', () => {
		expect(reviewState(state(ask, clear), { ...now, digest: 'bbb' })).toBe('void');
		expect(reviewState(state(ask, clear), null)).toBe('void');
	});

	test('the same inputs with other figures are never shown as current', () => {
		expect(reviewState(state(ask, clear), { ...now, engine: '2', figures: { ...figures, waistRadius: 2309 } })).toBe('differs');
		expect(reviewState(state(ask, clear), { ...now, figures: { waistRadius: 2308 } })).toBe('differs');
		expect(reviewState(state(ask, clear), { ...now, figures: { ...figures, zipLength: 2000 } })).toBe('differs');
	});

	test('figures are remembered to a tenth of a millimetre, absent ones left out', () => {
		// 230.77 mm, the waist radius of a 725 mm seam on a half circle (725 ÷ π), is kept as 2308 tenths.
		expect(seenFigures({ waistRadius: 725 / Math.PI, girthAtHip: undefined })).toEqual({ waistRadius: 2308 });
	});
});

describe('what a teacher is told to look at', () => {
	test('each kind of flag, the gravest first', () => {
		const cut = state(ask, { kind: 'tick', step: 'cut-skirt' });
		expect(flagsOf(cut, 'asked', { apart: ['waist'], once: ['hip'], stops: ['hem-too-deep'], cuttingSteps: ['cut-skirt'] })).toEqual([
			{ code: 'cut-without-clearance', about: 'cut-skirt' },
			{ code: 'readings-apart', about: 'waist' },
			{ code: 'one-reading', about: 'hip' },
			{ code: 'stop-check', about: 'hem-too-deep' }
		]);
	});

	test('a number changed since she was cleared is flagged, also when she has asked again', () => {
		expect(flagsOf(state(ask, clear), 'void', nothing)).toEqual([{ code: 'changed-since-cleared' }]);
		expect(flagsOf(state(ask, clear, ask), 'asked', nothing)).toEqual([{ code: 'changed-since-cleared' }]);
		expect(flagsOf(state(ask, clear), 'differs', nothing)).toEqual([{ code: 'worked-out-differently' }]);
	});

	test('cutting after a clearance is no flag', () => {
		expect(flagsOf(state(ask, clear, { kind: 'tick', step: 'cut-skirt' }), 'cleared', { ...nothing, cuttingSteps: ['cut-skirt'] })).toEqual([]);
	});
});

describe('the queue', () => {
	const one = (memberId: string, review: Waiting['review'], since: number | null): Waiting => ({ memberId, name: memberId, review, flags: [], since });

	test('the longest-waiting is first, then those to look at again, then the returned ones', () => {
		const everyone = [
			one('not-yet', 'not-asked', null), one('done', 'cleared', 1), one('late', 'asked', 90), one('early', 'asked', 20),
			one('changed', 'void', 5), one('back', 'returned', 3)
		];
		expect(queue(everyone).map(({ memberId }) => memberId)).toEqual(['early', 'late', 'changed', 'back', 'not-yet', 'done']);
		expect(everyone[0]!.memberId).toBe('not-yet');
	});

	test('two who asked at once keep one order whichever way they come', () => {
		const [a, b] = [one('a', 'asked', 5), one('b', 'asked', 5)];
		expect(queue([b, a])).toEqual(queue([a, b]));
	});
});
