// What can go wrong at a stage and the ways back, worked out for a page. For the server: the page gets sentences and
// drawings as data, so that it carries neither the engine nor the words of every mistake.
import type { Unit } from '../../class/event.ts';
import type { Draft, Figures } from '../../drafting/draft.ts';
import { parseLength } from '../../drafting/length.ts';
import type { AsMade, ReadingName } from '../../drafting/made/reading.ts';
import { rescue, rescuePaths, rescuesAt } from '../../drafting/made/rescue.ts';
import { rescueCodes, type RescueCode } from '../../drafting/made/rescue-code.ts';
import { ok, refuse, type Issue, type Result } from '../../drafting/result.ts';
import { rescueDrawing } from '../../paper/diagrams/rescue/rescue.ts';
import type { Drawing } from '../../paper/drawing.ts';
import { figureName } from '../wording/figure.ts';
import { issueSentence } from '../wording/issue.ts';
import { long } from '../wording/long.ts';
import { placeName } from '../wording/made.ts';
import { madeIssueSentence, readingNames } from '../wording/made-issue.ts';
import { faultSentence, lookSays, optionSentence, rescueNames } from '../wording/rescue.ts';

export const isRescueCode = (code: unknown): code is RescueCode => rescueCodes.some((one) => one === code);

/** One mistake that shows at a stage, and what it asks for. */
export interface Mistake {
	readonly code: RescueCode;
	readonly name: string;
	/** Stop, then look: in this order. */
	readonly look: readonly string[];
	/** Labels of its fields; one of them is enough where `either`. */
	readonly fields: readonly string[];
	readonly either: boolean;
	/** The hem is read at so many places, and asks how high it is to be. */
	readonly places: number | null;
	/** Whether the lining may show below, where a length can't say so. */
	readonly below: boolean;
}

export interface MendOption {
	readonly says: string;
	readonly drawing: Drawing;
	/** What the skirt drafted again has otherwise: name, as planned, and now. */
	readonly changes: readonly (readonly [name: string, was: string, is: string])[];
	/** Where it differs round the hem: place, and what is cut off. */
	readonly trims: readonly (readonly [place: string, trim: string])[];
}
export interface MendAnswer {
	readonly code: RescueCode;
	/** How much is wrong; null where there is something to say instead. */
	readonly fault: string | null;
	readonly instead: readonly string[];
	readonly options: readonly MendOption[];
}

const waist: readonly ReadingName[] = ['waistSeamAfterSewing'];
/** What a page asks for: along the stitch line, whichever stage it is; while the line is still chalk, the radius too. */
const asksFor = (code: RescueCode, stage: string): readonly ReadingName[] => {
	const { asks } = rescuePaths[code];
	if (!asks.includes('waistSeamAfterSewing')) return asks;
	return stage === 'mark-cut' && asks.includes('radiusDrawn') ? [...waist, 'radiusDrawn'] : waist;
};
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const labelOf = (name: ReadingName): string => (name === 'waistSeamAfterSewing' ? 'Along the waist stitch line, all round' : capital(readingNames[name]));

export function mistakesAt(stage: string, draft: Draft, places: number): readonly Mistake[] {
	return rescuesAt(stage).filter(({ asks }) => draft.skirt.lining !== null || !asks.some((name) => name.startsWith('lining'))).map(({ code, look }): Mistake => {
		const asks = asksFor(code, stage);
		const fields = asks.includes('floor') ? Array.from({ length: places }, (_, i) => placeName(i / places))
			: asks.includes('clothAfterWashing') ? ['Width of the washed cloth', 'Length of the washed cloth'] : asks.map(labelOf);
		return {
			code, name: rescueNames[code], look: look.map((one) => lookSays[one]), fields, either: asks.length > 1,
			places: asks.includes('floor') ? places : null, below: asks.includes('liningAbove')
		};
	});
}

