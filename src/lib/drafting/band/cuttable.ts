// Whether a band can be cut: a contour band widens downwards and lies in one layer; an elastic has to know the hip.
import type { Body } from '../body.ts';
import type { Issue } from '../result.ts';
import type { FlaredSkirt } from '../skirt.ts';
import { contourFigures, contourTurn } from './contour-figures.ts';

export function bandObstacles(body: Body, { band, waistEase, allowances }: FlaredSkirt): readonly Issue[] {
	if (band.kind === 'elastic' && body.hip === undefined) return [{ code: 'elastic-needs-hip', path: 'body.hip', expected: 'length', received: null, measure: ['hip'] }];
	if (band.kind !== 'contour') return [];
	const { lower, depth } = band;
	const top = body.waist + waistEase;
	if (lower <= top) {
		return [{
			code: 'band-not-wider-below', path: 'skirt.band.lower', expected: top, received: lower,
			figures: { lower, top }, waysOut: [{ path: 'skirt.band.kind', value: 'straight' }]
		}];
	}
	const figures = contourFigures(band, top);
	// The top's curve has to clear its allowance and the strips at the ends, as a panel's waist has to.
	if (figures.bandTopRadius > allowances.waist + allowances.seam && contourTurn(figures, band.underlap, allowances.seam, allowances.waist) <= 2 * Math.PI) return [];
	return [{
		code: 'band-laps-itself', path: 'skirt.band.depth', expected: 'a deeper band, or less girth at its lower edge', received: depth,
		figures: { ...figures, lower, top }, waysOut: [{ path: 'skirt.band.kind', value: 'straight' }]
	}];
}
