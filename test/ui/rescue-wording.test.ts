// The words of a rescue: every code has them, one action a sentence, short, and never a word that judges.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { asMadeOf } from '../../src/lib/drafting/made/as-made.ts';
import { optionCodes, type OptionCode } from '../../src/lib/drafting/made/option.ts';
import { rescueCodes } from '../../src/lib/drafting/made/rescue-code.ts';
import { lookCodes, rescue, rescuePaths } from '../../src/lib/drafting/made/rescue.ts';
import { issueSays } from '../../src/lib/ui/wording/issue.ts';
import { madeIssueSays, madeIssueSentence, readingNames } from '../../src/lib/ui/wording/made-issue.ts';
import { faultSays, faultSentence, lookSays, optionSays, optionSentence, rescueNames } from '../../src/lib/ui/wording/rescue.ts';
import { ansurBody, anySkirt, nhanesBody, seeded } from '../drafting/bodies.ts';
import { draftOf } from '../drafting/made/sample.ts';
import { wrong } from '../drafting/made/wrong.ts';

const judging = /\b(too (big|large|fat|thin)|normal|flattering|plus|failed|behind|simply|just|mistake|careless|ruined|wrong)\b/i;
/** Words in the longest sentence; a length such as 72.5 cm or 28 5/8 in is one word. */
const longestSentence = (text: string): number => Math.max(...text.replace(/−?\d[\d./ ]*(cm|mm|in)\b/g, 'N').split(/[.?:] ?/).map((one) => one.split(/\s+/).filter(Boolean).length));
function reads(text: string): void {
	if (/NaN|undefined|null|Infinity|\[object/.test(text) || judging.test(text) || !/^[A-Z0-9“]/.test(text) || longestSentence(text) > 16) expect(`${text} (${longestSentence(text)})`).toBe('short, calm and whole');
}

test('Every code has its words, and nothing else has', () => {
	expect(Object.keys(rescueNames).sort()).toEqual([...rescueCodes].sort());
	expect(Object.keys(faultSays).sort()).toEqual([...rescueCodes].sort());
	expect(Object.keys(lookSays).sort()).toEqual([...lookCodes].sort());
	expect(Object.keys(optionSays).sort()).toEqual([...optionCodes].sort());
	for (const text of [...Object.values(lookSays), ...Object.values(rescueNames)]) reads(text);
});

test('The first thing is to stop', () => {
	expect(lookSays['shears-down']).toBe('Put the shears down. Nothing more is cut for now.');
	const first = new Set(rescueCodes.map((code) => rescuePaths[code].look[0]!));
	expect([...first].sort()).toEqual(['needle-up', 'shears-down']);
});

test('On any skirt and in both units, what is wrong and what to do are short sentences', () => {
	const random = seeded(31);
	const met = new Set<OptionCode>();
	for (let i = 0; i < 300; i++) {
		const drafted = draftSkirt(i % 2 ? ansurBody(random) : nhanesBody(random), anySkirt(random));
		if (!drafted.ok) continue;
		for (const code of rescueCodes) {
			const found = rescue(code, drafted.value, wrong(code, drafted.value, random));
			for (const unit of ['cm', 'in'] as const) {
				if (!found.ok) {
					for (const issue of found.issues) reads(madeIssueSentence(issue, unit) ?? '');
					continue;
				}
				reads(faultSentence(found.value, unit));
				for (const option of found.value.options) {
					met.add(option.code);
					reads(optionSentence(option, unit));
				}
			}
		}
	}
	expect(optionCodes.filter((code) => !met.has(code))).toEqual([]);
});

test('The numbers are said in the learner’s unit', () => {
	const found = rescue('waist-cut-small', draftOf(), { waistSeamAfterSewing: 690 });
	if (!found.ok) throw new Error(JSON.stringify(found.issues));
	// 10/π = 3.18 mm, an eighth of an inch; 18.18 mm is 11/16 in and a little.
	expect(faultSentence(found.value, 'cm')).toBe('The waist sews to 69.0 cm, and 70.0 cm was planned. That is 10 mm less.');
	expect(optionSentence(found.value.options[0]!, 'cm')).toBe('Sew 18 mm from the cut edge, 3 mm deeper. The waist is then 70.0 cm, as planned.');
	expect(optionSentence(found.value.options[0]!, 'in')).toBe('Sew 11/16 in from the cut edge, 1/8 in deeper. The waist is then 27 1/2 in, as planned.');
});

/** Codes of issues as they are written in the source of what is made. */
const written = readdirSync('src/lib/drafting/made').flatMap((name) => [...readFileSync(`src/lib/drafting/made/${name}`, 'utf8').matchAll(/code: '([a-z]+(?:-[a-z]+)+)',/g)].map(([, code]) => code!));
test('Every issue about what is made has words, here or among drafting’s', () => {
	expect([...new Set(written)].filter((code) => !Object.hasOwn(issueSays, code)).sort()).toEqual(Object.keys(madeIssueSays).sort());
	const draft = draftOf();
	const floor = Array.from({ length: 8 }, (_, i) => ({ place: i / 8, distance: 300 + i }));
	const refusals = [
		asMadeOf(draft, { floor: floor.slice(2) }), asMadeOf(draft, { floor: [...floor, floor[0]!] }), asMadeOf(draft, { floor, hemAbove: 200 }), asMadeOf(draft, { floor, hemAbove: 1200 }),
		...rescueCodes.map((code) => rescue(code, draft, {}))
	];
	const said = refusals.flatMap((one) => (one.ok ? [] : one.issues.map((issue) => madeIssueSentence(issue, 'cm') ?? 'nothing')));
	said.forEach(reads);
	// Four readings refused, and every rescue but the one that asks for nothing.
	expect(said).toHaveLength(4 + rescueCodes.length - 1);
	expect(said[2]).toBe('The cloth doesn’t reach so low. 32.2 cm above the floor is the lowest for the hem fold.');
	expect(Object.keys(readingNames).length).toBeGreaterThan(12);
});
