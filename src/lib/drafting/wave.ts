// Lengths that differ round the body, as one smooth curve: from centre front (place 0) over the left side and centre back
// (0.5) to the right side and round again. Millimetres; places as in panel.ts.

/** `mean` + `first` cos τ + `second` cos 2τ + `sideways` sin τ, τ = 2π · place. */
export interface Wave {
	readonly mean: number;
	readonly first: number;
	readonly second: number;
	readonly sideways: number;
}

/** One number at each of four places. */
export interface Four {
	readonly front: number;
	readonly sideLeft: number;
	readonly sideRight: number;
	readonly back: number;
}

const round = 2 * Math.PI;

/**
 * The wave that meets all four and is level across both centres, if the sides are alike: with the sides at a quarter,
 * (F + 2S + B)/4 + (F − B)/2 cos τ + (F − 2S + B)/4 cos 2τ; sides that differ add half of it by sin τ. `side` is where the
 * left side lies, 0…0.5, and the right one as far the other way. (Ours: the shortest sum of cosines that does it.)
 */
export function waveThrough({ front, sideLeft, sideRight, back }: Four, side = 0.25): Wave {
	const [cosine, sine] = side === 0.25 ? [0, 1] : [Math.cos(round * side), Math.sin(round * side)];
	const first = (front - back) / 2;
	const second = ((front + back) / 2 + first * cosine - (sideLeft + sideRight) / 2) / (2 * sine * sine);
	return { mean: (front + back) / 2 - second, first, second, sideways: (sideLeft - sideRight) / 2 / sine };
}

export function heightAt({ mean, first, second, sideways }: Wave, place: number): number {
	const t = round * place;
	return mean + first * Math.cos(t) + second * Math.cos(2 * t) + sideways * Math.sin(t);
}

/** For each whole turn. */
export function slopeAt({ first, second, sideways }: Wave, place: number): number {
	const t = round * place;
	return round * (sideways * Math.cos(t) - first * Math.sin(t) - 2 * second * Math.sin(2 * t));
}

/** Where a smooth function round the body is least and where it is greatest: each place where its slope changes sign, found by halving. */
export function extremes(height: (place: number) => number, slope: (place: number) => number): { readonly least: number; readonly greatest: number } {
	let [least, greatest] = [0, 0];
	const take = (place: number): void => {
		if (height(place) < height(least)) least = place;
		if (height(place) > height(greatest)) greatest = place;
	};
	for (let i = 0; i < steps; i++) {
		let [low, high] = [i / steps, (i + 1) / steps];
		take(low);
		const before = slope(low);
		if (!(before * slope(high) < 0)) continue;
		for (let k = 0; k < 40; k++) {
			const middle = (low + high) / 2;
			if (slope(middle) * before > 0) low = middle;
			else high = middle;
		}
		take((low + high) / 2);
	}
	return { least, greatest };
}
/** A wave of two cosines turns at most four times, so no two turns share a step unless they are nearly one. */
const steps = 96;
