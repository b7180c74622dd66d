// A ruler on the screen: how fine its ticks are, which numbers it carries, and where the learner's marks read.
import type { Point } from '../drafting/geometry/point.ts';
import { movedAside, pathLength, stationAt } from './path-data.ts';
import type { Path, Ruler, Voice } from './drawing.ts';
import { textWidth, voiceSize } from './voice.ts';

interface Ticking {
	/** mm from one tick to the next, and how many of them make a longer and the longest tick. */
	readonly every: number;
	readonly long: number;
	readonly longest: number;
}
const inch = 25.4;
const CM: readonly Ticking[] = [
	{ every: 1, long: 5, longest: 10 }, { every: 5, long: 2, longest: 4 }, { every: 10, long: 5, longest: 10 },
	{ every: 20, long: 5, longest: 10 }, { every: 50, long: 2, longest: 4 }, { every: 100, long: 5, longest: 10 }
];
const IN: readonly Ticking[] = [
	{ every: inch / 8, long: 4, longest: 8 }, { every: inch / 4, long: 2, longest: 4 }, { every: inch / 2, long: 2, longest: 2 },
	{ every: inch, long: 5, longest: 10 }, { every: 2 * inch, long: 5, longest: 5 }, { every: 5 * inch, long: 2, longest: 2 }
];
const NUMBERS = { cm: [10, 20, 50, 100, 200, 500], in: [1, 2, 5, 10, 20].map((n) => n * inch) };

export interface RulerText {
	readonly at: Point;
	readonly anchor: 'start' | 'middle' | 'end';
	readonly text: string;
	readonly voice: Voice;
}
export interface RulerMarks {
	/** The spine, or a tape's two edges and ends, as runs of points or paths. */
	readonly spine: readonly Path[];
	readonly body: Path | null;
	readonly ticks: readonly (readonly [Point, Point])[];
	readonly marks: readonly (readonly [Point, Point])[];
	readonly texts: readonly RulerText[];
}

/** How wide a tape is, and what is left clear on either side of a number on it. px */
const TAPE = 32;
const CLEAR = 2.5;

/** Lays out a ruler along `along` (px). `scale` is px to the mm; `width` the drawing's width in px. */
export function layRuler(ruler: Ruler, along: Path, scale: number, width: number): RulerMarks {
	const spine = movedAside(along, -(ruler.off ?? 0));
	const length = pathLength(spine);
	const tape = ruler.body === 'tape';
	// A path moved aside keeps its reading, so px along the spine are scaled to px along the path.
	const stretch = length / (pathLength(along) || 1) / (ruler.per ?? 1);
	const kinds = ruler.unit === 'cm' ? CM : IN;
	const ticking = kinds.find((t) => t.every * scale * stretch >= 3.6) ?? kinds[kinds.length - 1]!;
	const needs = ruler.along.edges[0]?.centre || tape ? 26 : 30;
	const numbers = NUMBERS[ruler.unit];
	const numberEvery = numbers.find((n) => n * scale * stretch >= needs && isWhole(n / ticking.every)) ?? numbers[numbers.length - 1]!;
	const ends = ruler.starts + length / scale / stretch;
	const station = (reading: number): { at: Point; out: Point } => {
		const { at, heading } = stationAt(spine, (reading - ruler.starts) * scale * stretch);
		// The right side as it runs, y down.
		return { at, out: [-Math.sin(heading), Math.cos(heading)] };
	};
	const reach = (from: Point, out: Point, by: number): Point => [from[0] + out[0] * by, from[1] + out[1] * by];

	/** What is written at a reading; null at most of them. On a tape a number keeps clear of the ends, which the body's edge closes. */
	const numberAt = (reading: number): string | null => {
		const along = (reading - ruler.starts) * scale * stretch;
		if (ruler.numbers === false || !isWhole(reading / numberEvery)) return null;
		const number = String(Math.round(reading / (ruler.unit === 'cm' ? 10 : inch)));
		const { out: [x, y] } = station(reading);
		const clear = across(number, [y, x], width) / 2 + CLEAR;
		return tape && (along < clear || length - along < clear) ? null : number;
	};
	const ticks: [Point, Point][] = [];
	const first = Math.ceil(ruler.starts / ticking.every - 1e-6);
	for (let i = first; i * ticking.every <= ends + 1e-6; i++) {
		const { at, out } = station(i * ticking.every);
		const size = (i % ticking.longest === 0 ? 11 : i % ticking.long === 0 ? 8 : 5) * (tape ? 0.8 : 1);
		// Across a tape, a number takes its room first and its tick what is left.
		const number = tape ? numberAt(i * ticking.every) : null;
		const left = number === null ? size : Math.min(size, TAPE - across(number, out, width) - 2 * CLEAR);
		if (left >= 1) ticks.push([at, reach(at, out, left)]);
	}
	const marks: [Point, Point][] = [];
	const texts: RulerText[] = [];
	for (const place of spread(ruler.marks.map((m) => m.at * scale * stretch), 17)) {
		const mark = ruler.marks[place.index]!;
		const { at, out } = station(mark.at);
		// The mark reaches back over the gap to the cloth, so that line and figure are joined.
		marks.push([reach(at, out, -(ruler.off ?? 0)), reach(at, out, tape ? TAPE : 15)]);
		const aside = reach(at, out, tape ? TAPE + 6 : 19);
		const along: Point = [out[1], -out[0]];
		texts.push(set([aside[0] + along[0] * place.by, aside[1] + along[1] * place.by], out, mark.text, mark.voice, width));
	}
	if (ruler.numbers !== false) {
		for (let n = Math.ceil(ruler.starts / numberEvery - 1e-6); n * numberEvery <= ends + 1e-6; n++) {
			const { at, out } = station(n * numberEvery);
			const number = numberAt(n * numberEvery);
			if (number === null) continue;
			// Halfway between its tick, or the tape's edge where it has none, and the far edge.
			const far = (TAPE + Math.max(0, Math.min(11 * 0.8, TAPE - across(number, out, width) - 2 * CLEAR))) / 2;
			texts.push(set(reach(at, out, tape ? far : 15), out, number, 'small', width, tape));
		}
	}
	return { spine: [spine], body: tape ? band(spine) : null, ticks, marks, texts };
}

