// What an elastic asks: its own length, and the room it slides in.

/** How far an elastic's ends lap. mm (from memory) */
export const elasticLap = 20;
/** What an elastic is cut to, its ends lapped: nine tenths of the waist (from memory: try it on). mm */
export const elasticLength = (waist: number): number => 0.9 * waist + elasticLap;

/** A casing is this much deeper than its elastic, so that it slides in and doesn't twist, mm (from memory). */
export const casingRoom = 3;
