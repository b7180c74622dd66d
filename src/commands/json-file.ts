// What a command is given to read: one JSON file by name, or standard input.
import { createReadStream } from 'node:fs';
import { ok, refuse, type Result } from '../lib/drafting/result.ts';

/** More than any input a command takes; in bytes. */
const most = 1_000_000;

async function readInput(name: string): Promise<Result<Uint8Array>> {
	const chunks: Uint8Array[] = [];
	let size = 0;
	try {
		// Read bit by bit, so that a file without an end is left in good time.
		const stream: AsyncIterable<Uint8Array> = name === '-' ? process.stdin : createReadStream(name);
		for await (const chunk of stream) {
			size += chunk.length;
			if (size > most) return refuse({ code: 'file-too-large', path: '', expected: most, received: size });
			chunks.push(chunk);
		}
	} catch (error) {
		return refuse({ code: 'file-not-read', path: '', expected: 'a file', received: error instanceof Error && 'code' in error ? error.code : name });
	}
	return ok(Buffer.concat(chunks));
}

function readJson(bytes: Uint8Array): Result<unknown> {
	try {
		// Fatal: text that isn't UTF-8 is refused, not guessed at. A byte order mark is passed over.
		return ok(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
	} catch {
		return refuse({ code: 'not-json', path: '', expected: 'JSON', received: `${bytes.length} bytes` });
	}
}

/** FILE, or - for standard input. */
export async function readJsonFile(name: string | undefined): Promise<Result<unknown>> {
	if (name === undefined) return refuse({ code: 'one-file', path: '', expected: 'FILE or -', received: 0 });
	const bytes = await readInput(name);
	return bytes.ok ? readJson(bytes.value) : bytes;
}
