import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import { compareDrafts, type Compared } from '../../src/lib/drafting/compare.ts';
import CompareTable from '../../src/lib/ui/CompareTable.svelte';
import { areaWords, compareRows, hangWords, variantTitle } from '../../src/lib/ui/wording/compare.ts';
import { sampleDraft } from '../paper/sample-draft.ts';

const { body, skirt } = sampleDraft();
function columnsOf(...others: readonly Partial<typeof skirt>[]): readonly Compared[] {
	const result = compareDrafts(body, [skirt, ...others.map((other) => ({ ...skirt, ...other }))], { width: 1400 });
	if (!result.ok) throw new Error(JSON.stringify(result.issues));
	return result.value;
}
const rowOf = (name: string, columns: readonly Compared[], unit: 'cm' | 'in' = 'cm') => compareRows(columns, unit, 1400).find((row) => row.name === name)!;

test('What sets a variant apart is its name', () => {
	const [, full, longer, same] = columnsOf({ share: 1, panels: 2 }, { length: 700 }, {});
	expect(variantTitle(full!, 'cm')).toBe('A full circle, 2 panels');
	expect(variantTitle(longer!, 'in')).toBe('27 1/2 in long');
	expect(variantTitle(same!, 'cm')).toBe('The same again');
});

test('The hem is told with how much more or less it is than hers', () => {
	// 740 + π·580 = 2562.1 and 740 + 2π·580 = 4384.2 (circle geometry).
	const { cells } = rowOf('Round the hem', columnsOf({ share: 1, panels: 2 }, {}));
	expect(cells.map(({ text, more }) => [text, more[0]])).toEqual([['256.2 cm', '3.5 times the waist seam'], ['438.4 cm', '182.2 cm more'], ['256.2 cm', 'the same']]);
	expect(rowOf('Round the hem', columnsOf({ share: 0.25 })).cells[1]!.more[0]).toBe('91.1 cm less');
});

test('Hem effort begins with the finish that is chosen', () => {
	// θ·hem: π·20 = 62.8 mm for a narrow hem, twice that turned once (circle geometry).
	const { text, more } = rowOf('Hem to ease in', columnsOf({})).cells[0]!;
	expect([text.slice(0, 14), more[0]!.slice(0, 20)]).toEqual(['narrow: 6.3 cm', 'turned once: 12.6 cm']);
});

test('A skirt that can’t be cut says why, and nothing else', () => {
	const columns = columnsOf({ share: 2, panels: 1 });
	expect(rowOf('Round the hem', columns).cells[1]!.text).toBe('–');
	const why = rowOf('To think about', columns).cells[1]!;
	expect([why.text, why.flag, why.more.length]).toEqual(['can’t be cut', true, 1]);
});

test('Every share has words for how it falls, and areas are in the reader’s measure', () => {
	expect(new Set([0.25, 0.5, 0.75, 1, 2].map(hangWords)).size).toBe(5);
	// 1 yd = 914.4 mm.
	expect([areaWords(914.4 ** 2, 'in'), areaWords(1_250_000, 'cm')]).toEqual(['1.00 sq yd', '1.25 m²']);
});

test('No cell says undefined or NaN, in either unit, for any share', () => {
	for (const unit of ['cm', 'in'] as const) for (const share of [0.1, 0.25, 1 / 3, 0.75, 1, 1.5]) {
		expect(JSON.stringify(compareRows(columnsOf({ share, panels: 4 }), unit, 1400))).not.toMatch(/undefined|NaN|Infinity/);
	}
});

test('Table and cards hold the same words, her own first', () => {
	const shown = render(CompareTable, { props: { columns: columnsOf({ share: 1, panels: 2 }), unit: 'cm', clothWidth: 1400, first: 'Yours' } }).body.replaceAll(/<!--.*?-->/g, '');
	expect(shown.match(/A full circle, 2 panels/g)).toHaveLength(2);
	expect(shown.indexOf('Yours')).toBeLessThan(shown.indexOf('A full circle'));
	expect(shown.match(/438\.4 cm/g)).toHaveLength(2);
});
