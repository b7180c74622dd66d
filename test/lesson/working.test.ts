import { expect, test } from 'vitest';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { formatLength, mmPer } from '../../src/lib/drafting/length.ts';
import { draftPleated } from '../../src/lib/drafting/pleated/draft.ts';
import type { AnyDraft } from '../../src/lib/drafting/style.ts';
import { draftTiered } from '../../src/lib/drafting/tiered/draft.ts';
import { workingNames, workingOf, workingsOf } from '../../src/lib/lesson/flared-working.ts';
import { anyWorkingsOf } from '../../src/lib/lesson/style-working.ts';
import type { Working } from '../../src/lib/lesson/working.ts';
import { anySkirt, anyStyle, halfCircle, nhanesBody, seeded } from '../drafting/bodies.ts';
import { press, pressWithProductsFirst } from './hand-calculator.ts';

const units = ['cm', 'in'] as const;
type Unit = (typeof units)[number];
/** Half a mark of the ruler: 1 mm, or 1/8 in. */
const half = { cm: 0.5, in: 25.4 / 16 } as const;

function draftOf(body: { waist: number; hip?: number; waistToHip?: number }, skirt: Draft['skirt']): Draft {
	const draft = draftSkirt(body, skirt);
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}
const sum = ({ steps }: Working): readonly string[] => steps.map(({ operands, result }) => `${operands.map(({ written }) => written).join(' ')} = ${result}`);
const sums = (name: string, draft: Draft, unit: Unit) => sum(workingOf(name, draft, unit)!);

/** Every drawn body and skirt that can be cut, readings as a tape gives them: whole millimetres or sixteenths, or a mean of two. */
const drafts: readonly Draft[] = (() => {
	const random = seeded(5);
	return Array.from({ length: 1500 }, (_, i) => {
		const drawn = nhanesBody(random);
		const grain = [0.5, 25.4 / 16, 25.4 / 32, 0][i % 4]!;
		const taped = (mm: number): number => (grain === 0 ? mm : Math.round(mm / grain) * grain);
		const body = { waist: taped(drawn.waist), hip: taped(drawn.hip), waistToHip: taped(drawn.waistToHip) };
		const wild = i % 2 ? anyStyle(random, body.waist) : anySkirt(random);
		// Three in four choose round lengths, as people do.
		const skirt = JSON.parse(JSON.stringify(wild), (key, value: unknown) => (typeof value === 'number' && !['share', 'panels'].includes(key) && !/^\d+$/.test(key) ? taped(value) : value)) as Draft['skirt'];
		return draftSkirt(i % 7 === 0 ? { waist: body.waist } : body, skirt);
	}).flatMap((draft) => (draft.ok ? [draft.value] : []));
})();

/** Halfway between two marks, either is right. */
const halfway = (mm: number, unit: Unit): boolean => Math.abs(((mm / half[unit] / 2) % 1) - 0.5) < 1e-5;

/** What any working must hold, whatever the style. */
function holds(working: Working, unit: Unit, results: ReadonlyMap<string, string>): void {
	const { steps, inputs, mm, finer, proof, meets, name } = working;
	const per = mmPer[unit];
	const fail = (why: string) => expect.soft(why, `${name}: ${sum(working).join('; ')}, ${mm / per} ${unit}`).toBe('');
	const before: string[] = [];
	for (const { operands, result } of steps) {
		const written = operands.map((operand) => operand.written);
		if (Number(press(written)) !== Number(result)) fail(`${written.join(' ')} comes to ${press(written)}`);
		const plain = !written.some((text) => text === '√' || text === 'cos⁻¹' || text === 'sin');
		if (plain && Math.abs(pressWithProductsFirst(written) - Number(press(written))) > 0.005001) fail('products first come to something else');
		for (const { written: text, is } of operands) {
			const input = inputs.find((one) => one.is === is);
			if (is !== undefined && input && input.written !== text) fail(`${is} is written ${text} and ${input.written}`);
		}
		before.push(result);
	}
	for (const input of inputs) {
		const former = results.get(input.name);
		if (input.worked && former !== undefined && former !== input.written) fail(`${input.is} came to ${former} and goes on as ${input.written}`);
		if (!input.worked && Math.abs(Number(input.written) * per - input.mm) > (unit === 'in' ? 0.0127 : 0.05) + 1e-6) fail(`${input.is} is kept as ${input.mm}`);
	}
	const last = before.at(-1);
	if (last === undefined) return;
	const off = proof ? Math.abs(Number(last) - Number(meets!.written)) * per : Math.abs(Number(last) * per - mm);
	if (finer === null && off > half[unit] + 1e-6) fail(`it is ${off} mm out and doesn’t say so`);
	if (finer === null && !proof && off > 1e-6 && !halfway(mm, unit) && formatLength(Number(last) * per, unit) !== formatLength(mm, unit)) fail('it leads to another mark and doesn’t say so');
	if (finer !== null && formatLength(Number(finer) * per, unit) !== formatLength(mm, unit)) fail(`the finer number ${finer} leads to another mark`);
}

test('Any flared skirt can be followed with a calculator from the readings to the ruler, in both units', () => {
	expect(drafts.length).toBeGreaterThan(1000);
	const met = new Set<string>();
	for (const draft of drafts) {
		for (const unit of units) {
			const workings = workingsOf(draft, unit);
			const results = new Map(workings.flatMap(({ name, steps, proof }) => (steps.length > 0 && !proof ? [[name, steps.at(-1)!.result] as const] : [])));
			for (const working of workings) {
				holds(working, unit, results);
				met.add(working.name);
				expect(working.formula).not.toMatch(/undefined|NaN|^$/);
			}
			// What goes on as a result has a row to come from.
			for (const input of workings.flatMap(({ inputs }) => inputs)) if (input.worked) expect(results.get(input.name)).toBe(input.written);
		}
	}
	expect([...met].sort()).toEqual([...workingNames].sort());
});

test('The finer number is needed seldom where readings and choices are whole millimetres or sixteenths', () => {
	const counted = units.map((unit) => {
		const all = drafts.filter(({ body }) => Math.abs(body.waist * 2 - Math.round(body.waist * 2)) < 1e-6).flatMap((draft) => workingsOf(draft, unit));
		return all.filter(({ finer }) => finer !== null).length / all.length;
	});
	for (const part of counted) expect(part).toBeLessThan(0.03);
});
