// The lesson that the demo class is held on: the first whole one on the shelf, read from disk.
import { foldSkirt } from '../class/skirt-state.ts';
import { readShelf, stagesOf } from '../lesson/lesson.ts';
import { ownSkirt } from '../lesson/own-skirt.ts';
import type { DemoLesson } from './demo.ts';
import { readLessonFiles } from './lesson-folder.ts';
import { nowFrom } from './review.ts';

/** `folder` is the house's content/lessons. */
export function readDemoLesson(folder: string): DemoLesson {
	const shelf = readShelf(readLessonFiles(folder));
	if (!shelf.ok) throw new Error(`a lesson can't be read: ${JSON.stringify(shelf.issues.slice(0, 3))}`);
	const lesson = shelf.value.find(({ kind }) => kind === 'full');
	if (!lesson) throw new Error(`no whole lesson in ${folder}`);
	return {
		slug: lesson.slug,
		stages: stagesOf(lesson),
		work(rules, events) {
			const state = foldSkirt(events);
			return nowFrom(ownSkirt(lesson.style, rules, state), state.readings, lesson.style, rules);
		}
	};
}
