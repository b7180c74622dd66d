// A Drawing is plain data that survives JSON. Writers (screen, SVG, PDF, later DXF) print it and round once, there.
import type { Outline } from '../drafting/geometry/outline.ts';
import type { Point } from '../drafting/geometry/point.ts';

/** The trade's kinds of line; each has one weight and dash in every writer (look.md, "Lines in drawings"). */
export type LineKind =
	| 'cut' | 'stitch' | 'fold' | 'tack' | 'staystitch' | 'sewn' | 'grain'
	| 'construction' | 'measure' | 'asItWas' | 'edge' | 'fine';
/** What an area is filled with; wrong side and lining carry a hatch as well, so that colour never stands alone. */
export type FillKind = 'rightSide' | 'wrongSide' | 'lining' | 'interfacing' | 'paper' | 'tape' | 'ink' | 'none';
/** `figure`: the number to use. `label`: words along lines. `small`: scales. `title`: a piece's name. */
export type Voice = 'title' | 'figure' | 'label' | 'labelStrong' | 'small';

/** An open run of edges (an Outline whose end need not meet its start). */
export type Path = Outline;

/**
 * Positions are millimetres of cloth, y up. A `shift` is in ink units, y down: 1 px on a screen, 0.75 pt on paper,
 * whatever the scale, so that a label keeps its distance from its line.
 */
export type Shape =
	| { readonly shape: 'path'; readonly path: Path; readonly closed: boolean; readonly line: LineKind | null; readonly fill: FillKind; readonly now?: boolean; readonly layer?: string }
	| { readonly shape: 'text'; readonly at: Point; readonly shift?: Point; readonly text: string; readonly voice: Voice; readonly anchor?: 'start' | 'middle' | 'end'; /** Radians, counterclockwise. */ readonly angle?: number; readonly layer?: string }
	/** Words set along a path, on its left side as it runs. */
	| { readonly shape: 'textAlong'; readonly path: Path; readonly text: string; readonly voice: Voice; /** Ink units from the path, positive to its left. */ readonly off?: number; readonly layer?: string }
	/** A mark of fixed ink size: a notch wedge, a dot, an arrow head. `angle` is the way it points. */
	| { readonly shape: 'mark'; readonly mark: 'notch' | 'doubleNotch' | 'dot' | 'arrow' | 'bar' | 'cross' | 'pin'; readonly at: Point; readonly angle?: number; readonly layer?: string };

export interface Drawing {
	/** What is in it, in one line, with its numbers: the text alternative. */
	readonly alt: string;
	/** The mm box that must be visible; writers add room for ink (labels) as `inkMargin` asks: top, right, bottom, left in ink units. */
	readonly box: { readonly from: Point; readonly to: Point };
	readonly inkMargin: readonly [number, number, number, number];
	/** Spacing of the scale dots in mm (50, 100 or 50.8), if any, and the outline they lie inside. */
	readonly dots?: { readonly every: number; readonly inside: Outline };
	readonly shapes: readonly Shape[];
}
