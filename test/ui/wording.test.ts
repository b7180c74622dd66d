import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { count, countPeople, duration, have, list } from '../../src/lib/ui/wording/count.ts';
import { sayFraction } from '../../src/lib/ui/wording/fraction.ts';
import { issueSentence } from '../../src/lib/ui/wording/issue.ts';
import { savedLine } from '../../src/lib/ui/wording/saved.ts';
import { refusalSays } from '../../src/lib/ui/wording/refusal.ts';
import { sentencesAt } from '../../src/lib/ui/wording/sentences.ts';
import { placeAt } from '../../src/lib/ui/mast.ts';
import { wayOn } from '../../src/lib/ui/way-on.ts';

test('one step, two steps, no steps', () => {
	expect([0, 1, 2].map((n) => count(n, 'step', 'steps'))).toEqual(['no steps', '1 step', '2 steps']);
});

test('people are counted in words up to twelve', () => {
	expect([0, 1, 4, 12, 13].map((n) => `${countPeople(n)} ${have(n)} asked`)).toEqual([
		'No one has asked', 'One has asked', 'Four have asked', 'Twelve have asked', '13 have asked'
	]);
});

test('time is said in minutes, then hours, then days', () => {
	const minute = 60_000;
	expect([0, 59_999, minute, 14 * minute, 60 * minute, 125 * minute, 50 * 60 * minute].map(duration)).toEqual([
		'under a minute', 'under a minute', '1 min', '14 min', '1 h', '2 h 5 min', '2 days'
	]);
	expect(duration(-5)).toBe('under a minute');
});

test('names are listed with an and before the last', () => {
	expect([[], ['Wen'], ['Wen', 'Bea'], ['Wen', 'Bea', 'Jory']].map(list)).toEqual(['', 'Wen', 'Wen and Bea', 'Wen, Bea and Jory']);
});

test('fractions are said in words, and what has no words is read as it stands', () => {
	expect(['1/2', '1/4', '5/8', '11/16'].map((f) => sayFraction(f, true))).toEqual(['and a half', 'and a quarter', 'and five eighths', 'and eleven sixteenths']);
	expect(['1/2', '1/8', '3/4'].map((f) => sayFraction(f, false))).toEqual(['half', 'one eighth', 'three quarters']);
	expect(sayFraction('3/7', false)).toBe('3/7');
});

test('the saved line never says sent while something waits', () => {
	const state = { waiting: 0, savedAt: 1, kept: true, trouble: 'none' } as const;
	expect(savedLine(state, '14:05')).toBe('Saved on this device 14:05 · sent to your teacher');
	expect(savedLine({ ...state, waiting: 1 }, '14:05')).toBe('Saved on this device 14:05 · not yet sent to your teacher');
	expect(savedLine({ ...state, waiting: 3 }, '14:05')).toBe('Saved on this device 14:05 · not yet sent to your teacher, 3 things wait');
	expect(savedLine({ ...state, savedAt: null }, '')).toBe('');
	for (const trouble of ['signed-out', 'refused'] as const) expect(savedLine({ ...state, waiting: 1, trouble }, '14:05')).not.toContain('· sent');
});

test('what is held in memory alone is never called saved', () => {
	const line = savedLine({ waiting: 1, savedAt: 1, kept: false, trouble: 'none' }, '14:05');
	expect(line).toBe('Held on this page 14:05 · not yet sent to your teacher. Keep this page open.');
});

test('a refusal says how to mend it, with its numbers, and only at its own field', () => {
	const issues = [{ code: 'passphrase-short', path: 'passphrase', expected: 15, received: 4 }, { code: 'name-missing', path: 'name' }];
	expect(sentencesAt(issues, 'passphrase')).toEqual(['A passphrase has 15 characters or more; this has 4. Four or five words with spaces make a good one.']);
	expect(sentencesAt(issues, 'words')).toEqual([]);
	expect(sentencesAt(undefined, 'name')).toEqual([]);
	expect(refusalSays({ code: 'not-a-length', path: '' })).toBeNull();
	// A name that every object has is no code of ours.
	expect(refusalSays({ code: 'constructor', path: '' })).toBeNull();
});

test('every code that a form of ours refuses with has words', () => {
	const files = ['src/routes', 'src/lib/class', 'src/lib/server'].flatMap((root) => readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts')).map((name) => `${root}/${name}`));
	const codes = new Set(files.flatMap((file) => [...readFileSync(file, 'utf8').matchAll(/code: '([a-z]+(?:-[a-z]+)+)', path/g)].map(([, code]) => code!)));
	expect(codes.size).toBeGreaterThan(20);
	// A page may have the words for what it alone shows.
	const pages = readdirSync('src/routes', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.svelte')).map((name) => readFileSync(`src/routes/${name}`, 'utf8'));
	const onPage = (code: string) => pages.some((page) => page.includes(`'${code}': '`));
	expect([...codes].filter((code) => !onPage(code) && issueSentence({ code, path: '' }, 'cm').includes(`(${code})`))).toEqual([]);
});

test('the notch stands at the deepest place that begins the address, by whole segments', () => {
	const places = ['/', '/classes/a', '/classes/a/numbers', '/lessons'].map((href) => ({ href, label: href }));
	expect(placeAt(places, '/classes/a/numbers/m')?.href).toBe('/classes/a/numbers');
	expect(placeAt(places, '/classes/a')?.href).toBe('/classes/a');
	expect(placeAt(places, '/classes/ab')).toBeNull();
	expect(placeAt(places, '/')?.href).toBe('/');
});

test('after signing in one goes on only to a page of ours', () => {
	const next = (value: string) => wayOn(new URL(`http://hall.test/sign-in?next=${encodeURIComponent(value)}`));
	expect(next('/skirt/abc?step=1')).toBe('/skirt/abc?step=1');
	for (const away of ['https://elsewhere.test/', '//elsewhere.test', '/\\elsewhere.test', '/\t/elsewhere.test', 'skirt', '', '//']) expect(next(away)).toBeNull();
	expect(wayOn(new URL('http://hall.test/sign-in'))).toBeNull();
});
