// The boundary: anything at all → a checked body and skirt in millimetres, or every issue at once.
import type { Body, Measurement } from './body.ts';
import { defaults } from './defaults.ts';
import { brief, Fields } from './fields.ts';
import type { Unit } from './length.ts';
import { checkMeasurement } from './measurement.ts';
import { ok, refuse, type Result } from './result.ts';
import type { FlaredSkirt, Lining, Skirt } from './skirt.ts';

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
	const top = Fields.of(value, '', 'mm');
	if (!top) return refuse({ code: 'not-an-object', path: '', expected: 'object', received: brief(value) });
	const unit = top.word('unit', ['cm', 'mm', 'in'], 'required');
	const within = { unit: unit ?? 'mm', issues: top.issues } as const;
	// Without a unit a bare number says nothing, so lengths are only looked at for their kind.
	const known = unit !== undefined;
	const body = top.group('body', within, 'required');
	const skirt = top.group('skirt', within, 'required');
	const checkedBody = body && readBody(body, known);
	const checkedSkirt = skirt && readSkirt(skirt, known);
	top.unknown();
	if (top.issues.length > 0 || !unit || !checkedBody || !checkedSkirt) return refuse(...top.issues);
	return ok({ unit, body: checkedBody, skirt: checkedSkirt });
}

function readBody(fields: Fields, known: boolean): Body | undefined {
	const read = (name: Measurement, need: 'required' | 'optional'): number | undefined => {
		const mm = fields.length(name, need === 'required' ? 'required' : undefined);
		if (mm === undefined || !known) return mm;
		const checked = checkMeasurement(name, mm, fields.pathOf(name));
		if (!checked.ok) fields.issues.push(...checked.issues);
		return mm;
	};
	const waist = read('waist', 'required');
	const hip = read('hip', 'optional');
	const waistToHip = read('waistToHip', 'optional');
	fields.unknown();
	return waist === undefined ? undefined : { waist, ...(hip !== undefined && { hip }), ...(waistToHip !== undefined && { waistToHip }) };
}

function readSkirt(fields: Fields, known: boolean): FlaredSkirt | undefined {
	const within = { unit: fields.unit, issues: fields.issues } as const;
	// Where one is refused the default stands in for it, so that the rest is still looked at; the issue is kept.
	const length = (of: Fields, name: string, usual: number, range: readonly [number, number]): number =>
		of.length(name, usual, known ? range : undefined) ?? usual;

	const style = fields.word('style', ['flared'], 'flared');
	const share = fields.number('share', shares, 'required');
	const finished = fields.length('length', 'required');
	if (finished !== undefined && known) {
		const checked = checkMeasurement('length', finished, fields.pathOf('length'));
		if (!checked.ok) fields.issues.push(...checked.issues);
	}
	const waistEase = length(fields, 'waistEase', defaults.waistEase.value, limits.waistEase);
	const hipEase = length(fields, 'hipEase', defaults.hipEase.value, limits.hipEase);
	const count = fields.whole('panels', panels, defaults.panels.value);
	const band = fields.group('band', within);
	band?.word('kind', ['straight'], 'straight');
	const depth = band ? length(band, 'depth', defaults.bandDepth.value, limits.depth) : defaults.bandDepth.value;
	const underlap = band ? length(band, 'underlap', defaults.underlap.value, limits.underlap) : defaults.underlap.value;
	band?.unknown();
	const hem = length(fields, 'hem', defaults.hem.value, limits.hem);
	const hemFinish = fields.word('hemFinish', ['turned', 'narrow'], defaults.hemFinish.value);
	const zipAt = fields.word('zipAt', ['centreBack', 'leftSide'], defaults.zipAt.value);
	const zipSeries = fields.word('zipSeries', ['cm', 'in'], defaults.zipSeries.value);
	const lining = readLining(fields, within, known);
	const allowances = fields.group('allowances', within);
	const waist = allowances ? length(allowances, 'waist', defaults.waistAllowance.value, limits.allowance) : defaults.waistAllowance.value;
	const seam = allowances ? length(allowances, 'seam', defaults.seamAllowance.value, limits.allowance) : defaults.seamAllowance.value;
	allowances?.unknown();
	fields.unknown();
	if (!style || share === undefined || finished === undefined || count === undefined) return undefined;
	if (!hemFinish || !zipAt || !zipSeries || lining === undefined) return undefined;
	return {
		style, share, length: finished, waistEase, hipEase, panels: count, band: { kind: 'straight', depth, underlap },
		hem, hemFinish, zipAt, zipSeries, lining, allowances: { waist, seam }
	};
}

/** Null is a word here: no lining. */
function readLining(fields: Fields, within: { readonly unit: Unit; readonly issues: Fields['issues'] }, known: boolean): Lining | null | undefined {
	if (fields.isNull('lining')) return defaults.lining.value;
	const lining = fields.group('lining', within);
	if (!lining) return defaults.lining.value;
	const shorterBy = lining.length('shorterBy', defaults.liningShorterBy.value, known ? limits.shorterBy : undefined);
	lining.unknown();
	return shorterBy === undefined ? undefined : { shorterBy };
}

