// What else would do: other choices for the same skirt on the same cloth, each laid out before it is said. Nothing is guessed.
import type { Body } from '../drafting/body.ts';
import { draftSkirt } from '../drafting/draft.ts';
import type { Piece } from '../drafting/piece.ts';
import type { Skirt } from '../drafting/skirt.ts';
import type { Answer } from './answer.ts';
import type { Cloth, Question } from './cloth.ts';
import { clothPieces, type Grain } from './draft-pieces.ts';
import { layOut, layOutFamily } from './lay-out.ts';
import { fitsAlone, waysToLie } from './problem.ts';

/** A skirt to be cut from a cloth. Millimetres. */
export interface SkirtOnCloth {
	readonly body: Body;
	readonly skirt: Skirt;
	readonly of: Piece['cloth'];
	readonly grain: Grain;
	readonly cloth: Cloth;
	readonly nap: boolean;
	readonly gap: number;
	/** For each choice that is tried. */
	readonly seconds: number;
}

export type Change =
	| { readonly kind: 'edgeOnGrain' }
	| { readonly kind: 'panels'; readonly panels: number }
	| { readonly kind: 'length'; readonly length: number }
	| { readonly kind: 'share'; readonly share: number }
	| { readonly kind: 'width'; readonly width: number };

/** A choice that was laid out, and how. */
export interface Way {
	readonly change: Change;
	readonly answer: Answer;
	/** On a bolt, mm of length less than without it; null where the skirt couldn't be laid without it. */
	readonly saves: number | null;
}

/** mm of length on a bolt that make a choice worth saying: cloth is sold by 10 cm (common practice, no source). */
const worth = 100;
/** Of bolts, mm (common practice, no source). */
const widths = [900, 1120, 1150, 1400, 1500, 2800] as const;
/** A shorter skirt than this, mm, is another skirt (common practice, no source). */
const shortestSkirt = 300;
/** Shares are asked after in steps of a hundredth of a circle. */
const shareStep = 0.01;

/** The question of a skirt; null when it can't be drafted or a piece doesn't go on the cloth at all. */
export function questionOf({ body, skirt, of, grain, cloth, nap, gap, seconds }: SkirtOnCloth): Question | null {
	const draft = draftSkirt(body, skirt);
	if (!draft.ok) return null;
	const pieces = clothPieces(draft.value.pieces, of, grain, nap);
	const each = pieces.every((piece) => waysToLie(piece, cloth.folded).some(({ outline }) => fitsAlone(outline, cloth)));
	return pieces.length > 0 && each ? { cloth, pieces, gap, seconds, find: 'length' } : null;
}

/** Each way that was laid out and helps: it fits where the skirt didn't, or saves cloth by the bolt. One at a time, as they are found. */
export function* waysOut(asked: SkirtOnCloth, now: () => number): Generator<Way, void> {
	const found = asked.cloth.length !== null;
	const base = answerTo(asked, now);
	// On a found cloth on which it fits there is nothing to get out of.
	if (found && base?.fits) return;
	const before = base?.length ?? null;
	const helps = (change: Change, answer: Answer | null): readonly Way[] => {
		if (answer?.length == null) return [];
		const saves = before === null ? null : before - answer.length;
		return found || saves === null || saves >= worth ? [{ change, answer, saves }] : [];
	};
	const tried = (change: Change): readonly Way[] => helps(change, answerTo(changed(asked, change), now));
	if (asked.grain === 'middle') yield* tried({ kind: 'edgeOnGrain' });
	if (asked.skirt.panelShares === null && asked.skirt.panels < 12) yield* tried({ kind: 'panels', panels: asked.skirt.panels + 1 });
	const wider = widths.find((width) => width > asked.cloth.width);
	if (!found && wider !== undefined) yield* tried({ kind: 'width', width: wider });
	if (found) {
		yield* longestThatFits(asked, now);
		yield* fullestThatFits(asked, now);
	}
}

function changed(asked: SkirtOnCloth, change: Change): SkirtOnCloth {
	switch (change.kind) {
		case 'edgeOnGrain': return { ...asked, grain: 'edge' };
		case 'panels': return { ...asked, skirt: { ...asked.skirt, panels: change.panels } };
		case 'length': return { ...asked, skirt: { ...asked.skirt, length: change.length } };
		case 'share': return { ...asked, skirt: { ...asked.skirt, share: change.share } };
		case 'width': return { ...asked, cloth: { ...asked.cloth, width: change.width } };
	}
}

/** On a found cloth the first layout that fits will do. */
function answerTo(asked: SkirtOnCloth, now: () => number): Answer | null {
	const question = questionOf(asked);
	if (!question) return null;
	const steps = layOut(question, now);
	for (;;) {
		const { done, value } = steps.next();
		if (done || (asked.cloth.length !== null && value.fits)) return value;
	}
}

/** To the millimetre, with its proof. */
function* longestThatFits(asked: SkirtOnCloth, now: () => number): Generator<Way, void> {
	const at = (length: number): Question => {
		const { body, skirt, of, grain, cloth, nap, gap, seconds } = changed(asked, { kind: 'length', length });
		const draft = draftSkirt(body, skirt);
		if (!draft.ok) throw new Error(`no draft at a length of ${length} mm: ${JSON.stringify(draft.issues)}`);
		return { cloth, pieces: clothPieces(draft.value.pieces, of, grain, nap), gap, seconds, find: 'length' };
	};
	const [least, most] = [shortestSkirt, asked.skirt.length];
	if (most <= least || [least, most].some((length) => !draftSkirt(asked.body, { ...asked.skirt, length }).ok)) return;
	const steps = layOutFamily({ at, least, most }, asked.seconds, now);
	let step = steps.next();
	while (!step.done) step = steps.next();
	// A hem facing moves outwards with the hem, so the pieces of a longer skirt don't hold those of a shorter one: no proof then.
	const answer: Answer = asked.skirt.hemFinish === 'faced' ? { ...step.value, bound: most, proved: false } : step.value;
	if (answer.outer !== null) yield { change: { kind: 'length', length: answer.outer }, answer, saves: null };
}

/** By halving between shares that were laid out; one of less flare doesn't lie within one of more, so greater ones may fit too. */
function* fullestThatFits(asked: SkirtOnCloth, now: () => number): Generator<Way, void> {
	let best: Way | null = null;
	let [from, to] = [0.1, asked.skirt.share];
	for (let share = Math.round((from + to) / 2 / shareStep) * shareStep; share > from + 1e-9 && share < to - 1e-9; share = Math.round((from + to) / 2 / shareStep) * shareStep) {
		const answer = answerTo(changed(asked, { kind: 'share', share }), now);
		if (answer?.fits) {
			best = { change: { kind: 'share', share }, answer, saves: null };
			from = share;
		} else to = share;
	}
	if (best) yield best;
}
