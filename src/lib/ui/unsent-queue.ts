// The pure part of the queue of things said on this device and not yet kept by the server.
import type { EventBody, NewEvent } from '../class/event.ts';

/** As the device keeps it: an event, and when it was said here (this device's clock, for showing only). */
export interface Unsent extends NewEvent {
	readonly at: number;
	/** The server would not take it. It stays here, so that it isn't lost, and is not sent again. */
	readonly refused?: true;
}

/** Milliseconds until the next try after so many failures: 1, 2, 4 … 60 s, each spread by a quarter, so that a room full of phones doesn't come back at one moment. `chance` is 0…1. */
export function pause(failures: number, chance: number): number {
	const whole = Math.min(60_000, 1000 * 2 ** Math.max(0, failures - 1));
	return Math.round(whole * (0.75 + 0.5 * chance));
}

/** The next counter is above every one seen: on this device and in what the server sent. */
export const nextCounter = (kept: number, seen: number): number => Math.max(kept, seen) + 1;

/** What to send next, oldest first: at most `most`, and within `bytes` as JSON (the server takes 200 and 64 kB). */
export function batch(unsent: readonly Unsent[], most = 100, bytes = 48_000): readonly NewEvent[] {
	const out: NewEvent[] = [];
	let size = 0;
	for (const { id, device, counter, body } of inOrder(unsent.filter(({ refused }) => !refused))) {
		const event = { id, device, counter, body };
		// Three bytes a character at the most, in UTF-8.
		size += JSON.stringify(event).length * 3;
		if (out.length >= most || (out.length > 0 && size > bytes)) break;
		out.push(event);
	}
	return out;
}

const inOrder = (unsent: readonly Unsent[]): readonly Unsent[] => [...unsent].sort((a, b) => a.counter - b.counter);

/** What the server has kept needs no sending. Ids it names that aren't here are nothing to us. */
export const withoutKept = (unsent: readonly Unsent[], kept: readonly string[]): readonly Unsent[] => {
	const gone = new Set(kept);
	return unsent.filter(({ id }) => !gone.has(id));
};

/** Two lists of what was said, each thing once, in the order it was said. */
export const merge = (a: readonly Unsent[], b: readonly Unsent[]): readonly Unsent[] =>
	inOrder([...new Map([...a, ...b].map((event) => [event.id, event])).values()]);

export type Answer = 'kept' | 'refused' | 'signed-out' | 'away';

/** What the server's answer means. Only a refusal of the thing itself ends its sending; all else is tried again. */
export function answerOf(status: number): Answer {
	if (status === 200) return 'kept';
	if (status === 401 || status === 403 || status === 404) return 'signed-out';
	// Too much at once, too often, too slow: not the event's own doing.
	return status >= 400 && status < 500 && ![408, 413, 425, 429].includes(status) ? 'refused' : 'away';
}

/** A UUID (RFC 9562, version 4) from 16 random bytes: `randomUUID` is missing on plain http. */
export function uuidFrom(bytes: Uint8Array): string {
	const all = Array.from(bytes.subarray(0, 16));
	all[6] = (all[6]! & 0x0f) | 0x40;
	all[8] = (all[8]! & 0x3f) | 0x80;
	const hex = all.map((byte) => byte.toString(16).padStart(2, '0')).join('');
	return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

export const makeEvent = (body: EventBody, id: string, device: string, counter: number, at: number): Unsent => ({ id, device, counter, body, at });
