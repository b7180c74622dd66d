// Readings on the real thing, in words: what to measure, how near it is, and what follows. One thing a sentence.
import type { MadeName } from '../../class/made.ts';
import type { Unit } from '../../drafting/length.ts';
import type { AsMadeFigures, MadeWaist } from '../../drafting/made/as-made.ts';
import type { JudgedReading } from '../../lesson/own-made.ts';
import { fine, long } from './long.ts';

/** What stands at each field, and how the reading is taken. */
export const madeFields: Readonly<Record<Exclude<MadeName, 'floor'>, { readonly labels: readonly string[]; readonly hint?: string }>> = {
	clothAfterWashing: { labels: ['Width of the washed cloth', 'Length of the washed cloth'], hint: 'Inside the selvedges. Measure in three places, and use the shortest.' },
	radiusDrawn: { labels: ['From the corner to the stitch line you drew'], hint: 'Measure in three places. If they differ, draw the line again first.' },
	waistAfterStaystitch: { labels: ['Along the waist stitch line, all round'], hint: 'From one back line to the other, along the stitch line.' },
	zipBought: { labels: ['The zip you have'], hint: 'As its packet says, or from its top stop to its bottom stop.' },
	waistSeamAfterSewing: { labels: ['Along the sewn waist seam, all round'], hint: 'From one back edge to the other. The underlap is not counted.' },
	hemAbove: { labels: ['How high above the floor the hem is to be'], hint: 'Leave it empty for the lowest level hem that the cloth gives.' }
};
export const floorHint = 'Worn with its shoes, standing still. Someone else measures from the floor up to the cut edge.';

const eighths = ['Centre front', 'Left front', 'Left side', 'Left back', 'Centre back', 'Right back', 'Right side', 'Right front'] as const;
/** A place round the hem, 0…1 from centre front to the wearer's left. */
export function placeName(place: number): string {
	const eighth = place * 8;
	const at = Math.round(eighth);
	if (Math.abs(eighth - at) < 1e-6) return eighths[at % 8]!;
	const [before, after] = [eighths[Math.floor(eighth) % 8]!, eighths[Math.ceil(eighth) % 8]!];
	return `Between ${before.toLowerCase()} and ${after.toLowerCase()}`;
}

type Verdict = (one: JudgedReading, unit: Unit) => string;
const waistVerdict: Verdict = ({ reading, comesTo, expected, near, out }, unit) => {
	const what = reading === 'radiusDrawn' ? `That line sews to ${long(comesTo, unit)}` : `It reads ${long(comesTo, unit)}`;
	const off = comesTo - expected;
	if (!out) return Math.abs(off) < 0.05 ? `${what}, as planned.` : `${what}, and ${long(expected, unit)} is wanted. That is near enough.`;
	return `${what}, and ${long(expected, unit)} is wanted. That is ${fine(Math.abs(off), unit)} ${off > 0 ? 'more' : 'less'}; up to ${fine(near, unit)} is near enough.`;
};

const verdicts: Readonly<Record<Exclude<MadeName, 'hemAbove'>, Verdict>> = {
	clothAfterWashing: ({ comesTo, expected }, unit) => `This cloth gives a skirt of up to ${long(comesTo, unit)} below the band, and ${long(expected, unit)} is planned. Band and lining are not counted.`,
	radiusDrawn: waistVerdict,
	waistAfterStaystitch: waistVerdict,
	zipBought: ({ comesTo, expected, rescue }, unit) => {
		if (rescue === 'zip-long') return `A zip of ${long(comesTo, unit)} is longer than the seam it goes into. The opening needs ${long(expected, unit)}.`;
		return rescue === null ? `A zip of ${long(comesTo, unit)} does it: the opening needs ${long(expected, unit)}.` : `The zip is ${long(comesTo, unit)}, and the opening needs ${long(expected, unit)}.`;
	},
	waistSeamAfterSewing: waistVerdict,
	floor: ({ comesTo, near, out }, unit) => out
		? `Between its highest place and its lowest the edge dips by ${fine(comesTo, unit)}. Up to ${fine(near, unit)} counts as level.`
		: `The edge is level to ${fine(comesTo, unit)}. Up to ${fine(near, unit)} counts as level.`
};
export const verdictSays = (one: JudgedReading, unit: Unit): string => (one.reading === 'hemAbove' ? '' : verdicts[one.reading](one, unit));

/** A reading so far off is more often a slip in the unit, or the tape's other side: a quarter of what was expected. */
export const lookAgain = ({ reading, comesTo, expected, out }: JudgedReading): string | null =>
	out && reading !== 'floor' && Math.abs(comesTo - expected) > expected / 4 ? 'That is far off. Look once more at the number, and at the side of the tape it was read from.' : null;

/** What follows from a reading, each a sentence. */
export function followsSays({ reading, out }: JudgedReading, figures: AsMadeFigures, unit: Unit): readonly string[] {
	const { zip, hem, cloth } = figures;
	switch (reading) {
		case 'radiusDrawn': case 'waistAfterStaystitch': case 'waistSeamAfterSewing': {
			const waist = figures.waists.find(({ from }) => from === (reading === 'waistAfterStaystitch' ? 'waistEdgeAfterStaystitch' : reading));
			return waist ? waistFollows(waist, reading, out, unit) : [];
		}
		case 'zipBought': return zip && !out ? [`It ends ${long(zip.endBelowSeam, unit)} below the waist seam. The steps go by that from here.`] : [];
		case 'floor': return hem ? [
			`Mark the hem fold ${long(hem.above, unit)} above the floor, and cut ${long(hem.cutEdgeAbove, unit)} above it. At most ${fine(hem.mostTrim, unit)} comes off.`,
			...(hem.above > hem.leastAbove + 0.05 ? [`The lowest that the cloth gives is ${long(hem.leastAbove, unit)}.`] : [])
		] : [];
		case 'clothAfterWashing': return cloth && !out && cloth.spare > 0 ? [`That leaves ${long(cloth.spare, unit)} of length to spare.`] : [];
		case 'hemAbove': return [];
	}
}

function waistFollows({ easeIn, letOut, sewDeeper, bandCutLength, opening, zipEndBelowSeam }: MadeWaist, reading: MadeName, out: boolean, unit: Unit): readonly string[] {
	const onLine = reading === 'radiusDrawn';
	if (!out) return easeIn >= 0.5 && !onLine ? [`Ease ${fine(easeIn, unit)} into the band.`] : [];
	if (onLine) return ['Rub the line out and draw it again, before anything is cut.', `As it is, its band would be cut ${long(bandCutLength, unit)} long.`];
	return [
		...(letOut > 0 ? [`For the planned band, sew ${fine(sewDeeper, unit)} deeper into the skirt. That lets ${fine(letOut, unit)} out.`] : [`For the planned band, ${fine(easeIn, unit)} has to be drawn up or eased in.`]),
		`For the waist as it is, cut the band ${long(bandCutLength, unit)} long. The steps after this one go by that.`,
		...(opening !== undefined && opening > 0 && zipEndBelowSeam !== undefined ? [`The opening then needs ${long(opening, unit)}.`] : []),
		'If you mend it, measure again and put the new number in.'
	];
}
