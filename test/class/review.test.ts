import { describe, expect, test } from 'vitest';
import type { EventBody, LoggedEvent } from '../../src/lib/class/event.ts';
import { defaultRules } from '../../src/lib/class/gate.ts';
import { bearingRules, flagsOf, queue, reviewState, rulesChanged, seenFigures, seenRules, type Waiting } from '../../src/lib/class/review.ts';
import { foldSkirt } from '../../src/lib/class/skirt-state.ts';

const state = (...bodies: readonly EventBody[]) =>
	foldSkirt(bodies.map((body, counter): LoggedEvent => ({ id: `e${counter}`, device: 'd', by: 'p', at: counter, counter, body })));
const ask: EventBody = { kind: 'ask', gate: [], second: 'Bea' };
const figures = { waistRadius: 2308, hemSweep: 21_000 };
const clear: EventBody = { kind: 'clear', digest: 'aaa', engine: '1', figures };
const rules = seenRules(defaultRules);
const now = { digest: 'aaa', engine: '1', figures, rules };
const nothing = { apart: [], once: [], stops: [], cuttingSteps: [], hipMissing: false, made: [], gate: [], rules };
const cutting = { ...nothing, cuttingSteps: ['cut-skirt'] };
const cut: EventBody = { kind: 'tick', step: 'cut-skirt' };
const back: EventBody = { kind: 'return', action: 'Again.' };
const reading: EventBody = { kind: 'reading', measurement: 'waist', mm: 725, typed: '72.5', unit: 'cm', route: 'self' };

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
		const source = { ...cutting, apart: ['waist'], once: ['length'], stops: ['hem-too-deep'], hipMissing: true, gate: ['cloth'] } as const;
		expect(flagsOf(state(ask, cut), 'asked', source)).toEqual([
			{ code: 'cut-uncleared', about: 'cut-skirt' },
			{ code: 'hip-missing' },
			{ code: 'readings-apart', about: 'waist' },
			{ code: 'one-reading', about: 'length' },
			{ code: 'stop-check', about: 'hem-too-deep' },
			{ code: 'gate-unread' }
		]);
	});

	test.each([
		['before asking', 'not-asked', [cut]],
		['while she waits', 'asked', [ask, cut]],
		['cleared, then returned, then cut', 'returned', [ask, clear, back, cut]],
		['cut, then returned', 'returned', [ask, cut, back]],
		['cleared, asked again, then cut', 'asked', [ask, clear, ask, cut]],
		['a number changed, then cut', 'void', [ask, clear, reading, cut]],
		['a choice changed, then cut', 'void', [ask, clear, { kind: 'choice', choices: { bandDepth: 50 } }, cut]],
		['cut, and ticked once more after', 'asked', [ask, cut, cut]]
	] as const)('a cut without a clearance that stands is flagged: %s', (_, review, said) => {
		expect(flagsOf(state(...said), review, cutting)).toContainEqual({ code: 'cut-uncleared', about: 'cut-skirt' });
	});

	test.each([
		['after the clearance', 'cleared', [ask, clear, cut]],
		['after it, then returned', 'returned', [ask, clear, cut, back]],
		['after it, ticked again once a number had changed', 'void', [ask, clear, cut, reading, cut]],
		['the same choice said again between', 'cleared', [ask, clear, { kind: 'choice', choices: {} }, cut]],
		['uncleared, and then cleared with the flag before her teacher', 'cleared', [ask, cut, clear]],
		['ticked by mistake and unticked, then cleared', 'cleared', [ask, cut, { kind: 'untick', step: 'cut-skirt' }, clear, cut]],
		['another step', 'not-asked', [{ kind: 'tick', step: 'wash-cloth' }]]
	] as const)('no flag for a cut: %s', (_, review, said) => {
		expect(flagsOf(state(...said), review, cutting).filter(({ code }) => code === 'cut-uncleared')).toEqual([]);
	});

	test('a cut said before the clearance on a phone that was away, and heard of after it, is flagged all the same', () => {
		const events = [ask, cut, clear].map((body, counter): LoggedEvent => ({ id: `e${counter}`, device: 'd', by: 'p', at: counter === 1 ? 9 : counter, counter, body }));
		expect(flagsOf(foldSkirt(events), 'cleared', cutting)).toEqual([{ code: 'cut-uncleared', about: 'cut-skirt' }]);
	});

	test('what was not read aloud is flagged while she waits', () => {
		expect(flagsOf(state({ ...ask, gate: ['cloth'] } as EventBody), 'asked', { ...nothing, gate: ['cloth', 'waist'] })).toEqual([{ code: 'gate-unread' }]);
		expect(flagsOf(state({ ...ask, gate: ['cloth', 'waist'] } as EventBody), 'asked', { ...nothing, gate: ['cloth'] })).toEqual([]);
	});

	test('a rule changed since she was cleared is named, and a number beside it only if one changed', () => {
		const cleared: EventBody = { ...clear, rules } as EventBody;
		const changed = { ...nothing, rules: { ...rules, 'allowances.seam': 20 } };
		expect(flagsOf(state(ask, cleared), 'void', changed)).toEqual([{ code: 'rule-changed', about: 'allowances.seam' }]);
		expect(flagsOf(state(ask, cleared, reading), 'void', changed)).toEqual([{ code: 'changed-since-cleared' }, { code: 'rule-changed', about: 'allowances.seam' }]);
		expect(flagsOf(state(ask, cleared), 'cleared', changed)).toEqual([]);
	});

	test('of all rules those are remembered that bear on the cut; the unit, the gate and what is measured after the cut are not', () => {
		expect(Object.keys(rules).toSorted()).toEqual([...bearingRules].toSorted());
		const later = seenRules({ ...defaultRules, unit: 'in', gate: [], tolerances: { ...defaultRules.tolerances, hemLevel: 20, bandSeam: 20 } });
		expect(later).toEqual(rules);
		const open = { ...rules, 'open.share': true };
		expect(rulesChanged(state({ ...clear, rules } as EventBody), open)).toEqual([]);
		expect(rulesChanged(state({ ...clear, rules: open } as EventBody), rules)).toEqual(['open.share']);
	});

	test('a number changed since she was cleared is flagged, also when she has asked again', () => {
		expect(flagsOf(state(ask, clear), 'void', nothing)).toEqual([{ code: 'changed-since-cleared' }]);
		expect(flagsOf(state(ask, clear, ask), 'asked', nothing)).toEqual([{ code: 'changed-since-cleared' }]);
		expect(flagsOf(state(ask, clear), 'differs', nothing)).toEqual([{ code: 'worked-out-differently' }]);
	});
});

