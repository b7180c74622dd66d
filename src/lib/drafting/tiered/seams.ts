// Every seam of a tiered skirt: strip to strip round a tier, tier to tier gathered, the first tier to the band.
import { lengthOf } from '../geometry/measure.ts';
import type { Piece } from '../piece.ts';
import type { Seam, SeamEdge } from '../seam.ts';
import type { TieredFigures, TierFigures } from './figures.ts';
import { edgesOf, openPart, panelName } from './pieces.ts';
import type { TieredSkirt } from './skirt.ts';
import { closureName, waistbandSeams, type WaistbandSize } from './waistband.ts';

/** Lengths along the stitch lines, each edge measured once. */
export function measurer(pieces: readonly Piece[]): (edges: readonly SeamEdge[]) => number {
	const lengths = new Map<string, number>();
	return (edges) => edges.reduce((sum, { piece, edge, from, to }) => {
		const key = `${piece}/${edge}`;
		const length = lengths.get(key) ?? lengthOf(pieces.find(({ name }) => name === piece)!.stitch, edge);
		lengths.set(key, length);
		return sum + length * Math.abs(to - from);
	}, 0);
}

export function tieredSeams(figures: TieredFigures, pieces: readonly Piece[], skirt: TieredSkirt, band: WaistbandSize): readonly Seam[] {
	const measure = measurer(pieces);
	const seam = (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[], ease = 0): Seam =>
		({ name, a, b, lengthA: measure(a), lengthB: measure(b), ease });
	const seams: Seam[] = [];
	const tops = figures.tiers.map((tier) => round(tier, edgesOf(tier.tier, skirt.tiers).top, true));
	for (const tier of figures.tiers) {
		seams.push(...stripSeams(tier, openPart(tier, figures), skirt, seam));
		if (tier.tier === 1) continue;
		const above = figures.tiers[tier.tier - 2]!;
		// Chosen by the ratio: every length of the seam takes up that many times its own of the gathered edge.
		const ease = (tier.ratio - 1) * above.girth;
		seams.push(seam(`tier ${tier.tier} to tier ${above.tier}`, tops[tier.tier - 1]!, round(above, 'lower edge', false), ease));
	}
	const ease = (figures.tiers[0]!.ratio - 1) * figures.waistSeamGirth;
	return [...seams, ...waistbandSeams(band, tops[0]!, ease, measure)];
}

/** A tier's edge in order round the body; top edges themselves run the other way. */
const round = ({ tier, strips }: TierFigures, edge: string, back: boolean): readonly SeamEdge[] =>
	Array.from({ length: strips }, (_, i) => ({ piece: panelName(tier), copy: i + 1, edge, from: back ? 1 : 0, to: back ? 0 : 1 }));

/** Each strip to the next, top to bottom; the last meets the first where the zip is, and is sewn from `open` on. */
function stripSeams(
	{ tier, strips }: TierFigures, open: number, { zipAt }: TieredSkirt,
	seam: (name: string, a: readonly SeamEdge[], b: readonly SeamEdge[]) => Seam
): readonly Seam[] {
	const seams: Seam[] = [];
	const piece = panelName(tier);
	for (let copy = 1; copy <= strips; copy++) {
		const last = copy === strips;
		const part = (from: number, to: number): [readonly SeamEdge[], readonly SeamEdge[]] => [
			[{ piece, copy, edge: 'second seam', from: 1 - from, to: 1 - to }],
			[{ piece, copy: last ? 1 : copy + 1, edge: 'first seam', from, to }]
		];
		const name = last ? `tier ${tier} ${closureName(zipAt)}` : `tier ${tier} panel ${copy} to panel ${copy + 1}`;
		const from = last ? open : 0;
		if (from > 0) seams.push(seam(`tier ${tier} zip opening`, ...part(0, from)));
		if (from < 1) seams.push(seam(name, ...part(from, 1)));
	}
	return seams;
}
