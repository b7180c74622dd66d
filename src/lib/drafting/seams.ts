// Every seam of a flared skirt: which edges are joined, from where to where, in the order they are met going round.
import { contourJoins } from './band/contour.ts';
import type { SewnBand } from './band/sewn.ts';
import { stripJoins, type StripBand } from './band/strip.ts';
import { lengthOf } from './geometry/measure.ts';
import { hemFacing, landmarkAt, landmarksOf, lining, shell, waistFacing, type Follows, type PanelPlace } from './panel.ts';
import type { Piece } from './piece.ts';
import type { Join, Seam, SeamEdge } from './seam.ts';
import { isRing, liningShare, type FlaredSkirt } from './skirt.ts';

export interface Sewn {
	readonly places: readonly PanelPlace[];
	readonly pieces: readonly Piece[];
	readonly skirt: FlaredSkirt;
	/** How far the slits reach below the waist seam, each as a part of its own seam, 0…1. */
	readonly open: number;
	readonly liningOpen: number;
	readonly band: BandWork;
}

/** What is sewn to the waist: a strip, a contour band, or nothing where the waist is faced. */
export type BandWork = { readonly strip: StripBand } | { readonly contour: SewnBand } | null;

export function seamsOf(sewn: Sewn): readonly Seam[] {
	return measured(joinsOf(sewn), sewn.pieces);
}

/** Joins with their lengths along the stitch lines. */
export function measured(joins: readonly Join[], pieces: readonly Piece[]): readonly Seam[] {
	const measure = measurer(pieces);
	return joins.map(({ name, a, b, ease }) => ({ name, a, b, ease, lengthA: measure(a), lengthB: measure(b) }));
}

/** Lengths along stitch lines, each edge measured once. */
function measurer(pieces: readonly Piece[]): (edges: readonly SeamEdge[]) => number {
	const lengths = new Map<string, number>();
	const edgeOf = (piece: string, edge: string): number => {
		const key = `${piece}/${edge}`;
		let length = lengths.get(key);
		if (length === undefined) {
			const { stitch, hole } = pieces.find(({ name }) => name === piece)!;
			lengths.set(key, (length = lengthOf(hole?.stitch.edges.some(({ name }) => name === edge) ? hole.stitch : stitch, edge)));
		}
		return length;
	};
	return (edges) => {
		let sum = 0;
		for (const { piece, edge, from, to } of edges) sum += edgeOf(piece, edge) * Math.abs(to - from);
		return sum;
	};
}

function joinsOf({ places, skirt, open, liningOpen, band }: Sewn): readonly Join[] {
	const ring = isRing(skirt);
	const waist = edgesRound(places, shell, 'waist');
	const joins: Join[] = ring ? [] : [...panelJoins(places, shell, open, '')];
	if (!band) {
		if (!ring) joins.push(...panelJoins(places, waistFacing, skirt.closure === 'zip' ? 1 : 0, 'waist facing '));
		joins.push(join('waist facing to waist', edgesRound(places, waistFacing, 'waist'), waist));
	} else joins.push(...('strip' in band ? stripJoins(waist, band.strip, 0) : contourJoins(waist, band.contour)));
	if (skirt.hemFinish === 'faced') {
		if (!ring) joins.push(...panelJoins(places, hemFacing, 0, 'hem facing '));
		joins.push(join('hem facing to hem', edgesRound(places, hemFacing, 'hem'), edgesRound(places, shell, 'hem')));
	}
	if (skirt.lining) {
		if (!ring || liningShare(skirt) !== 1) joins.push(...panelJoins(places, lining, liningOpen, 'lining '));
		joins.push(join('lining to waist', edgesRound(places, lining, 'waist'), waist));
	}
	return joins;
}

/** Every seam of this style is sewn edge to edge: no ease is chosen. */
const join = (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[]): Join => ({ name, a, b, ease: 0 });

/** Each panel's inner or outer arc in order round the body: the inner runs the other way. */
const edgesRound = (places: readonly PanelPlace[], { named }: Follows, edge: 'waist' | 'hem'): readonly SeamEdge[] =>
	places.map(({ piece, copy }) => ({ piece: named(piece), copy, edge, from: edge === 'waist' ? 1 : 0, to: edge === 'waist' ? 0 : 1 }));

/**
 * Each panel to the next, waist to hem. The seam with the zip lies where the last meets the first; it is sewn from
 * `open` (0…1) to the hem, and the slit above it is a row of its own.
 */
function panelJoins(places: readonly PanelPlace[], { named }: Follows, open: number, prefix: string): readonly Join[] {
	const joins: Join[] = [];
	const landmarks = landmarksOf(places);
	places.forEach((place, i) => {
		const next = places[(i + 1) % places.length]!;
		const withZip = i === places.length - 1;
		const part = (from: number, to: number): [readonly SeamEdge[], readonly SeamEdge[]] => [
			[{ piece: named(place.piece), copy: place.copy, edge: place.second, from: 1 - from, to: 1 - to }],
			[{ piece: named(next.piece), copy: next.copy, edge: next.first, from, to }]
		];
		const name = prefix + (landmarkAt(place.to, landmarks)?.marks ?? `panel ${i + 1} to panel ${((i + 1) % places.length) + 1}`);
		const from = withZip ? open : 0;
		if (withZip && open > 0) joins.push(join(`${prefix || 'zip '}opening`, ...part(0, open)));
		if (from < 1) joins.push(join(name, ...part(from, 1)));
	});
	return joins;
}
