import { json } from '@sveltejs/kit';
import type { Issue } from '$lib/drafting/result.ts';
import { readJson } from '$lib/server/request.ts';
import { issueSentence } from '$lib/ui/wording/issue.ts';
import { keepSaid } from '../keep.server.ts';
import { readOwnLog } from '../own-log.server.ts';
import type { RequestHandler } from './$types';

/** Lengths come with their own unit in an event; what is said about them is in centimetres. */
const inWords = (issue: Issue) => ({ ...issue, says: issueSentence(issue, 'cm') });

/** Takes a device's events: `{events}` → `{kept: ids}`, after commit; or `{issues}`, each with its sentence, and keeps none. */
export const POST: RequestHandler = async ({ request, locals }) => {
	const body = await readJson(request);
	if (!body.ok) return json({ issues: body.issues.map(inWords) }, { status: body.issues[0]?.code === 'body-large' ? 413 : 400 });
	const events = body.value !== null && typeof body.value === 'object' && 'events' in body.value ? body.value.events : undefined;
	const said = await keepSaid(locals, events, 'on her device');
	return said.ok ? json(said.value) : json({ issues: said.issues.map(inWords) }, { status: 400 });
};

/** The log as it stands now: `{events, review, drafted, rules}`. */
export const GET: RequestHandler = async ({ locals, params }) => json((await readOwnLog(locals, params.class)).log);
