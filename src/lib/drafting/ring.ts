// A full circle in one piece, pulled on over the hip: a ring of cloth without a seam. Its waist is a hole.
import type { Outline } from './geometry/outline.ts';
import { landmarksBetween } from './panel.ts';
import type { Piece } from './piece.ts';

export interface RingSize {
	readonly waistRadius: number;
	readonly hemRadius: number;
	readonly waistAllowance: number;
	readonly hemAllowance: number;
	readonly outer?: string;
	readonly inner?: string;
}

/** A whole circle about the origin. It starts at centre back, which lies at −x; centre front lies at +x. */
const circle = (name: string, radius: number, turn: number): Outline =>
	({ start: [-radius, 0], edges: [{ name, end: [-radius, 0], centre: [0, 0], turn }] });

export function ringPiece({ waistRadius, hemRadius, waistAllowance, hemAllowance, outer = 'hem', inner = 'waist' }: RingSize, name: string, cloth: Piece['cloth']): Piece {
	const end = (hemRadius - waistRadius) * 0.1;
	return {
		name, cloth, count: 1,
		fold: { name: 'centre front', from: [waistRadius - waistAllowance, 0], to: [hemRadius + hemAllowance, 0] },
		grain: { from: [0, waistRadius + end], to: [0, hemRadius - end] },
		stitch: circle(outer, hemRadius, 2 * Math.PI),
		cut: circle(outer, hemRadius + hemAllowance, 2 * Math.PI),
		// The hole runs the other way, so that the cloth lies on the left of every edge.
		hole: { stitch: circle(inner, waistRadius, -2 * Math.PI), cut: circle(inner, waistRadius - waistAllowance, -2 * Math.PI) },
		notches: inner !== 'waist' ? [] : [
			{ edge: 'waist', at: 0, kind: 'double', marks: 'centre back' },
			...landmarksBetween(0.5, 1.5).map(({ at, mark }) => ({ edge: 'waist', at: 1.5 - at, kind: mark.kind, marks: mark.marks }))
		]
	};
}
