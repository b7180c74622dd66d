// Looks a whole lesson over before anyone reads it: what one part can't know, names and ids across parts.
import type { Issue } from '../drafting/result.ts';
import { calculators, components } from './component.ts';
import { figureOf, figures } from './figure.ts';
import { workingNames, workingOf } from './flared-working.ts';
import { readMarkup } from './markup.ts';
import { parsePart } from './part.ts';
import { readLesson, type LessonFiles } from './lesson.ts';
import { sampleDraft } from './sample.ts';
import { terms } from './term.ts';
import { tolerances } from './tolerance.ts';

/**
 * Every issue in one lesson folder's files, each at `file:line`. `drawings` are the names that can be drawn: paper
 * stands above lesson, so whoever calls passes them.
 */
export function checkLesson(files: LessonFiles, drawings: readonly string[]): readonly Issue[] {
	const read = readLesson(files);
	const issues: Issue[] = read.ok ? [] : [...read.issues];
	const names: Record<string, readonly string[]> = {
		figure: [...Object.keys(figures), ...Object.keys(tolerances)], working: workingNames, drawing: drawings, term: Object.keys(terms), calculator: calculators
	};
	const draft = read.ok ? sampleDraft(read.value.style, 'cm') : null;
	const seen = new Map<string, string>();
	let clearances = 0;
	const once = (id: string, path: string) => {
		const first = seen.get(id);
		if (first) issues.push({ code: 'duplicate-id', path, expected: `first at ${first}`, received: id });
		else seen.set(id, path);
	};
	for (const [file, text] of Object.entries(files).sort()) {
		const part = parsePart(text, file);
		const uses = part.ok ? part.value.uses : readMarkup(text, file).tags.map((tag) => ({ ...tag, step: null }));
		for (const { name, attributes, line } of uses) {
			for (const [attribute, { is }] of Object.entries(components[name]?.attributes ?? {})) {
				const value = attributes[attribute];
				const known = typeof is === 'string' ? names[is] : undefined;
				if (value !== undefined && known && !known.includes(value)) issues.push({ code: `unknown-${is as string}`, path: `${file}:${line}`, expected: known, received: value });
			}
		}
		// What this skirt never has would say "not measured yet" for ever.
		for (const { name, attributes: { of = '' }, line } of uses) {
			const lacks = draft && ((name === 'Figure' && names.figure!.includes(of) && !Object.hasOwn(tolerances, of) && figureOf(of, draft) === undefined)
				|| (name === 'Working' && workingNames.includes(of) && workingOf(of, draft, 'cm') === null));
			if (lacks) issues.push({ code: 'not-of-this-skirt', path: `${file}:${line}`, received: of });
		}
		if (!part.ok) continue;
		once(part.value.id, `${file}:1`);
		for (const use of part.value.uses.filter(({ name }) => name === 'Step')) {
			const { id } = use.attributes;
			once(id!, `${file}:${use.line}`);
			const inside = part.value.uses.filter(({ step, name }) => step === id && name === 'Right').length;
			if (inside !== 1) issues.push({ code: 'step-needs-right', path: `${file}:${use.line}`, expected: 'one Right', received: inside });
		}
		const minutes = part.value.steps.reduce((sum, step) => sum + step.minutes, 0);
		if (part.value.kind === 'stage' && minutes !== part.value.minutes) {
			issues.push({ code: 'minutes-differ', path: `${file}:1`, expected: minutes, received: part.value.minutes });
		}
		clearances += part.value.steps.filter((step) => step.needs === 'clearance').length;
	}
	if (read.ok && read.value.kind === 'full' && clearances !== 1) {
		issues.push({ code: 'one-clearance', path: Object.keys(files)[0] ?? '', expected: 'one step that needs clearance', received: clearances });
	}
	return issues;
}
