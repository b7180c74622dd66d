import { randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import { highestFromDevice } from '../../src/lib/class/event-check.ts';
import { foldSkirt } from '../../src/lib/class/skirt-state.ts';
import { appendEvents, readClassLogs, readEvents } from '../../src/lib/server/log.ts';
import { remove, setRole } from '../../src/lib/server/member.ts';
import { openSkirt, readOpenings } from '../../src/lib/server/opening.ts';
import { ask, codes, event, expectNotFound, makeLearner, makeRoom, makeTeacher, reading, tick, value } from './scene.ts';
import { onEachServer } from './test-database.ts';

onEachServer('the log', (database) => {
	test('what a learner said is read back as she said it, in the order it came', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		const said = [reading(2, 724.9999999), tick(1), event(3, { kind: 'choice', choices: { bandDepth: 40 } }), ask(highestFromDevice)];
		expect(value(await appendEvents(sql, wen.asker, wen.memberId, said)).kept.toSorted()).toEqual(said.map(({ id }) => id).toSorted());
		const kept = await readEvents(sql, wen.asker, wen.memberId);
		expect(kept.map(({ by: _, at: __, ...one }) => one)).toEqual(said);
		expect(new Set(kept.map(({ by }) => by))).toEqual(new Set([wen.person.id]));
	});

	test('a reply that was lost: sending again is harmless, and says kept again', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		const [one, two] = [tick(1), tick(2, 'press-cloth')];
		await appendEvents(sql, wen.asker, wen.memberId, [one]);
		expect(value(await appendEvents(sql, wen.asker, wen.memberId, [one, two, one])).kept.toSorted()).toEqual([one.id, two.id].toSorted());
		expect(await readEvents(sql, wen.asker, wen.memberId)).toHaveLength(2);
	});

	test('after the highest counter that a device may say, her forms and her teacher’s answer are still kept', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		value(await appendEvents(sql, wen.asker, wen.memberId, [event(highestFromDevice, { kind: 'help' })]));
		expect(codes(await appendEvents(sql, wen.asker, wen.memberId, [tick(highestFromDevice + 1)]))).toEqual(['event-max-value']);
		value(await appendEvents(sql, wen.asker, wen.memberId, [tick(highestFromDevice + 1)], { counted: 'here' }));
		value(await appendEvents(sql, room.teacher, wen.memberId, [event(highestFromDevice + 2, { kind: 'helped' })], { counted: 'here' }));
		const state = foldSkirt(await readEvents(sql, wen.asker, wen.memberId));
		expect([state.lastTicked, state.help, state.counter]).toEqual(['wash-cloth', null, highestFromDevice + 2]);
	});

	test('the same events from ten senders at once are there exactly once', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		const said = Array.from({ length: 50 }, (_, index) => tick(index + 1, `step-${index}`));
		const send = async (): Promise<void> => {
			// Each goes on until everything it sent has been called kept, as a device does.
			for (let left = said; left.length > 0;) {
				const { kept } = value(await appendEvents(sql, wen.asker, wen.memberId, left.toSorted(() => Math.random() - 0.5)));
				left = left.filter(({ id }) => !kept.includes(id));
			}
		};
		await Promise.all(Array.from({ length: 10 }, send));
		const kept = await readEvents(sql, wen.asker, wen.memberId);
		expect(kept.map(({ id }) => id).toSorted()).toEqual(said.map(({ id }) => id).toSorted());
		expect(Object.keys(foldSkirt(kept).ticked)).toHaveLength(50);
	});

	test('an id that another learner’s event has is not called kept, and hers stays as it was', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea')];
		const one = tick(1);
		await appendEvents(sql, wen.asker, wen.memberId, [one]);
		expect(value(await appendEvents(sql, bea.asker, bea.memberId, [{ ...one, body: { kind: 'untick', step: 'wash-cloth' } }])).kept).toEqual([]);
		expect((await readEvents(sql, wen.asker, wen.memberId)).map(({ body }) => body.kind)).toEqual(['tick']);
	});

	test('all or none: one that is refused keeps the others out too', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		for (const wrong of [{ ...tick(2), id: 'no' }, { ...tick(2), counter: 2 ** 60 }, { ...tick(2), body: { kind: 'tick', step: 'a\0b' } }]) {
			expect((await appendEvents(sql, wen.asker, wen.memberId, [tick(1), wrong])).ok).toBe(false);
		}
		expect(await readEvents(sql, wen.asker, wen.memberId)).toEqual([]);
	});

	test('nobody clears or returns through the log, and a forged sender is refused', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		const clear = { ...tick(1), body: { kind: 'clear', digest: 'x', engine: '1', figures: {} } };
		const back = { ...tick(1), body: { kind: 'return', action: 'Again.' } };
		for (const asker of [wen.asker, room.teacher]) {
			for (const forged of [clear, back]) expect(codes(await appendEvents(sql, asker, wen.memberId, [forged]))).not.toEqual([]);
		}
		expect(codes(await appendEvents(sql, wen.asker, wen.memberId, [{ ...tick(1), by: room.teacher.person.id }]))).not.toEqual([]);
		expect(await readEvents(sql, wen.asker, wen.memberId)).toEqual([]);
	});

	test('no learner reads or writes another’s: not a classmate, a helper, a teacher, or who was removed', async () => {
		const sql = database();
		const [room, other] = [await makeRoom(sql), await makeRoom(sql)];
		const wen = await makeLearner(sql, room, 'Wen');
		const [bea, jory, gone, door] = [
			await makeLearner(sql, room, 'Bea'), await makeLearner(sql, room, 'Jory'), await makeLearner(sql, room, 'Ines'), await makeLearner(sql, room, 'Pia', false)
		];
		const stranger = await makeLearner(sql, other, 'Noor');
		await setRole(sql, room.teacher, room.classId, jory.memberId, 'helper');
		await remove(sql, room.teacher, room.classId, gone.memberId);
		await appendEvents(sql, wen.asker, wen.memberId, [reading(1, 725)]);
		for (const { asker } of [bea, jory, gone, door, stranger]) {
			await expectNotFound(readEvents(sql, asker, wen.memberId));
			await expectNotFound(appendEvents(sql, asker, wen.memberId, [tick(2)]));
			await expectNotFound(openSkirt(sql, asker, room.classId, wen.memberId, 'figures'));
			await expectNotFound(readOpenings(sql, asker, wen.memberId));
		}
		for (const { asker } of [bea, gone, door, stranger]) await expectNotFound(readClassLogs(sql, asker, room.classId));
		for (const asker of [room.teacher, other.teacher, await makeTeacher(sql)]) {
			await expectNotFound(readEvents(sql, asker, wen.memberId));
			await expectNotFound(appendEvents(sql, asker, wen.memberId, [tick(2)]));
		}
		await expectNotFound(openSkirt(sql, other.teacher, room.classId, wen.memberId, 'figures'));
		await expectNotFound(openSkirt(sql, other.teacher, other.classId, wen.memberId, 'figures'));
		await expectNotFound(appendEvents(sql, gone.asker, gone.memberId, [tick(2)]));
		expect(await readEvents(sql, wen.asker, wen.memberId)).toHaveLength(1);
		expect(await readOpenings(sql, wen.asker, wen.memberId)).toEqual([]);
	});

	test('a teacher or a helper answers a hand in her own class, and says nothing else there', async () => {
		const sql = database();
		const [room, other] = [await makeRoom(sql), await makeRoom(sql)];
		const [wen, jory] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Jory')];
		await setRole(sql, room.teacher, room.classId, jory.memberId, 'helper');
		await appendEvents(sql, wen.asker, wen.memberId, [event(1, { kind: 'help', step: 'wash-cloth' })]);
		const helped = (counter: number) => event(counter, { kind: 'helped' }, 'desk');
		await expectNotFound(appendEvents(sql, other.teacher, wen.memberId, [helped(2)]));
		await expectNotFound(appendEvents(sql, room.teacher, wen.memberId, [helped(2), tick(3)]));
		value(await appendEvents(sql, jory.asker, wen.memberId, [helped(2)]));
		value(await appendEvents(sql, room.teacher, wen.memberId, [helped(3)]));
		const state = foldSkirt(await readEvents(sql, wen.asker, wen.memberId));
		expect([state.help, state.counter]).toEqual([null, 3]);
	});

	test('an event is never changed, whoever tries', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		await appendEvents(sql, wen.asker, wen.memberId, [tick(1)]);
		await expect(sql`update events set counter = 9 where member_id = ${wen.memberId}`).rejects.toThrow('events are never changed');
	});

	test('an event is never removed, alone or with all the others, and neither with the learner it is about', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		await appendEvents(sql, wen.asker, wen.memberId, [tick(1)]);
		await expect(sql`delete from events where member_id = ${wen.memberId}`).rejects.toThrow('events are never removed');
		await expect(sql`truncate events`).rejects.toThrow('events are never removed');
		await expect(sql`truncate members cascade`).rejects.toThrow('events are never removed');
		await expect(sql`delete from members where id = ${wen.memberId}`).rejects.toThrow('violates foreign key');
		expect(await readEvents(sql, wen.asker, wen.memberId)).toHaveLength(1);
	});

	test('erasing takes one learner’s events, only in the transaction that says so, and never empties the log', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea')];
		for (const { asker, memberId } of [wen, bea]) await appendEvents(sql, asker, memberId, [tick(1)]);
		await sql.begin(async (sql) => {
			await sql`set local skirtwright.erasing = 'on'`;
			await sql`delete from events where member_id = ${wen.memberId}`;
		});
		await expect(sql.begin(async (sql) => {
			await sql`set local skirtwright.erasing = 'on'`;
			await sql`truncate events`;
		})).rejects.toThrow('events are never removed');
		await expect(sql`delete from events where member_id = ${bea.memberId}`).rejects.toThrow('events are never removed');
		expect(await readEvents(sql, wen.asker, wen.memberId)).toEqual([]);
		expect(await readEvents(sql, bea.asker, bea.memberId)).toHaveLength(1);
	});

	test('the class’s logs are its admitted learners’, for its teacher and helpers', async () => {
		const sql = database();
		const [room, other] = [await makeRoom(sql), await makeRoom(sql)];
		const [wen, bea] = [await makeLearner(sql, room, 'Wen'), await makeLearner(sql, room, 'Bea')];
		await makeLearner(sql, room, 'Pia', false);
		const noor = await makeLearner(sql, other, 'Noor');
		await appendEvents(sql, wen.asker, wen.memberId, [tick(1)]);
		await appendEvents(sql, noor.asker, noor.memberId, [tick(1)]);
		const logs = await readClassLogs(sql, room.teacher, room.classId);
		expect(logs.map(({ memberId, name, events }) => [memberId, name, events.length])).toEqual([[wen.memberId, 'Wen', 1], [bea.memberId, 'Bea', 0]]);
	});

	test('a helper who sews is among them, and one who only helps is not', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const [jory, ines] = [await makeLearner(sql, room, 'Jory'), await makeLearner(sql, room, 'Ines')];
		for (const { memberId } of [jory, ines]) await setRole(sql, room.teacher, room.classId, memberId, 'helper');
		await appendEvents(sql, jory.asker, jory.memberId, [tick(1)]);
		const logs = await readClassLogs(sql, room.teacher, room.classId);
		expect(logs.map(({ name, role, events }) => [name, role, events.length])).toEqual([['Jory', 'helper', 1]]);
	});

	test('a member that nobody has is not found, whatever it is called', async () => {
		const sql = database();
		const wen = await makeLearner(sql, await makeRoom(sql), 'Wen');
		for (const id of ['', '\0', randomUUID(), 'x'.repeat(5000), "' or 1=1"]) {
			await expectNotFound(readEvents(sql, wen.asker, id));
			await expectNotFound(appendEvents(sql, wen.asker, id, [tick(1)]));
			await expectNotFound(readOpenings(sql, wen.asker, id));
		}
	});
});

