// Every shipped lesson, compiled by the build and rendered from its tree: a reader gets the same.
import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import type { Unit } from '../../src/lib/class/event.ts';
import { readMarkup } from '../../src/lib/lesson/markup.ts';
import { sampleDraft } from '../../src/lib/lesson/sample.ts';
import { terms } from '../../src/lib/lesson/term.ts';
import { sampleTolerances } from '../../src/lib/lesson/tolerance.ts';
import { treeOf } from '../../src/lib/lesson/tree.ts';
import { drawingsFor } from '../../src/lib/ui/lesson/drawings.ts';
import { workingsFor } from '../../src/lib/ui/lesson/workings.ts';
import Nodes from '../../src/lib/ui/lesson/Nodes.svelte';
import { partText } from '../../src/lib/ui/lesson/part-text.ts';
import PartView from '../../src/lib/ui/lesson/PartView.svelte';
import { shelf } from '../../src/lib/ui/lesson/shelf.ts';
import { lessonFiles, lessonFolders } from './lesson-files.ts';

/** The tags and the words, less what no reader meets: the compiler's marks, spaces between blocks, drawn ids. */
const read = (html: string) => html
	.replace(/<!--.*?-->/gs, '').replace(/\b(id|popovertarget|aria-labelledby|aria-describedby|for|name)="[^"]*"/g, '$1=""').replace(/ rel="[^"]*"/g, '')
	.replace(/\s+/g, ' ').replace(/ ?(<\/?(p|div|section|ul|ol|li|h[1-6]|svg|table|thead|tbody|tr|th|td|figure|noscript|fieldset)\b[^>]*>) ?/g, '$1').trim();

const parts = shelf.flatMap((lesson) => {
	const folder = lessonFolders.find((folder) => folder.replace(/^\d+-/, '') === lesson.slug)!;
	return Object.entries(lessonFiles(folder)).map(([path, text]) => ({ lesson, id: path.replace(/^.*\/(?:\d+-)?|\.md$/g, ''), text }));
});

test.each(parts.map(({ lesson, id, text }) => [lesson.slug, id, lesson, text] as const))('%s, %s', async (slug, id, lesson, text) => {
	for (const unit of ['cm', 'in'] satisfies readonly Unit[]) {
		const draft = sampleDraft(lesson.style, unit);
		const part = lesson.parts.find((part) => part.id === id);
		const reader = {
			draft, workings: part ? workingsFor(part, draft, null, unit) : {}, drawings: part ? drawingsFor(part, draft, unit) : {}, terms, tolerances: sampleTolerances, sample: true, unit, here: null,
			ticked: () => false, clearance: 'none' as const
		};
		const html = (props: { text: Component<Record<string, unknown>>; given?: Record<string, unknown> }) => read(render(PartView, { props: { ...props, reader } }).body);
		const compiled = html({ text: await partText(slug, id) });
		expect(compiled.length).toBeGreaterThan(200);
		const written = html({ text: Nodes as Component<Record<string, unknown>>, given: { nodes: treeOf(readMarkup(text).body) } });
		const apart = [...compiled].findIndex((letter, i) => letter !== written[i]);
		expect(written.slice(Math.max(0, apart - 100), apart + 200)).toBe(compiled.slice(Math.max(0, apart - 100), apart + 200));
		expect(written.length).toBe(compiled.length);
	}
});
