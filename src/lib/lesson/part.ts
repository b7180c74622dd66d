// One part of a lesson: a numbered Markdown file, read into plain data. A stage is a part with steps to tick.
import type { Issue, Result } from '../drafting/result.ts';
import { isMadeName, type MadeName } from '../class/made.ts';
import { components } from './component.ts';
import { readMarkup, type Tag } from './markup.ts';
import { tolerances } from './tolerance.ts';

export interface Step {
	/** Stable: ticks are kept under it. */
	readonly id: string;
	readonly title: string;
	/** What its tick says: `Washed`. */
	readonly done: string;
	readonly minutes: number;
	readonly drawing?: string;
	readonly undrawn?: string;
	readonly needs?: 'clearance';
	/** A reading on the real thing that is put in here. */
	readonly reads?: MadeName;
}

/** One use of a component, in reading order. `step` is the step it stands in. */
export interface Use {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly line: number;
	readonly step: string | null;
}

export interface Part {
	/** Stable: it is also the part's address. */
	readonly id: string;
	readonly title: string;
	readonly kind: 'reading' | 'stage';
	readonly minutes: number;
	/** Hours the work rests after this stage's first step, such as 24 for hanging. */
	readonly waits?: number;
	readonly steps: readonly Step[];
	/** Names of the figures it shows, each once. */
	readonly figures: readonly string[];
	readonly uses: readonly Use[];
}

const frontKeys = ['id', 'title', 'kind', 'minutes', 'waits', 'note'];
const isId = (words: string) => /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(words);
const isCount = (words: string) => /^[0-9]{1,4}(\.[0-9])?$/.test(words);

/** Reads a part's text. Each issue's path is `file:line`. Names (figures, drawings, terms) are checked by checkLesson. */
export function parsePart(text: string, file = ''): Result<Part> {
	const { front, tags, issues: found } = readMarkup(text, file);
	const issues: Issue[] = [...found];
	const say = (line: number, code: string, rest: Partial<Issue> = {}) => issues.push({ code, path: `${file}:${line}`, ...rest });

	for (const key of Object.keys(front)) if (!frontKeys.includes(key)) say(1, 'front-unknown', { expected: frontKeys, received: key });
	for (const key of ['id', 'title', 'kind', 'minutes']) if (!front[key]) say(1, 'front-key-missing', { expected: key });
	if (front.id && !isId(front.id)) say(1, 'bad-id', { received: front.id });
	if (front.kind && front.kind !== 'reading' && front.kind !== 'stage') say(1, 'front-value', { expected: ['reading', 'stage'], received: front.kind });
	for (const key of ['minutes', 'waits']) if (front[key] && !isCount(front[key])) say(1, 'front-value', { expected: 'a number', received: front[key] });

	const uses: Use[] = [];
	const steps: Step[] = [];
	const open: Tag[] = [];
	for (const tag of tags) {
		const component = components[tag.name];
		if (!component) {
			say(tag.line, 'unknown-component', { expected: Object.keys(components), received: tag.name });
			continue;
		}
		if (component.where === 'block' && !tag.apart) say(tag.line, 'needs-empty-lines', { received: tag.name });
		if (component.where === 'inline' && tag.leads) say(tag.line, 'needs-words-before', { received: tag.name });
		if (tag.kind === 'close') {
			if (open.at(-1)?.name === tag.name) open.pop();
			else say(tag.line, 'not-open', { received: tag.name });
			continue;
		}
		if ((tag.kind === 'open') !== (component.holds === 'words')) say(tag.line, component.holds === 'words' ? 'holds-words' : 'holds-nothing', { received: tag.name });
		checkAttributes(tag, say);
		const step = open.find((outer) => outer.name === 'Step')?.attributes.id ?? null;
		if (tag.name === 'Step') {
			if (open.length) say(tag.line, 'step-inside', { received: open.at(-1)!.name });
			const { id = '', title = '', done = '', minutes = '0', drawing, undrawn, needs, reads } = tag.attributes;
			steps.push({
				id, title, done, minutes: Number(minutes),
				...(drawing && { drawing }), ...(undrawn && { undrawn }), ...(needs === 'clearance' && { needs }), ...(isMadeName(reads) && { reads })
			});
		}
		uses.push({ name: tag.name, attributes: tag.attributes, line: tag.line, step: tag.name === 'Step' ? tag.attributes.id ?? null : step });
		if (tag.kind === 'open') open.push(tag);
	}
	for (const tag of open) say(tag.line, 'not-closed', { received: tag.name });
	if (front.kind === 'stage' && steps.length === 0) say(1, 'stage-without-steps');
	if (front.kind === 'reading' && steps.length > 0) say(1, 'reading-with-steps');
	if (issues.length) return { ok: false, issues };

	const figures = [...new Set(uses.filter((use) => use.name === 'Figure' && use.attributes.of).map((use) => use.attributes.of!))];
	return {
		ok: true,
		value: {
			id: front.id!, title: front.title!, kind: front.kind as Part['kind'], minutes: Number(front.minutes),
			...(front.waits && { waits: Number(front.waits) }), steps, figures, uses
		}
	};
}

function checkAttributes(tag: Tag, say: (line: number, code: string, rest?: Partial<Issue>) => void) {
	const allowed = components[tag.name]!.attributes;
	for (const [name, value] of Object.entries(tag.attributes)) {
		const attribute = allowed[name];
		if (!attribute) say(tag.line, 'unknown-attribute', { expected: Object.keys(allowed), received: `${tag.name} ${name}` });
		else if (!value.trim()) say(tag.line, 'empty-attribute', { received: `${tag.name} ${name}` });
		else if (Array.isArray(attribute.is) && !attribute.is.includes(value)) say(tag.line, 'bad-attribute', { expected: attribute.is, received: value });
		else if (attribute.is === 'id' && !isId(value)) say(tag.line, 'bad-id', { received: value });
		else if (attribute.is === 'count' && !isCount(value)) say(tag.line, 'bad-attribute', { expected: 'a number', received: value });
		else if (attribute.is === 'within' && !Object.hasOwn(tolerances, value) && !/^[0-9]{1,3}(\.[0-9])? mm$/.test(value)) {
			say(tag.line, 'bad-attribute', { expected: ['5 mm', ...Object.keys(tolerances)], received: value });
		}
	}
	for (const [name, attribute] of Object.entries(allowed)) {
		if (!attribute.optional && !(name in tag.attributes)) say(tag.line, 'missing-attribute', { expected: `${tag.name} ${name}` });
	}
	if (tag.name === 'Step' && !tag.attributes.drawing === !tag.attributes.undrawn) say(tag.line, 'drawing-or-reason', { received: tag.attributes.id });
	if (tag.name === 'Figure' && !tag.attributes.of === !tag.attributes.mm) say(tag.line, 'missing-attribute', { expected: 'Figure of, or Figure mm' });
}
