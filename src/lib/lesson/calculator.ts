// The calculators that stand in a lesson's text: which lengths each asks for, and the sums it shows. Millimetres.
import { sweepAngle, waistRadius } from '../drafting/sweep.ts';
import { openingBelow } from '../drafting/opening.ts';
import type { Unit } from '../class/event.ts';
import type { CalculatorOf } from './component.ts';
import type { FigureName } from './figure.ts';
import { number, of, step, sweep, type Recipe } from './recipe.ts';
import { workings, type Working } from './working.ts';

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
	readonly lines: (values: Values, unit: Unit) => readonly Line[];
}

/** A sum with the figure itself. */
type Sum = Recipe & { readonly mm: number };

/** The sums in their order, each from the lengths that were typed and the sums before it. */
function worked(lengths: Values['lengths'], sums: Readonly<Record<string, Sum>>, unit: Unit): readonly Working[] {
	const book = { recipe: (name: string) => sums[name] ?? null, mm: (name: string) => lengths[name] };
	const work = workings(book, unit);
	return Object.keys(sums).flatMap((name) => work(name) ?? []);
}

export const calculator: Readonly<Record<CalculatorOf, Calculator>> = {
	sector: {
		title: 'From waist seam to radius',
		fields: [
			{ name: 'seam', label: 'Waist seam', starts: 'waistSeamGirth' },
			{ name: 'below', label: 'Length below the band', starts: 'skirtLength' }
		],
		asksShare: true, asksFinish: false,
		lines: ({ lengths, share }, unit) => {
			const { seam = 0, below = 0 } = lengths;
			const theta = sweepAngle(share);
			const radius = waistRadius(seam, theta);
			return worked(lengths, {
				waistRadius: { of: 'waist radius', mm: radius, steps: [[of('seam', 'waist seam'), '÷', sweep(share)]], drawn: ['hemRadius'] },
				hemRadius: { of: 'hem radius', mm: radius + below, steps: [[of('waistRadius', 'waist radius'), '+', of('below', 'length')]] },
				hemSweep: { of: 'round the hem', mm: seam + theta * below, steps: [[of('below', 'length'), '×', sweep(share), '+', of('seam', 'waist seam')]] }
			}, unit);
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
		lines: ({ lengths }, unit) => {
			const { seam = 0, underlap = 0, depth = 0, allowance = 0 } = lengths;
			const end = of('allowance', 'allowance');
			return worked(lengths, {
				cutLength: { of: 'cut length', mm: seam + underlap + 2 * allowance, steps: [[of('seam', 'waist seam'), '+', of('underlap', 'underlap'), '+', end, '+', end]] },
				cutDepth: { of: 'cut depth', mm: 2 * depth + 2 * allowance, steps: [[of('depth', 'depth'), '+', end], [step(0), '×', number(2)]] }
			}, unit);
		}
	},
	opening: {
		title: 'How long the opening must be',
		fields: [
			{ name: 'seam', label: 'Waist seam', starts: 'waistSeamGirth' },
			{ name: 'hip', label: 'Hip with ease', starts: 'hipWithEase' }
		],
		asksShare: true, asksFinish: false,
		lines: ({ lengths, share }, unit) => {
			const { seam = 0, hip = 0 } = lengths;
			const mm = openingBelow(seam, sweepAngle(share), hip);
			if (mm <= 0) return [{ of: 'opening', words: 'none needed: the waist seam goes over the hip' }];
			return worked(lengths, { opening: { of: 'opening below the waist line, at the least', mm, steps: [] } }, unit);
		}
	},
	hem: {
		title: 'What a hem has to ease in',
		fields: [
			{ name: 'radius', label: 'Hem radius', starts: 'hemRadius' },
			{ name: 'hem', label: 'Hem allowance', starts: 'hemAllowance' }
		],
		asksShare: true, asksFinish: true,
		lines: ({ lengths, share, narrow }, unit) => {
			const { radius = 0, hem = 0 } = lengths;
			const theta = sweepAngle(share);
			const surplus = narrow ? theta * hem : 2 * theta * hem;
			const onto = theta * (radius - (narrow ? hem / 2 : hem));
			const turns = narrow ? [] : ['×' as const, number(2)];
			return [
				...worked(lengths, { surplus: { of: 'to ease in, all round', mm: surplus, steps: [[of('hem', 'hem allowance'), ...turns, '×', sweep(share)]] } }, unit),
				{ of: 'of the line it is sewn to', percent: (100 * surplus) / onto }
			];
		}
	}
};
