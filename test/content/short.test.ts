// The short lessons to lean on. Distances and the order of work in them are common practice, no source.
import { expect, test } from 'vitest';
import { checkLesson } from '../../src/lib/lesson/check.ts';
import { readShelf, stagesOf } from '../../src/lib/lesson/lesson.ts';
import { drawingNames } from '../../src/lib/paper/diagrams/lesson.ts';
import { lessonFiles, lessonFolders } from './lesson-files.ts';

const read = readShelf(Object.assign({}, ...lessonFolders.map(lessonFiles)) as ReturnType<typeof lessonFiles>);
if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
const short = read.value.filter(({ kind }) => kind === 'short');
const [main] = read.value;

test.each(lessonFolders)('%s passes every check', (folder) => {
	expect(checkLesson(lessonFiles(folder), drawingNames)).toEqual([]);
});

test('They are of the main lesson’s skirt, so that her own numbers can stand in them', () => {
	for (const { slug, style } of short) {
		const { fixed: _, least: __, ...own } = style;
		expect(main!.style, slug).toMatchObject(own);
	}
});

// Ids are for ever: add, never rename.
test('Lessons, stages and steps keep their ids', () => {
	expect(Object.fromEntries(short.map((lesson) => [lesson.slug, stagesOf(lesson).map(({ id, steps }) => [id, ...steps.map(({ id }) => id)].join(' '))]))).toEqual({
		measuring: ['take tie-waist read-waist read-hip read-depth read-length say-back'],
		'grain-bias': ['try find-selvedge pull-thread true-corner feel-bias fold-bias'],
		'two-lines': ['draw-both draw-corner draw-stitch draw-cut walk-both clip-paper'],
		staystitching: ['sew-it cut-scrap sew-scrap pull-scrap sew-waist measure-waist'],
		'three-zips': ['centred c-seam c-press c-place c-sew c-open', 'lapped l-seam l-fold l-under l-over', 'hidden h-flat h-first h-second h-below'],
		'two-linings': ['start s-seam s-press', 'by-hand b-join b-tack b-fell', 'by-machine m-pin m-sew m-turn'],
		'narrow-hems': ['turn-twice n-ease n-first n-second n-sew'],
		levelling: ['level-it v-hang v-mark v-join v-trim']
	});
});

test('Each stage has a caution where something is hot, sharp or driven', () => {
	for (const folder of lessonFolders) for (const [path, text] of Object.entries(lessonFiles(folder))) {
		if (/kind: stage/.test(text) && /\b(press|sew|pin|cut|unpick)\b/i.test(text) && !path.includes('/11-')) expect(text, path).toContain('<Caution ');
	}
});
