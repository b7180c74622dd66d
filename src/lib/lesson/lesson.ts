// A lesson is a numbered folder of Markdown: lesson.md, then its parts in order. The shelf is all of them.
import type { Issue, Result } from '../drafting/result.ts';
import { readMarkup } from './markup.ts';
import { parsePart, type Part } from './part.ts';
import { place, slugOf } from './place.ts';
import { readStyle, styleKeys, type LessonStyle } from './style.ts';

export interface Lesson {
	/** The folder's name without its number: the lesson's address. */
	readonly slug: string;
	readonly title: string;
	readonly summary: string;
	/** `full`: from cloth to hem. `short`: one skill to lean on. */
	readonly kind: 'full' | 'short';
	readonly style: LessonStyle;
	readonly parts: readonly Part[];
}

export interface StageStep {
	readonly id: string;
	readonly title: string;
	readonly done: string;
	readonly minutes: number;
	readonly needs?: 'clearance';
}

/** What a class needs of a lesson: its stages with stable ids, in the lesson's own order. */
export interface Stage {
	readonly id: string;
	readonly title: string;
	readonly minutes: number;
	/** Hours the work rests after the stage's first step. */
	readonly waits?: number;
	readonly steps: readonly StageStep[];
}
export type StageList = readonly Stage[];

export const stagesOf = (lesson: Lesson): StageList =>
	lesson.parts
		.filter((part) => part.kind === 'stage')
		.map(({ id, title, minutes, waits, steps }) => ({
			id, title, minutes, ...(waits && { waits }),
			steps: steps.map(({ id, title, done, minutes, needs }) => ({ id, title, done, minutes, ...(needs && { needs }) }))
		}));

/** The texts of a lesson folder, by path; whoever calls gathers them (a build's glob, or a folder on disk). */
export type LessonFiles = Readonly<Record<string, string>>;

/** Every lesson in the files, in the order of their folders' numbers. */
export function readShelf(files: LessonFiles): Result<readonly Lesson[]> {
	const folders = new Map<string, string[]>();
	for (const path of Object.keys(files).sort()) {
		const folder = place.exec(path)?.[1];
		if (folder) folders.set(folder, [...(folders.get(folder) ?? []), path]);
	}
	const issues: Issue[] = [];
	const lessons: Lesson[] = [];
	for (const paths of folders.values()) {
		const lesson = readLesson(Object.fromEntries(paths.map((path) => [path, files[path]!])));
		if (lesson.ok) lessons.push(lesson.value);
		else issues.push(...lesson.issues);
	}
	return issues.length ? { ok: false, issues } : { ok: true, value: lessons };
}

/** One lesson from the files of one folder. */
export function readLesson(files: LessonFiles): Result<Lesson> {
	const paths = Object.keys(files).sort();
	const cover = paths.find((path) => path.endsWith('/lesson.md'));
	if (!cover) return { ok: false, issues: [{ code: 'lesson-missing', path: paths[0] ?? '', expected: 'lesson.md' }] };
	const { front, issues: found } = readMarkup(files[cover]!, cover);
	const issues: Issue[] = [...found];
	for (const key of ['title', 'summary', 'kind']) if (!front[key]) issues.push({ code: 'front-key-missing', path: `${cover}:1`, expected: key });
	for (const key of Object.keys(front)) {
		if (!['title', 'summary', 'kind', 'note', ...styleKeys].includes(key)) issues.push({ code: 'front-unknown', path: `${cover}:1`, received: key });
	}
	const style = readStyle(front, cover);
	if (!style.ok) issues.push(...style.issues);
	const parts: Part[] = [];
	for (const path of paths.filter((path) => path !== cover)) {
		const part = parsePart(files[path]!, path);
		if (part.ok) parts.push(part.value);
		else issues.push(...part.issues);
	}
	const slug = slugOf(cover);
	if (!style.ok || issues.length) return { ok: false, issues };
	return {
		ok: true,
		value: { slug, title: front.title!, summary: front.summary!, kind: front.kind === 'short' ? 'short' : 'full', style: style.value, parts }
	};
}
