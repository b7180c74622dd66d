// Distances, tolerances and the order of work in this lesson are common practice, no source.
import { expect, test } from 'vitest';
import { checkRules, defaultRules } from '../../src/lib/class/gate.ts';
import { checkLesson } from '../../src/lib/lesson/check.ts';
import { readLesson, stagesOf } from '../../src/lib/lesson/lesson.ts';
import { fixedChoices } from '../../src/lib/lesson/open.ts';
import { drawingNames } from '../../src/lib/paper/diagrams/lesson.ts';
import { issueSentence } from '../../src/lib/ui/wording/issue.ts';
import { lessonFiles } from './lesson-files.ts';

const files = lessonFiles('01-lined-half-circle');
const read = readLesson(files);
if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
const lesson = read.value;

test('The lesson passes every check: names known, ids once, one Right a step, no script and no HTML', () => {
	expect(checkLesson(files, drawingNames)).toEqual([]);
});

test('Each part is in a file of its own name', () => {
	const named = Object.keys(files).sort().filter((path) => !path.endsWith('/lesson.md')).map((path) => path.replace(/^.*\/\d+-|\.md$/g, ''));
	expect(lesson.parts.map((part) => part.id)).toEqual(named);
});

// Ticks are kept under these ids. To change one is to lose ticks: add, never rename.
test('Stages and steps keep their ids and their order', () => {
	expect(Object.fromEntries(stagesOf(lesson).map((stage) => [stage.id, stage.steps.map((step) => step.id)]))).toEqual({
		prepare: ['test-scrap', 'wash-cloth', 'press-cloth', 'straighten-grain', 'measure-width'],
		'mark-cut': [
			'fold-cloth', 'draw-back-lines', 'mark-waist-stitch', 'mark-waist-cut', 'mark-hem', 'walk-waist', 'cut-skirt',
			'notch-skirt', 'mark-other-half', 'cut-lining', 'cut-band'
		],
		staystitch: ['staystitch-skirt', 'staystitch-lining', 'measure-waist-edge', 'interface-band', 'neaten-back'],
		'back-seam-zip': [
			'pin-back', 'sew-back', 'tack-opening', 'press-back', 'tack-zip', 'stitch-zip-left', 'stitch-zip-right', 'unpick-tacking',
			'check-zip-tops'
		],
		lining: ['sew-lining-back', 'press-lining-back', 'join-lining', 'tack-lining-waist', 'fell-lining'],
		'try-on': ['step-in', 'check-level-waist', 'settle-waist'],
		waistband: [
			'mark-band', 'pin-band', 'stitch-band', 'clip-waist', 'grade-waist', 'press-band', 'sew-band-ends', 'fell-band', 'sew-hook'
		],
		'hang-level': ['hang-skirt', 'mark-floor', 'draw-hem-line', 'trim-hem'],
		hem: ['easestitch-hem', 'first-turn', 'second-turn', 'stitch-hem', 'hem-lining'],
		finish: ['thread-chains', 'trim-threads', 'last-press']
	});
	expect(stagesOf(lesson).map((stage) => stage.id)).toEqual([
		'prepare', 'mark-cut', 'staystitch', 'back-seam-zip', 'lining', 'try-on', 'waistband', 'hang-level', 'hem', 'finish'
	]);
});

test('Cutting the skirt is the one step that needs clearance, and hanging the one that waits a day', () => {
	const stages = stagesOf(lesson);
	expect(stages.flatMap((stage) => stage.steps.filter((step) => step.needs).map((step) => step.id))).toEqual(['cut-skirt']);
	expect(stages.filter((stage) => stage.waits).map((stage) => [stage.id, stage.waits])).toEqual([['hang-level', 24]]);
});

test('Nothing is cut from the cloth, and no lining or band either, before that step', () => {
	const [before] = files['content/lessons/01-lined-half-circle/06-mark-cut.md']!.split('needs="clearance"');
	expect(before).not.toMatch(/^Cut /m);
});

test('The lesson fixes what its words rest on, and needs room for its zip and its stitches', () => {
	expect(fixedChoices(lesson.style)).toEqual(['share', 'hemFinish']);
	expect(lesson.style.least).toEqual({ waist: 9.5, seam: 12, hem: 9.5 });
	expect(checkRules(defaultRules, lesson.style.least).ok).toBe(true);
	const narrow = checkRules({ ...defaultRules, allowances: { waist: 9, seam: 11.9, hem: 10 } }, lesson.style.least);
	expect(!narrow.ok && narrow.issues.map(({ code, path }) => `${code} ${path}`)).toEqual(['allowance-under-lesson allowances.waist', 'allowance-under-lesson allowances.seam']);
	expect(!narrow.ok && narrow.issues.map((issue) => issueSentence(issue, 'cm'))).toEqual([
		'The steps of this lesson need 9.5 mm or more here. Write a wider allowance.', 'The steps of this lesson need 12 mm or more here. Write a wider allowance.'
	]);
	// 9.5 mm is said as 3/8 in (9.525), 12 mm as 1/2 in (12.7): what the sentence asks for is taken.
	expect(!narrow.ok && narrow.issues.map((issue) => issueSentence(issue, 'in'))).toEqual([
		'The steps of this lesson need 3/8 in or more here. Write a wider allowance.', 'The steps of this lesson need 1/2 in or more here. Write a wider allowance.'
	]);
	expect(checkRules({ ...defaultRules, allowances: { waist: 9.525, seam: 12.7, hem: 9.525 } }, lesson.style.least).ok).toBe(true);
});

test('The style is that of a lined half circle in one panel', () => {
	expect(lesson).toMatchObject({
		slug: 'lined-half-circle', kind: 'full',
		style: { style: 'flared', share: 0.5, panels: 1, zipAt: 'centreBack', hemFinish: 'narrow', liningShorterBy: 25 }
	});
});
