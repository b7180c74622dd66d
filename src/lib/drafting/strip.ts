// A rectangle of cloth as a piece's outlines, turned as a flared skirt's panels are: down the skirt along +x, round it along +y.
import { offset } from './geometry/offset.ts';
import type { Outline } from './geometry/outline.ts';

export interface StripEdges {
	/** Where it begins, going round; where it ends; towards the waist; towards the hem. */
	readonly first: string;
	readonly second: string;
	readonly top: string;
	readonly lower: string;
}

/** Counterclockwise: down the first edge, along the lower one, up the second, back along the top. */
export function stripOutline({ first, second, top, lower }: StripEdges, wide: number, deep: number): Outline {
	const half = wide / 2;
	const line = { centre: null, turn: 0 } as const;
	return {
		start: [0, -half],
		edges: [
			{ ...line, name: first, end: [deep, -half] },
			{ ...line, name: lower, end: [deep, half] },
			{ ...line, name: second, end: [0, half] },
			{ ...line, name: top, end: [0, -half] }
		]
	};
}

/** The cut line of straight-edged cloth: there is always one, as no allowance is negative. */
export function cutOf(stitch: Outline, allowance: (edge: string) => number): Outline {
	const cut = offset(stitch, ({ name }) => allowance(name));
	if (!cut) throw new Error('no cut line round straight edges');
	return cut;
}
