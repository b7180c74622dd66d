// What stands in the way of a reading on the real thing. Apart from the ways back, so that a step with a reading to put in
// doesn't carry the words of every mistake.
import type { Unit } from '../../drafting/length.ts';
import type { ReadingName } from '../../drafting/made/reading.ts';
import type { Issue } from '../../drafting/result.ts';
import { long } from './long.ts';

/** What to measure, where a rescue asks for it. */
export const readingNames: Readonly<Record<ReadingName, string>> = {
	radiusDrawn: 'from the corner to the waist stitch line',
	waistEdgeAfterStaystitch: 'along the waist’s cut edge, all round',
	waistSeamAfterSewing: 'along the waist seam, all round',
	clothAfterWashing: 'the cloth’s width and length after washing',
	zipBought: 'the zip’s length',
	floor: 'from the floor to the hem, at 8 to 16 places',
	hemAbove: 'how high above the floor the hem is to be',
	nickDepth: 'from the cut edge to the end of the nick',
	panelLength: 'the panel, from waist edge to hem edge',
	bandLength: 'the band, from cut end to cut end',
	liningWaist: 'the lining’s waist along its stitch line',
	liningAbove: 'from the skirt’s hem up to the lining’s',
	bandWanted: 'what the closed band should go round'
};

/** What stands in the way of a rescue or of a reading on the real thing. */
export const madeIssueSays: Readonly<Record<string, (issue: Issue, unit: Unit) => string>> = {
	'reading-missing': ({ expected }) => {
		const [name] = Array.isArray(expected) ? expected : [];
		const asked = typeof name === 'string' && Object.hasOwn(readingNames, name) ? readingNames[name as ReadingName] : 'the piece';
		return `Measure first: ${asked}. Then the numbers are worked out.`;
	},
	'nothing-to-mend': ({ figures }, unit) => `That needs no mending: ${long(figures?.made, unit)}, and ${long(figures?.planned, unit)} was planned. Go on as before.`,
	'no-way-back': ({ figures }, unit) => `No skirt of this kind fits in that. ${long(figures?.planned, unit)} is needed and ${long(figures?.made, unit)} is there. Ask your teacher about another skirt.`,
	'no-lining': () => 'This skirt has no lining. Choose something else from the list.',
	'hip-needed': () => 'Without a hip reading nobody can say how long the opening must be. Measure the hip first.',
	'floor-places': ({ received }) => `Measure at 8 to 16 places round the hem. ${String(received)} came.`,
	'place-twice': () => 'One place round the hem is there twice. Leave one of them out.',
	'hem-below-cloth': ({ figures }, unit) => `The cloth doesn’t reach so low. ${long(figures?.least, unit)} above the floor is the lowest for the hem fold.`,
	'hem-above-skirt': ({ figures }, unit) => `That would cut the skirt away. Choose a height below ${long(figures?.most, unit)}.`
};
/** The sentence, or null where its words live in issue.ts. */
export const madeIssueSentence = (issue: Issue, unit: Unit): string | null =>
	(Object.hasOwn(madeIssueSays, issue.code) ? madeIssueSays[issue.code]!(issue, unit) : null);
