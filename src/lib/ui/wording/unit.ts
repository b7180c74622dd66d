import type { Unit } from '../../drafting/length.ts';

/** Units in full, for those who listen and for switches. */
export const unitWords: Readonly<Record<Unit, string>> = { mm: 'millimetres', cm: 'centimetres', in: 'inches' };
