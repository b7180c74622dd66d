// How a figure comes about, as data: lengths and words in order, the result last. The screen sets it as a sum.
import type { Unit } from '../class/event.ts';
import type { Draft } from '../drafting/draft.ts';
import { topStop } from '../drafting/opening.ts';
import { figureOf } from './figure.ts';

/** A length in mm with what it is, a plain number, or a sign such as `+`. */
export type Token = { readonly mm: number; readonly is: string } | { readonly number: string } | { readonly sign: '+' | '−' | '×' | '÷' };

export interface Working {
	/** What is worked out: `waist radius`. */
	readonly of: string;
	readonly tokens: readonly Token[];
	readonly mm: number;
}

interface Recipe {
	readonly of: string;
	/** Null where this draft has it from no such sum; none at all for what no sum gives. */
	readonly tokens: (length: (name: string, is: string) => Token, draft: Draft) => readonly Token[] | null;
}

const plus = { sign: '+' } as const;
const minus = { sign: '−' } as const;
const times = { sign: '×' } as const;
const over = { sign: '÷' } as const;
const number = (value: string) => ({ number: value });

/** The whole sweep as a number to divide by: 3.14 for a half circle, 6.28 for a full one (two places: under 0.1 % out). */
export const sweepNumber = (share: number): string => (2 * Math.PI * share).toFixed(2);

const recipes: Readonly<Record<string, Recipe>> = {
	waistSeamGirth: { of: 'waist seam', tokens: (l) => [l('waist', 'waist'), plus, l('waistEase', 'ease')] },
	waistRadius: { of: 'waist radius', tokens: (l, { skirt }) => [l('waistSeamGirth', 'waist seam'), over, number(sweepNumber(skirt.share))] },
	cutWaistRadius: { of: 'cut radius at the waist', tokens: (l) => [l('waistRadius', 'waist radius'), minus, l('waistAllowance', 'allowance')] },
	skirtLength: { of: 'length below the band', tokens: (l) => [l('length', 'finished length'), minus, l('bandDepth', 'band')] },
	hemRadius: { of: 'hem radius', tokens: (l) => [l('waistRadius', 'waist radius'), plus, l('skirtLength', 'length below the band')] },
	cutHemRadius: { of: 'cut radius at the hem', tokens: (l) => [l('hemRadius', 'hem radius'), plus, l('hemAllowance', 'hem allowance')] },
	hemSweep: { of: 'round the hem', tokens: (l, { skirt }) => [l('hemRadius', 'hem radius'), times, number(sweepNumber(skirt.share))] },
	clothLength: { of: 'along the cloth', tokens: (l, { figures: f }) => (2 * f.cutHemRadius < f.bandCutLength ? [l('bandCutLength', 'band')] : [l('cutHemRadius', 'cut radius at the hem'), times, number('2')]) },
	clothWidth: { of: 'across the cloth', tokens: (l) => [l('cutHemRadius', 'cut radius at the hem'), plus, l('seamAllowance', 'back allowance'), plus, l('bandCutDepth', 'band')] },
	bandCutLength: {
		of: 'band, cut length',
		tokens: (l) => [l('waistSeamGirth', 'waist seam'), plus, l('underlap', 'underlap'), plus, number('2'), times, l('seamAllowance', 'end allowance')]
	},
	bandCutDepth: { of: 'band, cut depth', tokens: (l) => [number('2'), times, l('bandDepth', 'band'), plus, number('2'), times, l('waistAllowance', 'allowance')] },
	// The least opening is a shortest path and the zip is the next in the shops: neither is a sum.
	hipWithEase: { of: 'to go through the opening', tokens: (l) => [l('hip', 'hip'), plus, l('hipEase', 'ease')] },
	openingBelowSeam: { of: 'least opening below the waist seam', tokens: (_, { figures }) => ((figures.openingBelowSeam ?? 0) > 0 ? [] : null) },
	zipLength: { of: 'zip to buy', tokens: () => [] },
	zipEndBelowSeam: {
		of: 'zip end below the waist seam',
		// Shortened to fit the skirt, it ends somewhere else.
		tokens: (l, { figures: f }) => (f.zipLength !== undefined && f.zipEndBelowSeam !== undefined && Math.abs(f.zipLength + topStop - f.zipEndBelowSeam) < 1e-9 ? [l('zipLength', 'zip'), plus, l('topStop', 'top stop')] : null)
	}
};

export const workingNames: readonly string[] = Object.keys(recipes);

/** Null where the draft lacks one of the figures or comes by it in another way. */
export function workingOf(name: string, draft: Draft): Working | null {
	const recipe = recipes[name];
	const mm = figureOf(name, draft);
	if (!recipe || mm === undefined) return null;
	const tokens = recipe.tokens((figure, is) => ({ mm: figureOf(figure, draft) ?? NaN, is }), draft);
	return tokens === null || tokens.some((token) => 'mm' in token && Number.isNaN(token.mm)) ? null : { of: recipe.of, tokens, mm };
}

/** The sum as a person would work it on paper with these numbers: products and quotients first, then left to right. */
export function workOut(tokens: readonly Token[], value: (token: Token) => number): number {
	let total = 0;
	let product = 0;
	let sign = '+';
	const settle = () => (total += product);
	for (const token of tokens) {
		if ('sign' in token) sign = token.sign;
		else if (sign === '×') product *= value(token);
		else if (sign === '÷') product /= value(token);
		else {
			settle();
			product = sign === '−' ? -value(token) : value(token);
		}
	}
	return settle();
}

/** Decimals that a calculator shows: hundredths of an inch, millimetres as tenths of a centimetre. */
const decimals = (mm: number, unit: Unit, places: number) => (unit === 'in' ? mm / 25.4 : mm / 10).toFixed(places);

export interface WrittenWorking {
	readonly tokens: readonly string[];
	/** What a calculator makes of the sum as it is written, where the ruler then reads something else: 31.44 in is marked at 31 1/2. */
	readonly comesTo: string | null;
}

/**
 * The sum in the reader's unit. Centimetres show one place, two where rounding to one would make the written sum come
 * out wrong; inches show two, since a sum in eighths would not add up either.
 */
export function writeWorking({ tokens, mm }: Working, unit: Unit): WrittenWorking {
	if (tokens.length === 0) return { tokens: [], comesTo: null };
	const write = (places: number) => tokens.map((token) => ('mm' in token ? decimals(token.mm, unit, places) : 'number' in token ? token.number : token.sign));
	const readBack = (written: readonly string[]) => workOut(tokens, (token) => Number(written[tokens.indexOf(token)]));
	if (unit === 'cm') {
		const written = write(1);
		if (readBack(written).toFixed(1) === decimals(mm, unit, 1)) return { tokens: written, comesTo: null };
	}
	const written = write(2);
	return { tokens: written, comesTo: readBack(written).toFixed(2) };
}
