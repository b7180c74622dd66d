// Where the two curved edges of an uneven skirt lie, going round: lengths that differ, made at the hem or at the waist, and
// a waist that dips. Millimetres and radians; places as in panel.ts, 0 at centre front.
import { finishedLengths, waistDipAt, waistDipSlope, type FlaredSkirt } from './skirt.ts';
import { extremes, heightAt, slopeAt, waveThrough } from './wave.ts';

/** How far an edge lies from the corner, and how that changes for each whole turn. */
export interface Round {
	readonly radius: (place: number) => number;
	readonly slope: (place: number) => number;
}

export interface Profile {
	/** The waist's radius where nothing lifts or lowers it. */
	readonly base: number;
	/** The polar angle at a place from centre front, and how it grows for each whole turn. */
	readonly angle: (place: number) => number;
	readonly turning: (place: number) => number;
	readonly waist: Round;
	readonly hem: Round;
	/** Are left and right alike? */
	readonly symmetric: boolean;
}

/** Where the left side lies round the waist: a quarter from centre front, or where a front and a back of unequal width meet. */
export const leftSide = ({ panels, panelShares, zipAt }: FlaredSkirt): number =>
	panels === 2 && panelShares && zipAt === 'leftSide' ? panelShares[1]! / 2 : 0.25;

/** How far below a level waist the waist edge lies, and how far the hem. */
function offsets(skirt: FlaredSkirt): { readonly waist: Round; readonly hem: Round; readonly levelWaist: boolean; readonly symmetric: boolean } {
	const four = finishedLengths(skirt);
	const wave = waveThrough(four, leftSide(skirt));
	const dips = skirt.waistDip !== undefined;
	const dip: Round = { radius: (place) => waistDipAt(skirt, place), slope: (place) => waistDipSlope(skirt, place) };
	const symmetric = four.sideLeft === four.sideRight;
	const { depth } = skirt.band;
	if (skirt.riseAt !== 'waist') {
		const hem: Round = { radius: (place) => heightAt(wave, place) - depth, slope: (place) => slopeAt(wave, place) };
		return { waist: dip, hem, levelWaist: !dips, symmetric };
	}
	// The hem is level, and the waist lies as far above it as the length says (The Perfect Dressmaking System, 1914: lengths
	// of 38, 39 and 39½ in give a rise of 1½ in from front to back, made at the waist).
	const side = (four.sideLeft + four.sideRight) / 2;
	return {
		waist: { radius: (place) => side - heightAt(wave, place) + dip.radius(place), slope: (place) => dip.slope(place) - slopeAt(wave, place) },
		hem: { radius: () => side - depth, slope: () => 0 },
		levelWaist: false, symmetric
	};
}

/** Along the waist edge, the steepest it may rise or fall against an arc: the sine of 30° (common practice, no source: a band no longer lies along it). */
export const steepest = 0.5;

/**
 * `seam` is the waist seam's girth, `sweep` the whole sweep. Round a level waist the angle grows evenly. Round another the
 * waist edge itself does, so that a place stays a share of the waist seam, its girth is kept to the last digit, and band,
 * lining and facing meet it place by place: with s the girth for each turn and u the waist's height, angle′ =
 * √(s² − u′²)/(base + u), and the base is the one that makes the whole angle the sweep (arc length in polar coordinates).
 * Null where the waist is steeper than `steepest`.
 */
export function profileOf(skirt: FlaredSkirt, seam: number, sweep: number): Profile | null {
	const { waist, hem, levelWaist, symmetric } = offsets(skirt);
	const from = (base: number, { radius, slope }: Round): Round => ({ radius: (place) => base + radius(place), slope });
	if (levelWaist) {
		const base = seam / sweep;
		return { base, angle: (place) => sweep * place, turning: () => sweep, waist: from(base, waist), hem: from(base, hem), symmetric };
	}
	const solved = unrolled(waist, seam, sweep);
	return solved && { ...solved, waist: from(solved.base, waist), hem: from(solved.base, hem), symmetric };
}

/** Steps round the waist; a place where a dip begins is the end of one. */
const steps = 128;

