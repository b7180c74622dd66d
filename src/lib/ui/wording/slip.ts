// What is said to an answer that was worked out by hand: what may have happened, never a judgement.
import type { Unit } from '../../class/event.ts';
import { formatLength } from '../../drafting/length.ts';
import { slipOf, type Slip, type SlipCode } from '../../lesson/slip.ts';
import type { Working } from '../../lesson/working.ts';
import { unitWords } from './unit.ts';

type Says = (withWhat: string, working: Working, unit: Unit) => string;

/** `3.14` is a number, `the allowance` a length. */
const named = (what: string): string => (/^[\d.]+$/.test(what) ? what : `the ${what}`);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const slipSays: Readonly<Record<SlipCode, Says>> = {
	right: (_, { steps, mm }, unit) => `Yes. The sum comes to ${steps.at(-1)?.result}, and on the tape that is ${formatLength(mm, unit)}.`,
	added: (what) => `Here ${named(what)} looks added. The sum takes it off, so the answer is the smaller one.`,
	'taken-off': (what) => `Here ${named(what)} looks taken off. The sum adds it, so the answer is the larger one.`,
	multiplied: (what) => `This looks multiplied by ${named(what)}. The sum divides by it.`,
	divided: (what) => `This looks divided by ${named(what)}. The sum multiplies by it.`,
	'left-out': (what) => `${capital(named(what))} looks left out. Put it in, and look again.`,
	'counted-once': (what) => `${capital(named(what))} looks counted once. It comes in twice.`,
	'half-way': () => 'That is right so far, and there is one more line to work.',
	'other-unit': (_, __, unit) => `That looks like ${unitWords[unit === 'cm' ? 'in' : 'cm']}. This page is in ${unitWords[unit]}: write the unit after the number, or work it again.`,
	tens: () => 'The digits are right. Look at where the point stands.',
	half: () => 'That is half of it. Look for a number that is halved once more than the sum asks.',
	double: () => 'That is twice as much. Look for a number that is counted once more than the sum asks.',
	other: () => 'Not there yet. Press the keys again from the left, one number at a time. The answer stands below if you want it.'
};

export const slipSentence = (slip: Slip, working: Working, unit: Unit): string => slipSays[slip.code](slip.with ?? '', working, unit);

/** What is said to a length that was read. */
export const answerSentence = (working: Working, mm: number, unit: Unit): string => slipSentence(slipOf(working, mm, unit), working, unit);
