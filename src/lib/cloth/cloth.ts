// What is laid out, and on what. Millimetres and radians; x runs along the cloth's length and its straight grain, y across it.
import type { Outline } from '../drafting/geometry/outline.ts';
import type { Shape } from './shape.ts';

/** A place on the cloth that no piece may cover: worn, stained, printed, seamed. */
export interface Place {
	readonly x: number;
	readonly y: number;
	readonly length: number;
	readonly width: number;
}

export interface Cloth {
	/** Usable: selvedges are already off. Of folded cloth, the width before folding. */
	readonly width: number;
	/** Null on a bolt, which is as long as it needs to be. */
	readonly length: number | null;
	readonly unusable: readonly Place[];
	/** Lengthwise, right sides together, with the fold along y = 0: every piece is cut through both layers, or lies on the fold. */
	readonly folded: boolean;
}

export interface ClothPiece {
	readonly name: string;
	readonly count: number;
	readonly shape: Shape;
	/** The turns in which it may lie, radians counterclockwise; 0 is as drawn, with its grain along x. */
	readonly turns: readonly number[];
	/** Drawn as half, its edge on y = 0 to be laid on the fold: on folded cloth alone. */
	readonly half: boolean;
}

export interface Question {
	readonly cloth: Cloth;
	readonly pieces: readonly ClothPiece[];
	/** Between pieces; the cloth's edges and unusable places need none. */
	readonly gap: number;
	/** How long the answer may take. */
	readonly seconds: number;
	/** The shortest length, or the greatest outer radius of the pieces called `panel`. */
	readonly find: 'length' | 'outer';
}

/** One copy where it lies: its drawing turned about the origin by `turn`, then moved by (x, y). */
export interface Placement {
	readonly name: string;
	readonly copy: number;
	readonly turn: number;
	readonly x: number;
	readonly y: number;
	/** On folded cloth: laid on the fold, or cut through both layers, of which this copy is the upper or (mirrored) the lower. */
	readonly on?: 'fold' | 'upper' | 'lower';
}

/** A piece as it is laid: every way of turning it, with its outline. */
export interface Drawn {
	readonly piece: ClothPiece;
	readonly outline: Outline;
}
