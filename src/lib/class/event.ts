// What people said and did, one append-only log per learner's skirt. State is a fold over it (skirt-state.ts).
import type { Measurement } from '../drafting/body.ts';
import type { MadeLength, MadeName } from './made.ts';

export type Unit = 'cm' | 'in';
/** How a reading was taken. */
export type Route = 'self' | 'home' | 'partner' | 'teacher' | 'skirt-that-fits';

/** What a learner chose beyond what the lesson and the class set. Lengths in mm; each may be absent. */
export interface Choices {
	readonly share?: number;
	readonly panels?: number;
	readonly waistEase?: number;
	readonly hipEase?: number;
	readonly bandDepth?: number;
	readonly hem?: number;
	readonly hemFinish?: 'turned' | 'narrow';
	readonly zipAt?: 'centreBack' | 'leftSide';
}

export type EventBody =
	| { readonly kind: 'reading'; readonly measurement: Measurement; readonly mm: number; readonly typed: string; readonly unit: Unit; readonly route: Route }
	/** A reading on the real thing. A later one counts instead; the earlier stay in the log. It touches no clearance: it follows the plan. */
	| { readonly kind: 'made'; readonly reading: MadeName; readonly lengths: readonly MadeLength[]; readonly unit: Unit }
	/** Replaces all earlier choices. */
	| { readonly kind: 'choice'; readonly choices: Choices }
	| { readonly kind: 'tick' | 'untick'; readonly step: string }
	| { readonly kind: 'preference'; readonly unit?: Unit; readonly noTouch?: boolean }
	/** The learner asks to be cleared to cut: the gate's items she and a second person read aloud. */
	| { readonly kind: 'ask'; readonly gate: readonly string[]; readonly second: string }
	/** She takes it back before it is answered. After an answer it says nothing. */
	| { readonly kind: 'unask' }
	/** Made by the server alone: what was cleared, as it was seen (figures in tenths of a millimetre, rules as review.ts names them). */
	| {
		readonly kind: 'clear'; readonly digest: string; readonly engine: string; readonly figures: Readonly<Record<string, number>>;
		readonly rules?: Readonly<Record<string, string | number | boolean>>; readonly reason?: string;
	}
	| { readonly kind: 'return'; readonly action: string }
	/** A hand up: a question on one step, and its end. (The help queue is a later issue's.) */
	| { readonly kind: 'help' | 'helped'; readonly step?: string };

export type EventKind = EventBody['kind'];

/** An event as a device makes it. */
export interface NewEvent {
	/** A UUID made by the client, so that a repeat is harmless. */
	readonly id: string;
	readonly device: string;
	/** Above every counter this device has seen for this skirt. The higher counter wins, then the device id. */
	readonly counter: number;
	readonly body: EventBody;
}

/** An event as the log keeps it. */
export interface LoggedEvent extends NewEvent {
	/** The person who said it: the learner, or her teacher. */
	readonly by: string;
	/** The server's clock, milliseconds since 1970. */
	readonly at: number;
}
