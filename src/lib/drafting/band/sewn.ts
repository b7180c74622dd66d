// How a band lies along the waist seam: which stretch of it is sewn to the skirt, and what its notches meet.
import { landmarkAt, landmarksBetween, type Landmark } from '../panel.ts';
import type { Notch } from '../piece.ts';
import type { ZipAt } from '../skirt.ts';

export interface SewnBand {
	/** The waist seam's girth. */
	readonly seam: number;
	readonly underlap: number;
	readonly zipAt: ZipAt;
	/** Where the skirt begins, going round, and the landmarks on its waist. */
	readonly start: number;
	readonly landmarks: readonly Landmark[];
}

/**
 * Where along the band's waist edge the waist seam lies, 0…1. At centre back the underlap runs on from the left half; at
 * the left side from the back, so that the front lies over it (common practice, no source).
 */
export function sewnStretch({ seam, underlap, zipAt }: SewnBand): { readonly from: number; readonly to: number } {
	const length = seam + underlap;
	return zipAt === 'leftSide' ? { from: underlap / length, to: 1 } : { from: 0, to: seam / length };
}

/** Where along the band's waist edge the underlap lies. */
export function lapStretch(band: SewnBand): readonly [from: number, to: number] {
	const sewn = sewnStretch(band);
	return band.zipAt === 'leftSide' ? [0, sewn.from] : [sewn.to, 1];
}

/** What the waist seam's notches meet, and where the underlap begins. */
export function bandNotches(band: SewnBand): readonly Notch[] {
	const { start, landmarks } = band;
	const sewn = sewnStretch(band);
	const along = (place: number): number => sewn.from + (sewn.to - sewn.from) * (place - start);
	const notches = landmarksBetween(start, start + 1, landmarks).map(
		({ at, mark }): Notch => ({ edge: 'waist', at: along(at), kind: mark.kind, marks: mark.marks })
	);
	if (band.underlap <= 0) return notches;
	const lapAt = band.zipAt === 'leftSide' ? sewn.from : sewn.to;
	return [...notches, { edge: 'waist', at: lapAt, kind: landmarkAt(start, landmarks)?.kind ?? 'single', marks: 'underlap' }];
}
