import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { polar, type Point } from '../../src/lib/drafting/geometry/point.ts';
import { ADVANCES } from '../../src/lib/paper/letter.ts';
import { linePath } from '../../src/lib/paper/diagrams/shape.ts';
import { sheetOf, upright, type Face, type Item } from '../../src/lib/paper/sheet.ts';
import { arcCubics, writePdf } from '../../src/lib/server/pdf.ts';
import { unpackWoff } from '../../src/lib/server/woff.ts';

const about = { title: 'Hand-out', lang: 'en-GB', date: new Date('2026-11-25T00:00:00Z') };
const word = (text: string, face: Face = 'read'): Item => ({ item: 'text', at: [40, 200], text, face, size: 12 });

/** What poppler says of a PDF. */
function ask(program: 'pdftotext' | 'pdffonts' | 'pdfinfo', bytes: Uint8Array): string {
	const folder = mkdtempSync(join(tmpdir(), 'skirtwright-pdf-'));
	try {
		const file = join(folder, 'a.pdf');
		writeFileSync(file, bytes);
		const { status, stdout, stderr } = spawnSync(program, program === 'pdftotext' ? [file, '-'] : [file], { encoding: 'utf8' });
		if (status !== 0) throw new Error(`${program}: ${stderr}`);
		return stdout;
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

describe('the PDF writer', () => {
	it('embeds every font as a subset, so that a sheet prints alike everywhere', async () => {
		const faces: readonly Face[] = ['read', 'readStrong', 'label', 'labelStrong', 'heading'];
		const fonts = ask('pdffonts', await writePdf([sheetOf('a4', upright('a4'), 'all', faces.map((face) => word('Cut 28', face)))], about)).trim().split('\n').slice(2);
		expect(fonts).toHaveLength(5);
		// Columns "emb sub uni".
		for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+\S+ .* yes yes yes /);
	});
	it('writes real text: fractions as figures with a bar, quotes, and letters of other scripts', async () => {
		const text = ask('pdftotext', await writePdf([sheetOf('a4', upright('a4'), 'text', [word('Cut 28 5/8 in – “Zażółć” Ωλ Жук 1 ÷ 3.14', 'label')])], about));
		expect(text).toContain('Cut 28 5⁄8 in – “Zażółć” Ωλ Жук 1 ÷ 3.14');
	});
	it('says its title, its language and its date, and nothing else about anyone', async () => {
		const bytes = await writePdf([sheetOf('letter', { width: 279.4, height: 215.9 }, 'a name that stays out', [word('Skirt')])], about);
		const info = ask('pdfinfo', bytes);
		expect(info).toMatch(/^Title: +Hand-out$/m);
		expect(info).toMatch(/^Creator: +Skirtwright$/m);
		expect(info).toMatch(/^Page size: +792 x 612 pts \(letter\)/m);
		expect(info).not.toMatch(/^(Author|Subject|Keywords)/m);
		const raw = Buffer.from(bytes).toString('latin1');
		expect(raw).toContain('/Lang (en-GB)');
		expect(raw).not.toContain('a name that stays out');
	});
	it('gives the same bytes for the same sheets and date', async () => {
		const write = (): Promise<Uint8Array> => writePdf([sheetOf('a4', upright('a4'), 'x', [word('Skirt'), { item: 'path', path: linePath([20, 20], [60, 20]), closed: false, pen: 'stitch', run: 3 }])], about);
		expect(Buffer.compare(await write(), await write())).toBe(0);
	});
	it('refuses to write a PDF of no sheets', async () => {
		await expect(writePdf([], about)).rejects.toThrow('no sheets');
	});
});

describe('an arc as cubics', () => {
	it('leaves the arc by under 0.01 mm and ends exactly where it ends, up to a 2 m radius and two turns', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 5, max: 2000, noNaN: true }), fc.double({ min: -7, max: 7, noNaN: true }), fc.double({ min: 0.01, max: 12, noNaN: true }), fc.boolean(),
				(radius, start, angle, back) => {
					const centre: Point = [12, -34];
					const turn = back ? -angle : angle;
					const [from, end] = [polar(centre, radius, start), polar(centre, radius, start + turn)];
					const cubics = arcCubics(from, { name: '', end, centre, turn });
					let at = from;
					for (const [a, b, to] of cubics) {
						for (let i = 0; i <= 20; i++) {
							const [t, u] = [i / 20, 1 - i / 20];
							const on = (axis: 0 | 1): number => u ** 3 * at[axis] + 3 * u * u * t * a[axis] + 3 * u * t * t * b[axis] + t ** 3 * to[axis];
							expect(Math.abs(Math.hypot(on(0) - centre[0], on(1) - centre[1]) - radius)).toBeLessThan(0.01);
						}
						at = to;
					}
					expect(at).toEqual(end);
				}
			)
		);
	});
});

describe('a font unpacked', () => {
	it('has every table whole: its checksums are those that the font itself carries (OpenType, table directory)', () => {
		const font = unpackWoff(readFileSync(createRequire(import.meta.url).resolve('@fontsource/literata/files/literata-latin-400-normal.woff')));
		const count = font.readUInt16BE(4);
		expect(count).toBeGreaterThan(8);
		for (let i = 0; i < count; i++) {
			const [tag, said, offset, length] = [font.toString('latin1', 12 + 16 * i, 16 + 16 * i), ...[4, 8, 12].map((at) => font.readUInt32BE(12 + 16 * i + at))] as [string, number, number, number];
			let sum = 0;
			// The head table's own adjustment counts as nothing.
			for (let at = 0; at < length; at += 4) if (!(tag === 'head' && at === 8)) sum = (sum + font.readUInt32BE(offset + at)) >>> 0;
			expect(sum, tag).toBe(said);
		}
	});
	it('refuses what is no WOFF', () => {
		expect(() => unpackWoff(Buffer.from('a page of something else'))).toThrow('not a WOFF');
	});
});

describe('the widths that lines are broken by', () => {
	it('are those of the fonts that are embedded', () => {
		const files: Readonly<Record<Face, string>> = {
			read: 'literata/files/literata-latin-400', readStrong: 'literata/files/literata-latin-700', label: 'commissioner/files/commissioner-latin-500',
			labelStrong: 'commissioner/files/commissioner-latin-700', heading: 'commissioner/files/commissioner-latin-800'
		};
		const find = createRequire(import.meta.url);
		const doc = new PDFDocument({ autoFirstPage: false });
		for (const [face, file] of Object.entries(files) as [Face, string][]) {
			doc.font(find.resolve(`@fontsource/${file}-normal.woff`), 1000);
			const widths = Array.from({ length: 95 }, (_, i) => Math.round(doc.widthOfString(String.fromCharCode(32 + i))));
			// The fonts' units are thousandths, or rounded to them.
			for (const [i, width] of widths.entries()) expect(Math.abs(ADVANCES[face][i]! - width), `${face} ${String.fromCharCode(32 + i)}`).toBeLessThanOrEqual(1);
		}
	});
});
