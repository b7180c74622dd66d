// Asks for the table anew every 15 s while someone looks at it, and at once when she comes back to it.
import { invalidate } from '$app/navigation';

export const TABLE = 'class:table';
const every = 15_000;

/** For an `$effect`; gives back how to stop. */
export function keepFresh(): () => void {
	const ask = async (): Promise<void> => {
		if (document.visibilityState !== 'visible') return;
		// Looked for first: a page that asks anew and gets no answer is left by the browser, with what was half typed on it.
		const there = await fetch(`${location.pathname}/__data.json${location.search}`, { signal: AbortSignal.timeout(10_000) }).catch(() => null);
		if (there?.ok && !there.redirected) await invalidate(TABLE);
	};
	const wake = (): void => void ask();
	const timer = setInterval(wake, every);
	document.addEventListener('visibilitychange', wake);
	return () => {
		clearInterval(timer);
		document.removeEventListener('visibilitychange', wake);
	};
}
