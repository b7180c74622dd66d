// What the paper command is told besides its file. Every mistake is named at once.
import { ok, refuse, type Issue, type Result } from '../lib/drafting/result.ts';
import type { Join } from '../lib/paper/grid.ts';
import { SCALES, type Scale } from '../lib/paper/pattern-piece.ts';
import { PAPER_NAMES, type PaperName } from '../lib/paper/sheet.ts';

export interface PaperOptions {
	readonly file: string;
	readonly as: 'pdf' | 'svg' | 'dxf';
	readonly paper: PaperName;
	readonly scale: Scale;
	readonly join: Join;
	/** Absent: the input's own. */
	readonly unit?: 'cm' | 'in' | undefined;
	readonly code: string;
	readonly date: string;
	readonly out: string;
}

const KNOWN = ['as', 'sheet', 'scale', 'join', 'unit', 'code', 'date', 'out'] as const;
type Known = (typeof KNOWN)[number];
const isKnown = (name: string): name is Known => (KNOWN as readonly string[]).includes(name);
/** What the strip over a sheet has room for. */
const LONGEST_CODE = 20;

/** `--name value` or `--name=value`; what is no option is the file's name. */
export function readPaperOptions(args: readonly string[], now: Date): Result<PaperOptions> {
	const issues: Issue[] = [];
	const given = new Map<Known, string>();
	const files: string[] = [];
	for (let i = 0; i < args.length; i++) {
		const [, name, joined] = /^--([^=]*)(?:=([^]*))?$/.exec(args[i]!) ?? [];
		if (name === undefined) {
			files.push(args[i]!);
			continue;
		}
		const next = args[i + 1];
		// Another option is no value: one was forgotten here.
		const value = joined ?? (next?.startsWith('--') ? undefined : next);
		if (joined === undefined && value !== undefined) i++;
		if (!isKnown(name)) issues.push({ code: 'unknown-option', path: name, expected: KNOWN, received: name });
		else if (value === undefined || value === '') issues.push({ code: 'option-missing', path: name, expected: 'a value', received: null });
		else if (given.has(name)) issues.push({ code: 'option-twice', path: name, expected: given.get(name), received: value });
		else given.set(name, value);
	}
	const oneOf = <T extends string>(name: Known, choices: readonly T[], otherwise: T): T => {
		const value = given.get(name) ?? otherwise;
		const found = choices.find((choice) => choice === value);
		if (found === undefined) issues.push({ code: 'not-a-choice', path: name, expected: choices, received: value });
		return found ?? otherwise;
	};
	const as = oneOf('as', ['pdf', 'svg', 'dxf'], 'pdf');
	const paper = oneOf('sheet', PAPER_NAMES, 'a4');
	const said = oneOf('scale', SCALES.map(String), '1');
	const scale = SCALES.find((known) => String(known) === said) ?? 1;
	const join = oneOf('join', ['butt', 'overlap'], 'butt');
	const unit = given.has('unit') ? oneOf('unit', ['cm', 'in'], 'cm') : undefined;
	const code = given.get('code') ?? 'draft';
	if (code.length > LONGEST_CODE) issues.push({ code: 'code-too-long', path: 'code', expected: LONGEST_CODE, received: code.length });
	const today = now.toISOString().slice(0, 10);
	const date = given.get('date') ?? today;
	if (!isDate(date)) issues.push({ code: 'not-a-date', path: 'date', expected: today, received: date });
	const [file] = files;
	if (file === undefined || files.length > 1) issues.push({ code: 'one-file', path: '', expected: 'FILE or -', received: files.length });
	const out = given.get('out');
	if (out === undefined && !issues.some(({ path }) => path === 'out')) issues.push({ code: 'option-missing', path: 'out', expected: 'a file to write', received: null });
	return file !== undefined && out !== undefined && issues.length === 0 ? ok({ file, as, paper, scale, join, unit, code, date, out }) : refuse(...issues);
}

/** A day that there is, as `2026-11-25`. */
function isDate(text: string): boolean {
	const time = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : NaN;
	return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text);
}
