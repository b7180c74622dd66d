// Who reads a lesson, and with which numbers: what a lesson page tells the components inside the lesson's text.
import { createContext, type Snippet } from 'svelte';
import type { Unit } from '$lib/class/event.ts';
import type { Draft } from '$lib/drafting/draft.ts';
import type { Terms } from '$lib/lesson/term.ts';
import type { Tolerances } from '$lib/lesson/tolerance.ts';
import type { Drawing } from '$lib/paper/drawing.ts';
import type { BothWorkings } from './workings.ts';

/** How far a learner's numbers are on the way to the scissors. */
export type Clearance = 'none' | 'asked' | 'cleared' | 'returned' | 'void';

/** What a step hands to the page's action: its tick form, its link, whatever the page has. */
export interface StepShown {
	readonly id: string;
	readonly title: string;
	/** What its tick says: `Washed`. */
	readonly done: string;
	readonly ticked: boolean;
	/** False while the step waits for clearance. */
	readonly open: boolean;
}

/** Every field may be a getter, so that the text follows when the numbers change. */
export interface Reader {
	readonly draft: Draft;
	/** By name: only those that this part uses, drawn from the draft. */
	readonly drawings: Readonly<Record<string, Drawing>>;
	/** By name: the sums that this part shows. */
	readonly workings: Readonly<Record<string, BothWorkings>>;
	/** By name: the terms that this part links. */
	readonly terms: Terms;
	/** What the reader's class sets; the sample's for a reader in none. */
	readonly tolerances: Tolerances;
	/** True: the figures are sample numbers, and never look like the reader's own. */
	readonly sample: boolean;
	readonly unit: Unit;
	/** The step shown alone, or null for the whole part. */
	readonly here: string | null;
	readonly ticked: (step: string) => boolean;
	readonly clearance: Clearance;
	/** Shown at the foot of each step. */
	readonly action?: Snippet<[StepShown]>;
}

export const [getReader, setReader] = createContext<Reader>();
