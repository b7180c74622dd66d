// Ways out that change how long a skirt is whose lengths may differ.
import type { WayOut } from '../check.ts';
import { finishedRange, zipPlace } from '../profile.ts';
import { finishedLengths, waistDipAt, type FlaredSkirt, type Lengths } from '../skirt.ts';
import { takeWayOut } from '../take.ts';
import { slack } from './slack.ts';

/**
 * So that the seam with the zip is `reach` long below the waist seam. The opening doesn't depend on the length, so what is
 * short is added; where the waist itself rises with the length it does, and none is offered.
 */
export function lengthWays(skirt: FlaredSkirt, reach: number): readonly WayOut[] {
	if (skirt.lengths && skirt.riseAt === 'waist') return [];
	const value = reach + skirt.band.depth + waistDipAt(skirt, zipPlace(skirt));
	const place: keyof Lengths = skirt.zipAt === 'leftSide' ? 'sideLeft' : 'back';
	return [{ path: skirt.lengths?.[place] === undefined ? 'skirt.length' : `skirt.lengths.${place}`, value }];
}

/** Ways to a lesser `skirt.length`, taken where the skirt is longest; none where that alone doesn't bring all of it down so far. */
export function shorterWays(skirt: FlaredSkirt, ways: readonly WayOut[]): readonly WayOut[] {
	if (!skirt.lengths) return ways;
	const four = finishedLengths(skirt);
	const longest = (['front', 'sideLeft', 'sideRight', 'back'] as const).reduce((most, place) => (four[place] > four[most] ? place : most));
	const path = skirt.lengths[longest] === undefined ? 'skirt.length' : `skirt.lengths.${longest}`;
	return ways.map((way) => ({ ...way, path })).filter((way) => finishedRange(takeWayOut(skirt, way)).length <= Number(way.value) + slack);
}
