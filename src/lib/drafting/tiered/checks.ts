// What a draft in tiers tells back. Limits and their sources stand beside their constants.
import type { Check, CheckCode, WayOut } from '../check.ts';
import { casingCheck } from '../checks/casing.ts';
import { clothChecks } from '../checks/cloth.ts';
import { lengthChecks } from '../checks/length.ts';
import { readingChecks } from '../checks/readings.ts';
import { slack } from '../checks/slack.ts';
import { strideNeeds } from '../checks/stride.ts';
import { walkChecks } from '../checks/walk.ts';
import { zipChecks } from '../checks/zip.ts';
import { topStop, zipFor } from '../opening.ts';
import { takeWayOut } from '../take.ts';
import { tieredObstacles } from './cuttable.ts';
import type { Drafted } from './draft.ts';
import { numbers, tieredFigures } from './figures.ts';
import type { ClothWeight, TieredSkirt } from './skirt.ts';

/** Codes that only this style has; the others are those of every skirt. */
export const tieredCodes = ['gathers-dense', 'tier-sum', 'elastic-stretch', 'elastic-passes-hip', 'hip-cannot-pass'] as const;
export type TieredCheck = Omit<Check, 'code'> & { readonly code: CheckCode | (typeof tieredCodes)[number] };

/** The most gathering that a cloth lies well under, whole edge over seam (from memory; a gathered sample tells). */
export const densest: Readonly<Record<ClothWeight, number>> = { light: 3, medium: 2, heavy: 1.5 };
export const mostRatio = 3;
/** Woven elastic stretches to about twice its length (from memory; the packet or a try tells). */
const elasticStretches = 2;

export const tieredChecks = (drafted: Drafted): readonly TieredCheck[] => [
	...walkChecks(drafted.seams, { underlap: drafted.skirt.band.underlap, cutLength: drafted.figures.bandCutLength }),
	sumCheck(drafted), ...hipChecks(drafted), ...openingChecks(drafted), ...elasticChecks(drafted), ...strideChecks(drafted), ...gathersChecks(drafted),
	...plainChecks(drafted)
];

/** The checks that ask nothing of the style. A band lies above the measured waist line. */
const plainChecks = (drafted: Drafted): readonly TieredCheck[] => [
	...readingChecks(drafted.body), ...lengthChecks({ body: drafted.body, length: drafted.skirt.length, rise: drafted.skirt.band.depth }, (ways) => open(drafted, ways)),
	...clothChecks(drafted.skirt)
];

/** Ways that still can be cut. */
const open = (drafted: Drafted, ways: readonly WayOut[]): readonly WayOut[] =>
	ways.filter((way) => tieredObstacles(drafted.body, takeWayOut(drafted.skirt, way)).length === 0);

function sumCheck({ figures }: Drafted): TieredCheck {
	const sum = figures.tiers.reduce((total, { length }) => total + length, 0);
	return { code: 'tier-sum', severity: Math.abs(sum - figures.skirtLength) > 0.01 ? 'stop' : 'good', figures: { sum, skirtLength: figures.skirtLength }, waysOut: [] };
}

/** More gathers in the first tier, or in the one named, so that a girth of now `girth` becomes `needed`. */
function ratioWays(skirt: TieredSkirt, girth: number, needed: number, upTo: number): readonly WayOut[] {
	return numbers(upTo).flatMap((tier): WayOut[] => {
		const value = (skirt.ratios[tier]! * needed * (1 + 1e-9)) / girth;
		return value <= mostRatio ? [{ path: `skirt.ratios.${tier}`, value }] : [];
	});
}

function hipChecks(drafted: Drafted): readonly TieredCheck[] {
	const { body: { hip, waistToHip, waist }, skirt, figures } = drafted;
	if (hip === undefined) return [{ code: 'hip-missing', severity: 'caution', figures: {}, waysOut: [], measure: ['hip'] }];
	const checks: TieredCheck[] = waist > hip ? [{ code: 'waist-over-hip', severity: 'note', figures: { waist, hip }, waysOut: [] }] : [];
	if (waistToHip === undefined) return [...checks, { code: 'hip-depth-missing', severity: 'note', figures: { hip }, waysOut: [], measure: ['waistToHip'] }];
	if (waistToHip > figures.skirtLength) {
		return [...checks, { code: 'hip-below-hem', severity: 'note', figures: { hipDepth: waistToHip, skirtLength: figures.skirtLength }, waysOut: [] }];
	}
	const needed = hip + skirt.hipEase;
	const girthAtHip = figures.girthAtHip!;
	const rests = { girthAtHip, needed, hip, hipEase: skirt.hipEase, hipDepth: waistToHip, spare: girthAtHip - needed };
	if (girthAtHip >= needed - slack) return [...checks, { code: 'hip-fit', severity: 'good', figures: rests, waysOut: [] }];
	// The hip is reached by tiers whose girths follow from one another, so any of their ratios will do.
	const tier = figures.tiers.find(({ girth }) => girth === girthAtHip)!.tier;
	const ways = [...ratioWays(skirt, girthAtHip, needed, tier)];
	if (girthAtHip - hip >= 0) ways.push({ path: 'skirt.hipEase', value: girthAtHip - hip });
	return [...checks, { code: 'hip-fit', severity: 'stop', figures: rests, waysOut: open(drafted, ways) }];
}

