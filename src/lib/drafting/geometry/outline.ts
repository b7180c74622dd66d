import type { Point } from './point.ts';

/**
 * One edge of a piece: it runs from the end of the edge before it (or the outline's start) to `end`.
 * A line has no centre and turn 0. An arc goes round `centre` by `turn` radians, counterclockwise when positive.
 * A smooth curve is a run of tangent arcs, neighbours that share one name.
 */
export interface Edge {
	readonly name: string;
	readonly end: Point;
	readonly centre: Point | null;
	readonly turn: number;
}

/** A closed run of edges, counterclockwise: the last edge ends where the first one starts. */
export interface Outline {
	readonly start: Point;
	readonly edges: readonly Edge[];
}
