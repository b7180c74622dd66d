// The lesson language, read without running it: frontmatter, then Markdown with components whose attributes are
// literal. Nothing else is allowed, so that a teacher's own lesson can later be read the same way and be safe.
import type { Issue } from '../drafting/result.ts';

/** `<Step id="wash">`, `</Step>` or `<Figure of="waistRadius" />`, with the line it begins on (1 is the file's first). */
export interface Tag {
	readonly name: string;
	readonly kind: 'open' | 'close' | 'empty';
	readonly attributes: Readonly<Record<string, string>>;
	readonly line: number;
	/** Alone on its line, with an empty line on both sides: what a block component needs. */
	readonly apart: boolean;
	/** First in its paragraph, where the build would take it for a block and leave the paragraph out. */
	readonly leads: boolean;
}

export interface Markup {
	readonly front: Readonly<Record<string, string>>;
	readonly tags: readonly Tag[];
	/** The Markdown below the frontmatter, and the line it starts on. */
	readonly body: string;
	readonly bodyLine: number;
	readonly issues: readonly Issue[];
}

const bareSchemes = ['http:', 'https:', 'mailto:'];

export function readMarkup(text: string, file = ''): Markup {
	const issues: Issue[] = [];
	const at = (line: number) => `${file}:${line}`;
	const lines = text.replaceAll('\r\n', '\n').split('\n');

	const front: Record<string, string> = {};
	let bodyLine = 1;
	const close = lines[0] === '---' ? lines.indexOf('---', 1) : -1;
	if (close < 0) issues.push({ code: 'front-missing', path: at(1), expected: 'key: value lines between two --- lines' });
	else {
		bodyLine = close + 2;
		lines.slice(1, close).forEach((line, i) => {
			const found = /^([a-z][A-Za-z]*): (\S.*)$/.exec(line);
			// A value that YAML would read as something other than what is written is refused, not guessed.
			if (!found || /: |\s#|^[[\]{}&*!|>'"%@`?-]/.test(found[2]!)) issues.push({ code: 'front-value', path: at(i + 2), expected: 'key: plain value', received: line });
			else front[found[1]!] = found[2]!.trim();
		});
	}

	const bodyLines = lines.slice(bodyLine - 1);
	const tags: Tag[] = [];
	bodyLines.forEach((line, i) => {
		const here = at(bodyLine + i);
		for (const found of line.matchAll(/<(\/?)([A-Za-z][\w-]*)([^<>]*?)(\/?)>|[<{}]/g)) {
			const [whole, slash, name, inside, empty] = found;
			if (name === undefined) {
				issues.push({ code: whole === '<' ? 'less-than' : 'brace', path: here, received: line.trim() });
				continue;
			}
			const attributes = readAttributes(inside!);
			if (!/^[A-Z]/.test(name)) issues.push({ code: 'raw-html', path: here, received: whole });
			else if (!attributes || (slash && (inside || empty))) issues.push({ code: 'not-literal', path: here, expected: 'name="words"', received: whole });
			else {
				const apart = line.trim() === whole && !bodyLines[i - 1]?.trim() && !bodyLines[i + 1]?.trim();
				tags.push({ name, kind: slash ? 'close' : empty ? 'empty' : 'open', attributes, line: bodyLine + i, apart, leads: line.startsWith(whole) && !bodyLines[i - 1]?.trim() });
			}
		}
		for (const [, target] of line.matchAll(/\]\(\s*([^)\s]*)/g)) {
			const scheme = /^[a-z][a-z0-9+.-]*:/i.exec(target!)?.[0].toLowerCase();
			if (scheme && !bareSchemes.includes(scheme)) issues.push({ code: 'link-scheme', path: here, expected: bareSchemes, received: target });
		}
	});
	return { front, tags, body: bodyLines.join('\n'), bodyLine, issues };
}

/** Null when something other than name="literal" stands between the tag's name and its end. */
export function readAttributes(inside: string): Record<string, string> | null {
	const attributes: Record<string, string> = {};
	const left = inside.replace(/\s+([a-z][A-Za-z]*)="([^"{}]*)"/g, (_, name: string, value: string) => {
		attributes[name] = value;
		return '';
	});
	return left.trim() ? null : attributes;
}
