// The measurements: what can be a person's, what is usual, and what is asked about. Warns and asks, never forces.
import type { BodyMeasurement, Measurement } from './body.ts';
import type { TypedUnit } from './length.ts';
import { ok, refuse, type Result } from './result.ts';

export interface MeasurementLimits {
	/** Outside these it can't be a person's: refused, with a best guess. mm */
	readonly limits: readonly [least: number, most: number];
	/** Outside these it is asked about. mm */
	readonly usual: readonly [least: number, most: number];
}

/**
 * Hard limits of waist and hip: only for what can't be a person (common practice, no source). Usual: from a girl of six (NHANES
 * p5, waist 48 cm) to three SDs above the mean of women in NHANES 2017–2020 (164 cm for both, logarithms). Waist to hip: four
 * SDs round ANSUR II's mean of 19.2 cm, and less for children. Waist to floor: from a child's to four SDs over ANSUR II's mean
 * waist height of 102.6 cm. Lengths: common practice, no source.
 */
export const measurements: Readonly<Record<Measurement | BodyMeasurement, MeasurementLimits>> = {
	waist: { limits: [300, 2500], usual: [480, 1640] },
	hip: { limits: [400, 2500], usual: [550, 1640] },
	waistToHip: { limits: [50, 450], usual: [90, 270] },
	waistToFloor: { limits: [300, 1700], usual: [550, 1225] },
	length: { limits: [100, 1700], usual: [250, 1150] }
};

/** Refuses what can't be a person's, with a best guess in the figures where one is likely. `unit` is what it was typed in. */
export function checkMeasurement(measurement: Measurement | BodyMeasurement, mm: number, path: string, unit: TypedUnit): Result<number> {
	const { limits, usual } = measurements[measurement];
	const [least, most] = limits;
	if (mm >= least && mm <= most) return ok(mm);
	const guess = guessWithin(mm, usual, unit);
	return refuse({
		code: 'length-out-of-range', path, expected: [least, most], received: mm,
		figures: { least, most, given: mm, ...(guess && { guess: guess.mm }) }
	});
}

interface Guess {
	readonly code: 'slip-by-ten' | 'units-mixed';
	readonly mm: number;
}

/** The other unit: inches in a field for centimetres come out too small, centimetres in one for inches too large. */
const otherUnit: Readonly<Partial<Record<TypedUnit, number>>> = { cm: 2.54, in: 1 / 2.54, mm: 25.4 };
/** The point lost or one place off; two places where it was lost from 72.50, or where metres were meant. */
const slips = [1 / 10, 10, 1 / 100, 100] as const;

/**
 * What was meant, if what was said is out of range: the other unit, or the point in another place. Only what would be usual
 * is offered, and of two the one nearer the middle; no one means 118 cm by 300 cm.
 */
function guessWithin(mm: number, [least, most]: readonly [number, number], unit?: TypedUnit): Guess | undefined {
	const others = unit === undefined ? Object.values(otherUnit) : [otherUnit[unit]];
	const guesses: readonly Guess[] = [
		...others.flatMap((other) => (other === undefined ? [] : [{ code: 'units-mixed', mm: mm * other } as const])),
		...slips.map((slip) => ({ code: 'slip-by-ten', mm: mm * slip }) as const)
	];
	const off = (guess: Guess): number => Math.abs(Math.log(guess.mm / Math.sqrt(least * most)));
	return guesses.filter((guess) => guess.mm >= least && guess.mm <= most).sort((a, b) => off(a) - off(b))[0];
}

export const questionCodes = ['slip-by-ten', 'units-mixed', 'digits-swapped', 'unusual', 'waist-over-hip'] as const;

/** Asked before it is taken. `figures.given` is what was said and `figures.guess`, if any, what may have been meant, in mm. */
export interface Question {
	readonly code: (typeof questionCodes)[number];
	readonly measurement: Measurement | BodyMeasurement;
	readonly figures: Readonly<Record<string, number>>;
}

