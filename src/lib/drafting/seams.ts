// Every seam of a flared skirt: which edges are joined, from where to where, in the order they are met going round.
import { sewnStretch } from './band.ts';
import { lengthOf } from './geometry/measure.ts';
import { liningBelowZip } from './opening.ts';
import { landmarkAt, liningName, type PanelPlace } from './panel.ts';
import type { Piece } from './piece.ts';
import type { Seam, SeamEdge } from './seam.ts';
import type { FlaredSkirt } from './skirt.ts';

interface Drafted {
	readonly places: readonly PanelPlace[];
	readonly pieces: readonly Piece[];
	readonly skirt: FlaredSkirt;
	readonly waistSeam: number;
	/** Unknown without a hip: then the seam with the zip is given whole. */
	readonly zipEnd: number | undefined;
	/** The least opening of the lining, below the waist seam. */
	readonly liningOpening: number | undefined;
}

export function seamsOf({ places, pieces, skirt, waistSeam, zipEnd, liningOpening }: Drafted): readonly Seam[] {
	const lengths = new Map<string, number>();
	const measure = (edges: readonly SeamEdge[]): number => {
		let sum = 0;
		for (const { piece, edge, from, to } of edges) {
			const key = `${piece}/${edge}`;
			let length = lengths.get(key);
			if (length === undefined) lengths.set(key, (length = lengthOf(pieces.find(({ name }) => name === piece)!.stitch, edge)));
			sum += length * Math.abs(to - from);
		}
		return sum;
	};
	// Every seam of this style is sewn edge to edge: no ease is chosen.
	const seam = (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[]): Seam => ({ name, a, b, lengthA: measure(a), lengthB: measure(b), ease: 0 });

	const sewn = sewnStretch(waistSeam, skirt);
	const bandEdge = (edge: string, from: number, to: number): SeamEdge => ({ piece: 'band', copy: 1, edge, from, to });
	const waist = waistEdges(places, (piece) => piece);
	const seams = [
		...panelSeams(places, (piece) => piece, (zipEnd ?? 0) / (skirt.length - skirt.band.depth), '', seam),
		seam('waist to band', waist, [bandEdge('waist', sewn.from, sewn.to)]),
		// The facing runs the other way: it is the same strip, folded over.
		seam('waist to band facing', waist, [bandEdge('facing', 1 - sewn.from, 1 - sewn.to)]),
		seam('band first end', [bandEdge('first end', 0, 0.5)], [bandEdge('first end', 1, 0.5)]),
		seam('band last end', [bandEdge('last end', 0, 0.5)], [bandEdge('last end', 1, 0.5)])
	];
	if (skirt.band.underlap > 0) {
		const [from, to] = skirt.zipAt === 'leftSide' ? [0, sewn.from] : [sewn.to, 1];
		seams.push(seam('underlap', [bandEdge('waist', from, to)], [bandEdge('facing', 1 - from, 1 - to)]));
	}
	if (skirt.lining) {
		const length = skirt.length - skirt.band.depth - skirt.lining.shorterBy;
		const opens = zipEnd === undefined ? 0 : Math.min(length, Math.max(zipEnd + liningBelowZip, liningOpening ?? 0));
		seams.push(
			...panelSeams(places, liningName, opens / length, 'lining ', seam),
			seam('lining to waist', waistEdges(places, liningName), waist)
		);
	}
	return seams;
}

/** Each panel's waist in order round the body; the edge itself runs the other way. */
const waistEdges = (places: readonly PanelPlace[], named: (piece: string) => string): readonly SeamEdge[] =>
	places.map(({ piece, copy }) => ({ piece: named(piece), copy, edge: 'waist', from: 1, to: 0 }));

/**
 * Each panel to the next, waist to hem. The seam with the zip lies where the last meets the first; it is sewn from
 * `open` (0…1) to the hem, and the slit above it is a row of its own.
 */
function panelSeams(
	places: readonly PanelPlace[], named: (piece: string) => string, open: number, prefix: string,
	seam: (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[]) => Seam
): readonly Seam[] {
	const seams: Seam[] = [];
	places.forEach((place, i) => {
		const next = places[(i + 1) % places.length]!;
		const withZip = i === places.length - 1;
		const part = (from: number, to: number): [readonly SeamEdge[], readonly SeamEdge[]] => [
			[{ piece: named(place.piece), copy: place.copy, edge: place.second, from: 1 - from, to: 1 - to }],
			[{ piece: named(next.piece), copy: next.copy, edge: next.first, from, to }]
		];
		const name = prefix + (landmarkAt(place.to)?.marks ?? `panel ${place.copy} to panel ${next.copy}`);
		const from = withZip ? open : 0;
		if (withZip && open > 0) seams.push(seam(`${prefix || 'zip '}opening`, ...part(0, open)));
		if (from < 1) seams.push(seam(name, ...part(from, 1)));
	});
	return seams;
}