const isWhole = (n: number): boolean => Math.abs(n - Math.round(n)) < 1e-6;

/** A tape's body: its edge, and the same edge moved to the right and run back. */
function band(spine: Path): Path {
	const far = movedAside(spine, -TAPE);
	const stops = [far.start, ...far.edges.map((edge) => edge.end)];
	const back = far.edges.map((edge, i) => ({ ...edge, end: stops[i]!, turn: -edge.turn })).reverse();
	const join = { name: 'end', end: stops[stops.length - 1]!, centre: null, turn: 0 };
	return { start: spine.start, edges: [...spine.edges, join, ...back] };
}

/** How much of a tape's width a number takes where the tape runs so: its figures stand upright whichever way it lies. px */
const across = (number: string, out: Point, width: number): number =>
	Math.abs(out[0]) * textWidth(number, 'small', width) + Math.abs(out[1]) * voiceSize('small', width) * 0.7;

/** Words beside a tick: beside it when the ticks lie level, under or over it when they stand. */
function set(at: Point, out: Point, text: string, voice: Voice, width: number, onBody = false): RulerText {
	const size = voiceSize(voice, width);
	const half = textWidth(text, voice, width) / 2;
	if (onBody) return { at: [at[0], at[1] + size * 0.34], anchor: 'middle', text, voice };
	if (Math.abs(out[0]) > 0.7) return { at: [at[0], at[1] + size * 0.34], anchor: out[0] < 0 ? 'end' : 'start', text, voice };
	const lift = out[1] > 0 ? size * 0.8 : 0;
	return { at: [at[0] + out[0] * half, at[1] + lift], anchor: 'middle', text, voice };
}

/** Moves readings apart so that none is nearer than `gap` to the next; returns how far along each is moved. */
export function spread(at: readonly number[], gap: number): readonly { readonly index: number; readonly by: number }[] {
	const order = at.map((value, index) => ({ value, index, to: value })).sort((a, b) => a.value - b.value);
	// Neighbours push each other apart equally; a few rounds settle any handful of marks.
	for (let round = 0; round < 40; round++) {
		let moved = false;
		for (let i = 1; i < order.length; i++) {
			const lack = gap - (order[i]!.to - order[i - 1]!.to);
			if (lack > 0.01) {
				order[i]!.to += lack / 2;
				order[i - 1]!.to -= lack / 2;
				moved = true;
			}
		}
		if (!moved) break;
	}
	return order.map(({ index, value, to }) => ({ index, by: to - value }));
}
