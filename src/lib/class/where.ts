// Where a learner is in her lesson.
import type { SkirtState } from './skirt-state.ts';

/** A lesson's stages in order, each with its steps in order. */
export type StageList = readonly {
	readonly id: string;
	readonly title: string;
	readonly steps: readonly { readonly id: string; readonly title: string; readonly minutes?: number }[];
}[];

export interface Place {
	readonly stage: string;
	readonly step: string;
}

export interface Where {
	/** Where to go on: the first unticked step after the one ticked last; null when every step is ticked. */
	readonly next: Place | null;
	/** The step ticked last, for "you left off here". */
	readonly last: Place | null;
	readonly stages: readonly { readonly id: string; readonly title: string; readonly ticked: number; readonly steps: number }[];
	readonly finished: boolean;
}

export function whereIs(stages: StageList, state: Pick<SkirtState, 'ticked' | 'lastTicked'>): Where {
	const isTicked = (step: string): boolean => Object.hasOwn(state.ticked, step);
	const places: Place[] = stages.flatMap((stage) => stage.steps.map((step) => ({ stage: stage.id, step: step.id })));
	// A step that has left the lesson since isn't a place any more.
	const lastIndex = places.findIndex(({ step }) => step === state.lastTicked);
	// Nothing open after it? Then the first one left out before it.
	const next = places.slice(lastIndex + 1).find(({ step }) => !isTicked(step)) ?? places.find(({ step }) => !isTicked(step)) ?? null;
	return {
		next,
		last: places[lastIndex] ?? null,
		stages: stages.map(({ id, title, steps }) => ({ id, title, ticked: steps.filter((step) => isTicked(step.id)).length, steps: steps.length })),
		finished: next === null && places.length > 0
	};
}
