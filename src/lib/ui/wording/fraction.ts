// How a fraction is said: "5/8" is five eighths.

const numbers = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen'];
const parts: Readonly<Record<string, readonly [one: string, many: string]>> = {
	2: ['half', 'halves'], 3: ['third', 'thirds'], 4: ['quarter', 'quarters'], 8: ['eighth', 'eighths'], 16: ['sixteenth', 'sixteenths']
};

/** `whole`: does a whole number stand before it? Then it is "and a half", else "half". Others are read as they stand. */
export function sayFraction(fraction: string, whole: boolean): string {
	const [over = '', under = ''] = fraction.split('/');
	const names = parts[under];
	const many = numbers[Number(over)];
	if (!names || !many) return fraction;
	const said = over === '1' ? (under === '2' && !whole ? 'half' : `${whole ? 'a' : 'one'} ${names[0]}`) : `${many} ${names[1]}`;
	return whole ? `and ${said}` : said;
}
