// A lesson's text as plain data: CommonMark and tables, with our components among them. No HTML, at any place.
// The library is markdown-it: it keeps to CommonMark, answers hostile text in time, and gives tokens, never markup.
import MarkdownIt from 'markdown-it';
import type Token from 'markdown-it/lib/token.mjs';
import { components } from './component.ts';
import { readAttributes } from './markup.ts';

/** What holds other nodes and has nothing else to say. */
export type Holder = 'paragraph' | 'quote' | 'bullets' | 'item' | 'emphasis' | 'strong' | 'table' | 'thead' | 'tbody' | 'row';

export type Node =
	| { readonly is: 'text' | 'code'; readonly text: string }
	| { readonly is: 'code-block'; readonly text: string; readonly language: string }
	| { readonly is: 'break' | 'rule' }
	| { readonly is: 'image'; readonly src: string; readonly alt: string; readonly title: string }
	| { readonly is: Holder; readonly holds: readonly Node[] }
	| { readonly is: 'head-cell' | 'cell'; readonly align: string; readonly holds: readonly Node[] }
	| { readonly is: 'heading'; readonly level: number; readonly holds: readonly Node[] }
	| { readonly is: 'numbers'; readonly start: number; readonly holds: readonly Node[] }
	| { readonly is: 'link'; readonly href: string; readonly title: string; readonly holds: readonly Node[] }
	| { readonly is: 'component'; readonly name: string; readonly attributes: Readonly<Record<string, string>>; readonly holds: readonly Node[] };

/** Where a link may lead: another page of ours, or one of these. A picture stands beside its lesson. */
const schemes = ['http:', 'https:', 'mailto:'];
const schemeOf = (address: string): string | null => /^[a-z][a-z0-9+.-]*:/i.exec(address.trim())?.[0].toLowerCase() ?? null;
export const isLink = (address: string): boolean => schemes.includes(schemeOf(address) ?? 'https:');
export const isPicture = (address: string): boolean => schemeOf(address) === null && !/^[\\/]{2}/.test(address);

