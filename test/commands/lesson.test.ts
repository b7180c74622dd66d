// The lesson command as it is run: from source, as a process of its own.
import { spawn } from 'node:child_process';
import { expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { draftSkirt } from '../../src/lib/drafting/draft.ts';
import { checkInput } from '../../src/lib/drafting/input.ts';
import { parseLength } from '../../src/lib/drafting/length.ts';

interface Ran { readonly code: number | null; readonly out: string; readonly err: string }
function run(args: readonly string[], input = ''): Promise<Ran> {
	return new Promise((resolve) => {
		const [, ...rest] = packageJson.scripts.lesson.split(' ');
		const child = spawn('node_modules/.bin/tsx', [...rest, ...args]);
		let [out, err] = ['', ''];
		child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
		child.stderr.on('data', (chunk: Buffer) => (err += chunk.toString()));
		child.on('close', (code) => resolve({ code, out, err }));
		child.stdin.on('error', () => undefined);
		child.stdin.end(input);
	});
}

const input = { unit: 'in', body: { waist: '28 1/2', hip: 39, waistToHip: 8 }, skirt: { style: 'flared', share: 0.25, panels: 6, length: 24, allowances: { waist: 0.625, seam: 0.625 } } };
const say = (of: object, ...options: readonly string[]) => run(['lined-half-circle', '-', ...options], JSON.stringify(of));

test('The shelf lists the lessons with their kind and style', async () => {
	const { code, out } = await run(['--list']);
	expect(code).toBe(0);
	expect(JSON.parse(out)).toContainEqual({ slug: 'lined-half-circle', kind: 'full', style: 'flared' });
});

test('A lesson reads with every figure filled in, and its live figures are told exactly as the text has them', async () => {
	const [text, json] = await Promise.all([say(input), say(input, '--json')]);
	expect([text.code, json.code]).toEqual([0, 0]);
	expect(text.out).not.toMatch(/NaN|undefined|null|\[object|[{}<]|not measured/);
	const figures = JSON.parse(json.out) as readonly { readonly figure: string; readonly mm: number; readonly shown: string }[];
	expect(figures.length).toBeGreaterThan(80);
	let at = 0;
	for (const { figure, mm, shown } of figures) {
		at = text.out.indexOf(shown, at);
		expect(at, `${figure}: ${shown}`).toBeGreaterThan(0);
		const read = parseLength(shown, 'in');
		// Rounded to a mark of the ruler: an eighth, or half a millimetre and a sixteenth for small ones. A tolerance is never said as 0.
		expect(read.ok && Math.abs(read.value.mm - mm) <= 25.4 / 16 + 1e-9, `${figure}: ${shown} for ${mm} mm`).toBe(true);
	}
	// The lesson is of half a circle in one panel, whatever the file says; body, length and allowances are the file's.
	const drafted = checkInput({ ...input, skirt: { ...input.skirt, share: 0.5, panels: 1, waistEase: '10 mm', hemFinish: 'narrow', hem: '15 mm', lining: { shorterBy: '25 mm' } } });
	const draft = drafted.ok ? draftSkirt(drafted.value.body, drafted.value.skirt) : drafted;
	if (!draft.ok) throw new Error(JSON.stringify(draft.issues));
	const told = (name: string) => figures.find(({ figure }) => figure === name)?.mm;
	for (const name of ['waistSeamGirth', 'waistRadius', 'hemRadius', 'cutHemRadius', 'zipLength'] as const) expect(told(name), name).toBeCloseTo(draft.value.figures[name]!, 9);
	expect(told('seamAllowance')).toBeCloseTo(15.875, 9);
});

test('What is not measured says so, and is null among the figures', async () => {
	const without = { unit: 'cm', body: { waist: 74 }, skirt: { length: 58 } };
	const [text, json] = await Promise.all([say(without), say(without, '--json')]);
	expect(text.out).toContain('The zip to buy: not measured yet.');
	expect(JSON.parse(json.out)).toContainEqual({ figure: 'zipLength', mm: null, shown: 'not measured yet' });
});

test.each([
	['no such lesson', ['never-written', '-'], '{}', [['lesson-unknown', '']]],
	['no file named', ['lined-half-circle'], '', [['lesson-and-file', '']]],
	['an option that is not known', ['lined-half-circle', '-', '--html'], '{}', [['option-unknown', '']]],
	['no JSON', ['lined-half-circle', '-'], '{', [['not-json', '']]],
	['every mistake that is hers', ['lined-half-circle', '-'], '{"unit":"cm","body":{"waist":"x"},"skirt":{"lenght":3,"share":"much"}}', [['not-a-length', 'body.waist'], ['field-missing', 'skirt.length'], ['unknown-field', 'skirt.lenght']]],
	['a list', ['lined-half-circle', '-'], '[]', [['not-an-object', '']]]
] as const)('Refused with issues: %s', async (_, args, stdin, issues) => {
	const { code, out, err } = await run(args, stdin);
	expect({ code, err }).toEqual({ code: 2, err: '' });
	expect((JSON.parse(out) as { issues: { code: string; path: string }[] }).issues.map(({ code, path }) => [code, path])).toEqual(issues);
});
