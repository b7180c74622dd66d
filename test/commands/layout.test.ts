// The layout command as it is run: from source, as a process of its own.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { checkQuestion } from '../../src/lib/cloth/question.ts';
import { wrongsOf } from '../../src/lib/cloth/layout-check.ts';
import type { Placement } from '../../src/lib/cloth/cloth.ts';

const folder = mkdtempSync(join(tmpdir(), 'layout-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Ran { readonly code: number | null; readonly out: string; readonly err: string }
function run(args: readonly string[], input = ''): Promise<Ran> {
	return new Promise((resolve) => {
		const [, ...rest] = packageJson.scripts.layout.split(' ');
		const child = spawn('node_modules/.bin/tsx', [...rest, ...args]);
		let [out, err] = ['', ''];
		child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
		child.stderr.on('data', (chunk: Buffer) => (err += chunk.toString()));
		child.on('close', (code) => resolve({ code, out, err }));
		child.stdin.on('error', () => undefined);
		child.stdin.end(input);
	});
}

const panel = { name: 'panel', count: 2, sector: { inner: 12, outer: 75, angle: 90, strip: 1.5 }, turns: [0, 180] };
const asked = { cloth: { width: 140 }, folded: false, nap: false, gap: 0, seconds: 5, pieces: [panel], find: 'length' };

interface Printed {
	readonly length: number;
	readonly outer: number | null;
	readonly bound: number;
	readonly proved: boolean;
	readonly above: number;
	readonly seconds: number;
	readonly placements: readonly Placement[];
}
/** Back from cm and degrees. */
const inMm = (placements: readonly Placement[]): readonly Placement[] => placements.map((one) => ({ ...one, x: one.x * 10, y: one.y * 10, turn: (one.turn * Math.PI) / 180 }));

test('A question goes in from a file or from standard input, and the layout comes out in cm and degrees, as the check reads it', async () => {
	const file = join(folder, 'skirt.json');
	writeFileSync(file, JSON.stringify(asked));
	const [fromFile, fromInput] = await Promise.all([run([file]), run(['-'], JSON.stringify(asked))]);
	expect([fromFile.code, fromFile.err]).toEqual([0, '']);
	const [one, other] = [fromFile, fromInput].map(({ out }) => JSON.parse(out) as Printed) as [Printed, Printed];
	expect({ ...other, seconds: 0 }).toEqual({ ...one, seconds: 0 });
	expect(one.length).toBeLessThan(122.44);
	expect(one).toMatchObject({ outer: null, proved: true });
	expect(one.length - one.bound).toBeLessThanOrEqual(0.1 + 1e-6);
	expect(one.above).toBeCloseTo((one.length / one.bound - 1) * 100, 2);
	const question = checkQuestion(asked);
	expect(question.ok && wrongsOf(question.value, one.length * 10, inMm(one.placements))).toEqual([]);
});

test('The greatest radius on found cloth comes out of the same command', async () => {
	const { code, out } = await run(['-'], JSON.stringify({ ...asked, cloth: { width: 150, length: 150 }, find: 'outer', pieces: [{ ...panel, sector: { ...panel.sector, inner: 10, angle: 180 }, edgeOnGrain: true, turns: [0, 90, 180, 270] }] }));
	expect(code).toBe(0);
	const { outer, bound, proved } = JSON.parse(out) as Printed;
	expect(outer).toBeGreaterThan(73.75);
	expect([proved, bound - outer! <= 0.1 + 1e-6]).toEqual([true, true]);
});

test('Cloth on which it does not fit is an answer, not a mistake', async () => {
	const { code, out } = await run(['-'], JSON.stringify({ ...asked, cloth: { width: 140, length: 100 } }));
	expect(code).toBe(0);
	expect(JSON.parse(out)).toMatchObject({ fits: false, length: null, proved: true, placements: [] });
});

test.each([
	['wider-than-cloth', { ...asked, cloth: { width: 90 } }],
	['longer-than-cloth', { ...asked, cloth: { width: 140, length: 60 } }],
	['nothing-usable', { ...asked, cloth: { width: 140, length: 200, unusable: [{ x: 0, y: 0, length: 200, width: 140 }] } }],
	['length-out-of-range', { ...asked, cloth: { width: 0 } }],
	['length-negative', { ...asked, cloth: { width: -140 } }],
	['field-missing', { ...asked, cloth: {} }],
	['not-a-length', { ...asked, gap: 'wide' }],
	['number-out-of-range', { ...asked, seconds: 1e9 }],
	['unknown-field', { ...asked, pieces: [{ ...panel, colour: 'red' }] }],
	['no-pieces', { ...asked, pieces: [] }],
	['too-many-pieces', { ...asked, pieces: [{ ...panel, count: 1000 }] }],
	['list-too-long', { ...asked, pieces: Array.from({ length: 1000 }, (_, i) => ({ ...panel, name: `panel ${i}` })) }],
	['name-twice', { ...asked, pieces: [panel, panel] }],
	['one-shape', { ...asked, pieces: [{ name: 'panel', count: 1 }] }],
	['radius-not-wider', { ...asked, pieces: [{ ...panel, sector: { ...panel.sector, inner: 75 } }] }],
	['crosses-itself', { ...asked, pieces: [{ name: 'bow', count: 1, outline: [[0, 0], [10, 10], [10, 0], [0, 11]] }] }],
	['crosses-itself', { ...asked, cloth: { width: 200 }, pieces: [{ ...panel, sector: { inner: 1, outer: 75, angle: 355, strip: 1.5 } }] }],
	['not-an-outline', { ...asked, pieces: [{ name: 'line', count: 1, outline: [[0, 0], [10, 10], [20, 20]] }] }],
	['no-such-turn', { ...asked, pieces: [{ ...panel, turns: [] }] }],
	['outer-needs-length', { ...asked, find: 'outer' }],
	['outer-needs-panel', { ...asked, cloth: { width: 140, length: 200 }, find: 'outer', pieces: [{ name: 'band', count: 1, rectangle: { length: 80, width: 8 }, turns: [0] }] }],
	['fold-needs-folded', { ...asked, pieces: [{ ...panel, fold: true, turns: [0] }] }],
	['not-one-of', { ...asked, nap: 'yes' }],
	['not-an-object', 7]
])('%s: exit 2 with the issue', async (code, value) => {
	const ran = await run(['-'], JSON.stringify(value));
	expect([ran.code, ran.err]).toEqual([2, '']);
	const { issues } = JSON.parse(ran.out) as { issues: readonly { readonly code: string }[] };
	expect(issues.map((issue) => issue.code)).toContain(code);
});

test('No file, two files, a file that isn’t there, and text that isn’t JSON are refused the same way', async () => {
	const bad = join(folder, 'bad.json');
	writeFileSync(bad, '{"cloth"');
	for (const [args, code] of [[[], 'one-file'], [[bad, bad], 'one-file'], [[join(folder, 'none.json')], 'file-not-read'], [[bad], 'not-json']] as const) {
		const ran = await run(args);
		expect(ran.code).toBe(2);
		expect((JSON.parse(ran.out) as { issues: readonly { readonly code: string }[] }).issues[0]!.code).toBe(code);
	}
});
