// The way back from an accident, in words: stop, look, choose. One action a sentence, in a calm voice.
import type { Unit } from '../../drafting/length.ts';
import type { OptionCode, RescueOption } from '../../drafting/made/option.ts';
import type { LookCode, RescueDraft } from '../../drafting/made/rescue.ts';
import type { RescueCode } from '../../drafting/made/rescue-code.ts';
import { shareWords } from './figure.ts';
import { fine, long } from './long.ts';

/** What has happened, as a learner would look for it in a list. */
export const rescueNames: Readonly<Record<RescueCode, string>> = {
	'cloth-short': 'The cloth has shrunk, or there is less of it',
	'waist-cut-large': 'The waist is cut too long',
	'waist-cut-small': 'The waist is cut too short',
	'allowance-forgotten': 'The waist is cut along its stitch line',
	'nick-near-waist': 'A nick near the waist',
	'nick-near-hem': 'A nick near the hem',
	'panel-short': 'A panel is too short',
	'waist-stretched': 'The waist edge has stretched',
	'zip-short': 'The zip is too short',
	'zip-long': 'The zip is too long',
	'lining-tight': 'The lining is tight at the waist',
	'lining-long': 'The lining is too long',
	'band-short': 'The band is too short',
	'band-tight': 'The closed band is tight',
	'band-loose': 'The closed band is loose',
	'hem-dips': 'The hem dips'
};

/** Before anything is mended. */
export const lookSays: Readonly<Record<LookCode, string>> = {
	'shears-down': 'Put the shears down. Nothing more is cut for now.',
	'needle-up': 'Stop the machine. Lift the needle, then the foot.',
	'lay-flat': 'Lay the piece flat. Let it rest before you measure.',
	'measure-again': 'Measure once more, from the other end.',
	'stitch-line-not-edge': 'Measure along the stitch line. The raw edge reads less.',
	'leave-unclipped': 'Leave the allowance whole. Don’t clip it yet.',
	'mark-the-nick': 'Mark the nick’s tip with chalk. Measure to it from the cut edge.',
	'other-layer': 'Look at the layer below. Is it cut as well?',
	'which-allowance': 'Hold the cut edge on the chalk lines. See which line it follows.',
	'both-selvedges': 'Measure from selvedge to selvedge at both ends. Use the shorter.',
	'tape-along-band': 'Lay the tape along the band, on the table.',
	'zip-closed-flat': 'Close the zip. Measure from its top stop to its bottom stop.',
	'opening-measured': 'Measure the open seam, from the waist line down.',
	'lining-free': 'Lift the lining away from the skirt. Measure it by itself.',
	'hung-a-day': 'Has it hung for a day? If not, hang it first.',
	'same-shoes': 'Wear the shoes that go with it.',
	'worn-and-still': 'Look at it worn, standing still. Someone else measures.',
	'press-first': 'Press the cloth flat. A crease hides length.'
};

type Numbers = Readonly<Record<string, number>>;
type Says = (figures: Numbers, unit: Unit) => string;
const sewIt: Says = ({ fromEdge }, unit) => `Sew ${fine(fromEdge, unit)} from the cut edge.`;

