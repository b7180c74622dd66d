// What the readers of every style have in common: their limits, a measurement, the allowances.
import { bodyMeasurements, type Body, type BodyMeasurement, type Measurement } from './body.ts';
import { defaults } from './defaults.ts';
import type { Fields, Within } from './fields.ts';
import { checkMeasurement } from './measurement.ts';
import { agree, readingTolerance } from './reading.ts';
import type { ClothKind } from './skirt.ts';

/** Least and most, mm (common practice, no source): they catch slips by ten, and a skirt outside them is another garment. */
export const limits = {
	waistEase: [-50, 300], elastic: [3, 120], lower: [300, 2600], facing: [20, 300], waistDip: [0, 80], hipEase: [-50, 500], depth: [5, 300], underlap: [0, 200], hem: [0, 200], shorterBy: [0, 500], allowance: [0, 100]
} as const;

/** Each field of one object, or undefined where it was refused. */
export type Known<T> = { readonly [K in keyof T]: Exclude<T[K], undefined> };
export const allKnown = <T extends object>(fields: T): fields is T & Known<T> => Object.values(fields).every((field) => field !== undefined);

/** `field` is what it is called there, where that isn't the measurement's own name. */
export function readMeasurement(fields: Fields, name: Measurement, need?: 'required', field: string = name): number | undefined {
	const mm = fields.length(field, need);
	if (mm === undefined || fields.unit === undefined) return mm;
	const checked = checkMeasurement(name, mm, fields.pathOf(field), fields.unitOf(field) ?? fields.unit);
	if (checked.ok) return mm;
	fields.issues.push(...checked.issues);
	return undefined;
}

/** The readings of one measurement, each within what can be a person's; undefined where it is left out or refused. */
function readReadings(fields: Fields, name: BodyMeasurement, need?: 'required'): readonly number[] | undefined {
	const all = fields.readings(name, need);
	const { unit } = fields;
	if (all === undefined || unit === undefined) return all;
	const issues = all.flatMap((mm, i) => {
		const checked = checkMeasurement(name, mm, fields.pathOf(name), fields.unitOf(name, i) ?? unit);
		return checked.ok ? [] : checked.issues;
	});
	fields.issues.push(...issues);
	return issues.length === 0 ? all : undefined;
}

/**
 * A body; `waist` is undefined where it was refused or missing. Readings that agree are used by their mean; where they
 * don't, the newest stands in and the check `readings-apart` stops.
 */
export function readBody(fields: Fields): Omit<Body, 'waist'> & { readonly waist: number | undefined } {
	const readings: Partial<Record<BodyMeasurement, readonly number[]>> = {};
	const used: Partial<Record<BodyMeasurement, number>> = {};
	for (const name of bodyMeasurements) {
		const all = readReadings(fields, name, name === 'waist' ? 'required' : undefined);
		if (all === undefined) continue;
		if (all.length > 1) readings[name] = all;
		used[name] = agree(all.map((mm) => ({ mm })), readingTolerance).used ?? all.at(-1)!;
	}
	fields.unknown();
	const { waist, ...more } = used;
	return { waist, ...more, ...(Object.keys(readings).length > 0 && { readings }) };
}

export const readClothKind = (fields: Fields): ClothKind | undefined => fields.word('clothKind', ['woven', 'stretch'], 'woven');
/** Woven cloth is what every draft is for, and isn't said. */
export const stretchOf = (kind: ClothKind): { readonly clothKind?: ClothKind } => (kind === 'stretch' ? { clothKind: 'stretch' } : {});

/** Left out, the group is read as if it were empty. */
export function readAllowances(fields: Fields, within: Within): { readonly waistAllowance: number | undefined; readonly seamAllowance: number | undefined } {
	const allowances = fields.group('allowances', within, {});
	const waistAllowance = allowances?.length('waist', defaults.waistAllowance.value, limits.allowance);
	const seamAllowance = allowances?.length('seam', defaults.seamAllowance.value, limits.allowance);
	allowances?.unknown();
	return { waistAllowance, seamAllowance };
}
