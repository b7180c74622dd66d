// The outlines of pieces whose curved edges are no arcs about the corner: panels, linings, facings, rings.
import { smoothRun } from './geometry/curve.ts';
import type { Edge, Outline } from './geometry/outline.ts';
import { polar, type Point } from './geometry/point.ts';
import type { Profile, Round } from './profile.ts';

/** What lies between two edges of a profile: the skirt's own, or one of them and an edge a facing's depth away. */
export interface Shape {
	readonly profile: Profile;
	readonly inner: Round;
	readonly outer: Round;
}

interface Stretch {
	readonly from: number;
	readonly to: number;
	/** The straight edge where it begins, and the one where it ends, going round. */
	readonly first: string;
	readonly second: string;
}

/** Counterclockwise, its middle along +x: out along the first edge, round the outer one, in along the second, back round the inner one. */
export function shapedOutline({ profile, inner, outer }: Shape, { from, to, first, second }: Stretch, names: { readonly inner: string; readonly outer: string }): Outline {
	const middle = (profile.angle(from) + profile.angle(to)) / 2;
	const start = pointOn(profile, inner, middle)(from);
	return {
		start,
		edges: [
			{ name: first, end: pointOn(profile, outer, middle)(from), centre: null, turn: 0 },
			...edgeRound(profile, outer, middle, names.outer, from, to),
			{ name: second, end: pointOn(profile, inner, middle)(to), centre: null, turn: 0 },
			...edgeRound(profile, inner, middle, names.inner, to, from)
		]
	};
}

/** A whole turn about the corner as an outline of its own, from centre back, centre front along +x. */
export function shapedCircle(profile: Profile, edge: Round, name: string, from: number, to: number): Outline {
	const front = profile.angle(1);
	return { start: pointOn(profile, edge, front)(from), edges: edgeRound(profile, edge, front, name, from, to) };
}

const pointOn = ({ angle }: Profile, { radius }: Round, along: number) => (place: number): Point => polar([0, 0], radius(place), angle(place) - along);

function edgeRound(profile: Profile, edge: Round, along: number, name: string, from: number, to: number): readonly Edge[] {
	const tangent = (place: number): Point => {
		const angle = profile.angle(place) - along;
		const [out, round] = [edge.slope(place), edge.radius(place) * profile.turning(place)];
		const [c, s] = [Math.cos(angle), Math.sin(angle)];
		return [out * c - round * s, out * s + round * c];
	};
	return smoothRun(name, pointOn(profile, edge, along), tangent, from, to);
}

/** How far a line square to the piece's middle, `x` from the corner, runs to either side before it meets an edge. */
export function roomAcross({ profile, inner, outer }: Shape, middle: number, x: number): number {
	const looks = 64;
	let room = 0;
	for (let i = 1; i <= looks; i++) {
		const places = [middle - i / looks / 2, middle + i / looks / 2];
		const angles = places.map((place) => profile.angle(place) - profile.angle(middle));
		const [outside, inside] = [outer, inner].map(({ radius }) => places.map((place, k) => radius(place) * Math.cos(angles[k]!)));
		if (angles.some((angle) => Math.abs(angle) >= Math.PI / 2) || outside!.some((at) => at <= x) || inside!.some((at) => at >= x)) break;
		room = x * Math.tan(Math.min(...angles.map(Math.abs)));
	}
	return room;
}

/** An edge so much farther from the corner. */
export const farther = ({ radius, slope }: Round, by: number): Round => ({ radius: (place) => radius(place) + by, slope });
