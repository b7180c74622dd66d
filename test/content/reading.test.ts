import { expect, test } from 'vitest';
import { terms } from '../../src/lib/lesson/term.ts';
import { lessonFiles, lessonFolders } from './lesson-files.ts';
import { grade, proseOf, sentencesOf, wordsOf } from './prose.ts';

const texts = lessonFolders.flatMap((folder) => Object.entries(lessonFiles(folder)));
const sentences = (text: string) => proseOf(text).flatMap(sentencesOf);
/** The trade's own words count as one syllable: they are defined where they are first used. */
const trade = new Set(Object.values(terms).flatMap((term) => term.word.split(' ')));

test.each(texts)('%s has no sentence over 15 words', (_, text) => {
	expect(sentences(text).filter((sentence) => wordsOf(sentence).length > 15)).toEqual([]);
});

test.each(texts)('%s reads at grade 6 or below', (_, text) => {
	expect(grade(sentences(text), trade)).toBeLessThan(6);
});

test('The grade is the published formula: a hand count', () => {
	// "The cat sat." 3 words, 3 syllables: 0.39 × 3 + 11.8 × 1 − 15.59 = −2.62
	expect(grade(['The cat sat.'])).toBeCloseTo(-2.62, 6);
	// "Measure the interfacing again." 4 words; mea-sure 2, the 1, in-ter-fac-ing 4, a-gain 2 = 9: 0.39 × 4 + 11.8 × 2.25 − 15.59
	expect(grade(['Measure the interfacing again.'])).toBeCloseTo(12.52, 6);
});

test.each(texts)('%s speaks of cloth, plainly and kindly', (_, text) => {
	expect(text).not.toMatch(/\b(simply|just|normal|flattering|plus|failed|behind|too big|too small|obviously|easy|mistake)\b/i);
});

test.each(texts)('%s is in UK words', (_, text) => {
	expect(text).not.toMatch(/\b(zipper|center|color|gray|seam ripper|baste|muslin|selvage|serger?|inseam)\b/i);
});
