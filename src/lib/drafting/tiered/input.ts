// The boundary of the tiered style: fields → checked choices in millimetres, every mistake named at once.
import { casingRoom } from '../band/elastic.ts';
import { defaults, type Default } from '../defaults.ts';
import type { Fields, Within } from '../fields.ts';
import { allKnown, limits, readAllowances, readClothKind, readMeasurement, stretchOf } from '../read.ts';
import type { PlainBand } from '../skirt.ts';
import { numbers } from './figures.ts';
import type { ClothWeight, ElasticCasing, PerTier, TieredSkirt, TierLengths } from './skirt.ts';

const set = <T>(value: T, because: string): Default<T> => ({ value, because });

/** Common practice, no source, unless it says otherwise. */
export const tieredDefaults = {
	tiers: set<number>(3, 'three show the style and are soon sewn'),
	ratio: set<number>(1.5, 'half as much again, the usual gathering for a light cloth (from memory)'),
	lengths: set<TierLengths>({ kind: 'equal' }, 'one depth to mark and tear'),
	growth: set<number>(1.25, 'lower tiers hang fuller, so they may be a quarter longer each time'),
	band: set<'straight' | 'elastic'>('straight', 'lies flat under a tucked shirt'),
	elastic: set<number>(25, 'a width that every shop has'),
	hem: set<number>(20, 'a straight hem turns up without easing'),
	hemFinish: set<'turned' | 'narrow'>('turned', 'a straight hem turns up without easing'),
	cloth: set<ClothWeight>('light', 'what tiers are mostly made of'),
	clothWidth: set<number>(1400, 'usable width of a cloth of 140 cm or a little more')
} as const;

/** Least and most, mm (common practice, no source): outside them it is a slip. */
const own = { elastic: [3, 200], tier: [20, 2000], clothWidth: [300, 4000] } as const;

export function readTiered(fields: Fields, within: Within): TieredSkirt | undefined {
	const before = fields.issues.length;
	const style = fields.word('style', ['tiered'], 'tiered');
	const length = readMeasurement(fields, 'length', 'required');
	const waistEase = fields.length('waistEase', defaults.waistEase.value, limits.waistEase);
	const hipEase = fields.length('hipEase', defaults.hipEase.value, limits.hipEase);
	const tiers = fields.whole('tiers', [1, 6], tieredDefaults.tiers.value) ?? tieredDefaults.tiers.value;
	const ratio = fields.number('ratio', [1.2, 3], tieredDefaults.ratio.value) ?? tieredDefaults.ratio.value;
	const named = fields.group('ratios', within);
	const ratios: PerTier = Object.fromEntries(numbers(tiers).map((tier) =>
		[String(tier), named?.number(String(tier), [tier === 1 ? 1 : 1.2, 3], ratio) ?? ratio]));
	named?.unknown();
	const lengths = readLengths(fields, within, tiers);
	const band = readBand(fields, within);
	const hem = fields.length('hem', tieredDefaults.hem.value, limits.hem);
	const hemFinish = fields.word('hemFinish', ['turned', 'narrow'], tieredDefaults.hemFinish.value);
	const zipAt = fields.word('zipAt', ['centreBack', 'leftSide'], defaults.zipAt.value);
	const zipSeries = fields.word('zipSeries', ['cm', 'in'], defaults.zipSeries.value);
	const cloth = fields.word('cloth', ['light', 'medium', 'heavy'], tieredDefaults.cloth.value);
	const clothWidth = fields.length('clothWidth', tieredDefaults.clothWidth.value, own.clothWidth);
	const allowances = readAllowances(fields, within);
	const clothKind = readClothKind(fields);
	fields.unknown();
	const read = { style, length, waistEase, hipEase, tiers, lengths, ratios, band, hem, hemFinish, zipAt, zipSeries, cloth, clothWidth, clothKind, ...allowances };
	if (fields.issues.length > before || !allKnown(read)) return undefined;
	const { waistAllowance: waist, seamAllowance: seam, clothKind: kindOfCloth, ...skirt } = read;
	return { ...skirt, ...stretchOf(kindOfCloth), allowances: { waist, seam } };
}

function readLengths(fields: Fields, within: Within, tiers: number): TierLengths | undefined {
	const group = fields.group('lengths', within);
	if (!group) return tieredDefaults.lengths.value;
	const kind = group.word('kind', ['equal', 'growing', 'given'], tieredDefaults.lengths.value.kind);
	let lengths: TierLengths | undefined;
	if (kind === 'equal') lengths = { kind };
	if (kind === 'growing') {
		const by = group.number('by', [0.5, 2], tieredDefaults.growth.value);
		lengths = by === undefined ? undefined : { kind, by };
	}
	if (kind === 'given') {
		const each = group.group('each', within, 'required');
		const read = each && numbers(tiers).map((tier) => [String(tier), each.length(String(tier), 'required', own.tier)] as const);
		each?.unknown();
		if (read?.every((one): one is readonly [string, number] => one[1] !== undefined)) lengths = { kind, each: Object.fromEntries(read) };
	}
	// The fields of the other kinds are named only where no kind was understood.
	if (kind !== undefined) group.unknown();
	return lengths;
}

function readBand(fields: Fields, within: Within): PlainBand | ElasticCasing | undefined {
	const band = fields.group('band', within, {});
	const kind = band?.word('kind', ['straight', 'elastic'], tieredDefaults.band.value);
	if (!band || !kind) return undefined;
	const elastic = kind === 'elastic' ? band.length('elastic', tieredDefaults.elastic.value, own.elastic) : undefined;
	const depth = band.length('depth', kind === 'elastic' ? (elastic ?? tieredDefaults.elastic.value) + casingRoom : defaults.bandDepth.value, limits.depth);
	const underlap = kind === 'straight' ? band.length('underlap', defaults.underlap.value, limits.underlap) : band.length('underlap', 0, [0, 0]);
	band.unknown();
	if (depth === undefined || underlap === undefined) return undefined;
	if (kind === 'straight') return { kind, depth, underlap };
	return elastic === undefined ? undefined : { kind, depth, underlap: 0, elastic };
}
