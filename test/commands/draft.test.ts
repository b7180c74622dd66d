// The draft command as it is run: from source, as a process of its own.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { area, lengthOf } from '../../src/lib/drafting/geometry/measure.ts';
import type { Outline } from '../../src/lib/drafting/geometry/outline.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';

const folder = mkdtempSync(join(tmpdir(), 'draft-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Ran { readonly code: number | null; readonly out: string; readonly err: string }
function run(args: readonly string[], input: string | Buffer = ''): Promise<Ran> {
	return new Promise((resolve) => {
		// What the script in package.json says, without npm in between.
		const [, ...rest] = packageJson.scripts.draft.split(' ');
		const child = spawn('node_modules/.bin/tsx', [...rest, ...args]);
		let [out, err] = ['', ''];
		child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
		child.stderr.on('data', (chunk: Buffer) => (err += chunk.toString()));
		child.on('close', (code) => resolve({ code, out, err }));
		child.stdin.on('error', () => undefined);
		child.stdin.end(input);
	});
}

const input = {
	unit: 'cm', body: { waist: 74, hip: 99 },
	skirt: {
		style: 'flared', share: 0.5, length: 58, waistEase: 1, hipEase: 2, panels: 2, band: { kind: 'straight', depth: 4, underlap: 3 },
		hem: 1.5, hemFinish: 'turned', zipAt: 'centreBack', allowances: { waist: 1.5, seam: 1.5 }
	}
};

interface Printed {
	readonly unit: string;
	readonly figures: Readonly<Record<string, number>>;
	readonly pieces: readonly { readonly name: string; readonly count: number; readonly fold: unknown; readonly grain: unknown; readonly cut: Outline; readonly stitch: Outline }[];
	readonly seams: readonly { readonly name: string; readonly lengthA: number; readonly lengthB: number; readonly ease: number }[];
	readonly checks: readonly { readonly code: string; readonly severity: string }[];
}

test('A draft goes in from a file or from standard input, and comes out as JSON, unrounded', async () => {
	const file = join(folder, 'skirt.json');
	writeFileSync(file, JSON.stringify(input));
	const [fromFile, fromInput] = await Promise.all([run([file]), run(['-'], JSON.stringify(input))]);
	expect([fromFile.code, fromFile.err]).toEqual([0, '']);
	expect(fromInput).toEqual(fromFile);
	const { unit, figures, pieces, seams, checks } = JSON.parse(fromFile.out) as Printed;
	expect(unit).toBe('mm');
	// 75 / π and so on: circle geometry.
	expect(figures).toMatchObject({
		sweepAngle: Math.PI, waistSeamGirth: 750, waistRadius: 750 / Math.PI, cutWaistRadius: 750 / Math.PI - 15, skirtLength: 540, hemRadius: 750 / Math.PI + 540,
		cutHemRadius: 750 / Math.PI + 555, hemSurplus: 30 * Math.PI, bandCutLength: 810, bandCutDepth: 110, panelAngle: Math.PI / 2
	});
	const panel = pieces.find(({ name }) => name === 'panel')!;
	expect(panel.count).toBe(2);
	expect(area(panel.cut)).toBeCloseTo(figures.panelCutArea!, 6);
	expect(lengthOf(panel.cut, 'waist')).toBeCloseTo(figures.panelWaistCutLength!, 9);
	expect(lengthOf(panel.cut, 'hem')).toBeCloseTo(figures.panelHemCutLength!, 9);
	expect(Object.keys(panel.cut.edges[1]!).sort()).toEqual(['centre', 'end', 'name', 'turn']);
	for (const { lengthA, lengthB, ease } of seams) expect(lengthA - lengthB).toBeCloseTo(ease, 9);
	expect(seams.map(({ name }) => name)).toContain('waist to band');
	expect(checks.every(({ code, severity }) => code !== '' && ['good', 'note', 'caution', 'stop'].includes(severity))).toBe(true);
	// Printing rounds nothing away: the same as in memory.
	const checked = checkInput(input);
	const draft = checked.ok ? draftSkirt(checked.value.body, checked.value.skirt) : checked;
	expect(draft.ok && { unit, figures, pieces, seams, checks }).toEqual(draft.ok && JSON.parse(JSON.stringify({ unit: draft.value.unit, figures: draft.value.figures, pieces: draft.value.pieces, seams: draft.value.seams, checks: draft.value.checks })));
}, 60_000);

test('A draft with a stop check is still a draft', async () => {
	const tight = { unit: 'cm', body: { waist: 70, hip: 104, waistToHip: 20 }, skirt: { share: 0.25, length: 60 } };
	const { code, out } = await run(['-'], JSON.stringify(tight));
	expect(code).toBe(0);
	expect((JSON.parse(out) as Printed).checks).toContainEqual(expect.objectContaining({ code: 'hip-fit', severity: 'stop' }));
}, 60_000);

const refused = (ran: Ran) => {
	expect([ran.code, ran.err]).toEqual([2, '']);
	return (JSON.parse(ran.out) as { issues: { code: string; path: string }[] }).issues.map(({ code, path }) => `${path}: ${code}`);
};

test('Bad input is refused with every issue at once, exit code 2, and never a stack trace', async () => {
	const file = (name: string, text: string | Buffer) => { writeFileSync(join(folder, name), text); return join(folder, name); };
	const cases: readonly (readonly [readonly string[], string | Buffer, readonly string[]])[] = [
		[['-'], '{"unit":"cm","body":{"waist":"x"},"skirt":{"share":3,"length":58}}', ['body.waist: not-a-length', 'skirt.share: number-out-of-range']],
		[['-'], '{"unit":"cm","body":{"waist":70},"skirt":{"share":1,"length":58,"panels":1}}', ['skirt.panels: panel-laps-itself']],
		[['-'], '{"unit":"cm","body":{"waist":70},"skirt":{"share":2,"length":58,"panels":1,"colour":1}}', ['skirt.colour: unknown-field', 'skirt.panels: panel-laps-itself']],
		[['-'], '', [': not-json']], [['-'], '{"unit":', [': not-json']], [['-'], Buffer.from([0xff, 0xfe, 0x7b]), [': not-json']],
		[['-'], '[]', [': not-an-object']], [['-'], 'null', [': not-an-object']], [['-'], '['.repeat(200_000), [': not-json']],
		[['-'], ' '.repeat(1_000_001), [': file-too-large']], [[join(folder, 'nowhere.json')], '', [': file-not-read']], [[folder], '', [': file-not-read']],
		[[], '', [': one-file']], [['a', 'b'], '', [': one-file']],
		[[file('mark.json', `\ufeff${JSON.stringify({ unit: 'cm', body: {}, skirt: {} })}`)], '', ['body.waist: field-missing', 'skirt.share: field-missing', 'skirt.length: field-missing']]
	];
	expect(JSON.parse((await run(['-'], '{}')).out)).toMatchObject({ issues: ['unit', 'body', 'skirt'].map((path) => ({ code: 'field-missing', path, received: null })) });
	for (const [args, text, expected] of cases) expect(refused(await run(args, text))).toEqual(expected);
}, 120_000);
