// Numbers of things in sentences, in one place, so that "1 steps" can't happen.

/** `count(1, 'step', 'steps')` is "1 step"; none is "no steps". */
export const count = (n: number, one: string, many: string): string => `${n === 0 ? 'no' : n} ${n === 1 ? one : many}`;

const words = ['no one', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
/** People are counted in words up to twelve: "Four have asked". At the start of a sentence. */
export const countPeople = (n: number): string => {
	const word = words[n] ?? String(n);
	return word.charAt(0).toUpperCase() + word.slice(1);
};
/** "has" for none and one, "have" for more. */
export const have = (n: number): string => (n <= 1 ? 'has' : 'have');

/** A stretch of time as one says it: "under a minute", "14 min", "2 h 5 min", "3 days". */
export function duration(ms: number): string {
	const minutes = Math.floor(Math.max(0, ms) / 60_000);
	if (minutes < 1) return 'under a minute';
	if (minutes < 60) return `${minutes} min`;
	const hours = Math.floor(minutes / 60);
	if (hours >= 48) return `${Math.floor(hours / 24)} days`;
	return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
}

/** "Wen", "Wen and Bea", "Wen, Bea and Jory". */
export const list = (names: readonly string[]): string =>
	names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
