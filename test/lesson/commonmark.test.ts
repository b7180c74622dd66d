// The specification's own examples (CommonMark 0.31.2, the package commonmark-spec), read by our tree and written as HTML here.
import { tests as examples } from 'commonmark-spec';
import MarkdownIt from 'markdown-it';
import { expect, test } from 'vitest';
import { treeOf, type Node } from '../../src/lib/lesson/tree.ts';

const { escapeHtml } = new MarkdownIt().utils;

/** As the specification writes it. */
function html(nodes: readonly Node[]): string {
	return nodes.map(write).join('');
}
const blocks = new Set(['paragraph', 'quote', 'bullets', 'numbers', 'heading', 'code-block', 'rule']);
function write(node: Node): string {
	switch (node.is) {
		case 'text': return escapeHtml(node.text);
		case 'code': return `<code>${escapeHtml(node.text)}</code>`;
		case 'code-block': return `<pre><code${node.language ? ` class="language-${escapeHtml(node.language)}"` : ''}>${escapeHtml(node.text)}</code></pre>\n`;
		case 'break': return '<br />\n';
		case 'rule': return '<hr />\n';
		case 'image': return `<img src="${escapeHtml(node.src)}" alt="${escapeHtml(node.alt)}"${node.title ? ` title="${escapeHtml(node.title)}"` : ''} />`;
		case 'link': return `<a href="${escapeHtml(node.href)}"${node.title ? ` title="${escapeHtml(node.title)}"` : ''}>${html(node.holds)}</a>`;
		case 'emphasis': return `<em>${html(node.holds)}</em>`;
		case 'strong': return `<strong>${html(node.holds)}</strong>`;
		case 'paragraph': return `<p>${html(node.holds)}</p>\n`;
		case 'heading': return `<h${node.level}>${html(node.holds)}</h${node.level}>\n`;
		case 'quote': return `<blockquote>\n${html(node.holds)}</blockquote>\n`;
		case 'bullets': return `<ul>\n${html(node.holds)}</ul>\n`;
		case 'numbers': return `<ol${node.start === 1 ? '' : ` start="${node.start}"`}>\n${html(node.holds)}</ol>\n`;
		case 'item': {
			const [first] = node.holds;
			return `<li>${first && blocks.has(first.is) ? '\n' : ''}${node.holds.map((held, i) => write(held) + (!blocks.has(held.is) && node.holds[i + 1] && blocks.has(node.holds[i + 1]!.is) ? '\n' : '')).join('')}</li>\n`;
		}
		default: throw new Error(`no example has a ${node.is}`);
	}
}

const rawHtml = new Set(['HTML blocks', 'Raw HTML']);
/** Examples of other chapters whose point is, or which hold, raw HTML or an address that we don't follow. */
const elsewhere = (markdown: string) => /<[a-z/!?][^>@:\s]*(\s|>|$)/im.test(markdown.replace(/`+[^`]*`+/g, '')) || /[(<]\s*[a-z][a-z0-9+.-]*:/i.test(markdown.replace(/https?:|mailto:/gi, '')) || markdown.includes('](//');
const plain = examples.filter(({ section, markdown }) => !rawHtml.has(section) && !elsewhere(markdown));
const left = examples.filter((example) => !plain.includes(example));

test('Most of the specification is looked at', () => {
	expect(examples.length).toBe(652);
	expect(plain.length).toBeGreaterThan(540);
});

test.each(plain.map(({ number, section, markdown, html: expected }) => [number, section, markdown.replaceAll('→', '\t'), expected.replaceAll('→', '\t')] as const))('Example %i, %s', (_, __, markdown, expected) => {
	expect(html(treeOf(markdown))).toBe(expected);
});

test.each(left.map(({ number, section, markdown }) => [number, section, markdown] as const))('Example %i, %s: HTML in it is words, and nothing is a tag', (_, __, markdown) => {
	const written = html(treeOf(markdown));
	const tags = [...written.matchAll(/<\/?([a-z][a-z0-9]*)/g)].map(([, name]) => name);
	expect(tags.filter((name) => !['p', 'em', 'strong', 'code', 'pre', 'a', 'ul', 'ol', 'li', 'blockquote', 'h1', 'h2', 'br', 'hr', 'img'].includes(name!))).toEqual([]);
	expect(written).not.toMatch(/href="(?!https?:|mailto:|[^"]*$|[^":]*")/);
});
