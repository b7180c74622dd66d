// A class as its teacher sees it: who is where, who waits, who has flags. No figure of a body is among it.
import { error } from '@sveltejs/kit';
import type { Flag, ReviewState, Waiting } from '$lib/class/review.ts';
import type { Where } from '$lib/class/where.ts';
import type { Lesson } from '$lib/lesson/lesson.ts';
import { readClass, type Class } from '$lib/server/class.ts';
import { skirtDesk } from '$lib/server/desk.ts';
import { readClassLogs, type MemberLog } from '$lib/server/log.ts';
import { lessonOf } from '$lib/ui/lesson/shelf.ts';

export interface Row extends Waiting {
	readonly flags: readonly Flag[];
	readonly review: ReviewState;
	readonly where: Where;
	/** The hand that is up: since when, and on which step. */
	readonly help: { readonly at: number; readonly step?: string } | null;
	/** What the teacher asked for when she returned the numbers last. */
	readonly returned: string | null;
	/** Whether there is enough to draft from. */
	readonly drafted: boolean;
}

export interface ClassTable {
	readonly held: Class;
	readonly lesson: Lesson;
	readonly rows: readonly Row[];
}

/** The class and its lesson, for whoever is admitted to it. */
export async function readHeld({ sql, asker }: App.Locals, classId: string): Promise<{ readonly held: Class; readonly lesson: Lesson }> {
	if (!asker) error(404);
	const held = await readClass(sql, asker, classId);
	const lesson = lessonOf(held.lesson);
	if (!lesson) throw new Error(`class ${held.id} is held on lesson ${held.lesson}, which is not on the shelf`);
	return { held, lesson };
}

export async function readTable(locals: App.Locals, classId: string): Promise<ClassTable> {
	if (!locals.asker) error(404);
	const [{ held, lesson }, logs] = await Promise.all([readHeld(locals, classId), readClassLogs(locals.sql, locals.asker, classId)]);
	return { held, lesson, rows: logs.map((log) => rowOf(lesson, held, log)) };
}

function rowOf(lesson: Lesson, { rules }: Class, { memberId, name, events }: MemberLog): Row {
	const { state, review, flags, where, now } = skirtDesk(lesson, rules, events);
	return {
		memberId, name, review, flags, where, help: state.help, since: state.decision?.at ?? null, changed: state.changedSince,
		returned: review === 'returned' ? (state.returned?.action ?? null) : null, drafted: now !== null
	};
}
