// A sector's first two figures, by themselves: a lesson's calculator needs no more of the draft. Circle geometry.

/** The whole sweep at the stitch lines for a share of a full circle. */
export const sweepAngle = (share: number): number => 2 * Math.PI * share;
export const waistRadius = (seam: number, sweep: number): number => seam / sweep;
