// Notches on a pattern: wedges that stand on the cut line and point into the cloth, each place with its words.
import { stretches, type Stretch } from '../drafting/geometry/measure.ts';
import type { Outline } from '../drafting/geometry/outline.ts';
import { add, distance, polar, scale, subtract, type Point } from '../drafting/geometry/point.ts';
import { pointAlongRun, runOf, tangentAlongRun } from '../drafting/geometry/run.ts';
import type { Notch, Piece } from '../drafting/piece.ts';
import { mark, words } from './diagrams/shape.ts';
import type { Shape } from './drawing.ts';

/** Every edge of a piece along one of its lines, those of its hole among them. */
export const edgesIn = ({ hole, ...piece }: Piece, line: 'stitch' | 'cut'): readonly Stretch[] => [...stretches(piece[line]), ...(hole ? stretches(hole[line]) : [])];
const outlineWith = (edge: string, { hole, ...piece }: Piece, line: 'stitch' | 'cut'): Outline => {
	const found = [piece[line], ...(hole ? [hole[line]] : [])].find(({ edges }) => edges.some(({ name }) => name === edge));
	if (!found) throw new Error(`a notch on ${piece.name} names no edge: ${edge}`);
	return found;
};

interface Placed {
	readonly kind: Notch['kind'];
	readonly foot: Point;
	readonly angle: number;
	readonly deep: number;
	readonly says: string;
}

/** Copies that are marked at one place share its wedge and have their words one under the other. `turn` lays the piece on the sheet. */
export function notchShapes(piece: Piece, folded: boolean, turn: (p: Point) => Point): readonly Shape[] {
	const placed = piece.notches.flatMap((notch) => placedOn(notch, piece, folded, turn));
	const shapes: Shape[] = [];
	const done = new Set<Placed>();
	for (const first of placed) {
		if (done.has(first)) continue;
		const here = placed.filter(({ foot }) => distance(foot, first.foot) < 0.01);
		for (const one of here) done.add(one);
		for (const kind of new Set(here.map((one) => one.kind))) shapes.push(mark(kind === 'double' ? 'doubleNotch' : 'notch', first.foot, first.angle));
		const lines = [...new Set(here.map(({ says }) => says))];
		shapes.push(...lines.map((text, i) => words(polar(first.foot, first.deep + 5, first.angle), text, 'small', { anchor: 'middle', shift: [0, i * 15] })));
	}
	return shapes;
}

/** Across from its place on the stitch line. */
function placedOn(notch: Notch, piece: Piece, folded: boolean, turn: (p: Point) => Point): readonly Placed[] {
	const [sewn, cut] = (['stitch', 'cut'] as const).map((line) => runOf(outlineWith(notch.edge, piece, line), notch.edge)) as [readonly Stretch[], readonly Stretch[]];
	const on = pointAlongRun(sewn, notch.at);
	const [foot] = cut.map((stretch) => nearest(on, stretch)).sort((a, b) => distance(on, a) - distance(on, b)) as [Point];
	if (folded && foot[1] < -1e-6) return [];
	const inwards = distance(on, foot) > 1e-9 ? subtract(on, foot) : inside(tangentAlongRun(sewn, notch.at));
	const [p, q] = [turn(foot), turn(add(foot, inwards))];
	return [{
		kind: notch.kind, foot: p, angle: Math.atan2(q[1] - p[1], q[0] - p[0]), deep: distance(on, foot),
		says: notch.copy === undefined ? notch.marks : `${notch.marks}, piece ${notch.copy} only`
	}];
}

/** Left of the way an edge runs, where the cloth lies. */
const inside = ([x, y]: Point): Point => [0 - y, x];

/** The point of an edge, between its ends, nearest to `p`. */
function nearest(p: Point, { from, edge }: Stretch): Point {
	const ends = [from, edge.end].sort((a, b) => distance(p, a) - distance(p, b));
	if (edge.centre) {
		const [a, b] = [subtract(from, edge.centre), subtract(p, edge.centre)];
		const round = (Math.atan2(b[1], b[0]) - Math.atan2(a[1], a[0])) * Math.sign(edge.turn);
		const gone = round - Math.floor(round / (2 * Math.PI)) * 2 * Math.PI;
		return gone <= Math.abs(edge.turn) ? polar(edge.centre, distance(from, edge.centre), Math.atan2(b[1], b[0])) : ends[0]!;
	}
	const along = subtract(edge.end, from);
	const part = ((p[0] - from[0]) * along[0] + (p[1] - from[1]) * along[1]) / (along[0] ** 2 + along[1] ** 2);
	return part > 0 && part < 1 ? add(from, scale(along, part)) : ends[0]!;
}
