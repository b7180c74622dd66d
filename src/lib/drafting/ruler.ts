// A length as a ruler can show it: the nearest mark, and what the rounding costs.

export type Graduation = 'mm' | 'halfCm' | 'eighth' | 'sixteenth';
/** The smallest division, mm. */
export const graduations: Readonly<Record<Graduation, number>> = { mm: 1, halfCm: 5, eighth: 25.4 / 8, sixteenth: 25.4 / 16 };

export interface RulerMark {
	/** Divisions from the ruler's zero. */
	readonly divisions: number;
	readonly mm: number;
	/** How far the mark lies beyond the length; short of it is less than nothing. */
	readonly off: number;
}

export function rulerMark(mm: number, graduation: Graduation): RulerMark {
	const divisions = Math.round(mm / graduations[graduation]);
	const marked = divisions * graduations[graduation];
	return { divisions, mm: marked, off: marked - mm };
}

/** A waist radius marked `off` mm too far out makes the waist longer by θ·off (circle geometry). */
export const waistMoves = (mark: RulerMark, sweepAngle: number): number => sweepAngle * mark.off;
