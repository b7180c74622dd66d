// A contour band: a ring sector that widens from the waist down to the waist seam, in an outer piece and a facing.
import { offset } from '../geometry/offset.ts';
import type { Outline } from '../geometry/outline.ts';
import { polar, type Point } from '../geometry/point.ts';
import type { Piece } from '../piece.ts';
import type { Join, SeamEdge } from '../seam.ts';
import type { FlaredSkirt } from '../skirt.ts';
import type { ContourFigures } from './contour-figures.ts';
import { bandNotches, lapStretch, sewnStretch, type SewnBand } from './sewn.ts';

export function contourPieces(sewn: SewnBand, figures: ContourFigures, skirt: FlaredSkirt): readonly Piece[] {
	const { band, allowances } = skirt;
	const { bandAngle, bandTopRadius: top, bandLowRadius: low } = figures;
	const lap = band.underlap / low;
	const half = bandAngle / 2;
	const [from, to] = skirt.zipAt === 'leftSide' ? [-half - lap, half] : [-half, half + lap];
	const centre: Point = [0, 0];
	// Counterclockwise: along the waist seam, in, back along the top, out.
	const stitch: Outline = {
		start: polar(centre, low, from),
		edges: [
			{ name: 'waist', end: polar(centre, low, to), centre, turn: to - from },
			{ name: 'last end', end: polar(centre, top, to), centre: null, turn: 0 },
			{ name: 'top', end: polar(centre, top, from), centre, turn: from - to },
			{ name: 'first end', end: polar(centre, low, from), centre: null, turn: 0 }
		]
	};
	const cut = offset(stitch, ({ name }) => (name.endsWith('end') ? allowances.seam : allowances.waist));
	if (!cut) throw new Error(`no cut line round a contour band of radius ${top} to ${low}`);
	const shared = {
		count: 1, stitch,
		fold: null,
		// At the middle of the sewn part, down the body, as the skirt's own (common practice, no source).
		grain: { from: [top + band.depth * 0.15, 0], to: [low - band.depth * 0.15, 0] }
	} as const;
	const notches = bandNotches(sewn);
	return [
		{ ...shared, name: 'band', cloth: 'shell', cut, notches },
		{ ...shared, name: 'band facing', cloth: 'shell', cut, notches },
		{ ...shared, name: 'band interfacing', cloth: 'interfacing', cut, notches: [] }
	];
}

export function contourJoins(waist: readonly SeamEdge[], band: SewnBand): readonly Join[] {
	const sewn = sewnStretch(band);
	const of = (piece: string, edge: string, from: number, to: number): SeamEdge => ({ piece, copy: 1, edge, from, to });
	const pair = (name: string, edge: string, from: number, to: number): Join =>
		({ name, a: [of('band', edge, from, to)], b: [of('band facing', edge, from, to)], ease: 0 });
	const joins: Join[] = [
		{ name: 'waist to band', a: waist, b: [of('band', 'waist', sewn.from, sewn.to)], ease: 0 },
		{ name: 'waist to band facing', a: waist, b: [of('band facing', 'waist', sewn.from, sewn.to)], ease: 0 },
		pair('band top', 'top', 0, 1), pair('band first end', 'first end', 0, 1), pair('band last end', 'last end', 0, 1)
	];
	if (band.underlap > 0) {
		const [from, to] = lapStretch(band);
		joins.push(pair('underlap', 'waist', from, to));
	}
	return joins;
}
