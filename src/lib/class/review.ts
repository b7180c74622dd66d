// Where a learner stands with cutting, and who waits for her teacher.
import type { Measurement } from '../drafting/body.ts';
import type { MadeName } from './made.ts';
import type { ClassRules } from './rules.ts';
import type { SkirtState } from './skirt-state.ts';

export type ReviewState =
	| 'not-asked' | 'asked' | 'returned' | 'cleared'
	/** Cleared once, and a number, a choice or a rule that bears on them has changed since. */
	| 'void'
	/** Cleared, nothing changed, but worked out differently since. */
	| 'differs';

/** Figures in tenths of a millimetre, as a clearance remembers them. */
export type SeenFigures = Readonly<Record<string, number>>;

/** What is true now: null while there isn't enough to draft from. */
export interface Now {
	/** Of readings, choices and the class rules that bear on them. */
	readonly digest: string;
	readonly engine: string;
	readonly figures: SeenFigures;
	/** The class's rules that bear on her numbers, to tell later which of them has changed. */
	readonly rules: SeenRules;
}

/**
 * The rules that bear on what a learner cuts: her clearance rests on them. The others don't end one: `bandSeam` and
 * `hemLevel` are for work after the cut, the unit is how numbers are shown, the gate was read as it stood, and what is
 * left open bears on the cut through her choices alone.
 */
export const bearingRules = [
	'zipSeries', 'allowances.waist', 'allowances.seam', 'allowances.hem', 'tolerances.readings', 'tolerances.waistWalk',
	'open.share', 'open.waistEase', 'open.bandDepth', 'open.hemFinish'
] as const;
export type BearingRule = (typeof bearingRules)[number];
/** A choice that the lesson fixes isn't among them: whatever a class says of it, it bears on nothing. */
export type SeenRules = Readonly<Partial<Record<BearingRule, string | number | boolean>>>;

export const seenRules = ({ zipSeries, allowances, tolerances, open }: ClassRules): Readonly<Record<BearingRule, string | number | boolean>> => ({
	zipSeries,
	'allowances.waist': allowances.waist, 'allowances.seam': allowances.seam, 'allowances.hem': allowances.hem,
	'tolerances.readings': tolerances.readings, 'tolerances.waistWalk': tolerances.waistWalk,
	'open.share': open.share, 'open.waistEase': open.waistEase, 'open.bandDepth': open.bandDepth, 'open.hemFinish': open.hemFinish
});

/** Which rules have changed since she was cleared. Opening a choice changes nothing until she chooses; closing one may. */
export function rulesChanged({ cleared }: Pick<SkirtState, 'cleared'>, now: SeenRules): readonly BearingRule[] {
	const was = cleared?.rules;
	if (!was) return [];
	return bearingRules.filter((rule) => was[rule] !== undefined && now[rule] !== undefined && was[rule] !== now[rule] && !(rule.startsWith('open.') && now[rule] === true));
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

/** Why a teacher should look twice. `about` is a measurement, a check's code, a step's id, a rule's name or a reading on the real thing. */
export interface Flag {
	readonly code:
		| 'made-out' | 'cut-uncleared' | 'hip-missing' | 'readings-apart' | 'one-reading' | 'stop-check' | 'gate-unread'
		| 'changed-since-cleared' | 'rule-changed' | 'worked-out-differently';
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
	/** Drafted without a hip reading: then nobody can say how long the opening must be. */
	readonly hipMissing: boolean;
	/** Readings on the real thing that are further from the plan than the class allows. */
	readonly made: readonly MadeName[];
	/** The ids of what is to be read aloud before asking. */
	readonly gate: readonly string[];
	readonly rules: SeenRules;
}

export function flagsOf(state: SkirtState, review: ReviewState, source: FlagSource): readonly Flag[] {
	const about = (code: Flag['code'], what: readonly string[]): Flag[] => what.map((one) => ({ code, about: one }));
	const flags: Flag[] = [
		...about('cut-uncleared', source.cuttingSteps.filter((step) => state.tickedUncleared.includes(step))),
		...about('made-out', source.made),
		...(source.hipMissing ? [{ code: 'hip-missing' } as const] : []),
		...about('readings-apart', source.apart),
		...about('one-reading', source.once),
		...about('stop-check', source.stops)
	];
	if (review === 'asked' && source.gate.some((id) => !state.ask?.gate.includes(id))) flags.push({ code: 'gate-unread' });
	// Asked again after a clearance: the teacher should know that she has cleared other numbers before.
	if (review === 'void' || (review === 'asked' && state.cleared)) {
		const rules = rulesChanged(state, source.rules);
		if (state.changedSince !== null || rules.length === 0) flags.push({ code: 'changed-since-cleared' });
		flags.push(...about('rule-changed', rules));
	}
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
	/** When a number that she was cleared on first changed; null where none has, or a rule of the class has. */
	readonly changed: number | null;
}

/** Who waits, longest first; then the ones that need another look; then returned; the rest as they come. */
export function queue(everyone: readonly Waiting[]): readonly Waiting[] {
	const turn: Record<ReviewState, number> = { asked: 0, void: 1, differs: 1, returned: 2, 'not-asked': 3, cleared: 4 };
	const from = ({ review, since, changed }: Waiting): number => (review === 'void' ? changed : null) ?? since ?? Infinity;
	return [...everyone].sort((a, b) =>
		turn[a.review] - turn[b.review] || from(a) - from(b) || (a.memberId < b.memberId ? -1 : 1)
	);
}
