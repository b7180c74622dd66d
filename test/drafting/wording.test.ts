// Every code has words, and the words are a teacher's: no unsolved number, no word that judges.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkCodes, type Check } from '../../src/lib/drafting/check.ts';
import { draftSkirt, type Draft } from '../../src/lib/drafting/draft.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';
import { parseLength } from '../../src/lib/drafting/length.ts';
import { askAbout, questionCodes } from '../../src/lib/drafting/measurement.ts';
import type { Issue } from '../../src/lib/drafting/result.ts';
import { checkSays, checkSentence, wayOutSentence } from '../../src/lib/ui/wording/check.ts';
import { choiceNames, figureNames, shareWords } from '../../src/lib/ui/wording/figure.ts';
import { issueSays, issueSentence } from '../../src/lib/ui/wording/issue.ts';
import { measurementGuide, measurementName, questionSentence } from '../../src/lib/ui/wording/measurement.ts';
import { anySkirt, anyStyle, halfCircle, ansurBody, nhanesBody, seeded, type Random } from './bodies.ts';

const judging = /\b(too (big|small|large|fat|thin)|normal|flattering|plus|failed|behind|simply|just)\b/i;
function reads(sentence: string): void {
	if (/NaN|undefined|null|Infinity|\[object|\b(skirt|body)\.[a-z]/.test(sentence) || judging.test(sentence) || !/^[A-Z0-9“−]/.test(sentence) || sentence.length > 300) expect(sentence).toBe('a sentence');
}

const ansurOrNhanes = (random: Random, i: number): ReturnType<typeof ansurBody> => (i % 2 ? ansurBody(random) : { waistToFloor: 1000, ...nhanesBody(random) } as ReturnType<typeof ansurBody>);
const drafts: readonly Draft[] = (() => {
	const random = seeded(71);
	return Array.from({ length: 3000 }, (_, i) => {
		const { waist, hip, waistToHip, waistToFloor } = ansurOrNhanes(random, i);
		// Misread by ten, in the other unit, or by two digits.
		const before = [10, 2.54, 1][i % 3]! * waist;
		const readings = i % 11 ? {} : { readings: { waist: i % 3 === 2 ? [725, 752] : [before, waist] } };
		const body = i % 9 === 0 ? { waist } : i % 9 === 1 ? { waist, hip } : { waist, hip: i % 9 === 2 ? hip * 1.5 : hip, waistToHip, waistToFloor };
		return draftSkirt(i % 11 === 0 && i % 3 === 2 ? { ...body, ...readings, waist: 752 } : { ...body, ...readings }, i % 2 ? anySkirt(random) : anyStyle(random, waist));
	}).flatMap((draft) => (draft.ok ? [draft.value] : []));
})();

test('Every check that a draft gave reads as sentences in both units, and so does each way out', () => {
	const met = new Map<string, Check>();
	for (const { checks } of drafts) {
		for (const check of checks) {
			met.set(check.code, check);
			for (const unit of ['cm', 'in'] as const) {
				reads(checkSentence(check, unit));
				check.waysOut.forEach((way) => reads(wayOutSentence(way, unit)));
			}
		}
	}
	// Every code in the list is met by some skirt, and every one has words.
	expect([...met.keys()].sort()).toEqual([...checkCodes].sort());
	expect(Object.keys(checkSays).sort()).toEqual([...checkCodes].sort());
});

test('A seam that doesn’t walk would be said too', () => {
	reads(checkSentence({ code: 'seam-walk', severity: 'stop', about: 'centre back', figures: { lengthA: 500, lengthB: 510, ease: 0 }, waysOut: [] }, 'cm'));
	reads(checkSentence({ code: 'band-to-waist', severity: 'stop', figures: { waistSeam: 500, band: 510, underlap: 30, cutLength: 600 }, waysOut: [] }, 'in'));
});

/** Every code that drafting and the draft and paper commands can give, as they are written in the source. */
const written = [...['', 'band/'].flatMap((folder) => readdirSync(`src/lib/drafting/${folder}`).filter((name) => name.endsWith('.ts')).map((name) => `src/lib/drafting/${folder}${name}`)), 'src/commands/draft.ts', 'src/commands/json-file.ts', 'src/commands/paper.ts', 'src/commands/paper-options.ts']
	.filter((name) => !name.endsWith('check.ts'))
	.flatMap((name) => [...readFileSync(name, 'utf8').matchAll(/(?:code: |issue\(|deeper\(|this\.say\(name(?:\.slice\(0, 64\))?, |\? |: )'([a-z]+(?:-[a-z]+)+)'/g)].map(([, code]) => code!))
	.filter((code) => !(questionCodes as readonly string[]).includes(code));

test('Every issue code in the source has words, and every code with words is in the source', () => {
	expect(new Set(written).size).toBeGreaterThan(20);
	expect([...new Set(written)].sort()).toEqual(Object.keys(issueSays).sort());
});

test('Issues as they come read as sentences, in both units', () => {
	const typed = ['', 'x', '7 furlongs', '-7', '1/0', '1,250', '9'.repeat(20), '9'.repeat(80)].flatMap((text) => { const parsed = parseLength(text, 'cm', 'body.waist'); return parsed.ok ? [] : parsed.issues; });
	const inputs = [
		7, {}, { unit: 'cm', body: { waist: 28, hip: 9000, waistToHip: [], weight: 1 }, skirt: { share: 9, length: 58, panels: 1.5, hem: -1, zipAt: 'front', band: [], allowances: { seam: 'x' } } },
		{ unit: 'in', body: { waist: 280 }, skirt: { share: 'x', length: 900 } }
	].flatMap((value) => { const input = checkInput(value); return input.ok ? [] : input.issues; });
	const random = seeded(72);
	const refused = Array.from({ length: 400 }, () => draftSkirt({ waist: 250 + 500 * random() }, { ...anySkirt(random), share: 1 + random(), panels: 1, hem: 300 * random(), length: 30 + 400 * random(), lining: { shorterBy: 400 * random(), share: null } }))
		.flatMap((draft) => (draft.ok ? [] : draft.issues));
	// Contour bands and facings that can't be, elastics without a hip, linings that are too full.
	const styled = Array.from({ length: 2000 }, () => {
		const waist = 400 + 500 * random();
		return draftSkirt({ waist }, { ...anyStyle(random, waist), length: 120 + 600 * random() });
	}).flatMap((draft) => (draft.ok ? [] : draft.issues));
	// Hems that slant so much that their corners have no mirror image.
	const slanted = draftSkirt({ waist: 740 }, { ...halfCircle, lengths: { front: 300, sideLeft: 500, sideRight: 500, back: 300 }, share: 0.25, panels: 4, hemFinish: 'turned', hemCorner: 'foldedBack', hem: 60 });
	const lists = [[0.5], 'x'].flatMap((panelShares) => { const input = checkInput({ unit: 'cm', body: { waist: 74 }, skirt: { share: 0.5, length: 58, panels: 2, panelShares } }); return input.ok ? [] : input.issues; });
	const all: readonly Issue[] = [...typed, ...inputs, ...refused, ...styled, ...(slanted.ok ? [] : slanted.issues), ...lists, ...['as-made-flared', 'not-json', 'file-not-read', 'file-too-large', 'one-file', 'unknown-option', 'option-missing', 'option-twice', 'not-a-choice', 'code-too-long', 'not-a-date', 'file-not-written'].map((code) => ({ code, path: '', expected: 1, received: 'x' }))];
	for (const issue of all) for (const unit of ['cm', 'in'] as const) {
		const sentence = issueSentence(issue, unit);
		// The path of a field without a name may be shown in quotes.
		reads(sentence.replace(/“[^”]*”/g, '“that”'));
	}
	expect(new Set(all.map(({ code }) => code))).toEqual(new Set(Object.keys(issueSays)));
});

test('A refusal offers its best guess in the unit that makes sense of it', () => {
	const input = checkInput({ unit: 'cm', body: { waist: 28 }, skirt: { share: 0.5, length: 58 } });
	expect(input.ok ? '' : issueSentence(input.issues[0]!, 'cm')).toBe('28.0 cm looks like a slip. Did you mean 28 in?');
	const slip = checkInput({ unit: 'cm', body: { waist: 725 }, skirt: { share: 0.5, length: 58 } });
	expect(slip.ok ? '' : issueSentence(slip.issues[0]!, 'cm')).toBe('725.0 cm looks like a slip. Did you mean 72.5 cm?');
	const none = checkInput({ unit: 'cm', body: { waist: 300 }, skirt: { share: 0.5, length: 58 } });
	expect(none.ok ? '' : issueSentence(none.issues[0]!, 'cm')).toBe('300.0 cm can’t be right here. Write a length from 30.0 cm to 250.0 cm.');
});

test('Every question about a reading reads as a question', () => {
	const asked = [
		...askAbout('length', 1180, { unit: 'cm', earlier: [118] }), ...askAbout('waist', 1829, { unit: 'in', earlier: [720] }), ...askAbout('waist', 752, { unit: 'cm', earlier: [725] }),
		...askAbout('length', 1690, { unit: 'cm' }), ...askAbout('waist', 1000, { unit: 'cm', others: { hip: 960 } })
	];
	expect(asked.map(({ code }) => code).sort()).toEqual([...questionCodes].sort());
	for (const question of asked) for (const unit of ['cm', 'in'] as const) {
		const sentence = questionSentence(question, unit);
		reads(sentence);
		expect(sentence).toMatch(/\?$/);
	}
});

test('Figures, choices and measurements have names, and each measurement has its guidance', () => {
	for (const { figures } of drafts.slice(0, 20)) for (const name of Object.keys(figures)) expect(figureNames).toHaveProperty(name);
	for (const { checks } of drafts) for (const { waysOut } of checks) for (const { path } of waysOut) if (!(path in choiceNames)) expect(choiceNames).toHaveProperty([path]);
	for (const measurement of ['waist', 'hip', 'waistToHip', 'length'] as const) {
		reads(measurementName(measurement));
		[measurementGuide[measurement].short, ...measurementGuide[measurement].more].forEach(reads);
	}
});

test('A share that has no name is rounded up, never down', () => {
	expect([shareWords(0.5), shareWords(1 / 3), shareWords(0.28648), shareWords(0.2)]).toEqual(['half a circle', 'a third of a circle', '0.287 of a circle', '0.2 of a circle']);
});
