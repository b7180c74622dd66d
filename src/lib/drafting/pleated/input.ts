// The boundary of the pleated style: fields → checked choices in millimetres, every mistake named at once.
import { defaults, type Default } from '../defaults.ts';
import type { Fields } from '../fields.ts';
import { checkMeasurement } from '../measurement.ts';
import { fewestPleats, mostPleats } from './cuttable.ts';
import type { PleatedSkirt, PleatKind } from './skirt.ts';

const set = <T>(value: T, because: string): Default<T> => ({ value, because });

/** Common practice, no source. */
export const pleatedDefaults = {
	kind: set<PleatKind>('knife', 'one fold a pleat, the least to mark and press'),
	pleats: set<number>(20, 'a hand’s breadth or less from fold to fold'),
	depth: set<number>(30, 'deep enough to swing, and no pleat lies under the next'),
	stitchedTo: set<'hip' | 'waist'>('hip', 'pleats that lie flat over the hip stay closed there'),
	hem: set<number>(30, 'a straight hem turns up without easing, and its weight holds the pleats'),
	hemFinish: set<'turned' | 'narrow'>('turned', 'one fold, so that pleats press sharp over it'),
	clothWidth: set<number>(1400, 'usable width of a cloth of 140 cm or a little more')
} as const;

/** Least and most, mm (common practice, no source): outside them it is a slip. */
const limits = {
	waistEase: [-50, 300], hipEase: [-50, 500], depth: [5, 300], bandDepth: [5, 300], underlap: [0, 200], hem: [0, 200], clothWidth: [300, 4000], allowance: [0, 100]
} as const;

/** `known`: whether the input said its unit, so that lengths can be held against their limits. */
export function readPleated(fields: Fields, known: boolean): PleatedSkirt | undefined {
	const within = { unit: fields.unit, issues: fields.issues } as const;
	const before = fields.issues.length;
	const length = (of: Fields, name: string, usual: number, range: readonly [number, number]): number =>
		of.length(name, usual, known ? range : undefined) ?? usual;

	const style = fields.word('style', ['pleated'], 'pleated');
	const kind = fields.word('kind', ['knife', 'box'], pleatedDefaults.kind.value);
	const finished = fields.length('length', 'required');
	if (finished !== undefined && known) {
		const checked = checkMeasurement('length', finished, fields.pathOf('length'));
		if (!checked.ok) fields.issues.push(...checked.issues);
	}
	const waistEase = length(fields, 'waistEase', defaults.waistEase.value, limits.waistEase);
	const hipEase = length(fields, 'hipEase', defaults.hipEase.value, limits.hipEase);
	const pleats = fields.whole('pleats', [fewestPleats, mostPleats], pleatedDefaults.pleats.value);
	const depth = length(fields, 'depth', pleatedDefaults.depth.value, limits.depth);
	const stitchedTo = fields.word('stitchedTo', ['hip', 'waist'], pleatedDefaults.stitchedTo.value);
	const band = fields.group('band', within);
	band?.word('kind', ['straight'], 'straight');
	const bandDepth = band ? length(band, 'depth', defaults.bandDepth.value, limits.bandDepth) : defaults.bandDepth.value;
	const underlap = band ? length(band, 'underlap', defaults.underlap.value, limits.underlap) : defaults.underlap.value;
	band?.unknown();
	const hem = length(fields, 'hem', pleatedDefaults.hem.value, limits.hem);
	const hemFinish = fields.word('hemFinish', ['turned', 'narrow'], pleatedDefaults.hemFinish.value);
	const zipAt = fields.word('zipAt', ['centreBack', 'leftSide'], defaults.zipAt.value);
	const zipSeries = fields.word('zipSeries', ['cm', 'in'], defaults.zipSeries.value);
	const clothWidth = length(fields, 'clothWidth', pleatedDefaults.clothWidth.value, limits.clothWidth);
	const allowances = fields.group('allowances', within);
	const waist = allowances ? length(allowances, 'waist', defaults.waistAllowance.value, limits.allowance) : defaults.waistAllowance.value;
	const seam = allowances ? length(allowances, 'seam', defaults.seamAllowance.value, limits.allowance) : defaults.seamAllowance.value;
	allowances?.unknown();
	fields.unknown();
	if (fields.issues.length > before || !style || !kind || finished === undefined || pleats === undefined || !stitchedTo || !hemFinish || !zipAt || !zipSeries) return undefined;
	return {
		style, kind, length: finished, waistEase, hipEase, pleats, depth, stitchedTo, band: { kind: 'straight', depth: bandDepth, underlap },
		hem, hemFinish, zipAt, zipSeries, clothWidth, allowances: { waist, seam }
	};
}
