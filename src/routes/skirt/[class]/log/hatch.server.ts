// A device's events come in here, and the log as it stands goes out. Not a route of SvelteKit's: hooks.server.ts opens it.
import type { Issue } from '$lib/drafting/result.ts';
import { readJson } from '$lib/server/body.ts';
import { openHatch, type Answering } from '$lib/server/hatch.ts';
import { issueSentence } from '$lib/ui/wording/issue.ts';
import { keepSaid } from '../keep.server.ts';
import { readOwnLog } from '../own-log.server.ts';

/** Lengths come with their own unit in an event; what is said about them is in centimetres. */
const inWords = (issues: readonly Issue[]) => ({ issues: issues.map((issue) => ({ ...issue, says: issueSentence(issue, 'cm') })) });

/** Takes a device's events: `{events}` → `{kept: ids}`, after commit; or `{issues}`, each with its sentence, and keeps none. */
export const POST: Answering = async (who, _, request) => {
	const body = await readJson(request);
	if (!body.ok) return body.issues[0]?.code === 'body-large' ? { status: 413, json: inWords(body.issues), hangUp: true } : { status: 400, json: inWords(body.issues) };
	const events = body.value !== null && typeof body.value === 'object' && 'events' in body.value ? body.value.events : undefined;
	const said = await keepSaid(who, events, 'on her device');
	return said.ok ? { status: 200, json: said.value } : { status: 400, json: inWords(said.issues) };
};

/** The log as it stands now: `{events, review, drafted, rules}`. */
export const GET: Answering = async (who, classId) => ({ status: 200, json: (await readOwnLog(who, classId)).log });

export const log = openHatch('/skirt/[class]/log', { GET, POST });
