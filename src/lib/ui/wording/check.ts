// A sentence for everything the draft tells back, and for each way out. Lengths in the reader's unit.
import type { Check, CheckCode, WayOut } from '../../drafting/check.ts';
import type { Unit } from '../../drafting/length.ts';
import { choiceNames, shareWords } from './figure.ts';
import { fine, long } from './long.ts';
import { zipWords } from './zip.ts';

type Says = (check: Check, unit: Unit) => string;
const good = ({ severity }: Check): boolean => severity === 'good';
const percent = (fraction: number | undefined): string => `${((fraction ?? 0) * 100).toFixed(1)} %`;

/** The measurement that a check is about: "waist to hip". */
const measured = ({ about }: Check): string => choiceNames[`body.${about}`] ?? 'measurement';
const slip = (check: Check, unit: Unit, asks: string): string => {
	const { given, beside } = check.figures;
	return `The ${measured(check)} is ${long(given, unit)}${beside === undefined ? ', which is rare' : `, beside ${long(beside, unit)}`}. ${asks}`;
};

/** The two places between which `place` lies, from centre front to the wearer's left. */
const between = (place = 0): string => ['centre front and the left side', 'the left side and centre back', 'centre back and the right side', 'the right side and centre front'][Math.floor((((place % 1) + 1) % 1) * 4)]!;

