// What a learner's log amounts to. A fold that doesn't depend on order, repeats or any device's clock.
import type { Measurement } from '../drafting/body.ts';
import type { MadeName } from './made.ts';
import type { Choices, EventBody, LoggedEvent, Unit } from './event.ts';

type Body<K extends EventBody['kind']> = Extract<EventBody, { kind: K }>;
/** What was said, without its kind, and who said it when (the server's clock). */
type Said<K extends EventBody['kind']> = Omit<Body<K>, 'kind'> & { readonly by: string; readonly at: number };

export type SaidReading = Omit<Body<'reading'>, 'kind' | 'measurement'> & { readonly id: string; readonly by: string; readonly at: number };
/** A reading on the real thing. */
export type SaidMade = Omit<Body<'made'>, 'kind' | 'reading'> & { readonly id: string; readonly by: string; readonly at: number };
export type Decision =
	| ({ readonly kind: 'ask' } & Said<'ask'>)
	| ({ readonly kind: 'return' } & Said<'return'>)
	| ({ readonly kind: 'clear' } & Said<'clear'>);

export interface SkirtState {
	/** Every reading ever taken, oldest first; a new one never replaces an old one. */
	readonly readings: { readonly [M in Measurement]?: readonly SaidReading[] };
	/** Every reading on the real thing, oldest first; the last of each counts. */
	readonly made: { readonly [M in MadeName]?: readonly SaidMade[] };
	readonly choices: Choices;
	/** Steps that are ticked, with when the server heard of it; in the order they were ticked. */
	readonly ticked: Readonly<Record<string, number>>;
	/** The step ticked last, if any is. */
	readonly lastTicked: string | null;
	/** Those of the ticked steps that were ticked while no clearance stood, and haven't been cleared since. (Most need none.) */
	readonly tickedUncleared: readonly string[];
	readonly unit: Unit | null;
	readonly noTouch: boolean;
	/** What came last of asking, returning and clearing; an asking that she has taken back leaves what was before it. */
	readonly decision: Decision | null;
	/** The last of each, for the history. */
	readonly ask: Said<'ask'> | null;
	readonly returned: Said<'return'> | null;
	readonly cleared: Said<'clear'> | null;
	/** When she first said another reading or choice than she was cleared on; null while she hasn't. */
	readonly changedSince: number | null;
	/** The same since she asked, while that stands: the gate was read aloud on other numbers. */
	readonly changedSinceAsked: boolean;
	/** The hand that is up, and since when. */
	readonly help: { readonly step?: string; readonly at: number } | null;
	/** The highest counter seen: a device's next one goes above it. */
	readonly counter: number;
}

/** The higher counter came later, then the device's id, then (one device never repeats a counter) the event's own id. */
function later(a: LoggedEvent, b: LoggedEvent): number {
	if (a.counter !== b.counter) return a.counter - b.counter;
	if (a.device !== b.device) return a.device < b.device ? -1 : 1;
	return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

const same = (a: Choices, b: Choices): boolean =>
	[...new Set([...Object.keys(a), ...Object.keys(b)] as (keyof Choices)[])].every((key) => a[key] === b[key]);

export function foldSkirt(events: readonly LoggedEvent[]): SkirtState {
	const once = [...new Map(events.map((event) => [event.id, event])).values()].sort(later);
	const readings: Partial<Record<Measurement, SaidReading[]>> = {};
	const made: Partial<Record<MadeName, SaidMade[]>> = {};
	const ticked = new Map<string, number>();
	const uncleared = new Set<string>();
	const state: { -readonly [K in keyof SkirtState]: SkirtState[K] } = {
		readings, made, choices: {}, ticked: {}, lastTicked: null, tickedUncleared: [], unit: null, noTouch: false,
		decision: null, ask: null, returned: null, cleared: null, changedSince: null, changedSinceAsked: false, help: null, counter: 0
	};
	/** What stood before she asked. */
	let beforeAsk: Decision | null = null;
	for (const { id, by, at, counter, body } of once) {
		state.counter = counter;
		switch (body.kind) {
			case 'reading': {
				const { kind: _, measurement, ...said } = body;
				(readings[measurement] ??= []).push({ ...said, id, by, at });
				if (state.cleared) state.changedSince ??= at;
				state.changedSinceAsked = state.decision?.kind === 'ask';
				break;
			}
			case 'made': {
				const { kind: _, reading, ...said } = body;
				(made[reading] ??= []).push({ ...said, id, by, at });
				break;
			}
			case 'choice':
				if (!same(state.choices, body.choices)) {
					if (state.cleared) state.changedSince ??= at;
					state.changedSinceAsked = state.decision?.kind === 'ask';
				}
				state.choices = body.choices;
				break;
			case 'tick':
				// What is cut is cut: said again later, it stays as cleared or as uncleared as it was.
				if (!ticked.has(body.step) && (state.decision?.kind !== 'clear' || state.changedSince !== null)) uncleared.add(body.step);
				// Ticked again later: it moves to the end.
				ticked.delete(body.step);
				ticked.set(body.step, at);
				break;
			case 'untick':
				ticked.delete(body.step);
				uncleared.delete(body.step);
				break;
			case 'preference':
				state.unit = body.unit ?? state.unit;
				state.noTouch = body.noTouch ?? state.noTouch;
				break;
			case 'ask':
				if (state.decision?.kind !== 'ask') beforeAsk = state.decision;
				state.changedSinceAsked = false;
				state.decision = { ...body, by, at };
				state.ask = { gate: body.gate, second: body.second, by, at };
				break;
			case 'unask':
				if (state.decision?.kind !== 'ask') break;
				state.decision = beforeAsk;
				state.changedSinceAsked = false;
				break;
			case 'return':
				state.changedSinceAsked = false;
				state.decision = { ...body, by, at };
				state.returned = { action: body.action, by, at };
				break;
			case 'clear': {
				const { kind: _, ...said } = body;
				state.decision = { ...body, by, at };
				state.cleared = { ...said, by, at };
				state.changedSince = null;
				state.changedSinceAsked = false;
				// Her teacher had these before her, flagged. One that came in later, whatever its counter, she hadn't.
				for (const step of uncleared) if (ticked.get(step)! <= at) uncleared.delete(step);
				break;
			}
			case 'help':
				state.help = body.step === undefined ? { at } : { step: body.step, at };
				break;
			case 'helped':
				state.help = null;
				break;
		}
	}
	state.ticked = Object.fromEntries(ticked);
	state.tickedUncleared = [...uncleared];
	state.lastTicked = [...ticked.keys()].at(-1) ?? null;
	return state;
}
