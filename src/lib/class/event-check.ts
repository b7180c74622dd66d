// The boundary where a device's events come in: unchecked → checked, all issues at once.
import * as v from 'valibot';
import { measurementOrder } from '../drafting/body.ts';
import { ok, refuse, type Issue, type Result } from '../drafting/result.ts';
import type { EventBody, NewEvent } from './event.ts';
import { madeCounts, madeNames } from './made.ts';

export const mostEvents = 200;

/** The highest counter that a device may say. */
export const highestFromDevice = Number.MAX_SAFE_INTEGER - 1_000_000;
/** What the server says for someone (forms, answers) is counted on from the highest seen: a device never shuts it out. */
export const highestFromServer = Number.MAX_SAFE_INTEGER;

const unit = v.picklist(['cm', 'in']);
const id = v.pipe(v.string(), v.regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/));
/** A step's or an item's id, as lessons and gates have them. */
const slug = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9-]{0,63}$/));
const words = (most: number) => v.pipe(v.string(), v.maxLength(most), v.check((text) => text.isWellFormed() && !text.includes('\0'), 'clean text'));
const length = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));

const made = v.pipe(
	v.strictObject({
		kind: v.literal('made'), reading: v.picklist(madeNames), unit,
		// A whole bolt of cloth is the longest; an edge may touch the floor.
		lengths: v.pipe(v.array(v.strictObject({ mm: length(0, 100_000), typed: words(64) })), v.maxLength(16))
	}),
	v.check(({ reading, lengths }) => lengths.length >= madeCounts[reading][0] && lengths.length <= madeCounts[reading][1], 'as many lengths as the reading has'),
	v.check(({ reading, lengths }) => reading === 'floor' || lengths.every(({ mm }) => mm >= 1), 'a length')
);

/** What a device may say. Clearing and returning are not among it: a teacher does that (server/review.ts). Lengths in mm. */
const body = v.variant('kind', [
	v.strictObject({
		kind: v.literal('reading'), measurement: v.picklist(measurementOrder),
		// Plausibility is asked about, never forced: these limits only keep nonsense out.
		mm: length(1, 10_000), typed: words(64), unit, route: v.picklist(['self', 'home', 'partner', 'teacher', 'skirt-that-fits'])
	}),
	v.strictObject({
		kind: v.literal('choice'),
		choices: v.strictObject({
			share: v.optional(length(0.1, 2)), panels: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12))),
			waistEase: v.optional(length(-200, 500)), hipEase: v.optional(length(-200, 500)), bandDepth: v.optional(length(5, 300)),
			hem: v.optional(length(1, 200)), hemFinish: v.optional(v.picklist(['turned', 'narrow'])), zipAt: v.optional(v.picklist(['centreBack', 'leftSide']))
		})
	}),
	made,
	v.strictObject({ kind: v.picklist(['tick', 'untick']), step: slug }),
	v.strictObject({ kind: v.literal('preference'), unit: v.optional(unit), noTouch: v.optional(v.boolean()) }),
	v.strictObject({ kind: v.literal('ask'), gate: v.pipe(v.array(slug), v.maxLength(20)), second: words(40) }),
	v.strictObject({ kind: v.literal('unask') }),
	v.strictObject({ kind: v.picklist(['help', 'helped']), step: v.optional(slug) })
]) satisfies v.GenericSchema<unknown, EventBody>;

const eventsUpTo = (highest: number): v.GenericSchema<unknown, NewEvent[]> => v.pipe(
	v.array(v.strictObject({
		id,
		device: v.pipe(v.string(), v.regex(/^[\w-]{1,64}$/)),
		counter: v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(highest)),
		body
	})),
	v.minLength(1), v.maxLength(mostEvents)
);
const fromDevice = eventsUpTo(highestFromDevice);
const fromServer = eventsUpTo(highestFromServer);

const issueOf = (found: v.BaseIssue<unknown>): Issue => ({
	code: `event-${found.type.replaceAll('_', '-')}`, path: v.getDotPath(found) ?? '', expected: found.expected, received: found.received
});

export function checkEvents(value: unknown, highest: typeof highestFromDevice | typeof highestFromServer = highestFromDevice): Result<readonly NewEvent[]> {
	const checked = v.safeParse(highest === highestFromServer ? fromServer : fromDevice, value);
	// A device that talks nonsense 200 times needn't hear about each.
	return checked.success ? ok(checked.output) : refuse(...checked.issues.slice(0, 20).map(issueOf));
}
