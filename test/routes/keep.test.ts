// Both ways into a learner's log, through the routes themselves: her device's, and a form without the script.
import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { defaultGate } from '../../src/lib/class/gate.ts';
import { highestFromDevice } from '../../src/lib/class/event-check.ts';
import { foldSkirt } from '../../src/lib/class/skirt-state.ts';
import { useDatabase } from '../../src/lib/server/database.ts';
import { readEvents } from '../../src/lib/server/log.ts';
import { openSession } from '../../src/lib/server/session.ts';
import { issueSentence } from '../../src/lib/ui/wording/issue.ts';
import type { Issue } from '../../src/lib/drafting/result.ts';
import { log } from '../../src/routes/skirt/[class]/log/hatch.server.ts';
import { actions as gate } from '../../src/routes/skirt/[class]/gate/+page.server.ts';
import { actions as make } from '../../src/routes/skirt/[class]/make/[part]/+page.server.ts';
import { openPort, type Port } from '../server/hatch-port.ts';
import { makeLearner, makeRoom } from '../server/scene.ts';
import { onEachServer } from '../server/test-database.ts';

onEachServer('what a learner says', (database) => {
	let port: Port;
	beforeAll(async () => {
		useDatabase(database());
		port = await openPort(log);
	});
	afterAll(() => port.close());

	async function wen() {
		const sql = database();
		const room = await makeRoom(sql);
		const { asker, memberId, sessionId } = await makeLearner(sql, room, 'Wen');
		const opened = (await openSession(sql, sessionId, room.classId))!;
		const locals = { sql, asker: opened.asker, membership: opened.membership };
		const url = new URL(`http://localhost/skirt/${room.classId}/make/prepare?whole`);
		const event = (body: BodyInit) =>
			({ locals, url, params: { class: room.classId, part: 'prepare' }, request: new Request(url, { method: 'POST', body }) }) as never;
		return {
			async device(body: object, counter = 1): Promise<{ status: number; issues?: readonly (Issue & { says: string })[] }> {
				const events = [{ id: randomUUID(), device: 'phone', counter, body }];
				const { status, text } = await port.ask('POST', `/skirt/${room.classId}/log`, { session: sessionId, body: JSON.stringify({ events }) });
				return { status, ...JSON.parse(text) };
			},
			async form(action: (event: never) => unknown, fields: readonly (readonly [string, string])[]) {
				const form = new FormData();
				for (const [name, value] of fields) form.append(name, value);
				return (await action(event(form))) as { status?: number; data?: { issues: readonly Issue[] } };
			},
			state: async () => foldSkirt(await readEvents(sql, asker, memberId))
		};
	}
	const whole = defaultGate.map(({ id }) => id);

	test('a step that the lesson does not have is refused in a sentence, from her device and from a form', async () => {
		const { device, form, state } = await wen();
		for (const kind of ['tick', 'untick', 'help']) {
			const answer = await device({ kind, step: 'no-such-step' });
			expect([answer.status, answer.issues?.map(({ code, path }) => `${path}: ${code}`)]).toEqual([400, ['0.body.step: no-such-step']]);
			expect(answer.issues?.[0]?.says).toMatch(/no such step/);
		}
		for (const action of [make.tick, make.untick, make.help]) {
			const answer = await form(action as never, [['step', 'no-such-step']]);
			expect([answer.status, answer.data?.issues.map(({ code, path }) => `${path}: ${code}`)]).toEqual([400, ['step: no-such-step']]);
		}
		expect((await device({ kind: 'tick', step: 'wash-cloth' })).status).toBe(200);
		await form(make.help as never, [['step', 'wash-cloth']]);
		expect(await state()).toMatchObject({ lastTicked: 'wash-cloth', help: { step: 'wash-cloth' } });
	});

	test('asking without the whole gate, or without a second person, is refused in sentences, from her device and from a form', async () => {
		const { device, form, state } = await wen();
		const bare = await device({ kind: 'ask', gate: [], second: '' });
		expect([bare.status, bare.issues?.map(({ code }) => code)]).toEqual([400, [...whole.map(() => 'gate-unread'), 'second-missing']]);
		for (const { says } of bare.issues!) expect(says).toMatch(/^[A-Z].+\.$/);
		expect((await device({ kind: 'ask', gate: whole, second: '\u200b ' })).issues?.map(({ code }) => code)).toEqual(['second-missing']);

		const left = await form(gate.ask as never, [...whole.slice(1).map((id) => ['gate', id] as const), ['second', ' ']]);
		expect([left.status, left.data?.issues.map(({ path, code }) => `${path}: ${code}`)]).toEqual([400, [`gate.${whole[0]}: gate-unread`, 'second: second-missing']]);
		for (const issue of left.data!.issues) expect(issueSentence(issue, 'cm')).toMatch(/^[A-Z].+\.$/);
		expect((await state()).ask).toBeNull();

		expect((await device({ kind: 'ask', gate: whole, second: 'Bea' })).status).toBe(200);
		expect((await state()).ask).toMatchObject({ gate: whole, second: 'Bea' });
	});

	test('after the highest counter that a device may say, her forms still tick', async () => {
		const { device, form, state } = await wen();
		expect((await device({ kind: 'help' }, highestFromDevice)).status).toBe(200);
		expect(await form(make.tick as never, [['step', 'wash-cloth']])).toEqual({ said: true });
		expect((await state()).lastTicked).toBe('wash-cloth');
	});
});
