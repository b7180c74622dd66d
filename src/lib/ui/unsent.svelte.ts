// Things said on this device, shown at once, kept until the server has them, and sent again until it does.
import type { EventBody, NewEvent } from '../class/event.ts';
import { answerOf, batch, makeEvent, merge, nextCounter, pause, withoutKept, type Unsent } from './unsent-queue.ts';
import { drawId, openStore, type UnsentStore } from './unsent-store.ts';
import type { SavedState } from './wording/saved.ts';

export interface UnsentOptions {
	readonly classId: string;
	readonly memberId: string;
	/** The highest counter in what the server sent (SkirtState.counter): what is said here goes above it. */
	readonly seen: () => number;
	/** Called after the server has kept something: load the page's data again. */
	readonly onkept?: () => void;
	/** Sends and gives the status and the ids kept. A failed connection throws. The log's route unless told otherwise. */
	readonly send?: (events: readonly NewEvent[]) => Promise<{ readonly status: number; readonly kept: readonly string[] }>;
}

export interface UnsentQueue {
	/** What was said here: not yet kept, or kept since this page opened. Fold it over what the server sent; repeats are harmless. */
	readonly said: readonly Unsent[];
	/** Not kept by the server yet. */
	readonly pending: readonly Unsent[];
	readonly saved: SavedState;
	/** Resolves when it is safe on this device. */
	readonly add: (body: EventBody) => Promise<void>;
	/** Sends now, without waiting for the pause to end. */
	readonly flush: () => Promise<void>;
	/** Reads what was kept before, sends, and goes on sending. For an `$effect`: gives the function that stops it. */
	readonly start: () => () => void;
}

const sendTo = (classId: string) => async (events: readonly NewEvent[]) => {
	const response = await fetch(`/skirt/${encodeURIComponent(classId)}/log`, {
		method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ events }),
		// A page that is being left still sends.
		keepalive: true,
		// A hall's network may take the request and never answer.
		signal: AbortSignal.timeout(20_000)
	});
	// A redirect to the sign-in page is an answer with status 200 that isn't ours.
	const json = response.headers.get('content-type')?.startsWith('application/json') ?? false;
	if (response.ok && (response.redirected || !json)) return { status: 401, kept: [] };
	const kept: unknown = response.ok ? (await response.json()).kept : [];
	return { status: response.status, kept: Array.isArray(kept) ? kept.map(String) : [] };
};

export function createUnsent({ classId, memberId, seen, onkept, send = sendTo(classId) }: UnsentOptions): UnsentQueue {
	let pending = $state.raw<readonly Unsent[]>([]);
	let settled = $state.raw<readonly Unsent[]>([]);
	let savedAt = $state<number | null>(null);
	let kept = $state(true);
	let trouble = $state<SavedState['trouble']>('none');

	const skirt = `${classId}/${memberId}`;
	let store: Promise<UnsentStore> | null = null;
	let tabs: BroadcastChannel | null = null;
	let timer: ReturnType<typeof setTimeout> | undefined;
	let running = false;
	let sending = false;
	let again = false;
	/** What the device's store would not take, because it is full. It lives as long as the page. */
	let loose: readonly Unsent[] = [];
	let failures = 0;
	/** After a refusal each thing goes alone, so that one can't hold up the rest. */
	let alone = false;

	const opened = (): Promise<UnsentStore> =>
		(store ??= openStore(skirt).then((found) => {
			kept = found.kept;
			return found;
		}));

	/** What other tabs have said or sent meanwhile is taken in. */
	async function reread(): Promise<number> {
		const { said, lastAt, counter } = await (await opened()).read();
		const found = merge(said, loose);
		const left = new Set(found.map(({ id }) => id));
		settled = merge(settled, pending.filter(({ id }) => !left.has(id)));
		pending = found;
		if (lastAt !== null) savedAt = Math.max(savedAt ?? 0, lastAt);
		if (pending.some(({ refused }) => refused)) trouble = 'refused';
		else if (trouble === 'refused') trouble = 'none';
		return counter;
	}

	async function add(body: EventBody): Promise<void> {
		const above = Math.max(seen(), ...settled.map(({ counter }) => counter), ...loose.map(({ counter }) => counter));
		const event = await (await opened()).say(body, above).catch(() => {
			const held = makeEvent(body, drawId(), drawId(), nextCounter(above, 0), Date.now());
			loose = [...loose, held];
			kept = false;
			return held;
		});
		pending = merge(pending, [event]);
		savedAt = event.at;
		tabs?.postMessage('said');
		void flush();
	}

	async function flush(): Promise<void> {
		if (sending) {
			again = true;
			return;
		}
		sending = true;
		clearTimeout(timer);
		try {
			// Was something said while the last round was ending? Then there is another round.
			do {
				again = false;
				while (await sendSome());
			} while (again);
		} catch {
			failures++;
		} finally {
			sending = false;
		}
		if (running && failures > 0 && trouble !== 'signed-out') timer = setTimeout(() => void flush(), pause(failures, chance()));
	}

	/** True when something was settled and there may be more. */
	async function sendSome(): Promise<boolean> {
		const events = batch(pending, alone ? 1 : 100);
		if (events.length === 0) {
			alone = false;
			return false;
		}
		const { status, kept: ids } = await send(events);
		const answer = answerOf(status);
		if (answer === 'kept' && ids.length > 0) {
			await (await opened()).drop(ids);
			settled = merge(settled, pending.filter(({ id }) => ids.includes(id)));
			pending = withoutKept(pending, ids);
			loose = withoutKept(loose, ids);
			failures = 0;
			if (trouble === 'signed-out') trouble = 'none';
			tabs?.postMessage('sent');
			onkept?.();
			return true;
		}
		if (answer === 'refused') {
			if (events.length > 1) {
				alone = true;
				return true;
			}
			await (await opened()).refuse(events[0]!.id);
			await reread();
			return true;
		}
		if (answer === 'signed-out') trouble = 'signed-out';
		failures++;
		return false;
	}

	function start(): () => void {
		running = true;
		tabs = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(`skirtwright ${skirt}`);
		tabs?.addEventListener('message', () => void reread());
		const wake = (): void => {
			if (document.visibilityState === 'visible') void reread().then(flush);
		};
		const events = ['online', 'pageshow', 'focus'] as const;
		for (const name of events) addEventListener(name, wake);
		document.addEventListener('visibilitychange', wake);
		void reread().then((counter) => {
			// Said here and sent while this page was on its way to us: the page is older than what was said.
			if (counter > seen() && !pending.some((event) => event.counter === counter)) onkept?.();
			return flush();
		});
		return () => {
			running = false;
			clearTimeout(timer);
			tabs?.close();
			tabs = null;
			for (const name of events) removeEventListener(name, wake);
			document.removeEventListener('visibilitychange', wake);
		};
	}

	return {
		get said() {
			return merge(settled, pending);
		},
		get pending() {
			return pending;
		},
		get saved() {
			return { waiting: pending.length, savedAt, kept, trouble };
		},
		add,
		flush,
		start
	};
}

const chance = (): number => crypto.getRandomValues(new Uint32Array(1))[0]! / 2 ** 32;
