/** The accidents that there is a way back from, in the order in which a skirt meets them. */
export const rescueCodes = [
	'cloth-short', 'waist-cut-large', 'waist-cut-small', 'allowance-forgotten', 'nick-near-waist', 'nick-near-hem', 'panel-short', 'waist-stretched',
	'zip-short', 'zip-long', 'lining-tight', 'lining-long', 'band-short', 'band-tight', 'band-loose', 'hem-dips'
] as const;
export type RescueCode = (typeof rescueCodes)[number];
