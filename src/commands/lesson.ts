// npm run --silent lesson -- SLUG FILE (or - for standard input): a lesson in plain text as the learner of FILE reads it.
// --json prints its live figures instead; --list, alone, prints the shelf. Bad input exits 2 with issues.
import { fileURLToPath } from 'node:url';
import { draftSkirt } from '../lib/drafting/draft.ts';
import { ok, refuse, type Result } from '../lib/drafting/result.ts';
import { readShelf, type Lesson } from '../lib/lesson/lesson.ts';
import { slugOf } from '../lib/lesson/place.ts';
import { styledInput } from '../lib/lesson/styled-input.ts';
import { sampleTolerances } from '../lib/lesson/tolerance.ts';
import { readLessonFiles } from '../lib/server/lesson-folder.ts';
import { lessonText, type LessonText } from '../lib/ui/wording/lesson-text.ts';
import { readJsonFile } from './json-file.ts';

const files = readLessonFiles(fileURLToPath(new URL('../../content/lessons', import.meta.url)));

const print = (value: unknown): void => void process.stdout.write(typeof value === 'string' ? value : `${JSON.stringify(value)}\n`);

async function read(shelf: readonly Lesson[], names: readonly string[]): Promise<Result<LessonText>> {
	const [slug, file] = names;
	if (slug === undefined || names.length !== 2) return refuse({ code: 'lesson-and-file', path: '', expected: 'SLUG FILE', received: names.length });
	const lesson = shelf.find((lesson) => lesson.slug === slug);
	if (!lesson) return refuse({ code: 'lesson-unknown', path: '', expected: shelf.map(({ slug }) => slug), received: slug });
	const json = await readJsonFile(file);
	const input = json.ok ? styledInput(lesson.style, json.value) : json;
	const draft = input.ok ? draftSkirt(input.value.body, input.value.skirt) : input;
	if (!input.ok || !draft.ok) return input.ok ? (draft as Result<never>) : input;
	const paths = Object.keys(files).filter((path) => slugOf(path) === slug).sort((a, b) => Number(b.endsWith('/lesson.md')) - Number(a.endsWith('/lesson.md')) || a.localeCompare(b));
	return ok(lessonText(paths.map((path) => files[path]!), { draft: draft.value, tolerances: sampleTolerances, unit: input.value.unit }));
}

// A reader that has seen enough closes the pipe; that is no mistake.
process.stdout.on('error', () => process.exit(0));
const given = process.argv.slice(2);
const names = given.filter((name) => !name.startsWith('--'));
const options = given.filter((name) => name.startsWith('--'));
const shelf = readShelf(files);
if (!shelf.ok) throw new Error(`A lesson doesn't read: ${JSON.stringify(shelf.issues)}`);
const unknown = options.filter((name) => name !== '--json' && name !== '--list');
if (options.includes('--list') && given.length === 1) print(shelf.value.map(({ slug, kind, style }) => ({ slug, kind, style: style.style })));
else {
	const lesson = unknown.length > 0 || options.includes('--list')
		? refuse({ code: 'option-unknown', path: '', expected: 'SLUG FILE, SLUG FILE --json, or --list', received: given.join(' ').slice(0, 64) })
		: await read(shelf.value, names);
	if (!lesson.ok) process.exitCode = 2;
	print(lesson.ok ? (options.includes('--json') ? lesson.value.figures : lesson.value.text) : { issues: lesson.issues });
}
