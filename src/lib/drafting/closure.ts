// Where a skirt opens: its first seam, going round.
import type { ZipAt } from './skirt.ts';

/** 0 is centre front, 0.25 the left side, 0.5 centre back. */
export const startPlace = (zipAt: ZipAt): number => (zipAt === 'leftSide' ? 0.25 : 0.5);
export const closureName = (zipAt: ZipAt): string => (zipAt === 'leftSide' ? 'left side' : 'centre back');
