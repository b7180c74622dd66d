import { describe, expect, test } from 'vitest';
import type { EventBody, LoggedEvent } from '../../src/lib/class/event.ts';
import { defaultRules } from '../../src/lib/class/gate.ts';
import type { ClassRules } from '../../src/lib/class/rules.ts';
import { stagesOf } from '../../src/lib/lesson/lesson.ts';
import { skirtDesk } from '../../src/lib/server/desk.ts';
import { lessonOf } from '../../src/lib/ui/lesson/shelf.ts';

const lesson = lessonOf('lined-half-circle')!;
const cuttingStep = stagesOf(lesson).flatMap(({ steps }) => steps).find(({ needs }) => needs === 'clearance')!.id;

const log = (bodies: readonly EventBody[]): readonly LoggedEvent[] =>
	bodies.map((body, counter) => ({ id: `e${counter}`, device: 'd', by: 'p', at: counter, counter, body }));
type Taken = Partial<Record<'waist' | 'hip' | 'waistToHip' | 'length', readonly number[]>>;
const taken = (of: Taken): readonly EventBody[] => Object.entries(of).flatMap(([measurement, readings]) =>
	readings.map((mm): EventBody => ({ kind: 'reading', measurement: measurement as keyof Taken, mm, typed: String(mm / 10), unit: 'cm', route: 'self' })));
const readings: Taken = { waist: [740, 742], hip: [980, 982], waistToHip: [200, 200], length: [600, 602] };
const ask: EventBody = { kind: 'ask', gate: defaultRules.gate.map(({ id }) => id), second: 'Bea' };

/** What a clearance keeps of the log so far. */
function clear(bodies: readonly EventBody[], rules: ClassRules = defaultRules): EventBody {
	const { now } = skirtDesk(lesson, rules, log(bodies));
	return { kind: 'clear', ...now! };
}
const cleared = (rules: ClassRules = defaultRules): readonly EventBody[] => {
	const asked = [...taken(readings), ask];
	return [...asked, clear(asked, rules)];
};
const stands = (bodies: readonly EventBody[], rules: ClassRules = defaultRules) => {
	const { review, flags } = skirtDesk(lesson, rules, log(bodies));
	return { review, flags: flags.map(({ code, about }) => (about === undefined ? code : `${code} ${about}`)) };
};

describe('what ends a clearance', () => {
	test('nothing said since: it stands, without a flag', () => {
		expect(stands(cleared())).toEqual({ review: 'cleared', flags: [] });
	});

	test('readings that come to the same number are other readings: 740 and 742, then 741 and 741', () => {
		expect(stands([...cleared(), ...taken({ waist: [741, 741] })])).toEqual({ review: 'void', flags: ['changed-since-cleared'] });
	});

	const { tolerances, allowances, open } = defaultRules;
	test.each<[string, Partial<ClassRules>]>([
		['tolerances.waistWalk', { tolerances: { ...tolerances, waistWalk: 1 } }],
		['tolerances.readings', { tolerances: { ...tolerances, readings: 5 } }],
		['allowances.waist', { allowances: { ...allowances, waist: 10 } }],
		['allowances.seam', { allowances: { ...allowances, seam: 20 } }],
		['allowances.hem', { allowances: { ...allowances, hem: 25 } }],
		['zipSeries', { zipSeries: 'in' }]
	])('a rule that bears on her numbers, and the flag names it: %s', (name, changed) => {
		expect(stands(cleared(), { ...defaultRules, ...changed })).toEqual({ review: 'void', flags: [`rule-changed ${name}`] });
	});

	test.each<[string, Partial<ClassRules>]>([
		['how level the hem must be', { tolerances: { ...tolerances, hemLevel: 10 } }],
		['how near band and waist must be', { tolerances: { ...tolerances, bandSeam: 10 } }],
		['the unit', { unit: 'in' }],
		['the gate’s wording', { gate: [{ id: 'cloth', says: 'The cloth is pressed.' }] }],
		['a choice opened to her', { open: { ...open, share: true } }]
	])('not a rule for work after the cut, for show, or one she has yet to use: %s', (_, changed) => {
		expect(stands(cleared(), { ...defaultRules, ...changed })).toEqual({ review: 'cleared', flags: [] });
	});

	test('what the lesson fixes bears on nothing, whatever the class has said of it: it is neither kept nor flagged', () => {
		// The lesson's words rest on its share and its hem (lesson.md, fixed).
		const opened = { ...defaultRules, open: { ...open, share: true, hemFinish: true } };
		expect(Object.keys(skirtDesk(lesson, opened, log([...taken(readings), ask])).now!.rules).filter((rule) => rule.startsWith('open.'))).toEqual(['open.waistEase', 'open.bandDepth']);
		// Cleared while such a rule was open (an older clearance kept it), then closed beside an allowance that does bear.
		const was = cleared(opened).map((body): EventBody => (body.kind === 'clear' ? { ...body, rules: { ...body.rules, 'open.share': true, 'open.hemFinish': true } } : body));
		expect(stands(was, defaultRules)).toEqual({ review: 'cleared', flags: [] });
		expect(stands(was, { ...defaultRules, allowances: { ...allowances, seam: 20 } })).toEqual({ review: 'void', flags: ['rule-changed allowances.seam'] });
	});

	test('a choice that the class closes again, where she had made it', () => {
		const opened = { ...defaultRules, open: { ...open, bandDepth: true } };
		const asked: readonly EventBody[] = [...taken(readings), { kind: 'choice', choices: { bandDepth: 55 } }, ask];
		const closed = { ...defaultRules, open: { ...open, bandDepth: false } };
		expect(stands([...asked, clear(asked, opened)], closed)).toEqual({ review: 'void', flags: ['rule-changed open.bandDepth'] });
	});
});

describe('what a teacher is told before she opens the figures', () => {
	test('a hip that was not measured: nobody can say how long the opening must be', () => {
		const { waist, length } = readings;
		expect(stands([...taken({ waist: waist!, length: length! }), ask])).toEqual({ review: 'asked', flags: ['hip-missing'] });
	});

	test('a hip read once has the flag of one reading; before there is a draft nothing is said of it', () => {
		const { waist, length } = readings;
		expect(stands(taken({ waist: waist!, length: length!, hip: [980] })).flags).toEqual(['one-reading hip']);
		expect(stands([]).flags).toEqual([]);
	});

	test('cleared, returned, then cut', () => {
		const said: readonly EventBody[] = [...cleared(), { kind: 'return', action: 'Measure the hip again.' }, { kind: 'tick', step: cuttingStep }];
		expect(stands(said)).toEqual({ review: 'returned', flags: [`cut-uncleared ${cuttingStep}`] });
	});

	test('a gate that has a line more than she read', () => {
		const rules = { ...defaultRules, gate: [...defaultRules.gate, { id: 'light', says: 'The light is good.' }] };
		expect(stands([...taken(readings), ask], rules).flags).toEqual(['gate-unread']);
	});
});
