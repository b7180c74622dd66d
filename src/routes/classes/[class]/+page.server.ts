import { randomUUID } from 'node:crypto';
import { error, fail } from '@sveltejs/kit';
import { foldSkirt } from '$lib/class/skirt-state.ts';
import { stagesOf } from '$lib/lesson/lesson.ts';
import { appendEvents, readClassLogs } from '$lib/server/log.ts';
import { TABLE } from './table-key.ts';
import { readTable } from './table.server.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, depends }) => {
	depends(TABLE);
	const { lesson, rows } = await readTable(locals, params.class);
	return {
		rows, now: Date.now(), classId: params.class,
		stages: stagesOf(lesson).map(({ id, title, steps }) => ({ id, title, steps: steps.map(({ id, title }) => ({ id, title })) }))
	};
};

export const actions: Actions = {
	/** A hand has been answered. */
	async helped({ locals: { sql, asker, membership }, params, request }) {
		if (!asker || !membership) error(404);
		const memberId = String((await request.formData()).get('member') ?? '');
		const log = (await readClassLogs(sql, asker, params.class)).find((log) => log.memberId === memberId);
		if (!log) error(404);
		const { counter, help } = foldSkirt(log.events);
		// Answered by someone else meanwhile: nothing is left to say.
		if (!help) return { helped: memberId };
		const said = await appendEvents(sql, asker, memberId, [{
			id: randomUUID(), device: `form-${membership.memberId}`, counter: counter + 1, body: { kind: 'helped', ...(help.step !== undefined && { step: help.step }) }
		}], { counted: 'here' });
		return said.ok ? { helped: memberId } : fail(400, { issues: said.issues });
	}
};
