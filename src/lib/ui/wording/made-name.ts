// What the readings on the real thing are called. Apart from what follows from them, so that a list of flags stays small.
import type { MadeName } from '../../class/made.ts';

/** At the start of a sentence. */
export const madeWhat: Readonly<Record<MadeName, string>> = {
	clothAfterWashing: 'The washed cloth',
	radiusDrawn: 'The waist radius as drawn',
	waistAfterStaystitch: 'The waist after staystitching',
	zipBought: 'The zip that was bought',
	waistSeamAfterSewing: 'The sewn waist seam',
	floor: 'The hem above the floor',
	hemAbove: 'The height chosen for the hem'
};
