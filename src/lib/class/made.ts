// Readings on the real thing that are kept while a skirt is made: which there are, and how many lengths each has.

/** In the order in which a skirt meets them. */
export const madeNames = [
	/** Width, then length. */
	'clothAfterWashing',
	'radiusDrawn',
	/** Along the stitch line, as a lesson has it walked; the raw edge inside it reads less. */
	'waistAfterStaystitch',
	'zipBought', 'waistSeamAfterSewing',
	/** From the floor up to the cut edge, at places evenly round from centre front to the wearer's left. */
	'floor',
	/** How high above the floor the hem fold is to be; no length says: as low as the cloth allows. */
	'hemAbove'
] as const;
export type MadeName = (typeof madeNames)[number];
export const isMadeName = (name: unknown): name is MadeName => madeNames.some((one) => one === name);

/** Least and most lengths in one reading. */
export const madeCounts: Readonly<Record<MadeName, readonly [least: number, most: number]>> = {
	clothAfterWashing: [2, 2], radiusDrawn: [1, 1], waistAfterStaystitch: [1, 1], zipBought: [1, 1], waistSeamAfterSewing: [1, 1], floor: [8, 16], hemAbove: [0, 1]
};

/** One length as it was typed, and the mm it meant. */
export interface MadeLength {
	readonly mm: number;
	readonly typed: string;
}

/** How many places round the hem a page offers to read: all of them by eighths, thirds of a quarter, or sixteenths. */
export const placesOffered = [8, 12, 16] as const;