export const checkSays: Readonly<Record<CheckCode, Says>> = {
	'seam-walk': (check, unit) => good(check)
		? `All ${check.figures.seams} seams walk: the edges that are sewn together match.`
		: `The seam “${check.about}” doesn’t walk: ${long(check.figures.lengthA, unit)} against ${long(check.figures.lengthB, unit)}. Don’t cut; tell your teacher.`,
	'band-to-waist': (check, unit) => good(check)
		? `The band meets the waist seam: ${long(check.figures.waistSeam, unit)}, and ${long(check.figures.underlap, unit)} of underlap.`
		: `The band and the waist seam differ: ${long(check.figures.band, unit)} against ${long(check.figures.waistSeam, unit)}. Don’t cut; tell your teacher.`,
	'hip-fit': (check, unit) => good(check)
		? `Room at the hip: ${long(check.figures.girthAtHip, unit)} of skirt, and ${long(check.figures.needed, unit)} is needed.`
		: `The skirt needs more room at the hip. It has ${long(check.figures.girthAtHip, unit)} there, and ${long(check.figures.needed, unit)} is needed.`,
	'hip-missing': () => 'Without a hip reading nobody can say how long the opening must be. Measure the hip before you buy the zip.',
	'hip-depth-missing': () => 'There is no waist-to-hip reading, so the room at the hip wasn’t looked at. Measure it, and it will be.',
	'hip-below-hem': ({ figures }, unit) => `The skirt ends above the hip: it is ${long(figures.skirtLength, unit)} long below the band, and the hip lies ${long(figures.hipDepth, unit)} down.`,
	'waist-over-hip': ({ figures }, unit) => `The waist is larger than the hip: ${long(figures.waist, unit)} and ${long(figures.hip, unit)}. That may well be so. Are they the right way round?`,
	'pulls-on': (check, unit) => good(check)
		? `It is pulled on: ${long(check.figures.waistSeam, unit)} round, and ${long(check.figures.needed, unit)} has to pass through.`
		: `It can’t be pulled on: the waist seam is ${long(check.figures.waistSeam, unit)}, and ${long(check.figures.needed, unit)} has to pass through.`,
	'casing-depth': (check, unit) => good(check)
		? `The casing takes the elastic: ${fine(check.figures.depth, unit)} deep for ${fine(check.figures.elastic, unit)}.`
		: `The casing is too shallow for its elastic: ${fine(check.figures.depth, unit)} deep, and ${fine(check.figures.least, unit)} is needed.`,
	'elastic-fullness': ({ severity, figures }, unit) => `Cut the elastic ${long(figures.elastic, unit)} long, and try it on before you close it. It gathers ${(figures.fullness ?? 0).toFixed(1)} times its length of cloth.${severity === 'caution' ? ' That is bulky; less ease at the hip is calmer.' : ''}`,
	opening: ({ figures }, unit) => `The opening needs ${long(figures.opening, unit)} below the waist seam. A ${zipWords(figures.zipLength, unit)} zip does it, and ends ${long(figures.zipEnd, unit)} below.`,
	'no-opening-needed': ({ figures }, unit) => `The waist seam is ${long(figures.waistSeam, unit)}, and ${long(figures.needed, unit)} has to pass through. It would go on without an opening; the shortest zip, ${zipWords(figures.zipLength, unit)}, keeps the making the same.`,
	'no-shop-zip': ({ figures }, unit) => `The opening needs ${long(figures.opening, unit)}, and shop zips end at ${zipWords(figures.longest, unit)}. Cut ${long(figures.zipLength, unit)} from a roll.`,
	'opening-longer-than-skirt': ({ figures }, unit) => `The opening needs ${long(figures.opening, unit)}, but the skirt is only ${long(figures.skirtLength, unit)} long below the band.`,
	'zip-longer-than-skirt': ({ figures }, unit) => `The next zip in the shops is ${zipWords(figures.zipLength, unit)}. It would end ${long(figures.reach, unit)} below the waist seam, and the skirt is ${long(figures.skirtLength, unit)} long there.${(figures.opening ?? 0) > 0 ? ` Shorten it to the opening, ${long(figures.opening, unit)}.` : ''}`,
	'zip-allowance': (check, unit) => {
		const { seamAllowance, least, most } = check.figures;
		if (good(check)) return `The seam allowance is wide enough for the zip: ${fine(seamAllowance, unit)}.`;
		return check.severity === 'note'
			? `A seam allowance of ${fine(seamAllowance, unit)} is more than a zip needs. Trim it to ${fine(most, unit)} at the zip.`
			: `A zip needs ${fine(least, unit)} of seam allowance; this is ${fine(seamAllowance, unit)}. Widen it, or sew tape along the edge first.`;
	},
	'zip-at-centre-back': () => 'One panel has one seam, and it lies at centre back. The zip goes there.',
	'hem-surplus': (check, unit) => {
		const { surplus, fraction } = check.figures;
		if (check.about === 'bound' || check.about === 'faced') return `A ${check.about} hem turns nothing up, so there is nothing to ease in.`;
		const what = `The ${check.about ?? 'turned'} hem has ${long(surplus, unit)} to ease in all round, ${percent(fraction)}`;
		if (good(check)) return `${what}. It lies flat.`;
		return check.severity === 'note' ? `${what}. Ease it with a gathering thread and steam.` : `${what}. That puckers: choose a narrow, rolled, bound or faced hem.`;
	},
	'waist-clip': ({ figures }, unit) => `The cut waist edge is ${fine(figures.waistClip, unit)} shorter than its stitch line. Staystitch, then clip ${fine(figures.depth, unit)} deep, about every ${fine(figures.spacing, unit)}: ${figures.clips} clips.`,
	'rounding-cost': ({ figures }, unit) => {
		const moves = figures.waistMoves ?? 0;
		return `A radius that is out by 1 mm makes the waist ${(figures.perMillimetre ?? 0).toFixed(1)} mm longer or shorter. Marked to the millimetre, ${Math.abs(moves) < 0.05 ? 'it stays as it is' : `it comes out ${Math.abs(moves).toFixed(1)} mm ${moves > 0 ? 'longer' : 'shorter'}`}.${unit === 'in' ? ' An eighth of an inch is about 3 mm.' : ''}`;
	},
	stride: (check, unit) => good(check)
		? `Room to step out: ${long(check.figures.hemSweep, unit)} round the hem.`
		: `A long step needs about ${long(check.figures.needed, unit)} round a hem this long; it has ${long(check.figures.hemSweep, unit)}. Add flare, or leave a slit.`,
	'lining-shorter': (check, unit) => good(check)
		? `The lining is ${fine(check.figures.shorterBy, unit)} shorter than the skirt.`
		: `The lining is only ${fine(check.figures.shorterBy, unit)} shorter, so it may show when the cloth drops. ${fine(check.figures.least, unit)} or more stays hidden.`,
	'lining-fit': (check, unit) => {
		const where = check.about === 'hip' ? 'at the hip' : 'round its hem';
		return good(check)
			? `The lining has ${long(check.figures.girth, unit)} ${where}, and ${long(check.figures.needed, unit)} is needed.`
			: `The lining needs more room ${where}: it has ${long(check.figures.girth, unit)}, and ${long(check.figures.needed, unit)} is needed.`;
	},
	'lining-opening': (check, unit) => good(check)
		? `Leave the lining open for ${long(check.figures.opens, unit)} below the waist seam, clear of the zip.`
		: `The lining must open ${long(check.figures.opening, unit)} below the waist seam, but it is only ${long(check.figures.length, unit)} long there.`,
	'lengths-between': (check, unit) => {
		const { shortest, longest, extreme, place } = check.figures;
		if (good(check)) return `Between the places that you measured the length stays within ${long(shortest, unit)} and ${long(longest, unit)}.`;
		return `Between ${between(place)} the length comes to ${long(extreme, unit)}, beyond the ${(extreme ?? 0) > (longest ?? 0) ? 'longest' : 'shortest'} that you measured. A curve through all of them runs so; measure there too.`;
	},
	'length-plausible': (check, unit) => good(check)
		? `A finished length of ${long(check.figures.length, unit)}.`
		: `A finished length of ${long(check.figures.length, unit)} is rare. Is it measured from the band’s top edge to the hem?`,
	'hem-to-floor': ({ severity, figures }, unit) => {
		const clear = figures.clear ?? 0;
		if (severity === 'good') return `The hem clears the floor by ${long(clear, unit)}.`;
		return `${clear < 0 ? `The skirt is ${long(-clear, unit)} longer than it is to the floor` : `The hem is only ${fine(clear, unit)} off the floor`}. Someone can tread on it and fall; ${fine(figures.least, unit)} clear is safer.`;
	},
	'woven-cloth': () => 'This draft is for woven cloth that doesn’t stretch.',
	'stretch-cloth': () => 'The cloth stretches, and this draft is for woven cloth that doesn’t: opening, ease and seams may all come out differently. Make a trial of the waist first, or take a woven cloth.',
	'readings-apart': (check, unit) => `Two readings of the ${measured(check)} differ: ${long(check.figures.earlier, unit)} and ${long(check.figures.newest, unit)}. Measure it again before you cut.`,
	'slip-by-ten': (check, unit) => slip(check, unit, `Did you mean ${long(check.figures.guess, unit)}?`),
	'units-mixed': (check, unit) => slip(check, unit, `Was it read in the other unit: ${long(check.figures.guess, 'cm')} (${long(check.figures.guess, 'in')})?`),
	'digits-swapped': (check, unit) => slip(check, unit, `Did two figures change places: ${long(check.figures.guess, unit)}?`)
};
export const checkSentence = (check: Check, unit: Unit): string => checkSays[check.code](check, unit);

/** What to change, as something to press or to do: "Take two thirds of a circle". */
export function wayOutSentence({ path, value }: WayOut, unit: Unit): string {
	if (path === 'skirt.share') return `Take ${shareWords(Number(value))}`;
	if (path === 'skirt.panels') return `Cut it in ${value} panels`;
	if (path === 'skirt.clothKind') return 'Take a woven cloth';
	if (path === 'skirt.closure') return 'Close it with a zip';
	if (path === 'skirt.band.kind') return 'Take a straight band';
	if (path === 'skirt.lining.share') return `Cut the lining as ${shareWords(Number(value))}`;
	if (path === 'skirt.hemFinish') return value === 'narrow' ? 'Turn a narrow hem' : 'Turn the hem once';
	if (path === 'skirt.riseAt') return 'Make the difference at the hem';
	if (path === 'skirt.hemCorner') return 'Mitre the hem corners';
	const name = choiceNames[path] ?? path;
	const small = path === 'skirt.hem' || path.startsWith('skirt.allowances') || path.endsWith('Ease') || path.startsWith('skirt.waistDip') || path.endsWith('shorterBy');
	const length = small ? fine(Number(value), unit) : long(Number(value), unit);
	return `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${length}`;
}
