// The strip that a straight waist seam is sewn to: a band with an underlap, or a casing that is a closed ring.
import type { Outline } from '../geometry/outline.ts';
import { landmarksBetween } from '../panel.ts';
import type { Notch, Piece } from '../piece.ts';
import type { Seam, SeamEdge } from '../seam.ts';
import type { PlainBand, ZipAt } from '../skirt.ts';
import type { ElasticCasing } from './skirt.ts';
import { cutOf } from './strip.ts';

export interface WaistbandSize {
	readonly band: PlainBand | ElasticCasing;
	/** The waist seam's girth. */
	readonly seam: number;
	readonly zipAt: ZipAt;
	readonly allowances: { readonly waist: number; readonly seam: number };
}

/** Where a skirt begins, going round: 0 centre front, 0.25 left side, 0.5 centre back. */
export const startPlace = (zipAt: ZipAt): number => (zipAt === 'leftSide' ? 0.25 : 0.5);
export const closureName = (zipAt: ZipAt): string => (zipAt === 'leftSide' ? 'left side' : 'centre back');

const underlapOf = (band: PlainBand | ElasticCasing): number => (band.kind === 'straight' ? band.underlap : 0);

/** Where along the strip the waist seam lies. At the left side the underlap runs on from the back (common practice, no source). */
function sewn({ band, seam, zipAt }: WaistbandSize): { readonly from: number; readonly to: number } {
	const length = seam + underlapOf(band);
	return zipAt === 'leftSide' ? { from: 1 - seam / length, to: 1 } : { from: 0, to: seam / length };
}

export function waistbandPieces(size: WaistbandSize): readonly Piece[] {
	const { band, seam, allowances } = size;
	const [length, deep] = [seam + underlapOf(band), 2 * band.depth];
	const line = { centre: null, turn: 0 } as const;
	const stitch: Outline = {
		start: [0, 0],
		edges: [
			{ ...line, name: 'waist', end: [length, 0] },
			{ ...line, name: 'last end', end: [length, deep] },
			{ ...line, name: 'facing', end: [0, deep] },
			{ ...line, name: 'first end', end: [0, 0] }
		]
	};
	const cut = cutOf(stitch, (edge) => (edge.endsWith('end') ? allowances.seam : allowances.waist));
	const lines = [{ name: 'fold line', from: [0, band.depth], to: [length, band.depth] }] as const;
	const grain = { from: [length * 0.3, band.depth * 0.5], to: [length * 0.7, band.depth * 0.5] } as const;
	const shared = { count: 1, fold: null, grain, stitch, lines } as const;
	const strip: Piece = { ...shared, name: band.kind === 'elastic' ? 'band casing' : 'band', cloth: 'shell', cut, notches: notches(size) };
	// Interfacing is cut to the stitch line, so that no seam is made thicker (common practice, no source); elastic needs none.
	return band.kind === 'elastic' ? [strip] : [strip, { ...shared, name: 'band interfacing', cloth: 'interfacing', cut: stitch, notches: [] }];
}

/** The landmarks round the waist, and where the underlap begins. */
function notches(size: WaistbandSize): readonly Notch[] {
	const { from, to } = sewn(size);
	const start = startPlace(size.zipAt);
	const marks = landmarksBetween(start, start + 1).map(
		({ at, mark }): Notch => ({ edge: 'waist', at: from + (to - from) * (at - start), kind: mark.kind, marks: mark.marks })
	);
	if (underlapOf(size.band) <= 0) return marks;
	const left = size.zipAt === 'leftSide';
	return [...marks, { edge: 'waist', at: left ? from : to, kind: left ? 'single' : 'double', marks: 'underlap' }];
}

export type Measure = (edges: readonly SeamEdge[]) => number;

/** `waist` is what is sewn to the strip, in order round the body; it is `ease` longer. */
export function waistbandSeams(size: WaistbandSize, waist: readonly SeamEdge[], ease: number, measure: Measure): readonly Seam[] {
	const { from, to } = sewn(size);
	const piece = size.band.kind === 'elastic' ? 'band casing' : 'band';
	const named = size.band.kind === 'elastic' ? 'casing' : 'band';
	const strip = (edge: string, start: number, end: number): readonly SeamEdge[] => [{ piece, copy: 1, edge, from: start, to: end }];
	const seam = (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[], eased = 0): Seam =>
		({ name, a, b, lengthA: measure(a), lengthB: measure(b), ease: eased });
	const seams = [
		seam(`waist to ${named}`, waist, strip('waist', from, to), ease),
		// The facing runs the other way: it is the same strip, folded over.
		seam(`waist to ${named} facing`, waist, strip('facing', 1 - from, 1 - to), ease)
	];
	if (size.band.kind === 'elastic') return [...seams, seam('casing ring', strip('last end', 0, 1), strip('first end', 1, 0))];
	seams.push(seam('band first end', strip('first end', 0, 0.5), strip('first end', 1, 0.5)), seam('band last end', strip('last end', 0, 0.5), strip('last end', 1, 0.5)));
	if (size.band.underlap > 0) {
		const [start, end] = size.zipAt === 'leftSide' ? [0, from] : [to, 1];
		seams.push(seam('underlap', strip('waist', start, end), strip('facing', 1 - start, 1 - end)));
	}
	return seams;
}
