// A lesson in plain text: the same words in the same order as its pages, a paragraph a line.
import type { Draft } from '../../drafting/draft.ts';
import type { Unit } from '../../drafting/length.ts';
import { calculator } from '../../lesson/calculator.ts';
import type { CalculatorOf, CautionAbout } from '../../lesson/component.ts';
import { readMarkup } from '../../lesson/markup.ts';
import { figureText, shownFigure } from '../../lesson/shown-figure.ts';
import { toleranceOf, type Tolerances } from '../../lesson/tolerance.ts';
import { fixedLength } from '../../lesson/fixed-length.ts';
import { workingOf } from '../../lesson/flared-working.ts';
import { treeOf, type Node } from '../../lesson/tree.ts';
import { lessonDrawing } from '../../paper/diagrams/lesson.ts';
import { formatLength } from '../../drafting/length.ts';
import { cautionNames, cautionRules } from './caution.ts';
import { workingWords } from './working.ts';

export interface TextReader {
	readonly draft: Draft;
	readonly tolerances: Tolerances;
	readonly unit: Unit;
}

/** A live figure as it stands in the text; mm is null where it isn't measured. */
export interface LiveFigure {
	readonly figure: string;
	readonly mm: number | null;
	readonly shown: string;
}

export interface LessonText {
	readonly text: string;
	/** In reading order, each time it is said. */
	readonly figures: readonly LiveFigure[];
}

/** `texts` are the lesson's files in order: its welcome, then its parts. */
export function lessonText(texts: readonly string[], reader: TextReader): LessonText {
	const figures: LiveFigure[] = [];
	const parts = texts.map((text) => {
		const { front, body } = readMarkup(text);
		return [`${front.title}\n${'='.repeat(front.title?.length ?? 0)}`, ...write(treeOf(body), reader, figures)].join('\n\n');
	});
	return { text: `${parts.join('\n\n\n')}\n`, figures };
}

/** Blocks, one a string. */
function write(nodes: readonly Node[], reader: TextReader, figures: LiveFigure[]): readonly string[] {
	const inside = (held: readonly Node[]) => write(held, reader, figures);
	const words = (held: readonly Node[]) => line(held, reader, figures);
	return nodes.flatMap((node): readonly string[] => {
		switch (node.is) {
			case 'paragraph': return [words(node.holds)];
			case 'heading': {
				const title = words(node.holds);
				return [`${title}\n${'-'.repeat(title.length)}`];
			}
			case 'bullets': return [node.holds.map((item) => `- ${indent(inside('holds' in item ? loose(item.holds) : []), 2)}`).join('\n')];
			case 'numbers': return [node.holds.map((item, i) => `${node.start + i}. ${indent(inside('holds' in item ? loose(item.holds) : []), 3)}`).join('\n')];
			case 'quote': return inside(node.holds);
			case 'code-block': return [node.text.trimEnd()];
			case 'rule': return ['* * *'];
			case 'table': return [rowsOf(node.holds).map((row) => ('holds' in row ? row.holds.map((cell) => ('holds' in cell ? words(cell.holds) : '')).join(' | ') : '')).join('\n')];
			case 'component': return component(node.name, node.attributes, node.holds, reader, figures);
			default: return [words([node])];
		}
	});
}

/** A tight item's words stand bare: they are one paragraph. */
function loose(nodes: readonly Node[]): readonly Node[] {
	const blocks = new Set(['paragraph', 'bullets', 'numbers', 'quote', 'code-block', 'heading', 'table', 'rule']);
	const at = nodes.findIndex(({ is }) => blocks.has(is));
	const bare = at < 0 ? nodes : nodes.slice(0, at);
	return [...(bare.length > 0 ? [{ is: 'paragraph', holds: bare } as const] : []), ...nodes.slice(bare.length)];
}
const rowsOf = (nodes: readonly Node[]): readonly Node[] => nodes.flatMap((node) => (node.is === 'row' ? [node] : 'holds' in node ? rowsOf(node.holds) : []));
const indent = (blocks: readonly string[], by: number): string => blocks.join('\n').replaceAll('\n', `\n${' '.repeat(by)}`);

/** Words in a line. */
function line(nodes: readonly Node[], reader: TextReader, figures: LiveFigure[]): string {
	return nodes.map((node) => {
		if (node.is === 'component') return node.name === 'Figure' ? figure(node.attributes, reader, figures) : line(node.holds, reader, figures);
		if (node.is === 'text') return node.text.replaceAll('\n', ' ');
		if (node.is === 'code') return node.text;
		if (node.is === 'image') return `(Picture: ${node.alt})`;
		if (node.is === 'link') return `${line(node.holds, reader, figures)} (${node.href})`;
		return 'holds' in node ? line(node.holds, reader, figures) : '\n';
	}).join('');
}

function figure(attributes: Readonly<Record<string, string>>, reader: TextReader, figures: LiveFigure[]): string {
	const shown = shownFigure(attributes, reader);
	const text = figureText(shown, reader.unit);
	// A length that the lesson writes out is no live figure.
	if (attributes.of !== undefined) figures.push({ figure: attributes.of, mm: shown?.mm ?? null, shown: text });
	return text;
}

function component(name: string, attributes: Readonly<Record<string, string>>, holds: readonly Node[], reader: TextReader, figures: LiveFigure[]): readonly string[] {
	const { draft, tolerances, unit } = reader;
	const of = attributes.of ?? '';
	const blocks = () => write(holds, reader, figures);
	switch (name) {
		case 'Step': {
			const title = `${attributes.title} (${attributes.minutes} minutes)`;
			const drawn = attributes.drawing ? [drawing(attributes.drawing, reader)] : [];
			return [`${title}\n${'-'.repeat(title.length)}`, ...drawn, ...blocks(), `[ ] ${attributes.done}`];
		}
		case 'Right': {
			const within = attributes.within === undefined ? undefined : toleranceOf(attributes.within, tolerances) ?? parseFloat(attributes.within);
			return [...blocks(), ...(within === undefined ? [] : [`Give or take ${fixedLength(within, unit)}.`])];
		}
		case 'Slip': return ['If it slips:', ...blocks()];
		case 'Caution': return [`Caution: ${cautionNames[attributes.about as CautionAbout]}.`, ...blocks(), cautionRules];
		case 'Drawing': return [drawing(of, reader)];
		case 'Calculator': return [`(A calculator on the page: ${calculator[of as CalculatorOf].title}.)`];
		case 'Working': {
			const written = unit === 'mm' ? 'cm' : unit;
			const working = workingOf(of, draft, written);
			return working ? [workingWords(working, written)] : [];
		}
		default: return [line([{ is: 'component', name, attributes, holds }], reader, figures)];
	}
}

const drawing = (name: string, { draft, unit }: TextReader): string => `(Drawing: ${lessonDrawing(name, draft, { unit: unit === 'mm' ? 'cm' : unit }).alt})`;
