// What is taken where nothing is said, and why. Lengths in mm. Share, waist and length have none: they are the skirt.
import type { Closure, HemCorner, HemFinish, Lining, RiseAt, Sits, ZipAt } from './skirt.ts';

export interface Default<T> {
	readonly value: T;
	/** All of it common practice, no source, unless it says otherwise. */
	readonly because: string;
}
const set = <T>(value: T, because: string): Default<T> => ({ value, because });

export const defaults = {
	waistEase: set<number>(10, 'a band that closes over a tucked shirt and a breath'),
	hipEase: set<number>(20, 'room to sit in a woven cloth'),
	panels: set<number>(1, 'one piece, one seam'),
	bandDepth: set<number>(40, 'stands up with a light interfacing'),
	sits: set<Sits>('above', 'the waist seam lies on the measured waist line'),
	contourSits: set<Sits>('below', 'its top edge lies on the measured waist line, its lower edge where that girth was read'),
	elastic: set<number>(30, 'wide enough to stay flat'),
	casingSlack: set<number>(5, 'how much deeper the casing is than the elastic it takes'),
	casingDepth: set<number>(35, 'the elastic and a little more, so that it slides'),
	waistFacing: set<number>(60, 'deep enough to stay inside'),
	closure: set<Closure>('zip', 'a woven cloth does not stretch over the hip'),
	underlap: set<number>(30, 'room for a button or two hooks'),
	/** Of `lengths`: what isn't named is as long as `length`. */
	riseAt: set<RiseAt>('hem', 'a waist that stays an arc takes its band without a pull; the 1914 book makes the difference at the waist'),
	hemCorner: set<HemCorner>('mitred', 'the seam allowance runs on, and a narrow hem hardly shows the difference'),
	hem: set<number>(15, 'turned twice by half of it, it lies flat on a curve'),
	hemFacing: set<number>(50, 'deep enough to lie flat and be caught down'),
	hemFinish: set<HemFinish>('narrow', 'a curved hem eases least when it is narrow (Oregon State 4-H leaflet L-87: ¼ in or rolled for circles)'),
	zipAt: set<ZipAt>('centreBack', 'the one seam of a skirt in one panel'),
	zipSeries: set<'cm' | 'in'>('cm', 'one series for every unit, so that a change of unit changes no figure'),
	lining: set<Lining | null>(null, 'unlined unless asked'),
	liningShorterBy: set<number>(25, 'stays hidden when the cloth drops'),
	waistAllowance: set<number>(15, 'wide enough to clip and to grade (15 mm), and no more to draw into the curve'),
	seamAllowance: set<number>(15, 'wide enough for a zip (15 to 25 mm)')
} as const;
