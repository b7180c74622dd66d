// A question made ready: every way each piece may lie, and which of them make up a whole layout.
import { area, bounds } from '../drafting/geometry/measure.ts';
import type { Outline } from '../drafting/geometry/outline.ts';
import type { Cloth, ClothPiece, Place, Question } from './cloth.ts';
import { sum } from './no-fit.ts';
import { imprint, upperHalf } from './half.ts';
import { perMm, polygonOf, type Contour, type Polygon } from './polygon.ts';
import { mirrored, outlineOf, turned } from './shape.ts';

/** `coarse` is an outer polygon of few corners, for guesses that are made good later. */
export type Fineness = 'inner' | 'outer' | 'coarse';
/** mm from the true arc. */
const sagitta: Readonly<Record<Fineness, number>> = { inner: 0.05, outer: 0.05, coarse: 1 };

/** One way one shape may lie: a turn, and on folded cloth whether it lies on the fold or is cut through both layers. */
export interface Lie {
	readonly id: number;
	readonly turn: number;
	readonly on: 'fold' | 'layers' | 'open';
	/** Which of the question's shapes it is. */
	readonly shape: number;
	/** Where the drawing's own origin lies, across, when this lie's is at 0: a whole piece with its middle on the fold. */
	readonly lift: number;
	/**
	 * How far it reaches from its own origin, true arcs. On the fold its y is 0; through both layers its y0 keeps half the gap
	 * from the fold, because across the fold lies its other copy.
	 */
	readonly x0: number;
	readonly y0: number;
	readonly x1: number;
	readonly y1: number;
	/** mm² */
	readonly area: number;
	/** Bare, and with half the gap round it. */
	readonly bare: Readonly<Record<Fineness, Polygon>>;
	readonly spaced: Readonly<Record<Fineness, Polygon>>;
	/** The lies that it becomes when the whole layout is turned by half, or mirrored across the cloth: −1 where it has none. */
	readonly half: number;
	readonly mirror: number;
}

/** Copies that are alike, and every choice of lies for all of them; a choice names the lie of each. */
export interface Kind {
	readonly copies: readonly { readonly name: string; readonly copy: number }[];
	readonly choices: readonly (readonly number[])[];
}

export interface Problem {
	/** Of the cloth as it lies: half of it when it is folded. */
	readonly width: number;
	readonly folded: boolean;
	/** Null on a bolt. */
	readonly length: number | null;
	readonly unusable: Question['cloth']['unusable'];
	readonly lies: readonly Lie[];
	/** Largest first. */
	readonly kinds: readonly Kind[];
	/** mm² that the layout takes at least. */
	readonly area: number;
}

interface Group {
	readonly key: string;
	readonly copies: { name: string; copy: number }[];
	readonly lies: readonly number[];
}

export interface Laid {
	readonly turn: number;
	readonly outline: Outline;
	readonly on: Lie['on'];
	readonly lift: number;
	readonly imprint: string;
}

/** `sizes`: without polygons, for what only asks how large the pieces are. */
export function prepare({ cloth, pieces, gap }: Question, only?: 'sizes'): Problem {
	const lies: Lie[] = [];
	const groups: Group[] = [];
	for (const piece of pieces) {
		const laid = waysToLie(piece, cloth.folded).filter(({ outline }) => fitsAlone(outline, cloth));
		const key = laid.map(({ imprint: own, on }) => on + own).toSorted().join('|');
		const copies = Array.from({ length: piece.count }, (_, i) => ({ name: piece.name, copy: i + 1 }));
		const held = groups.find((group) => group.key === key);
		if (held) held.copies.push(...copies);
		else {
			const own = liesOf(laid, lies.length, groups.length, gap, only);
			lies.push(...own);
			groups.push({ key, copies, lies: own.map(({ id }) => id) });
		}
	}
	const sizeOf = ({ lies: own }: Group): number => (own[0] === undefined ? Infinity : lies[own[0]]!.area);
	const kinds = groups.toSorted((a, b) => sizeOf(b) - sizeOf(a)).map(({ copies, lies: own }) => ({ copies, choices: choicesOf(own.map((id) => lies[id]!), copies.length) }));
	const least = (kind: Kind): number => Math.min(...kind.choices.map((choice) => choice.reduce((total, id) => total + lies[id]!.area, 0)));
	return {
		width: cloth.folded ? cloth.width / 2 : cloth.width, folded: cloth.folded, length: cloth.length,
		unusable: cloth.folded ? cloth.unusable.map((place) => foldedPlace(place, cloth.width / 2)) : cloth.unusable, lies, kinds,
		area: kinds.reduce((total, kind) => total + least(kind), 0)
	};
}

