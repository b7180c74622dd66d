// The quiet line: what is saved, and what is sent.
import { count } from './count.ts';

/** What a device knows about what was said on it. */
export interface SavedState {
	/** How many things wait to be sent. */
	readonly waiting: number;
	/** When the last thing was said here, milliseconds since 1970; null when nothing has been since the page opened. */
	readonly savedAt: number | null;
	/** False where the browser lets nothing be kept: it lives as long as the page. */
	readonly kept: boolean;
	/** `signed-out`: the server no longer knows who this is. `refused`: it would not take something. */
	readonly trouble: 'none' | 'signed-out' | 'refused';
}

/** `time` is savedAt as the reader's clock shows it: "14:05". */
export function savedLine(state: SavedState, time: string): string {
	const { waiting, savedAt, kept, trouble } = state;
	if (savedAt === null && waiting === 0) return '';
	const where = kept ? 'Saved on this device' : 'Held on this page';
	const when = time === '' ? where : `${where} ${time}`;
	if (trouble === 'refused') return `${when} · something could not be sent. Show this to your teacher.`;
	if (trouble === 'signed-out') return `${when} · sign in again to send it to your teacher`;
	if (waiting === 0) return `${when} · sent to your teacher`;
	const more = waiting > 1 ? `, ${count(waiting, 'thing waits', 'things wait')}` : '';
	return `${when} · not yet sent to your teacher${more}${kept ? '' : '. Keep this page open.'}`;
}
