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

/** Finished lengths that are named; one that isn't takes `length`. The wearer's own left and right. */
export interface Lengths {
	readonly front?: number;
	readonly sideLeft?: number;
	readonly sideRight?: number;
	readonly back?: number;
}
/** Where lengths that differ are made: `hem`: the waist stays an arc and the hem is shaped; `waist`: the hem stays an arc and the waist rises and falls, the older way. */
export type RiseAt = 'hem' | 'waist';
/** How far the waist seam is lowered at centre front and centre back. The hem stays where it is, so the skirt is as much shorter there. */
export interface WaistDip {
	readonly front: number;
	readonly back: number;
}
/** At a turned hem: `mitred`: the seam allowance runs on; `foldedBack`: below the fold it mirrors what it is turned on to. */
export type HemCorner = 'mitred' | 'foldedBack';

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
	/** Left out: `length` all round. */
	readonly lengths?: Lengths;
	/** Left out: `hem`. */
	readonly riseAt?: RiseAt;
	/** Left out: none. */
	readonly waistDip?: WaistDip;
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
	/** Of a turned hem; other finishes are mitred. Left out: `mitred`. */
	readonly hemCorner?: HemCorner;
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

/** The lining's share of a full circle. */
export const liningShare = ({ lining, share }: FlaredSkirt): number => lining?.share ?? share;

/** Does the skirt have edges that are no arcs about the corner? */
export const isUneven = ({ lengths, waistDip }: FlaredSkirt): boolean => lengths !== undefined || waistDip !== undefined;

/** The finished length at each of four places. */
export const finishedLengths = ({ length, lengths }: FlaredSkirt): Required<Lengths> =>
	({ front: length, sideLeft: length, sideRight: length, back: length, ...lengths });

/**
 * How far the waist is lowered at a place: all of it at centre front or back, nothing a quarter of the waist away, by
 * cos² between (ours: smooth, and never above the sides).
 */
export const waistDipAt = ({ waistDip }: FlaredSkirt, place: number): number => {
	const cosine = Math.cos(2 * Math.PI * place);
	return waistDip ? (cosine > 0 ? waistDip.front : waistDip.back) * cosine * cosine : 0;
};
/** For each whole turn. */
export const waistDipSlope = ({ waistDip }: FlaredSkirt, place: number): number => {
	const t = 2 * Math.PI * place;
	return waistDip ? -2 * Math.PI * (Math.cos(t) > 0 ? waistDip.front : waistDip.back) * Math.sin(2 * t) : 0;
};

/** A full circle in one piece that is pulled on has no seam: its waist is a hole in a ring of cloth. */
export const isRing = ({ panels, share, closure }: FlaredSkirt): boolean => panels === 1 && share === 1 && closure === 'none';