/** As typed: nothing here is ever changed by a refusal. */
export interface TypedMend {
	readonly code: string;
	readonly lengths: readonly string[];
	readonly above: string;
	readonly below: boolean;
}
export const typedMend = (form: FormData): TypedMend => ({
	code: String(form.get('code') ?? ''), lengths: form.getAll('length').slice(0, 16).map(String), above: String(form.get('above') ?? ''), below: form.get('below') === 'on'
});

/** `length.0` and `above` are the fields' names in what stands in the way. */
export function readMend({ code, lengths, above, below }: TypedMend, stage: string, unit: Unit): Result<{ readonly code: RescueCode; readonly readings: AsMade }> {
	if (!isRescueCode(code)) return refuse({ code: 'no-such-reading', path: '' });
	const asks = asksFor(code, stage);
	const issues: Issue[] = [];
	const mm = (text: string, path: string): number => {
		const parsed = parseLength(text, unit, path);
		if (!parsed.ok) issues.push(...parsed.issues);
		return parsed.ok ? parsed.value.mm : 0;
	};
	const each = (): readonly number[] => lengths.map((text, i) => mm(text, `length.${i}`));
	let readings: AsMade = {};
	if (asks.includes('floor')) {
		const distances = each();
		readings = { floor: distances.map((distance, i) => ({ place: i / distances.length, distance })), ...(above.trim() !== '' && { hemAbove: mm(above, 'above') }) };
	} else if (asks.includes('clothAfterWashing')) {
		const [width = 0, length = 0] = each();
		readings = { clothAfterWashing: { width, length } };
	} else if (asks.includes('liningAbove')) {
		const [distance = 0] = each();
		readings = { liningAbove: below ? -distance : distance };
	} else if (asks.length > 0) {
		// One of them is enough; the first that is filled in counts.
		const at = Math.max(0, lengths.findIndex((text) => text.trim() !== ''));
		readings = { [asks[at] ?? asks[0]!]: mm(lengths[at] ?? '', `length.${at}`) };
	}
	return issues.length > 0 ? refuse(...issues) : ok({ code, readings });
}

/** The cut radii count only where nothing is cut yet. */
const onChalk = ['cutWaistRadius', 'cutHemRadius'] as const;
const watched = ['waistSeamGirth', 'skirtLength', 'bandCutLength', 'bandCutDepth', 'zipLength', 'zipEndBelowSeam'] as const satisfies readonly (keyof Figures)[];

export function mendAnswer(code: RescueCode, draft: Draft, readings: AsMade, unit: Unit): MendAnswer {
	const found = rescue(code, draft, readings);
	if (!found.ok) return { code, fault: null, instead: found.issues.map((issue) => madeIssueSentence(issue, unit) ?? issueSentence(issue, unit)), options: [] };
	return {
		code, fault: faultSentence(found.value, unit), instead: [],
		options: found.value.options.map((option) => ({
			says: optionSentence(option, unit), drawing: rescueDrawing({ draft, readings, found: found.value, option, unit }),
			changes: [...(code === 'cloth-short' ? onChalk : []), ...watched].flatMap((name) => {
				const [was, is] = [draft.figures[name], option.draft?.figures[name]];
				if (was === undefined || is === undefined) return [];
				const [before, after] = [long(was, unit), long(is, unit)];
				return before === after ? [] : [[capital(figureName(name)), before, after] as const];
			}),
			trims: (option.trims ?? []).map(({ place, trim }) => [placeName(place), long(trim, unit)] as const)
		}))
	};
}

/** What she has kept, where the mistake can be worked out from it. */
export function keptFor(code: RescueCode, stage: string, kept: AsMade, seam: number | undefined): AsMade | null {
	const found: AsMade = { ...kept, ...(seam !== undefined && { waistSeamAfterSewing: seam }) };
	const name = asksFor(code, stage).find((one) => found[one] !== undefined);
	if (name === undefined) return null;
	return { [name]: found[name], ...(name === 'floor' && found.hemAbove !== undefined && { hemAbove: found.hemAbove }) };
}