function unrolled({ radius, slope }: Round, seam: number, sweep: number): Pick<Profile, 'base' | 'angle' | 'turning'> | null {
	// At each step's beginning and middle.
	const heights: number[] = [];
	const along: number[] = [];
	for (let i = 0; i < 2 * steps; i++) {
		const place = i / (2 * steps);
		const rise = slope(place);
		if (Math.abs(rise) > steepest * seam) return null;
		heights.push(radius(place));
		along.push(Math.sqrt(seam * seam - rise * rise));
	}
	// Simpson's rule, step by step.
	const weight = (i: number): number => (i % 2 ? 4 : 2) / (6 * steps);
	const base = baseFor(heights, along.map((one, i) => one * weight(i)), sweep);
	const turning = (place: number): number => Math.sqrt(seam * seam - slope(place) ** 2) / (base + radius(place));
	const angles = [0];
	for (let i = 0; i < steps; i++) {
		const at = (k: number): number => along[k % (2 * steps)]! / (base + heights[k % (2 * steps)]!);
		angles.push(angles[i]! + (at(2 * i) + 4 * at(2 * i + 1) + at(2 * i + 2)) / (6 * steps));
	}
	const angle = (place: number): number => {
		const turns = Math.floor(place);
		const part = (place - turns) * steps;
		const i = Math.min(steps - 1, Math.floor(part));
		return turns * sweep + between(angles[i]!, angles[i + 1]!, turning(i / steps) / steps, turning((i + 1) / steps) / steps, part - i);
	};
	return { base, angle, turning };
}

/** Newton from below, where the sum is convex and falling, so that it only ever climbs to the root. */
function baseFor(heights: readonly number[], weighted: readonly number[], sweep: number): number {
	const least = Math.min(...heights);
	const level = weighted.reduce((sum, one) => sum + one, 0) / sweep;
	let base = Math.max(level - Math.max(...heights), level / 1000 - least);
	for (let i = 0; i < 100; i++) {
		let [sum, fall] = [0, 0];
		for (let k = 0; k < heights.length; k++) {
			const radius = base + heights[k]!;
			sum += weighted[k]! / radius;
			fall += weighted[k]! / (radius * radius);
		}
		const step = (sum - sweep) / fall;
		base += step;
		if (!(step > 1e-12 * level)) break;
	}
	return base;
}

/** Hermite's cubic between two values with their slopes. */
function between(a: number, b: number, slopeA: number, slopeB: number, part: number): number {
	const [t, s] = [part, 1 - part];
	return s * s * (a * (1 + 2 * t) + slopeA * t) + t * t * (b * (1 + 2 * s) - slopeB * s);
}

/** Is the waist an arc about the corner after all? */
export const isLevelWaist = ({ lengths, riseAt, waistDip }: FlaredSkirt): boolean => waistDip === undefined && (lengths === undefined || riseAt !== 'waist');

/** Where round the waist the seam with the zip lies. */
export const zipPlace = (skirt: FlaredSkirt): number => (skirt.zipAt === 'leftSide' ? leftSide(skirt) : 0.5);

/** Below the band, at each place: the same whatever the flare. */
export function lengthRound(skirt: FlaredSkirt): Round {
	const { waist, hem } = offsets(skirt);
	return { radius: (place) => hem.radius(place) - waist.radius(place), slope: (place) => hem.slope(place) - waist.slope(place) };
}

/** The least length below the band and the greatest, wherever they lie. */
export function lengthRange(skirt: FlaredSkirt): { readonly least: number; readonly greatest: number } {
	const { radius, slope } = lengthRound(skirt);
	const { least, greatest } = extremes(radius, slope);
	return { least: radius(least), greatest: radius(greatest) };
}

/** The finished length where it is greatest, a dip left out of account, and where it is least, if lengths differ. */
export function finishedRange(skirt: FlaredSkirt): { readonly length: number; readonly shortestLength?: number } {
	if (!skirt.lengths) return { length: skirt.length };
	const wave = waveThrough(finishedLengths(skirt), leftSide(skirt));
	const height = (place: number): number => heightAt(wave, place);
	const { least, greatest } = extremes(height, (place) => slopeAt(wave, place));
	return { length: height(greatest), shortestLength: height(least) };
}

/** The length of an edge round a profile, by Simpson's rule (arc length in polar coordinates). */
export function lengthOfRound({ turning }: Profile, { radius, slope }: Round): number {
	const speed = (place: number): number => Math.sqrt((radius(place) * turning(place)) ** 2 + slope(place) ** 2);
	let sum = 0;
	for (let i = 0; i < 2 * steps; i++) sum += speed(i / (2 * steps)) * (i % 2 ? 4 : 2);
	return sum / (6 * steps);
}
