import { readdirSync, readFileSync } from 'node:fs';
import type { LessonFiles } from '../../src/lib/lesson/lesson.ts';

const root = new URL('../../content/lessons/', import.meta.url);

export const lessonFolders: readonly string[] = readdirSync(root).sort();

/** The texts of one lesson folder, by path from the project's top. */
export const lessonFiles = (folder: string): LessonFiles =>
	Object.fromEntries(
		readdirSync(new URL(`${folder}/`, root)).map((file) => [`content/lessons/${folder}/${file}`, readFileSync(new URL(`${folder}/${file}`, root), 'utf8')])
	);
