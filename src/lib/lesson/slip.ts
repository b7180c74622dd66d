// An answer that somebody worked out herself, held against a working: right, or how it may have come about.
import type { Unit } from '../class/event.ts';
import { mmPer } from '../drafting/length.ts';
import type { Step, Working } from './working.ts';
import { calculate } from './written.ts';

export type SlipCode =
	| 'right' | 'added' | 'taken-off' | 'multiplied' | 'divided' | 'left-out' | 'counted-once' | 'half-way' | 'other-unit' | 'tens' | 'half' | 'double' | 'other';

export interface Slip {
	readonly code: SlipCode;
	/** The length or number it went wrong with: `allowance`, `3.14`. */
	readonly with?: string;
}

/** Half a mark of the ruler that the page is read by, mm, and a ten-thousandth. */
const half: Readonly<Record<Unit, number>> = { cm: 0.5001, in: 25.4 / 16 + 0.0001 };

const flips: Readonly<Record<string, readonly [sign: string, code: SlipCode]>> = {
	'+': ['−', 'taken-off'], '−': ['+', 'added'], '×': ['÷', 'divided'], '÷': ['×', 'multiplied']
};

/** `mm`: what she wrote. The likeliest slip comes first; one that leads to the right answer is no slip. */
export function slipOf({ steps, mm: figure }: Working, mm: number, unit: Unit): Slip {
	const result = Number(steps.at(-1)?.result) * mmPer[unit];
	const near = (other: number): boolean => Math.abs(mm - other) <= half[unit];
	if (near(result) || near(figure)) return { code: 'right' };
	const last = steps.at(-1);
	const slips = last ? slipsIn(last, unit).filter(([comes]) => near(comes * mmPer[unit])) : [];
	// Two slips may come to nearly the same: the nearest is meant.
	const likeliest = [...slips].sort(([a], [b]) => Math.abs(a * mmPer[unit] - mm) - Math.abs(b * mmPer[unit] - mm))[0];
	if (likeliest) return likeliest[1];
	if (steps.slice(0, -1).some((step) => near(Number(step.result) * mmPer[unit]))) return { code: 'half-way' };
	const other = unit === 'cm' ? 2.54 : 1 / 2.54;
	if (near(result / other)) return { code: 'other-unit' };
	if (near(result * 10) || near(result / 10)) return { code: 'tens' };
	if (near(result / 2)) return { code: 'half' };
	return { code: near(result * 2) ? 'double' : 'other' };
}

/** What the step comes to with one sign the wrong way about, or with one number left out. */
function slipsIn({ operands }: Step, unit: Unit): readonly (readonly [comes: number, slip: Slip])[] {
	const written = operands.map((operand) => operand.written);
	const slips: (readonly [number, Slip])[] = [];
	for (const [i, { written: text, is }] of operands.entries()) {
		if (flips[text]) continue;
		const named = is ?? text;
		const sign = written[i - 1];
		const flip = sign === undefined ? undefined : flips[sign];
		if (flip) slips.push([Number(calculate(written.map((one, at) => (at === i - 1 ? flip[0] : one)), unit)), { code: flip[1], with: named }]);
		// The first goes with the sign behind it, any other with the sign before it.
		const without = i === 0 ? written.slice(2) : [...written.slice(0, i - 1), ...written.slice(i + 1)];
		const twice = is !== undefined && operands.filter((other) => other.is === is).length > 1;
		if (without.length > 0 && without.length < written.length) slips.push([Number(calculate(without, unit)), { code: twice ? 'counted-once' : 'left-out', with: named }]);
	}
	return slips;
}
