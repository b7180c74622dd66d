import { error } from '@sveltejs/kit';
import { rulesChanged } from '$lib/class/review.ts';
import { bearingOn } from '$lib/lesson/open.ts';
import { readClass } from '$lib/server/class.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { readEvents } from '$lib/server/log.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';

/** Her log, and what it amounts to now: plain data, on which the page folds whatever waits on her device. */
export async function readOwnLog({ sql, asker, membership }: App.Locals, classId: string) {
	if (!asker || !membership) error(404);
	const [held, events] = await Promise.all([readClass(sql, asker, classId), readEvents(sql, asker, membership.memberId)]);
	const lesson = lessonOf(held.lesson);
	if (!lesson) throw new Error(`class ${held.id} is held on lesson ${held.lesson}, which is not on the shelf`);
	const { review, own, state } = skirtDesk(lesson, held.rules, events);
	/** `drafted`: whether her numbers are enough to draft from. `rules`: which of the class's have changed since she was cleared. */
	return { held, lesson, log: { events, review, drafted: own.draft?.ok ?? false, rules: rulesChanged(state, bearingOn(lesson.style, held.rules)) } };
}
