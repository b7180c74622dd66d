// Every part is compiled by the app's own preprocessors and read as a reader gets it.
import fc from 'fast-check';
import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import type { Choices, Unit } from '../../src/lib/class/event.ts';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';
import { figureOf, figures } from '../../src/lib/lesson/figure.ts';
import { sampleDraft, sampleRules } from '../../src/lib/lesson/sample.ts';
import { skirtInput } from '../../src/lib/lesson/skirt-input.ts';
import { workingNames, workingsOf } from '../../src/lib/lesson/flared-working.ts';
import { sampleTolerances } from '../../src/lib/lesson/tolerance.ts';
import { terms } from '../../src/lib/lesson/term.ts';
import { drawingsFor } from '../../src/lib/ui/lesson/drawings.ts';
import { workingsFor } from '../../src/lib/ui/lesson/workings.ts';
import { partText } from '../../src/lib/ui/lesson/part-text.ts';
import PartView from '../../src/lib/ui/lesson/PartView.svelte';
import type { Reader } from '../../src/lib/ui/lesson/reader.ts';
import { shelf } from '../../src/lib/ui/lesson/shelf.ts';

/** The main lesson; every other is read below. */
const lesson = shelf[0]!;
const example = sampleDraft(lesson.style, 'cm');
const units: readonly Unit[] = ['cm', 'in'];

/** A wide range of adults and children; length is the finished one. The hip may be the smaller. */
const body = fc.record({
	waist: fc.double({ min: 450, max: 1500, noNaN: true }),
	hip: fc.option(fc.double({ min: 550, max: 1700, noNaN: true }), { nil: undefined }),
	waistToHip: fc.option(fc.double({ min: 120, max: 280, noNaN: true }), { nil: undefined }),
	length: fc.double({ min: 250, max: 1100, noNaN: true })
});

function draftOf(measured: { waist: number; hip?: number | undefined; waistToHip?: number | undefined; length: number }, unit: Unit, choices: Choices = {}, style = lesson.style): Draft {
	const rules = sampleRules(unit, style);
	const known = Object.fromEntries(Object.entries(measured).filter(([, mm]) => mm !== undefined));
	const input = checkInput(skirtInput(style, { ...rules, open: { ...rules.open, waistEase: true } }, choices, known));
	if (!input.ok) throw new Error(JSON.stringify(input.issues));
	const draft = draftSkirt(input.value.body, input.value.skirt);
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	return draft.value;
}

/** As a part that shows each of them. */
const everySum = { uses: workingNames.map((of) => ({ name: 'Working', attributes: { of }, line: 1, step: null })) };

const readerOf = (draft: Draft, unit: Unit, rest: Partial<Reader> = {}): Reader => ({
	draft, workings: workingsFor(everySum, draft, rest.sample ? null : sampleDraft(lesson.style, unit), unit), drawings: {}, terms, tolerances: sampleTolerances, sample: false, unit, here: null, ticked: () => false, clearance: 'none', ...rest
});

/** What can't be told before hip, or waist to hip, is measured. */
const unmeasured = ['hip', 'hipWithEase', 'waistToHip', 'openingBelowSeam', 'zipLength', 'zipEndBelowSeam', 'liningOpening'];

/** What a skirt with a zip doesn't have. */
const pulledOn = ['elasticWidth', 'elasticLength'];

/** The words a reader sees: no markup, comments or styles. */
const wordsIn = (html: string) => html.replace(/<!--.*?-->/gs, '').replace(/<[^>]+>/g, ' ').replace(/&nbsp;/g, ' ').replace(/\s+/g, ' ');

async function read(part: string, reader: Reader, slug = lesson.slug): Promise<string> {
	return wordsIn(render(PartView, { props: { text: await partText(slug, part), reader } }).body);
}

/** The parts whose text names the hip or the zip. */
const waitsForHip = ['lesson', 'plan-skirt-cloth', 'measure', 'mark-cut', 'back-seam-zip', 'lining'];
const partIds = ['lesson', ...lesson.parts.map((part) => part.id)];

