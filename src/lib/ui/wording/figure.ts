// What the draft's figures and choices are called.
import type { Figures } from '../../drafting/draft.ts';

export const figureNames: Readonly<Record<keyof Figures, string>> = {
	sweepAngle: 'whole sweep',
	waistSeamGirth: 'waist seam',
	waistRadius: 'waist radius',
	cutWaistRadius: 'cut radius at the waist',
	skirtLength: 'length below the band',
	hemRadius: 'hem radius',
	cutHemRadius: 'cut radius at the hem',
	hemSweep: 'round the hem',
	hemSurplus: 'to ease into a hem turned once',
	lengthFront: 'length below the band at centre front',
	lengthSideLeft: 'length below the band at the left side',
	lengthSideRight: 'length below the band at the right side',
	lengthBack: 'length below the band at centre back',
	shortestLength: 'shortest length below the band',
	longestLength: 'longest length below the band',
	waistRadiusFront: 'waist radius at centre front',
	waistRadiusSideLeft: 'waist radius at the left side',
	waistRadiusSideRight: 'waist radius at the right side',
	waistRadiusBack: 'waist radius at centre back',
	hemRadiusFront: 'hem radius at centre front',
	hemRadiusSideLeft: 'hem radius at the left side',
	hemRadiusSideRight: 'hem radius at the right side',
	hemRadiusBack: 'hem radius at centre back',
	bandCutLength: 'band, cut length',
	bandCutDepth: 'band, cut depth',
	bandAngle: 'angle of the band',
	bandTopRadius: 'band, radius of the top edge',
	bandLowRadius: 'band, radius of the waist seam',
	elasticLength: 'elastic, cut length',
	openingBelowSeam: 'least opening below the waist seam',
	zipLength: 'zip to buy',
	zipEndBelowSeam: 'waist seam to zip end',
	panelAngle: 'angle of one panel',
	panelCutArea: 'cloth in one panel',
	panelWaistCutLength: 'cut waist edge of one panel',
	panelHemCutLength: 'cut hem edge of one panel',
	waistClip: 'cut waist edge, shorter than its stitch line by',
	hipDepth: 'hip below the waist seam',
	girthAtHip: 'round the skirt at hip depth',
	liningSweepAngle: 'whole sweep of the lining',
	liningWaistRadius: 'waist radius of the lining',
	liningHemRadius: 'hem radius of the lining',
	liningOpeningBelowSeam: 'least opening of the lining'
};
export const figureName = (name: keyof Figures): string => figureNames[name];

/** What can be chosen, by its path in the draft's input. */
export const choiceNames: Readonly<Record<string, string>> = {
	'body.waist': 'waist', 'body.hip': 'hip', 'body.waistToHip': 'waist to hip', 'body.waistToFloor': 'waist to floor',
	'skirt.share': 'share of a circle', 'skirt.length': 'finished length', 'skirt.panels': 'number of panels',
	'skirt.waistEase': 'ease at the waist', 'skirt.hipEase': 'ease at the hip', 'skirt.band.depth': 'depth of the band', 'skirt.band.underlap': 'underlap', 'skirt.band.kind': 'kind of band', 'skirt.band.lower': 'girth at the band’s lower edge', 'skirt.band.elastic': 'width of the elastic',
	'skirt.band.facing': 'depth of the waist facing', 'skirt.band.sits': 'where the band sits', 'skirt.closure': 'how it closes', 'skirt.hemFacing': 'depth of the hem facing',
	'skirt.lining.share': 'flare of the lining', 'skirt.panelShares': 'widths of the panels',
	'skirt.lengths.front': 'finished length at centre front', 'skirt.lengths.side': 'finished length at the sides', 'skirt.lengths.sideLeft': 'finished length at the left side',
	'skirt.lengths.sideRight': 'finished length at the right side', 'skirt.lengths.back': 'finished length at centre back', 'skirt.lengths': 'finished lengths',
	'skirt.riseAt': 'where the difference is made', 'skirt.waistDip': 'dip of the waist', 'skirt.waistDip.front': 'dip of the waist at centre front', 'skirt.waistDip.back': 'dip of the waist at centre back',
	'skirt.hemCorner': 'corners of the hem',
	'skirt.hem': 'hem allowance', 'skirt.hemFinish': 'hem finish', 'skirt.zipAt': 'place of the zip', 'skirt.lining.shorterBy': 'how much shorter the lining is',
	'skirt.clothKind': 'kind of cloth', 'skirt.allowances.waist': 'waist allowance', 'skirt.allowances.seam': 'seam allowance'
};

const shares: readonly (readonly [number, string])[] = [
	[1 / 4, 'a quarter circle'], [1 / 3, 'a third of a circle'], [3 / 8, 'three eighths of a circle'], [1 / 2, 'half a circle'],
	[2 / 3, 'two thirds of a circle'], [3 / 4, 'three quarters of a circle'], [1, 'a full circle'], [5 / 4, 'a circle and a quarter'],
	[3 / 2, 'a circle and a half'], [2, 'two circles']
];
/** Rounded up, so that what is said is never less than what is needed. */
export const shareWords = (share: number): string =>
	shares.find(([of]) => Math.abs(of - share) < 1e-6)?.[1] ?? `${(Math.ceil(share * 1000 - 1e-6) / 1000).toFixed(3).replace(/0+$/, '')} of a circle`;
