// Asks for the table anew every 15 s while someone looks at it, and at once when she comes back to it.
import { invalidate } from '$app/navigation';

export const TABLE = 'class:table';
const every = 15_000;

/** For an `$effect`; gives back how to stop. */
export function keepFresh(): () => void {
	const ask = (): void => {
		if (document.visibilityState === 'visible') void invalidate(TABLE);
	};
	const timer = setInterval(ask, every);
	document.addEventListener('visibilitychange', ask);
	return () => {
		clearInterval(timer);
		document.removeEventListener('visibilitychange', ask);
	};
}
