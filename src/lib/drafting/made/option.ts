// One way back from an accident, with its new numbers, and the skirt drafted again where the way changes it.
import type { WayOut } from '../check.ts';
import { draftSkirt, type Draft } from '../draft.ts';
import { measurements } from '../measurement.ts';
import { finishedLengths } from '../skirt.ts';
import { takeWayOut } from '../take.ts';
import type { HemTrim } from './as-made.ts';

export const optionCodes = [
	'sew-nearer-edge', 'ease-in', 'sew-nearer-and-ease', 'take-in', 'more-ease', 'sew-deeper', 'less-ease', 'let-out',
	'hold-in-allowance', 'lower-and-ease-in', 'lower-and-take-in', 'lower-and-more-ease',
	'hold-in-hem', 'narrower-hem', 'shorter', 'shorter-nick-in-hem', 'deeper-band', 'faced-hem', 'draw-up', 'stay-tape',
	'buy-longer', 'longer-slit', 'less-hip-ease', 'shorten-zip', 'longer-opening', 'trim-at-top',
	'sew-lining-deeper', 'let-out-lining', 'trim-lining', 'deeper-lining-hem', 'tuck-lining', 'leave-lining',
	'piece-on', 'smaller-underlap', 'narrower-ends', 'band-less-ease', 'move-fastening-out', 'move-fastening-in', 'let-out-zip-seam',
	'lower-with-new-band', 'shorter-band', 'level-lowest', 'level-chosen', 'level-narrow', 'less-flare', 'more-panels',
	'cut-panel-again', 'cut-lining-again', 'cut-band-again'
] as const;
export type OptionCode = (typeof optionCodes)[number];

export interface RescueOption {
	readonly code: OptionCode;
	/** The new numbers, mm (shares as fractions, counts as they are). */
	readonly figures: Readonly<Record<string, number>>;
	/** What it changes in the plan, and the plan drafted again with it; none and null where the plan stays. */
	readonly changes: readonly WayOut[];
	readonly draft: Draft | null;
	/** Where it differs round the hem. */
	readonly trims?: readonly HemTrim[];
}

/** The least allowance that can be sewn and still holds, mm (common practice, no source). */
export const leastAllowance = 6;
/** The same beside a zip, whose tape must lie on it, mm (common practice, no source). */
export const leastByZip = 10;
/** The least underlap that takes a hook and bar, mm (common practice, no source). */
export const leastUnderlap = 20;
/** More ease than this and the band slides down, mm (common practice, no source). */
export const mostEase = 40;
/** A nick ends so far from the stitch line that the stitches still hold, mm (common practice, no source). */
export const clearOfNick = 3;
/** Two lengths that differ by no more are the same. mm */
export const slack = 1e-6;

/** A way that leaves the plan as it is. */
export const same = (code: OptionCode, figures: RescueOption['figures'], trims?: readonly HemTrim[]): RescueOption =>
	({ code, figures, changes: [], draft: null, ...(trims && { trims }) });

const [shortest, longest] = measurements.length.limits;
const [leastWaist, mostWaist] = measurements.waist.limits;

/**
 * A way that changes the plan, drafted again. Empty where the skirt couldn't be cut, where one of its checks would say
 * stop, or where a choice would leave the range that is taken.
 */
export function changed(draft: Draft, code: OptionCode, figures: RescueOption['figures'], wanted: readonly WayOut[], trims?: readonly HemTrim[]): readonly RescueOption[] {
	let { body, skirt } = draft;
	const changes = wanted.flatMap((way) => (way.path === 'skirt.length' ? [way, ...alongWith(draft, way)] : [way]));
	for (const way of changes) {
		if (way.path === 'body.waist') body = { ...body, waist: Number(way.value) };
		else skirt = takeWayOut(skirt, way);
	}
	const lengths = [skirt.length, ...Object.values(finishedLengths(skirt))];
	if (!(skirt.share >= 0.1 && skirt.share <= 2 && lengths.every((length) => length >= shortest && length <= longest) && skirt.hem >= 0)) return [];
	if (!(body.waist >= leastWaist && body.waist <= mostWaist)) return [];
	const again = draftSkirt(body, skirt);
	if (!again.ok || again.value.checks.some(({ severity }) => severity === 'stop')) return [];
	return [{ code, figures, changes, draft: again.value, ...(trims && { trims }) }];
}

/** Where lengths differ, each that is named changes by as much as the finished length does. */
const alongWith = ({ skirt }: Draft, { value }: WayOut): readonly WayOut[] =>
	Object.entries(skirt.lengths ?? {}).map(([place, length]) => ({ path: `skirt.lengths.${place}`, value: length + Number(value) - skirt.length }));

/** The way that is always left: the piece cut again to the plan. */
export const panelAgain = ({ figures }: Draft): RescueOption => same('cut-panel-again', {
	cutWaistRadius: figures.cutWaistRadius, waistRadius: figures.waistRadius, cutHemRadius: figures.cutHemRadius, waistSeam: figures.waistSeamGirth
});

/**
 * How far each of `edges` straight edges, parallel to itself, is moved for the arc of radius `radius` to change by
 * `by` altogether: a strip of w takes arcsin(w/r) of the angle (circle geometry). Undefined where no strip does.
 */
export function stripFor(by: number, edges: number, radius: number): number | undefined {
	const angle = by / edges / radius;
	return angle <= Math.PI / 2 ? radius * Math.sin(angle) : undefined;
}
