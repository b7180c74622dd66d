// The one thing her page puts first, for each place where she may stand.
import { expect, test } from 'vitest';
import type { ReviewState } from '../../src/lib/class/review.ts';
import type { Where } from '../../src/lib/class/where.ts';
import { nextThing } from '../../src/routes/skirt/[class]/next-thing.ts';

const place = (step: string) => ({ stage: 'zip', step });
const where = (next: string | null, last: string | null = 'press'): Where => ({ next: next === null ? null : place(next), last: last === null ? null : place(last), stages: [], finished: next === null });
const thing = (review: ReviewState, rest: Partial<Parameters<typeof nextThing>[0]> = {}) =>
	nextThing({ drafted: true, review, returned: null, where: where('sew'), stepTitle: 'Sew the seam', atCutting: false, cut: false, ...rest });

test('before the cutting step she goes on with the step she is at, asked or not', () => {
	for (const review of ['not-asked', 'asked', 'cleared'] as const) expect(thing(review)).toMatchObject({ title: 'Sew the seam', button: 'Go on', to: '/make/zip?step=sew' });
});

test('at the cutting step asking comes first, then waiting', () => {
	expect(thing('not-asked', { atCutting: true })).toMatchObject({ to: '/gate', button: 'Ready to cut?' });
	expect(thing('asked', { atCutting: true }).title).toBe('Waiting for your teacher');
});

test('a number that changes before she cuts sends her to ask again, and after it leaves her sewing', () => {
	for (const review of ['void', 'differs'] as const) {
		expect(thing(review).title).toBe('Ask again before you cut');
		expect(thing(review, { cut: true })).toMatchObject({ title: 'Sew the seam', button: 'Go on' });
		expect(thing(review, { cut: true, where: where(null) }).title).toBe('Every step is ticked');
	}
});
