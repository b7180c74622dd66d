// Her skirt as this page knows it: what the server has, with what was said on this device folded on top.
import { createContext } from 'svelte';
import type { EventBody, LoggedEvent, Unit } from '$lib/class/event.ts';
import type { ReviewState } from '$lib/class/review.ts';
import { foldSkirt, type SkirtState } from '$lib/class/skirt-state.ts';
import { whereIs, type Where } from '$lib/class/where.ts';
import { createUnsent, type UnsentQueue } from '$lib/ui/unsent.svelte.ts';
import { reviewOnceCut, reviewSays } from '$lib/ui/wording/state.ts';
import type { LayoutData } from './$types';

export interface OwnPage {
	readonly state: SkirtState;
	readonly where: Where;
	readonly unit: Unit;
	/** True while something that a clearance rests on has been said here and not been kept yet. */
	readonly changedHere: boolean;
	readonly review: ReviewState;
	/** That in a sentence, with what has changed. */
	readonly reviewSays: string;
	readonly unsent: UnsentQueue;
	/** Whether her cloth is cut: the step that needs a clearance is ticked. */
	readonly cut: boolean;
	/** Whether her numbers are enough to draft from, as the server last said. */
	readonly drafted: boolean;
	readonly say: (body: EventBody) => Promise<void>;
	/** Reads the log again. Without an answer the page stays as it is: loading it again would leave it, and what is half typed would go. */
	readonly look: () => Promise<void>;
}

const [getOwnPage, setContext] = createContext<OwnPage>();
export { getOwnPage };

/** What changes the cut: said here, it voids a clearance before the server has heard of it. */
const cuts: readonly EventBody['kind'][] = ['reading', 'choice'];

export function setOwnPage(data: () => LayoutData): OwnPage {
	const { memberId, held } = data();
	/** Read since the page's own data came. */
	let read = $state.raw<{ readonly log: LayoutData['log']; readonly over: LayoutData['log'] } | null>(null);
	const log = $derived(read?.over === data().log ? read.log : data().log);
	let looks = 0;
	async function look(): Promise<void> {
		const mine = ++looks;
		const over = data().log;
		const response = await fetch(`${data().root}/log`, { signal: AbortSignal.timeout(20_000) }).catch(() => null);
		if (!response?.ok || response.redirected) return;
		const found = (await response.json().catch(() => null)) as LayoutData['log'] | null;
		if (found && mine === looks) read = { log: found, over };
	}
	const unsent = createUnsent({ classId: held.id, memberId, seen: () => foldSkirt(log.events).counter, onkept: () => void look() });
	const here = $derived(unsent.said.filter(({ refused }) => !refused));
	const events = $derived<readonly LoggedEvent[]>([...log.events, ...here.map((event) => ({ ...event, by: memberId }))]);
	const state = $derived(foldSkirt(events));
	const where = $derived(whereIs(data().lesson.stages, state));
	const cut = $derived(data().lesson.stages.some(({ steps }) => steps.some(({ id, needs }) => needs === 'clearance' && Object.hasOwn(state.ticked, id))));
	const unit = $derived(state.unit ?? data().held.rules.unit);
	const waiting = $derived(unsent.pending.filter(({ refused }) => !refused));
	const changedHere = $derived(waiting.some(({ body }) => cuts.includes(body.kind)));
	const review = $derived.by((): ReviewState => {
		const asking = waiting.findLast(({ body }) => body.kind === 'ask' || body.kind === 'unask');
		if (asking && state.decision?.kind === 'ask') return 'asked';
		// Taken back here: what stood before she asked. Whether a clearance of then still holds is the server's to say.
		if (asking) return state.decision === null ? 'not-asked' : state.decision.kind === 'return' ? 'returned' : 'void';
		return changedHere && (log.review === 'cleared' || log.review === 'differs') ? 'void' : log.review;
	});
	const own: OwnPage = {
		get state() { return state; },
		get where() { return where; },
		get unit() { return unit; },
		get changedHere() { return changedHere; },
		get review() { return review; },
		get reviewSays() { return (cut && reviewOnceCut(review)) || reviewSays(review, log.rules, changedHere || state.changedSince !== null); },
		get cut() { return cut; },
		get drafted() { return log.drafted; },
		unsent,
		say: unsent.add,
		look
	};
	setContext(own);
	return own;
}
