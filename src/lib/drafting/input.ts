// The boundary: anything at all → a checked body and skirt in millimetres, or every issue at once.
import type { Body, Measurement } from './body.ts';
import { obstaclesIn } from './cuttable.ts';
import { defaults } from './defaults.ts';
import { brief, Fields, type Within } from './fields.ts';
import type { Unit } from './length.ts';
import { checkMeasurement } from './measurement.ts';
import { ok, refuse, type Result } from './result.ts';
import type { FlaredSkirt, Skirt } from './skirt.ts';

export interface DraftInput {
	/** What bare numbers were in; the rest is in mm. */
	readonly unit: Unit;
	readonly body: Body;
	readonly skirt: Skirt;
}

/** Least and most, mm (common practice, no source): they catch slips by ten, and a skirt outside them is another garment. */
const limits = {
	waistEase: [-50, 300], hipEase: [-50, 500], depth: [5, 300], underlap: [0, 200], hem: [0, 200], shorterBy: [0, 500], allowance: [0, 100]
} as const;
const shares = [0.1, 2] as const;
const panels = [1, 12] as const;

/** Reads the draft command's input (DEVELOPERS.md). What is left out takes its default; every mistake is named at once. */
export function checkInput(value: unknown): Result<DraftInput> {
	const top = Fields.of(value, '', undefined);
	if (!top) return refuse({ code: 'not-an-object', path: '', expected: 'object', received: brief(value) });
	const unit = top.word('unit', ['cm', 'mm', 'in'], 'required');
	const within = { unit, issues: top.issues } as const;
	const bodyFields = top.group('body', within, 'required');
	const skirtFields = top.group('skirt', within, 'required');
	const body = bodyFields && readBody(bodyFields);
	const skirt = skirtFields && readSkirt(skirtFields, within);
	top.unknown();
	if (top.issues.length === 0 && unit && body && skirt && allKnown(body.needed) && allKnown(skirt)) {
		return ok({ unit, body: { ...body.needed, ...body.more }, skirt: skirtOf(skirt) });
	}
	// What could be read may already be a skirt that can't be cut; without a unit nobody can tell.
	const inTheWay = unit && skirt ? obstaclesIn({ ...skirt, waist: body?.needed.waist, shorterBy: skirt.lining?.shorterBy }) : [];
	return refuse(...top.issues, ...inTheWay);
}

/** Each field of one object, or undefined where it was refused. */
type Known<T> = { readonly [K in keyof T]: Exclude<T[K], undefined> };
const allKnown = <T extends object>(fields: T): fields is T & Known<T> => Object.values(fields).every((field) => field !== undefined);

function readBody(fields: Fields): { readonly needed: { readonly waist: number | undefined }; readonly more: Omit<Body, 'waist'> } {
	const waist = readMeasurement(fields, 'waist', 'required');
	const hip = readMeasurement(fields, 'hip');
	const waistToHip = readMeasurement(fields, 'waistToHip');
	fields.unknown();
	return { needed: { waist }, more: { ...(hip !== undefined && { hip }), ...(waistToHip !== undefined && { waistToHip }) } };
}

function readMeasurement(fields: Fields, name: Measurement, need?: 'required'): number | undefined {
	const mm = fields.length(name, need);
	if (mm === undefined || fields.unit === undefined) return mm;
	const checked = checkMeasurement(name, mm, fields.pathOf(name));
	if (checked.ok) return mm;
	fields.issues.push(...checked.issues);
	return undefined;
}

type ReadSkirt = ReturnType<typeof readSkirt>;

/** Flat, so that whatever could be read of it can be looked at. */
function readSkirt(fields: Fields, within: Within) {
	const style = fields.word('style', ['flared'], 'flared');
	const share = fields.number('share', shares, 'required');
	const length = readMeasurement(fields, 'length', 'required');
	const waistEase = fields.length('waistEase', defaults.waistEase.value, limits.waistEase);
	const hipEase = fields.length('hipEase', defaults.hipEase.value, limits.hipEase);
	const panelCount = fields.whole('panels', panels, defaults.panels.value);
	// Left out, a group is read as if it were empty.
	const band = fields.group('band', within, {});
	const bandKind = band?.word('kind', ['straight'], 'straight');
	const bandDepth = band?.length('depth', defaults.bandDepth.value, limits.depth);
	const underlap = band?.length('underlap', defaults.underlap.value, limits.underlap);
	band?.unknown();
	const hem = fields.length('hem', defaults.hem.value, limits.hem);
	const hemFinish = fields.word('hemFinish', ['turned', 'narrow'], defaults.hemFinish.value);
	const zipAt = fields.word('zipAt', ['centreBack', 'leftSide'], defaults.zipAt.value);
	const zipSeries = fields.word('zipSeries', ['cm', 'in'], defaults.zipSeries.value);
	const lining = readLining(fields, within);
	const allowances = fields.group('allowances', within, {});
	const waistAllowance = allowances?.length('waist', defaults.waistAllowance.value, limits.allowance);
	const seamAllowance = allowances?.length('seam', defaults.seamAllowance.value, limits.allowance);
	allowances?.unknown();
	fields.unknown();
	return {
		style, share, length, waistEase, hipEase, panels: panelCount, bandKind, bandDepth, underlap, hem, hemFinish, zipAt, zipSeries, lining,
		waistAllowance, seamAllowance
	};
}

/** Null is a word here: no lining. */
function readLining(fields: Fields, within: Within): FlaredSkirt['lining'] | undefined {
	if (fields.isNull('lining')) return null;
	const lining = fields.group('lining', within);
	if (!lining) return lining === null ? defaults.lining.value : undefined;
	const shorterBy = lining.length('shorterBy', defaults.liningShorterBy.value, limits.shorterBy);
	lining.unknown();
	return shorterBy === undefined ? undefined : { shorterBy };
}

const skirtOf = ({ bandKind, bandDepth, underlap, waistAllowance, seamAllowance, ...skirt }: Known<ReadSkirt>): FlaredSkirt => ({
	...skirt, band: { kind: bandKind, depth: bandDepth, underlap }, allowances: { waist: waistAllowance, seam: seamAllowance }
});
