// The waist's allowance lies inside the curve and is shorter than its stitch line: clipped, it opens and lies flat.

/** mm from one clip to the next (common practice, no source). */
export const clipEvery = 15;
/** Staystitching lies 2 to 3 mm from the stitch line, inside the allowance (common practice, no source). mm */
export const staystitchOff = 2.5;
/**
 * A clip ends this far from the stitch line: 2 mm or more short of the staystitching, wherever that came to lie, so that no
 * thread is cut and the cloth can't tear to the seam (common practice, no source). mm
 */
const clipStops = 5;

/** How deep each clip is, from the cut edge, mm; null where the allowance is too narrow for any. */
export function clipDepth(allowance: number): number | null {
	return allowance > clipStops ? allowance - clipStops : null;
}
