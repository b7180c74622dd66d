// Smooth curves as runs of tangent arcs, because an outline has only lines and true arcs. Each stretch of the curve becomes
// a biarc: two arcs that leave along the curve's direction at one end, arrive along it at the other, and run on into each
// other between (Bolton, "Biarc curves", Computer-Aided Design 7, 1975, from memory; plane geometry).
import type { Edge } from './outline.ts';
import { add, cross, distance, dot, scale, subtract, type Point } from './point.ts';

/** Stretches that a curve is cut into to begin with; more where it is not met closely enough, and so at most 200 edges. */
const fewest = 4;
const most = 100;
/** A curve from which 200 edges lie farther than so many tolerances is no smooth curve. */
const hopeless = 100;
/** Each stretch is looked at where so many equal parts of it meet: a biarc strays most about a third and two thirds of the way. */
const looks = 6;
/** Arcs that turn by less, radians, are drawn as lines: their radius would be a hundred kilometres for a panel's width. */
const straight = 2e-7;
/** mm by which the centres of two neighbours may differ and still be one circle. */
const sameCentre = 1e-7;

interface Place {
	readonly at: Point;
	/** Length 1, the way the run goes. */
	readonly along: Point;
}
interface Span {
	readonly from: number;
	readonly to: number;
	readonly start: Place;
	readonly end: Place;
	readonly edges: readonly Edge[];
	/** mm by which the edges lie beside the curve, at the worst place looked at. */
	readonly beside: number;
}

/**
 * The curve `point(t)` from t = `from` to `to` as edges of one name that lie within `within` mm of it and run on into each
 * other without a corner: at most 200, and where so many are too few (a hem of several metres whose lengths differ by more
 * than half of it), as close as 200 come. `tangent(t)` is its direction for rising t, of any length. The run starts at
 * point(from) and ends at point(to). A curve that is not smooth is our own bug.
 */
export function smoothRun(
	name: string, point: (t: number) => Point, tangent: (t: number) => Point, from: number, to: number, within = 0.005
): readonly Edge[] {
	const way = Math.sign(to - from);
	const place = (t: number): Place => {
		const [x, y] = tangent(t);
		return { at: point(t), along: scale([x, y], way / Math.hypot(x, y)) };
	};
	const span = (a: number, b: number, start: Place, end: Place): Span => {
		const edges = biarc(name, start, end);
		let beside = edges ? 0 : Infinity;
		for (let i = 1; edges && i < looks; i++) beside = Math.max(beside, away(start.at, edges, point(a + ((b - a) * i) / looks)));
		return { from: a, to: b, start, end, edges: edges ?? [], beside };
	};
	const spans: Span[] = [];
	for (let i = 0, a = from, start = place(from); i < fewest; i++) {
		const b = i === fewest - 1 ? to : from + ((to - from) * (i + 1)) / fewest;
		const end = place(b);
		spans.push(span(a, b, start, end));
		[a, start] = [b, end];
	}
	for (;;) {
		const worst = spans.reduce((found, { beside }, i) => (beside > spans[found]!.beside ? i : found), 0);
		const { from: a, to: b, start, end, beside } = spans[worst]!;
		// A tenth to spare, because the farthest place may lie between those looked at.
		if (beside <= within * 0.9 || (spans.length === most && beside <= within * hopeless)) {
			return joined(spans[0]!.start.at, spans.flatMap(({ edges }) => edges));
		}
		if (spans.length === most) throw new Error(`${most} stretches of the curve ${name} still lie ${beside} mm beside it`);
		const middle = (a + b) / 2;
		const halfway = place(middle);
		spans.splice(worst, 1, span(a, middle, start, halfway), span(middle, b, halfway, end));
	}
}

/** Of all biarcs between two places the one whose end tangents are of one length (they are then never lopsided). */
function biarc(name: string, start: Place, end: Place): readonly Edge[] | null {
	const chord = subtract(end.at, start.at);
	const squared = dot(chord, chord);
	// With d the tangents' length: 2d²(1 − T₁·T₂) + 2d chord·(T₁ + T₂) − chord² = 0, and 1 − T₁·T₂ = |T₁ − T₂|²/2.
	const bend = subtract(start.along, end.along);
	const onward = dot(chord, add(start.along, end.along));
	const reach = squared / (onward + Math.sqrt(onward * onward + dot(bend, bend) * squared));
	if (!(reach > 0 && Number.isFinite(reach))) return null;
	const joint = scale(add(add(start.at, end.at), scale(bend, reach)), 0.5);
	return [
		arcTo(name, start.at, joint, start.at, start.along),
		// Drawn from its far end, where its direction is known.
		arcTo(name, joint, end.at, end.at, end.along)
	];
}

/** The arc from `from` to `to` that runs along `along` at `at`, one of the two. */
function arcTo(name: string, from: Point, to: Point, at: Point, along: Point): Edge {
	const chord = subtract(to, from);
	const side = cross(along, chord) * (at === from ? 1 : -1);
	const turn = 2 * Math.atan2(side, dot(along, chord));
	if (Math.abs(turn) < straight) return { name, end: to, centre: null, turn: 0 };
	const radius = dot(chord, chord) / (2 * side);
	return { name, end: to, centre: add(at, [-along[1] * radius, along[0] * radius]), turn };
}

/** How far a point lies from a run of edges. */
function away(start: Point, edges: readonly Edge[], point: Point): number {
	let [nearest, from] = [Infinity, start];
	for (const edge of edges) {
		nearest = Math.min(nearest, awayFrom(from, edge, point));
		from = edge.end;
	}
	return nearest;
}

function awayFrom(from: Point, { end, centre, turn }: Edge, point: Point): number {
	const corner = Math.min(distance(from, point), distance(end, point));
	if (!centre) {
		const chord = subtract(end, from);
		const gone = subtract(point, from);
		const part = dot(gone, chord) / dot(chord, chord);
		return part > 0 && part < 1 ? Math.abs(cross(chord, gone)) / Math.hypot(...chord) : corner;
	}
	const [first, here] = [subtract(from, centre), subtract(point, centre)];
	const round = Math.atan2(cross(first, here), dot(first, here)) * Math.sign(turn);
	return (round < 0 ? round + 2 * Math.PI : round) <= Math.abs(turn) ? Math.abs(Math.hypot(...here) - Math.hypot(...first)) : corner;
}

/** Neighbours on one line or one circle become one edge. */
function joined(start: Point, edges: readonly Edge[]): readonly Edge[] {
	const run: Edge[] = [];
	let from = start;
	for (const edge of edges) {
		const last = run.at(-1);
		if (last && runsOn(from, last, edge)) run[run.length - 1] = { ...last, end: edge.end, turn: last.turn + edge.turn };
		else {
			if (last) from = last.end;
			run.push(edge);
		}
	}
	return run;
}

/** Does `next` lie on what `last`, which starts at `from`, lies on? */
function runsOn(from: Point, last: Edge, next: Edge): boolean {
	if (!last.centre || !next.centre) {
		if (last.centre || next.centre) return false;
		const [a, b] = [subtract(last.end, from), subtract(next.end, last.end)];
		return Math.abs(cross(a, b)) <= straight * Math.hypot(...a) * Math.hypot(...b);
	}
	return Math.sign(last.turn) === Math.sign(next.turn) && distance(last.centre, next.centre) < sameCentre;
}
