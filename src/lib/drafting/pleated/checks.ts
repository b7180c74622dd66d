// What a pleated draft tells back. Limits and their sources stand beside their constants.
import type { Check, CheckCode, WayOut } from '../check.ts';
import { clothChecks } from '../checks/cloth.ts';
import { lengthChecks } from '../checks/length.ts';
import { readingChecks } from '../checks/readings.ts';
import { slack } from '../checks/slack.ts';
import { strideNeeds } from '../checks/stride.ts';
import { walkChecks } from '../checks/walk.ts';
import { zipChecks } from '../checks/zip.ts';
import { takeWayOut } from '../take.ts';
import { mostPleats, pleatedObstacles, taperWays } from './cuttable.ts';
import type { Drafted } from './draft.ts';
import { pairs } from './folding.ts';

/** Codes that only this style has; the others are those of every skirt. */
export const pleatedCodes = ['pleats-overlap', 'waist-bulk', 'taper-steep', 'taper-shallows', 'waist-folded-true'] as const;
export type PleatedCheck = Omit<Check, 'code'> & { readonly code: CheckCode | (typeof pleatedCodes)[number] };

/** A fold further off the grain than this pokes out below (common practice, no source). */
const steepest = (10 * Math.PI) / 180;
/** Three layers are a pleat; five still go under a foot; more are graded or lightened (common practice, no source). */
const layers = { flat: 3, most: 5 } as const;
/** The shallowest depth that is offered as a way out (common practice, no source). mm */
const least = 10;

export const pleatedChecks = (drafted: Drafted): readonly PleatedCheck[] => [
	...walkChecks(drafted.seams, { underlap: drafted.skirt.band.underlap, cutLength: drafted.figures.bandCutLength }), ...hipChecks(drafted), ...openingChecks(drafted), overlapCheck(drafted), bulkCheck(drafted),
	...taperChecks(drafted), ...strideChecks(drafted), ...plainChecks(drafted)
];

/** The checks that ask nothing of the style. A band lies above the measured waist line. */
const plainChecks = (drafted: Drafted): readonly PleatedCheck[] => [
	...readingChecks(drafted.body), ...lengthChecks({ body: drafted.body, length: drafted.skirt.length, rise: drafted.skirt.band.depth }, (ways) => open(drafted, ways)),
	...clothChecks(drafted.skirt)
];

/** Ways that still can be cut and folded. */
const open = ({ body, skirt }: Drafted, ways: readonly WayOut[]): readonly WayOut[] =>
	ways.filter((way) => pleatedObstacles(body, takeWayOut(skirt, way)).length === 0);

/** The closed girth is drafted from the hip, so only ease of less than nothing makes it too tight; free pleats then open. */
function hipChecks({ body: { hip, waist }, skirt, figures }: Drafted): readonly PleatedCheck[] {
	const checks: PleatedCheck[] = waist > hip ? [{ code: 'waist-over-hip', severity: 'note', figures: { waist, hip }, waysOut: [] }] : [];
	const rests = { girthAtHip: figures.hipGirth, needed: hip, hip, hipEase: skirt.hipEase, hipDepth: figures.hipDepth, spare: skirt.hipEase };
	if (skirt.hipEase >= -slack) return [...checks, { code: 'hip-fit', severity: 'good', figures: rests, waysOut: [] }];
	return [...checks, { code: 'hip-fit', severity: skirt.stitchedTo === 'hip' ? 'stop' : 'caution', figures: rests, waysOut: [{ path: 'skirt.hipEase', value: 0 }] }];
}

function openingChecks(drafted: Drafted): readonly PleatedCheck[] {
	const { skirt, figures: { hipGirth: needed, waistSeamGirth: waistSeam, openingBelowSeam: opening, zipLength, zipEndBelowSeam: zipEnd, skirtLength } } = drafted;
	const facts = { opening, zipLength, zipEnd, skirtLength, needed, waistSeam, zipSeries: skirt.zipSeries, seamAllowance: skirt.allowances.seam };
	// The opening doesn't depend on the length.
	return zipChecks(facts, (reach) => [{ path: 'skirt.length', value: reach + skirt.band.depth }], (ways) => open(drafted, ways));
}

