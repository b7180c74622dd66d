// What the readers of every style have in common: their limits, a measurement, the allowances.
import type { Measurement } from './body.ts';
import { defaults } from './defaults.ts';
import type { Fields, Within } from './fields.ts';
import { checkMeasurement } from './measurement.ts';

/** Least and most, mm (common practice, no source): they catch slips by ten, and a skirt outside them is another garment. */
export const limits = {
	waistEase: [-50, 300], elastic: [3, 120], lower: [300, 2600], facing: [20, 300], hipEase: [-50, 500], depth: [5, 300], underlap: [0, 200], hem: [0, 200], shorterBy: [0, 500], allowance: [0, 100]
} as const;

/** Each field of one object, or undefined where it was refused. */
export type Known<T> = { readonly [K in keyof T]: Exclude<T[K], undefined> };
export const allKnown = <T extends object>(fields: T): fields is T & Known<T> => Object.values(fields).every((field) => field !== undefined);

export function readMeasurement(fields: Fields, name: Measurement, need?: 'required'): number | undefined {
	const mm = fields.length(name, need);
	if (mm === undefined || fields.unit === undefined) return mm;
	const checked = checkMeasurement(name, mm, fields.pathOf(name), fields.unitOf(name) ?? fields.unit);
	if (checked.ok) return mm;
	fields.issues.push(...checked.issues);
	return undefined;
}

/** Left out, the group is read as if it were empty. */
export function readAllowances(fields: Fields, within: Within): { readonly waistAllowance: number | undefined; readonly seamAllowance: number | undefined } {
	const allowances = fields.group('allowances', within, {});
	const waistAllowance = allowances?.length('waist', defaults.waistAllowance.value, limits.allowance);
	const seamAllowance = allowances?.length('seam', defaults.seamAllowance.value, limits.allowance);
	allowances?.unknown();
	return { waistAllowance, seamAllowance };
}
