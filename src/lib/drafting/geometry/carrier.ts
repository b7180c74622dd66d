// What an edge lies on, carried on without end: a whole line or a whole circle, and where two of them meet.
import { add, distance, scale, subtract, type Point } from './point.ts';

/** Through a point, along a vector of length 1. */
export interface Line {
	readonly at: Point;
	readonly along: Point;
}
export interface Circle {
	readonly centre: Point;
	readonly radius: number;
}
export type Carrier = Line | Circle;

export const lineThrough = (from: Point, to: Point): Line => ({ at: from, along: scale(subtract(to, from), 1 / distance(from, to)) });

/** The point of a line nearest to `point`. */
export function foot({ at, along }: Line, point: Point): Point {
	const [x, y] = subtract(point, at);
	return add(at, scale(along, x * along[0] + y * along[1]));
}

/** Where two carriers meet: none, one or two points. Those that are parallel or have one centre meet nowhere. */
export function meetings(a: Carrier, b: Carrier): readonly Point[] {
	if ('along' in a) return 'along' in b ? lineMeetsLine(a, b) : lineMeetsCircle(a, b);
	return 'along' in b ? lineMeetsCircle(b, a) : circleMeetsCircle(a, b);
}

function lineMeetsLine(a: Line, b: Line): readonly Point[] {
	const cross = a.along[0] * b.along[1] - a.along[1] * b.along[0];
	if (Math.abs(cross) < 1e-12) return [];
	const [x, y] = subtract(b.at, a.at);
	return [add(a.at, scale(a.along, (x * b.along[1] - y * b.along[0]) / cross))];
}

function lineMeetsCircle(line: Line, { centre, radius }: Circle): readonly Point[] {
	const middle = foot(line, centre);
	return bothSides(middle, line.along, radius, distance(middle, centre));
}

function circleMeetsCircle(a: Circle, b: Circle): readonly Point[] {
	const apart = distance(a.centre, b.centre);
	if (apart < 1e-12) return [];
	const along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
	const [x, y] = scale(subtract(b.centre, a.centre), 1 / apart);
	return bothSides(add(a.centre, [x * along, y * along]), [-y, x], a.radius, Math.abs(along));
}

/** The two ends of the chord that lies `away` from the centre of a circle. */
function bothSides(middle: Point, along: Point, radius: number, away: number): readonly Point[] {
	if (away > radius) return [];
	// √(radius² − away²), as a product so that a shallow flare's radius of metres loses no digits.
	const half = Math.sqrt((radius - away) * (radius + away));
	return [add(middle, scale(along, half)), add(middle, scale(along, -half))];
}
