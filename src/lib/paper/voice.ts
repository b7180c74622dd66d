// The voices of a drawing's words: how large they are, how they break into runs, and how wide they will be.
import type { Voice } from './drawing.ts';

/** A stretch of words set in one way: a fraction is built from plain figures by the font, a unit is written small. */
export interface Run {
	readonly text: string;
	readonly as: 'words' | 'fraction' | 'unit';
}

/** Letter height in px for each voice in a drawing so many px wide; nothing is under 14. */
export function voiceSize(voice: Voice, width: number): number {
	if (voice === 'figure') return width < 340 ? 26 : width < 560 ? 30 : 36;
	if (voice === 'title') return width < 560 ? 22 : 26;
	return voice === 'small' ? 14 : 16;
}

/** A unit after a large figure is half its size, but never under 15 px. */
export const unitSize = (size: number): number => Math.max(15, size * 0.5);

export function runs(text: string, voice: Voice): readonly Run[] {
	const out: Run[] = [];
	// Is there a unit after the figure? It is set apart from the figure and small.
	const unit = voice === 'figure' ? /^(.*\d) (cm|mm|in)$/.exec(text) : null;
	const rest = unit ? unit[1]! : text;
	for (const [i, part] of rest.split(/(\d+\/\d+)/).entries()) {
		if (i % 2 === 1) out.push({ text: part, as: 'fraction' });
		// The fraction stands close to its whole number: "28 5/8" is written 28⅝.
		else if (part) out.push({ text: part.replace(/(\d) $/, '$1'), as: 'words' });
	}
	if (unit) out.push({ text: ` ${unit[2]}`, as: 'unit' });
	return out;
}

/** Advance of a letter in ems, measured in Chromium on Commissioner at 650; 450 and 760 differ by 2 %. */
function advance(letter: string): number {
	if (letter === ' ') return 0.2;
	if (letter >= '0' && letter <= '9') return 0.585;
	if ('iltfj.,:;\'’()'.includes(letter)) return 0.33;
	if ('mwMW%'.includes(letter)) return 0.86;
	return letter >= 'A' && letter <= 'Z' ? 0.69 : 0.545;
}

/** How wide a text will be, in px. */
export function textWidth(text: string, voice: Voice, width: number): number {
	const size = voiceSize(voice, width);
	let sum = 0;
	for (const run of runs(text, voice)) {
		let ems = 0;
		for (const letter of run.text) ems += run.as === 'fraction' ? 0.39 : advance(letter);
		sum += ems * (run.as === 'unit' ? unitSize(size) : size);
	}
	return sum;
}
