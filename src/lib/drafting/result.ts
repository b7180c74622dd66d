// How the pure code says no: returned, never thrown, and without prose (the wording lives in ui/wording).
import type { Measurement } from './body.ts';
import type { WayOut } from './check.ts';

/** One thing that stands in the way, as plain data. Lengths in it are millimetres, angles radians. */
export interface Issue {
	/** Stable kebab-case code, such as `not-a-length`; the wording is looked up by it. */
	readonly code: string;
	/** Dotted path of the field, such as `body.waist`; empty when there is no field. */
	readonly path: string;
	/** What would have been taken: a short machine-readable phrase, a number, or a list of them. */
	readonly expected?: unknown;
	/** What came. */
	readonly received?: unknown;
	/** The figures that the sentence needs (a best guess, a limit), in millimetres. */
	readonly figures?: Readonly<Record<string, number>>;
	/** Changes that mend it, where they can be worked out. */
	readonly waysOut?: readonly WayOut[];
	/** Readings to take: the way on where no choice mends it. */
	readonly measure?: readonly Measurement[];
}

export type Result<T> =
	| { readonly ok: true; readonly value: T }
	| { readonly ok: false; readonly issues: readonly Issue[] };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const refuse = (...issues: readonly Issue[]): Result<never> => ({ ok: false, issues });
