// The strips of every tier as pieces: equal rectangles, drawn once a tier.
import { startPlace } from '../closure.ts';
import { landmarksBetween } from '../panel.ts';
import type { Notch, Piece } from '../piece.ts';
import type { TieredFigures, TierFigures } from './figures.ts';
import type { TieredSkirt } from './skirt.ts';
import { cutOf, stripOutline, type StripEdges } from '../strip.ts';

export const panelName = (tier: number): string => `panel tier ${tier}`;

/** The edge names of a tier: only the first has a waist, only the last a hem. */
export const edgesOf = (tier: number, tiers: number): StripEdges => ({
	first: 'first seam', second: 'second seam', top: tier === 1 ? 'waist' : 'gathered edge', lower: tier === tiers ? 'hem' : 'lower edge'
});

export const tierPieces = (figures: TieredFigures, skirt: TieredSkirt): readonly Piece[] =>
	figures.tiers.map((tier) => tierPiece(tier, figures, skirt));

function tierPiece(tier: TierFigures, figures: TieredFigures, skirt: TieredSkirt): Piece {
	const names = edgesOf(tier.tier, skirt.tiers);
	const stitch = stripOutline(names, tier.stripLength, tier.length);
	const { waist, seam } = skirt.allowances;
	const cut = cutOf(stitch, (edge) => (edge === 'waist' ? waist : edge === 'hem' ? skirt.hem : seam));
	return {
		name: panelName(tier.tier),
		cloth: 'shell',
		count: tier.strips,
		fold: null,
		// The strips lie across the cloth, so the grain runs down the skirt.
		grain: { from: [tier.length * 0.1, 0], to: [tier.length * 0.9, 0] },
		stitch,
		cut,
		notches: [...quarterNotches(tier, names, skirt), ...zipNotch(tier, names, figures)]
	};
}

/** Centre front, centre back and the sides, on both long edges: the gathers are spread evenly from mark to mark. */
function quarterNotches({ strips, tier }: TierFigures, { top, lower }: StripEdges, { zipAt, tiers }: TieredSkirt): readonly Notch[] {
	const start = startPlace(zipAt);
	return Array.from({ length: strips }).flatMap((_, i) =>
		landmarksBetween(start + i / strips, start + (i + 1) / strips).flatMap(({ at, mark }): Notch[] => {
			const part = (at - start) * strips - i;
			const shared = { kind: mark.kind, marks: mark.marks, ...(strips > 1 && { copy: i + 1 }) } as const;
			// The top edge runs back towards the first seam.
			return [{ ...shared, edge: top, at: 1 - part }, ...(tier < tiers ? [{ ...shared, edge: lower, at: part }] : [])];
		})
	);
}

/** How much of a tier's seam lies open, 0…1. */
export function openPart({ tier, length }: TierFigures, { tiers, zipEndBelowSeam = 0 }: TieredFigures): number {
	const above = tiers.reduce((sum, other) => (other.tier < tier ? sum + other.length : sum), 0);
	return Math.min(1, Math.max(0, (zipEndBelowSeam - above) / length));
}

function zipNotch(tier: TierFigures, { first, second }: StripEdges, figures: TieredFigures): readonly Notch[] {
	const part = openPart(tier, figures);
	if (part <= 0 || part >= 1 - 1e-9) return [];
	const copy = (at: number): { copy?: number } => (tier.strips > 1 ? { copy: at } : {});
	return [
		{ edge: first, at: part, kind: 'single', marks: 'zip end', ...copy(1) },
		{ edge: second, at: 1 - part, kind: 'single', marks: 'zip end', ...copy(tier.strips) }
	];
}
