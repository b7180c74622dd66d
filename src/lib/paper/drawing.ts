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
 * A word or a figure. `rank`: who gets the place first (0, the default, is always written; a higher one only where it
 * fits). `or`: where else it may go, tried in turn. `clear`: it keeps off the lines as well as off other words.
 */
interface Words {
	readonly text: string;
	readonly voice: Voice;
	readonly rank?: number;
	readonly clear?: boolean;
	readonly or?: readonly Label[];
	readonly layer?: string;
}
export type Label =
	| (Words & { readonly shape: 'text'; readonly at: Point; readonly shift?: Point; readonly anchor?: 'start' | 'middle' | 'end'; /** A second line under it, in the label's voice. */ readonly under?: string; /** Radians, counterclockwise. */ readonly angle?: number })
	/** Words set along a path, on its left side as it runs. */
	| (Words & { readonly shape: 'textAlong'; readonly path: Path; /** Ink units from the path to the foot of the letters, positive to its left. */ readonly off?: number });

/**
 * A scale along a path; the writer chooses how fine, so that its ticks can be told apart. Ticks and numbers lie on the
 * path's right side as it runs, `off` ink units away (0 by default). `tape` has a body, `scale` a spine alone.
 */
export interface Ruler {
	readonly shape: 'ruler';
	readonly along: Path;
	/** What it reads where the path begins, mm. */
	readonly starts: number;
	readonly unit: 'cm' | 'in';
	readonly body: 'scale' | 'tape';
	/** mm read for each mm of path, where the sheet isn't to scale; 1 otherwise. */
	readonly per?: number;
	readonly off?: number;
	readonly numbers?: boolean;
	/** The learner's own marks, in mm as the ruler reads, each with its words. */
	readonly marks: readonly { readonly at: number; readonly text: string; readonly voice: Voice }[];
	readonly layer?: string;
}

/**
 * Positions are millimetres of cloth, y up. A `shift` is in ink units, y down: 1 px on a screen, 0.75 pt on paper,
 * whatever the scale, so that a label keeps its distance from its line.
 */
export type Shape =
	| { readonly shape: 'path'; readonly path: Path; readonly closed: boolean; readonly line: LineKind | null; readonly fill: FillKind; readonly now?: boolean; /** It lies on a tape that is drawn already, so it takes the colour that reads on tape. */ readonly onTape?: boolean; readonly layer?: string }
	| Label
	| Ruler
	/** A mark of fixed ink size: a notch wedge, a dot, an arrow head. `angle` is the way it points. */
	| { readonly shape: 'mark'; readonly mark: 'notch' | 'doubleNotch' | 'dot' | 'arrow' | 'bar' | 'cross' | 'pin'; readonly at: Point; readonly shift?: Point; readonly angle?: number; readonly layer?: string };

export interface Drawing {
	/** What is in it, in one line, with its numbers: the text alternative. */
	readonly alt: string;
	/** The mm box that must be visible; writers add room for ink (labels) as `inkMargin` asks: top, right, bottom, left in ink units. */
	readonly box: { readonly from: Point; readonly to: Point };
	readonly inkMargin: readonly [number, number, number, number];
	/** Spacing of the scale dots in mm (50, 100, 50.8 or 101.6), if any, and the outlines they lie inside. */
	readonly dots?: { readonly every: number; readonly inside: Outline; readonly also?: readonly Outline[] };
	readonly shapes: readonly Shape[];
}
