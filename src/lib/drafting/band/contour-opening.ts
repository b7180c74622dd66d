// How long an opening lets the hip through where a contour band lies above the skirt.
import type { ContourFigures } from './contour-figures.ts';

interface SkirtBelow {
	/** Of the waist seam on the skirt, and the skirt's whole sweep. */
	readonly radius: number;
	readonly sweep: number;
	/** What has to pass: hip and its ease. mm */
	readonly girth: number;
}

/**
 * The least opening below the waist seam, mm. The slit runs through the band too. Every closed loop of cloth round the
 * opened waist passes the slit's end, and the shortest is a taut string over skirt and band: it leaves the slit's end,
 * crosses the waist seam somewhere and goes on over the band, where the top edge may hold it up. Both are cones laid
 * flat, so each stretch is straight there; where it crosses is found numerically (golden section: the length is the sum
 * of two convex stretches). Then the slit is searched for, since the string only grows with it.
 */
export function contourOpening(band: ContourFigures, { radius, sweep, girth }: SkirtBelow): number {
	const half = (sweep * radius) / 2;
	const loop = (depth: number): number => {
		const across = (crossing: number): number => onSkirt(radius, radius + depth, crossing / radius) + onBand(band, crossing / band.bandLowRadius);
		const over = 2 * across(lowest(across, 0, half));
		// A shallow skirt's string may go straight across below the waist seam, and never reach the band.
		const q = radius + depth;
		return sweep < Math.PI && q * Math.cos(sweep / 2) >= radius ? Math.min(over, 2 * q * Math.sin(sweep / 2)) : over;
	};
	if (loop(0) >= girth) return 0;
	let [low, high] = [0, girth];
	while (loop(high) < girth) high *= 2;
	let [under, over] = [loop(low) - girth, loop(high) - girth];
	// The Illinois rule: false position, with the end that stays weighed half.
	for (let i = 0; i < 60 && high - low > 1e-9; i++) {
		const at = high - (over * (high - low)) / (over - under);
		const left = loop(at) - girth;
		if (Math.abs(left) < 1e-9) return at;
		if (left < 0) [low, under, over] = [at, left, over / 2];
		else [high, over, under] = [at, left, under / 2];
	}
	return high;
}

/** From the slit's end at radius q to the waist seam `angle` round: straight, or straight to where the seam holds it up and then along it. */
function onSkirt(radius: number, q: number, angle: number): number {
	const touch = Math.acos(radius / q);
	if (angle <= touch) return Math.sqrt(radius * radius + q * q - 2 * radius * q * Math.cos(angle));
	return Math.sqrt(q * q - radius * radius) + radius * (angle - touch);
}

/** From the waist seam, `angle` round from the slit, to the middle opposite it: straight across, or up to the top edge and along it. */
function onBand({ bandAngle, bandTopRadius: top, bandLowRadius: low }: ContourFigures, angle: number): number {
	const left = Math.max(0, bandAngle / 2 - angle);
	const touch = Math.acos(top / low);
	return left <= touch ? low * Math.sin(left) : Math.sqrt(low * low - top * top) + top * (left - touch);
}

/** Where a function with one valley is lowest. The golden section, to a ten-millionth of the stretch. */
function lowest(of: (at: number) => number, from: number, to: number): number {
	const golden = (Math.sqrt(5) - 1) / 2;
	let [a, b] = [from, to];
	let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
	let [atC, atD] = [of(c), of(d)];
	for (let i = 0; i < 34; i++) {
		if (atC < atD) {
			[b, d, atD] = [d, c, atC];
			c = b - golden * (b - a);
			atC = of(c);
		} else {
			[a, c, atC] = [c, d, atD];
			d = a + golden * (b - a);
			atD = of(d);
		}
	}
	return (a + b) / 2;
}
