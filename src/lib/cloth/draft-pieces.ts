// From a draft's own pieces to pieces on cloth: cut outlines with their true arcs, the grain along the cloth.
import { edgeLength, stretches } from '../drafting/geometry/measure.ts';
import type { Outline } from '../drafting/geometry/outline.ts';
import { distance } from '../drafting/geometry/point.ts';
import type { Piece } from '../drafting/piece.ts';
import type { ClothPiece } from './cloth.ts';
import { turned } from './shape.ts';

/** What of a panel lies on the straight grain: its middle, or one of its straight edges. */
export type Grain = 'middle' | 'edge';

/**
 * The pieces of one cloth. A panel lies along the length, either way up; with its edge on the grain, either edge. A band may
 * also lie across (common practice, no source: a band cut across stretches a little more). Nap leaves one way alone.
 */
export function clothPieces(pieces: readonly Piece[], cloth: Piece['cloth'], grain: Grain, nap: boolean): readonly ClothPiece[] {
	return pieces.filter((piece) => piece.cloth === cloth).map((piece) => {
		const { name, count, grain: { from, to } } = piece;
		const level = turned(wholeOutline(piece), -Math.atan2(to[1] - from[1], to[0] - from[0]));
		const lean = grain === 'edge' && isPanel(name) ? edgeAngle(level) : 0;
		const ways = lean !== 0 ? [0, Math.PI, 2 * lean, 2 * lean + Math.PI] : name.startsWith('band') ? [0, Math.PI / 2, Math.PI, 1.5 * Math.PI] : [0, Math.PI];
		// With nap, one way along the cloth; which of its edges lies on the grain is still free.
		const turns = nap ? (lean !== 0 ? [0, 2 * lean] : [0]) : ways;
		return { name, count, shape: { kind: 'cut', outline: lean === 0 ? level : turned(level, -lean) }, turns, half: false };
	});
}

/** A skirt's panels and its lining's: only these may lie with an edge on the grain. */
const isPanel = (name: string): boolean => /^(panel|front|back|lining)/.test(name);

/** How far the longest straight edge of a panel leans from the grain, radians, −π/2…π/2; 0 for one that has no arc. */
function edgeAngle(outline: Outline): number {
	const all = stretches(outline);
	if (all.every(({ edge }) => !edge.centre)) return 0;
	const lines = all.filter(({ edge }) => !edge.centre);
	const longest = lines.reduce((best, one) => (edgeLength(one) > edgeLength(best) + 1e-6 ? one : best));
	const angle = Math.atan2(longest.edge.end[1] - longest.from[1], longest.edge.end[0] - longest.from[0]);
	const lean = Math.abs(angle) > Math.PI / 2 ? angle - Math.sign(angle) * Math.PI : angle;
	return Math.abs(lean) < 1e-9 ? 0 : lean;
}

/** A ring's hole joins its outline by a cut there and back, between the two corners that are nearest to each other. */
function wholeOutline({ cut, hole }: Piece): Outline {
	if (!hole) return cut;
	const [outer, inner] = [cornersOf(cut), cornersOf(hole.cut)];
	let best = { i: 0, j: 0, apart: Infinity };
	outer.forEach((p, i) => inner.forEach((q, j) => {
		const apart = distance(p, q);
		if (apart < best.apart) best = { i, j, apart };
	}));
	const from = (outline: Outline, k: number): Outline['edges'] => [...outline.edges.slice(k), ...outline.edges.slice(0, k)];
	const line = (end: Outline['start']): Outline['edges'][number] => ({ name: 'cut', end, centre: null, turn: 0 });
	return { start: outer[best.i]!, edges: [...from(cut, best.i), line(inner[best.j]!), ...from(hole.cut, best.j), line(outer[best.i]!)] };
}

/** The corner at which each edge begins. */
const cornersOf = ({ start, edges }: Outline): readonly Outline['start'][] => [start, ...edges.slice(0, -1).map(({ end }) => end)];
