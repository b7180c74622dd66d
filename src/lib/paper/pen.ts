// How heavy each line is on paper and how it is broken, so that lines are told apart without colour.
import type { Pen } from './sheet.ts';

export interface Stroke {
	readonly weight: number;
	/** Ink and gap in turn, mm. */
	readonly dash?: readonly number[];
	readonly round?: boolean;
}

/** An ink unit of a Drawing: 0.75 pt, which is a CSS pixel. */
export const INK = 25.4 / 96;
const line = (weight: number, ...dash: readonly number[]): Stroke => (dash.length ? { weight: weight * INK, dash: dash.map((d) => d * INK) } : { weight: weight * INK });

export const PENS: Readonly<Record<Pen, Stroke>> = {
	cut: line(2.4),
	stitch: line(1.6, 7, 4),
	fold: line(1.6, 18, 4, 3, 4),
	tack: line(2.2, 13, 7),
	staystitch: line(2, 2, 3),
	sewn: line(1.2),
	grain: line(1.3),
	construction: { ...line(1.6, 0, 4), round: true },
	measure: line(1.1),
	asItWas: line(1.6, 3, 7),
	edge: line(1.4),
	fine: line(0.7),
	check: line(5.5),
	trim: line(0.8, 2, 4),
	rule: line(0.6)
};