/** What to do, and what it brings. */
export const optionSays: Readonly<Record<OptionCode, Says>> = {
	'sew-nearer-edge': ({ allowance, waistSeam }, unit) => `Sew ${fine(allowance, unit)} from the cut edge. The waist is then ${long(waistSeam, unit)}, as planned.`,
	'ease-in': ({ ease, waistSeam }, unit) => `Ease ${fine(ease, unit)} into the band. The waist is then ${long(waistSeam, unit)}, as planned.`,
	'sew-nearer-and-ease': ({ allowance, ease }, unit) => `Sew ${fine(allowance, unit)} from the cut edge. Ease ${fine(ease, unit)} into the band.`,
	'take-in': ({ edges, atWaist, atHem, waistSeam }, unit) =>
		`Take in ${edges} seam edges: ${fine(atWaist, unit)} each at the waist, ${long(atHem, unit)} at the hem. Sew in one straight line. The waist is then ${long(waistSeam, unit)}.`,
	'more-ease': ({ bandCutLength, waistEase }, unit) => `Cut a longer band: ${long(bandCutLength, unit)}. The waist then has ${fine(waistEase, unit)} of ease, and sits a little lower.`,
	'sew-deeper': ({ fromEdge, deeper, waistSeam }, unit) => `Sew ${fine(fromEdge, unit)} from the cut edge, ${fine(deeper, unit)} deeper. The waist is then ${long(waistSeam, unit)}, as planned.`,
	'less-ease': ({ bandCutLength, waistEase }, unit) => `Cut a shorter band: ${long(bandCutLength, unit)}. ${fine(waistEase, unit)} of ease is left.`,
	'let-out': ({ edges, perEdge, allowance }, unit) => `Let out ${edges} seam edges by ${fine(perEdge, unit)} each. ${fine(allowance, unit)} of allowance is left.`,
	'hold-in-allowance': ({ left }, unit) => `Press a scrap of interfacing over the nick. Sew round its tip with short stitches. It ends ${fine(left, unit)} clear of the seam.`,
	'lower-and-ease-in': (figures, unit) => `${sewIt(figures, unit)} Ease ${fine(figures.ease, unit)} into the band. The skirt is ${fine(figures.deeper, unit)} shorter.`,
	'lower-and-take-in': (figures, unit) => `${sewIt(figures, unit)} Take in ${figures.edges} seam edges, ${fine(figures.atWaist, unit)} each at the waist. The skirt is ${fine(figures.deeper, unit)} shorter.`,
	'lower-and-more-ease': (figures, unit) => `${sewIt(figures, unit)} Cut a longer band: ${long(figures.bandCutLength, unit)}. The skirt is ${fine(figures.deeper, unit)} shorter.`,
	'hold-in-hem': ({ left }, unit) => `Press a scrap of interfacing over the nick. The hem shuts it in, ${fine(left, unit)} clear of the fold.`,
	'narrower-hem': ({ hem, length }, unit) => `Make the hem ${fine(hem, unit)} deep. The skirt keeps its length, ${long(length, unit)}.`,
	shorter: ({ shorter, length }, unit) => `Make the skirt ${fine(shorter, unit)} shorter all round: ${long(length, unit)} with its band.`,
	'shorter-nick-in-hem': ({ shorter, length }, unit) => `Make the skirt ${fine(shorter, unit)} shorter: ${long(length, unit)} with its band. The hem shuts the nick in.`,
	'deeper-band': ({ depth, bandCutDepth }, unit) => `Cut a deeper band: ${long(bandCutDepth, unit)}, for ${long(depth, unit)} when folded. The skirt keeps its length.`,
	'faced-hem': ({ allowance, length }, unit) => `Sew a facing to the hem with ${fine(allowance, unit)} of allowance. The skirt is then ${long(length, unit)} with its band.`,
	'draw-up': ({ by, edgeTo }, unit) => `Draw the staystitching up by ${fine(by, unit)}. Steam the edge until it is flat. It then reads ${long(edgeTo, unit)}.`,
	'stay-tape': ({ tape, ease }, unit) => `Cut tape ${long(tape, unit)} long. Sew it along the stitch line. Ease in ${fine(ease, unit)} as you go.`,
	'buy-longer': ({ zipLength, zipEnd }, unit) => `Take a zip of ${long(zipLength, unit)}. It ends ${long(zipEnd, unit)} below the waist seam.`,
	'longer-slit': ({ gap }, unit) => `Leave ${fine(gap, unit)} of seam open below the zip. Close it with hooks or press studs.`,
	'less-hip-ease': ({ hipEase }, unit) => `Set in the zip you have. ${fine(hipEase, unit)} of ease is left as it is drawn on. Tack it and try it first.`,
	'shorten-zip': ({ stop, cut }, unit) => `Sew a new stop over the teeth at ${long(stop, unit)}. Cut the tape at ${long(cut, unit)}. If it has metal teeth, ask your teacher first.`,
	'longer-opening': ({ zipEnd, seam }, unit) => `Leave the seam open for ${long(zipEnd, unit)}. ${long(seam, unit)} of seam is left below.`,
	'trim-at-top': ({ over }, unit) => `Let ${long(over, unit)} stand above the waist. Run the slider down. Sew the band across. Then cut the rest off.`,
	'sew-lining-deeper': ({ fromEdge, deeper }, unit) => `Sew the lining’s waist ${fine(fromEdge, unit)} from its edge, ${fine(deeper, unit)} deeper.`,
	'let-out-lining': ({ edges, perEdge }, unit) => `Let out ${edges} edges of the lining’s seams by ${fine(perEdge, unit)} each.`,
	'trim-lining': ({ trim, above }, unit) => `Trim ${fine(trim, unit)} off the lining. It then ends ${fine(above, unit)} above the skirt’s hem.`,
	'deeper-lining-hem': ({ hem }, unit) => `Turn the lining’s hem up by ${fine(hem, unit)} in all.`,
	'tuck-lining': ({ tuck, takesUp }, unit) => `Sew a tuck ${fine(tuck, unit)} deep round the lining. It takes up ${fine(takesUp, unit)}.`,
	'leave-lining': ({ above }, unit) => `Leave it. It ends ${fine(above, unit)} above the skirt’s hem and stays hidden.`,
	'piece-on': ({ piece, allowance }, unit) => `Cut a piece ${long(piece, unit)} long. Join it to the band’s end, ${fine(allowance, unit)} from both edges.`,
	'smaller-underlap': ({ underlap }, unit) => `Use the band as it is. Its underlap is then ${fine(underlap, unit)}.`,
	'narrower-ends': ({ allowance }, unit) => `Use the band as it is. Sew its ends with ${fine(allowance, unit)} of allowance.`,
	'band-less-ease': ({ allowance, waistEase }, unit) => `Use the band as it is. Sew the waist ${fine(allowance, unit)} from its edge. ${fine(waistEase, unit)} of ease is left.`,
	'move-fastening-out': ({ by, underlap }, unit) => `Move the hook out by ${fine(by, unit)}. ${fine(underlap, unit)} of underlap is left.`,
	'move-fastening-in': ({ by, underlap }, unit) => `Move the hook in by ${fine(by, unit)}. The underlap is then ${fine(underlap, unit)}.`,
	'let-out-zip-seam': ({ perEdge, underlap }, unit) => `Let the zip’s seam out by ${fine(perEdge, unit)} on each edge. The band gives it from its underlap: ${fine(underlap, unit)} is left.`,
	'lower-with-new-band': ({ deeper, bandCutLength }, unit) => `Sew the waist ${fine(deeper, unit)} deeper. Cut a new band: ${long(bandCutLength, unit)}. The skirt is that much shorter.`,
	'shorter-band': ({ bandCutLength, ease }, unit) => `Cut a band of ${long(bandCutLength, unit)}. Ease ${fine(ease, unit)} of the waist into it.`,
	'level-lowest': ({ above, mostTrim }, unit) => `Mark the hem fold ${long(above, unit)} above the floor. At most ${fine(mostTrim, unit)} comes off.`,
	'level-chosen': ({ above, mostTrim }, unit) => `Mark the hem fold ${long(above, unit)} above the floor, as you chose. At most ${fine(mostTrim, unit)} comes off.`,
	'level-narrow': ({ above, hem, lower }, unit) => `Turn a hem of ${fine(hem, unit)}. Its fold lies ${long(above, unit)} above the floor, ${fine(lower, unit)} lower than with the planned hem.`,
	'less-flare': ({ share }) => `Take ${shareWords(share ?? 0)}. It fits the cloth, and keeps its length.`,
	'more-panels': ({ panels }) => `Cut it in ${panels} panels. They fit the cloth, and the skirt keeps its length.`,
	'cut-panel-again': ({ cutWaistRadius, cutHemRadius }, unit) => `Cut the piece again: ${long(cutWaistRadius, unit)} to the waist, ${long(cutHemRadius, unit)} to the hem, from the corner.`,
	'cut-lining-again': ({ cutWaistRadius, cutHemRadius }, unit) => `Cut the lining again: ${long(cutWaistRadius, unit)} to the waist, ${long(cutHemRadius, unit)} to the hem, from the corner.`,
	'cut-band-again': ({ bandCutLength, bandCutDepth }, unit) => `Cut a new band along the grain: ${long(bandCutLength, unit)} long, ${long(bandCutDepth, unit)} deep.`
};
export const optionSentence = ({ code, figures }: RescueOption, unit: Unit): string => optionSays[code](figures, unit);

