// A learner's readings on the real thing against her plan: how near each is, and what follows from it.
import { madeNames, type MadeName } from '../class/made.ts';
import type { ClassRules } from '../class/rules.ts';
import type { SkirtState } from '../class/skirt-state.ts';
import type { Draft } from '../drafting/draft.ts';
import { asMadeOf, type AsMadeFigures, type MadeWaist } from '../drafting/made/as-made.ts';
import type { AsMade } from '../drafting/made/reading.ts';
import type { RescueCode } from '../drafting/made/rescue-code.ts';
import type { Issue } from '../drafting/result.ts';

export interface JudgedReading {
	readonly reading: MadeName;
	/** In mm, as read last. */
	readonly read: readonly number[];
	/** What it comes to, and what was expected: of a radius the waist it sews to, of cloth the longest skirt, of the floor readings how much they differ. mm */
	readonly comesTo: number;
	readonly expected: number;
	/** How far apart the two may be. mm */
	readonly near: number;
	/** Further apart, or on the wrong side where only one is. */
	readonly out: boolean;
	/** The way back that fits; null where it is near enough. */
	readonly rescue: RescueCode | null;
}

export interface OwnMade {
	readonly asMade: AsMade;
	readonly figures: AsMadeFigures;
	readonly judged: readonly JudgedReading[];
	/** Why a chosen hem can't be had. */
	readonly issues: readonly Issue[];
}

type Kept = SkirtState['made'];
type Near = ClassRules['tolerances'];

/** Null while nothing has been read. */
export function ownMade(draft: Draft, made: Kept, near: Near): OwnMade | null {
	if (!madeNames.some((name) => made[name] !== undefined)) return null;
	const asMade = asMadeFrom(draft, made);
	const all = asMadeOf(draft, asMade);
	if (all.ok) return { asMade, figures: all.value, judged: judge(draft, made, all.value, near), issues: [] };
	// A hem that can't be had leaves the lowest one that can; a reading that can't be one says nothing else either.
	const { hemAbove: _, ...lowest } = asMade;
	const found = asMadeOf(draft, lowest);
	const figures = found.ok ? found.value : { waists: [], rescues: [] };
	return { asMade, figures, judged: judge(draft, made, figures, near), issues: all.issues };
}

const last = (made: Kept, name: MadeName): readonly number[] | undefined => made[name]?.at(-1)?.lengths.map(({ mm }) => mm);

function asMadeFrom({ figures }: Draft, made: Kept): AsMade {
	const one = (name: MadeName): number | undefined => last(made, name)?.[0];
	const [radius, waist, seam, zip, above] = [one('radiusDrawn'), one('waistAfterStaystitch'), one('waistSeamAfterSewing'), one('zipBought'), one('hemAbove')];
	const [width, length] = last(made, 'clothAfterWashing') ?? [];
	const floor = last(made, 'floor');
	return {
		...(width !== undefined && length !== undefined && { clothAfterWashing: { width, length } }),
		...(radius !== undefined && { radiusDrawn: radius }),
		// She walks the stitch line; the cut edge inside it is θ·a shorter (circle geometry).
		...(waist !== undefined && { waistEdgeAfterStaystitch: Math.max(1, waist - figures.waistClip) }),
		...(seam !== undefined && { waistSeamAfterSewing: seam }), ...(zip !== undefined && { zipBought: zip }),
		...(floor && { floor: floor.map((distance, i) => ({ place: i / floor.length, distance })) }), ...(above !== undefined && { hemAbove: above })
	};
}

const waistNames = { radiusDrawn: 'radiusDrawn', waistEdgeAfterStaystitch: 'waistAfterStaystitch', waistSeamAfterSewing: 'waistSeamAfterSewing' } as const;

