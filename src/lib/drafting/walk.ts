// The walk: every sewn pair laid edge on edge along the stitch line, from pieces and seams alone, whatever the style.
import { lengthOf } from './geometry/measure.ts';
import type { Notch, Piece } from './piece.ts';
import type { Seam, SeamEdge } from './seam.ts';

/** Pairs agree to this, or to the ease their style chose. mm */
export const walkAgrees = 0.01;

/** A stretch of an edge, as long as it measures on the outline. */
export interface WalkedEdge extends SeamEdge {
	readonly length: number;
}

/** What a notch finds on the other edge when the two are laid together from their beginning. */
export interface NotchMeeting {
	readonly marks: string;
	/** The edge it is on; its partner is on the other. */
	readonly side: 'a' | 'b';
	/** Along the seam, mm, on its own edge. */
	readonly place: number;
	/** `notch`: one that marks the same. `join`: where two pieces of the other edge meet. `none`: nothing that it could meet. */
	readonly meets: 'notch' | 'join' | 'none';
	/** Along the seam on the other edge, mm; null where there is nothing. */
	readonly partner: number | null;
	/** How much further along a's place is than b's, with the ease up to there taken out; null where there is nothing. */
	readonly differs: number | null;
	/** A single notch that should meet a double one, or the other way round. */
	readonly otherKind: boolean;
}

export interface WalkRow {
	readonly name: string;
	readonly a: readonly WalkedEdge[];
	readonly b: readonly WalkedEdge[];
	/** Measured on the outlines, not taken from the seam. */
	readonly lengthA: number;
	readonly lengthB: number;
	/** How much longer a is to be, as its style says. */
	readonly ease: number;
	/** What is left over once the ease is worked in: nothing, in a seam that walks. */
	readonly left: number;
	readonly notches: readonly NotchMeeting[];
	/** The other edge has no notch and no join, so there is nothing for these to meet: they are measured to. */
	readonly unmarked: boolean;
	readonly lengthsAgree: boolean;
	readonly notchesMeet: boolean;
}

/** One row a seam, in the order they are sewn. */
export const walkOf = ({ pieces, seams }: { readonly pieces: readonly Piece[]; readonly seams: readonly Seam[] }): readonly WalkRow[] =>
	seams.map((seam) => walkSeam(pieces, seam));

function walkSeam(pieces: readonly Piece[], { name, a, b, ease }: Seam): WalkRow {
	const sides = { a: walkSide(pieces, a), b: walkSide(pieces, b) };
	const [lengthA, lengthB] = [sides.a.length, sides.b.length];
	// Ease is spread evenly, so a place on a has its share of it before it.
	const eased = lengthA > 0 ? 1 - ease / lengthA : 1;
	const fromA = meetings(sides.a.marks, sides.b, (place, partner) => place * eased - partner, 'a');
	// A notch of b that one of a has met already is not told twice.
	const isMet = ({ place, notch }: Side['marks'][number]): boolean =>
		fromA.some(({ meets, marks, partner }) => meets === 'notch' && marks === notch.marks && partner === place);
	const fromB = meetings(sides.b.marks.filter((mark) => !isMet(mark)), sides.a, (place, partner) => partner * eased - place, 'b');
	const notches = [...fromA, ...fromB].sort((one, other) => one.place - other.place);
	const bare = (side: Side): boolean => side.marks.length === 0 && side.joins.length === 2;
	const unmarked = notches.length > 0 && notches.every(({ meets }) => meets === 'none') && (bare(sides.a) || bare(sides.b));
	const left = lengthA - lengthB - ease;
	return {
		name, a: sides.a.edges, b: sides.b.edges, lengthA, lengthB, ease, left, notches, unmarked,
		lengthsAgree: Math.abs(left) <= walkAgrees,
		notchesMeet: unmarked || notches.every(({ differs, otherKind }) => differs !== null && Math.abs(differs) <= walkAgrees && !otherKind)
	};
}

interface Side {
	readonly edges: readonly WalkedEdge[];
	readonly length: number;
	readonly marks: readonly { readonly place: number; readonly notch: Notch }[];
	/** Places where a stretch begins or ends, both ends of the seam included. */
	readonly joins: readonly number[];
}

/** Along one side from its beginning: how long, what is marked, where pieces join. */
function walkSide(pieces: readonly Piece[], stretches: readonly SeamEdge[]): Side {
	const edges: WalkedEdge[] = [];
	const marks: { place: number; notch: Notch }[] = [];
	const joins = [0];
	let gone = 0;
	for (const stretch of stretches) {
		const piece = pieces.find(({ name }) => name === stretch.piece);
		if (!piece) throw new Error(`no piece ${stretch.piece} to walk`);
		const whole = lengthOf(piece.stitch, stretch.edge);
		const [low, high] = [Math.min(stretch.from, stretch.to) - 1e-9, Math.max(stretch.from, stretch.to) + 1e-9];
		for (const notch of piece.notches) {
			if (notch.edge !== stretch.edge || (notch.copy ?? stretch.copy) !== stretch.copy || notch.at < low || notch.at > high) continue;
			marks.push({ place: gone + Math.abs(notch.at - stretch.from) * whole, notch });
		}
		const length = Math.abs(stretch.to - stretch.from) * whole;
		edges.push({ ...stretch, length });
		gone += length;
		joins.push(gone);
	}
	return { edges, length: gone, marks, joins };
}

/** Each mark with the notch of its name on the other side, nearest first; else with a join that it reaches. */
function meetings(
	marks: Side['marks'], other: Side, apart: (place: number, partner: number) => number, side: 'a' | 'b'
): readonly NotchMeeting[] {
	return marks.map(({ place, notch }) => {
		const nearest = (places: readonly number[]): number | undefined =>
			[...places].sort((one, two) => Math.abs(apart(place, one)) - Math.abs(apart(place, two)))[0];
		const partners = other.marks.filter((mark) => mark.notch.marks === notch.marks);
		const twin = nearest(partners.map((mark) => mark.place));
		const said = { marks: notch.marks, side, place } as const;
		if (twin !== undefined) {
			const otherKind = partners.find((mark) => mark.place === twin)!.notch.kind !== notch.kind;
			return { ...said, meets: 'notch', partner: twin, differs: apart(place, twin), otherKind };
		}
		const join = nearest(other.joins);
		if (join !== undefined && Math.abs(apart(place, join)) <= walkAgrees) return { ...said, meets: 'join', partner: join, differs: apart(place, join), otherKind: false };
		return { ...said, meets: 'none', partner: null, differs: null, otherKind: false };
	});
}
