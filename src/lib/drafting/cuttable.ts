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

export function obstacles(body: Body, skirt: FlaredSkirt): readonly Issue[] {
	const { allowances, lining } = skirt;
	const issues: Issue[] = [];
	const seam = body.waist + skirt.waistEase;
	const sweep = sweepAngle(skirt.share);
	const radius = seam / sweep;
	const cutRadius = radius - allowances.waist;

	// Is the cut waist a real arc that clears both strips of seam allowance?
	if (cutRadius <= 0 || cutRadius <= allowances.seam) {
		issues.push({
			code: 'no-room-for-allowance', path: 'skirt.share', expected: 'cut waist radius > seam allowance', received: skirt.share,
			figures: { waistRadius: radius, cutWaistRadius: cutRadius, waistAllowance: allowances.waist, seamAllowance: allowances.seam },
			waysOut: roomWays(skirt, seam, radius)
		});
	} else if (cutAngle(sweep / skirt.panels, cutRadius, allowances.seam) > 2 * Math.PI) {
		const strips = cutAngle(0, cutRadius, allowances.seam);
		const panels = Math.ceil(sweep / (2 * Math.PI - strips) - 1e-9);
		issues.push({
			code: 'panel-laps-itself', path: 'skirt.panels', expected: panels <= mostPanels ? panels : 'a smaller share', received: skirt.panels,
			figures: { panelAngle: sweep / skirt.panels, cutAngle: sweep / skirt.panels + strips },
			waysOut: panels <= mostPanels ? [{ path: 'skirt.panels', value: panels }] : []
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
		if (lining && lining.shorterBy >= skirtLength) {
			issues.push({
				code: 'lining-too-short', path: 'skirt.lining.shorterBy', expected: skirtLength, received: lining.shorterBy,
				figures: { shorterBy: lining.shorterBy, skirtLength }, waysOut: [{ path: 'skirt.lining.shorterBy', value: Math.min(25, skirtLength / 2) }]
			});
		}
	}
	return issues;
}

/** A smaller share draws a larger radius; narrower allowances need less of it. */
function roomWays(skirt: FlaredSkirt, seam: number, radius: number): readonly WayOut[] {
	const { waist, seam: strip } = skirt.allowances;
	const ways: WayOut[] = [];
	const share = seam / (2 * Math.PI * (waist + strip + hair));
	if (share >= leastShare) ways.push({ path: 'skirt.share', value: share });
	const narrower = radius - strip - hair;
	if (narrower >= 0) ways.push({ path: 'skirt.allowances.waist', value: narrower });
	const strips = radius - waist - hair;
	if (strips >= 0) ways.push({ path: 'skirt.allowances.seam', value: strips });
	return ways;
}