const aTag = /<(\/?)([A-Z][A-Za-z]*)((?:\s+[a-z][A-Za-z]*="[^"{}<>]*")*)\s*(\/?)>/y;

interface Tag { readonly name: string; readonly nesting: -1 | 0 | 1; readonly attributes: Readonly<Record<string, string>>; readonly length: number }

/** A component's tag at this place, of this kind; what isn't one stays text. */
function tagAt(text: string, at: number, where: 'block' | 'inline'): Tag | null {
	aTag.lastIndex = at;
	const found = aTag.exec(text);
	if (!found || !Object.hasOwn(components, found[2]!) || components[found[2]!]!.where !== where) return null;
	const [whole, slash, name = '', inside = '', empty] = found;
	return { name, nesting: slash ? -1 : empty ? 0 : 1, attributes: slash ? {} : readAttributes(inside) ?? {}, length: whole.length };
}

const parser = new MarkdownIt('default', { html: false, linkify: false, typographer: false }).disable('strikethrough');
// Refused addresses are weeded out of the tree, where link and picture can be told apart.
parser.validateLink = () => true;
parser.block.ruler.before('fence', 'component', (state, line, _, silent) => {
	const start = state.bMarks[line]! + state.tShift[line]!;
	const text = state.src.slice(start, state.eMarks[line]);
	const tag = tagAt(text, 0, 'block');
	if (!tag || tag.length !== text.trimEnd().length) return false;
	if (silent) return true;
	const token = state.push('component', tag.name, tag.nesting);
	token.meta = tag;
	token.map = [line, line + 1];
	state.line = line + 1;
	return true;
});
parser.inline.ruler.before('autolink', 'component', (state, silent) => {
	const tag = tagAt(state.src, state.pos, 'inline');
	if (!tag) return false;
	if (!silent) state.push('component', tag.name, tag.nesting).meta = tag;
	state.pos += tag.length;
	return true;
});

/** The tree of a lesson's text below its frontmatter. Any text at all has one: what is no component is words. */
export function treeOf(text: string): readonly Node[] {
	return nodesOf(parser.parse(text, {}));
}

interface Open { readonly token: Token; readonly holds: Node[] }

function nodesOf(tokens: readonly Token[]): readonly Node[] {
	const top: Node[] = [];
	const open: Open[] = [];
	const add = (...nodes: readonly Node[]) => (open.at(-1)?.holds ?? top).push(...nodes);
	for (const token of tokens) {
		if (token.type === 'inline') add(...nodesOf(token.children ?? []));
		else if (token.nesting === 1) open.push({ token, holds: [] });
		else if (token.nesting === 0) add(...leaf(token));
		else {
			const ended = open.pop();
			// An end without its beginning: a lesson with one is refused when it is checked.
			if (ended) add(...nodeOf(ended.token, ended.holds));
		}
	}
	for (const left of open.reverse()) top.push(...nodeOf(left.token, left.holds));
	return top;
}

const holders: Readonly<Record<string, Holder>> = {
	paragraph: 'paragraph', blockquote: 'quote', bullet_list: 'bullets', list_item: 'item', em: 'emphasis', strong: 'strong',
	table: 'table', thead: 'thead', tbody: 'tbody', tr: 'row'
};

function nodeOf(token: Token, holds: readonly Node[]): readonly Node[] {
	if (token.type === 'component') return [componentOf(token, holds)];
	const kind = token.type.replace(/_open$/, '');
	// In a tight list an item's words stand without a paragraph.
	if (kind === 'paragraph' && token.hidden) return holds;
	const attribute = (name: string) => token.attrGet(name) ?? '';
	switch (kind) {
		case 'heading': return [{ is: 'heading', level: Number(token.tag.slice(1)), holds }];
		case 'ordered_list': return [{ is: 'numbers', start: Number(token.attrGet('start') ?? 1), holds }];
		case 'link': return isLink(attribute('href')) ? [{ is: 'link', href: attribute('href'), title: attribute('title'), holds }] : holds;
		case 'th': return [{ is: 'head-cell', align: alignOf(token), holds }];
		case 'td': return [{ is: 'cell', align: alignOf(token), holds }];
		default: return [{ is: holders[kind]!, holds }];
	}
}
const alignOf = (token: Token): string => /text-align:(\w+)/.exec(token.attrGet('style') ?? '')?.[1] ?? '';

function componentOf({ meta }: Token, holds: readonly Node[]): Node {
	const { name, attributes } = meta as Tag;
	return { is: 'component', name, attributes, holds };
}

function leaf(token: Token): readonly Node[] {
	switch (token.type) {
		case 'component': return [componentOf(token, [])];
		case 'softbreak': return [{ is: 'text', text: '\n' }];
		case 'hardbreak': return [{ is: 'break' }];
		case 'hr': return [{ is: 'rule' }];
		case 'code_inline': return [{ is: 'code', text: token.content }];
		case 'fence':
		case 'code_block': return [{ is: 'code-block', text: token.content, language: parser.utils.unescapeAll(token.info).trim().split(/\s+/)[0] ?? '' }];
		case 'image': {
			const [src, alt] = [token.attrGet('src') ?? '', wordsOf(nodesOf(token.children ?? []))];
			return isPicture(src) ? [{ is: 'image', src, alt, title: token.attrGet('title') ?? '' }] : [{ is: 'text', text: alt }];
		}
		default: return token.content ? [{ is: 'text', text: token.content }] : [];
	}
}

/** The words in these nodes and nothing else. */
export const wordsOf = (nodes: readonly Node[]): string =>
	nodes.map((node) => ('holds' in node ? wordsOf(node.holds) : 'text' in node ? node.text : node.is === 'image' ? node.alt : node.is === 'break' ? '\n' : '')).join('');
