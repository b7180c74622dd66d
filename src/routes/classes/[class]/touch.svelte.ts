// Whether the class is within reach: its table is asked for anew every 15 s while someone looks, and at once when she comes
// back to it. While nothing answers it is asked for more often, and a link that she follows waits.
import { goto, invalidate } from '$app/navigation';
import { TABLE } from './table-key.ts';

const every = 15_000;
const everyWhileLost = 5_000;
const longestWait = 10_000;

/** Null where nothing answered in time. */
const ask = (address: string): Promise<Response | null> =>
	fetch(address, { signal: AbortSignal.timeout(longestWait), cache: 'no-store' }).catch(() => null);

export class Touch {
	/** When the last answer came, by this device's clock: milliseconds since 1970. */
	last = $state(Date.now());
	lost = $state(false);
	/** Where a link leads that waits for an answer. */
	waits = $state.raw<URL | null>(null);

	async look(): Promise<void> {
		if (document.visibilityState !== 'visible') return;
		// Looked for first: a page that asks anew and gets no answer is left by the browser, with what was half typed on it.
		const there = await ask(`${location.pathname}/__data.json${location.search}`);
		this.#heard(there);
		if (this.lost) return;
		if (this.waits) await this.#go(this.waits);
		else if (there?.ok && !there.redirected) await invalidate(TABLE);
	}

	/** Goes where a link leads once the server is there: else the browser would put its own page in this one's place. */
	async follow(to: URL): Promise<void> {
		this.waits = to;
		if (!this.lost) this.#heard(await ask('/_app/version.json'));
		if (!this.lost && this.waits === to) await this.#go(to);
	}

	/** For an `$effect`; gives back how to stop. */
	keep(): () => void {
		let kept = true;
		let timer: ReturnType<typeof setTimeout>;
		const wait = (): void => {
			if (kept) timer = setTimeout(() => void this.look().finally(wait), this.lost ? everyWhileLost : every);
		};
		const wake = (): void => void this.look();
		wait();
		document.addEventListener('visibilitychange', wake);
		return () => {
			kept = false;
			clearTimeout(timer);
			document.removeEventListener('visibilitychange', wake);
		};
	}

	#heard(there: Response | null): void {
		this.lost = there === null || there.status >= 500;
		if (!this.lost) this.last = Date.now();
	}

	async #go(to: URL): Promise<void> {
		this.waits = null;
		await goto(to);
	}
}
