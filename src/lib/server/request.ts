// What a request is, before any route sees it: from our own pages or not, how large, what it needs.
import { may, type Role } from '../class/permission.ts';
import type { RouteNeed } from '../class/route.ts';
import { ok, refuse, type Result } from '../drafting/result.ts';
import type { Asker, Membership } from './asker.ts';

/**
 * Whether a request that changes things comes from our own pages. Browsers send `Sec-Fetch-Site` to https and
 * localhost only, so on plain http in a hall `Origin` decides. A request with neither comes from no form of ours.
 */
export function isFromHere(request: Request, url: URL): boolean {
	if (request.method === 'GET' || request.method === 'HEAD') return true;
	const site = request.headers.get('sec-fetch-site');
	if (site !== null && site !== 'same-origin' && site !== 'none') return false;
	const origin = request.headers.get('origin');
	return origin === null ? site !== null : origin === url.origin;
}

/** The role in which someone asks: in a class, what she is there once admitted; elsewhere, what she may be at all. */
export function roleOf(asker: Asker | null, inClass: boolean, membership: Membership | null): Role {
	if (!asker) return 'visitor';
	if (inClass) return membership?.status === 'admitted' ? membership.role : 'visitor';
	return asker.person.canTeach ? 'teacher' : 'learner';
}

export const mayEnter = (need: RouteNeed, role: Role): boolean => need === 'anyone' || may(role, need, need.scope);

/** Reads a JSON body of at most `most` bytes, without taking in more than that. */
export async function readJson(request: Request, most = 65_536): Promise<Result<unknown>> {
	if (!/^application\/json\b/i.test(request.headers.get('content-type') ?? '')) {
		return refuse({ code: 'not-json', path: '', expected: 'application/json', received: request.headers.get('content-type') });
	}
	const chunks: Uint8Array[] = [];
	let size = 0;
	const reader = request.body?.getReader();
	for (let part = await reader?.read(); part && !part.done; part = await reader!.read()) {
		size += part.value.byteLength;
		if (size > most) {
			await reader!.cancel();
			return refuse({ code: 'body-large', path: '', expected: most });
		}
		chunks.push(part.value);
	}
	try {
		return ok(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks))));
	} catch {
		return refuse({ code: 'not-json', path: '', expected: 'JSON in UTF-8' });
	}
}
