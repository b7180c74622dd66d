// What can be printed for one learner, for her and for her teacher alike.
import type { LoggedEvent, Unit } from '../class/event.ts';
import type { Draft } from '../drafting/draft.ts';
import { stagesOf, type Lesson } from '../lesson/lesson.ts';
import type { OwnMade } from '../lesson/own-made.ts';
import { handoutSheets } from '../paper/handout.ts';
import type { CoverOptions } from '../paper/cover.ts';
import type { Join } from '../paper/grid.ts';
import { SCALES, type Scale } from '../paper/pattern-piece.ts';
import { patternSheetCount, patternSheets } from '../paper/pattern-sheets.ts';
import { isPaperName, type PaperName, type Sheet } from '../paper/sheet.ts';
import type { Class } from './class.ts';
import { skirtDesk } from './desk.ts';
import { draftMark } from './digest.ts';
import { writePdf } from './pdf.ts';

/** A draft with what stands at the head of its sheets. */
export interface Paper {
	readonly draft: Draft;
	readonly unit: Unit;
	/** What she has measured on the real thing. */
	readonly made: OwnMade | null;
	readonly code: string;
	readonly date: string;
	readonly lesson: Lesson;
	readonly held: Class;
}

/** Null while her numbers are not enough to draft from. `name` gives its initial only. */
export function paperFor(lesson: Lesson, held: Class, name: string, events: readonly LoggedEvent[], now: Date): Paper | null {
	const { state, own, made } = skirtDesk(lesson, held.rules, events);
	if (!own.draft?.ok) return null;
	const initial = Array.from(name.trim())[0]?.toUpperCase() ?? '';
	return {
		draft: own.draft.value, made, unit: state.unit ?? held.rules.unit, code: `${held.id} ${initial}`, date: now.toISOString().slice(0, 10), lesson, held
	};
}

export const handoutOf = ({ draft, made, unit, code, date, lesson, held }: Paper, paper: PaperName, bodyFigures: boolean): readonly Sheet[] =>
	handoutSheets(draft, { paper, made, unit, code, date, stages: stagesOf(lesson), gate: held.rules.gate, bodyFigures });

/** How a pattern is printed: on which paper, joined how, at which scale. */
export interface PatternChoice {
	readonly paper: PaperName;
	readonly join: Join;
	readonly scale: Scale;
}
export const patternOptions = ({ draft, unit, code, date }: Paper, choice: PatternChoice): CoverOptions => ({ ...choice, unit, code, date, mark: draftMark(draft) });
export const patternOf = (paper: Paper, choice: PatternChoice): readonly Sheet[] => patternSheets(paper.draft, patternOptions(paper, choice));
export const patternCountOf = (paper: Paper, choice: PatternChoice): number => patternSheetCount(paper.draft, patternOptions(paper, choice));

/** `?sheet=a3&join=overlap&scale=4`; A4, edge to edge, true size otherwise. */
export function patternChoice(url: URL): PatternChoice {
	const scale = Number(url.searchParams.get('scale'));
	return { paper: paperNameOf(url), join: url.searchParams.get('join') === 'overlap' ? 'overlap' : 'butt', scale: SCALES.find((known) => known === scale) ?? 1 };
}

/** `?sheet=letter`; A4 otherwise. */
export const paperNameOf = (url: URL): PaperName => {
	const name = url.searchParams.get('sheet') ?? 'a4';
	return isPaperName(name) ? name : 'a4';
};

/** A PDF to look at and print, kept by no cache. Its name says nothing about anyone. */
export async function pdfResponse(sheets: readonly Sheet[], what: 'handout' | 'pattern', { date }: Paper): Promise<Response> {
	const title = what === 'handout' ? 'Skirtwright hand-out' : 'Skirtwright pattern at true size';
	const bytes = await writePdf(sheets, { title, lang: 'en-GB', date: new Date(`${date}T00:00:00Z`) });
	return new Response(new Blob([new Uint8Array(bytes)]), {
		headers: { 'content-type': 'application/pdf', 'content-disposition': `inline; filename="skirtwright-${what}.pdf"`, 'cache-control': 'no-store' }
	});
}
