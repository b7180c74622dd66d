import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import type { NotchMeeting, WalkRow } from '../../src/lib/drafting/walk.ts';
import { walkOf } from '../../src/lib/drafting/walk.ts';
import WalkTable from '../../src/lib/ui/WalkTable.svelte';
import { easeWords, notchWords, sidesOf, walkSummary } from '../../src/lib/ui/wording/walk.ts';
import { sampleDraft } from '../paper/sample-draft.ts';

const row: WalkRow = {
	name: 'waist to band', a: [], b: [], lengthA: 750, lengthB: 750, ease: 0, left: 0, notches: [], unmarked: false, lengthsAgree: true, notchesMeet: true
};
const notch: NotchMeeting = { marks: 'centre front', side: 'a', place: 375, meets: 'notch', partner: 375, differs: 0, otherKind: false };

test('Ease is said in words, and what is too long in its size', () => {
	expect(easeWords(row, 'cm')).toBe('edge to edge');
	expect(easeWords({ ...row, ease: 10 }, 'cm')).toBe('ease in 10 mm of the first');
	expect(easeWords({ ...row, ease: -12.7 }, 'in')).toBe('ease in 1/2 in of the second');
	expect(easeWords({ ...row, left: 0.02, lengthsAgree: false }, 'cm')).toBe('the first is 0.02 mm too long');
	expect(easeWords({ ...row, left: -7.5, lengthsAgree: false }, 'cm')).toBe('the second is 7.5 mm too long');
});

test('Notches meet, are measured to, or are named with what is amiss', () => {
	expect(notchWords(row, 'cm')).toBe('none');
	expect(notchWords({ ...row, notches: [notch] }, 'cm')).toBe('meets');
	expect(notchWords({ ...row, notches: [notch, notch] }, 'cm')).toBe('all 2 meet');
	expect(notchWords({ ...row, notches: [{ ...notch, meets: 'none', partner: null, differs: null }], unmarked: true }, 'cm')).toBe('1 to measure to');
	const amiss = [notch, { ...notch, differs: -7.5 }, { ...notch, marks: 'left side', differs: null }, { ...notch, marks: 'centre back', otherKind: true }];
	expect(notchWords({ ...row, notches: amiss, notchesMeet: false }, 'cm')).toBe('centre front: 7.5 mm apart; left side: no partner; centre back: single on one edge, double on the other');
});

test('The summary counts what doesn’t walk and names it', () => {
	expect(walkSummary([row, row])).toMatch(/^All 2 seams walk/);
	expect(walkSummary([row, { ...row, lengthsAgree: false }])).toBe('1 seam doesn’t walk: waist to band. Nothing is cut until it does.');
});

test('A row names the pieces of its sides', () => {
	const rows = walkOf(sampleDraft({ panels: 2, zipAt: 'leftSide' }));
	expect(sidesOf(rows.find(({ name }) => name === 'waist to band')!)).toEqual(['back and front', 'band']);
});

test('The table has a row a seam with both lengths in the reader’s unit', () => {
	const { pieces, seams } = sampleDraft();
	const shown = render(WalkTable, { props: { pieces, seams, unit: 'in' } }).body;
	expect(shown.match(/<tr/g)).toHaveLength(seams.length + 1);
	// 740 mm is 29.13 in, to an eighth 29 1/8.
	expect(shown.replaceAll(/<!--.*?-->/g, '')).toContain('29<span class="fraction" aria-hidden="true">1/8</span>');
	expect(shown).toContain('In inches, along the stitch line');
});