function judge(draft: Draft, made: Kept, figures: AsMadeFigures, near: Near): readonly JudgedReading[] {
	const judged: Partial<Record<MadeName, JudgedReading>> = {};
	const say = (reading: MadeName, rest: Omit<JudgedReading, 'reading' | 'read'>): void => { judged[reading] = { reading, read: last(made, reading) ?? [], ...rest }; };
	let expected = draft.figures.waistSeamGirth;
	for (const waist of figures.waists) {
		const allowed = allowedFor(waist, near);
		const off = waist.seam - expected;
		const out = Math.abs(off) > allowed + slack;
		say(waistNames[waist.from], { comesTo: waist.seam, expected, near: allowed, out, rescue: out ? rescueFor(waist, off) : null });
		// A waist that is out is what the next one is held against: its band is cut for it.
		if (out) expected = waist.seam;
	}
	const { cloth, zip, hem } = figures;
	if (cloth) {
		const out = cloth.spare < -slack;
		say('clothAfterWashing', { comesTo: cloth.longestBelowBand, expected: draft.figures.skirtLength, near: 0, out, rescue: out ? 'cloth-short' : null });
	}
	if (zip?.needed !== undefined) {
		const rescue = figures.rescues.find((code) => code === 'zip-short' || code === 'zip-long') ?? null;
		say('zipBought', { comesTo: zip.bought, expected: zip.needed, near: 0, out: rescue !== null, rescue });
	}
	if (hem) {
		const out = hem.dip > near.hemLevel + slack;
		say('floor', { comesTo: hem.dip, expected: 0, near: near.hemLevel, out, rescue: out ? 'hem-dips' : null });
	}
	return madeNames.flatMap((name) => judged[name] ?? []);
}
/** Two lengths that differ by no more are the same. mm */
const slack = 1e-6;

/** As the lesson's steps say it: the line is walked before the cut, and band and seam meet after. */
const allowedFor = ({ from }: MadeWaist, { waistWalk, bandSeam }: Near): number => (from === 'radiusDrawn' ? waistWalk : bandSeam);

const rescueFor = ({ from }: MadeWaist, off: number): RescueCode => (off < 0 ? 'waist-cut-small' : from === 'radiusDrawn' ? 'waist-cut-large' : 'waist-stretched');

/**
 * Those that a teacher is told of. A hem that dips is no slip: cloth on the bias drops, and it is levelled from these very
 * readings (common practice, no source).
 */
export const madeOut = (made: OwnMade | null): readonly MadeName[] =>
	(made?.judged ?? []).filter(({ out, reading }) => out && reading !== 'floor').map(({ reading }) => reading);

/** Where each reading is put in: the number of its part in the lesson. */
export type ReadAt = Readonly<Partial<Record<MadeName, number>>>;
export const readAtOf = (parts: readonly { readonly steps: readonly { readonly reads?: MadeName }[] }[]): ReadAt =>
	Object.fromEntries(parts.flatMap(({ steps }, part) => steps.flatMap(({ reads }) => (reads ? [[reads, part] as const] : []))));

/**
 * The draft as the steps of a part should say it. A waist that is out counts in the parts after the one where it was read:
 * the band is cut and quartered for it. A zip that does counts from its own part on. What is near enough leaves the plan.
 */
export function draftAsMade(draft: Draft, made: OwnMade | null, readAt: ReadAt, part: number): Draft {
	if (!made) return draft;
	const outBefore = made.judged.findLast(({ reading, out }) => out && isWaist(reading) && (readAt[reading] ?? Infinity) < part);
	const waist = outBefore && made.figures.waists.find(({ from }) => waistNames[from] === outBefore.reading);
	const zipDoes = (readAt.zipBought ?? Infinity) <= part && !made.judged.some(({ reading, out }) => reading === 'zipBought' && out);
	const zip = zipDoes ? made.figures.zip : undefined;
	if (!waist && !zip) return draft;
	const { opening, zipLength, zipEndBelowSeam } = waist ?? {};
	return {
		...draft,
		figures: {
			...draft.figures,
			...(waist && { waistSeamGirth: waist.seam, bandCutLength: waist.bandCutLength }),
			...(opening !== undefined && { openingBelowSeam: opening }),
			...(zipLength !== undefined && zipEndBelowSeam !== undefined && { zipLength, zipEndBelowSeam }),
			...(zip && { zipLength: zip.bought, zipEndBelowSeam: zip.endBelowSeam })
		}
	};
}
const isWaist = (name: MadeName): boolean => Object.values(waistNames).some((one) => one === name);
