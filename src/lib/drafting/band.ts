// A straight waistband: one strip folded along its length, with an underlap beyond the seam, and its interfacing.
import { offset } from './geometry/offset.ts';
import type { Outline } from './geometry/outline.ts';
import { landmarkAt, landmarksBetween, type PanelPlace } from './panel.ts';
import type { Notch, Piece } from './piece.ts';
import type { FlaredSkirt } from './skirt.ts';

/**
 * Where along the band the waist seam lies, 0…1. At centre back the underlap runs on from the left half; at the left
 * side from the back, so that the front lies over it (common practice, no source).
 */
export function sewnStretch(seam: number, skirt: FlaredSkirt): { readonly from: number; readonly to: number } {
	const length = seam + skirt.band.underlap;
	const lap = skirt.band.underlap / length;
	return skirt.zipAt === 'leftSide' ? { from: lap, to: 1 } : { from: 0, to: seam / length };
}

export function bandPieces(places: readonly PanelPlace[], seam: number, skirt: FlaredSkirt): readonly Piece[] {
	const { band, allowances } = skirt;
	const length = seam + band.underlap;
	const stitch: Outline = {
		start: [0, 0],
		edges: [
			{ name: 'waist', end: [length, 0], centre: null, turn: 0 },
			{ name: 'last end', end: [length, 2 * band.depth], centre: null, turn: 0 },
			{ name: 'facing', end: [0, 2 * band.depth], centre: null, turn: 0 },
			{ name: 'first end', end: [0, 0], centre: null, turn: 0 }
		]
	};
	const cut = offset(stitch, ({ name }) => (name.endsWith('end') ? allowances.seam : allowances.waist));
	if (!cut) throw new Error(`no cut line round a band of ${length} by ${2 * band.depth}`);
	const lines = [{ name: 'fold line', from: [0, band.depth], to: [length, band.depth] }] as const;
	const grain = { from: [length * 0.3, band.depth * 0.5], to: [length * 0.7, band.depth * 0.5] } as const;
	const shared = { count: 1, fold: null, grain, stitch, lines } as const;
	return [
		{ ...shared, name: 'band', cloth: 'shell', cut, notches: bandNotches(places, seam, skirt) },
		// Cut to match the band, so that every seam round it holds it (common practice, no source).
		{ ...shared, name: 'band interfacing', cloth: 'interfacing', cut, notches: [] }
	];
}

/** What the waist seam's notches meet, and where the underlap begins. */
function bandNotches(places: readonly PanelPlace[], seam: number, skirt: FlaredSkirt): readonly Notch[] {
	const sewn = sewnStretch(seam, skirt);
	const start = places[0]!.from;
	const along = (place: number): number => sewn.from + (sewn.to - sewn.from) * (place - start);
	const notches = landmarksBetween(start, start + 1).map(
		({ at, mark }): Notch => ({ edge: 'waist', at: along(at), kind: mark.kind, marks: mark.marks })
	);
	if (skirt.band.underlap <= 0) return notches;
	const lapAt = skirt.zipAt === 'leftSide' ? sewn.from : sewn.to;
	const lap: Notch = { edge: 'waist', at: lapAt, kind: landmarkAt(start)?.kind ?? 'single', marks: 'underlap' };
	return [...notches, lap];
}
