// Answers to a sum that is worked by hand: arithmetic on the written numbers.
import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { workingOf, workingsOf } from '../../src/lib/lesson/flared-working.ts';
import { slipOf } from '../../src/lib/lesson/slip.ts';
import { answer } from '../../src/lib/ui/lesson/answer.ts';
import { slipSays } from '../../src/lib/ui/wording/slip.ts';
import { halfCircle, nhanesBody, seeded } from '../drafting/bodies.ts';

function draftOf(waist: number, skirt: Draft['skirt'] = halfCircle): Draft {
	const draft = draftSkirt({ waist, hip: 990, waistToHip: 200 }, skirt);
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
// 75 ÷ 3.14 = 23.89; 23.89 − 1.5 = 22.39.
const cut = workingOf('cutWaistRadius', draftOf(740), 'cm')!;
const radius = workingOf('waistRadius', draftOf(740), 'cm')!;
const band = workingOf('bandCutLength', draftOf(740), 'cm')!;
const deep = workingOf('bandCutDepth', draftOf(740), 'cm')!;

test.each([
	['the sum as written', cut, 223.9, 'right', undefined],
	['the mark on the tape', cut, 224, 'right', undefined],
	['half a mark more', cut, 224.3, 'right', undefined],
	['the allowance added: 23.89 + 1.5 = 25.39', cut, 253.9, 'added', 'allowance'],
	['the allowance left out', cut, 238.9, 'left-out', 'allowance'],
	['multiplied by 3.14: 75 × 3.14 = 235.5', radius, 2355, 'multiplied', '3.14'],
	['the waist seam itself', radius, 750, 'left-out', '3.14'],
	['a point too far to the right', radius, 2389, 'tens', undefined],
	['an answer in inches: 22.39 ÷ 2.54 = 8.81', cut, 88.1, 'other-unit', undefined],
	['half of it', radius, 119.4, 'half', undefined],
	['the underlap left out: 75 + 1.5 + 1.5 = 78', band, 780, 'left-out', 'underlap'],
	['one end only: 75 + 3 + 1.5 = 79.5', band, 795, 'counted-once', 'end allowance'],
	['the underlap taken off: 75 − 3 + 1.5 + 1.5 = 75', band, 750, 'taken-off', 'underlap'],
	['a band of one layer: 4 + 1.5 = 5.5', deep, 55, 'left-out', '2'],
	['something else', cut, 100, 'other', undefined]
])('%s', (_, working, mm, code, named) => {
	expect(slipOf(working, mm, 'cm')).toEqual(named === undefined ? { code } : { code, with: named });
});

test('On any half circle the written result and the mark are right, in both units, and the allowance added never is', () => {
	const random = seeded(11);
	for (let i = 0; i < 300; i++) {
		const draft = draftOf(Math.round(nhanesBody(random).waist));
		for (const unit of ['cm', 'in'] as const) {
			for (const working of workingsOf(draft, unit)) {
				if (working.steps.length === 0 || working.proof) continue;
				const per = unit === 'in' ? 25.4 : 10;
				expect(slipOf(working, Number(working.steps.at(-1)!.result) * per, unit).code).toBe('right');
				expect(slipOf(working, working.mm, unit).code).toBe('right');
			}
			const { steps } = workingOf('cutWaistRadius', draft, unit)!;
			const [from, , allowance] = steps[0]!.operands;
			const added = (Number(from!.written) + Number(allowance!.written)) * (unit === 'in' ? 25.4 : 10);
			expect(slipOf(workingOf('cutWaistRadius', draft, unit)!, added, unit)).toEqual({ code: 'added', with: 'allowance' });
		}
	}
});

test('What is said names the slip, and keeps to plain words', () => {
	expect(answer('22,4', cut, 'cm')).toBe('Yes. The sum comes to 22.39, and on the tape that is 22.4 cm.');
	expect(answer('8 13/16 in', cut, 'cm')).toContain('Yes.');
	expect(answer('25.4', cut, 'cm')).toBe('Here the allowance looks added. The sum takes it off, so the answer is the smaller one.');
	expect(answer('', cut, 'cm')).toBe('Nothing is written here yet. Write a length, such as 72.5.');
	expect(answer('about 22', cut, 'cm')).toContain('isn’t read as a length');
	for (const says of Object.values(slipSays)) {
		for (const unit of ['cm', 'in'] as const) {
			const sentence = says('allowance', cut, unit);
			expect(sentence).toMatch(/^[A-Z].*\.$/);
			expect(sentence).not.toMatch(/undefined|NaN|\b(wrong|mistake|failed|simply|just|behind|normal)\b/i);
		}
	}
});
