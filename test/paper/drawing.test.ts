import { readFileSync } from 'node:fs';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { drawingNames, lessonDrawing } from '../../src/lib/paper/diagrams/lesson.ts';
import { sectorDiagram } from '../../src/lib/paper/diagrams/sector.ts';
import Drawing from '../../src/lib/ui/Drawing.svelte';
import { sampleDraft } from './sample-draft.ts';

const half = sectorDiagram(sampleDraft(), { unit: 'in', layout: 'half' });

describe('a drawing on the server', () => {
	const { body } = render(Drawing, { props: { drawing: half, title: 'Your draft' } });
	it('is one picture with its words as its name', () => {
		expect(body).toContain('role="img"');
		expect(body).toContain(half.alt);
		expect(body).toContain('Your draft');
	});
	it('writes real text, with built fractions, and nothing foreign', () => {
		expect(body).toMatch(/<tspan class="fraction[^"]*">5\/8<\/tspan>/);
		expect(body).not.toContain('foreignObject');
	});
	it('is laid out for a phone before its width is known', () => {
		expect(body).toMatch(/viewBox="0 0 358 \d+"/);
	});
	it('points only to patterns and paths of its own', () => {
		for (const name of drawingNames) {
			const html = render(Drawing, { props: { drawing: lessonDrawing(name, sampleDraft(), { unit: 'cm' }) } }).body;
			const ids = new Set([...html.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]));
			const wanted = [...html.matchAll(/(?:url\(#|href="#)([^")]+)/g)].map((m) => m[1]);
			expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
			expect(html).not.toMatch(/NaN|undefined|Infinity/);
		}
	});
});

describe('the kinds of line', () => {
	it('each have a look of their own in the component', () => {
		const css = readFileSync('src/lib/ui/Drawing.svelte', 'utf8').split('<style>')[1]!;
		const look = (kind: string): string => {
			const rule = new RegExp(`\\n\\t\\.${kind} \\{([^}]*)\\}`).exec(css)?.[1] ?? '';
			return `${/stroke-width: ([\d.]+)/.exec(rule)?.[1]} ${/stroke-dasharray: ([\d ]+)/.exec(rule)?.[1] ?? 'solid'}`;
		};
		// Weight and dash, from the look's table of lines.
		expect(Object.fromEntries(['cut', 'stitch', 'fold', 'tack', 'staystitch', 'sewn', 'grain', 'measure', 'asItWas'].map((kind) => [kind, look(kind)]))).toEqual({
			cut: '2.4 solid', stitch: '1.6 7 4', fold: '1.6 18 4 3 4', tack: '2.2 13 7', staystitch: '2 2 3', sewn: '1.2 solid', grain: '1.3 solid', measure: '1.1 solid', asItWas: '1.6 3 7'
		});
	});
});
