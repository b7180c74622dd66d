// A draft's input as somebody wrote it, made over to a lesson's style: her body, unit, length and allowances stay.
import { checkInput, type DraftInput } from '../drafting/input.ts';
import { ok, refuse, type Result } from '../drafting/result.ts';
import { checkAnyInput } from '../drafting/style.ts';
import { sampleRules } from './sample.ts';
import { skirtInput } from './skirt-input.ts';
import type { LessonStyle } from './style.ts';

/** What is hers in the skirt; all else is the lesson's to say. */
const hers = ['length', 'allowances', 'zipSeries'];

/** Reads the draft command's input as the lesson's skirt. What the lesson decides is passed over, right or wrong. */
export function styledInput(style: LessonStyle, value: unknown): Result<DraftInput> {
	const own = checkAnyInput(value);
	const issues = own.ok ? [] : own.issues.filter(({ path, code }) => !path.startsWith('skirt.') || code === 'unknown-field' || hers.some((name) => path === `skirt.${name}` || path.startsWith(`skirt.${name}.`)));
	if (issues.length > 0) return refuse(...issues);
	const { skirt = {}, asMade: _, ...rest } = value as { readonly skirt?: Group; readonly asMade?: unknown };
	const { skirt: styled } = skirtInput(style, sampleRules('cm', style), {}, {}) as { readonly skirt: Group };
	const take = (from: Group, which: (name: string) => boolean) => Object.fromEntries(Object.entries(from).filter(([name]) => which(name)));
	const checked = checkInput({ ...rest, skirt: { ...take(skirt, (name) => hers.includes(name)), ...inMm(take(styled, (name) => !hers.includes(name))) } });
	return checked.ok ? ok(checked.value) : checked;
}

type Group = Readonly<Record<string, unknown>>;

/** Numbers that aren't lengths. */
const plain = ['share', 'panels'];
/** The lesson's lengths as texts, which say their own unit. */
const inMm = (group: Group): Group => Object.fromEntries(Object.entries(group).map(([name, value]) => [
	name,
	typeof value === 'number' && !plain.includes(name) ? `${value} mm` : typeof value === 'object' && value !== null ? inMm(value as Group) : value
]));
