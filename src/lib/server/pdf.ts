// Sheets as a PDF at true scale: lines and cubics only, fonts embedded as subsets, the same bytes for the same sheets and date.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import type { Edge } from '../drafting/geometry/outline.ts';
import type { Point } from '../drafting/geometry/point.ts';
import { PENS } from '../paper/pen.ts';
import { points, type Face, type Item, type PathItem, type Sheet, type TextItem } from '../paper/sheet.ts';
import { unpackWoff } from './woff.ts';

export interface PdfWords {
	/** What the document is, with nobody's name or figures in it. */
	readonly title: string;
	/** BCP 47. */
	readonly lang: string;
	/** Written as the date it was made. */
	readonly date: Date;
}

const FACES: Readonly<Record<Face, readonly [family: 'literata' | 'commissioner', weight: number]>> = {
	read: ['literata', 400], readStrong: ['literata', 700],
	label: ['commissioner', 500], labelStrong: ['commissioner', 700], heading: ['commissioner', 800]
};
/** Each file has a part of the letters; a letter is set from the first that has it. */
const SCRIPTS = ['latin', 'latin-ext', 'greek', 'cyrillic', 'vietnamese'] as const;

const find = createRequire(import.meta.url);
/** Where a font file lies; null where the family hasn't that script. */
function pathOf(face: Face, script: string): string | null {
	const [family, weight] = FACES[face];
	try {
		return find.resolve(`@fontsource/${family}/files/${family}-${script}-${weight}-normal.woff`);
	} catch {
		return null;
	}
}
const files = new Map<string, Promise<Buffer>>();
/** A font file is read and unpacked once; it never changes while the server runs. */
function fontFile(name: string): Promise<Buffer> {
	const [face, script] = name.split('/') as [Face, string];
	const path = pathOf(face, script);
	if (!path) throw new Error(`no font file for ${name}`);
	const file = files.get(name) ?? readFile(path).then(unpackWoff);
	files.set(name, file);
	return file;
}

/** What pdfkit knows of an opened font and its types leave out. */
interface OpenFont {
	readonly font: { hasGlyphForCodePoint(code: number): boolean };
}
type Doc = PDFKit.PDFDocument;

export async function writePdf(sheets: readonly Sheet[], { title, lang, date }: PdfWords): Promise<Uint8Array> {
	if (sheets.length === 0) throw new Error('a PDF of no sheets');
	const needed = new Set(sheets.flatMap((sheet) => sheet.items.flatMap((item) => (item.item === 'text' ? fontsFor(item) : []))));
	const bytes = new Map(await Promise.all([...needed].map(async (name) => [name, await fontFile(name)] as const)));
	const doc = new PDFDocument({
		autoFirstPage: false, lang, displayTitle: true, pdfVersion: '1.7', font: null as unknown as string,
		info: { Title: title, Creator: 'Skirtwright', Producer: 'Skirtwright', CreationDate: date }
	});
	for (const [name, file] of bytes) doc.registerFont(name, file);
	const chunks: Uint8Array[] = [];
	const written = new Promise<Uint8Array>((resolve, reject) => {
		doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
		doc.on('end', () => resolve(Buffer.concat(chunks)));
		doc.on('error', reject);
	});
	for (const sheet of sheets) {
		doc.addPage({ size: [points(sheet.width), points(sheet.height)], margin: 0 });
		for (const item of sheet.items) writeItem(doc, item, sheet.height);
	}
	doc.end();
	return written;
}

/** The files that a text may need: the basic one always, the others only for letters beyond it. */
function fontsFor({ face, text }: TextItem): string[] {
	const basic = /^[\u0000-\u00ff’‘“”–—−÷×]*$/.test(text);
	return SCRIPTS.filter((script, i) => i === 0 || (!basic && pathOf(face, script))).map((script) => `${face}/${script}`);
}

function writeItem(doc: Doc, item: Item, height: number): void {
	if (item.item === 'text') writeText(doc, item, height);
	else writePath(doc, item, height);
}

