import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EventBody, LoggedEvent } from '../../src/lib/class/event.ts';
import { foldSkirt } from '../../src/lib/class/skirt-state.ts';

let made = 0;
const event = (counter: number, body: EventBody, rest: Partial<LoggedEvent> = {}): LoggedEvent => ({
	id: `00000000-0000-4000-8000-${String(made++).padStart(12, '0')}`, device: 'phone', by: 'learner', at: 1000 + counter, counter, body, ...rest
});
const waist = (mm: number): EventBody => ({ kind: 'reading', measurement: 'waist', mm, typed: String(mm / 10), unit: 'cm', route: 'self' });

const steps = fc.constantFrom('wash', 'press', 'fold', 'cut');
const bodies: fc.Arbitrary<EventBody> = fc.oneof(
	fc.integer({ min: 500, max: 1200 }).map(waist),
	fc.record({ kind: fc.constant('choice' as const), choices: fc.record({ share: fc.constantFrom(0.25, 0.5, 1) }) }),
	fc.record({ kind: fc.constant('made' as const), reading: fc.constantFrom('radiusDrawn' as const, 'zipBought' as const), lengths: fc.nat(900).map((mm) => [{ mm, typed: String(mm) }]), unit: fc.constant('cm' as const) }),
	fc.record({ kind: fc.constantFrom('tick' as const, 'untick' as const), step: steps }),
	fc.record({ kind: fc.constant('preference' as const), unit: fc.constantFrom('cm' as const, 'in' as const) }),
	fc.record({ kind: fc.constant('preference' as const), noTouch: fc.boolean() }),
	fc.constant({ kind: 'ask' as const, gate: ['cloth'], second: 'Bea' }),
	fc.constant({ kind: 'unask' as const }),
	fc.constant({ kind: 'return' as const, action: 'Measure again.' }),
	fc.constant({ kind: 'clear' as const, digest: 'd', engine: '1', figures: { waistRadius: 2300 } }),
	fc.record({ kind: fc.constantFrom('help' as const, 'helped' as const), step: steps })
);
const logs = fc.array(
	fc.record({ id: fc.uuid(), device: fc.constantFrom('phone', 'tablet', 'server'), counter: fc.nat(12), by: fc.constant('learner'), at: fc.nat(10_000), body: bodies }),
	{ maxLength: 40 }
);

describe('folding a log', () => {
	test('the order in which events arrive makes no difference', () => {
		fc.assert(fc.property(logs.chain((log) => fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length }))), ([log, shuffled]) => {
			expect(foldSkirt(shuffled)).toEqual(foldSkirt(log));
		}), { numRuns: 500 });
	});

	test('an event that arrives twice counts once', () => {
		fc.assert(fc.property(logs, fc.infiniteStream(fc.nat()), (log, picks) => {
			const again = log.filter(() => picks.next().value! % 2 === 0);
			expect(foldSkirt([...again, ...log, ...again])).toEqual(foldSkirt(log));
		}), { numRuns: 500 });
	});

	test('no clock decides anything: only the times that are shown change with it', () => {
		fc.assert(fc.property(logs, fc.integer({ min: -172_800_000, max: 172_800_000 }), (log, skew) => {
			const { ticked, ...plain } = foldSkirt(log);
			const skewed = foldSkirt(log.map((one, index) => ({ ...one, at: index % 2 ? one.at + skew : one.at })));
			expect(Object.keys(skewed.ticked)).toEqual(Object.keys(ticked));
			expect(skewed.lastTicked).toBe(plain.lastTicked);
			expect(skewed.decision?.kind).toBe(plain.decision?.kind);
			expect(skewed.readings.waist?.map(({ mm }) => mm)).toEqual(plain.readings.waist?.map(({ mm }) => mm));
		}), { numRuns: 300 });
	});

	test('a reading on the real thing is kept with those before it, and touches no clearance', () => {
		const edge = (mm: number): EventBody => ({ kind: 'made', reading: 'waistAfterStaystitch', lengths: [{ mm, typed: String(mm / 10) }], unit: 'cm' });
		const clear: EventBody = { kind: 'clear', digest: 'd', engine: '1', figures: {} };
		const state = foldSkirt([event(3, edge(701)), event(1, clear), event(2, edge(712))]);
		expect(state.made.waistAfterStaystitch?.map(({ lengths, by }) => [lengths[0]!.typed, by])).toEqual([['71.2', 'learner'], ['70.1', 'learner']]);
		expect([state.changedSince, state.decision?.kind]).toEqual([null, 'clear']);
	});

	test('a log survives JSON and is left as it was', () => {
		fc.assert(fc.property(logs, (log) => {
			const before = JSON.stringify(log);
			const state = foldSkirt(log);
			expect(JSON.parse(JSON.stringify(state))).toEqual(state);
			expect(JSON.stringify(log)).toBe(before);
		}));
	});
});

