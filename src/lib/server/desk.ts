// What a learner's log amounts to on her class's lesson, worked out in one place for every screen that shows it.
import type { LoggedEvent } from '../class/event.ts';
import { flagsOf, reviewState, type Flag, type Now, type ReviewState } from '../class/review.ts';
import type { ClassRules } from '../class/rules.ts';
import { foldSkirt, type SkirtState } from '../class/skirt-state.ts';
import { whereIs, type Where } from '../class/where.ts';
import { stagesOf, type Lesson } from '../lesson/lesson.ts';
import { ownMade, type OwnMade } from '../lesson/own-made.ts';
import { flagSource, ownSkirt, type OwnSkirt } from '../lesson/own-skirt.ts';
import { nowFrom } from './review.ts';

export interface Desk {
	readonly state: SkirtState;
	readonly own: OwnSkirt;
	/** Her readings on the real thing against her draft; null while there are none, or no draft. */
	readonly made: OwnMade | null;
	/** What a clearance would remember; null while there is no draft. */
	readonly now: Now | null;
	readonly review: ReviewState;
	readonly flags: readonly Flag[];
	readonly where: Where;
}

export function skirtDesk(lesson: Lesson, rules: ClassRules, events: readonly LoggedEvent[]): Desk {
	const state = foldSkirt(events);
	const own = ownSkirt(lesson.style, rules, state);
	const made = own.draft?.ok ? ownMade(own.draft.value, state.made, rules.tolerances) : null;
	const now = nowFrom(own, state.readings, lesson.style, rules);
	const review = reviewState(state, now);
	const stages = stagesOf(lesson);
	const cuttingSteps = stages.flatMap(({ steps }) => steps.filter(({ needs }) => needs === 'clearance').map(({ id }) => id));
	const source = flagSource(own, made, lesson.style, rules, cuttingSteps);
	return { state, own, made, now, review, flags: flagsOf(state, review, source), where: whereIs(stages, state) };
}