export interface AskedBeside {
	/** What she types in. Unknown: every unit is tried. */
	readonly unit?: TypedUnit;
	/** Earlier readings of the same measurement, mm. */
	readonly earlier?: readonly number[];
	/** The other measurements of the same body, mm. */
	readonly others?: Readonly<Partial<Record<Measurement, number>>>;
}

/** Two ratios are the same to 4 %: a reading and its repeat rarely differ by more. */
const near = (ratio: number, to: number): boolean => Math.abs(ratio / to - 1) < 0.04;

/** What is worth asking about a reading within the hard limits. At most one guess is made; none is ever forced. */
export function askAbout(measurement: Measurement | BodyMeasurement, mm: number, { unit, earlier = [], others = {} }: AskedBeside): readonly Question[] {
	const questions: Question[] = [];
	const ask = (code: Question['code'], figures: Question['figures']): void => {
		questions.push({ code, measurement, figures: { given: mm, ...figures } });
	};
	const [least, most] = measurements[measurement].usual;

	// An earlier reading tells most: a slip shows as a ratio, a swap as digits.
	const slip = earlier.find((was) => near(mm / was, 10) || near(was / mm, 10));
	const mixed = earlier.find((was) => near(mm / was, 2.54) || near(was / mm, 2.54));
	const swapped = unit ? swapOf(mm, unit, earlier) : (swapOf(mm, 'cm', earlier) ?? swapOf(mm, 'in', earlier));
	if (slip !== undefined) ask('slip-by-ten', { guess: mm > slip ? mm / 10 : mm * 10, earlier: slip });
	else if (mixed !== undefined) ask('units-mixed', { guess: mm > mixed ? mm / 2.54 : mm * 2.54, earlier: mixed });
	else if (swapped) ask('digits-swapped', swapped);
	else if (mm < least || mm > most) {
		const guess = guessWithin(mm, [least, most], unit);
		if (guess) ask(guess.code, { guess: guess.mm });
		else ask('unusual', { least, most });
	}

	// Waist and hip beside each other: mixed units, or a waist that is the larger. That is real (0.9 % and 7.5 % of women in
	// two surveys), so it is only asked.
	const waist = measurement === 'waist' ? mm : others.waist;
	const hip = measurement === 'hip' ? mm : others.hip;
	if ((measurement === 'waist' || measurement === 'hip') && waist !== undefined && hip !== undefined && questions.length === 0) {
		if (hip / waist > 2) ask('units-mixed', { guess: measurement === 'waist' ? mm * 2.54 : mm / 2.54 });
		else if (waist / hip > 2) ask('units-mixed', { guess: measurement === 'waist' ? mm / 2.54 : mm * 2.54 });
		else if (waist > hip) ask('waist-over-hip', { waist, hip });
	}
	return questions;
}

/** Two neighbouring digits in the wrong order: 75.2 said where 72.5 was read before. */
function swapOf(mm: number, unit: TypedUnit, earlier: readonly number[]): { readonly guess: number; readonly earlier: number } | undefined {
	if (earlier.length === 0) return undefined;
	const per = unit === 'in' ? 25.4 : unit === 'cm' ? 10 : 1;
	const text = String(Math.round((mm / per) * 10) / 10);
	for (let i = 0; i < text.length - 1; i++) {
		// Over the point as well: 72.5 and 75.2.
		const next = text[i + 1] === '.' ? i + 2 : i + 1;
		if (text[i] === '.' || text[next] === undefined || text[i] === text[next]) continue;
		const digits = [...text];
		[digits[i], digits[next]] = [digits[next]!, digits[i]!];
		const guess = Number(digits.join('')) * per;
		const was = earlier.find((reading) => Math.abs(reading - guess) <= 10 && Math.abs(reading - mm) > 15);
		if (was !== undefined) return { guess, earlier: was };
	}
	return undefined;
}
