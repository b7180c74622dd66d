// A band cut as a straight strip and folded along its length: a straight waistband, or the casing of an elastic.
import type { Outline } from '../geometry/outline.ts';
import type { Piece } from '../piece.ts';
import type { Join, SeamEdge } from '../seam.ts';
import { cutOf } from '../strip.ts';
import { bandNotches, lapStretch, sewnStretch, type SewnBand } from './sewn.ts';

export interface StripBand extends SewnBand {
	/** An elastic's strip is its casing. */
	readonly kind: 'straight' | 'elastic';
	/** Finished depth. */
	readonly depth: number;
	/** Whether it is closed without an opening: what is pulled on. */
	readonly ring: boolean;
	readonly allowances: { readonly waist: number; readonly seam: number };
}

const edge = (name: string, from: number, to: number): SeamEdge => ({ piece: 'band', copy: 1, edge: name, from, to });

export function stripPieces(band: StripBand): readonly Piece[] {
	const { depth, allowances } = band;
	const length = band.seam + band.underlap;
	const stitch: Outline = {
		start: [0, 0],
		edges: [
			{ centre: null, turn: 0, name: 'waist', end: [length, 0] },
			{ centre: null, turn: 0, name: 'last end', end: [length, 2 * depth] },
			{ centre: null, turn: 0, name: 'facing', end: [0, 2 * depth] },
			{ centre: null, turn: 0, name: 'first end', end: [0, 0] }
		]
	};
	const cut = cutOf(stitch, (name) => (name.endsWith('end') ? allowances.seam : allowances.waist));
	const shared = {
		count: 1, fold: null, stitch, cut,
		grain: { from: [length * 0.3, depth * 0.5], to: [length * 0.7, depth * 0.5] },
		lines: [{ name: 'fold line', from: [0, depth], to: [length, depth] }]
	} as const;
	const strip: Piece = { ...shared, name: 'band', cloth: 'shell', notches: bandNotches(band) };
	// An elastic stretches; interfacing would hold it still.
	if (band.kind === 'elastic') return [strip];
	// Cut to match the band, so that every seam round it holds it (common practice, no source).
	return [strip, { ...shared, name: 'band interfacing', cloth: 'interfacing', notches: [] }];
}

/** Each long edge takes the waist, which is `ease` longer; the ends close on themselves, or on each other where the band is a ring. */
export function stripJoins(waist: readonly SeamEdge[], band: StripBand, ease: number): readonly Join[] {
	const sewn = sewnStretch(band);
	const joins: Join[] = [
		{ name: 'waist to band', a: waist, b: [edge('waist', sewn.from, sewn.to)], ease },
		// The facing runs the other way: it is the same strip, folded over.
		{ name: 'waist to band facing', a: waist, b: [edge('facing', 1 - sewn.from, 1 - sewn.to)], ease }
	];
	if (band.ring) return [...joins, { name: 'band ends', a: [edge('last end', 0, 1)], b: [edge('first end', 1, 0)], ease: 0 }];
	joins.push(
		{ name: 'band first end', a: [edge('first end', 0, 0.5)], b: [edge('first end', 1, 0.5)], ease: 0 },
		{ name: 'band last end', a: [edge('last end', 0, 0.5)], b: [edge('last end', 1, 0.5)], ease: 0 }
	);
	if (band.underlap > 0) {
		const [from, to] = lapStretch(band);
		joins.push({ name: 'underlap', a: [edge('waist', from, to)], b: [edge('facing', 1 - from, 1 - to)], ease: 0 });
	}
	return joins;
}
