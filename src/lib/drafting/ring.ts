// A full circle in one piece, pulled on over the hip: a ring of cloth without a seam. Its waist is a hole.
import type { Outline } from './geometry/outline.ts';
import { offset } from './geometry/offset.ts';
import { landmarksBetween, type PanelSize } from './panel.ts';
import type { Piece } from './piece.ts';
import { shapedCircle } from './shape.ts';

export type RingSize = Pick<PanelSize, 'waistRadius' | 'hemRadius' | 'waistAllowance' | 'hemAllowance' | 'outer' | 'inner' | 'shape'>;

/** A whole circle about the origin. It starts at centre back, which lies at −x; centre front lies at +x. */
const circle = (name: string, radius: number, turn: number): Outline =>
	({ start: [-radius, 0], edges: [{ name, end: [-radius, 0], centre: [0, 0], turn }] });

/** The outer edge's stitch and cut lines, and the hole's; a cut line is null where there is no room for one. */
export function ringOutlines({ waistRadius, hemRadius, waistAllowance, hemAllowance, outer = 'hem', inner = 'waist', shape }: RingSize) {
	// The hole runs the other way, so that the cloth lies on the left of every edge.
	if (!shape) return {
		stitch: circle(outer, hemRadius, 2 * Math.PI), cut: circle(outer, hemRadius + hemAllowance, 2 * Math.PI),
		hole: { stitch: circle(inner, waistRadius, -2 * Math.PI), cut: circle(inner, waistRadius - waistAllowance, -2 * Math.PI) }
	};
	const stitch = shapedCircle(shape.profile, shape.outer, outer, 0.5, 1.5);
	const hole = shapedCircle(shape.profile, shape.inner, inner, 1.5, 0.5);
	return { stitch, cut: offset(stitch, () => hemAllowance), hole: { stitch: hole, cut: offset(hole, () => waistAllowance) } };
}

/** Null where there is no room for its allowances. */
export function ringPiece(size: RingSize, name: string, cloth: Piece['cloth']): Piece | null {
	const { waistAllowance, hemAllowance, inner = 'waist', shape } = size;
	const { stitch, cut, hole } = ringOutlines(size);
	if (!cut || !hole.cut) return null;
	// At centre front, and a quarter round from it.
	const [inFront, outFront] = shape ? [shape.inner.radius(0), shape.outer.radius(0)] : [size.waistRadius, size.hemRadius];
	const [from, to] = shape ? [shape.inner.radius(0.25), shape.outer.radius(0.25)] : [size.waistRadius, size.hemRadius];
	const end = (to - from) * 0.1;
	return {
		name, cloth, count: 1,
		fold: shape && !shape.profile.symmetric ? null : { name: 'centre front', from: [inFront - waistAllowance, 0], to: [outFront + hemAllowance, 0] },
		grain: { from: [0, from + end], to: [0, to - end] },
		stitch, cut, hole: { stitch: hole.stitch, cut: hole.cut },
		notches: inner !== 'waist' ? [] : [
			{ edge: 'waist', at: 0, kind: 'double', marks: 'centre back' },
			...landmarksBetween(0.5, 1.5).map(({ at, mark }) => ({ edge: 'waist', at: 1.5 - at, kind: mark.kind, marks: mark.marks }))
		]
	};
}
