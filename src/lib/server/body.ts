// The body of a request that Node carries.
import type { IncomingMessage } from 'node:http';
import { ok, refuse, type Result } from '../drafting/result.ts';
import { bodyLimit } from './web.ts';

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** Reads a JSON body of at most `most` bytes, and keeps no more than that, whatever its head promises. */
export async function readJson(request: IncomingMessage, most = bodyLimit): Promise<Result<unknown>> {
	const type = request.headers['content-type'] ?? null;
	if (!/^application\/json\b/i.test(type ?? '')) return refuse({ code: 'not-json', path: '', expected: 'application/json', received: type });
	const read = await readBytes(request, most);
	if (!read) return refuse({ code: 'body-large', path: '', expected: most });
	try {
		return ok(JSON.parse(utf8.decode(read)));
	} catch {
		return refuse({ code: 'not-json', path: '', expected: 'JSON in UTF-8' });
	}
}

/** Null when there is more. Fails when the asker goes away in the middle. */
function readBytes(request: IncomingMessage, most: number): Promise<Buffer | null> {
	return new Promise((done, failed) => {
		const parts: Buffer[] = [];
		let size = 0;
		request.on('data', (part: Buffer) => {
			size += part.length;
			if (size <= most) parts.push(part);
			else done(null);
		});
		request.on('end', () => done(parts.length === 1 ? parts[0]! : Buffer.concat(parts)));
		request.on('error', failed);
	});
}
