// npm run --silent paper -- FILE --as pdf|svg|dxf --sheet a4 --scale 1 --out PATH: the same JSON in as `draft` takes, the
// pattern in a file, and on the standard output how many sheets and which pieces. Exits 2 with issues when it can't.
import { writeFile } from 'node:fs/promises';
import type { Piece } from '../lib/drafting/piece.ts';
import { ok, refuse, type Result } from '../lib/drafting/result.ts';
import { checkAnyInput, draftAny, type AnyDraft } from '../lib/drafting/style.ts';
import { cutterPieces } from '../lib/paper/cutter.ts';
import { writeDxf } from '../lib/paper/dxf.ts';
import { pieceTitle, sizeWords, skirtWords } from '../lib/paper/pattern-piece.ts';
import { patternSheets, sheetsOfPieces } from '../lib/paper/pattern-sheets.ts';
import { writeSvg } from '../lib/paper/svg.ts';
import { draftMark } from '../lib/server/digest.ts';
import { writePdf } from '../lib/server/pdf.ts';
import { readJsonFile } from './json-file.ts';
import { readPaperOptions, type PaperOptions } from './paper-options.ts';

interface PrintedPiece {
	readonly name: string;
	readonly title: string;
	readonly count: number;
	readonly cloth: Piece['cloth'];
	/** The number of its first sheet, and how many it takes. */
	readonly first: number;
	readonly sheets: number;
}
interface Made {
	readonly sheets: number;
	readonly pieces: readonly PrintedPiece[];
}

async function paperFrom(args: readonly string[]): Promise<Result<Made>> {
	const read = readPaperOptions(args, new Date());
	if (!read.ok) return read;
	const { file, out, ...options } = read.value;
	const json = await readJsonFile(file);
	const input = json.ok ? checkAnyInput(json.value) : json;
	if (!input.ok) return input;
	const drafted = draftAny(input.value.body, input.value.skirt);
	if (!drafted.ok) return drafted;
	const { bytes, made } = await write(drafted.value, { ...options, unit: options.unit ?? (input.value.unit === 'in' ? 'in' : 'cm') });
	try {
		await writeFile(out, bytes);
	} catch (error) {
		return refuse({ code: 'file-not-written', path: 'out', expected: 'a file', received: error instanceof Error && 'code' in error ? error.code : out });
	}
	return ok(made);
}

type Written = Omit<PaperOptions, 'file' | 'out' | 'unit'> & { readonly unit: 'cm' | 'in' };
async function write(draft: AnyDraft, { as, ...rest }: Written): Promise<{ readonly bytes: Uint8Array | string; readonly made: Made }> {
	const options = { ...rest, mark: draftMark(draft) };
	const size = sizeWords(options.scale);
	const title = `Skirtwright pattern, ${skirtWords(draft)}, ${size}`;
	if (as === 'pdf') {
		const sheets = patternSheets(draft, options);
		const bytes = await writePdf(sheets, { title, lang: 'en-GB', date: new Date(`${options.date}T00:00:00Z`) });
		const pieces = sheetsOfPieces(draft, options).flatMap(({ pattern, first, count }) => [pattern.piece, ...pattern.also].map((piece) => printed(piece, first, count)));
		return { bytes, made: { sheets: sheets.length, pieces } };
	}
	const pieces = cutterPieces(draft, options);
	const bytes = as === 'svg' ? writeSvg(pieces, { title, lang: 'en-GB', size }) : writeDxf(pieces, { style: skirtWords(draft), date: options.date });
	// One drawing holds them all.
	return { bytes, made: { sheets: 1, pieces: draft.pieces.map((piece) => printed(piece, 1, 1)) } };
}
const printed = (piece: Piece, first: number, sheets: number): PrintedPiece => ({ name: piece.name, title: pieceTitle(piece), count: piece.count, cloth: piece.cloth, first, sheets });

// A reader that has seen enough closes the pipe; that is no mistake.
process.stdout.on('error', () => process.exit(0));
const made = await paperFrom(process.argv.slice(2));
if (!made.ok) process.exitCode = 2;
process.stdout.write(`${JSON.stringify(made.ok ? made.value : { issues: made.issues })}\n`);