/** At the hip: a knife pleat reaches under its neighbour where it is deeper than the spacing; a box's halves under each other from a quarter of it. */
function overlapCheck(drafted: Drafted): PleatedCheck {
	const { skirt: { kind, depth }, figures: { spacingAtHip: spacing, mostLayersAtHip } } = drafted;
	const room = kind === 'knife' ? spacing : spacing / 4;
	const over = depth > room + slack;
	const ways = over && room >= least ? open(drafted, [{ path: 'skirt.depth', value: room }]) : [];
	return { code: 'pleats-overlap', severity: over ? 'caution' : 'good', about: kind, figures: { depth, spacing, room, mostLayers: mostLayersAtHip }, waysOut: ways };
}

function bulkCheck(drafted: Drafted): PleatedCheck {
	const { skirt: { kind }, figures } = drafted;
	const { mostLayersAtWaist, meanLayers, depthAtWaist, spacingAtWaist, lean } = figures;
	const severity = mostLayersAtWaist <= layers.flat ? 'good' : mostLayersAtWaist <= layers.most ? 'note' : 'caution';
	// Shallow enough at the waist that no pleat reaches under another.
	const value = (kind === 'knife' ? spacingAtWaist : spacingAtWaist / 4) - lean;
	const ways = severity !== 'good' && value >= least ? open(drafted, [{ path: 'skirt.depth', value }]) : [];
	return { code: 'waist-bulk', severity, figures: { mostLayers: mostLayersAtWaist, meanLayers, depthAtWaist, spacingAtWaist }, waysOut: ways };
}

function taperChecks(drafted: Drafted): readonly PleatedCheck[] {
	const { body, skirt, figures: { waistSeamGirth, hipGirth, hipDepth, lean, leanAngle, depthAtWaist, depthAtHip, waistStep, taper } } = drafted;
	const rests = { taper, lean, angle: leanAngle, most: steepest, hipDepth };
	const steep = leanAngle > steepest + 1e-9;
	// More pleats share the taper: |H − G| / (2 n pairs) over the hip depth is the tangent.
	const pleats = Math.ceil(Math.abs(hipGirth - waistSeamGirth) / (2 * pairs[skirt.kind] * hipDepth * Math.tan(steepest)) - 1e-9);
	const ways = steep && pleats <= mostPleats ? open(drafted, [{ path: 'skirt.pleats', value: pleats }]) : [];
	const checks: PleatedCheck[] = [{ code: 'taper-steep', severity: steep ? 'caution' : 'good', figures: rests, waysOut: ways }];
	// Does a waist larger than the hip eat more than half of the pleat?
	const shallow = depthAtWaist < depthAtHip / 2 - slack;
	const deeper = [
		{ path: 'skirt.depth', value: 2 * Math.abs(lean) },
		...taperWays(body, skirt, depthAtHip / 2).filter(({ path }) => path !== 'skirt.depth')
	];
	checks.push({
		code: 'taper-shallows', severity: shallow ? 'caution' : 'good', figures: { depthAtWaist, depthAtHip, lean }, waysOut: shallow ? open(drafted, deeper) : []
	});
	// Cut the waist edge after folding, where the layers behind run out of line by more than a millimetre.
	if (waistStep > 1) checks.push({ code: 'waist-folded-true', severity: 'note', figures: { waistStep, angle: leanAngle, depthAtWaist }, waysOut: [] });
	return checks;
}

/** Pleats open as one steps out, down from the hip: the whole flat width counts. */
function strideChecks(drafted: Drafted): readonly PleatedCheck[] {
	const { skirt, figures: { hemSweep, hipGirth } } = drafted;
	const needed = strideNeeds(skirt.length);
	if (needed === undefined) return [];
	if (hemSweep >= needed - slack) return [{ code: 'stride', severity: 'good', figures: { hemSweep, needed }, waysOut: [] }];
	const lack = (needed - hipGirth) / 2 / pairs[skirt.kind];
	const ways: WayOut[] = [{ path: 'skirt.depth', value: lack / skirt.pleats }];
	const pleats = Math.ceil(lack / skirt.depth - 1e-9);
	if (pleats <= mostPleats) ways.push({ path: 'skirt.pleats', value: pleats });
	return [{ code: 'stride', severity: 'caution', figures: { hemSweep, needed }, waysOut: open(drafted, ways) }];
}
