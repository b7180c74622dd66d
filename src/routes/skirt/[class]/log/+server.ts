import { error, json } from '@sveltejs/kit';
import { appendEvents } from '$lib/server/log.ts';
import { readJson } from '$lib/server/request.ts';
import { readOwnLog } from '../own-log.server.ts';
import type { RequestHandler } from './$types';

/** Takes a device's events: `{events}` → `{kept: ids}`, after commit. */
export const POST: RequestHandler = async ({ request, locals: { sql, asker, membership } }) => {
	if (!asker || !membership) error(404);
	const body = await readJson(request);
	if (!body.ok) return json({ issues: body.issues }, { status: body.issues[0]?.code === 'body-large' ? 413 : 400 });
	const events = body.value !== null && typeof body.value === 'object' && 'events' in body.value ? body.value.events : undefined;
	const said = await appendEvents(sql, asker, membership.memberId, events);
	return said.ok ? json(said.value) : json({ issues: said.issues }, { status: 400 });
};

/** The log as it stands now: `{events, review, drafted, rules}`. */
export const GET: RequestHandler = async ({ locals, params }) => json((await readOwnLog(locals, params.class)).log);
