// Every code of a style has words, and the words are a teacher's: no unsolved number, no word that judges.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { draftPleated } from '../../src/lib/drafting/pleated/draft.ts';
import { pleatedCodes } from '../../src/lib/drafting/pleated/checks.ts';
import type { Issue, Result } from '../../src/lib/drafting/result.ts';
import { draftTiered } from '../../src/lib/drafting/tiered/draft.ts';
import { tieredCodes } from '../../src/lib/drafting/tiered/checks.ts';
import { checkSays } from '../../src/lib/ui/wording/check.ts';
import { issueSays } from '../../src/lib/ui/wording/issue.ts';
import { pleatedWords } from '../../src/lib/ui/wording/pleated.ts';
import { styleCheckSentence, styleIssueSentence, styleWayOutSentence, type StyleWords, type ToldBack } from '../../src/lib/ui/wording/style.ts';
import { tieredWords } from '../../src/lib/ui/wording/tiered.ts';
import { nhanesBody, seeded, type Random } from './bodies.ts';
import { anyPleated } from './pleated/pleats.ts';
import { anyTiered } from './tiered/tiers.ts';

type Told = Result<{ readonly checks: readonly ToldBack[] }>;
interface Style { readonly words: StyleWords<string>; readonly codes: readonly string[]; readonly draft: (random: Random, i: number) => Told }

const bodyOf = (random: Random, i: number) => {
	const { waist, hip, waistToHip } = nhanesBody(random);
	// Some readings missing; some waists larger than the hip.
	return i % 9 === 0 ? { waist } : i % 9 === 1 ? { waist, hip } : { waist: i % 9 === 2 ? hip * 1.1 : waist, hip, waistToHip };
};
const styles: Readonly<Record<string, Style>> = {
	tiered: {
		words: tieredWords, codes: tieredCodes,
		draft: (random, i) => {
			const skirt = anyTiered(random);
			// Narrow and wide cloth, a hem that is deeper than the last tier, and gathers on gathers.
			const ratios = Object.fromEntries(Object.keys(skirt.ratios).map((tier) => [tier, 3]));
			return draftTiered(bodyOf(random, i), { ...skirt, ...(i % 11 === 0 && { clothWidth: 120 }), ...(i % 13 === 0 && { hem: 400 }), ...(i % 7 === 0 && { ratios, waistEase: 1000 }) });
		}
	},
	pleated: {
		words: pleatedWords, codes: pleatedCodes,
		draft: (random, i) => {
			const skirt = anyPleated(random);
			return draftPleated(bodyOf(random, i), { ...skirt, ...(i % 7 === 0 && { length: 200 + 40 * random() }), ...(i % 11 === 0 && { depth: 300, clothWidth: 300 }) });
		}
	}
};

const judging = /\b(too (big|small|large|fat|thin)|normal|flattering|plus|failed|behind|simply|just)\b/i;
function reads(sentence: string): void {
	if (/NaN|undefined|null|Infinity|\[object|\b(skirt|body)\.[a-z]|\([a-z]+-[a-z-]+\)/.test(sentence) || judging.test(sentence) || !/^[A-Z0-9“−]/.test(sentence) || sentence.length > 300) expect(sentence).toBe('a sentence');
}

/** Every kebab-case code that stands in the style's own source. */
const written = (style: string): readonly string[] =>
	readdirSync(`src/lib/drafting/${style}`).flatMap((name) => [...readFileSync(`src/lib/drafting/${style}/${name}`, 'utf8').matchAll(/code: '([a-z-]+)'/g)].map(([, code]) => code!));

for (const [name, { words, codes, draft }] of Object.entries(styles)) {
	test(`Every check and every refusal of a ${name} skirt reads as a sentence, in both units, with its ways on`, () => {
		const random = seeded(name.length);
		const [checks, issues] = [new Map<string, ToldBack>(), new Map<string, Issue>()];
		for (let i = 0; i < 2500; i++) {
			const told = draft(random, i);
			for (const issue of told.ok ? [] : told.issues) {
				issues.set(issue.code, issue);
				for (const unit of ['cm', 'in'] as const) reads(styleIssueSentence(words, issue, unit));
			}
			for (const check of told.ok ? told.value.checks : []) {
				checks.set(`${check.code} ${check.severity}`, check);
				for (const unit of ['cm', 'in'] as const) {
					reads(styleCheckSentence(words, check, unit));
					check.waysOut.forEach((way) => reads(styleWayOutSentence(words, way, unit)));
				}
			}
		}
		const met = new Set([...checks.values()].map(({ code }) => code));
		// Each is met by some skirt.
		expect(codes.filter((code) => !met.has(code))).toEqual([]);
		expect(Object.keys(words.issues).filter((code) => !issues.has(code))).toEqual([]);
	});

	test(`Every code in the source of ${name} skirts has words, and no other code has`, () => {
		const [own, every] = [new Set(written(name)), new Set([...Object.keys(checkSays), ...Object.keys(issueSays)])];
		expect(own.size).toBeGreaterThan(8);
		const worded = [...Object.keys(words.checks), ...Object.keys(words.issues)];
		expect([...own].filter((code) => !worded.includes(code) && !every.has(code))).toEqual([]);
		expect(worded.filter((code) => !own.has(code))).toEqual([]);
		// Of the checks, each in its list.
		expect(Object.keys(words.checks).filter((code) => !codes.includes(code) && !Object.hasOwn(checkSays, code))).toEqual([]);
	});
}

test('A style says its stops in words, though no draft gives them', () => {
	const stops: readonly ToldBack[] = [
		{ code: 'tier-sum', severity: 'stop', figures: { sum: 600, skirtLength: 560 }, waysOut: [] },
		{ code: 'elastic-passes-hip', severity: 'stop', figures: { casing: 900, needed: 1000 }, waysOut: [] }
	];
	expect(stops.map((check) => styleCheckSentence(tieredWords, check, 'cm'))).toEqual([
		'The tiers add up to 60.0 cm, and 56.0 cm is needed below the band. Don’t cut; tell your teacher.',
		'The casing is 90.0 cm round, and 100.0 cm has to pass through. Don’t cut; tell your teacher.'
	]);
});

test('A way out of a style says its tier, its pleats and its cloth', () => {
	const tier = (path: string, value: number) => styleWayOutSentence(tieredWords, { path, value }, 'cm');
	expect([tier('skirt.ratios.2', 1.5), tier('skirt.lengths.each.3', 182), tier('skirt.tiers', 1), tier('skirt.clothWidth', 1400), tier('skirt.hem', 20)]).toEqual([
		'Gather tier 2 to 1.5 times its seam', 'Make tier 3 18.2 cm long', 'Make one tier', 'Take a cloth 140.0 cm wide or more', 'Hem allowance: 20 mm'
	]);
	const pleat = (path: string, value: number) => styleWayOutSentence(pleatedWords, { path, value }, 'in');
	expect([pleat('skirt.pleats', 24), pleat('skirt.depth', 25.4)]).toEqual(['Fold 24 pleats', 'Fold each pleat 1 in deep']);
});