const everyPart = shelf.flatMap((lesson) => ['lesson', ...lesson.parts.map(({ id }) => id)].map((id) => [lesson.slug, id, lesson] as const));
test.each(everyPart)('%s, %s reads with every figure solved, in both units', async (slug, id, { style }) => {
	for (const unit of units) {
		const words = await read(id, readerOf(sampleDraft(style, unit), unit, { sample: true }), slug);
		expect(words.length).toBeGreaterThan(200);
		expect(words).not.toMatch(/NaN|undefined|null|\[object|[{}<]|not measured/);
	}
});

test('Every figure and every sum is a number on any body', () => {
	fc.assert(fc.property(body, fc.constantFrom(...units), (measured, unit) => {
		const draft = draftOf(measured, unit);
		for (const name of Object.keys(figures)) {
			const mm = figureOf(name, draft);
			if (mm === undefined) expect([...unmeasured, ...pulledOn]).toContain(name);
			else expect(Number.isFinite(mm) && mm >= 0, `${name} is ${mm}`).toBe(true);
		}
		for (const { name, mm } of workingsOf(draft, unit)) if (name in figures) expect(figureOf(name, draft)).toBe(mm);
	}), { numRuns: 300 });
});

test('Any body reads the whole lesson in either unit, with no figure left unsolved', async () => {
	await fc.assert(fc.asyncProperty(body, fc.constantFrom(...units), async (measured, unit) => {
		for (const { slug, parts, style } of shelf) for (const part of parts) {
			// What is pulled on can't be drawn without a hip.
			if (style.band === 'elastic' && measured.hip === undefined) continue;
			const draft = draftOf(measured, unit, {}, style);
			const words = await read(part.id, readerOf(draft, unit, { drawings: drawingsFor(part, draft, unit) }), slug);
			expect(words).not.toMatch(/NaN|undefined|null|\[object|[{}<]/);
			if (measured.hip !== undefined && measured.waistToHip !== undefined) expect(words).not.toContain('not measured');
		}
	}), { numRuns: 12 });
});

/** `0 mm`, `0 cm`, `0 in`: a length that nobody can sew. Not the end of `10 mm` or `1.0 cm`. */
const nought = /(?<![\d.,/])0(\.0+)?\s*(mm|cm|in)\b/;

// The second waist seam goes over the hip with its ease (109 against 108 cm): the opening needed is 0, and the zip is the shortest sold.
test.each([
	['a learner whose hip is not measured', { waist: 740, length: 600 }, {}],
	['a waist seam that goes over the hip', { waist: 1080, hip: 1060, waistToHip: 200, length: 600 }, {}],
	['no ease at the waist', { waist: 740, hip: 990, waistToHip: 200, length: 600 }, { waistEase: 0 }]
])('No sentence says "0 mm": %s', async (_, measured, choices) => {
	for (const unit of units) {
		const draft = draftOf(measured, unit, choices);
		for (const id of partIds) {
			const words = await read(id, readerOf(draft, unit));
			expect(words, id).not.toMatch(nought);
			expect(words.includes('not measured'), id).toBe(draft.body.hip === undefined && waitsForHip.includes(id));
		}
	}
});

test('A calculator leaves empty what a learner has not measured, and lends her no sample length', async () => {
	const text = await partText(lesson.slug, 'plan-skirt-cloth');
	const values = (draft: Draft) => [...render(PartView, { props: { text, reader: readerOf(draft, 'cm') } }).body.matchAll(/<input[^>]*>/g)]
		.flatMap(([tag]) => (/name="(seam|hip)"/.test(tag) ? [/value="([^"]*)"/.exec(tag)?.[1] ?? ''] : []));
	expect(values(draftOf({ waist: 740, hip: 960, length: 600 }, 'cm'))).toEqual(['75.0', '98.0']);
	expect(values(draftOf({ waist: 740, length: 600 }, 'cm'))).toEqual(['75.0', '']);
});

test('Every tolerance that a class sets is the one its lesson asks for', async () => {
	// Four lengths that no other sentence says.
	const tolerances = { readings: 17, waistWalk: 22, bandSeam: 13, hemLevel: 19 };
	const said = (id: string) => read(id, readerOf(example, 'cm', { tolerances }));
	expect(await said('measure')).toContain('differ by more than 17 mm');
	// Walked on the fold, so half of it.
	expect(await said('mark-cut')).toMatch(/Right when the tape reads 37\.5 cm[^.]*\. Give or take 11 mm/);
	expect(await said('staystitch')).toMatch(/or up to 13 mm more.*More than 13 mm over/);
	expect(await said('try-on')).toContain('Give or take 13 mm');
	expect(await said('waistband')).toContain('Give or take 13 mm');
	expect((await said('hang-level')).match(/Give or take 19 mm/g)).toHaveLength(2);
	expect(await said('hem')).toContain('Give or take 19 mm');
});

test('A step that waits for clearance says so until the numbers are cleared', async () => {
	expect(await read('mark-cut', readerOf(example, 'cm'))).toContain('your teacher clears your numbers');
	expect(await read('mark-cut', readerOf(example, 'cm', { clearance: 'cleared' }))).not.toContain('your teacher clears your numbers');
});

test('A sample figure never carries the underline that says "yours"', async () => {
	const text = await partText(lesson.slug, 'waist-to-radius');
	const html = (reader: Reader) => render(PartView, { props: { text, reader } }).body;
	expect(html(readerOf(example, 'cm', { sample: true }))).not.toContain('yours');
	expect(html(readerOf(example, 'cm'))).toContain('yours');
});
