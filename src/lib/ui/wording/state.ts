// The words for states: each state is a shape and a word, never a colour.
import type { ReviewState } from '../../class/review.ts';
import { ruleNames } from './rule.ts';

export type State = 'notStarted' | 'here' | 'done' | 'waiting' | 'returned' | 'flag' | 'rightWhen';

export const stateWords: Readonly<Record<State, string>> = {
	notStarted: 'not started',
	here: 'here',
	done: 'done',
	waiting: 'waiting for the teacher',
	returned: 'returned',
	flag: 'flag',
	rightWhen: 'right when'
};

/** Which shape stands for where a learner is with cutting. */
export const reviewShape: Readonly<Record<ReviewState, State>> = {
	'not-asked': 'notStarted', asked: 'waiting', returned: 'returned', cleared: 'done', void: 'flag', differs: 'flag'
};

/** To the learner herself. */
export const reviewToLearner: Readonly<Record<ReviewState, string>> = {
	'not-asked': 'You have not asked to be cleared to cut yet.',
	asked: 'Your teacher has been asked. You are in the queue.',
	returned: 'Your teacher has looked, and asks for one thing first.',
	cleared: 'You are cleared to cut.',
	void: 'A number has changed since you were cleared. Ask again before you cut.',
	differs: 'Your figures are worked out differently since you were cleared. Ask again before you cut.'
};

/** To the learner once her cloth is cut: asking again would come too late, and the sewing goes on. */
export const reviewOnceCut = (review: ReviewState): string | null => {
	if (review === 'void') return 'A number or a rule has changed since your cloth was cut, and the lengths in the steps follow it. Show your teacher before you sew to one.';
	if (review === 'differs') return 'Your figures are worked out differently since your cloth was cut. Show your teacher before you sew to a length in the steps.';
	return null;
};

/**
 * The same, and what ended a clearance: `rules` of the class that have changed since, and whether a number or a choice of
 * hers has (`own`).
 */
export function reviewSays(review: ReviewState, rules: readonly string[], own: boolean): string {
	if (review !== 'void' || rules.length === 0) return reviewToLearner[review];
	return `${ruleNames(rules)} changed in your class’s rules since you were cleared.${own ? ' A number of yours changed too.' : ''} Ask again before you cut.`;
}

/** To her teacher. The flags say what has changed. */
export const reviewToTeacher: Readonly<Record<ReviewState, string>> = {
	'not-asked': 'Has not asked yet',
	asked: 'Asks to be cleared to cut',
	returned: 'Returned',
	cleared: 'Cleared to cut',
	void: 'Changed since you cleared the cut',
	differs: 'Worked out differently since, look again'
};
