// Readings taken on the real thing while a skirt is made, and whether they can be readings at all. Millimetres.
import type { Issue } from '../result.ts';

/** Where the edge hangs: `place` runs 0…1 round the waist from centre front to the wearer's left, as a panel's does. */
export interface FloorReading {
	readonly place: number;
	/** From the floor up to the cut edge of the hem. */
	readonly distance: number;
}

/** All may be left out: each is taken when its stage is reached, or when something has gone otherwise than planned. */
export interface AsMade {
	/** From the corner to the waist stitch line as it was drawn. */
	readonly radiusDrawn?: number;
	/** Along the cut edge of the waist after staystitching, all round, from stitch line to stitch line of the opening. */
	readonly waistEdgeAfterStaystitch?: number;
	/** Along the waist seam after sewing, all round; the underlap not counted. */
	readonly waistSeamAfterSewing?: number;
	readonly clothAfterWashing?: { readonly width: number; readonly length: number };
	/** The zip's length as the shop names it. */
	readonly zipBought?: number;
	/** 8 to 16 of them, after hanging. */
	readonly floor?: readonly FloorReading[];
	/** How high above the floor the hem fold is to be; left out, it is as low as the cloth allows. */
	readonly hemAbove?: number;
	/** From the cut edge into the piece, to the end of the nick. */
	readonly nickDepth?: number;
	/** A panel along its seam, from the waist's cut edge to the hem's. */
	readonly panelLength?: number;
	/** The band from cut end to cut end. */
	readonly bandLength?: number;
	/** The lining's waist along its stitch line, all round. */
	readonly liningWaist?: number;
	/** How far above the skirt's hem the lining's ends; less than nothing where it shows below. */
	readonly liningAbove?: number;
	/** What the closed band should go round, measured over what is worn, with the ease that is liked. */
	readonly bandWanted?: number;
}

export type ReadingName = keyof AsMade;

/** No reading in sewing is longer: 100 m, as for any length. */
const longest = 100_000;
/** Fewer than 8 places miss the dips between them; more than 16 are not marked while someone stands still (common practice, no source). */
export const floorPlaces = { least: 8, most: 16 } as const;

/** What can't be a reading, each named by its path. */
export function readingIssues(made: AsMade): readonly Issue[] {
	const issues: Issue[] = [];
	const look = (path: string, value: number | undefined, least = 0): void => {
		// Strictly more than nothing, except where a distance may be nothing.
		if (value === undefined || (Number.isFinite(value) && value <= longest && (least < 0 || path.startsWith('asMade.floor') ? value >= least : value > least))) return;
		issues.push({ code: 'length-out-of-range', path, expected: [least, longest], received: Number.isFinite(value) ? value : String(value), figures: { least, most: longest } });
	};
	const { clothAfterWashing, floor, liningAbove, ...lengths } = made;
	for (const [name, value] of Object.entries(lengths)) look(`asMade.${name}`, value);
	look('asMade.liningAbove', liningAbove, -longest);
	if (clothAfterWashing) {
		look('asMade.clothAfterWashing.width', clothAfterWashing.width);
		look('asMade.clothAfterWashing.length', clothAfterWashing.length);
	}
	if (floor) {
		const { least, most } = floorPlaces;
		if (!(floor.length >= least && floor.length <= most)) issues.push({ code: 'floor-places', path: 'asMade.floor', expected: [least, most], received: floor.length });
		floor.forEach(({ place, distance }, i) => {
			look(`asMade.floor.${i}.distance`, distance);
			if (!(place >= 0 && place < 1)) issues.push({ code: 'number-out-of-range', path: `asMade.floor.${i}.place`, expected: [0, 1], received: Number.isFinite(place) ? place : String(place), figures: { least: 0, most: 1 } });
			else if (floor.findIndex((one) => Math.abs(one.place - place) < 1e-9) < i) issues.push({ code: 'place-twice', path: `asMade.floor.${i}.place`, expected: 'another place', received: place });
		});
	}
	return issues;
}
