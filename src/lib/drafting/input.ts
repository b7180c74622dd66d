// The boundary: anything at all → a checked body and skirt in millimetres, or every issue at once.
import type { Body } from './body.ts';
import { obstaclesIn } from './cuttable.ts';
import { defaults } from './defaults.ts';
import { brief, Fields, type Within } from './fields.ts';
import { allKnown, limits, readAllowances, readBody, readClothKind, readMeasurement, stretchOf, type Known } from './read.ts';
import type { Unit } from './length.ts';
import { ok, refuse, type Result } from './result.ts';
import type { Band, FlaredSkirt, HemFinish, Lengths, Skirt, WaistDip } from './skirt.ts';

export interface DraftInput {
	/** What bare numbers were in; the rest is in mm. */
	readonly unit: Unit;
	readonly body: Body;
	readonly skirt: Skirt;
}

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
	if (top.issues.length === 0 && unit && body?.waist !== undefined && skirt && allKnown(skirt)) {
		return ok({ unit, body: { ...body, waist: body.waist }, skirt: skirtOf(skirt) });
	}
	// What could be read may already be a skirt that can't be cut; without a unit nobody can tell.
	const inTheWay = unit && skirt ? obstaclesIn({
		...skirt, lengthPath: 'skirt.length', waistSeam: partlySeam(body?.waist, skirt), bandDepth: skirt.band?.depth, ring: false,
		shorterBy: skirt.lining?.shorterBy, liningShare: skirt.lining?.share ?? undefined,
		waistFacing: skirt.band?.kind === 'faced' ? skirt.band.facing : undefined, hemFacing: skirt.hemFinish === 'faced' ? skirt.hemFacing : undefined
	}) : [];
	return refuse(...top.issues, ...inTheWay);
}

/** The body of an input of any style; undefined where it was refused. */
export function readBodyOf(top: Fields, within: Within): Body | undefined {
	const fields = top.group('body', within, 'required');
	const read = fields && readBody(fields);
	return read?.waist === undefined ? undefined : { ...read, waist: read.waist };
}

/** The waist seam of what could be read: an elastic's rests on the hip, so nothing is said of it here. */
function partlySeam(waist: number | undefined, { band, waistEase }: ReadSkirt): number | undefined {
	if (!band || band.kind === 'elastic' || waist === undefined || waistEase === undefined) return undefined;
	return band.kind === 'contour' ? band.lower : waist + waistEase;
}

type ReadSkirt = ReturnType<typeof readSkirt>;

/** Flat, so that whatever could be read of it can be looked at. */
function readSkirt(fields: Fields, within: Within) {
	const style = fields.word('style', ['flared'], 'flared');
	const share = fields.number('share', shares, 'required');
	const length = readMeasurement(fields, 'length', 'required');
	const lengths = readLengths(fields, within);
	const riseAt = fields.word('riseAt', ['hem', 'waist'], defaults.riseAt.value);
	const waistDip = readWaistDip(fields, within);
	const waistEase = fields.length('waistEase', defaults.waistEase.value, limits.waistEase);
	const hipEase = fields.length('hipEase', defaults.hipEase.value, limits.hipEase);
	const panelCount = fields.whole('panels', panels, defaults.panels.value);
	const panelShares = readPanelShares(fields, panelCount);
	const band = readBand(fields, within);
	const closure = fields.word('closure', band?.kind === 'elastic' ? ['none'] : ['zip', 'none'], band?.kind === 'elastic' ? 'none' : defaults.closure.value);
	const hemFinish = fields.word('hemFinish', hemFinishes, defaults.hemFinish.value);
	const hemCorner = fields.word('hemCorner', ['mitred', 'foldedBack'], defaults.hemCorner.value);
	const hem = fields.length('hem', hemOf[hemFinish ?? defaults.hemFinish.value], limits.hem);
	const hemFacing = fields.length('hemFacing', defaults.hemFacing.value, limits.facing);
	const zipAt = fields.word('zipAt', ['centreBack', 'leftSide'], defaults.zipAt.value);
	const zipSeries = fields.word('zipSeries', ['cm', 'in'], defaults.zipSeries.value);
	const lining = readLining(fields, within);
	const { waistAllowance, seamAllowance } = readAllowances(fields, within);
	const clothKind = readClothKind(fields);
	fields.unknown();
	return {
		style, share, length, lengths, riseAt, waistDip, hemCorner, waistEase, hipEase, panels: panelCount, panelShares, band, closure, hem, hemFinish, hemFacing, zipAt, zipSeries, lining,
		waistAllowance, seamAllowance, clothKind
	};
}

/** Each is a finished length; `side` is said for both sides. Null where none is named. */
function readLengths(fields: Fields, within: Within): Lengths | null | undefined {
	const group = fields.group('lengths', within);
	if (!group) return group;
	const before = within.issues.length;
	const side = readMeasurement(group, 'length', undefined, 'side');
	const read = {
		front: readMeasurement(group, 'length', undefined, 'front'), sideLeft: readMeasurement(group, 'length', undefined, 'sideLeft') ?? side,
		sideRight: readMeasurement(group, 'length', undefined, 'sideRight') ?? side, back: readMeasurement(group, 'length', undefined, 'back')
	};
	group.unknown();
	if (within.issues.length > before) return undefined;
	const named = Object.entries(read).filter(([, length]) => length !== undefined);
	return named.length > 0 ? Object.fromEntries(named) : null;
}

