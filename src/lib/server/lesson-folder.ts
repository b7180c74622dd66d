// The written lessons on disk, for what runs outside the build.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { LessonFiles } from '../lesson/lesson.ts';

/** The texts of every lesson by path. `folder` is the house's content/lessons. */
export const readLessonFiles = (folder: string): LessonFiles =>
	Object.fromEntries(
		readdirSync(folder, { recursive: true, encoding: 'utf8' })
			.filter((path) => path.endsWith('.md'))
			.map((path) => [join(folder, path), readFileSync(join(folder, path), 'utf8')])
	);
