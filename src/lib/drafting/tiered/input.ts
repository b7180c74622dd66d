// The boundary of the tiered style: fields → checked choices in millimetres, every mistake named at once.
import { defaults, type Default } from '../defaults.ts';
import type { Fields } from '../fields.ts';
import { checkMeasurement } from '../measurement.ts';
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
	casingRoom: set<number>(3, 'elastic slides in and doesn’t twist'),
	hem: set<number>(20, 'a straight hem turns up without easing'),
	hemFinish: set<'turned' | 'narrow'>('turned', 'a straight hem turns up without easing'),
	cloth: set<ClothWeight>('light', 'what tiers are mostly made of'),
	clothWidth: set<number>(1400, 'usable width of a cloth of 140 cm or a little more')
} as const;

/** Least and most, mm (common practice, no source): outside them it is a slip. */
const limits = {
	waistEase: [-50, 300], hipEase: [-50, 500], depth: [5, 300], underlap: [0, 200], elastic: [3, 200], hem: [0, 200], tier: [20, 2000],
	clothWidth: [300, 4000], allowance: [0, 100]
} as const;

/** `known`: whether the input said its unit, so that lengths can be held against their limits. */
export function readTiered(fields: Fields, known: boolean): TieredSkirt | undefined {
	const within = { unit: fields.unit, issues: fields.issues } as const;
	const before = fields.issues.length;
	const length = (of: Fields, name: string, usual: number, range: readonly [number, number]): number =>
		of.length(name, usual, known ? range : undefined) ?? usual;

	const style = fields.word('style', ['tiered'], 'tiered');
	const finished = fields.length('length', 'required');
	if (finished !== undefined && known) {
		const checked = checkMeasurement('length', finished, fields.pathOf('length'));
		if (!checked.ok) fields.issues.push(...checked.issues);
	}
	const waistEase = length(fields, 'waistEase', defaults.waistEase.value, limits.waistEase);
	const hipEase = length(fields, 'hipEase', defaults.hipEase.value, limits.hipEase);
	const tiers = fields.whole('tiers', [1, 6], tieredDefaults.tiers.value) ?? tieredDefaults.tiers.value;
	const ratio = fields.number('ratio', [1.2, 3], tieredDefaults.ratio.value) ?? tieredDefaults.ratio.value;
	const named = fields.group('ratios', within);
	const ratios: PerTier = Object.fromEntries(numbers(tiers).map((tier) =>
		[String(tier), named?.number(String(tier), [tier === 1 ? 1 : 1.2, 3], ratio) ?? ratio]));
	named?.unknown();
	const lengths = readLengths(fields, tiers, known);
	const band = readBand(fields, known);
	const hem = length(fields, 'hem', tieredDefaults.hem.value, limits.hem);
	const hemFinish = fields.word('hemFinish', ['turned', 'narrow'], tieredDefaults.hemFinish.value);
	const zipAt = fields.word('zipAt', ['centreBack', 'leftSide'], defaults.zipAt.value);
	const zipSeries = fields.word('zipSeries', ['cm', 'in'], defaults.zipSeries.value);
	const cloth = fields.word('cloth', ['light', 'medium', 'heavy'], tieredDefaults.cloth.value);
	const clothWidth = length(fields, 'clothWidth', tieredDefaults.clothWidth.value, limits.clothWidth);
	const allowances = fields.group('allowances', within);
	const waist = allowances ? length(allowances, 'waist', defaults.waistAllowance.value, limits.allowance) : defaults.waistAllowance.value;
	const seam = allowances ? length(allowances, 'seam', defaults.seamAllowance.value, limits.allowance) : defaults.seamAllowance.value;
	allowances?.unknown();
	fields.unknown();
	if (fields.issues.length > before || !style || finished === undefined || !hemFinish || !zipAt || !zipSeries || !cloth || !lengths || !band) return undefined;
	return {
		style, length: finished, waistEase, hipEase, tiers, lengths, ratios, band, hem, hemFinish, zipAt, zipSeries, cloth, clothWidth,
		allowances: { waist, seam }
	};
}

function readLengths(fields: Fields, tiers: number, known: boolean): TierLengths | undefined {
	const within = { unit: fields.unit, issues: fields.issues } as const;
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
		const read = each && numbers(tiers).map((tier) => [String(tier), each.length(String(tier), 'required', known ? limits.tier : undefined)] as const);
		each?.unknown();
		if (read?.every((one): one is readonly [string, number] => one[1] !== undefined)) lengths = { kind, each: Object.fromEntries(read) };
	}
	// The fields of the other kinds are named only where no kind was understood.
	if (kind !== undefined) group.unknown();
	return lengths;
}

function readBand(fields: Fields, known: boolean): PlainBand | ElasticCasing | undefined {
	const band = fields.group('band', { unit: fields.unit, issues: fields.issues });
	if (!band) return { kind: 'straight', depth: defaults.bandDepth.value, underlap: defaults.underlap.value };
	const length = (name: string, usual: number, range: readonly [number, number]): number => band.length(name, usual, known ? range : undefined) ?? usual;
	const kind = band.word('kind', ['straight', 'elastic'], tieredDefaults.band.value);
	let read: PlainBand | ElasticCasing | undefined;
	if (kind === 'straight') read = { kind, depth: length('depth', defaults.bandDepth.value, limits.depth), underlap: length('underlap', defaults.underlap.value, limits.underlap) };
	if (kind === 'elastic') {
		const elastic = length('elastic', tieredDefaults.elastic.value, limits.elastic);
		read = { kind, depth: length('depth', elastic + tieredDefaults.casingRoom.value, limits.depth), elastic };
	}
	if (kind !== undefined) band.unknown();
	return read;
}