describe('what a log amounts to', () => {
	test('a new reading stands beside the old ones and replaces none', () => {
		const state = foldSkirt([event(3, waist(731)), event(1, waist(725)), event(2, waist(743))]);
		expect(state.readings.waist?.map(({ mm }) => mm)).toEqual([725, 743, 731]);
		expect(state.readings.hip).toBeUndefined();
	});

	test('for one step the higher counter wins, then the later device id', () => {
		const tick: EventBody = { kind: 'tick', step: 'wash' };
		const untick: EventBody = { kind: 'untick', step: 'wash' };
		expect(foldSkirt([event(2, untick), event(1, tick)]).ticked).toEqual({});
		expect(Object.keys(foldSkirt([event(1, untick), event(2, tick)]).ticked)).toEqual(['wash']);
		expect(foldSkirt([event(1, tick, { device: 'a' }), event(1, untick, { device: 'b' })]).ticked).toEqual({});
		expect(Object.keys(foldSkirt([event(1, tick, { device: 'b' }), event(1, untick, { device: 'a' })]).ticked)).toEqual(['wash']);
	});

	test('the latest choices replace the earlier ones whole', () => {
		const state = foldSkirt([event(1, { kind: 'choice', choices: { share: 0.5, bandDepth: 40 } }), event(2, { kind: 'choice', choices: { bandDepth: 30 } })]);
		expect(state.choices).toEqual({ bandDepth: 30 });
	});

	test('a preference changes only what it names', () => {
		const state = foldSkirt([event(1, { kind: 'preference', unit: 'in' }), event(2, { kind: 'preference', noTouch: true })]);
		expect([state.unit, state.noTouch]).toEqual(['in', true]);
	});

	test('asking, returning and clearing follow each other, and the last of each is kept', () => {
		const ask: EventBody = { kind: 'ask', gate: ['cloth'], second: 'Bea' };
		const state = foldSkirt([event(1, ask), event(2, { kind: 'return', action: 'Measure the hip again.' }), event(3, ask)]);
		expect(state.decision).toMatchObject({ kind: 'ask', at: 1003 });
		expect(state.returned).toMatchObject({ action: 'Measure the hip again.' });
		expect(state.cleared).toBeNull();
	});

	test('a request that is taken back leaves what stood before it, and after an answer says nothing', () => {
		const ask: EventBody = { kind: 'ask', gate: ['cloth'], second: 'Bea' };
		const back: EventBody = { kind: 'unask' };
		const returned: EventBody = { kind: 'return', action: 'Measure the hip again.' };
		expect(foldSkirt([event(1, ask), event(2, back)]).decision).toBeNull();
		expect(foldSkirt([event(1, returned), event(2, ask), event(3, ask), event(4, back)]).decision).toMatchObject({ kind: 'return', at: 1001 });
		expect(foldSkirt([event(1, ask), event(2, returned), event(3, back)]).decision).toMatchObject({ kind: 'return', at: 1002 });
	});

	test('a number that changes after she asked is known until she takes it back, asks again or is answered', () => {
		const ask: EventBody = { kind: 'ask', gate: ['cloth'], second: 'Bea' };
		const changed = [event(1, waist(700)), event(2, ask), event(3, waist(710))];
		expect(foldSkirt(changed.slice(0, 2)).changedSinceAsked).toBe(false);
		expect(foldSkirt(changed).changedSinceAsked).toBe(true);
		for (const after of [ask, { kind: 'unask' }, { kind: 'return', action: 'x' }] satisfies EventBody[]) {
			expect(foldSkirt([...changed, event(4, after)]).changedSinceAsked).toBe(false);
		}
	});

	test('since when a number differs from what was cleared: the first time, until she is cleared again', () => {
		const clear: EventBody = { kind: 'clear', digest: 'd', engine: '1', figures: {} };
		const changed = [event(1, waist(700)), event(2, clear), event(3, waist(710)), event(4, { kind: 'choice', choices: { bandDepth: 55 } })];
		expect(foldSkirt(changed.slice(0, 2)).changedSince).toBeNull();
		for (const order of [changed, changed.toReversed(), [...changed, ...changed]]) expect(foldSkirt(order).changedSince).toBe(1003);
		expect(foldSkirt([...changed, event(5, clear)]).changedSince).toBeNull();
	});

	test('a hand goes up and comes down', () => {
		const up = event(1, { kind: 'help', step: 'fold' });
		expect(foldSkirt([up]).help).toEqual({ step: 'fold', at: 1001 });
		expect(foldSkirt([up, event(2, { kind: 'helped' })]).help).toBeNull();
	});

	test('a step named like a part of every object is a step like any other', () => {
		const state = foldSkirt([event(1, { kind: 'tick', step: 'constructor' }), event(2, { kind: 'tick', step: '__proto__' })]);
		expect(Object.keys(state.ticked).sort()).toEqual(['__proto__', 'constructor']);
	});

	test('the next counter goes above every one seen, whoever made it', () => {
		expect(foldSkirt([event(4, waist(700)), event(9, { kind: 'return', action: 'x' }, { device: 'server' })]).counter).toBe(9);
		expect(foldSkirt([]).counter).toBe(0);
	});
});
