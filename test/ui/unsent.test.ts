import { expect, test } from 'vitest';
import type { EventBody, NewEvent } from '../../src/lib/class/event.ts';
import { createUnsent } from '../../src/lib/ui/unsent.svelte.ts';

const tick = (step: string): EventBody => ({ kind: 'tick', step });

/** A server that keeps what it is sent, unless told to answer otherwise. */
function server() {
	const log = new Map<string, NewEvent>();
	const calls: number[] = [];
	const answers: ((events: readonly NewEvent[]) => number)[] = [];
	const send = async (events: readonly NewEvent[]) => {
		calls.push(events.length);
		const status = answers.shift()?.(events) ?? 200;
		if (status === 0) throw new TypeError('no network');
		if (status !== 200) return { status, kept: [] };
		for (const event of events) log.set(event.id, event);
		return { status, kept: events.map(({ id }) => id) };
	};
	return { log, calls, answers, send };
}
/** Answers the same while its `until` is false. */
const always = (status: number) => Array.from({ length: 50 }, () => () => status);

test('what is said shows at once, is sent, and still shows when it is kept', async () => {
	const { log, send } = server();
	const unsent = createUnsent({ classId: 'c', memberId: 'm', seen: () => 0, send });
	await unsent.add(tick('wash-cloth'));
	expect(unsent.said.map(({ body }) => body)).toEqual([tick('wash-cloth')]);
	await expect.poll(() => unsent.saved.waiting).toBe(0);
	expect(log.size).toBe(1);
	expect(unsent.said).toHaveLength(1);
});

test('counters go up, and above what the server has shown', async () => {
	const { log, send } = server();
	const unsent = createUnsent({ classId: 'c', memberId: 'm', seen: () => 41, send });
	await unsent.add(tick('wash-cloth'));
	await unsent.add(tick('press-cloth'));
	await expect.poll(() => unsent.saved.waiting).toBe(0);
	const [a, b] = [...log.values()];
	expect([a!.counter, b!.counter]).toEqual([42, 43]);
	expect(a!.device).toBe(b!.device);
	expect(a!.id).not.toBe(b!.id);
});

test('without a network everything waits, and one try sends it all', async () => {
	const { log, calls, answers, send } = server();
	answers.push(...always(0));
	const unsent = createUnsent({ classId: 'c', memberId: 'm', seen: () => 0, send });
	for (const step of ['a', 'b', 'c']) await unsent.add(tick(step));
	await unsent.flush();
	expect(unsent.saved).toMatchObject({ waiting: 3, trouble: 'none' });
	answers.length = 0;
	calls.length = 0;
	await unsent.flush();
	expect(unsent.saved.waiting).toBe(0);
	expect(log.size).toBe(3);
	expect(calls).toEqual([3]);
});

test('one thing the server refuses does not hold up the rest, and is kept and owned up to', async () => {
	const { log, answers, send } = server();
	answers.push(...always(0));
	const unsent = createUnsent({ classId: 'c', memberId: 'm', seen: () => 0, send });
	for (const step of ['a', 'bad', 'c']) await unsent.add(tick(step));
	await unsent.flush();
	const picky = (events: readonly NewEvent[]) => (events.some(({ body }) => body.kind === 'tick' && body.step === 'bad') ? 400 : 200);
	answers.splice(0, 50, ...Array.from({ length: 50 }, () => picky));
	await unsent.flush();
	expect([...log.values()].map(({ body }) => body)).toEqual([tick('a'), tick('c')]);
	expect(unsent.saved).toMatchObject({ waiting: 1, trouble: 'refused' });
});

test('signed out, nothing is lost, and it goes after signing in again', async () => {
	const { log, answers, send } = server();
	answers.push(...always(401));
	const unsent = createUnsent({ classId: 'c', memberId: 'm', seen: () => 0, send });
	await unsent.add(tick('a'));
	await unsent.flush();
	await expect.poll(() => unsent.saved.trouble).toBe('signed-out');
	expect(unsent.saved.waiting).toBe(1);
	answers.length = 0;
	await unsent.flush();
	expect(unsent.saved).toMatchObject({ waiting: 0, trouble: 'none' });
	expect(log.size).toBe(1);
});

test('an answer that keeps nothing is no answer', async () => {
	const unsent = createUnsent({ classId: 'c', memberId: 'm', seen: () => 0, send: async () => ({ status: 200, kept: [] }) });
	await unsent.add(tick('a'));
	await unsent.flush();
	expect(unsent.saved.waiting).toBe(1);
});

test('where the browser keeps nothing, the page says so', async () => {
	// There is no IndexedDB here.
	const { send } = server();
	const unsent = createUnsent({ classId: 'c', memberId: 'm', seen: () => 0, send });
	await unsent.add(tick('a'));
	expect(unsent.saved.kept).toBe(false);
});
