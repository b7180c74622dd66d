// What is said of readings on the real thing: every reading has its words, short and calm, in both units.
import { expect, test } from 'vitest';
import { madeCounts, madeNames } from '../../src/lib/class/made.ts';
import { ownMade } from '../../src/lib/lesson/own-made.ts';
import { sampleTolerances } from '../../src/lib/lesson/tolerance.ts';
import { flagSays } from '../../src/lib/ui/wording/flag.ts';
import { followsSays, lookAgain, madeFields, placeName, verdictSays } from '../../src/lib/ui/wording/made.ts';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { anySkirt, nhanesBody, seeded } from '../drafting/bodies.ts';
import { draftOf } from '../drafting/made/sample.ts';

const judging = /\b(too (big|small|large|fat|thin)|normal|flattering|plus|failed|behind|simply|just|mistake|careless|ruined|wrong)\b/i;
const reads = (text: string): void => {
	if (/NaN|undefined|null|Infinity|\[object/.test(text) || judging.test(text) || !/^[A-Z0-9]/.test(text)) expect(text).toBe('a sentence');
};

test('Every reading has a label for each of its lengths, and a flag that says no figure', () => {
	for (const name of madeNames) {
		if (name !== 'floor') expect(madeFields[name].labels).toHaveLength(madeCounts[name][1]);
		const flag = flagSays({ code: 'made-out', about: name });
		reads(flag);
		expect(flag).not.toMatch(/\d/);
	}
});

test('Places round the hem have names at the eighths, and lie between two elsewhere', () => {
	expect([0, 1 / 8, 1 / 4, 1 / 2, 7 / 8, 1 / 12, 15 / 16].map(placeName)).toEqual([
		'Centre front', 'Left front', 'Left side', 'Centre back', 'Right front', 'Between centre front and left front', 'Between right front and centre front'
	]);
});

test('On any skirt and any readings, what is said reads as sentences in both units', () => {
	const random = seeded(77);
	let said = 0;
	for (let i = 0; i < 300; i++) {
		const drafted = draftSkirt(nhanesBody(random), anySkirt(random));
		if (!drafted.ok) continue;
		const { figures } = drafted.value;
		const off = (mm: number): number => Math.max(1, mm + (i % 5 === 0 ? 0 : 60 * (random() - 0.5)));
		const lengths = {
			clothAfterWashing: [600 + 1200 * random(), 4000 * random() + 1], radiusDrawn: [off(figures.waistRadius)], waistAfterStaystitch: [off(figures.waistSeamGirth)],
			zipBought: [100 + 900 * random()], waistSeamAfterSewing: [off(figures.waistSeamGirth)],
			floor: Array.from({ length: 8 + (i % 9) }, () => 300 + 40 * random()), hemAbove: i % 2 ? [] : [330 + 30 * random()]
		};
		const kept = Object.fromEntries(Object.entries(lengths).map(([name, all]) => [name, [{ id: name, by: 'p', at: 1, unit: 'cm' as const, lengths: all.map((mm) => ({ mm, typed: String(mm) })) }]]));
		const made = ownMade(drafted.value, kept, sampleTolerances)!;
		for (const one of made.judged) for (const unit of ['cm', 'in'] as const) {
			[verdictSays(one, unit), ...followsSays(one, made.figures, unit)].forEach(reads);
			said++;
		}
	}
	expect(said).toBeGreaterThan(1500);
});

test('A waist that is 12 mm longer says so, and what the band then is', () => {
	const draft = draftOf();
	const made = ownMade(draft, { waistAfterStaystitch: [{ id: 'a', by: 'p', at: 1, unit: 'cm', lengths: [{ mm: 712, typed: '71,2' }] }] }, sampleTolerances)!;
	const [one] = made.judged;
	expect(verdictSays(one!, 'cm')).toBe('It reads 71.2 cm, and 70.0 cm is wanted. That is 12 mm more; up to 5 mm is near enough.');
	// 71.2 + 3 of underlap + 2 × 1.5.
	expect(followsSays(one!, made.figures, 'cm')[1]).toBe('For the waist as it is, cut the band 77.2 cm long. The steps after this one go by that.');
	expect(lookAgain(one!)).toBeNull();
	// Read in inches and put in as centimetres: a quarter off and more.
	const slip = ownMade(draft, { waistAfterStaystitch: [{ id: 'a', by: 'p', at: 1, unit: 'cm', lengths: [{ mm: 280, typed: '28' }] }] }, sampleTolerances)!;
	expect(lookAgain(slip.judged[0]!)).toMatch(/^That is far off/);
});
