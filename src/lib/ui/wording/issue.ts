// What stands in the way of a length, an input or a draft: what happened, and how to mend it.
import type { Issue } from '../../drafting/result.ts';
import type { Unit } from '../../drafting/length.ts';
import { wayOutSentence } from './check.ts';
import { choiceNames } from './figure.ts';
import { came, capital, lengthSays, type Says } from './length.ts';
import { fine, long } from './long.ts';
import { refusalSays } from './refusal.ts';

/** The field in words; its path where it has no name. */
const field = ({ path }: Issue): string => choiceNames[path] ?? (path === '' ? 'this' : `“${path}”`);
const list = (values: unknown): string => (Array.isArray(values) ? values.map(String).join(', ') : String(values ?? ''));
const ways = ({ waysOut }: Issue, unit: Unit): string => (waysOut?.length ? ` ${waysOut.map((way) => wayOutSentence(way, unit)).join(', or ')}.` : '');

/** Every code of drafting's issues and of the draft command's. */
export const issueSays: Readonly<Record<string, Says>> = {
	...lengthSays,
	'field-missing': (issue) => `${capital(field(issue))} is missing. Add it.`,
	'not-one-of': (issue) => `${capital(came(issue))} isn’t one of the choices for ${field(issue)}. Choose from: ${list(issue.expected)}.`,
	'not-a-number': (issue) => `${capital(field(issue))} is a plain number. Write it in figures.`,
	'number-out-of-range': (issue) => `${capital(field(issue))} runs from ${issue.figures?.least} to ${issue.figures?.most}. Choose a number between.`,
	'readings-count': (issue) => `${capital(field(issue))} takes one reading, or a list of up to ten. Write them so.`,
	'not-a-list': (issue) => `${capital(field(issue))} is a list of numbers, such as [0.5, 0.5]. Write it so.`,
	'not-whole': (issue) => `${capital(field(issue))} is a whole number. Write it without a fraction.`,
	'not-an-object': (issue) => `${capital(field(issue))} holds several fields by name; that isn’t what came. Write it as { … }.`,
	'unknown-field': (issue) => `Nothing here is called “${issue.path}”. Known here: ${list(issue.expected)}.`,
	'no-room-for-allowance': (issue, unit) =>
		`The waist’s curve is too tight for its allowances: a cut radius of ${fine(issue.figures?.cutWaistRadius, unit)} has to be more than ${fine(issue.figures?.seamAllowance, unit)}.${ways(issue, unit)}`,
	'panel-laps-itself': (issue, unit) => `With its seam allowances a panel would lap over itself, so it can’t be cut from one layer.${ways(issue, unit) || ' Take a smaller share of a circle.'}`,
	'band-deeper-than-length': ({ figures }, unit) => `The band alone is ${long(figures?.bandDepth, unit)} deep, and the finished length is ${long(figures?.length, unit)}. Make the skirt longer or the band less deep.`,
	'hem-deeper-than-skirt': (issue, unit) => `The hem is deeper than the skirt: ${long(issue.figures?.hem, unit)} on ${long(issue.figures?.skirtLength, unit)}.${ways(issue, unit)}`,
	'elastic-needs-hip': () => 'An elastic has to go over the hip, so the hip is needed. Measure it, level round the fullest part.',
	'band-not-wider-below': (issue, unit) => `A contour band widens downwards: its lower edge, ${long(issue.figures?.lower, unit)}, has to be more than its top, ${long(issue.figures?.top, unit)}. Measure the girth again where the lower edge will lie, or take a straight band.`,
	'band-laps-itself': (issue, unit) => `This band would lap over itself when it is cut: ${long(issue.figures?.top, unit)} at the top and ${long(issue.figures?.lower, unit)} below is much for its depth. Make it deeper, or measure the lower edge again.`,
	'waist-steep': (issue, unit) => `The waist would rise and fall more steeply than a band can follow.${ways(issue, unit)}`,
	'uneven-no-room': (issue, unit) => `With lengths that differ so much the pieces have no cut line: an allowance would run into itself.${ways(issue, unit)}`,
	'hem-corner-no-room': (issue, unit) => `There is no room to fold the hem’s corners back: the hem is ${fine(issue.figures?.hem, unit)} deep.${ways(issue, unit)}`,
	'lining-fuller': (issue, unit) => `The lining has more flare than the skirt.${ways(issue, unit)}`,
	'lining-laps-itself': (issue, unit) => `With its seam allowances the lining would lap over itself.${ways(issue, unit)}`,
	'facing-deeper-than-skirt': (issue, unit) => `The facing is deeper than the skirt: ${long(issue.figures?.facing, unit)} on ${long(issue.figures?.skirtLength, unit)}.${ways(issue, unit)}`,
	'shares-not-whole': () => 'The panels’ widths have to add up to the whole waist. Give one share for each panel, and let them sum to 1.',
	'as-made-flared': () => 'Readings on the sewn skirt are worked with for flared skirts only. Leave them out here.',
	'lining-too-short': (issue, unit) => `Shortened by ${long(issue.figures?.shorterBy, unit)}, nothing is left of the lining.${ways(issue, unit)}`,
	'not-json': () => 'The text isn’t JSON. Check its commas, quotes and brackets.',
	'file-not-read': ({ received }) => `The file couldn’t be read (${String(received)}). Check its name.`,
	'file-too-large': ({ expected }) => `That is larger than any draft’s input. Up to ${String(expected)} bytes are read.`,
	'one-file': () => 'Name one file, or - for standard input.',
	'unknown-option': (issue) => `There is no option --${issue.path}. There are: ${list(issue.expected)}.`,
	'option-missing': (issue) => `The option --${issue.path} needs a value after it.`,
	'option-twice': (issue) => `The option --${issue.path} is there twice. Give it once.`,
	'not-a-choice': (issue) => `“${String(issue.received)}” is none of the choices for --${issue.path}. They are: ${list(issue.expected)}.`,
	'code-too-long': (issue) => `The text of --${issue.path} is longer than its place on a sheet: ${String(issue.expected)} letters at most.`,
	'not-a-date': (issue) => `“${String(issue.received)}” is no day. Write it as year-month-day, such as ${String(issue.expected)}.`,
	'file-not-written': ({ received }) => `The file couldn’t be written (${String(received)}). Check its folder.`
};

/** A code from another room has its words there; one without words is our own mistake, and is shown by its name. */
export function issueSentence(issue: Issue, unit: Unit): string {
	const says = Object.hasOwn(issueSays, issue.code) ? issueSays[issue.code] : undefined;
	return says ? says(issue, unit) : (refusalSays(issue, unit) ?? `This could not be taken (${issue.code}).`);
}
