// One learner's skirt as her teacher sees it once she has opened it: logged first, and shown to the learner.
import { error } from '@sveltejs/kit';
import type { Flag, ReviewState } from '$lib/class/review.ts';
import type { Route, Unit } from '$lib/class/event.ts';
import { measurementOrder, type Measurement } from '$lib/drafting/body.ts';
import type { Check } from '$lib/drafting/check.ts';
import type { Piece } from '$lib/drafting/piece.ts';
import type { Issue } from '$lib/drafting/result.ts';
import type { Seam } from '$lib/drafting/seam.ts';
import { workingsOf } from '$lib/lesson/flared-working.ts';
import type { JudgedReading } from '$lib/lesson/own-made.ts';
import type { Working } from '$lib/lesson/working.ts';
import { sectorDiagram } from '$lib/paper/diagrams/sector.ts';
import type { Drawing } from '$lib/paper/drawing.ts';
import { skirtDesk, type Desk } from '$lib/server/desk.ts';
import { openSkirt } from '$lib/server/opening.ts';
import { readHeld } from '../../table.server.ts';

/** What her decision rests on; it holds no figure. */
export interface Seen {
	readonly memberId: string;
	/** When it was opened, by the server's clock. */
	readonly at: number;
	readonly digest: string | null;
	readonly decidedAt: number | null;
	readonly review: ReviewState;
	readonly flags: readonly Flag[];
	readonly noTouch: boolean;
}

export interface Measured {
	readonly measurement: Measurement;
	/** In mm, oldest first. */
	readonly readings: readonly { readonly mm: number; readonly typed: string; readonly unit: Unit; readonly route: Route; readonly at: number }[];
	/** The two that are compared, in mm. */
	readonly pair: readonly number[];
	readonly used: number | null;
	readonly apart: boolean;
}

export interface Figures {
	readonly unit: Unit;
	readonly measured: readonly Measured[];
	readonly workings: readonly Working[];
	readonly checks: readonly Check[];
	/** Why there is no draft, where there is none. */
	readonly obstacles: readonly Issue[];
	readonly missing: readonly Measurement[];
	readonly drawing: Drawing | null;
	/** Read on the real thing, in the order of making: the last of each judged, with how often it was read and when last. */
	readonly made: readonly (JudgedReading & { readonly times: number; readonly at: number })[];
	/** What a walk goes by; null where there is no draft. */
	readonly walked: { readonly pieces: readonly Piece[]; readonly seams: readonly Seam[] } | null;
	/** What is otherwise than when it was cleared, in mm. */
	readonly changes: readonly { readonly figure: string; readonly was: number; readonly is: number }[];
	readonly gate: readonly { readonly id: string; readonly says: string; readonly read: boolean }[];
	readonly ask: { readonly second: string; readonly at: number } | null;
	readonly cleared: { readonly at: number; readonly reason?: string } | null;
}

export interface Opened {
	readonly seen: Seen;
	readonly figures: Figures;
}

/** Those in which a changed number shows first. */
const watched = ['waistSeamGirth', 'cutWaistRadius', 'skirtLength', 'cutHemRadius', 'bandCutLength', 'bandCutDepth', 'openingBelowSeam'];

export async function openOne(locals: App.Locals, { class: classId, member }: { class: string; member: string }): Promise<Opened> {
	if (!locals.asker) error(404);
	const { held, lesson } = await readHeld(locals, classId);
	const { events } = await openSkirt(locals.sql, locals.asker, classId, member, 'figures');
	const desk = skirtDesk(lesson, held.rules, events);
	const { state, now, review, flags } = desk;
	const gate = held.rules.gate.map(({ id, says }) => ({ id, says, read: state.ask?.gate.includes(id) ?? false }));
	return {
		seen: { memberId: member, at: Date.now(), digest: now?.digest ?? null, decidedAt: state.decision?.at ?? null, review, flags, noTouch: state.noTouch },
		figures: { ...figuresOf(desk, state.unit ?? held.rules.unit), gate }
	};
}

function figuresOf({ state, own, made, now }: Desk, unit: Unit): Omit<Figures, 'gate'> {
	const draft = own.draft?.ok ? own.draft.value : null;
	const cleared = state.cleared;
	return {
		unit,
		measured: measurementOrder.map((measurement) => {
			const agreement = own.agreed[measurement];
			const readings = (state.readings[measurement] ?? []).map(({ mm, typed, unit, route, at }) => ({ mm, typed, unit, route, at }));
			return {
				measurement, readings, pair: agreement.pair ?? readings.map(({ mm }) => mm).slice(-1), used: agreement.used, apart: agreement.state === 'apart'
			};
		}),
		workings: draft ? workingsOf(draft, unit) : [],
		checks: draft?.checks ?? [],
		obstacles: own.draft && !own.draft.ok ? own.draft.issues : [],
		missing: own.missing,
		drawing: draft && sectorDiagram(draft, { unit, layout: 'whole', emphasis: 'none' }),
		made: (made?.judged ?? []).map((one) => ({ ...one, times: state.made[one.reading]?.length ?? 0, at: state.made[one.reading]?.at(-1)?.at ?? 0 })),
		walked: draft && { pieces: draft.pieces, seams: draft.seams },
		changes: cleared && now ? watched.flatMap((figure) => {
			const [was, is] = [cleared.figures[figure], now.figures[figure]];
			return was === undefined || is === undefined || was === is ? [] : [{ figure, was: was / 10, is: is / 10 }];
		}) : [],
		ask: state.ask && { second: state.ask.second, at: state.ask.at },
		cleared: cleared && { at: cleared.at, ...(cleared.reason !== undefined && { reason: cleared.reason }) }
	};
}
