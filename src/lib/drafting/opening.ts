// How long an opening lets the hip through, and the zip that is sold in that length.

/** Zips as shops sell them, mm (from memory). */
export const shopZips: Readonly<Record<'cm' | 'in', readonly number[]>> = {
	cm: [10, 12, 15, 18, 20, 22, 25, 30, 35, 40, 50, 55, 60].map((cm) => cm * 10),
	in: [4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22].map((inches) => inches * 25.4)
};

/** How far below the waist line a zip's top stop is set, mm (common practice, no source). */
export const topStop = 5;

/** The lining's opening ends this far below the zip's, clear of its tape (common practice, no source). mm */
export const liningBelowZip = 15;

/**
 * The least opening below the waist seam, mm, that lets `hip` (its ease included) through cloth that doesn't stretch.
 * Every closed loop of cloth round the opened waist passes the slit's end, and the shortest is a taut string: tangent,
 * waist arc, tangent. With r the waist radius and β the angle that each tangent cuts off the arc, the loop is
 * θr + 2r(tan β − β) long and passes r/cos β from the corner. Where the tangents use up the whole sweep the loop is a
 * chord, 2q·sin(θ/2). Shortest path; checked against a grid search in the tests.
 */
export function openingBelow(seam: number, sweep: number, hip: number): number {
	if (hip <= seam) return 0;
	const radius = seam / sweep;
	const lack = (hip - seam) / (2 * radius);
	const half = sweep / 2;
	// Is the sweep used up before the loop is long enough?
	if (half < Math.PI / 2 && Math.tan(half) - half < lack) return hip / (2 * Math.sin(half)) - radius;
	// tan β − β = lack: Newton from above, where the curve is convex, so it only ever comes down to the root.
	let angle = Math.min(Math.cbrt(3 * lack), Math.atan(lack + Math.PI / 2));
	for (let i = 0; i < 60; i++) {
		const slope = Math.tan(angle);
		const step = (slope - angle - lack) / (slope * slope);
		angle -= step;
		if (!(step > 1e-14)) break;
	}
	return radius / Math.cos(angle) - radius;
}

export interface Zip {
	readonly length: number;
	/** False where no shop length reaches: then it is cut from a roll. */
	readonly inShops: boolean;
}

/** The least shop length that is not under the opening, the shortest where none is needed; beyond the longest, the next whole cm or inch. */
export function zipFor(opening: number, series: 'cm' | 'in'): Zip {
	// A billionth of slack, so that an opening of exactly 20 cm takes a zip of 20 cm.
	const length = shopZips[series].find((mm) => mm >= opening - 1e-6);
	if (length !== undefined) return { length, inShops: true };
	const step = series === 'cm' ? 10 : 25.4;
	return { length: Math.ceil((opening - 1e-6) / step) * step, inShops: false };
}

export interface ZipFigures {
	/** The zip to buy: the least shop length that is not under the opening. */
	readonly zipLength: number;
	/** Where the seam starts below the waist line: the zip's bottom stop, its length and the top stop's 5 mm down, or the hem fold if that comes first. */
	readonly zipEndBelowSeam: number;
}
export function zipFigures(opening: number, series: 'cm' | 'in', skirtLength: number): ZipFigures {
	const { length } = zipFor(opening, series);
	return { zipLength: length, zipEndBelowSeam: Math.min(length + topStop, skirtLength) };
}
