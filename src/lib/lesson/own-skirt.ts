// From a learner's folded log to her own draft: the one way, on the server and in her browser alike.
import type { FlagSource } from '../class/review.ts';
import type { ClassRules } from '../class/rules.ts';
import type { SkirtState } from '../class/skirt-state.ts';
import { measurementOrder, type Measurement } from '../drafting/body.ts';
import { draftSkirt, type Draft } from '../drafting/draft.ts';
import { checkInput, type DraftInput } from '../drafting/input.ts';
import { agree, type Agreement } from '../drafting/reading.ts';
import type { Result } from '../drafting/result.ts';
import { bearingOn } from './open.ts';
import { madeOut, type OwnMade } from './own-made.ts';
import { skirtInput } from './skirt-input.ts';
import type { LessonStyle } from './style.ts';

/** Without these there is nothing to draft from: what is pulled on is drawn from the hip as well. */
const neededFor = ({ band }: LessonStyle): readonly Measurement[] => (band === 'elastic' ? ['waist', 'hip', 'length'] : ['waist', 'length']);

export interface OwnSkirt {
	readonly agreed: Readonly<Record<Measurement, Agreement>>;
	/** What each pair of readings comes to, in mm; absent while they don't agree. */
	readonly measured: Readonly<Partial<Record<Measurement, number>>>;
	/** Measurements still to be taken (or taken again) before anything can be drafted. */
	readonly missing: readonly Measurement[];
	/** The checked input, which a clearance's digest covers; null while there is none. */
	readonly input: DraftInput | null;
	/** Null while a needed measurement is missing. */
	readonly draft: Result<Draft> | null;
}

export function ownSkirt(style: LessonStyle, rules: ClassRules, state: Pick<SkirtState, 'readings' | 'choices'>): OwnSkirt {
	const agreed = Object.fromEntries(
		measurementOrder.map((measurement) => [measurement, agree(state.readings[measurement] ?? [], rules.tolerances.readings)])
	) as Record<Measurement, Agreement>;
	const measured: Partial<Record<Measurement, number>> = {};
	for (const measurement of measurementOrder) {
		const agreement = agreed[measurement];
		if (agreement.state === 'agreed') measured[measurement] = agreement.used;
	}
	const missing = neededFor(style).filter((measurement) => measured[measurement] === undefined);
	if (missing.length > 0) return { agreed, measured, missing, input: null, draft: null };

	const checked = checkInput(skirtInput(style, rules, state.choices, measured));
	if (!checked.ok) return { agreed, measured, missing, input: null, draft: checked };
	return { agreed, measured, missing, input: checked.value, draft: draftSkirt(checked.value.body, checked.value.skirt) };
}

/** What a review's flags are made from (class/review.ts, flagsOf). */
export function flagSource(own: OwnSkirt, made: OwnMade | null, style: LessonStyle, rules: ClassRules, cuttingSteps: readonly string[]): FlagSource {
	const inState = (state: Agreement['state']) => measurementOrder.filter((measurement) => own.agreed[measurement].state === state);
	const stops = own.draft === null ? [] : own.draft.ok
		? own.draft.value.checks.filter(({ severity }) => severity === 'stop').map(({ code }) => code)
		: own.draft.issues.map(({ code }) => code);
	return {
		apart: inState('apart'), once: inState('one'), stops, cuttingSteps, made: madeOut(made),
		// One reading, or two that are apart, have flags of their own.
		hipMissing: own.draft?.ok === true && own.agreed.hip.state === 'none',
		gate: rules.gate.map(({ id }) => id), rules: bearingOn(style, rules)
	};
}
