// The calculators that stand in a lesson's text: which lengths each asks for, and the sums it shows. Millimetres.
import { sweepAngle, waistRadius } from '../drafting/sweep.ts';
import { openingBelow } from '../drafting/opening.ts';
import type { CalculatorOf } from './component.ts';
import type { FigureName } from './figure.ts';
import { sweepNumber, type Token, type Working } from './working.ts';

export interface CalculatorField {
	readonly name: string;
	readonly label: string;
	/** The figure of the reader's draft that it starts from. */
	readonly starts: FigureName;
}

export interface Values {
	readonly lengths: Readonly<Record<string, number>>;
	readonly share: number;
	readonly narrow: boolean;
}

/** A sum, a part of a length as a percentage, or words where there is nothing to work out. */
export type Line = Working | { readonly of: string; readonly percent: number } | { readonly of: string; readonly words: string };

export interface Calculator {
	readonly title: string;
	readonly fields: readonly CalculatorField[];
	readonly asksShare: boolean;
	readonly asksFinish: boolean;
	readonly lines: (values: Values) => readonly Line[];
}

const length = (mm: number, is: string): Token => ({ mm, is });
const sign = (sign: '+' | '−' | '×' | '÷'): Token => ({ sign });
const number = (number: string): Token => ({ number });

export const calculator: Readonly<Record<CalculatorOf, Calculator>> = {
	sector: {
		title: 'From waist seam to radius',
		fields: [
			{ name: 'seam', label: 'Waist seam', starts: 'waistSeamGirth' },
			{ name: 'below', label: 'Length below the band', starts: 'skirtLength' }
		],
		asksShare: true, asksFinish: false,
		lines: ({ lengths: { seam = 0, below = 0 }, share }) => {
			const theta = sweepAngle(share);
			const radius = waistRadius(seam, theta);
			const by = number(sweepNumber(share));
			return [
				{ of: 'waist radius', tokens: [length(seam, 'waist seam'), sign('÷'), by], mm: radius },
				{ of: 'hem radius', tokens: [length(radius, 'waist radius'), sign('+'), length(below, 'length')], mm: radius + below },
				{ of: 'round the hem', tokens: [length(radius + below, 'hem radius'), sign('×'), by], mm: theta * (radius + below) }
			];
		}
	},
	band: {
		title: 'The band',
		fields: [
			{ name: 'seam', label: 'Waist seam', starts: 'waistSeamGirth' },
			{ name: 'underlap', label: 'Underlap', starts: 'underlap' },
			{ name: 'depth', label: 'Finished depth', starts: 'bandDepth' },
			{ name: 'allowance', label: 'Allowance', starts: 'seamAllowance' }
		],
		asksShare: false, asksFinish: false,
		lines: ({ lengths: { seam = 0, underlap = 0, depth = 0, allowance = 0 } }) => [
			{
				of: 'cut length', mm: seam + underlap + 2 * allowance,
				tokens: [length(seam, 'waist seam'), sign('+'), length(underlap, 'underlap'), sign('+'), number('2'), sign('×'), length(allowance, 'allowance')]
			},
			{
				of: 'cut depth', mm: 2 * depth + 2 * allowance,
				tokens: [number('2'), sign('×'), length(depth, 'depth'), sign('+'), number('2'), sign('×'), length(allowance, 'allowance')]
			}
		]
	},
	opening: {
		title: 'How long the opening must be',
		fields: [
			{ name: 'seam', label: 'Waist seam', starts: 'waistSeamGirth' },
			{ name: 'hip', label: 'Hip with ease', starts: 'hipWithEase' }
		],
		asksShare: true, asksFinish: false,
		lines: ({ lengths: { seam = 0, hip = 0 }, share }) => {
			const mm = openingBelow(seam, sweepAngle(share), hip);
			return [mm > 0 ? { of: 'opening below the waist line, at the least', tokens: [], mm } : { of: 'opening', words: 'none needed: the waist seam goes over the hip' }];
		}
	},
	hem: {
		title: 'What a hem has to ease in',
		fields: [
			{ name: 'radius', label: 'Hem radius', starts: 'hemRadius' },
			{ name: 'hem', label: 'Hem allowance', starts: 'hemAllowance' }
		],
		asksShare: true, asksFinish: true,
		lines: ({ lengths: { radius = 0, hem = 0 }, share, narrow }) => {
			const theta = sweepAngle(share);
			const surplus = narrow ? theta * hem : 2 * theta * hem;
			const onto = theta * (radius - (narrow ? hem / 2 : hem));
			const tokens = narrow ? [length(hem, 'hem allowance'), sign('×'), number(sweepNumber(share))]
				: [number('2'), sign('×'), length(hem, 'hem allowance'), sign('×'), number(sweepNumber(share))];
			return [{ of: 'to ease in, all round', tokens, mm: surplus }, { of: 'of the line it is sewn to', percent: (100 * surplus) / onto }];
		}
	}
};
