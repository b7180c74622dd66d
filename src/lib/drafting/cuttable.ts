// Whether a skirt can be cut at all: what stands in the way, each with the ways on (all in closed form).
import { bandObstacles } from './band/cuttable.ts';
import type { Body } from './body.ts';
import type { WayOut } from './check.ts';
import { cutAngle } from './figures.ts';
import { sweepAngle } from './sweep.ts';
import type { Issue } from './result.ts';
import { lengthRange } from './profile.ts';
import { isRing, isUneven, type FlaredSkirt } from './skirt.ts';
import { trialObstacles } from './trial.ts';
import { waistSeamOf } from './waist-seam.ts';

/** Ways on are a hair inside the limit, so that they still hold after rounding (0.01 mm). */
const hair = 0.01;
const mostPanels = 12;
export const leastShare = 0.1;

export function obstacles(body: Body, skirt: FlaredSkirt): readonly Issue[] {
	const plain = plainObstacles(body, skirt);
	return plain.length > 0 ? plain : trialObstacles(body, skirt);
}

/** All that a formula tells. */
export const plainObstacles = (body: Body, skirt: FlaredSkirt): readonly Issue[] => [...bandObstacles(body, skirt), ...obstaclesIn({
		waistSeam: waistSeamOf(body, skirt), share: skirt.share, panels: skirt.panels, panelShares: skirt.panelShares, ring: isRing(skirt),
		waistAllowance: skirt.allowances.waist, seamAllowance: skirt.allowances.seam, ...shortestOf(skirt), bandDepth: skirt.band.depth, hem: skirt.hem,
		shorterBy: skirt.lining?.shorterBy, liningShare: skirt.lining?.share ?? undefined,
		waistFacing: skirt.band.kind === 'faced' ? skirt.band.facing : undefined, hemFacing: skirt.hemFinish === 'faced' ? skirt.hemFacing : undefined
	})];

/** The shortest finished length, and the choice that makes it so. */
export function shortestOf(skirt: FlaredSkirt): { readonly length: number; readonly lengthPath: string } {
	if (!isUneven(skirt)) return { length: skirt.length, lengthPath: 'skirt.length' };
	const { lengths = {} } = skirt;
	const [[where, named] = ['', Infinity]] = Object.entries(lengths).sort(([, one], [, other]) => one - other);
	return { length: lengthRange(skirt).least + skirt.band.depth, lengthPath: named < skirt.length ? `skirt.lengths.${where}` : 'skirt.length' };
}

/** What the obstacles rest on, as far as it could be read: each is looked at when all that it rests on is there. */
export interface Rests {
	readonly waistSeam: number | undefined;
	readonly share: number | undefined;
	readonly panels: number | undefined;
	readonly panelShares: readonly number[] | null | undefined;
	/** A ring has no seam, so no allowance to find room for there. */
	readonly ring: boolean;
	readonly waistAllowance: number | undefined;
	readonly seamAllowance: number | undefined;
	/** The shortest, and where it was said. */
	readonly length: number | undefined;
	readonly lengthPath: string;
	readonly bandDepth: number | undefined;
	readonly hem: number | undefined;
	/** These four undefined also where there is no such thing. */
	readonly shorterBy: number | undefined;
	readonly liningShare: number | undefined;
	readonly waistFacing: number | undefined;
	readonly hemFacing: number | undefined;
}

export const obstaclesIn = (rests: Rests): readonly Issue[] => [...roomObstacles(rests), ...liningObstacles(rests), ...lengthObstacles(rests)];

