// Every refusal of a layout has words.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkQuestion } from '../../src/lib/cloth/question.ts';
import { issueSays } from '../../src/lib/ui/wording/issue.ts';
import { layoutIssueSays, layoutIssueSentence } from '../../src/lib/ui/wording/layout-issue.ts';
import { rectangle } from './cases.ts';

test('Every code in the layout question’s source has words, and every code with words is in the source', () => {
	const written = new Set([...readFileSync('src/lib/cloth/question.ts', 'utf8').matchAll(/code: '([a-z-]+)'/g)].map(([, code]) => code!));
	expect(written.size).toBeGreaterThan(10);
	expect([...written].filter((code) => !Object.hasOwn(issueSays, code)).sort()).toEqual(Object.keys(layoutIssueSays).sort());
});

test('A piece that is wider than the cloth is told with both figures, in either unit', () => {
	const read = checkQuestion({ cloth: { width: 90 }, pieces: [rectangle('band', 1, 120, 100, [0])] });
	const [issue] = read.ok ? [] : read.issues;
	expect(layoutIssueSentence(issue!, 'cm')).toBe('A piece is 100.0 cm across where it lies narrowest, and the cloth is 90.0 cm wide. Take wider cloth, allow another turn, or add a seam.');
	expect(layoutIssueSentence(issue!, 'in')).toContain(' in across');
	expect(layoutIssueSentence({ code: 'length-missing', path: '' }, 'cm')).toBeNull();
});