type Assesses = (found: Pick<RescueDraft, 'fault' | 'planned' | 'made'>, unit: Unit) => string;
const against = (name: string): Assesses => ({ planned, made }, unit) => `${name} ${long(made, unit)}, and ${long(planned, unit)} was planned.`;
const differs = (name: string, than: 'more' | 'less'): Assesses => ({ fault, planned, made }, unit) => `${against(name)({ fault, planned, made }, unit)} That is ${fine(fault, unit)} ${than}.`;

/** How much is wrong. */
export const faultSays: Readonly<Record<RescueCode, Assesses>> = {
	'cloth-short': ({ planned, made }, unit) => `The cloth gives ${long(made, unit)} below the band, and ${long(planned, unit)} was planned.`,
	'waist-cut-large': differs('The waist sews to', 'more'),
	'waist-cut-small': differs('The waist sews to', 'less'),
	'allowance-forgotten': differs('Cut there, the waist sews to', 'more'),
	'nick-near-waist': ({ fault }, unit) => `The nick is ${fine(fault, unit)} deep.`,
	'nick-near-hem': ({ fault }, unit) => `The nick is ${fine(fault, unit)} deep.`,
	'panel-short': differs('From edge to edge the panel is', 'less'),
	'waist-stretched': differs('The waist sews to', 'more'),
	'zip-short': ({ planned, made }, unit) => `The zip is ${long(made, unit)}, and the opening needs ${long(planned, unit)}.`,
	'zip-long': ({ planned, made }, unit) => `The zip is ${long(made, unit)}, and ${long(planned, unit)} does it.`,
	'lining-tight': differs('The lining’s waist is', 'less'),
	'lining-long': ({ planned, made }, unit) => made < 0
		? `The lining shows ${fine(-made, unit)} below the skirt. It was to end ${fine(planned, unit)} above.`
		: `The lining ends ${fine(made, unit)} above the skirt’s hem. It was to end ${fine(planned, unit)} above.`,
	'band-short': differs('The band is', 'less'),
	'band-tight': ({ planned, made }, unit) => `The band closes at ${long(planned, unit)}. ${long(made, unit)} would be comfortable.`,
	'band-loose': ({ planned, made }, unit) => `The band closes at ${long(planned, unit)}. ${long(made, unit)} would hold.`,
	'hem-dips': ({ fault }, unit) => `Between its highest place and its lowest the hem dips by ${fine(fault, unit)}.`
};
export const faultSentence = (found: RescueDraft, unit: Unit): string => faultSays[found.code](found, unit);