/** Is the cut waist a real arc that clears both strips of seam allowance, and does no panel lap itself? */
function roomObstacles({ waistSeam: seam, share, panels, panelShares, ring, waistAllowance, seamAllowance }: Rests): readonly Issue[] {
	if (seam === undefined || share === undefined || waistAllowance === undefined || seamAllowance === undefined) return [];
	const sweep = sweepAngle(share);
	const radius = seam / sweep;
	const cutRadius = radius - waistAllowance;
	const strip = ring ? 0 : seamAllowance;
	if (cutRadius <= 0 || cutRadius <= strip) {
		return [{
			code: 'no-room-for-allowance', path: 'skirt.share', expected: 'cut waist radius > seam allowance', received: share,
			figures: { waistRadius: radius, cutWaistRadius: cutRadius, waistAllowance, seamAllowance: strip },
			waysOut: roomWays(waistAllowance, strip, seam, radius)
		}];
	}
	if (ring || panels === undefined || panelShares === undefined) return [];
	const panelAngle = sweep * (panelShares ? Math.max(...panelShares) : 1 / panels);
	if (cutAngle(panelAngle, cutRadius, strip) <= 2 * Math.PI) return [];
	const strips = cutAngle(0, cutRadius, strip);
	// Of panels that are alike, more are narrower; of others only a smaller share makes them so.
	const enough = panelShares ? Infinity : Math.ceil(sweep / (2 * Math.PI - strips) - 1e-9);
	return [{
		code: 'panel-laps-itself', path: 'skirt.panels', expected: enough <= mostPanels ? enough : 'a smaller share', received: panels,
		figures: { panelAngle, cutAngle: panelAngle + strips },
		waysOut: enough <= mostPanels ? [{ path: 'skirt.panels', value: enough }] : []
	}];
}

function liningObstacles({ waistSeam: seam, share, liningShare, panels, panelShares, waistAllowance, seamAllowance }: Rests): readonly Issue[] {
	if (share === undefined || liningShare === undefined) return [];
	const path = 'skirt.lining.share';
	if (liningShare > share) {
		return [{
			code: 'lining-fuller', path, expected: [leastShare, share], received: liningShare,
			figures: { lining: liningShare, shell: share }, waysOut: [{ path, value: share }]
		}];
	}
	// Beside a ring, a lining of nearly a full circle still has a seam.
	if (liningShare === share || seam === undefined || panels === undefined || panelShares === undefined) return [];
	if (waistAllowance === undefined || seamAllowance === undefined) return [];
	const sweep = sweepAngle(liningShare);
	const panelAngle = sweep * (panelShares ? Math.max(...panelShares) : 1 / panels);
	const cutRadius = seam / sweep - waistAllowance;
	if (cutRadius > seamAllowance && cutAngle(panelAngle, cutRadius, seamAllowance) <= 2 * Math.PI) return [];
	return [{
		code: 'lining-laps-itself', path, expected: 'the skirt’s own share, or much less', received: liningShare,
		figures: { panelAngle, liningShare }, waysOut: [{ path, value: share }]
	}];
}

function lengthObstacles({ length, lengthPath, bandDepth, hem, shorterBy, waistFacing, hemFacing }: Rests): readonly Issue[] {
	if (length === undefined || bandDepth === undefined) return [];
	const skirtLength = length - bandDepth;
	if (skirtLength <= 0) return [{ code: 'band-deeper-than-length', path: lengthPath, expected: bandDepth, received: length, figures: { length, bandDepth } }];
	const issues: Issue[] = [];
	const deeper = (code: string, path: string, name: string, mm: number | undefined, instead: number): void => {
		if (mm === undefined || mm < skirtLength) return;
		issues.push({ code, path, expected: skirtLength, received: mm, figures: { [name]: mm, skirtLength }, waysOut: [{ path, value: instead }] });
	};
	deeper('hem-deeper-than-skirt', 'skirt.hem', 'hem', hem, skirtLength / 4);
	deeper('lining-too-short', 'skirt.lining.shorterBy', 'shorterBy', shorterBy, Math.min(25, skirtLength / 2));
	deeper('facing-deeper-than-skirt', 'skirt.band.facing', 'facing', waistFacing, skirtLength / 4);
	deeper('facing-deeper-than-skirt', 'skirt.hemFacing', 'facing', hemFacing, skirtLength / 4);
	return issues;
}

/** A smaller share draws a larger radius; narrower allowances need less of it. */
function roomWays(waist: number, strip: number, seam: number, radius: number): readonly WayOut[] {
	const ways: WayOut[] = [];
	const share = seam / (2 * Math.PI * (waist + strip + hair));
	if (share >= leastShare) ways.push({ path: 'skirt.share', value: share });
	const narrower = radius - strip - hair;
	if (narrower >= 0) ways.push({ path: 'skirt.allowances.waist', value: narrower });
	const strips = radius - waist - hair;
	if (strips >= 0 && strip > 0) ways.push({ path: 'skirt.allowances.seam', value: strips });
	return ways;
}
