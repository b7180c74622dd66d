// Every seam of a tiered skirt: strip to strip round a tier, tier to tier gathered, the first tier to the band.
import { stripJoins, type StripBand } from '../band/strip.ts';
import { closureName } from '../closure.ts';
import type { Piece } from '../piece.ts';
import type { Join, Seam, SeamEdge } from '../seam.ts';
import { measured } from '../seams.ts';
import type { TieredFigures, TierFigures } from './figures.ts';
import { edgesOf, openPart, panelName } from './pieces.ts';
import type { TieredSkirt } from './skirt.ts';

export function tieredSeams(figures: TieredFigures, pieces: readonly Piece[], skirt: TieredSkirt, band: StripBand): readonly Seam[] {
	const joins: Join[] = [];
	const tops = figures.tiers.map((tier) => round(tier, edgesOf(tier.tier, skirt.tiers).top, true));
	for (const tier of figures.tiers) {
		joins.push(...tierJoins(tier, openPart(tier, figures), skirt));
		if (tier.tier === 1) continue;
		const above = figures.tiers[tier.tier - 2]!;
		// Chosen by the ratio: every length of the seam takes up that many times its own of the gathered edge.
		const ease = (tier.ratio - 1) * above.girth;
		joins.push({ name: `tier ${tier.tier} to tier ${above.tier}`, a: tops[tier.tier - 1]!, b: round(above, 'lower edge', false), ease });
	}
	const ease = (figures.tiers[0]!.ratio - 1) * figures.waistSeamGirth;
	return measured([...joins, ...stripJoins(tops[0]!, band, ease)], pieces);
}

/** A tier's edge in order round the body; top edges themselves run the other way. */
const round = ({ tier, strips }: TierFigures, edge: string, back: boolean): readonly SeamEdge[] =>
	Array.from({ length: strips }, (_, i) => ({ piece: panelName(tier), copy: i + 1, edge, from: back ? 1 : 0, to: back ? 0 : 1 }));

/** Each strip to the next, top to bottom; the last meets the first where the zip is, and is sewn from `open` on. */
function tierJoins({ tier, strips }: TierFigures, open: number, { zipAt }: TieredSkirt): readonly Join[] {
	const joins: Join[] = [];
	const piece = panelName(tier);
	for (let copy = 1; copy <= strips; copy++) {
		const last = copy === strips;
		const part = (name: string, from: number, to: number): Join => ({
			name, ease: 0,
			a: [{ piece, copy, edge: 'second seam', from: 1 - from, to: 1 - to }],
			b: [{ piece, copy: last ? 1 : copy + 1, edge: 'first seam', from, to }]
		});
		const name = last ? `tier ${tier} ${closureName(zipAt)}` : `tier ${tier} panel ${copy} to panel ${copy + 1}`;
		const from = last ? open : 0;
		if (from > 0) joins.push(part(`tier ${tier} zip opening`, 0, from));
		if (from < 1) joins.push(part(name, from, 1));
	}
	return joins;
}
