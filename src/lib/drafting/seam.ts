/** A stretch of one edge of one copy of a piece, `from`…`to` in 0…1 along the edge's own direction (from > to: walked backwards). */
export interface SeamEdge {
	readonly piece: string;
	/** 1…count */
	readonly copy: number;
	readonly edge: string;
	readonly from: number;
	readonly to: number;
}

/** Which edges are sewn to each other, in the order they are met. */
export interface Join {
	/** What is joined, in the trade's words: `centre back`, `left side`, `waist to band`, `lining to waist`. */
	readonly name: string;
	readonly a: readonly SeamEdge[];
	readonly b: readonly SeamEdge[];
	/** How much longer `a` is to be than `b`, worked in while sewing. Chosen by the style. */
	readonly ease: number;
}

/** A join with both lengths as measured on the outlines' stitch lines. */
export interface Seam extends Join {
	readonly lengthA: number;
	readonly lengthB: number;
}
