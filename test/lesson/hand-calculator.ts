// A step worked with exact fractions, apart from the app's own arithmetic: what a calculator shows when its keys are pressed.

interface Fraction { readonly over: bigint; readonly under: bigint }

function read(written: string): Fraction {
	const [whole = '', decimals = ''] = written.split('.');
	return { over: BigInt(whole + decimals), under: 10n ** BigInt(decimals.length) };
}
const value = ({ over, under }: Fraction): number => Number(over) / Number(under);
const times = (a: Fraction, b: Fraction): Fraction => ({ over: a.over * b.over, under: a.under * b.under });
const plus = (a: Fraction, b: Fraction): Fraction => ({ over: a.over * b.under + b.over * a.under, under: a.under * b.under });

/** Half goes up; a number of nought or more. */
function write({ over, under }: Fraction, places: number): string {
	const steps = String((2n * over * 10n ** BigInt(places) + under) / (2n * under)).padStart(places + 1, '0');
	return places === 0 ? steps : `${steps.slice(0, -places)}.${steps.slice(-places)}`;
}

const degrees = 180 / Math.PI;
const keys: Readonly<Record<string, (shown: number) => number>> = { '√': Math.sqrt, 'cos⁻¹': (x) => Math.acos(x) * degrees, sin: (x) => Math.sin(x / degrees) };
const near = (shown: number): Fraction => read(shown.toFixed(12));

/** From left to right, as a plain calculator goes. Two places where anything is multiplied, divided or keyed, else all that it shows. */
export function press(written: readonly string[]): string {
	let shown: Fraction = { over: 0n, under: 1n };
	let sign = '+';
	for (const text of written) {
		if ('+−×÷'.includes(text)) sign = text;
		else if (keys[text]) shown = near(keys[text](value(shown)));
		else {
			const next = read(text);
			if (sign === '+') shown = plus(shown, next);
			else if (sign === '−') shown = plus(shown, { over: -next.over, under: next.under });
			else shown = times(shown, sign === '×' ? next : { over: next.under, under: next.over });
		}
	}
	return write(shown, written.some((text) => text === '×' || text === '÷' || text in keys) ? 2 : 4);
}

/** The same with products and quotients first, as a calculator with brackets goes. No keys. */
export function pressWithProductsFirst(written: readonly string[]): number {
	let [total, product, sign] = [0, 0, '+'];
	for (const text of written) {
		if ('+−×÷'.includes(text)) sign = text;
		else if (sign === '×') product *= Number(text);
		else if (sign === '÷') product /= Number(text);
		else [total, product] = [total + product, sign === '−' ? -Number(text) : Number(text)];
	}
	return total + product;
}
