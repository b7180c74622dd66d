// The boundary of the pleated style: fields → checked choices in millimetres, every mistake named at once.
import { defaults, type Default } from '../defaults.ts';
import type { Fields, Within } from '../fields.ts';
import { allKnown, limits, readAllowances, readClothKind, readMeasurement, stretchOf } from '../read.ts';
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
const own = { depth: [5, 300], clothWidth: [300, 4000] } as const;

export function readPleated(fields: Fields, within: Within): PleatedSkirt | undefined {
	const before = fields.issues.length;
	const style = fields.word('style', ['pleated'], 'pleated');
	const kind = fields.word('kind', ['knife', 'box'], pleatedDefaults.kind.value);
	const length = readMeasurement(fields, 'length', 'required');
	const waistEase = fields.length('waistEase', defaults.waistEase.value, limits.waistEase);
	const hipEase = fields.length('hipEase', defaults.hipEase.value, limits.hipEase);
	const pleats = fields.whole('pleats', [fewestPleats, mostPleats], pleatedDefaults.pleats.value);
	const depth = fields.length('depth', pleatedDefaults.depth.value, own.depth);
	const stitchedTo = fields.word('stitchedTo', ['hip', 'waist'], pleatedDefaults.stitchedTo.value);
	const band = fields.group('band', within, {});
	band?.word('kind', ['straight'], 'straight');
	const bandDepth = band?.length('depth', defaults.bandDepth.value, limits.depth);
	const underlap = band?.length('underlap', defaults.underlap.value, limits.underlap);
	band?.unknown();
	const hem = fields.length('hem', pleatedDefaults.hem.value, limits.hem);
	const hemFinish = fields.word('hemFinish', ['turned', 'narrow'], pleatedDefaults.hemFinish.value);
	const zipAt = fields.word('zipAt', ['centreBack', 'leftSide'], defaults.zipAt.value);
	const zipSeries = fields.word('zipSeries', ['cm', 'in'], defaults.zipSeries.value);
	const clothWidth = fields.length('clothWidth', pleatedDefaults.clothWidth.value, own.clothWidth);
	const allowances = readAllowances(fields, within);
	const clothKind = readClothKind(fields);
	fields.unknown();
	const read = { style, kind, length, waistEase, hipEase, pleats, depth, stitchedTo, bandDepth, underlap, hem, hemFinish, zipAt, zipSeries, clothWidth, clothKind, ...allowances };
	if (fields.issues.length > before || !allKnown(read)) return undefined;
	const { bandDepth: deep, underlap: lap, waistAllowance: waist, seamAllowance: seam, clothKind: kindOfCloth, ...skirt } = read;
	return { ...skirt, ...stretchOf(kindOfCloth), band: { kind: 'straight', depth: deep, underlap: lap }, allowances: { waist, seam } };
}
