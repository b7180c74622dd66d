// Without the script a form says the same things as the queue does. Its ids are drawn when the page is made, so that
// sending a form twice says it once.
import { randomUUID } from 'node:crypto';
import { error } from '@sveltejs/kit';
import type { EventBody, NewEvent } from '$lib/class/event.ts';
import { foldSkirt } from '$lib/class/skirt-state.ts';
import type { Result } from '$lib/drafting/result.ts';
import { readEvents } from '$lib/server/log.ts';
import { keepSaid } from './keep.server.ts';

/** Ids for the events that a page's form may make. */
export const drawIds = (count: number): readonly string[] => Array.from({ length: count }, () => randomUUID());

const isUuid = (text: unknown): text is string => typeof text === 'string' && /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(text);

/** Keeps what a form said. `ids` are the form's own, in the order of the bodies; a missing one is drawn. */
export async function sayInForm(locals: App.Locals, ids: readonly FormDataEntryValue[], bodies: readonly EventBody[]): Promise<Result<unknown>> {
	const { sql, asker, membership } = locals;
	if (!asker || !membership) error(404);
	const { counter } = foldSkirt(await readEvents(sql, asker, membership.memberId));
	const events: readonly NewEvent[] = bodies.map((body, index) => ({
		id: isUuid(ids[index]) ? ids[index] : randomUUID(), device: `form-${membership.memberId}`, counter: counter + 1 + index, body
	}));
	const said = await keepSaid(locals, events, 'here');
	// The form knows its fields by their own names.
	return said.ok ? said : { ok: false, issues: said.issues.map((issue) => ({ ...issue, path: issue.path.replace(/^\d+\.body\./, '') })) };
}
