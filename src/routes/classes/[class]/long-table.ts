// The long table's order and places: who sits where along the lesson's stages, who waits longest.
import type { StageList, Where } from '$lib/class/where.ts';
import type { Row } from './table.server.ts';

export type End = 'waiting' | 'flag' | 'returned' | 'here' | 'done' | 'notStarted';

export interface Seat {
	readonly row: Row;
	/** Along the thread, 0 to 1. */
	readonly along: number;
	readonly end: End;
	readonly step: string | null;
	readonly stage: string | null;
	/** Since when she waits for an answer; null if she doesn't. */
	readonly waits: number | null;
}

export interface Group {
	readonly id: 'asked' | 'again' | 'working' | 'finished' | 'not-started';
	readonly title: string;
	readonly seats: readonly Seat[];
}

/** A stage's name at the head of the table: "Mark, check and cut" is "Mark". */
export const shortTitle = (title: string): string => title.split(/,| and /)[0] ?? title;

/** A name on a button: the first word of a long one, and no more than a button holds. */
export function shortName(name: string): string {
	const letters = Array.from(name.length > 14 ? (name.split(/[\s-]/).find((word) => word !== '') ?? name) : name);
	return letters.length > 14 ? `${letters.slice(0, 13).join('')}…` : letters.join('');
}

/** How wide each stage is, in shares: wide enough for the longest word of its name, and for its steps' ticks. */
export const widthsOf = (stages: StageList): readonly number[] =>
	stages.map(({ title, steps }) => Math.max(6, 0.6 * steps.length, ...shortTitle(title).split(/\s|(?<=-)/).map(({ length }) => length)));

/** How far along: at the beginning of the step that is next. */
export function alongOf(stages: StageList, { next, finished }: Where): number {
	if (finished) return 1;
	const at = stages.findIndex(({ id }) => id === next?.stage);
	const stage = stages[at];
	if (!stage) return 0;
	const widths = widthsOf(stages);
	const sum = (some: readonly number[]): number => some.reduce((total, width) => total + width, 0);
	const within = Math.max(0, stage.steps.findIndex(({ id }) => id === next?.step)) / stage.steps.length;
	return (sum(widths.slice(0, at)) + within * widths[at]!) / sum(widths);
}

/** Where each stage begins along the thread, and where the last one ends: 0 to 1. */
export function boundsOf(stages: StageList): readonly number[] {
	const widths = widthsOf(stages);
	const whole = widths.reduce((total, width) => total + width, 0);
	let at = 0;
	return [0, ...widths.map((width) => (at += width) / whole)];
}

/** A hand that is up and a request to be cleared both wait; the older one counts. */
const waitsOf = ({ review, since, help }: Row): number | null => {
	const times = [...(review === 'asked' && since !== null ? [since] : []), ...(help ? [help.at] : [])];
	return times.length > 0 ? Math.min(...times) : null;
};

function seatOf(stages: StageList, row: Row): Seat {
	const { where, review } = row;
	const waits = waitsOf(row);
	const begun = where.stages.some(({ ticked }) => ticked > 0);
	const stage = stages.find(({ id }) => id === where.next?.stage);
	const end: End = waits !== null ? 'waiting' : review === 'void' || review === 'differs' ? 'flag' : review === 'returned' ? 'returned'
		: where.finished ? 'done' : begun ? 'here' : 'notStarted';
	return {
		row, along: alongOf(stages, where), end, waits, stage: stage?.title ?? null,
		step: stage?.steps.find(({ id }) => id === where.next?.step)?.title ?? null
	};
}

export function groupsOf(stages: StageList, rows: readonly Row[]): readonly Group[] {
	const seats = rows.map((row) => seatOf(stages, row));
	const waiting = seats.filter(({ waits }) => waits !== null).sort((a, b) => a.waits! - b.waits! || (a.row.memberId < b.row.memberId ? -1 : 1));
	const among = (...ends: readonly End[]) => seats.filter(({ end }) => ends.includes(end));
	const groups: readonly Group[] = [
		{ id: 'asked', title: 'Asked for you', seats: waiting },
		{ id: 'again', title: 'Look again', seats: among('flag') },
		{ id: 'working', title: 'Working', seats: among('returned', 'here') },
		{ id: 'finished', title: 'Finished', seats: among('done') },
		{ id: 'not-started', title: 'Not started', seats: among('notStarted') }
	];
	return groups.filter(({ seats }) => seats.length > 0);
}
