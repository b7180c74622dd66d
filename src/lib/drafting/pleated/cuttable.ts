// Whether a pleated skirt can be cut and folded at all: what stands in the way, each with the ways on.
import type { Body } from '../body.ts';
import type { WayOut } from '../check.ts';
import type { Issue } from '../result.ts';
import { fold, pairs } from './folding.ts';
import { foldingOf, type KnownBody } from './figures.ts';
import type { PleatedSkirt } from './skirt.ts';

/** A pleat that is shallower than this at the waist is no fold any more (common practice, no source). mm */
export const shallowest = 1;
export const fewestPleats = 4;
export const mostPleats = 60;
/** Ways on are a hair inside the limit. mm */
const hair = 0.01;
/** What is left below the hip line, at the least, for pleats to fall from (common practice, no source). mm */
const fall = 50;

/** Nothing is assumed: without both readings nobody knows how the pleats taper. */
export function knownBody(body: Body): KnownBody | null {
	const { hip, waistToHip } = body;
	return hip === undefined || waistToHip === undefined ? null : { ...body, hip, waistToHip };
}

/** The readings that pleats need; the way on is to take them. */
export const readingsMissing = ({ hip, waistToHip }: Body): readonly Issue[] => [
	...(hip === undefined ? [{ code: 'pleats-need-hip', path: 'body.hip', expected: 'length', received: null, measure: ['hip'] as const }] : []),
	...(waistToHip === undefined ? [{ code: 'pleats-need-hip-depth', path: 'body.waistToHip', expected: 'length', received: null, measure: ['waistToHip'] as const }] : [])
];

export function pleatedObstacles(body: KnownBody, skirt: PleatedSkirt): readonly Issue[] {
	const folding = foldingOf(body, skirt);
	const folded = fold(folding);
	const issues: Issue[] = [...lengthObstacles(body, skirt)];
	if (folded.depthAtWaist < shallowest) {
		issues.push({
			code: 'taper-eats-pleat', path: 'skirt.depth', expected: shallowest - folded.lean, received: skirt.depth,
			figures: { depth: skirt.depth, depthAtWaist: folded.depthAtWaist, waist: folding.waist, hip: folding.hip }, waysOut: taperWays(body, skirt, shallowest + hair)
		});
	}
	const room = skirt.clothWidth - 2 * skirt.allowances.seam;
	if (folded.repeat > room) {
		issues.push({
			code: 'pleat-wider-than-cloth', path: 'skirt.clothWidth', expected: folded.repeat + 2 * skirt.allowances.seam, received: skirt.clothWidth,
			figures: { repeat: folded.repeat, clothWidth: skirt.clothWidth, room }, waysOut: widthWays(skirt, folding.hip, folded.repeat, room)
		});
	}
	return issues;
}

function lengthObstacles({ waistToHip }: KnownBody, { length, band, hem }: PleatedSkirt): readonly Issue[] {
	const skirtLength = length - band.depth;
	if (skirtLength <= 0) {
		const waysOut = [{ path: 'skirt.band.depth', value: Math.min(40, length / 4) }];
		return [{ code: 'band-deeper-than-length', path: 'skirt.length', expected: band.depth, received: length, figures: { length, bandDepth: band.depth }, waysOut }];
	}
	const issues: Issue[] = [];
	if (waistToHip >= skirtLength) {
		const least = waistToHip + band.depth + fall;
		issues.push({
			code: 'pleats-end-above-hip', path: 'skirt.length', expected: least, received: length,
			figures: { hipDepth: waistToHip, skirtLength }, waysOut: [{ path: 'skirt.length', value: least }]
		});
	}
	if (hem >= skirtLength) {
		const waysOut = [{ path: 'skirt.hem', value: skirtLength / 4 }];
		issues.push({ code: 'hem-deeper-than-skirt', path: 'skirt.hem', expected: skirtLength, received: hem, figures: { hem, skirtLength }, waysOut });
	}
	return issues;
}

/**
 * A waist larger than the hip leaves each pleat less at the waist: (G − H)/n less, shared by its folds. Deeper pleats, more
 * of them, or as much ease at the hip as lets the skirt hang straight from the waist, so that `left` is left of the depth.
 */
export function taperWays(body: KnownBody, skirt: PleatedSkirt, left: number): readonly WayOut[] {
	const { waist, hip } = foldingOf(body, skirt);
	const over = (waist - hip) / 2 / pairs[skirt.kind];
	const ways: WayOut[] = [{ path: 'skirt.depth', value: over / skirt.pleats + left }];
	const more = skirt.depth > left ? Math.ceil(over / (skirt.depth - left) - 1e-9) : Infinity;
	if (more <= mostPleats) ways.push({ path: 'skirt.pleats', value: more });
	// As long as the pleat itself is deep enough.
	if (skirt.depth >= left) ways.push({ path: 'skirt.hipEase', value: waist - body.hip });
	return ways;
}

/** A wider cloth, shallower pleats, or more of them, which lie closer. */
function widthWays({ kind, depth, pleats, clothWidth }: PleatedSkirt, hip: number, repeat: number, room: number): readonly WayOut[] {
	const ways: WayOut[] = [{ path: 'skirt.clothWidth', value: clothWidth + repeat - room + hair }];
	const shallower = (room - hip / pleats) / 2 / pairs[kind] - hair;
	if (shallower >= 10) ways.push({ path: 'skirt.depth', value: shallower });
	const left = room - 2 * pairs[kind] * depth;
	const more = left > 0 ? Math.ceil(hip / left + 1e-9) : Infinity;
	if (more <= mostPleats) ways.push({ path: 'skirt.pleats', value: more });
	return ways;
}
