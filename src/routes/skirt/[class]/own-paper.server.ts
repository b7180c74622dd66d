import { error } from '@sveltejs/kit';
import { readClass } from '$lib/server/class.ts';
import { readEvents } from '$lib/server/log.ts';
import { paperFor, type Paper } from '$lib/server/paper.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';

/** What she can print herself; null while there is no draft. */
export async function ownPaper({ sql, asker, membership }: App.Locals, classId: string): Promise<Paper | null> {
	if (!asker || !membership) error(404);
	const [held, events] = await Promise.all([readClass(sql, asker, classId), readEvents(sql, asker, membership.memberId)]);
	const lesson = lessonOf(held.lesson);
	if (!lesson) throw new Error(`class ${held.id} is held on lesson ${held.lesson}, which is not on the shelf`);
	return paperFor(lesson, held, membership.name, events, new Date());
}

export const nothingToPrint = 'There is nothing to print yet. Take your measurements twice each, then come back.';
