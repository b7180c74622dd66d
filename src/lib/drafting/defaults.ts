// What is taken where nothing is said, and why. Lengths in mm. Share, waist and length have none: they are the skirt.
import type { HemFinish, Lining, ZipAt } from './skirt.ts';

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
	underlap: set<number>(30, 'room for a button or two hooks'),
	hem: set<number>(15, 'turned twice by half of it, it lies flat on a curve'),
	hemFinish: set<HemFinish>('narrow', 'a curved hem eases least when it is narrow (Oregon State 4-H leaflet L-87: ¼ in or rolled for circles)'),
	zipAt: set<ZipAt>('centreBack', 'the one seam of a skirt in one panel'),
	zipSeries: set<'cm' | 'in'>('cm', 'one series for every unit, so that a change of unit changes no figure'),
	lining: set<Lining | null>(null, 'unlined unless asked'),
	liningShorterBy: set<number>(25, 'stays hidden when the cloth drops'),
	waistAllowance: set<number>(15, 'clips to within 3 mm of the stitch line and still holds'),
	seamAllowance: set<number>(15, 'wide enough for a zip (15 to 25 mm)')
} as const;
