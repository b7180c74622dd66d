// The stretch of tape on which two or three readings are shown: from where to where, its ticks, where each pin stands.
import type { Unit } from '../class/event.ts';

export interface Tick {
	/** Along the stretch, 0 to 100. */
	readonly at: number;
	/** 0 the shortest (1 mm, ⅛ in), 1 (5 mm, ¼ in), 2 (½ in), 3 a whole cm or inch. */
	readonly rank: 0 | 1 | 2 | 3;
	/** What is written under it, if anything: `28`, `1/8`. */
	readonly text?: string;
}

export interface Stretch {
	readonly ticks: readonly Tick[];
	/** For each reading, 0 to 100. */
	readonly pins: readonly number[];
	/** The outermost pins. */
	readonly from: number;
	readonly to: number;
	readonly middle: number;
}

const eighth = 25.4 / 8;
const rankOf = (step: number, unit: Unit): Tick['rank'] =>
	unit === 'cm' ? (step % 10 === 0 ? 3 : step % 5 === 0 ? 1 : 0) : step % 8 === 0 ? 3 : step % 4 === 0 ? 2 : step % 2 === 0 ? 1 : 0;

function textOf(step: number, unit: Unit, room: boolean): string | undefined {
	if (unit === 'cm') return step % 10 === 0 ? String(step / 10) : room && step % 5 === 0 ? (step / 10).toFixed(1) : undefined;
	const rest = step % 8;
	if (rest === 0) return String(step / 8);
	if (!room) return undefined;
	const by = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
	return `${rest / by}/${8 / by}`;
}

/** `readings` in mm, one or more. The stretch is three spreads long, and never under 3 cm or 1⅜ in. */
export function stretchOf(readings: readonly number[], unit: Unit): Stretch {
	const [least, most] = [Math.min(...readings), Math.max(...readings)];
	const span = Math.max(3 * (most - least), unit === 'cm' ? 30 : 11 * eighth);
	const start = Math.max(0, (least + most) / 2 - span / 2);
	const place = (mm: number): number => ((mm - start) / span) * 100;

	// Over a long stretch the small ticks would run together: only the larger ones are drawn.
	const unitStep = unit === 'cm' ? 1 : eighth;
	const steps = span / unitStep;
	const leastRank = steps > 160 ? 3 : steps > 80 ? 1 : 0;
	const room = steps <= (unit === 'cm' ? 40 : 14);
	const ticks: Tick[] = [];
	for (let step = Math.ceil(start / unitStep); step * unitStep <= start + span; step++) {
		const rank = rankOf(step, unit);
		const text = textOf(step, unit, room);
		if (rank >= leastRank) ticks.push({ at: place(step * unitStep), rank, ...(text !== undefined && { text }) });
	}
	return { ticks: thin(ticks), pins: readings.map(place), from: place(least), to: place(most), middle: place((least + most) / 2) };
}

/** At most a dozen numbers fit on a phone: of more, every second, fourth … keeps its own. */
function thin(ticks: readonly Tick[]): readonly Tick[] {
	const written = ticks.filter(({ text }) => text !== undefined).length;
	const every = Math.max(1, 2 ** Math.ceil(Math.log2(written / 13)));
	let seen = 0;
	return ticks.map((tick) => (tick.text === undefined || seen++ % every === 0 ? tick : { at: tick.at, rank: tick.rank }));
}
