// How a band lies along the waist seam: which stretch of it is sewn to the skirt, and what its notches meet.
import { landmarkAt, landmarksBetween, landmarksOf, type PanelPlace } from '../panel.ts';
import type { Notch } from '../piece.ts';
import type { FlaredSkirt } from '../skirt.ts';

/**
 * Where along the band's waist edge the waist seam lies, 0…1. At centre back the underlap runs on from the left half; at
 * the left side from the back, so that the front lies over it (common practice, no source).
 */
export function sewnStretch(seam: number, { band, zipAt }: FlaredSkirt): { readonly from: number; readonly to: number } {
	const length = seam + band.underlap;
	return zipAt === 'leftSide' ? { from: band.underlap / length, to: 1 } : { from: 0, to: seam / length };
}

/** What the waist seam's notches meet, and where the underlap begins. */
export function bandNotches(places: readonly PanelPlace[], seam: number, skirt: FlaredSkirt): readonly Notch[] {
	const sewn = sewnStretch(seam, skirt);
	const start = places[0]!.from;
	const landmarks = landmarksOf(places);
	const along = (place: number): number => sewn.from + (sewn.to - sewn.from) * (place - start);
	const notches = landmarksBetween(start, start + 1, landmarks).map(
		({ at, mark }): Notch => ({ edge: 'waist', at: along(at), kind: mark.kind, marks: mark.marks })
	);
	if (skirt.band.underlap <= 0) return notches;
	const lapAt = skirt.zipAt === 'leftSide' ? sewn.from : sewn.to;
	return [...notches, { edge: 'waist', at: lapAt, kind: landmarkAt(start, landmarks)?.kind ?? 'single', marks: 'underlap' }];
}
