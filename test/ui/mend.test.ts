// The page of the ways back: at every stage of the lesson, each mistake that shows there can be worked out from its fields.
import { expect, test } from 'vitest';
import { rescueCodes } from '../../src/lib/drafting/made/rescue-code.ts';
import { rescuePaths } from '../../src/lib/drafting/made/rescue.ts';
import { stagesOf } from '../../src/lib/lesson/lesson.ts';
import { keptFor, mendAnswer, mistakesAt, readMend } from '../../src/lib/ui/lesson/mend.ts';
import { shelf } from '../../src/lib/ui/lesson/shelf.ts';
import { draftOf } from '../drafting/made/sample.ts';

const draft = draftOf();
const lesson = shelf.find(({ slug }) => slug === 'lined-half-circle')!;
/** Something wrong with each, as it would be typed; the sample's waist seam is 70 cm. */
const typed: Readonly<Record<string, readonly string[]>> = {
	'cloth-short': ['140', '90'], 'waist-cut-large': ['71.2'], 'waist-cut-small': ['69'], 'allowance-forgotten': [], 'nick-near-waist': ['0.8'], 'nick-near-hem': ['2'],
	'panel-short': ['60'], 'waist-stretched': ['71.2'], 'zip-short': ['20'], 'zip-long': ['80'], 'lining-tight': ['69'], 'lining-long': ['0.5'], 'band-short': ['74'],
	'band-tight': ['71.5'], 'band-loose': ['68.5'], 'hem-dips': ['30', '30.1', '30.6', '31.2', '31.5', '31.2', '30.6', '30.1']
};

test('At every stage each mistake that shows there has its first steps, its fields and its ways back, each drawn', () => {
	const met = new Set<string>();
	for (const { id } of stagesOf(lesson)) {
		for (const mistake of mistakesAt(id, draft, 8)) {
			met.add(mistake.code);
			expect(mistake.look.length).toBeGreaterThan(1);
			const lengths = mistake.fields.map((_, i) => typed[mistake.code]![i] ?? '');
			const read = readMend({ code: mistake.code, lengths, above: '', below: false }, id, 'cm');
			if (!read.ok) throw new Error(`${mistake.code} at ${id}: ${JSON.stringify(read.issues)}`);
			const answer = mendAnswer(read.value.code, draft, read.value.readings, 'cm');
			expect(answer.instead).toEqual([]);
			expect(answer.fault).toMatch(/\d/);
			expect(answer.options.length).toBeGreaterThan(0);
			for (const { says, drawing } of answer.options) expect([says.length > 0, drawing.alt.length > 20]).toEqual([true, true]);
		}
	}
	// Every path of the engine is reached from the stage where its mistake shows.
	expect([...met].sort()).toEqual([...rescueCodes].sort());
	expect(rescueCodes.flatMap((code) => rescuePaths[code].stages.filter((stage) => !stagesOf(lesson).some(({ id }) => id === stage)))).toEqual([]);
});

test('What is as planned is said to need no mending', () => {
	expect(mendAnswer('waist-cut-large', draft, { waistSeamAfterSewing: 700 }, 'cm')).toMatchObject({ fault: null, options: [], instead: [expect.stringMatching(/needs no mending/)] });
});

test('A skirt without a lining is asked nothing about one', () => {
	const unlined = draftOf({ lining: null });
	expect(mistakesAt('lining', unlined, 8)).toEqual([]);
	expect(mistakesAt('try-on', unlined, 8).map(({ code }) => code)).not.toContain('lining-tight');
});

test('Of two readings that would do, the one that is filled in counts; an empty form is refused at its first field', () => {
	expect(readMend({ code: 'waist-cut-large', lengths: ['', '22.8'], above: '', below: false }, 'mark-cut', 'cm')).toEqual({ ok: true, value: { code: 'waist-cut-large', readings: { radiusDrawn: 228 } } });
	expect(readMend({ code: 'waist-cut-large', lengths: ['', ''], above: '', below: false }, 'mark-cut', 'cm')).toMatchObject({ ok: false, issues: [{ path: 'length.0' }] });
	expect(readMend({ code: 'lining-long', lengths: ['1'], above: '', below: true }, 'lining', 'cm')).toMatchObject({ ok: true, value: { readings: { liningAbove: -10 } } });
	expect(readMend({ code: 'hat', lengths: [], above: '', below: false }, 'lining', 'cm').ok).toBe(false);
});

test('What she has put in at a step is worked with, and nothing else of it', () => {
	expect(keptFor('waist-stretched', 'staystitch', { waistEdgeAfterStaystitch: 665, zipBought: 220 }, 712)).toEqual({ waistSeamAfterSewing: 712 });
	expect(keptFor('zip-short', 'back-seam-zip', { zipBought: 200 }, undefined)).toEqual({ zipBought: 200 });
	expect(keptFor('zip-short', 'back-seam-zip', {}, 700)).toBeNull();
});
