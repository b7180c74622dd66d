// What a figure in a sentence says: on the page, in plain text, everywhere the same.
import type { Draft } from '../drafting/draft.ts';
import { formatLength, type Unit } from '../drafting/length.ts';
import { figureOf } from './figure.ts';
import { fixedLength } from './fixed-length.ts';
import { toleranceOf, type Tolerances } from './tolerance.ts';

/** `fixed` is the same for all in the class; `small` is the reader's, too small for the marks of a tape; `own` is read off a tape. */
export interface ShownFigure {
	readonly is: 'fixed' | 'small' | 'own';
	readonly mm: number;
}

/** Below this, mm: an allowance or a turn, set by lesson and class, is read in mm or sixteenths. 7.5 mm would round to 0.8 cm. */
const SMALL = 20;

/** The attributes are the lesson's: `of` a figure or a tolerance, or `mm`. Null: not measured yet. */
export function shownFigure({ of, mm }: { readonly of?: string; readonly mm?: string }, { draft, tolerances }: { readonly draft: Draft; readonly tolerances: Tolerances }): ShownFigure | null {
	const fixed = mm === undefined ? of === undefined ? undefined : toleranceOf(of, tolerances) : Number(mm);
	if (fixed !== undefined) return { is: 'fixed', mm: fixed };
	const own = of === undefined ? undefined : figureOf(of, draft);
	return own === undefined ? null : { is: own < SMALL ? 'small' : 'own', mm: own };
}

export const notMeasured = 'not measured yet';

/** As the page shows it, in plain text. */
export const figureText = (shown: ShownFigure | null, unit: Unit): string =>
	shown === null ? notMeasured : shown.is === 'own' ? formatLength(shown.mm, unit) : fixedLength(shown.mm, unit);
