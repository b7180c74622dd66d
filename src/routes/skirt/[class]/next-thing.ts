// The one thing her page puts first.
import type { ReviewState } from '$lib/class/review.ts';
import type { Where } from '$lib/class/where.ts';

export interface NextThing {
	readonly title: string;
	readonly why: string;
	readonly button: string;
	/** Below the skirt's address. */
	readonly to: string;
}

interface Known {
	/** Whether there is a draft. */
	readonly drafted: boolean;
	readonly review: ReviewState;
	readonly returned: string | null;
	readonly where: Where;
	readonly stepTitle: string | null;
	/** Whether the next step is the cutting step. */
	readonly atCutting: boolean;
	/** Whether the cutting step is ticked. */
	readonly cut: boolean;
}

export function nextThing({ drafted, review, returned, where, stepTitle, atCutting, cut }: Known): NextThing {
	if (!drafted) return { title: 'Take your measurements', why: 'Two readings of each, then your skirt is drafted from them.', button: 'Measure', to: '/measure' };
	if (review === 'returned') return { title: returned ?? 'Look again', why: 'Your teacher has looked, and asks for this first.', button: 'Go to my numbers', to: '/measure' };
	// Once it is cut nothing is left to be cleared: the sewing goes on, and her page says below what has changed.
	if ((review === 'void' || review === 'differs') && !cut) {
		return { title: 'Ask again before you cut', why: 'Something has changed since you were cleared. The earlier clearing no longer counts.', button: 'Ask to be cleared', to: '/gate' };
	}
	if (where.finished) return { title: 'Every step is ticked', why: 'Your skirt is finished. Wear it well.', button: 'Look back at the last stage', to: `/make/${where.last?.stage ?? ''}?whole` };
	if (atCutting && review === 'not-asked') return { title: 'Ask to be cleared to cut', why: 'Read seven lines aloud with a second person. Then your teacher looks at your numbers.', button: 'Ready to cut?', to: '/gate' };
	if (atCutting && review === 'asked') return { title: 'Waiting for your teacher', why: 'Your numbers are in the queue. Keep your shears down until then.', button: 'See where it stands', to: '/gate' };
	const next = where.next;
	const to = next ? `/make/${next.stage}?step=${next.step}` : '/measure';
	return { title: stepTitle ?? 'Begin', why: where.last ? 'You left off here.' : 'The first step of your skirt.', button: where.last ? 'Go on' : 'Begin', to };
}
