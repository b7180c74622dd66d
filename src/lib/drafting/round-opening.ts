// How long an opening lets the hip through where the waist is no arc about the corner.
import type { Profile } from './profile.ts';

interface Slit {
	readonly seam: number;
	/** Where round the waist the slit lies. */
	readonly at: number;
	/** What has to pass: hip and its ease. mm */
	readonly girth: number;
}

/** Places round the waist that the string may lie on. */
const places = 256;

/**
 * The least opening below the waist seam, mm. As in opening.ts the shortest loop of cloth is a taut string from the slit's
 * end round the waist and back; it lies on the waist only where that bulges outwards. The waist is taken at 256 places, an
 * equal stretch of the seam apart (profile.ts), and those that the string passes by are dropped, as in a convex hull
 * (Graham's scan). Then the slit is searched for, since the string only grows with it.
 */
export function roundOpening({ angle, waist }: Profile, { seam, at, girth }: Slit): number {
	if (girth <= seam) return 0;
	const marks = Array.from({ length: places + 1 }, (_, i): Mark => {
		const place = at + i / places;
		return markAt(angle(place) - angle(at), waist.radius(place), i);
	});
	const [first, last] = [marks[0]!, marks[places]!];
	const loop = (depth: number): number => taut([
		markAt(first.angle, first.radius + depth, -1), ...marks.slice(1, places), markAt(last.angle, last.radius + depth, -1)
	], seam / places);
	let [low, high] = [0, girth / 2];
	while (loop(high) < girth) high *= 2;
	let [under, over] = [seam - girth, loop(high) - girth];
	// The Illinois rule: false position, with the end that stays weighed half.
	for (let i = 0; i < 60 && high - low > 1e-7; i++) {
		const middle = high - (over * (high - low)) / (over - under);
		const left = loop(middle) - girth;
		if (Math.abs(left) < 1e-9) return middle;
		if (left < 0) [low, under, over] = [middle, left, over / 2];
		else [high, over, under] = [middle, left, under / 2];
	}
	return high;
}

interface Mark {
	readonly angle: number;
	readonly radius: number;
	readonly x: number;
	readonly y: number;
	/** Which place on the waist; −1 at the slit's end. */
	readonly index: number;
}
const markAt = (angle: number, radius: number, index: number): Mark => ({ angle, radius, x: radius * Math.cos(angle), y: radius * Math.sin(angle), index });

/** The string's length: along the waist by the stretch of the seam, elsewhere straight. */
function taut(marks: readonly Mark[], stretch: number): number {
	const held: Mark[] = [];
	for (const mark of marks) {
		while (held.length > 1 && passes(held[held.length - 2]!, held[held.length - 1]!, mark)) held.pop();
		held.push(mark);
	}
	let length = 0;
	for (let i = 1; i < held.length; i++) {
		const [a, b] = [held[i - 1]!, held[i]!];
		length += a.index >= 0 && b.index === a.index + 1 ? stretch : Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
	}
	return length;
}

/** Is `b` on the corner's side of the straight line from `a` to `c`? Past half a turn no straight line goes round the corner. */
const passes = (a: Mark, b: Mark, c: Mark): boolean =>
	c.angle - a.angle < Math.PI && (c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x) >= 0;
