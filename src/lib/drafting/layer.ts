// Everything that follows the panels: the skirt itself, the facings of its waist and hem, its lining.
import type { Figures } from './draft.ts';
import { facingSizes } from './facing.ts';
import { lining, panelPieces, panelPlaces, shell, unevenPanels, type Follows, type PanelPlace, type PanelSize } from './panel.ts';
import type { Piece } from './piece.ts';
import { ringPiece } from './ring.ts';
import { farther } from './shape.ts';
import { isRing, liningShare, type FlaredSkirt } from './skirt.ts';
import type { Profiles } from './uneven.ts';

export interface Layer {
	readonly follows: Follows;
	readonly size: PanelSize;
	/** In one piece without a seam. */
	readonly ring: boolean;
	readonly places: readonly PanelPlace[];
}

/** What of the figures the layers are drawn from. */
type Drawn = Pick<Figures, 'sweepAngle' | 'waistRadius' | 'hemRadius' | 'skirtLength' | 'zipEndBelowSeam' | 'liningSweepAngle' | 'liningWaistRadius' | 'liningHemRadius'>;

/** The skirt first, the lining last. */
export function layersOf(skirt: FlaredSkirt, figures: Drawn, profiles: Profiles | null): readonly Layer[] {
	const { allowances } = skirt;
	const { sweepAngle: sweep, skirtLength: seamLength } = figures;
	const ring = isRing(skirt);
	const level = panelPlaces(skirt, sweep);
	const foldedBack = skirt.hemCorner === 'foldedBack' && skirt.hemFinish === 'turned' && !ring;
	const allowed = { waistAllowance: allowances.waist, seamAllowance: allowances.seam, hemAllowance: skirt.hem } as const;
	const plain: PanelSize = {
		...allowed, waistRadius: figures.waistRadius, hemRadius: figures.hemRadius, zipEnd: figures.zipEndBelowSeam, seamLength, ...(foldedBack && { foldedBack })
	};
	const profile = profiles?.shell;
	const places = profile ? unevenPanels(level, profile) : level;
	const size = profile ? { ...plain, shape: { profile, inner: profile.waist, outer: profile.hem } } : plain;
	const layers: Layer[] = [{ follows: shell, size, ring, places }, ...facingSizes(size, skirt).map((facing) => ({ ...facing, ring, places }))];

	const { liningSweepAngle, liningWaistRadius, liningHemRadius } = figures;
	if (!skirt.lining || liningSweepAngle === undefined || liningWaistRadius === undefined || liningHemRadius === undefined) return layers;
	// The slit in a lining is longer than the zip, and its end isn't notched: it is measured from the zip.
	const under: PanelSize = { ...plain, waistRadius: liningWaistRadius, hemRadius: liningHemRadius, zipEnd: undefined, narrowed: liningSweepAngle / sweep };
	const whole = ring && liningShare(skirt) === 1;
	const inner = profiles?.lining;
	if (!inner) return [...layers, { follows: lining, size: under, ring: whole, places }];
	const shape = { profile: inner, inner: inner.waist, outer: farther(inner.hem, -skirt.lining.shorterBy) };
	return [...layers, { follows: lining, size: { ...under, shape }, ring: whole, places: unevenPanels(level, inner) }];
}

/** Null where one of them has no room for its allowances. */
export function layerPieces({ follows, size, ring, places }: Layer): readonly Piece[] | null {
	if (!ring) return panelPieces(places, size, follows);
	const piece = ringPiece(size, follows.named('panel'), follows.cloth);
	return piece && [piece];
}