/** Null where nothing dips. */
function readWaistDip(fields: Fields, within: Within): WaistDip | null | undefined {
	const group = fields.group('waistDip', within);
	if (!group) return group;
	const front = group.length('front', 0, limits.waistDip);
	const back = group.length('back', 0, limits.waistDip);
	group.unknown();
	if (front === undefined || back === undefined) return undefined;
	return front > 0 || back > 0 ? { front, back } : null;
}

/** Null is a word here: no lining. */
function readLining(fields: Fields, within: Within): FlaredSkirt['lining'] | undefined {
	if (fields.isNull('lining')) return null;
	const lining = fields.group('lining', within);
	if (!lining) return lining === null ? defaults.lining.value : undefined;
	const shorterBy = lining.length('shorterBy', defaults.liningShorterBy.value, limits.shorterBy);
	const share = lining.number('share', shares, null);
	lining.unknown();
	return shorterBy === undefined || share === undefined ? undefined : { shorterBy, share };
}

const hemFinishes: readonly HemFinish[] = ['turned', 'narrow', 'rolled', 'bound', 'faced'];
/** What is taken for a hem's allowance, by its finish, mm: rolled is least; bound is cut at the fold; a facing is joined on. Common practice, no source. */
const hemOf: Readonly<Record<HemFinish, number>> = { turned: defaults.hem.value, narrow: defaults.hem.value, rolled: 6, bound: 0, faced: 10 };

/** Each kind has fields of its own; one that another kind has is unknown here. */
function readBand(fields: Fields, within: Within): Band | undefined {
	const band = fields.group('band', within, {});
	if (!band) return undefined;
	const kind = band.word('kind', ['straight', 'contour', 'elastic', 'faced'], 'straight');
	if (!kind) return undefined;
	const sits = band.word('sits', ['above', 'centred', 'below'], kind === 'contour' ? defaults.contourSits.value : defaults.sits.value);
	if (kind === 'faced') {
		// A checked skirt can be read again: what it doesn't have is nothing.
		band.length('depth', 0, [0, 0]);
		band.length('underlap', 0, [0, 0]);
		const facing = band.length('facing', defaults.waistFacing.value, limits.facing);
		band.unknown();
		return sits && facing !== undefined ? { kind, depth: 0, underlap: 0, sits, facing } : undefined;
	}
	const depth = band.length('depth', kind === 'elastic' ? defaults.casingDepth.value : defaults.bandDepth.value, limits.depth);
	if (kind === 'elastic') {
		band.length('underlap', 0, [0, 0]);
		const elastic = band.length('elastic', Math.max(limits.elastic[0], (depth ?? defaults.casingDepth.value) - defaults.casingSlack.value), limits.elastic);
		band.unknown();
		return sits && depth !== undefined && elastic !== undefined ? { kind, depth, underlap: 0, sits, elastic } : undefined;
	}
	const underlap = band.length('underlap', defaults.underlap.value, limits.underlap);
	const lower = kind === 'contour' ? band.length('lower', 'required', limits.lower) : undefined;
	band.unknown();
	if (!sits || depth === undefined || underlap === undefined) return undefined;
	if (kind === 'straight') return { kind, depth, underlap, sits };
	return lower === undefined ? undefined : { kind, depth, underlap, sits, lower };
}

/** One share of the waist for each panel, summing to 1 (to a thousandth: a person writes 0.333). Null: equal. */
function readPanelShares(fields: Fields, panels: number | undefined): readonly number[] | null | undefined {
	const given = fields.list('panelShares');
	if (given === undefined) return null;
	if (panels === undefined || given === 'refused') return undefined;
	const sum = given.reduce((total, share) => total + share, 0);
	if (given.length !== panels || given.some((share) => !(share >= leastPanelShare)) || Math.abs(sum - 1) > 0.001) {
		fields.issues.push({ code: 'shares-not-whole', path: fields.pathOf('panelShares'), expected: `${panels} shares that sum to 1`, received: given.join(' + ').slice(0, 64) });
		return undefined;
	}
	return given.map((share) => share / sum);
}
/** A narrower panel is all seam allowance (common practice, no source). */
const leastPanelShare = 0.03;

/** What a skirt is left without keeps no field, so that a skirt that never had one reads as it always did. */
const skirtOf = ({ waistAllowance, seamAllowance, clothKind, lengths, riseAt, waistDip, hemCorner, ...skirt }: Known<ReadSkirt>): FlaredSkirt => ({
	...skirt, ...stretchOf(clothKind), allowances: { waist: waistAllowance, seam: seamAllowance },
	...(lengths && { lengths }), ...(lengths && riseAt !== defaults.riseAt.value && { riseAt }), ...(waistDip && { waistDip }),
	...(hemCorner !== defaults.hemCorner.value && { hemCorner })
});
