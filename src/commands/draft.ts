// npm run --silent draft -- FILE (or - for standard input): JSON in, the draft as JSON out. Exits 2 with issues when it can't.
import { createReadStream } from 'node:fs';
import { ok, refuse, type Result } from '../lib/drafting/result.ts';
import { checkAnyInput, draftAsMade } from '../lib/drafting/style.ts';

/** More than any draft's input; in bytes. */
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

async function draftFrom(names: readonly string[]): Promise<ReturnType<typeof draftAsMade>> {
	const [name] = names;
	if (name === undefined || names.length > 1) return refuse({ code: 'one-file', path: '', expected: 'FILE or -', received: names.length });
	const bytes = await readInput(name);
	const json = bytes.ok ? readJson(bytes.value) : bytes;
	const input = json.ok ? checkAnyInput(json.value) : json;
	return input.ok ? draftAsMade(input.value) : input;
}

// A reader that has seen enough closes the pipe; that is no mistake.
process.stdout.on('error', () => process.exit(0));
const drafted = await draftFrom(process.argv.slice(2));
if (drafted.ok) {
	const { draft: { unit, figures, pieces, seams, checks }, asMade } = drafted.value;
	process.stdout.write(`${JSON.stringify({ unit, figures, pieces, seams, checks, ...(asMade && { asMade }) })}\n`);
} else {
	process.exitCode = 2;
	process.stdout.write(`${JSON.stringify({ issues: drafted.issues })}\n`);
}
