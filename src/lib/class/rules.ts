import type { Unit } from './event.ts';

/** What a teacher sets for her class. Lengths in mm. */
export interface ClassRules {
	/** The unit new learners start with; each may switch. */
	readonly unit: Unit;
	readonly zipSeries: Unit;
	readonly allowances: { readonly waist: number; readonly seam: number; readonly hem: number };
	readonly tolerances: { readonly readings: number; readonly waistWalk: number; readonly bandSeam: number; readonly hemLevel: number };
	/** Which of the learner's choices are open, beyond her measurements. */
	readonly open: { readonly share: boolean; readonly waistEase: boolean; readonly bandDepth: boolean; readonly hemFinish: boolean };
	/** The ready-to-cut gate: critical items only, ids stable. */
	readonly gate: readonly { readonly id: string; readonly says: string }[];
}
