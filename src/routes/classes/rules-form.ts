// A class's rules as they are typed in a form: read into rules, and rules written as one would type them.
import type { Unit } from '$lib/class/event.ts';
import { defaultRules } from '$lib/class/gate.ts';
import type { ClassRules } from '$lib/class/rules.ts';
import { formatLength, parseLength } from '$lib/drafting/length.ts';
import type { Issue } from '$lib/drafting/result.ts';
import type { OpenChoice } from '$lib/lesson/open.ts';

export const lengthPaths = [
	'allowances.waist', 'allowances.seam', 'allowances.hem',
	'tolerances.readings', 'tolerances.waistWalk', 'tolerances.bandSeam', 'tolerances.hemLevel'
] as const;
export type LengthPath = (typeof lengthPaths)[number];
const openChoices: readonly OpenChoice[] = ['share', 'waistEase', 'bandDepth', 'hemFinish'];

/** As typed: nothing here is ever changed by a refusal. */
export interface TypedRules {
	/** The class's unit. */
	readonly unit: string;
	/** The unit in which the lengths below are written: the form's own, whatever is chosen above. */
	readonly written: Unit;
	readonly zipSeries: string;
	readonly lengths: Readonly<Record<LengthPath, string>>;
	readonly open: readonly string[];
	readonly gate: ClassRules['gate'];
}

const eachLength = <T>(of: (path: LengthPath) => T): Record<LengthPath, T> =>
	Object.fromEntries(lengthPaths.map((path) => [path, of(path)])) as Record<LengthPath, T>;
const lengthIn = (rules: ClassRules, path: LengthPath): number => {
	const [group, field] = path.split('.') as ['allowances' | 'tolerances', string];
	return (rules[group] as Readonly<Record<string, number>>)[field]!;
};

/** The shortest text that reads back as this very length: rules that nobody touched stay as they are. */
export function typedLength(mm: number, unit: Unit): string {
	const inches: readonly (readonly [Unit, number])[] = [['in', 1 / 8], ['in', 1 / 16], ['in', 1 / 32], ['in', 1 / 64]];
	const centimetres: readonly (readonly [Unit, number])[] = [['cm', 0.1], ['cm', 0.01]];
	for (const [as, step] of unit === 'in' ? [...inches, ...centimetres] : [...centimetres, ...inches]) {
		const text = formatLength(mm, as, { step, withUnit: as !== unit });
		const read = parseLength(text, unit);
		if (read.ok && Math.abs(read.value.mm - mm) < 1e-6) return text;
	}
	return formatLength(mm, 'mm', { step: 0.000001 });
}

export const typeRules = (rules: ClassRules): TypedRules => ({
	unit: rules.unit, written: rules.unit, zipSeries: rules.zipSeries,
	lengths: eachLength((path) => typedLength(lengthIn(rules, path), rules.unit)),
	open: openChoices.filter((choice) => rules.open[choice]),
	gate: rules.gate
});

/** What a class starts with in each unit. Inches go by eighths and sixteenths (common practice, from memory, no source). */
export const startLengths: Readonly<Record<Unit, Readonly<Record<LengthPath, string>>>> = {
	cm: typeRules(defaultRules).lengths,
	in: {
		'allowances.waist': '5/8', 'allowances.seam': '5/8', 'allowances.hem': '5/8',
		'tolerances.readings': '3/8', 'tolerances.waistWalk': '3/16', 'tolerances.bandSeam': '3/16', 'tolerances.hemLevel': '3/16'
	}
};

/**
 * The lengths when the form turns from one unit to the other: each says what it was typed in, so that it stays the same
 * length. Only in a class that is still to be opened (`fresh`) the untouched ones start anew, in round figures.
 */
export function turnLengths(lengths: Readonly<Record<LengthPath, string>>, from: Unit, to: Unit, fresh: boolean): Record<LengthPath, string> {
	return eachLength((path) => {
		const text = lengths[path].trim();
		if (fresh && text === startLengths[from][path]) return startLengths[to][path];
		if (text.endsWith(` ${to}`)) return text.slice(0, -to.length).trim();
		return /^[\d\s.,/+½¼¾⅛⅜⅝⅞-]+$/.test(text) ? `${text} ${from}` : text;
	});
}

/** `newId` names a line that is new in the gate. */
export function typedRules(form: FormData, newId: () => string): TypedRules {
	const text = (name: string): string => (typeof form.get(name) === 'string' ? String(form.get(name)) : '');
	const sentences = form.getAll('gate-says').map(String);
	return {
		unit: text('unit'), written: text('written') === 'in' ? 'in' : 'cm', zipSeries: text('zipSeries'),
		lengths: eachLength(text),
		open: form.getAll('open').map(String),
		// A sentence that is emptied leaves the gate.
		gate: form.getAll('gate-id').map((id, index) => ({ id: String(id), says: sentences[index] ?? '' }))
			.filter(({ says }) => says.trim() !== '').map(({ id, says }) => ({ id: id === '' ? newId() : id, says }))
	};
}

/** The rules for checkRules. A length that can't be read is no number there, and its own issue says why. */
export function readRules({ unit, written, zipSeries, lengths, open, gate }: TypedRules): { readonly rules: unknown; readonly issues: readonly Issue[] } {
	const read = lengthPaths.map((path) => [path, parseLength(lengths[path], written, path)] as const);
	const group = (name: string) => Object.fromEntries(read.flatMap(([path, length]) => {
		const [in_, field] = path.split('.') as [string, string];
		// Typed again it is the same to the last digit: a clearance hangs on it.
		return in_ === name ? [[field, length.ok ? Math.round(length.value.mm * 1e6) / 1e6 : NaN]] : [];
	}));
	return {
		rules: {
			unit, zipSeries, allowances: group('allowances'), tolerances: group('tolerances'),
			open: Object.fromEntries(openChoices.map((choice) => [choice, open.includes(choice)])), gate
		},
		issues: read.flatMap(([, length]) => (length.ok ? [] : length.issues))
	};
}

/** All that stands in the way, once each: what can't be read isn't out of range as well. */
export const allIssues = (read: readonly Issue[], checked: readonly Issue[]): readonly Issue[] =>
	[...checked.filter(({ path }) => !read.some((issue) => issue.path === path)), ...read];
