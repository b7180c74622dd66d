// The ways back from the common accidents: stop, look, then choose among options with new numbers. Pure, as the draft is.
import type { Draft } from '../draft.ts';
import { topStop } from '../opening.ts';
import { ok, refuse, type Result } from '../result.ts';
import { asMadeOf, type AsMadeFigures } from './as-made.ts';
import { looseBand, shortBand, tightBand } from './mend-band.ts';
import { dippingHem, nickedHem, shortCloth, shortPanel } from './mend-length.ts';
import { longLining, tightLining } from './mend-lining.ts';
import { longZip, shortZip } from './mend-opening.ts';
import { largeWaist, nickedWaist, smallWaist, stretchedWaist } from './mend-waist.ts';
import { slack, type RescueOption } from './option.ts';
import type { AsMade, ReadingName } from './reading.ts';
import type { RescueCode } from './rescue-code.ts';

/** What is done and looked at before anything is mended. */
export const lookCodes = [
	'shears-down', 'needle-up', 'lay-flat', 'measure-again', 'stitch-line-not-edge', 'leave-unclipped', 'mark-the-nick', 'other-layer', 'which-allowance',
	'both-selvedges', 'tape-along-band', 'zip-closed-flat', 'opening-measured', 'lining-free', 'hung-a-day', 'same-shoes', 'worn-and-still', 'press-first'
] as const;
export type LookCode = (typeof lookCodes)[number];

export interface RescuePath {
	readonly code: RescueCode;
	/** Ids of the lesson's stages where it shows. */
	readonly stages: readonly string[];
	/** Any one of these readings will do; none is needed where the list is empty. */
	readonly asks: readonly ReadingName[];
	/** Stop, then look: in this order. */
	readonly look: readonly LookCode[];
}

const waist = ['radiusDrawn', 'waistEdgeAfterStaystitch', 'waistSeamAfterSewing'] as const;
const path = (code: RescueCode, stages: readonly string[], asks: readonly ReadingName[], ...look: readonly LookCode[]): RescuePath => ({ code, stages, asks, look });

export const rescuePaths: Readonly<Record<RescueCode, RescuePath>> = {
	'cloth-short': path('cloth-short', ['prepare', 'mark-cut'], ['clothAfterWashing'], 'shears-down', 'press-first', 'both-selvedges', 'measure-again'),
	'waist-cut-large': path('waist-cut-large', ['mark-cut', 'staystitch', 'waistband'], waist, 'shears-down', 'lay-flat', 'stitch-line-not-edge', 'leave-unclipped'),
	'waist-cut-small': path('waist-cut-small', ['mark-cut', 'staystitch', 'waistband'], waist, 'shears-down', 'lay-flat', 'stitch-line-not-edge', 'measure-again'),
	'allowance-forgotten': path('allowance-forgotten', ['mark-cut', 'staystitch'], [], 'shears-down', 'which-allowance', 'lay-flat', 'leave-unclipped'),
	'nick-near-waist': path('nick-near-waist', ['mark-cut', 'waistband'], ['nickDepth'], 'shears-down', 'lay-flat', 'mark-the-nick', 'other-layer'),
	'nick-near-hem': path('nick-near-hem', ['mark-cut', 'hang-level', 'hem'], ['nickDepth'], 'shears-down', 'lay-flat', 'mark-the-nick', 'other-layer'),
	'panel-short': path('panel-short', ['mark-cut', 'back-seam-zip'], ['panelLength'], 'shears-down', 'lay-flat', 'other-layer', 'measure-again'),
	'waist-stretched': path('waist-stretched', ['staystitch', 'waistband'], ['waistEdgeAfterStaystitch', 'waistSeamAfterSewing'], 'needle-up', 'lay-flat', 'stitch-line-not-edge', 'leave-unclipped'),
	'zip-short': path('zip-short', ['back-seam-zip', 'try-on'], ['zipBought'], 'needle-up', 'zip-closed-flat', 'opening-measured'),
	'zip-long': path('zip-long', ['back-seam-zip'], ['zipBought'], 'shears-down', 'zip-closed-flat', 'opening-measured'),
	'lining-tight': path('lining-tight', ['lining', 'try-on'], ['liningWaist'], 'needle-up', 'lining-free', 'stitch-line-not-edge'),
	'lining-long': path('lining-long', ['lining', 'hem', 'finish'], ['liningAbove'], 'shears-down', 'hung-a-day', 'worn-and-still'),
	'band-short': path('band-short', ['mark-cut', 'staystitch', 'waistband'], ['bandLength'], 'needle-up', 'tape-along-band', 'measure-again'),
	'band-tight': path('band-tight', ['try-on', 'waistband', 'finish'], ['bandWanted'], 'needle-up', 'worn-and-still', 'measure-again'),
	'band-loose': path('band-loose', ['try-on', 'waistband', 'finish'], ['bandWanted'], 'needle-up', 'worn-and-still', 'measure-again'),
	'hem-dips': path('hem-dips', ['hang-level', 'hem', 'finish'], ['floor'], 'shears-down', 'hung-a-day', 'same-shoes', 'worn-and-still')
};

/** The rescues that may be wanted at a stage. */
export const rescuesAt = (stage: string): readonly RescuePath[] => Object.values(rescuePaths).filter(({ stages }) => stages.includes(stage));

export interface RescueDraft {
	readonly code: RescueCode;
	/** How much is wrong, mm. */
	readonly fault: number;
	/** What was planned and what was made, mm. */
	readonly planned: number;
	readonly made: number;
	/** The least change first; the last often cuts the piece again. */
	readonly options: readonly RescueOption[];
}

