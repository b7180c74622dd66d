import { expect, test } from 'vitest';
import type { EventBody } from '../../src/lib/class/event.ts';
import { checkEvents } from '../../src/lib/class/event-check.ts';
import { answerOf, batch, makeEvent, merge, nextCounter, pause, uuidFrom, withoutKept, type Unsent } from '../../src/lib/ui/unsent-queue.ts';

const tick: EventBody = { kind: 'tick', step: 'wash-cloth' };
const id = (n: number) => uuidFrom(new Uint8Array(16).fill(n));
const said = (n: number, more: Partial<Unsent> = {}): Unsent => ({ ...makeEvent(tick, id(n), 'phone', n, 1000 * n), ...more });

test('the pause doubles from one second and never passes a minute, with a quarter of spread', () => {
	expect([1, 2, 3, 6].map((failures) => pause(failures, 0.5))).toEqual([1000, 2000, 4000, 32_000]);
	expect(pause(40, 0.5)).toBe(60_000);
	expect([pause(1, 0), pause(1, 1)]).toEqual([750, 1250]);
});

test('the next counter is above what this device said and above what the server sent', () => {
	expect(nextCounter(7, 3)).toBe(8);
	expect(nextCounter(7, 30)).toBe(31);
});

test('a batch goes oldest first, without what the server refused, and the server takes it', () => {
	const sent = batch([said(3), said(1), said(2, { refused: true })]);
	expect(sent.map(({ counter }) => counter)).toEqual([1, 3]);
	expect(checkEvents(sent)).toMatchObject({ ok: true });
});

test('a batch keeps within its number and its size, but always takes one', () => {
	const many = Array.from({ length: 50 }, (_, n) => said(n + 1));
	expect(batch(many, 20)).toHaveLength(20);
	expect(batch(many, 100, 1500).length).toBeLessThan(5);
	expect(batch(many, 100, 1)).toHaveLength(1);
});

test('what was kept is gone, and an id that was never here changes nothing', () => {
	expect(withoutKept([said(1), said(2)], [id(1), id(9)])).toEqual([said(2)]);
	expect(withoutKept([said(1)], [])).toEqual([said(1)]);
});

test('two lists make one, each thing once, in order, and neither list is changed', () => {
	const mine = [said(2), said(1)];
	expect(merge(mine, [said(2), said(3)]).map(({ counter }) => counter)).toEqual([1, 2, 3]);
	expect(mine.map(({ counter }) => counter)).toEqual([2, 1]);
});

test('only a refusal of the thing itself ends its sending', () => {
	expect([200, 400, 422].map(answerOf)).toEqual(['kept', 'refused', 'refused']);
	expect([401, 403, 404].map(answerOf)).toEqual(['signed-out', 'signed-out', 'signed-out']);
	expect([408, 413, 429, 500, 502, 503].map(answerOf)).toEqual(Array(6).fill('away'));
});

test('an id from random bytes is a version 4 UUID', () => {
	expect(uuidFrom(new Uint8Array(16))).toBe('00000000-0000-4000-8000-000000000000');
	expect(uuidFrom(new Uint8Array(16).fill(255))).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff');
});