function openingChecks(drafted: Drafted): readonly TieredCheck[] {
	const { body, skirt, figures } = drafted;
	if (body.hip === undefined || skirt.band.kind === 'elastic') return [];
	const hip = body.hip + skirt.hipEase;
	const { openingBelowSeam: opening = 0, zipLength, zipEndBelowSeam: zipEnd, skirtLength, waistSeamGirth: waistSeam } = figures;
	if (opening > 0 && figures.hemSweep < hip - slack) {
		// No tier is wide enough, so no zip is long enough.
		const ways = ratioWays(skirt, figures.hemSweep, hip, skirt.tiers);
		return [{ code: 'hip-cannot-pass', severity: 'stop', figures: { widest: figures.hemSweep, hip }, waysOut: open(drafted, ways) }];
	}
	const facts = { opening, zipLength, zipEnd, skirtLength, needed: hip, waistSeam, zipSeries: skirt.zipSeries, seamAllowance: skirt.allowances.seam };
	return zipChecks(facts, () => shorterZips(drafted), (ways) => open(drafted, ways));
}

/** More gathers under the band let the hip through a shorter slit. The least of these ratios that does, tried. */
function shorterZips({ body, skirt }: Drafted): readonly WayOut[] {
	const way = [1.5, 2, 2.5, mostRatio].filter((ratio) => ratio > skirt.ratios[1]!).map((value): WayOut => ({ path: 'skirt.ratios.1', value })).find((one) => {
		const { openingBelowSeam = 0, zipLength = 0, skirtLength } = tieredFigures(body, takeWayOut(skirt, one));
		return openingBelowSeam <= skirtLength && zipLength + topStop <= skirtLength && zipFor(openingBelowSeam, skirt.zipSeries).inShops;
	});
	return way ? [way] : [];
}

function elasticChecks(drafted: Drafted): readonly TieredCheck[] {
	const { body, skirt: { band, hipEase }, figures } = drafted;
	if (band.kind !== 'elastic') return [];
	const checks: TieredCheck[] = [casingCheck(band, (ways) => open(drafted, ways))];
	if (body.hip === undefined) return checks;
	const needed = body.hip + hipEase;
	const passes = figures.waistSeamGirth >= needed - slack;
	checks.push({ code: 'elastic-passes-hip', severity: passes ? 'good' : 'stop', figures: { casing: figures.waistSeamGirth, needed }, waysOut: [] });
	// How far the elastic itself, cut to `elasticShare` of the waist, has to stretch to go over the hip.
	const stretch = body.hip / figures.elasticLength!;
	return [...checks, { code: 'elastic-stretch', severity: stretch > elasticStretches ? 'caution' : 'good', figures: { stretch, most: elasticStretches, elasticLength: figures.elasticLength!, hip: body.hip }, waysOut: [] }];
}

function strideChecks(drafted: Drafted): readonly TieredCheck[] {
	const { skirt, figures: { hemSweep } } = drafted;
	const needed = strideNeeds(skirt.length);
	if (needed === undefined) return [];
	if (hemSweep >= needed - slack) return [{ code: 'stride', severity: 'good', figures: { hemSweep, needed }, waysOut: [] }];
	// The last tier's gathers change nothing above it.
	const value = (skirt.ratios[skirt.tiers]! * needed * (1 + 1e-9)) / hemSweep;
	const ways = value <= mostRatio ? [{ path: `skirt.ratios.${skirt.tiers}`, value }] : [];
	return [{ code: 'stride', severity: 'caution', figures: { hemSweep, needed }, waysOut: open(drafted, ways) }];
}

/** Each join's cloth, ratio times the seam it is gathered into, against what the cloth lies well under. */
function gathersChecks(drafted: Drafted): readonly TieredCheck[] {
	const { skirt, figures } = drafted;
	const most = densest[skirt.cloth];
	return figures.tiers.map(({ tier, ratio, gatheredInto, girth, gathered }): TieredCheck => {
		const rests = { tier, ratio, most, join: gatheredInto, girth, gathered };
		const dense = ratio > most + 1e-9;
		const ways = dense ? open(drafted, [{ path: `skirt.ratios.${tier}`, value: most }]) : [];
		return { code: 'gathers-dense', severity: dense ? 'caution' : 'good', about: `tier ${tier}`, figures: rests, waysOut: ways };
	});
}
