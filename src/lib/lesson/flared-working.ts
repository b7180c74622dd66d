// A flared draft's figures, worked: the names that a lesson may ask for, in the order of the work.
import type { Unit } from '../class/event.ts';
import type { Draft } from '../drafting/draft.ts';
import { flaredBook, flaredNames } from './recipes/flared.ts';
import { workIn, workings, type Working } from './working.ts';

export const workingNames: readonly string[] = flaredNames;

/** Null where the draft lacks one of the figures or comes by it in another way. */
export const workingOf = (name: string, draft: Draft, unit: Unit): Working | null => workIn(flaredBook(draft), name, unit);

export function workingsOf(draft: Draft, unit: Unit): readonly Working[] {
	const work = workings(flaredBook(draft), unit);
	return flaredNames.flatMap((name) => work(name) ?? []);
}