export function fitsAlone(outline: Outline, { width, length, folded }: Cloth): boolean {
	const { from, to } = bounds(outline);
	return to[1] - from[1] <= (folded ? width / 2 : width) + 1e-6 && to[0] - from[0] <= (length ?? Infinity) + 1e-6;
}

/** A place of the open cloth, on the cloth folded along its middle: it can't be used in either layer. */
function foldedPlace({ x, y, length, width }: Place, fold: number): Place {
	const [a, b] = [y - fold, y + width - fold];
	const least = a * b < 0 ? 0 : Math.min(Math.abs(a), Math.abs(b));
	return { x, y: least, length, width: Math.max(Math.abs(a), Math.abs(b)) - least };
}

/** Each different way once: a rectangle turned by half lies as it did. */
export function waysToLie(piece: ClothPiece, folded: boolean): readonly Laid[] {
	const whole = outlineOf(piece.shape, piece.half);
	const laid = piece.turns.flatMap((turn): readonly Omit<Laid, 'imprint'>[] => {
		const outline = turned(whole, turn);
		if (!folded) return [{ turn, outline, on: 'open', lift: 0 }];
		// The other half of a piece that is turned by half lies where this one lay.
		if (piece.half) return [{ turn, outline: Math.abs(turn) < 1e-9 ? outline : mirrored(outline), on: 'fold', lift: 0 }];
		const half = upperHalf(outline);
		return [{ turn, outline, on: 'layers', lift: 0 }, ...(half ? [{ turn, outline: half.outline, on: 'fold' as const, lift: half.y }] : [])];
	}).map((one) => ({ ...one, imprint: imprint(one.outline) }));
	return laid.filter((one, i) => laid.findIndex((other) => other.on === one.on && other.imprint === one.imprint) === i);
}

function liesOf(laid: readonly Laid[], first: number, shape: number, gap: number, only?: 'sizes'): readonly Lie[] {
	return laid.map(({ turn, outline, on, lift }, i) => {
		const { from, to } = bounds(outline);
		const polygon = (side: 'inner' | 'outer', fineness: Fineness): Polygon => (only ? [] : [polygonOf(outline, side, sagitta[fineness])]);
		const bare = { inner: polygon('inner', 'inner'), outer: polygon('outer', 'outer'), coarse: polygon('outer', 'coarse') };
		const room = (fineness: Fineness): Polygon => (gap > 0 && !only ? sum(bare[fineness], [disc(gap / 2, fineness)]) : bare[fineness]);
		const alike = (other: Outline): number => {
			const found = laid.findIndex((one) => one.on === on && one.imprint === imprint(other));
			return found < 0 ? -1 : first + found;
		};
		return {
			id: first + i, turn, on, shape, lift, x0: from[0], y0: on === 'layers' ? from[1] - gap / 2 : from[1], x1: to[0], y1: to[1], area: area(outline), bare,
			spaced: { inner: room('inner'), outer: room('outer'), coarse: room('coarse') },
			half: alike(turned(outline, Math.PI)), mirror: alike(mirrored(outline))
		};
	});
}

/** Half a gap all round, as a polygon in or round its circle. */
function disc(radius: number, fineness: Fineness): Contour {
	const parts = Math.max(8, Math.ceil(Math.PI / Math.acos(1 - Math.min(0.5, sagitta[fineness] / radius))));
	const reach = fineness === 'inner' ? radius : radius / Math.cos(Math.PI / parts);
	return Float64Array.from({ length: 2 * parts }, (_, i) => {
		const angle = (2 * Math.PI * Math.floor(i / 2)) / parts;
		return Math.round(reach * perMm * (i % 2 ? Math.sin(angle) : Math.cos(angle)));
	});
}

/** Every choice, in order, of lies that give so many copies: through both layers two at a time, the last perhaps to spare. */
function choicesOf(lies: readonly Lie[], copies: number): readonly (readonly number[])[] {
	const choices: number[][] = [];
	const choose = (chosen: readonly number[], from: number, left: number): void => {
		if (left <= 0) choices.push([...chosen]);
		else for (let i = from; i < lies.length; i++) choose([...chosen, lies[i]!.id], i, left - (lies[i]!.on === 'layers' ? 2 : 1));
	};
	choose([], 0, copies);
	return choices;
}
