// The plain words of a part as a reader hears them: each live figure is read as "12 cm".
export function proseOf(text: string): string[] {
	return text
		.replace(/^---\n[\s\S]*?\n---\n/, '')
		.replace(/<Figure [^>]*\/>/g, '12 cm')
		.replace(/<\/?[A-Z][^>]*>/g, '')
		.replace(/^#+ (.*)$/gm, '$1.')
		.replace(/^- /gm, '')
		.replace(/\*\*|\*|`/g, '')
		.split(/\n{2,}|\n(?=[A-Z])/)
		.map((paragraph) => paragraph.replace(/\s+/g, ' ').trim())
		.filter(Boolean);
}

/** A decimal point is not an end. */
export const sentencesOf = (paragraph: string): string[] =>
	paragraph.split(/(?<=[.?!:;])\s+(?=["“A-Z])/).map((s) => s.trim()).filter((s) => /[a-z]/i.test(s));

export const wordsOf = (sentence: string): string[] => sentence.match(/[A-Za-z’'-]+|[0-9][0-9.,/]*/g) ?? [];

/** Vowel groups, less a silent final e or -ed: a common rule of thumb, a little over on some words. */
export function syllables(word: string): number {
	const plain = word.toLowerCase().replace(/[^a-z]/g, '');
	if (!plain) return 1;
	const bare = plain.replace(/(?:[^laeiouydt]e|[^td]ed|es)$/, (end) => end.slice(0, end.startsWith('e') ? 0 : 1)).replace(/^y/, '');
	return Math.max(1, (bare.match(/[aeiouy]{1,2}/g) ?? []).length);
}

/** Flesch–Kincaid grade (Kincaid et al. 1975): 0.39 words a sentence + 11.8 syllables a word − 15.59. */
export function grade(sentences: readonly string[], except: ReadonlySet<string> = new Set()): number {
	const words = sentences.flatMap(wordsOf);
	const sounds = words.reduce((sum, word) => sum + (except.has(word.toLowerCase()) ? 1 : syllables(word)), 0);
	return 0.39 * (words.length / sentences.length) + 11.8 * (sounds / words.length) - 15.59;
}
