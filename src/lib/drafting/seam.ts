/** A stretch of one edge of one copy of a piece, `from`…`to` in 0…1 along the edge's own direction (from > to: walked backwards). */
export interface SeamEdge {
	readonly piece: string;
	/** 1…count */
	readonly copy: number;
	readonly edge: string;
	readonly from: number;
	readonly to: number;
}

/** Edges sewn to each other at the stitch line. Lengths are measured on the outlines; `ease` is chosen by the style. */
export interface Seam {
	/** What is joined, in the trade's words: `centre back`, `left side`, `waist to band`, `lining to waist`. */
	readonly name: string;
	readonly a: readonly SeamEdge[];
	readonly b: readonly SeamEdge[];
	readonly lengthA: number;
	readonly lengthB: number;
	/** How much longer `a` is to be than `b`, worked in while sewing. */
	readonly ease: number;
}
