import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkEvents, highestFromDevice, highestFromServer } from '../../src/lib/class/event-check.ts';

const event = (body: unknown, rest: object = {}) => ({ id: '3f2c8a10-5b7d-4e21-9c4f-0a1b2c3d4e5f', device: 'phone-1', counter: 4, body, ...rest });
const tick = { kind: 'tick', step: 'wash-cloth' };
const reading = { kind: 'reading', measurement: 'waist', mm: 725, typed: '72,5', unit: 'cm', route: 'self' };

const refused = (events: unknown): readonly string[] => {
	const checked = checkEvents(events);
	return checked.ok ? [] : checked.issues.map(({ path, code }) => `${path}: ${code}`);
};

describe('what a device may say', () => {
	test.each([
		tick, { kind: 'untick', step: 'wash-cloth' }, reading, { kind: 'choice', choices: {} },
		{ kind: 'choice', choices: { share: 0.5, panels: 1, waistEase: 10, hipEase: 20, bandDepth: 40, hem: 15, hemFinish: 'narrow', zipAt: 'centreBack' } },
		{ kind: 'preference', unit: 'in', noTouch: true }, { kind: 'ask', gate: ['cloth', 'waist'], second: 'Bea' }, { kind: 'unask' }, { kind: 'help', step: 'wash-cloth' }, { kind: 'helped' },
		{ kind: 'made', reading: 'radiusDrawn', lengths: [{ mm: 226, typed: '22,6' }], unit: 'cm' }, { kind: 'made', reading: 'hemAbove', lengths: [], unit: 'in' },
		{ kind: 'made', reading: 'floor', lengths: Array.from({ length: 8 }, (_, i) => ({ mm: i, typed: String(i / 10) })), unit: 'cm' }
	])('%o is taken as it is', (body) => {
		expect(checkEvents([event(body)])).toEqual({ ok: true, value: [event(body)] });
	});

	test.each([
		['a clearance', { kind: 'clear', digest: 'a', engine: '1', figures: {} }],
		['a return', { kind: 'return', action: 'Again.' }],
		['a kind nobody knows', { kind: 'applaud' }],
		['a reading of nothing', { ...reading, mm: 0 }],
		['a reading beyond any tape', { ...reading, mm: 1e309 }],
		['a reading that is no number', { ...reading, mm: null }],
		['a measurement nobody takes', { ...reading, measurement: 'hat' }],
		['half a piece of cloth', { kind: 'made', reading: 'clothAfterWashing', lengths: [{ mm: 1400, typed: '140' }], unit: 'cm' }],
		['a floor read at seven places', { kind: 'made', reading: 'floor', lengths: Array.from({ length: 7 }, () => ({ mm: 300, typed: '30' })), unit: 'cm' }],
		['a floor read at seventeen', { kind: 'made', reading: 'floor', lengths: Array.from({ length: 17 }, () => ({ mm: 300, typed: '30' })), unit: 'cm' }],
		['a radius of nothing', { kind: 'made', reading: 'radiusDrawn', lengths: [{ mm: 0, typed: '0' }], unit: 'cm' }],
		['a reading on nothing that is made', { kind: 'made', reading: 'hat', lengths: [{ mm: 300, typed: '30' }], unit: 'cm' }],
		['words without an end', { ...reading, typed: 'x'.repeat(65) }],
		['broken text', { ...reading, typed: '\ud800' }],
		['text the database can’t keep', { ...reading, typed: 'a\u0000b' }],
		['a field too many', { ...tick, by: 'someone else' }],
		['a step that is no id', { kind: 'tick', step: '../../etc' }],
		['half a panel', { kind: 'choice', choices: { panels: 1.5 } }]
	])('%s is refused', (_, body) => {
		expect(checkEvents([event(body)]).ok).toBe(false);
	});

	test('ids are UUIDs and counters are safe integers', () => {
		expect(refused([event(tick, { id: '1' })])).toEqual(['0.id: event-regex']);
		for (const counter of [-1, 1.5, 2 ** 53, Number.NaN, '4']) expect(refused([event(tick, { counter })])).not.toEqual([]);
		expect(refused([event(tick, { device: 'a b' })])).toEqual(['0.device: event-regex']);
	});

	test('what the server counts on from a device’s highest counter is taken, and stays a safe integer', () => {
		expect(refused([event(tick, { counter: highestFromDevice })])).toEqual([]);
		expect(refused([event(tick, { counter: highestFromDevice + 1 })])).toEqual(['0.counter: event-max-value']);
		expect(checkEvents([event(tick, { counter: highestFromDevice + 1 })], highestFromServer).ok).toBe(true);
		expect(highestFromServer).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
	});

	test('at least one at a time, and at most two hundred', () => {
		expect(refused([])).toEqual([': event-min-length']);
		expect(refused(Array.from({ length: 200 }, () => event(tick)))).toEqual([]);
		expect(refused(Array.from({ length: 201 }, () => event(tick)))).toEqual([': event-max-length']);
	});

	test('whatever comes, it answers and never throws', () => {
		fc.assert(fc.property(fc.anything(), (value) => void checkEvents(value)));
		fc.assert(fc.property(fc.array(fc.record({ id: fc.uuid(), device: fc.string(), counter: fc.double(), body: fc.object() })), (value) => void checkEvents(value)));
	});
});
