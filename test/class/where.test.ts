import { describe, expect, test } from 'vitest';
import { whereIs, type StageList } from '../../src/lib/class/where.ts';

const stages: StageList = [
	{ id: 'prepare', title: 'Prepare', steps: [{ id: 'wash', title: 'Wash' }, { id: 'press', title: 'Press' }] },
	{ id: 'cut', title: 'Cut', steps: [{ id: 'fold', title: 'Fold' }, { id: 'cut-out', title: 'Cut out' }] }
];
/** Ticked in this order. */
const after = (...steps: string[]) =>
	whereIs(stages, { ticked: Object.fromEntries(steps.map((step, index) => [step, index])), lastTicked: steps.at(-1) ?? null });

describe('where a learner is', () => {
	test('at the start before the first tick', () => {
		expect(after()).toMatchObject({ next: { stage: 'prepare', step: 'wash' }, last: null, finished: false });
	});

	test('at the first open step after the one she ticked last', () => {
		expect(after('wash', 'press')).toMatchObject({ next: { stage: 'cut', step: 'fold' }, last: { stage: 'prepare', step: 'press' } });
		expect(after('press', 'wash').next).toEqual({ stage: 'cut', step: 'fold' });
	});

	test('a step left out is gone back to when nothing is open after it', () => {
		expect(after('press', 'fold').next).toEqual({ stage: 'cut', step: 'cut-out' });
		expect(after('press', 'fold', 'cut-out').next).toEqual({ stage: 'prepare', step: 'wash' });
	});

	test('finished when every step is ticked, however they were ordered', () => {
		expect(after('cut-out', 'fold', 'press', 'wash')).toMatchObject({ next: null, finished: true });
		expect(whereIs([], { ticked: {}, lastTicked: null }).finished).toBe(false);
	});

	test('each stage counts its own steps, and a step that has left the lesson counts for none', () => {
		const where = after('wash', 'fold', 'long-gone');
		expect(where.stages.map(({ id, ticked, steps }) => [id, ticked, steps])).toEqual([['prepare', 1, 2], ['cut', 1, 2]]);
		expect(where.next).toEqual({ stage: 'prepare', step: 'press' });
	});
});
