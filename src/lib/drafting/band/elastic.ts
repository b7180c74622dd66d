// What an elastic asks: its own length, and the room it slides in.

/** What an elastic is cut to, its ends lapped: nine tenths of the waist (from memory: try it on). mm */
export const elasticLength = (waist: number): number => 0.9 * waist + elasticLap;
/** How far the elastic's ends lie on each other, mm (from memory). */
export const elasticLap = 20;

/** A casing is this much deeper than its elastic, so that it slides in and doesn't twist, mm (from memory). */
export const casingRoom = 3;
