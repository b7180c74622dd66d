// Hem corners that are folded back: below the fold line the sides mirror what lies above it, so that the turned hem ends
// where the seam allowances end. (Common practice, no source.)
import { meetings, type Carrier } from './carrier.ts';
import { carrierOf, crossesItself, wayAt } from './crossing.ts';
import { stretches, type Stretch } from './measure.ts';
import { angle, between, carrier } from './offset.ts';
import type { Edge, Outline } from './outline.ts';
import { add, distance, dot, scale, subtract, type Point } from './point.ts';

/** One end of the hem: where the side's cut line meets the fold line, and the mirrored side from there to the raw edge. */
interface Corner {
	readonly fold: Point;
	readonly raw: Point;
	readonly centre: Point | null;
}

/**
 * The cut line `cut` of `stitch` (edge by edge, as `offset` gives it) with its hem corners folded back. The hem edge, or
 * run, stays the one carried through `hemAllowance`; each side ends at the fold line and runs on, under its own name, as
 * its mirror image. Null where there is no room: the mirrored side doesn't meet the raw edge, reaches for more than there
 * is of the side, or crosses the rest.
 *
 * The mirror is the tangent of the fold line where the side's cut line meets it: exact for a straight fold. Round an arc of
 * radius R the turned cloth goes to R − y from R + y, and the exact line is bent; the straight one lies beside it by about
 * 2sy²/R², s the seam allowance: 0.07 mm for s 15, a hem of 40 and R 822.
 */
export function foldBackCorners(stitch: Outline, cut: Outline, hemName: string, hemAllowance: number): Outline | null {
	if (hemAllowance === 0) return cut;
	const [sewn, old] = [stretches(stitch), stretches(cut)];
	const count = sewn.length;
	const isHem = (i: number): boolean => sewn[(i + count) % count]!.edge.name === hemName;
	const first = sewn.findIndex((_, i) => isHem(i) && !isHem(i - 1));
	const last = sewn.findIndex((_, i) => isHem(i) && !isHem(i + 1));
	if (first < 0) throw new Error(`no hem ${hemName} with sides among ${stitch.edges.map((edge) => edge.name).join(', ')}`);
	const [before, after] = [(first - 1 + count) % count, (last + 1) % count];
	const atFirst = folded(old[before]!, old[before]!.from, sewn[first]!, sewn[first]!.from, hemAllowance, old[first]!.from);
	const atLast = folded(old[after]!, old[after]!.edge.end, sewn[last]!, sewn[last]!.edge.end, hemAllowance, old[last]!.edge.end);
	if (!atFirst || !atLast) return null;

	const edges: (Edge | null)[] = [];
	for (let i = 0; i < count; i++) {
		const { from, edge } = old[i]!;
		if (isHem(i)) {
			edges.push(between(old[i]!, i === first ? atFirst.raw : from, i === last ? atLast.raw : edge.end));
			continue;
		}
		if (i === after) edges.push(mirrored(edge, atLast.raw, atLast.fold, atLast.centre));
		edges.push(between(old[i]!, i === after ? atLast.fold : from, i === before ? atFirst.fold : edge.end));
		if (i === before) edges.push(mirrored(edge, atFirst.fold, atFirst.raw, atFirst.centre));
	}
	const whole = edges.filter((edge) => edge !== null);
	const start = first === 0 ? atFirst.raw : after === 0 ? atLast.raw : cut.start;
	const result = { start, edges: whole };
	return whole.length < edges.length || crossesItself(result) ? null : result;
}

/** `top` is the end of the cut side away from the hem, `corner` the stitch line's and `mitre` the cut line's at the hem. */
function folded(side: Stretch, top: Point, hem: Stretch, corner: Point, allowance: number, mitre: Point): Corner | null {
	const raw = carrier(hem, allowance);
	const line = carrierOf(side);
	const fold = nearest(meetings(line, carrier(hem, 0)!), corner);
	if (!raw || !fold) return null;
	const mirror = wayAt(hem, fold);
	const image = (point: Point): Point => add(fold, reflected(subtract(point, fold), mirror));
	const below: Carrier = 'along' in line ? { at: fold, along: reflected(line.along, mirror) } : { centre: image(line.centre), radius: line.radius };
	const end = nearest(meetings(below, raw), mitre);
	if (!end) return null;
	// Is there so much of the side above the fold?
	if (distance(image(end), fold) > distance(top, fold)) return null;
	return { fold, raw: end, centre: 'along' in below ? null : below.centre };
}

/** A mirrored side bends the way the side does: mirrored once, and walked the other way. */
function mirrored(side: Edge, from: Point, to: Point, centre: Point | null): Edge | null {
	if (!centre) return { name: side.name, end: to, centre, turn: 0 };
	const turn = angle(from, to, centre);
	return turn * side.turn > 0 ? { name: side.name, end: to, centre, turn } : null;
}

/** A vector mirrored in a line through the origin along `mirror`. */
const reflected = (vector: Point, mirror: Point): Point => subtract(scale(mirror, 2 * dot(vector, mirror)), vector);

const nearest = (points: readonly Point[], to: Point): Point | undefined =>
	points.reduce<Point | undefined>((best, point) => (best && distance(best, to) <= distance(point, to) ? best : point), undefined);
