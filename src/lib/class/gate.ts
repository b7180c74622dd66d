// The rules a class starts with, and the check of rules that a teacher has changed.
import { ok, refuse, type Issue, type Result } from '../drafting/result.ts';
import type { ClassRules } from './rules.ts';
import { unshown } from './unshown.ts';

/**
 * The ready-to-cut gate: critical items only (common practice, no source). None is ever pre-ticked.
 * The sentences are the teacher's to change; the ids stay.
 */
export const defaultGate: ClassRules['gate'] = [
	{ id: 'cloth', says: 'The cloth is washed, pressed, and its width measured again.' },
	{ id: 'waist', says: 'The waist was measured twice, and its unit read back.' },
	{ id: 'length', says: 'The cut length includes the hem allowance.' },
	{ id: 'grain', says: 'The fold and the grain are found.' },
	{ id: 'lines', says: 'The stitch line and the cut line are both marked.' },
	{ id: 'walk', says: 'The waist stitch line, walked with the tape on edge, equals the expected figure (half of it on a fold).' },
	{ id: 'second', says: 'A second person says “cut”.' }
];

/** Allowances and tolerances in mm: common practice, from memory, no source. */
export const defaultRules: ClassRules = {
	unit: 'cm',
	zipSeries: 'cm',
	allowances: { waist: 15, seam: 15, hem: 15 },
	tolerances: { readings: 10, waistWalk: 5, bandSeam: 5, hemLevel: 5 },
	open: { share: false, waistEase: true, bandDepth: true, hemFinish: false },
	gate: defaultGate
};

/** Least and most in mm. Wide enough for any class; they only catch slips by ten and the like. */
const limits = {
	allowances: { waist: [5, 40], seam: [5, 40], hem: [5, 100] },
	tolerances: { readings: [1, 50], waistWalk: [1, 30], bandSeam: [1, 30], hemLevel: [1, 30] }
} as const;
const openings = ['share', 'waistEase', 'bandDepth', 'hemFinish'] as const;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
	typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Checks rules from a form or from JSON: all issues at once, and nothing kept that rules don't have. `needs`: the least
 * allowances that the class's lesson can be sewn with.
 */
export function checkRules(value: unknown, needs?: ClassRules['allowances']): Result<ClassRules> {
	if (!isRecord(value)) return refuse({ code: 'not-rules', path: '', expected: 'rules', received: value });
	const issues: Issue[] = [];

	const units = { unit: value.unit, zipSeries: value.zipSeries };
	for (const [path, unit] of Object.entries(units)) {
		if (unit !== 'cm' && unit !== 'in') issues.push({ code: 'not-a-unit', path, expected: ['cm', 'in'], received: unit });
	}
	const lengths: Record<string, Record<string, number>> = { allowances: {}, tolerances: {} };
	for (const [group, fields] of Object.entries(limits)) {
		const given = isRecord(value[group]) ? value[group] : {};
		for (const [field, [least, most]] of Object.entries(fields)) {
			const length = given[field];
			if (typeof length !== 'number' || !(length >= least && length <= most)) {
				issues.push({ code: 'length-out-of-range', path: `${group}.${field}`, expected: 'length', received: length, figures: { least, most } });
			} else if (group === 'allowances' && length < (needs?.[field as keyof typeof needs] ?? 0)) {
				issues.push({ code: 'allowance-under-lesson', path: `${group}.${field}`, expected: 'length', received: length, figures: { least: needs![field as keyof typeof needs] } });
			} else lengths[group]![field] = length;
		}
	}
	const given = isRecord(value.open) ? value.open : {};
	const open: Record<string, boolean> = {};
	for (const choice of openings) {
		const is = given[choice];
		if (typeof is !== 'boolean') issues.push({ code: 'not-yes-or-no', path: `open.${choice}`, expected: [true, false], received: is });
		else open[choice] = is;
	}
	const gate = checkGate(value.gate);
	if (!gate.ok) issues.push(...gate.issues);

	if (issues.length > 0 || !gate.ok) return refuse(...issues);
	return ok({ ...units, ...lengths, open, gate: gate.value } as unknown as ClassRules);
}

/** One to 20 items, each a sentence with an id of its own. */
function checkGate(value: unknown): Result<ClassRules['gate']> {
	if (!Array.isArray(value) || value.length < 1 || value.length > 20) {
		return refuse({ code: 'gate-count', path: 'gate', expected: '1…20', received: Array.isArray(value) ? value.length : value });
	}
	const issues: Issue[] = [];
	const seen = new Set<string>();
	const items = value.map((item: unknown, index) => {
		const { id, says: typed } = isRecord(item) ? item : {};
		// Read aloud: one line, however it was broken while typing.
		const says = typeof typed === 'string' ? typed.replace(/\s+/g, ' ').trim() : '';
		if (typeof id !== 'string' || !/^[a-z][a-z0-9-]{0,39}$/.test(id) || seen.has(id)) {
			issues.push({ code: 'gate-id', path: `gate.${index}.id`, expected: 'a new id', received: id });
		} else seen.add(id);
		if (says === '' || says.length > 200 || unshown.test(says)) {
			issues.push({ code: 'gate-sentence', path: `gate.${index}.says`, expected: '1…200 characters', received: typed });
		}
		return { id: String(id), says };
	});
	return issues.length > 0 ? refuse(...issues) : ok(items);
}
