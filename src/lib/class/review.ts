// Where a learner stands with cutting, and who waits for her teacher.
import type { Measurement } from '../drafting/body.ts';
import type { SkirtState } from './skirt-state.ts';

export type ReviewState =
	| 'not-asked' | 'asked' | 'returned' | 'cleared'
	/** Cleared once, and a number or a choice has changed since. */
	| 'void'
	/** Cleared, nothing changed, but worked out differently since. */
	| 'differs';

/** Figures in tenths of a millimetre, as a clearance remembers them. */
export type SeenFigures = Readonly<Record<string, number>>;

/** What is true now: null while there isn't enough to draft from. */
export interface Now {
	/** Of readings, choices and class rules. */
	readonly digest: string;
	readonly engine: string;
	readonly figures: SeenFigures;
}

/** A draft's figures as a clearance remembers them: lengths rounded once, here, to 0.1 mm. (Angles and areas follow from lengths.) */
export const seenFigures = (figures: Readonly<Record<string, number | undefined>>): SeenFigures =>
	Object.fromEntries(Object.entries(figures).flatMap(([name, value]) => (value === undefined ? [] : [[name, Math.round(value * 10)]])));

export function reviewState(state: SkirtState, now: Now | null): ReviewState {
	const { decision } = state;
	if (!decision) return 'not-asked';
	if (decision.kind === 'ask') return 'asked';
	if (decision.kind === 'return') return 'returned';
	if (!now || decision.digest !== now.digest) return 'void';
	return sameFigures(decision.figures, now.figures) ? 'cleared' : 'differs';
}

function sameFigures(a: SeenFigures, b: SeenFigures): boolean {
	const names = new Set([...Object.keys(a), ...Object.keys(b)]);
	return [...names].every((name) => a[name] === b[name]);
}

/** Why a teacher should look twice. `about` is a measurement, a check's code or a step's id. */
export interface Flag {
	readonly code: 'readings-apart' | 'one-reading' | 'changed-since-cleared' | 'worked-out-differently' | 'stop-check' | 'cut-without-clearance';
	readonly about?: string;
}

export interface FlagSource {
	/** Measurements whose readings differ by more than the class allows, and those read only once. */
	readonly apart: readonly Measurement[];
	readonly once: readonly Measurement[];
	/** Codes of the draft's checks with severity `stop`. */
	readonly stops: readonly string[];
	/** The lesson's steps that need a clearance. */
	readonly cuttingSteps: readonly string[];
}

export function flagsOf(state: SkirtState, review: ReviewState, source: FlagSource): readonly Flag[] {
	const about = (code: Flag['code'], what: readonly string[]): Flag[] => what.map((one) => ({ code, about: one }));
	const cut = state.cleared ? [] : source.cuttingSteps.filter((step) => Object.hasOwn(state.ticked, step));
	const flags: Flag[] = [
		...about('cut-without-clearance', cut),
		...about('readings-apart', source.apart),
		...about('one-reading', source.once),
		...about('stop-check', source.stops)
	];
	if (review === 'void') flags.push({ code: 'changed-since-cleared' });
	// Asked again after a clearance: the teacher should know that she has cleared other numbers before.
	if (review === 'asked' && state.cleared) flags.push({ code: 'changed-since-cleared' });
	if (review === 'differs') flags.push({ code: 'worked-out-differently' });
	return flags;
}

export interface Waiting {
	readonly memberId: string;
	readonly name: string;
	readonly review: ReviewState;
	readonly flags: readonly Flag[];
	/** When she asked, was returned or was cleared (the server's clock); null if none. */
	readonly since: number | null;
}

/** Who waits, longest first; then the ones that need another look; then returned; the rest as they come. */
export function queue(everyone: readonly Waiting[]): readonly Waiting[] {
	const turn: Record<ReviewState, number> = { asked: 0, void: 1, differs: 1, returned: 2, 'not-asked': 3, cleared: 4 };
	return [...everyone].sort((a, b) =>
		turn[a.review] - turn[b.review] || (a.since ?? Infinity) - (b.since ?? Infinity) || (a.memberId < b.memberId ? -1 : 1)
	);
}
