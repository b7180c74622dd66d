// Lengths that differ: how far the smooth curve through them runs beyond the longest and the shortest.
import type { Check } from '../check.ts';
import type { Drafted } from '../draft.ts';
import { leftSide } from '../profile.ts';
import { finishedLengths } from '../skirt.ts';
import { extremes, heightAt, slopeAt, waveThrough } from '../wave.ts';

/** Less than can be marked, mm (common practice, no source). */
const marks = 0.5;

/**
 * Through front F, side S and back B the curve has a turn of its own between them where |F − B| < 2|F − 2S + B| (its slope is
 * sin τ times a sum that is nought there). `place` is where round the waist, 0 at centre front, 0.25 at the left side.
 */
export function lengthsChecks({ skirt }: Drafted): readonly Check[] {
	if (!skirt.lengths) return [];
	const four = finishedLengths(skirt);
	const wave = waveThrough(four, leftSide(skirt));
	const at = (place: number): number => heightAt(wave, place);
	const { least, greatest } = extremes(at, (place) => slopeAt(wave, place));
	const [shortest, longest] = [Math.min(...Object.values(four)), Math.max(...Object.values(four))];
	const [under, over] = [shortest - at(least), at(greatest) - longest];
	const place = over >= under ? greatest : least;
	const beyond = Math.max(over, under);
	return [{ code: 'lengths-between', severity: beyond > marks ? 'note' : 'good', figures: { shortest, longest, extreme: at(place), beyond, place }, waysOut: [] }];
}
