// Whether a skirt can be cut at all: what stands in the way, each with the ways on (all in closed form).
import type { Body } from './body.ts';
import type { WayOut } from './check.ts';
import { cutAngle, sweepAngle } from './figures.ts';
import type { Issue } from './result.ts';
import type { FlaredSkirt } from './skirt.ts';

/** Ways on are a hair inside the limit, so that they still hold after rounding (0.01 mm). */
const hair = 0.01;
const mostPanels = 12;
const leastShare = 0.1;

export const obstacles = (body: Body, skirt: FlaredSkirt): readonly Issue[] => obstaclesIn({
	waist: body.waist, waistEase: skirt.waistEase, share: skirt.share, panels: skirt.panels, waistAllowance: skirt.allowances.waist,
	seamAllowance: skirt.allowances.seam, length: skirt.length, bandDepth: skirt.band.depth, hem: skirt.hem, shorterBy: skirt.lining?.shorterBy
});

/** What the obstacles rest on, as far as it could be read: each is looked at when all that it rests on is there. */
export interface Rests {
	readonly waist: number | undefined;
	readonly waistEase: number | undefined;
	readonly share: number | undefined;
	readonly panels: number | undefined;
	readonly waistAllowance: number | undefined;
	readonly seamAllowance: number | undefined;
	readonly length: number | undefined;
	readonly bandDepth: number | undefined;
	readonly hem: number | undefined;
	/** Undefined without a lining as well. */
	readonly shorterBy: number | undefined;
}

export const obstaclesIn = (rests: Rests): readonly Issue[] => [...roomObstacles(rests), ...lengthObstacles(rests)];

/** Is the cut waist a real arc that clears both strips of seam allowance, and does no panel lap itself? */
function roomObstacles({ waist, waistEase, share, panels, waistAllowance, seamAllowance }: Rests): readonly Issue[] {
	if (waist === undefined || waistEase === undefined || share === undefined || waistAllowance === undefined || seamAllowance === undefined) return [];
	const seam = waist + waistEase;
	const sweep = sweepAngle(share);
	const radius = seam / sweep;
	const cutRadius = radius - waistAllowance;
	if (cutRadius <= 0 || cutRadius <= seamAllowance) {
		return [{
			code: 'no-room-for-allowance', path: 'skirt.share', expected: 'cut waist radius > seam allowance', received: share,
			figures: { waistRadius: radius, cutWaistRadius: cutRadius, waistAllowance, seamAllowance },
			waysOut: roomWays(waistAllowance, seamAllowance, seam, radius)
		}];
	}
	if (panels === undefined || cutAngle(sweep / panels, cutRadius, seamAllowance) <= 2 * Math.PI) return [];
	const strips = cutAngle(0, cutRadius, seamAllowance);
	const enough = Math.ceil(sweep / (2 * Math.PI - strips) - 1e-9);
	return [{
		code: 'panel-laps-itself', path: 'skirt.panels', expected: enough <= mostPanels ? enough : 'a smaller share', received: panels,
		figures: { panelAngle: sweep / panels, cutAngle: sweep / panels + strips },
		waysOut: enough <= mostPanels ? [{ path: 'skirt.panels', value: enough }] : []
	}];
}

function lengthObstacles({ length, bandDepth, hem, shorterBy }: Rests): readonly Issue[] {
	if (length === undefined || bandDepth === undefined) return [];
	const skirtLength = length - bandDepth;
	if (skirtLength <= 0) return [{ code: 'band-deeper-than-length', path: 'skirt.length', expected: bandDepth, received: length, figures: { length, bandDepth } }];
	const issues: Issue[] = [];
	if (hem !== undefined && hem >= skirtLength) {
		issues.push({
			code: 'hem-deeper-than-skirt', path: 'skirt.hem', expected: skirtLength, received: hem,
			figures: { hem, skirtLength }, waysOut: [{ path: 'skirt.hem', value: skirtLength / 4 }]
		});
	}
	if (shorterBy !== undefined && shorterBy >= skirtLength) {
		issues.push({
			code: 'lining-too-short', path: 'skirt.lining.shorterBy', expected: skirtLength, received: shorterBy,
			figures: { shorterBy, skirtLength }, waysOut: [{ path: 'skirt.lining.shorterBy', value: Math.min(25, skirtLength / 2) }]
		});
	}
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
	if (strips >= 0) ways.push({ path: 'skirt.allowances.seam', value: strips });
	return ways;
}
