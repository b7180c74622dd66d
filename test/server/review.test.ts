import { expect, test } from 'vitest';
import type { LoggedEvent } from '../../src/lib/class/event.ts';
import { reviewState, type Now } from '../../src/lib/class/review.ts';
import { foldSkirt } from '../../src/lib/class/skirt-state.ts';
import { canonicalJson, digest } from '../../src/lib/server/digest.ts';
import { appendEvents, readEvents } from '../../src/lib/server/log.ts';
import { setRole } from '../../src/lib/server/member.ts';
import { decide, type Seen } from '../../src/lib/server/review.ts';
import { ask, codes, expectNotFound, makeLearner, makeRoom, makeTeacher, reading, value, type Learner, type Room } from './scene.ts';
import { onEachServer } from './test-database.ts';

test('a digest depends on what is said, not on the order of its keys or on what is absent', () => {
	expect(canonicalJson({ b: [1, { d: null, c: 'x' }], a: undefined })).toBe('{"b":[1,{"c":"x","d":null}]}');
	expect(digest({ a: 1, b: 2 })).toBe(digest({ b: 2, a: 1 }));
	expect(digest({ a: 1 })).not.toBe(digest({ a: 1.0000001 }));
	// FIPS 180-4, SHA-256 of the two characters `{}`, worked out independently (`printf '{}' | sha256sum`).
	expect(digest({})).toBe('44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a');
});

/** A draft of the plainest kind: the radius of a half circle is the waist over π. */
function work(events: readonly LoggedEvent[]): Now | null {
	const waist = foldSkirt(events).readings.waist?.at(-1)?.mm;
	return waist === undefined ? null : { digest: digest({ waist }), engine: '1', figures: { waistRadius: Math.round((waist / Math.PI) * 10) }, rules: {} };
}

onEachServer('reviewing', (database) => {
	async function waiting(room: Room, name = 'Wen'): Promise<{ wen: Learner; seen: Seen }> {
		const sql = database();
		const wen = await makeLearner(sql, room, name);
		await appendEvents(sql, wen.asker, wen.memberId, [reading(1, 725), ask(2)]);
		const events = await readEvents(sql, wen.asker, wen.memberId);
		return { wen, seen: { classId: room.classId, memberId: wen.memberId, digest: work(events)!.digest, decidedAt: foldSkirt(events).decision!.at } };
	}

	test('a teacher clears, and both see what was cleared to a tenth of a millimetre', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const { wen, seen } = await waiting(room);
		value(await decide(sql, room.teacher, seen, { kind: 'clear', reason: ' Walked the line with her. ' }, work));
		const events = await readEvents(sql, wen.asker, wen.memberId);
		const state = foldSkirt(events);
		// 725 ÷ π = 230.77 mm.
		expect(state.cleared).toMatchObject({ by: room.teacher.person.id, engine: '1', figures: { waistRadius: 2308 }, reason: 'Walked the line with her.' });
		expect(reviewState(state, work(events))).toBe('cleared');
		await appendEvents(sql, wen.asker, wen.memberId, [reading(state.counter + 1, 731)]);
		const changed = await readEvents(sql, wen.asker, wen.memberId);
		expect(reviewState(foldSkirt(changed), work(changed))).toBe('void');
	});

	test('a teacher returns with one next action, which may not be empty or endless', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const { wen, seen } = await waiting(room);
		expect(codes(await decide(sql, room.teacher, seen, { kind: 'return', action: '  ' }, work))).toEqual(['action-missing']);
		expect(codes(await decide(sql, room.teacher, seen, { kind: 'return', action: 'x'.repeat(201) }, work))).toEqual(['sentence-long']);
		value(await decide(sql, room.teacher, seen, { kind: 'return', action: 'Measure the waist once more.' }, work));
		expect(foldSkirt(await readEvents(sql, wen.asker, wen.memberId)).decision).toMatchObject({ kind: 'return', action: 'Measure the waist once more.' });
	});

	test('a number that has just changed is not approved', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const { wen, seen } = await waiting(room);
		await appendEvents(sql, wen.asker, wen.memberId, [reading(3, 731)]);
		expect(codes(await decide(sql, room.teacher, seen, { kind: 'clear' }, work))).toEqual(['changed-meanwhile']);
		expect(foldSkirt(await readEvents(sql, wen.asker, wen.memberId)).cleared).toBeNull();
	});

	test('a reading that comes while the teacher’s answer is being kept waits, and then voids it', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const { wen, seen } = await waiting(room);
		let late: Promise<unknown> | undefined;
		let landed = false;
		value(await decide(sql, room.teacher, seen, { kind: 'clear' }, (events) => {
			late ??= appendEvents(sql, wen.asker, wen.memberId, [reading(9, 731)]).then(() => void (landed = true));
			return work(events);
		}));
		expect(landed).toBe(false);
		await late;
		const events = await readEvents(sql, wen.asker, wen.memberId);
		expect(events.map(({ body }) => body.kind)).toEqual(['reading', 'ask', 'clear', 'reading']);
		expect(reviewState(foldSkirt(events), work(events))).toBe('void');
	});

	test('two answers to one request: the first stands, the second is told', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const { wen, seen } = await waiting(room);
		const answers = await Promise.all([
			decide(sql, room.teacher, seen, { kind: 'clear' }, work),
			decide(sql, room.teacher, seen, { kind: 'return', action: 'Measure again.' }, work)
		]);
		expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
		expect(answers.flatMap(codes)).toEqual(['answered-meanwhile']);
		expect(await readEvents(sql, wen.asker, wen.memberId)).toHaveLength(3);
	});

	test('with nothing to draft from, a learner can’t be cleared, and can be returned', async () => {
		const sql = database();
		const room = await makeRoom(sql);
		const bea = await makeLearner(sql, room, 'Bea');
		const seen = { classId: room.classId, memberId: bea.memberId, digest: null, decidedAt: null };
		expect(codes(await decide(sql, room.teacher, seen, { kind: 'clear' }, work))).toEqual(['nothing-to-clear']);
		expect((await decide(sql, room.teacher, seen, { kind: 'return', action: 'Measure your waist first.' }, work)).ok).toBe(true);
	});

	test('only a teacher of the class decides, and only about its members', async () => {
		const sql = database();
		const [room, other] = [await makeRoom(sql), await makeRoom(sql)];
		const { wen, seen } = await waiting(room);
		const jory = await makeLearner(sql, room, 'Jory');
		await setRole(sql, room.teacher, room.classId, jory.memberId, 'helper');
		for (const asker of [wen.asker, jory.asker, other.teacher, await makeTeacher(sql)]) {
			await expectNotFound(decide(sql, asker, seen, { kind: 'clear' }, work));
		}
		await expectNotFound(decide(sql, other.teacher, { ...seen, classId: other.classId }, { kind: 'clear' }, work));
		await expectNotFound(decide(sql, room.teacher, { ...seen, memberId: '\0' }, { kind: 'clear' }, work));
		expect(foldSkirt(await readEvents(sql, wen.asker, wen.memberId)).cleared).toBeNull();
	});
});