function writePath(doc: Doc, { path, closed, pen, fill, run }: PathItem, height: number): void {
	const at = ([x, y]: Point): [number, number] => [points(x), points(height - y)];
	doc.moveTo(...at(path.start));
	let from = path.start;
	for (const edge of path.edges) {
		if (!edge.centre) doc.lineTo(...at(edge.end));
		else for (const [a, b, c] of arcCubics(from, edge)) doc.bezierCurveTo(...at(a), ...at(b), ...at(c));
		from = edge.end;
	}
	if (closed) doc.closePath();
	const stroke = pen && PENS[pen];
	if (stroke) {
		doc.lineWidth(points(stroke.weight)).lineCap(stroke.round ? 'round' : 'butt').lineJoin('miter').strokeColor('black');
		if (stroke.dash) writeDash(doc, stroke.dash.map(points), points(run ?? 0));
		else doc.undash();
	}
	// PDF greys: 0 is ink.
	if (fill !== undefined) doc.fillColor([255 * fill, 255 * fill, 255 * fill] as unknown as string);
	if (stroke && fill !== undefined) doc.fillAndStroke();
	else if (stroke) doc.stroke();
	else if (fill !== undefined) doc.fill();
}

/** pdfkit refuses a dash of length 0, which with a round end is a dot. */
function writeDash(doc: Doc, dash: readonly number[], phase: number): void {
	doc.addContent(`[${dash.map((d) => d.toFixed(3)).join(' ')}] ${phase.toFixed(3)} d`);
}

/** An arc as cubics that leave it by under a thousandth of a millimetre: error ≈ R·(4/27)·sin⁶(φ/4)/cos²(φ/4) (circle geometry). */
export function arcCubics(from: Point, { end, centre, turn }: Edge): readonly (readonly [Point, Point, Point])[] {
	if (!centre) return [];
	const radius = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
	const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
	let count = Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2)));
	const leaves = (n: number): number => (radius * 4 * Math.sin(Math.abs(turn) / n / 4) ** 6) / (27 * Math.cos(turn / n / 4) ** 2);
	while (leaves(count) > 0.001) count++;
	const step = turn / count;
	const reach = (4 / 3) * Math.tan(step / 4);
	return Array.from({ length: count }, (_, i) => {
		const [a, b] = [start + step * i, start + step * (i + 1)];
		const on = (angle: number, by: number): Point => [
			centre[0] + radius * (Math.cos(angle) - by * Math.sin(angle)),
			centre[1] + radius * (Math.sin(angle) + by * Math.cos(angle))
		];
		return [on(a, reach), on(b, -reach), i === count - 1 ? end : on(b, 0)] as const;
	});
}

/** `5/8` becomes 5⁄8 with the fraction slash, which these fonts set as small figures with a bar. */
const withFractions = (text: string): string => text.replace(/(\d+)\/(\d+)/g, '$1\u2044$2');

function writeText(doc: Doc, item: TextItem, height: number): void {
	const runs = runsOf(doc, item, withFractions(item.text));
	const options = optionsOf(item);
	// Nothing has to be measured where one run begins at its place.
	const measured = runs.length > 1 || (item.anchor ?? 'start') !== 'start';
	const lengths = runs.map(({ font, text }) => (measured ? doc.font(font, item.size).widthOfString(text, options) : 0));
	const length = lengths.reduce((sum, part) => sum + part, 0);
	let x = item.anchor === 'end' ? -length : item.anchor === 'middle' ? -length / 2 : 0;
	doc.save();
	doc.translate(points(item.at[0]), points(height - item.at[1]));
	if (item.angle) doc.rotate((-item.angle * 180) / Math.PI);
	doc.fillColor('black');
	for (const [i, { font, text }] of runs.entries()) {
		doc.font(font, item.size).text(text, x, 0, options);
		x += lengths[i]!;
	}
	doc.restore();
}

const PLAIN: PDFKit.Mixins.TextOptions = { lineBreak: false, baseline: 'alphabetic' };
/** Columns of figures in the reading face stand under each other; named features cost pdfkit its cache of set words. */
const optionsOf = ({ face, text }: TextItem): PDFKit.Mixins.TextOptions =>
	(face === 'read' || face === 'readStrong') && /^[\d .]+$/.test(text) ? { ...PLAIN, features: ['tnum', 'kern'] } : PLAIN;

/** A text in stretches, each in the first font file that has its letters. */
function runsOf(doc: Doc, item: TextItem, text: string): readonly { readonly font: string; readonly text: string }[] {
	const fonts = fontsFor(item);
	if (fonts.length === 1) return [{ font: fonts[0]!, text }];
	const runs: { font: string; text: string }[] = [];
	for (const letter of text) {
		const font = fonts.find((name) => (doc.font(name) as unknown as { _font: OpenFont })._font.font.hasGlyphForCodePoint(letter.codePointAt(0)!)) ?? fonts[0]!;
		const last = runs[runs.length - 1];
		if (last?.font === font) last.text += letter;
		else runs.push({ font, text: letter });
	}
	return runs;
}
