// What was measured on the real thing, on the hand-out: the numbers that count now, in her unit, and nothing while nothing was.
import { expect, test } from 'vitest';
import { ownMade } from '../../src/lib/lesson/own-made.ts';
import { sampleTolerances } from '../../src/lib/lesson/tolerance.ts';
import { handoutSheets } from '../../src/lib/paper/handout.ts';
import { madeRows } from '../../src/lib/paper/handout-made.ts';
import { textLength } from '../../src/lib/paper/letter.ts';
import { MARGIN, type TextItem } from '../../src/lib/paper/sheet.ts';
import { draftOf } from '../drafting/made/sample.ts';

const draft = draftOf();
const read = (lengths: Readonly<Record<string, readonly number[]>>) => ownMade(draft, Object.fromEntries(Object.entries(lengths).map(([name, all]) => [
	name, [{ id: name, by: 'p', at: 1, unit: 'cm' as const, lengths: all.map((mm) => ({ mm, typed: String(mm / 10) })) }]
])), sampleTolerances)!;
const everything = read({
	clothAfterWashing: [1400, 2000], radiusDrawn: [224.5], waistAfterStaystitch: [712], zipBought: [250], waistSeamAfterSewing: [713],
	floor: Array.from({ length: 16 }, (_, i) => 300 + 15 * Math.sin((Math.PI * i) / 16))
});

test('A waist that is out has its band beside it; one that is near enough has what is eased in', () => {
	// 712 + 30 of underlap + 2 × 15.
	expect(madeRows(read({ waistAfterStaystitch: [712] }), 'cm')).toEqual([['waist after staystitching', 'planned 70.0', '71.2'], ['band to cut for it', '', '77.2']]);
	expect(madeRows(read({ waistAfterStaystitch: [704] }), 'cm')).toEqual([['waist after staystitching', 'planned 70.0', '70.4'], ['ease into the band', '', '0.4']]);
	expect(madeRows(read({ waistAfterStaystitch: [700] }), 'cm')).toHaveLength(1);
});

test('The hem’s trims stand four in a row, from centre front to the wearer’s left', () => {
	const rows = madeRows(read({ floor: [300, 301, 306, 312, 315, 312, 306, 301] }), 'cm');
	expect(rows.map(([, , result]) => result)).toEqual(['33.0', '1.5    1.4    0.9    0.3', '0.0    0.3    0.9    1.4']);
});

test('On the sheet the rows keep to their line, in both units and on both papers; without readings there are none', () => {
	for (const paper of ['a4', 'letter'] as const) for (const unit of ['cm', 'in'] as const) {
		const options = { paper, unit, code: 'WREN B', date: '2026-11-25', stages: [], gate: [], bodyFigures: false };
		const texts = handoutSheets(draft, { ...options, made: everything }).flatMap(({ items, width }) => items.flatMap((item) => (item.item === 'text' ? [{ ...item, width }] : [])));
		const line = (text: string) => texts.find((one) => one.text === text)!;
		const ends = ({ at, text, face, size, anchor }: TextItem): readonly [number, number] => anchor === 'end' ? [at[0] - textLength(text, face, size), at[0]] : [at[0], at[0] + textLength(text, face, size)];
		for (const [name, aside, result] of madeRows(everything, unit)) {
			if (name === '') continue;
			const { at, width } = line(name);
			const same = texts.filter((one) => Math.abs(one.at[1] - at[1]) < 0.01 && [name, aside, result].includes(one.text)).map(ends).sort((a, b) => a[0] - b[0]);
			for (const [i, [from, to]] of same.entries()) {
				expect(from).toBeGreaterThanOrEqual(same[i - 1]?.[1] ?? MARGIN);
				expect(to).toBeLessThanOrEqual(width - MARGIN);
			}
			expect(same).toHaveLength(aside === '' ? 2 : 3);
		}
		expect(JSON.stringify(handoutSheets(draft, { ...options, made: null }))).not.toContain('As made');
	}
});
