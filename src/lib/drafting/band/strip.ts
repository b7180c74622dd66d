// A band cut as a straight strip and folded along its length: a straight waistband, or the casing of an elastic.
import { offset } from '../geometry/offset.ts';
import type { Outline } from '../geometry/outline.ts';
import type { PanelPlace } from '../panel.ts';
import type { Piece } from '../piece.ts';
import type { Join, SeamEdge } from '../seam.ts';
import type { FlaredSkirt } from '../skirt.ts';
import { bandNotches, sewnStretch } from './sewn.ts';

const edge = (name: string, from: number, to: number): SeamEdge => ({ piece: 'band', copy: 1, edge: name, from, to });

export function stripPieces(places: readonly PanelPlace[], seam: number, skirt: FlaredSkirt): readonly Piece[] {
	const { band, allowances } = skirt;
	const length = seam + band.underlap;
	const stitch: Outline = {
		start: [0, 0],
		edges: [
			{ name: 'waist', end: [length, 0], centre: null, turn: 0 },
			{ name: 'last end', end: [length, 2 * band.depth], centre: null, turn: 0 },
			{ name: 'facing', end: [0, 2 * band.depth], centre: null, turn: 0 },
			{ name: 'first end', end: [0, 0], centre: null, turn: 0 }
		]
	};
	const cut = offset(stitch, ({ name }) => (name.endsWith('end') ? allowances.seam : allowances.waist));
	if (!cut) throw new Error(`no cut line round a band of ${length} by ${2 * band.depth}`);
	const shared = {
		count: 1, fold: null, stitch,
		grain: { from: [length * 0.3, band.depth * 0.5], to: [length * 0.7, band.depth * 0.5] },
		lines: [{ name: 'fold line', from: [0, band.depth], to: [length, band.depth] }]
	} as const;
	const strip: Piece = { ...shared, name: 'band', cloth: 'shell', cut, notches: bandNotches(places, seam, skirt) };
	// An elastic stretches; interfacing would hold it still.
	if (band.kind === 'elastic') return [strip];
	// Cut to match the band, so that every seam round it holds it (common practice, no source).
	return [strip, { ...shared, name: 'band interfacing', cloth: 'interfacing', cut, notches: [] }];
}

/** Each long edge takes the waist; the ends close on themselves, or on each other where the band is a ring. */
export function stripJoins(waist: readonly SeamEdge[], seam: number, skirt: FlaredSkirt): readonly Join[] {
	const sewn = sewnStretch(seam, skirt);
	const joins: Join[] = [
		{ name: 'waist to band', a: waist, b: [edge('waist', sewn.from, sewn.to)], ease: 0 },
		// The facing runs the other way: it is the same strip, folded over.
		{ name: 'waist to band facing', a: waist, b: [edge('facing', 1 - sewn.from, 1 - sewn.to)], ease: 0 }
	];
	if (skirt.closure === 'none') return [...joins, { name: 'band ends', a: [edge('last end', 0, 1)], b: [edge('first end', 1, 0)], ease: 0 }];
	joins.push(
		{ name: 'band first end', a: [edge('first end', 0, 0.5)], b: [edge('first end', 1, 0.5)], ease: 0 },
		{ name: 'band last end', a: [edge('last end', 0, 0.5)], b: [edge('last end', 1, 0.5)], ease: 0 }
	);
	if (skirt.band.underlap > 0) {
		const [from, to] = skirt.zipAt === 'leftSide' ? [0, sewn.from] : [sewn.to, 1];
		joins.push({ name: 'underlap', a: [edge('waist', from, to)], b: [edge('facing', 1 - from, 1 - to)], ease: 0 });
	}
	return joins;
}
