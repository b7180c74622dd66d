// What a page tells the head of every screen, as `mast` in its load's data. A page's word goes before its layout's.
export interface Place {
	readonly href: string;
	readonly label: string;
}

export interface Mast {
	/** Where one can go from here; the deepest one that begins the address has the notch. */
	readonly places?: readonly Place[];
	/** At the right on a wide screen: which evening, whose skirt. */
	readonly note?: string;
	/** With it, a phone shows a row of its own instead of the places: the way back, and at most one other way. */
	readonly back?: Place;
	readonly right?: Place;
}

/** The place that the address is in: the longest that begins it, whole segments only. */
export function placeAt(places: readonly Place[], path: string): Place | null {
	const fits = places.filter(({ href }) => path === href || path.startsWith(`${href}/`));
	return fits.reduce<Place | null>((best, place) => (best && best.href.length >= place.href.length ? best : place), null);
}