describe('the queue', () => {
	const one = (memberId: string, review: Waiting['review'], since: number | null, changed: number | null = null): Waiting => ({ memberId, name: memberId, review, flags: [], since, changed });

	test('the longest-waiting is first, then those to look at again, then the returned ones', () => {
		const everyone = [
			one('not-yet', 'not-asked', null), one('done', 'cleared', 1), one('late', 'asked', 90), one('early', 'asked', 20),
			one('changed', 'void', 5), one('back', 'returned', 3)
		];
		expect(queue(everyone).map(({ memberId }) => memberId)).toEqual(['early', 'late', 'changed', 'back', 'not-yet', 'done']);
		expect(everyone[0]!.memberId).toBe('not-yet');
	});

	test('of those to look at again, the one whose number changed first is first; a rule’s change has no time of its own', () => {
		const everyone = [one('b', 'void', 5, 60), one('a', 'void', 50, 55), one('rule', 'void', 57), one('engine', 'differs', 58, null)];
		expect(queue(everyone).map(({ memberId }) => memberId)).toEqual(['a', 'rule', 'engine', 'b']);
	});

	test('two who asked at once keep one order whichever way they come', () => {
		const [a, b] = [one('a', 'asked', 5), one('b', 'asked', 5)];
		expect(queue([b, a])).toEqual(queue([a, b]));
	});
});
