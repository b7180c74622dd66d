// How near is near enough: what a class sets, by the names that a lesson shows it under. Millimetres.
import type { ClassRules } from '../class/rules.ts';
import { readingTolerance } from '../drafting/reading.ts';

export type Tolerances = ClassRules['tolerances'];

export const tolerances = {
	readingTolerance: ({ readings }) => readings,
	waistWalkTolerance: ({ waistWalk }) => waistWalk,
	/** On a fold half the waist is walked, so half as much may be out. */
	halfWaistWalkTolerance: ({ waistWalk }) => waistWalk / 2,
	bandSeamTolerance: ({ bandSeam }) => bandSeam,
	hemLevelTolerance: ({ hemLevel }) => hemLevel
} satisfies Record<string, (set: Tolerances) => number>;

export const toleranceOf = (name: string, set: Tolerances): number | undefined =>
	(tolerances as Record<string, (set: Tolerances) => number>)[name]?.(set);

/** For a reader in no class: common practice, no source. */
export const sampleTolerances: Tolerances = { readings: readingTolerance, waistWalk: 5, bandSeam: 5, hemLevel: 5 };
