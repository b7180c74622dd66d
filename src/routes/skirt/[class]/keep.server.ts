// The one way into a learner's own log, from her device and from a form: what fits her class is kept.
import { error } from '@sveltejs/kit';
import type { NewEvent } from '$lib/class/event.ts';
import { asksIn, checkSaid } from '$lib/class/said-check.ts';
import type { Result } from '$lib/drafting/result.ts';
import { stagesOf } from '$lib/lesson/lesson.ts';
import { readClass } from '$lib/server/class.ts';
import { appendEvents } from '$lib/server/log.ts';
import { shelf } from '$lib/ui/lesson/shelf.ts';

const stepsOf: ReadonlyMap<string, ReadonlySet<string>> = new Map(
	shelf.map((lesson) => [lesson.slug, new Set(stagesOf(lesson).flatMap(({ steps }) => steps.map(({ id }) => id)))])
);

/** `counted`: as appendEvents has it. */
export async function keepSaid(
	{ sql, asker, membership }: App.Locals, events: unknown, counted: 'on her device' | 'here'
): Promise<Result<{ readonly kept: readonly string[] }>> {
	if (!asker || !membership) error(404);
	const { memberId, classId, lesson } = membership;
	const steps = stepsOf.get(lesson);
	if (!steps) throw new Error(`class ${classId} is held on lesson ${lesson}, which is not on the shelf`);
	// A tick needs no more than the hook has read already; only asking looks up the gate.
	const fits = async (said: readonly NewEvent[]) =>
		checkSaid(said, { steps, gate: asksIn(said) ? (await readClass(sql, asker, classId)).rules.gate : [] });
	return appendEvents(sql, asker, memberId, events, { counted, fits });
}
