// npm run --silent draft -- FILE (or - for standard input): JSON in, the draft as JSON out. Exits 2 with issues when it can't.
import { refuse } from '../lib/drafting/result.ts';
import { checkAnyInput, draftAsMade } from '../lib/drafting/style.ts';
import { readJsonFile } from './json-file.ts';

async function draftFrom(names: readonly string[]): Promise<ReturnType<typeof draftAsMade>> {
	if (names.length > 1) return refuse({ code: 'one-file', path: '', expected: 'FILE or -', received: names.length });
	const json = await readJsonFile(names[0]);
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
