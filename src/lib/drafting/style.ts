// Every kind of skirt there is, by its style: read at the boundary, and drafted.
import type { Body } from './body.ts';
import { draftSkirt, type Draft } from './draft.ts';
import { Fields } from './fields.ts';
import { checkInput, readBodyOf } from './input.ts';
import type { Unit } from './length.ts';
import { asMadeOf, type AsMadeFigures } from './made/as-made.ts';
import { checkAsMade } from './made/made-input.ts';
import type { AsMade } from './made/reading.ts';
import { draftPleated, type PleatedDraft } from './pleated/draft.ts';
import { readPleated } from './pleated/input.ts';
import type { PleatedSkirt } from './pleated/skirt.ts';
import { ok, refuse, type Result } from './result.ts';
import type { FlaredSkirt } from './skirt.ts';
import { draftTiered, type TieredDraft } from './tiered/draft.ts';
import { readTiered } from './tiered/input.ts';
import type { TieredSkirt } from './tiered/skirt.ts';

export type AnySkirt = FlaredSkirt | TieredSkirt | PleatedSkirt;
export type AnyDraft = Draft | TieredDraft | PleatedDraft;

export interface AnyInput {
	readonly unit: Unit;
	readonly body: Body;
	readonly skirt: AnySkirt;
	/** Readings on the real thing, where there are some. */
	readonly asMade?: AsMade;
}

/** Reads the draft command's input, whatever its style; every mistake is named at once. */
export function checkAnyInput(value: unknown): Result<AnyInput> {
	const { made, rest } = takeAsMade(value);
	const input = readByStyle(rest);
	if (made === undefined) return input;
	const unit = Fields.of(rest, '', undefined)?.word('unit', ['cm', 'mm', 'in'], 'mm') ?? 'mm';
	const read = checkAsMade(made, unit);
	if (!input.ok || !read.ok) return refuse(...(input.ok ? [] : input.issues), ...(read.ok ? [] : read.issues));
	if (input.value.skirt.style !== 'flared') return refuse({ code: 'as-made-flared', path: 'asMade', expected: 'flared', received: input.value.skirt.style });
	return ok({ ...input.value, asMade: read.value });
}

function takeAsMade(value: unknown): { readonly made: unknown; readonly rest: unknown } {
	if (typeof value !== 'object' || value === null || Array.isArray(value) || !Object.hasOwn(value, 'asMade')) return { made: undefined, rest: value };
	const { asMade: made, ...rest } = value as Readonly<Record<string, unknown>>;
	return { made, rest };
}

const readers = { tiered: readTiered, pleated: readPleated } as const;

function readByStyle(value: unknown): Result<AnyInput> {
	const style = styleIn(value);
	if (style === undefined) {
		const flared = checkInput(value);
		// Alone, the flared reader knows its own name only.
		return flared.ok ? flared : refuse(...flared.issues.map((issue) => (issue.path === 'skirt.style' ? { ...issue, expected: ['flared', ...Object.keys(readers)] } : issue)));
	}
	const top = Fields.of(value, '', undefined)!;
	const unit = top.word('unit', ['cm', 'mm', 'in'], 'required');
	const within = { unit, issues: top.issues } as const;
	const body = readBodyOf(top, within);
	const fields = top.group('skirt', within, 'required');
	const skirt = fields && readers[style](fields, within);
	top.unknown();
	return top.issues.length === 0 && unit && body && skirt ? ok({ unit, body, skirt }) : refuse(...top.issues);
}

/** The style that is named, if it is one with a reader of its own. */
function styleIn(value: unknown): keyof typeof readers | undefined {
	const skirt = typeof value === 'object' && value !== null && 'skirt' in value ? value.skirt : undefined;
	const style = typeof skirt === 'object' && skirt !== null && 'style' in skirt ? skirt.style : undefined;
	return style === 'tiered' || style === 'pleated' ? style : undefined;
}

export function draftAny(body: Body, skirt: AnySkirt): Result<AnyDraft> {
	if (skirt.style === 'tiered') return draftTiered(body, skirt);
	return skirt.style === 'pleated' ? draftPleated(body, skirt) : draftSkirt(body, skirt);
}

/** A draft, and what the readings on the real thing make of it. */
export function draftAsMade({ body, skirt, asMade }: AnyInput): Result<{ readonly draft: AnyDraft; readonly asMade?: AsMadeFigures }> {
	if (skirt.style !== 'flared' || asMade === undefined) {
		const draft = draftAny(body, skirt);
		return draft.ok ? ok({ draft: draft.value }) : draft;
	}
	const draft = draftSkirt(body, skirt);
	if (!draft.ok) return draft;
	const made = asMadeOf(draft.value, asMade);
	return made.ok ? ok({ draft: draft.value, asMade: made.value }) : made;
}
