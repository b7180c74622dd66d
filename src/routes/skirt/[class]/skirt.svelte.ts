// Her skirt as this page knows it: what the server has, with what was said on this device folded on top.
import { createContext } from 'svelte';
import type { EventBody, LoggedEvent, Unit } from '$lib/class/event.ts';
import type { ReviewState } from '$lib/class/review.ts';
import { foldSkirt, type SkirtState } from '$lib/class/skirt-state.ts';
import { whereIs, type Where } from '$lib/class/where.ts';
import { createUnsent, type UnsentQueue } from '$lib/ui/unsent.svelte.ts';
import type { LayoutData } from './$types';

export interface OwnPage {
	readonly state: SkirtState;
	readonly where: Where;
	readonly unit: Unit;
	/** True while something that a clearance rests on has been said here and not been kept yet. */
	readonly changedHere: boolean;
	readonly review: ReviewState;
	readonly unsent: UnsentQueue;
	readonly say: (body: EventBody) => Promise<void>;
}

const [getOwnPage, setContext] = createContext<OwnPage>();
export { getOwnPage };

/** What changes the cut: said here, it voids a clearance before the server has heard of it. */
const cuts: readonly EventBody['kind'][] = ['reading', 'choice'];

export function setOwnPage(data: () => LayoutData, onkept: () => void): OwnPage {
	const { memberId, held } = data();
	const unsent = createUnsent({ classId: held.id, memberId, seen: () => foldSkirt(data().events).counter, onkept });
	const here = $derived(unsent.said.filter(({ refused }) => !refused));
	const events = $derived<readonly LoggedEvent[]>([...data().events, ...here.map((event) => ({ ...event, by: memberId }))]);
	const state = $derived(foldSkirt(events));
	const where = $derived(whereIs(data().lesson.stages, state));
	const unit = $derived(state.unit ?? data().held.rules.unit);
	const waiting = $derived(unsent.pending.filter(({ refused }) => !refused));
	const changedHere = $derived(waiting.some(({ body }) => cuts.includes(body.kind)));
	const review = $derived.by((): ReviewState => {
		if (waiting.some(({ body }) => body.kind === 'ask')) return 'asked';
		return changedHere && (data().review === 'cleared' || data().review === 'differs') ? 'void' : data().review;
	});
	const own: OwnPage = {
		get state() { return state; },
		get where() { return where; },
		get unit() { return unit; },
		get changedHere() { return changedHere; },
		get review() { return review; },
		unsent,
		say: unsent.add
	};
	setContext(own);
	return own;
}
