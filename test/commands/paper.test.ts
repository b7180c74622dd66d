// The paper command as it is run: from source, as a process of its own, its files read back by readers that aren't ours.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import DxfParser from 'dxf-parser';
import { parseSync } from 'svgson';
import { afterAll, expect, test } from 'vitest';
import { readPaperOptions } from '../../src/commands/paper-options.ts';
import packageJson from '../../package.json' with { type: 'json' };

const folder = mkdtempSync(join(tmpdir(), 'paper-'));
afterAll(() => rmSync(folder, { recursive: true }));
const out = (name: string): string => join(folder, name);

interface Ran { readonly code: number | null; readonly out: string; readonly err: string }
function run(args: readonly string[], input = ''): Promise<Ran> {
	return new Promise((resolve) => {
		// What the script in package.json says, without npm in between.
		const [, ...rest] = packageJson.scripts.paper.split(' ');
		const child = spawn('node_modules/.bin/tsx', [...rest, ...args]);
		let [out, err] = ['', ''];
		child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
		child.stderr.on('data', (chunk: Buffer) => (err += chunk.toString()));
		child.on('close', (code) => resolve({ code, out, err }));
		child.stdin.on('error', () => undefined);
		child.stdin.end(input);
	});
}

const body = { waist: 74, hip: 99, waistToHip: 20 };
const inputs = {
	flared: { unit: 'cm', body, skirt: { style: 'flared', share: 0.5, length: 58, panels: 2, lining: { shorterBy: 2.5 } } },
	tiered: { unit: 'cm', body, skirt: { style: 'tiered', length: 80, tiers: 3 } },
	pleated: { unit: 'cm', body, skirt: { style: 'pleated', kind: 'box', length: 60, pleats: 8, depth: 4 } }
} as const;
const files = Object.fromEntries(Object.entries(inputs).map(([style, input]) => {
	writeFileSync(out(`${style}.json`), JSON.stringify(input));
	return [style, out(`${style}.json`)];
})) as Readonly<Record<keyof typeof inputs, string>>;
interface Made { readonly sheets: number; readonly pieces: readonly { readonly name: string; readonly first: number; readonly sheets: number }[] }
function made(ran: Ran): Made {
	expect([ran.code, ran.err]).toEqual([0, '']);
	return JSON.parse(ran.out) as Made;
}

test('A pattern of each style is written as a PDF, and what is printed agrees with the file', async () => {
	for (const [style, sheet, points] of [['flared', 'roll914', 2590.87], ['tiered', 'a3', 841.89], ['pleated', 'a0', 2383.94]] as const) {
		const { sheets, pieces } = made(await run([files[style], '--as', 'pdf', '--sheet', sheet, '--out', out('a.pdf')]));
		const info = String(spawnSync('pdfinfo', ['-l', '99', out('a.pdf')]).stdout);
		expect(info).toMatch(new RegExp(`^Pages: +${sheets}$`, 'm'));
		// ISO 216 and rolls of 914 mm, in 1/72 in.
		for (const [, wide, high] of info.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+)/g)) expect(Math.min(Math.abs(Number(wide) - points), Math.abs(Number(high) - points))).toBeLessThan(0.02);
		const last = pieces.reduce((most, { first, sheets: count }) => Math.max(most, first + count - 1), 0);
		expect(last).toBe(sheets);
		expect(new Set(pieces.map(({ name }) => name)).size).toBe(pieces.length);
	}
}, 120_000);

test('The same pattern is written as SVG and as DXF, with the same pieces', async () => {
	const svg = made(await run([files.flared, '--as=svg', '--out', out('a.svg')]));
	const dxf = made(await run(['-', '--as', 'dxf', '--out', out('a.dxf'), '--scale', '1'], JSON.stringify(inputs.flared)));
	expect(dxf).toEqual(svg);
	expect(svg.pieces.map(({ name }) => name)).toEqual(['panel', 'band', 'band interfacing', 'lining']);
	expect(parseSync(readFileSync(out('a.svg'), 'utf8')).children.filter(({ attributes }) => attributes.id?.startsWith('piece-'))).toHaveLength(4);
	expect(Object.keys(new DxfParser().parseSync(readFileSync(out('a.dxf'), 'utf8'))!.blocks)).toEqual(['PANEL', 'BAND', 'BAND_INTERFACING', 'LINING']);
}, 120_000);

