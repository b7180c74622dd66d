// A PDF read back by poppler, as a printer would: its lines in millimetres from the sheet's lower left corner, its words, its ink.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Point } from '../../src/lib/drafting/geometry/point.ts';

/** One stroke with its corners; a curve is read at 32 points for each of its cubics. */
export interface Stroke {
	readonly points: readonly Point[];
	readonly curved: boolean;
	/** mm. */
	readonly weight: number;
	readonly dashes: number;
}
export interface PrintedSheet {
	readonly width: number;
	readonly height: number;
	readonly strokes: readonly Stroke[];
	/** Filled shapes of three corners, in the order they were drawn. */
	readonly wedges: readonly (readonly [Point, Point, Point])[];
	readonly words: string;
	/** The least distance of any ink from the sheet's edge, in whole pixels, mm. */
	readonly clear: number;
}
export interface Printed {
	/** What pdfinfo says. */
	readonly info: string;
	readonly sheets: readonly PrintedSheet[];
}

const POINT = 25.4 / 72;
function poppler(program: string, args: readonly string[]): Buffer {
	const { status, stdout, stderr } = spawnSync(program, args, { maxBuffer: 1 << 28 });
	if (status !== 0) throw new Error(`${program} ended with ${status}: ${String(stderr)}`);
	return stdout;
}

/** `dots`: pixels to the millimetre in which ink is looked for. */
export function readPdf(bytes: Uint8Array, dots = 2): Printed {
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-pdf-'));
	try {
		const file = join(folder, 'sheets.pdf');
		writeFileSync(file, bytes);
		const count = Number(/Pages:\s+(\d+)/.exec(String(poppler('pdfinfo', [file])))?.[1]);
		const info = String(poppler('pdfinfo', ['-f', '1', '-l', String(count), file]));
		const sizes = [...info.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)].map((m): Point => [Number(m[1]) * POINT, Number(m[2]) * POINT]);
		// Form feeds end pages.
		const words = String(poppler('pdftotext', ['-layout', file, '-'])).split('\f');
		poppler('pdftoppm', ['-gray', '-r', String(25.4 * dots), file, join(folder, 'ink')]);
		const digits = String(count).length;
		const sheets = sizes.map(([width, height], i): PrintedSheet => {
			const page = String(i + 1);
			const svg = String(poppler('pdftocairo', ['-svg', '-noshrink', '-nocenter', '-f', page, '-l', page, file, '-']));
			return { width, height, strokes: strokesOf(svg, height), wedges: wedgesOf(svg, height), words: words[i]!, clear: clearOf(readFileSync(join(folder, `ink-${page.padStart(digits, '0')}.pgm`)), dots) };
		});
		return { info, sheets };
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

function strokesOf(svg: string, height: number): readonly Stroke[] {
	return [...svg.matchAll(/<path style="fill:none;([^"]*)" d="([^"]*)"(?: transform="matrix\(([^)]*)\)")?/g)].map(([, style, d, matrix]): Stroke => {
		const [a, b, c, e, x, y] = matrix === undefined ? [1, 0, 0, 1, 0, 0] : (matrix.split(',').map(Number) as [number, number, number, number, number, number]);
		const put = ([px, py]: Point): Point => [(a * px + c * py + x) * POINT, height - (b * px + e * py + y) * POINT];
		const weight = Number(/stroke-width:([\d.]+)/.exec(style!)?.[1]) * Math.sqrt(Math.abs(a * e - b * c)) * POINT;
		const dashes = /stroke-dasharray:([^;]+)/.exec(style!)?.[1]?.split(',').length ?? 0;
		return { points: pointsOf(d!).map(put), curved: d!.includes('C'), weight, dashes };
	});
}

function wedgesOf(svg: string, height: number): PrintedSheet['wedges'] {
	return [...svg.matchAll(/<path style="[^"]*fill:rgb[^"]*" d="([^"]*)"(?: transform="matrix\(([^)]*)\)")?/g)].flatMap(([, d, matrix]) => {
		const [a, b, c, e, x, y] = matrix === undefined ? [1, 0, 0, 1, 0, 0] : (matrix.split(',').map(Number) as [number, number, number, number, number, number]);
		const put = ([px, py]: Point): Point => [(a * px + c * py + x) * POINT, height - (b * px + e * py + y) * POINT];
		const [p, q, r, again, more] = pointsOf(d!).map(put);
		// Closed, and whatever is moved to after that is no corner.
		const three = p && q && r && (!again || Math.hypot(again[0] - p[0], again[1] - p[1]) < 1e-6) && (!more || Math.hypot(more[0] - p[0], more[1] - p[1]) < 1e-6);
		return three ? [[p, q, r] as const] : [];
	});
}

function pointsOf(d: string): readonly Point[] {
	const points: Point[] = [];
	for (const [, letter, rest] of d.matchAll(/([MLCZ])([^MLCZ]*)/g)) {
		const n = rest!.trim().split(/\s+/).map(Number);
		if (letter === 'Z') points.push(points[0]!);
		else if (letter !== 'C') points.push([n[0]!, n[1]!]);
		else {
			const [from, p, q, to] = [points[points.length - 1]!, [n[0]!, n[1]!], [n[2]!, n[3]!], [n[4]!, n[5]!]] as const;
			for (let i = 1; i <= 32; i++) {
				const [t, u] = [i / 32, 1 - i / 32];
				const on = (axis: 0 | 1): number => u ** 3 * from[axis] + 3 * u * u * t * p[axis] + 3 * u * t * t * q[axis] + t ** 3 * to[axis];
				points.push([on(0), on(1)]);
			}
		}
	}
	return points;
}

/** A picture of greys: how many mm from its edge the nearest ink is. */
function clearOf(pgm: Buffer, dots: number): number {
	const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString('latin1'));
	if (!head) throw new Error('not a picture of greys');
	const [wide, high] = [Number(head[1]), Number(head[2])];
	const at = head[0].length;
	let least = Infinity;
	for (let y = 0; y < high; y++) for (let x = 0; x < wide; x++) {
		if (pgm[at + y * wide + x]! < 245) least = Math.min(least, x, y, wide - 1 - x, high - 1 - y);
	}
	return least / dots;
}

export const lengthOf = (points: readonly Point[]): number => points.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - points[i]![0], y - points[i]![1]), 0);
