// The sums that one part of a lesson shows, worked on the server: how they are worked would weigh on the page.
import type { Unit } from '$lib/class/event.ts';
import type { Draft } from '$lib/drafting/draft.ts';
import { workingOf } from '$lib/lesson/flared-working.ts';
import type { Part } from '$lib/lesson/part.ts';
import type { Working } from '$lib/lesson/working.ts';

/** The sample's sum and the reader's own, which is null where she has none. */
export interface BothWorkings {
	readonly example: Working | null;
	readonly own: Working | null;
}

/** By name. `example` is null for a reader whose draft is the sample's. */
export function workingsFor(part: Pick<Part, 'uses'>, draft: Draft, example: Draft | null, unit: Unit): Readonly<Record<string, BothWorkings>> {
	const names = new Set(part.uses.flatMap(({ name, attributes }) => (name === 'Working' && attributes.of ? [attributes.of] : [])));
	return Object.fromEntries([...names].map((name) => [name, {
		example: workingOf(name, example ?? draft, unit), own: example && workingOf(name, draft, unit)
	}]));
}
