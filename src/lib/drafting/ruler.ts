// A length as a ruler can show it: the nearest mark, where that mark stands, and what the rounding costs.

export type Graduation = 'mm' | 'halfCm' | 'eighth' | 'sixteenth';

export interface Ruler {
	/** From one mark to the next, mm. */
	readonly division: number;
	/** From one numbered mark to the next, mm, and how many marks that is. */
	readonly numbered: number;
	readonly perNumber: number;
	/** How many marks it is from one long mark to the next: half a number, where there is a mark there. */
	readonly perLong: number;
}
const inch = 25.4;
export const rulers: Readonly<Record<Graduation, Ruler>> = {
	mm: { division: 1, numbered: 10, perNumber: 10, perLong: 5 },
	halfCm: { division: 5, numbered: 10, perNumber: 2, perLong: 1 },
	eighth: { division: inch / 8, numbered: inch, perNumber: 8, perLong: 4 },
	sixteenth: { division: inch / 16, numbered: inch, perNumber: 16, perLong: 8 }
};
/** The smallest division, mm. */
export const graduations: Readonly<Record<Graduation, number>> = {
	mm: rulers.mm.division, halfCm: rulers.halfCm.division, eighth: rulers.eighth.division, sixteenth: rulers.sixteenth.division
};

export interface RulerMark {
	/** Divisions from the ruler's zero. */
	readonly divisions: number;
	readonly mm: number;
	/** How far the mark lies beyond the length; short of it is less than nothing. */
	readonly off: number;
}

/** Halfway between two marks, the further one is taken. */
export function rulerMark(mm: number, graduation: Graduation): RulerMark {
	const { division } = rulers[graduation];
	// A billionth more, so that a length that lies halfway doesn't fall by its last digit.
	const divisions = Math.floor(mm / division + 0.5 + 1e-9);
	const marked = divisions * division;
	return { divisions, mm: marked, off: marked - mm };
}

/** Where a mark is found: from the nearest long mark, so many small ones on (or back, where it is less than nothing). */
export interface RulerPlace {
	/** Divisions from zero to the long mark. */
	readonly from: number;
	readonly count: number;
}

/** Halfway between two long marks it is counted on from the one before. */
export function rulerPlace({ divisions }: RulerMark, graduation: Graduation): RulerPlace {
	const { perLong } = rulers[graduation];
	const from = Math.ceil(divisions / perLong - 0.5) * perLong;
	return { from: from + 0, count: divisions - from };
}

/** A waist radius marked `off` mm too far out makes the waist longer by θ·off (circle geometry). */
export const waistMoves = (mark: RulerMark, sweepAngle: number): number => sweepAngle * mark.off;
