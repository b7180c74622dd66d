// The drawings one part of a lesson uses, made from the reader's draft. For the server: the page gets them as data.
import type { Unit } from '$lib/class/event.ts';
import type { Draft } from '$lib/drafting/draft.ts';
import type { Part } from '$lib/lesson/part.ts';
import { lessonDrawing } from '$lib/paper/diagrams/lesson.ts';
import type { Drawing } from '$lib/paper/drawing.ts';

/** `step`: only that step's, for a page that shows it alone. */
export function drawingsFor(part: Part, draft: Draft, unit: Unit, step?: string): Readonly<Record<string, Drawing>> {
	const names = part.uses
		.filter((use) => step === undefined || use.step === step)
		.map((use) => (use.name === 'Drawing' ? use.attributes.of : use.attributes.drawing))
		.filter((name) => name !== undefined);
	return Object.fromEntries([...new Set(names)].map((name) => [name, lessonDrawing(name, draft, { unit })]));
}
