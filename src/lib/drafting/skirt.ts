// What is to be made: the checked choices, millimetres and radians, every default filled in.

export type HemFinish = 'turned' | 'narrow';
export type ZipAt = 'centreBack' | 'leftSide';

export interface StraightBand {
	readonly kind: 'straight';
	/** Finished depth. */
	readonly depth: number;
	/** How far one back end reaches beyond the seam. */
	readonly underlap: number;
}

export interface Lining {
	/** From finished hem to finished hem. */
	readonly shorterBy: number;
}

/** `style` tells kinds of skirt apart; later kinds have no share. */
export interface FlaredSkirt {
	readonly style: 'flared';
	/** Share of a full circle, 0.1 to 2. */
	readonly share: number;
	/** Finished length, from the band's top edge to the hem fold. */
	readonly length: number;
	readonly waistEase: number;
	readonly hipEase: number;
	/** 1 to 12 equal panels. */
	readonly panels: number;
	readonly band: StraightBand;
	/** Hem allowance: the whole depth of cloth below the hem fold. */
	readonly hem: number;
	/** `turned` once by `hem`, or `narrow`: turned twice by half of it. */
	readonly hemFinish: HemFinish;
	/** One seam always lies here; with one panel it is the centre back. */
	readonly zipAt: ZipAt;
	/** Which shop series the zip is bought from. */
	readonly zipSeries: 'cm' | 'in';
	readonly lining: Lining | null;
	readonly allowances: { readonly waist: number; readonly seam: number };
}

export type Skirt = FlaredSkirt;