onEachServer('opening figures', (database) => {
	test('each opening is written down, and the learner sees who and when, latest first', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const wen = await makeLearner(sql, room, 'Wen');
		await appendEvents(sql, wen.asker, wen.memberId, [reading(1, 725)]);
		const clock = async (): Promise<number> => (await sql`select clock_timestamp() as now`)[0]!.now.getTime();
		const before = await clock();
		const opened = await openSkirt(sql, room.teacher, room.classId, wen.memberId, 'figures');
		expect([opened.name, opened.events.length]).toEqual(['Wen', 1]);
		await openSkirt(sql, room.teacher, room.classId, wen.memberId, 'paper');
		const openings = await readOpenings(sql, wen.asker, wen.memberId);
		expect(openings.map(({ by, what }) => [by, what])).toEqual([['Hanne', 'paper'], ['Hanne', 'figures']]);
		// Told by the database's own clock, between one look at it and the next.
		const times = [before, openings[1]!.at, openings[0]!.at, await clock()];
		expect(times).toEqual(times.toSorted((a, b) => a - b));
	});

	test('an opening that is refused leaves no trace', async () => {
		const sql = database();
		const [room, other] = [await makeRoom(sql), await makeRoom(sql)];
		const wen = await makeLearner(sql, room, 'Wen');
		await expectNotFound(openSkirt(sql, other.teacher, room.classId, wen.memberId, 'figures'));
		await expectNotFound(openSkirt(sql, room.teacher, room.classId, '\0', 'figures'));
		expect(await readOpenings(sql, room.teacher, wen.memberId)).toEqual([]);
	});
});
