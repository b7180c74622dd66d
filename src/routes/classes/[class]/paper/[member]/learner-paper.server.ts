import { error } from '@sveltejs/kit';
import { openSkirt } from '$lib/server/opening.ts';
import { paperFor, type Paper } from '$lib/server/paper.ts';
import { readHeld } from '../../table.server.ts';

/** What a teacher can print for one learner: logged, and shown to her. */
export async function learnerPaper(locals: App.Locals, { class: classId, member }: { class: string; member: string }): Promise<Paper> {
	if (!locals.asker) error(404);
	const { held, lesson } = await readHeld(locals, classId);
	const { name, events } = await openSkirt(locals.sql, locals.asker, classId, member, 'paper');
	return paperFor(lesson, held, name, events, new Date()) ?? error(404, 'There is nothing to print yet. The measurements come first, twice each.');
}