test('The same input and date give the same bytes, whatever the clock says', async () => {
	for (const as of ['pdf', 'dxf']) {
		const args = [files.flared, '--as', as, '--sheet', 'a3', '--date', '2026-11-25', '--out'];
		await Promise.all([run([...args, out('one')]), run([...args, out('two')])]);
		expect(Buffer.compare(readFileSync(out('one')), readFileSync(out('two')))).toBe(0);
	}
}, 120_000);

const refused = (ran: Ran): readonly string[] => {
	expect([ran.code, ran.err]).toEqual([2, '']);
	return (JSON.parse(ran.out) as { issues: { code: string; path: string }[] }).issues.map(({ code, path }) => `${path}: ${code}`);
};

test('What is asked wrongly is named at once, with what there is to choose from', () => {
	const file = out('never');
	const cases: readonly (readonly [readonly string[], readonly string[]])[] = [
		[['--out', file], [': one-file']], [['a', 'b', '--out', file], [': one-file']], [['a'], ['out: option-missing']],
		[['a', '--out'], ['out: option-missing']], [['a', '--sheet', '--out', file], ['sheet: option-missing']],
		[['a', '--as', 'ps', '--sheet', 'a9', '--scale', '2', '--join', 'glue', '--unit', 'ell', '--date', '2026-02-30', '--code', 'x'.repeat(21), '--wide', '3', '--out', file],
			['wide: unknown-option', 'as: not-a-choice', 'sheet: not-a-choice', 'scale: not-a-choice', 'join: not-a-choice', 'unit: not-a-choice', 'code: code-too-long', 'date: not-a-date']],
		[['a', '--as', 'pdf', '--as', 'svg', '--out', file], ['as: option-twice']]
	];
	const now = new Date('2026-11-25T12:00:00Z');
	for (const [args, expected] of cases) {
		const read = readPaperOptions(args, now);
		expect(read.ok ? [] : read.issues.map(({ code, path }) => `${path}: ${code}`)).toEqual(expected);
	}
	expect(readPaperOptions(['a', '--sheet', 'a9', '--out', file], now)).toMatchObject({ issues: [{ expected: ['a4', 'letter', 'a3', 'tabloid', 'a0', 'roll610', 'roll914', 'roll1067'] }] });
	expect(readPaperOptions(['a', '--out', file], now)).toEqual({ ok: true, value: { file: 'a', as: 'pdf', paper: 'a4', scale: 1, join: 'butt', unit: undefined, code: 'draft', date: '2026-11-25', out: file } });
});

test('Bad input is refused with exit code 2, never a stack trace, and no file is written', async () => {
	const file = out('never');
	expect(refused(await run([files.flared, '--sheet', 'a9']))).toEqual(['sheet: not-a-choice', 'out: option-missing']);
	expect(refused(await run([files.flared, '--out', join(folder, 'no', 'such', 'folder')]))).toEqual(['out: file-not-written']);
	expect(refused(await run(['-', '--out', file], '{"unit":"cm","body":{"waist":"x"},"skirt":{"share":3,"length":58}}'))).toEqual(['body.waist: not-a-length', 'skirt.share: number-out-of-range']);
	expect(refused(await run(['-', '--out', file], '{"unit":"cm","body":{"waist":70},"skirt":{"share":1,"length":58,"panels":1}}'))).toEqual(['skirt.panels: panel-laps-itself']);
	expect(existsSync(file)).toBe(false);
}, 120_000);
