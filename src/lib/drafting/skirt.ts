// What is to be made: the checked choices, millimetres and radians, every default filled in.

/** `turned` once by the whole allowance; `narrow`: twice by half of it; `rolled`: as narrow, by hand or a foot; `bound`: the raw edge in a bias strip; `faced`: a shaped facing. */
export type HemFinish = 'turned' | 'narrow' | 'rolled' | 'bound' | 'faced';
export type ClothKind = 'woven' | 'stretch';
export type ZipAt = 'centreBack' | 'leftSide';
/** `none`: it goes on over the hip as it is. */
export type Closure = 'zip' | 'none';
/** Where the band lies against the measured waist line: above it (the waist seam lies on the line), centred on it, or below. */
export type Sits = 'above' | 'centred' | 'below';

/**
 * What finishes the waist. `depth` is how far it rises above the waist seam, `underlap` how far one back end reaches
 * beyond the zip.
 */
interface Rises {
	readonly depth: number;
	readonly underlap: number;
	readonly sits: Sits;
}
export interface StraightBand extends Rises {
	readonly kind: 'straight';
}
/** Of a skirt that isn't a sector: it lies above the waist line. */
export type PlainBand = Omit<StraightBand, 'sits'>;
/** Shaped: `lower` is the girth at its lower edge, which is the waist seam; its top edge is waist + ease. */
export interface ContourBand extends Rises {
	readonly kind: 'contour';
	readonly lower: number;
}
/** A casing cut as a strip of its own, a closed ring for elastic of this width. */
export interface ElasticBand extends Rises {
	readonly kind: 'elastic';
	readonly underlap: 0;
	readonly elastic: number;
}
/** No band: the waist edge is turned in with a shaped facing this deep. */
export interface FacedWaist extends Rises {
	readonly kind: 'faced';
	readonly depth: 0;
	readonly underlap: 0;
	readonly facing: number;
}
export type Band = StraightBand | ContourBand | ElasticBand | FacedWaist;

export interface Lining {
	/** From finished hem to finished hem. */
	readonly shorterBy: number;
	/** Share of a full circle, not above the skirt's. Null: as the skirt. */
	readonly share: number | null;
}

/** `style` tells kinds of skirt apart; other kinds have no share. */
export interface FlaredSkirt {
	readonly style: 'flared';
	/** Share of a full circle, 0.1 to 2. */
	readonly share: number;
	/** Finished length, from the band's top edge to the hem fold. */
	readonly length: number;
	readonly waistEase: number;
	readonly hipEase: number;
	/** 1 to 12 panels. */
	readonly panels: number;
	/** Each panel's share of the waist and of the flare, in order from the seam with the zip; they sum to 1. Null: equal. */
	readonly panelShares: readonly number[] | null;
	readonly band: Band;
	readonly closure: Closure;
	/** Hem allowance: the whole depth of cloth below the hem fold. */
	readonly hem: number;
	readonly hemFinish: HemFinish;
	/** How deep a shaped hem facing is; used by the finish `faced`. */
	readonly hemFacing: number;
	/** One seam always lies here; with one panel it is the centre back. */
	readonly zipAt: ZipAt;
	/** Which shop series the zip is bought from. */
	readonly zipSeries: 'cm' | 'in';
	readonly lining: Lining | null;
	/** Absent: woven, which the draft is for. */
	readonly clothKind?: ClothKind;
	readonly allowances: { readonly waist: number; readonly seam: number };
}

export type Skirt = FlaredSkirt;

/** A full circle in one piece that is pulled on has no seam: its waist is a hole in a ring of cloth. */
/** The lining's share of a full circle. */
export const liningShare = ({ lining, share }: FlaredSkirt): number => lining?.share ?? share;

export const isRing = ({ panels, share, closure }: FlaredSkirt): boolean => panels === 1 && share === 1 && closure === 'none';