interface Found {
	readonly planned: number;
	readonly made: number;
	/** More than nothing where there is something to mend. */
	readonly fault: number;
	readonly mend: () => readonly RescueOption[];
}

export function rescue(code: RescueCode, draft: Draft, readings: AsMade): Result<RescueDraft> {
	const { asks } = rescuePaths[code];
	const read = asks.find((name) => readings[name] !== undefined);
	if (asks.length > 0 && read === undefined) return refuse({ code: 'reading-missing', path: `asMade.${asks[0]!}`, expected: asks });
	if ((code === 'lining-tight' || code === 'lining-long') && !draft.skirt.lining) return refuse({ code: 'no-lining', path: 'skirt.lining', expected: 'a lining', received: null });
	if (code === 'zip-short' && draft.figures.openingBelowSeam === undefined) return refuse({ code: 'hip-needed', path: 'body.hip', expected: 'length', received: null, measure: ['hip'] });
	const made = asMadeOf(draft, only(readings, asks));
	if (!made.ok) return made;
	const { planned, made: was, fault, mend } = found(code, draft, readings, made.value);
	if (!(fault > slack)) {
		return refuse({ code: 'nothing-to-mend', path: read === undefined ? '' : `asMade.${read}`, expected: planned, received: was, figures: { planned, made: was } });
	}
	const options = mend();
	if (options.length === 0) return refuse({ code: 'no-way-back', path: `asMade.${read ?? ''}`, expected: planned, received: was, figures: { planned, made: was, fault } });
	return ok({ code, fault, planned, made: was, options });
}

/** Only what the rescue asks for: a slip in another reading doesn't stand in its way. */
const only = (readings: AsMade, asks: readonly ReadingName[]): AsMade =>
	Object.fromEntries(Object.entries(readings).filter(([name]) => (asks as readonly string[]).includes(name) || (name === 'hemAbove' && asks.includes('floor'))));

function found(code: RescueCode, draft: Draft, readings: AsMade, made: AsMadeFigures): Found {
	const { figures, skirt } = draft;
	const { waistSeamGirth: seam, skirtLength } = figures;
	const read = (name: Exclude<ReadingName, 'floor' | 'clothAfterWashing'>): number => readings[name] ?? 0;
	const less = (planned: number, made: number, mend: Found['mend']): Found => ({ planned, made, fault: planned - made, mend });
	const more = (planned: number, made: number, mend: Found['mend']): Found => ({ planned, made, fault: made - planned, mend });
	const sewn = made.waist?.seam ?? seam;
	switch (code) {
		case 'waist-cut-large': return more(seam, sewn, () => largeWaist(draft, sewn));
		case 'waist-cut-small': return less(seam, sewn, () => smallWaist(draft, sewn));
		case 'waist-stretched': return more(seam, sewn, () => stretchedWaist(draft, sewn));
		case 'allowance-forgotten': {
			// Cut along the stitch line: it sews θ·a longer (circle geometry).
			const forgotten = seam + figures.waistClip;
			return more(seam, forgotten, () => largeWaist(draft, forgotten));
		}
		case 'nick-near-waist': return more(0, read('nickDepth'), () => nickedWaist(draft, read('nickDepth')));
		case 'nick-near-hem': return more(0, read('nickDepth'), () => nickedHem(draft, read('nickDepth')));
		case 'panel-short': {
			const planned = figures.cutHemRadius - figures.cutWaistRadius;
			return less(planned, read('panelLength'), () => shortPanel(draft, planned - read('panelLength')));
		}
		case 'zip-short': {
			const needed = figures.openingBelowSeam ?? 0;
			return less(needed, read('zipBought'), () => shortZip(draft, read('zipBought'), needed));
		}
		case 'zip-long': {
			// Without a hip it is known only that it must end above the hem.
			const zip = Math.min(figures.zipLength ?? Infinity, Math.max(0, skirtLength - topStop));
			return more(zip, read('zipBought'), () => longZip(draft, read('zipBought'), zip));
		}
		case 'lining-tight': return less(seam, read('liningWaist'), () => tightLining(draft, seam - read('liningWaist')));
		case 'lining-long': {
			const planned = skirt.lining?.shorterBy ?? 0;
			return less(planned, read('liningAbove'), () => longLining(draft, read('liningAbove'), planned));
		}
		case 'band-short': return less(figures.bandCutLength, read('bandLength'), () => shortBand(draft, figures.bandCutLength - read('bandLength')));
		case 'band-tight': return more(seam, read('bandWanted'), () => tightBand(draft, read('bandWanted') - seam));
		case 'band-loose': return less(seam, read('bandWanted'), () => looseBand(draft, seam - read('bandWanted')));
		case 'cloth-short': {
			const longest = made.cloth?.longestBelowBand ?? skirtLength;
			return less(skirtLength, longest, () => shortCloth(draft, readings.clothAfterWashing ?? { width: 0, length: 0 }));
		}
		case 'hem-dips': return hemFound(draft, made);
	}
}

function hemFound(draft: Draft, { hem }: AsMadeFigures): Found {
	if (!hem) return { planned: 0, made: 0, fault: 0, mend: () => [] };
	const spare = hem.above - hem.leastAbove;
	// The lowest level there is, whatever height was chosen.
	const lowest = {
		...hem, above: hem.leastAbove, cutEdgeAbove: hem.highest, mostTrim: hem.dip,
		trims: hem.trims.map((one) => ({ ...one, trim: hem.highest - one.distance }))
	};
	return { planned: hem.highest, made: hem.lowest, fault: hem.dip, mend: () => dippingHem(draft, lowest, spare > slack ? hem : null) };
}
