// How long the waist seam is, by what it is sewn to.
import type { Body } from './body.ts';
import type { FlaredSkirt } from './skirt.ts';

/** The stitch line's girth: of a contour band its lower edge, of an elastic what must go over the hip. Without a hip, an elastic's is unknown and the waist's stands in. */
export function waistSeamOf(body: Body, { band, waistEase, hipEase }: FlaredSkirt): number {
	const waist = body.waist + waistEase;
	if (band.kind === 'contour') return band.lower;
	return band.kind === 'elastic' && body.hip !== undefined ? Math.max(waist, body.hip + hipEase) : waist;
}
