import { expect, test } from 'vitest';
import { parsePart } from '../../src/lib/lesson/part.ts';

const front = '---\nid: zip\ntitle: The zip\nkind: stage\nminutes: 5\n---\n\n';
const step = (inside: string, attributes = '') =>
	`${front}<Step id="tack-zip" title="Tack it" done="Tacked" minutes="5" drawing="zip-tack"${attributes}>\n\n${inside}\n\n</Step>\n`;
const issuesOf = (text: string) => {
	const part = parsePart(text, 'zip.md');
	return part.ok ? [] : part.issues.map(({ code, path }) => `${code} ${path}`);
};

test('A part is its frontmatter, its steps and the figures it shows', () => {
	const part = parsePart(step('Tack to <Figure of="zipEndBelowSeam" />, then <Figure of="zipEndBelowSeam" />.\n\n<Right within="2 mm">\n\nRight.\n\n</Right>', ' needs="clearance"'));
	expect(part.ok && part.value).toMatchObject({
		id: 'zip', title: 'The zip', kind: 'stage', minutes: 5,
		steps: [{ id: 'tack-zip', title: 'Tack it', done: 'Tacked', minutes: 5, drawing: 'zip-tack', needs: 'clearance' }],
		figures: ['zipEndBelowSeam']
	});
	expect(part.ok && part.value.uses.map(({ name, line, step }) => [name, line, step])).toEqual([
		['Step', 8, 'tack-zip'], ['Figure', 10, 'tack-zip'], ['Figure', 10, 'tack-zip'], ['Right', 12, 'tack-zip']
	]);
});

test.each([
	['raw HTML', 'A <b>bold</b> word', ['raw-html zip.md:10', 'raw-html zip.md:10']],
	['a script', '<script>alert(1)</script>', ['raw-html zip.md:10', 'raw-html zip.md:10']],
	['a comment', '<!-- a note -->', ['less-than zip.md:10']],
	['an expression', 'A {figure} here', ['brace zip.md:10']],
	['an expression for an attribute', 'A <Figure of={waist} /> here', ['not-literal zip.md:10']],
	['an attribute with no quotes', 'A <Figure of=waist /> here', ['not-literal zip.md:10']],
	['a handler', 'A <Figure of="waist" onclick="x" /> here', ['unknown-attribute zip.md:10']],
	['a spread', 'A <Figure {...all} /> here', ['not-literal zip.md:10']],
	['an unknown component', 'A <Widget of="waist" /> here', ['unknown-component zip.md:10']],
	['a bare less-than', 'when a < b', ['less-than zip.md:10']],
	['a script in a link', '[here](javascript:alert)', ['link-scheme zip.md:10']],
	['a block in a sentence', 'Now <Right>ok</Right>', ['needs-empty-lines zip.md:10', 'needs-empty-lines zip.md:10']],
	['a paragraph that begins with a component', '<Figure of="waist" /> is yours.', ['needs-words-before zip.md:10']],
	['a figure that holds words', 'A <Figure of="waist">x</Figure>', ['holds-nothing zip.md:10']],
	['a figure of nothing', 'A <Figure /> here', ['missing-attribute zip.md:10']],
	['a tolerance with no unit', '<Right within="2">\n\nOk.\n\n</Right>', ['bad-attribute zip.md:10']],
	['a tolerance nobody sets', '<Right within="zipTolerance">\n\nOk.\n\n</Right>', ['bad-attribute zip.md:10']],
	['a caution about nothing known', '<Caution about="lions">\n\nRun.\n\n</Caution>', ['bad-attribute zip.md:10']],
	['a tag over two lines', 'A <Figure\nof="waist" /> here', ['less-than zip.md:10']],
	['a component left open', '<Right>\n\nOk.', ['not-open zip.md:14', 'not-closed zip.md:8', 'not-closed zip.md:10']]
])('A lesson with %s is refused, with its line', (_, inside, expected) => {
	const found = issuesOf(step(inside));
	for (const issue of expected) expect(found).toContain(issue);
});

test('A step needs an id, a title, a tick, its minutes, and a drawing or the reason why not', () => {
	const found = issuesOf(`${front}<Step title="Tack it">\n\nTack.\n\n</Step>\n`);
	expect(found).toEqual([
		'missing-attribute zip.md:8', 'missing-attribute zip.md:8', 'missing-attribute zip.md:8', 'drawing-or-reason zip.md:8'
	]);
});

test('Frontmatter must say what the part is', () => {
	expect(issuesOf('Words alone')).toContain('front-missing zip.md:1');
	expect(issuesOf('---\nid: Zip Seam\ntitle: a\nkind: tale\nminutes: ten\nstyle: x\n---\n').sort()).toEqual(
		['bad-id zip.md:1', 'front-unknown zip.md:1', 'front-value zip.md:1', 'front-value zip.md:1']
	);
	expect(issuesOf('---\nid: zip\ntitle: [a]\nkind: reading\nminutes: 3\n---\n')).toContain('front-value zip.md:3');
});
