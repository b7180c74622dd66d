// Whether a skirt can be cut at all: what stands in the way, each with the ways on (all in closed form).
import type { Body } from './body.ts';
import type { WayOut } from './check.ts';
import { contourFigures, contourTurn } from './band/contour.ts';
import { cutAngle, sweepAngle, waistSeamOf, widestPanel } from './figures.ts';
import type { Issue } from './result.ts';
import { isRing, type FlaredSkirt } from './skirt.ts';

/** Ways on are a hair inside the limit, so that they still hold after rounding (0.01 mm). */
const hair = 0.01;
const mostPanels = 12;
const leastShare = 0.1;

export function obstacles(body: Body, skirt: FlaredSkirt): readonly Issue[] {
	const { allowances, lining } = skirt;
	const issues: Issue[] = [];
	const seam = waistSeamOf(body, skirt);
	const { angle: panelAngle, strip } = widestPanel(skirt);
	const sweep = sweepAngle(skirt.share);
	const radius = seam / sweep;
	const cutRadius = radius - allowances.waist;

	// Is the cut waist a real arc that clears both strips of seam allowance?
	if (cutRadius <= 0 || cutRadius <= strip) {
		issues.push({
			code: 'no-room-for-allowance', path: 'skirt.share', expected: 'cut waist radius > seam allowance', received: skirt.share,
			figures: { waistRadius: radius, cutWaistRadius: cutRadius, waistAllowance: allowances.waist, seamAllowance: strip },
			waysOut: roomWays(skirt, seam, radius)
		});
	} else if (!isRing(skirt) && cutAngle(panelAngle, cutRadius, allowances.seam) > 2 * Math.PI) {
		const strips = cutAngle(0, cutRadius, allowances.seam);
		// A share of more panels that are alike: an uneven split has no such way, only a smaller share.
		const panels = skirt.panelShares ? Infinity : Math.ceil(sweep / (2 * Math.PI - strips) - 1e-9);
		issues.push({
			code: 'panel-laps-itself', path: 'skirt.panels', expected: panels <= mostPanels ? panels : 'a smaller share', received: skirt.panels,
			figures: { panelAngle, cutAngle: panelAngle + strips },
			waysOut: panels <= mostPanels ? [{ path: 'skirt.panels', value: panels }] : []
		});
	}

	issues.push(...bandObstacles(body, skirt));
	if (lining?.share != null && lining.share > skirt.share) {
		issues.push({
			code: 'lining-fuller', path: 'skirt.lining.share', expected: [leastShare, skirt.share], received: lining.share,
			figures: { lining: lining.share, shell: skirt.share }, waysOut: [{ path: 'skirt.lining.share', value: skirt.share }]
		});
	}

	const skirtLength = skirt.length - skirt.band.depth;
	if (skirtLength <= 0) {
		issues.push({
			code: 'band-deeper-than-length', path: 'skirt.length', expected: skirt.band.depth, received: skirt.length,
			figures: { length: skirt.length, bandDepth: skirt.band.depth }
		});
	} else {
		if (skirt.hem >= skirtLength) {
			issues.push({
				code: 'hem-deeper-than-skirt', path: 'skirt.hem', expected: skirtLength, received: skirt.hem,
				figures: { hem: skirt.hem, skirtLength }, waysOut: [{ path: 'skirt.hem', value: skirtLength / 4 }]
			});
		}
		const facings = [
			...(skirt.band.kind === 'faced' ? [['skirt.band.facing', skirt.band.facing] as const] : []),
			...(skirt.hemFinish === 'faced' ? [['skirt.hemFacing', skirt.hemFacing] as const] : [])
		];
		for (const [path, facing] of facings) {
			if (facing >= skirtLength) issues.push({ code: 'facing-deeper-than-skirt', path, expected: skirtLength, received: facing, figures: { facing, skirtLength }, waysOut: [{ path, value: skirtLength / 4 }] });
		}
		if (lining && lining.shorterBy >= skirtLength) {
			issues.push({
				code: 'lining-too-short', path: 'skirt.lining.shorterBy', expected: skirtLength, received: lining.shorterBy,
				figures: { shorterBy: lining.shorterBy, skirtLength }, waysOut: [{ path: 'skirt.lining.shorterBy', value: Math.min(25, skirtLength / 2) }]
			});
		}
	}
	return issues;
}

/** A contour band has to widen downwards, and to be cut from one layer. */
function bandObstacles(body: Body, { band, waistEase, allowances }: FlaredSkirt): readonly Issue[] {
	if (band.kind === 'elastic' && body.hip === undefined) return [{ code: 'hip-needed', path: 'body.hip', expected: 'length', received: null }];
	if (band.kind !== 'contour') return [];
	const top = body.waist + waistEase;
	if (band.lower <= top) {
		return [{
			code: 'band-not-wider-below', path: 'skirt.band.lower', expected: top, received: band.lower,
			figures: { lower: band.lower, top }, waysOut: [{ path: 'skirt.band.kind', value: 'straight' }]
		}];
	}
	const figures = contourFigures(band, top);
	if (figures.bandTopRadius > allowances.waist + allowances.seam && contourTurn(figures, band.underlap, allowances.seam) <= 2 * Math.PI) return [];
	// Half a turn leaves room for the underlap and the ends; the way on is a depth or a girth that gives it.
	return [{
		code: 'band-laps-itself', path: 'skirt.band.depth', expected: (band.lower - top) / Math.PI, received: band.depth,
		figures: { ...figures, lower: band.lower, top }, waysOut: [{ path: 'skirt.band.lower', value: top + Math.PI * band.depth }]
	}];
}

/** A smaller share draws a larger radius; narrower allowances need less of it. */
function roomWays(skirt: FlaredSkirt, seam: number, radius: number): readonly WayOut[] {
	const { waist } = skirt.allowances;
	const { strip } = widestPanel(skirt);
	const ways: WayOut[] = [];
	const share = seam / (2 * Math.PI * (waist + strip + hair));
	if (share >= leastShare) ways.push({ path: 'skirt.share', value: share });
	const narrower = radius - strip - hair;
	if (narrower >= 0) ways.push({ path: 'skirt.allowances.waist', value: narrower });
	const strips = radius - waist - hair;
	if (strips >= 0 && !isRing(skirt)) ways.push({ path: 'skirt.allowances.seam', value: strips });
	return ways;
}
