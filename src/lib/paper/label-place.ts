// Finds places for a drawing's words, so that none lies on another or leaves the frame.
// A word's room is a chain of discs along its middle: one test serves straight, tilted and curved words alike.
import type { Point } from '../drafting/geometry/point.ts';
import { movedAside, pathLength, stationAt, type Placing, place, placePath } from './path-data.ts';
import type { Label, Path } from './drawing.ts';
import { textWidth, voiceSize } from './voice.ts';

export interface Disc {
	readonly x: number;
	readonly y: number;
	readonly r: number;
}

/** A word where it will be written, px, y down. `turn` in degrees, clockwise. */
export type Written =
	| { readonly kind: 'text'; readonly label: Label; readonly at: Point; readonly turn: number }
	| { readonly kind: 'along'; readonly label: Label; readonly path: Path; readonly start: number };
export interface Placed {
	readonly written: Written;
	readonly discs: readonly Disc[];
}

/** Half the height of a line of letters, in ems: figures hang nothing under their foot. */
const tallness = (text: string): number => (/^[\d ./]+$/.test(text) ? 0.38 : 0.46);

/** Discs along the middle of a text whose foot begins at `at` and runs towards `turn` (radians, y down). */
export function textDiscs(at: Point, turn: number, length: number, size: number, text = 'g'): Disc[] {
	const r = size * tallness(text);
	const steps = Math.max(1, Math.ceil((length - 2 * r) / (r * 1.1)));
	const [c, s] = [Math.cos(turn), Math.sin(turn)];
	const discs: Disc[] = [];
	for (let i = 0; i <= steps; i++) {
		const along = length <= 2 * r ? length / 2 : r + ((length - 2 * r) * i) / steps;
		// The middle of the letters is a third of their size above their foot.
		discs.push({ x: at[0] + along * c + size * 0.34 * s, y: at[1] + along * s - size * 0.34 * c, r });
	}
	return discs;
}

/** Where a label would be written, and the room it takes; null where the path is too short for the words. */
export function put(label: Label, by: Placing, width: number): Placed | null {
	const size = voiceSize(label.voice, width);
	const length = textWidth(label.text, label.voice, width);
	if (label.shape === 'text') {
		const [x, y] = place(label.at, by);
		const at: Point = [x + (label.shift?.[0] ?? 0), y + (label.shift?.[1] ?? 0)];
		const turn = -(label.angle ?? 0);
		const back = label.anchor === 'middle' ? length / 2 : label.anchor === 'end' ? length : 0;
		const foot: Point = [at[0] - back * Math.cos(turn), at[1] - back * Math.sin(turn)];
		return {
			written: { kind: 'text', label, at, turn: (turn * 180) / Math.PI },
			discs: [...textDiscs(foot, turn, length, size, label.text), ...secondLine(label, at, turn, width)]
		};
	}
	const path = movedAside(placePath(label.path, by), label.off ?? 0);
	const whole = pathLength(path);
	if (whole < length + 4) return null;
	const start = (whole - length) / 2;
	const r = size * tallness(label.text);
	const steps = Math.max(1, Math.ceil((length - 2 * r) / (r * 1.1)));
	const discs: Disc[] = [];
	for (let i = 0; i <= steps; i++) {
		const { at, heading } = stationAt(path, start + r + ((length - 2 * r) * i) / steps);
		discs.push({ x: at[0] + size * 0.34 * Math.sin(heading), y: at[1] - size * 0.34 * Math.cos(heading), r });
	}
	return { written: { kind: 'along', label, path, start }, discs };
}

/** From the foot of one line to the foot of the next, px. */
export const UNDER = 20;

function secondLine(label: Extract<Label, { shape: 'text' }>, at: Point, turn: number, width: number): readonly Disc[] {
	if (!label.under) return [];
	const length = textWidth(label.under, 'label', width);
	const back = label.anchor === 'middle' ? length / 2 : label.anchor === 'end' ? length : 0;
	const [c, s] = [Math.cos(turn), Math.sin(turn)];
	return textDiscs([at[0] - UNDER * s - back * c, at[1] + UNDER * c - back * s], turn, length, voiceSize('label', width), label.under);
}

export const meets = (a: readonly Disc[], b: readonly Disc[]): boolean =>
	a.some((p) => b.some((q) => (p.x - q.x) ** 2 + (p.y - q.y) ** 2 < (p.r + q.r) ** 2));

/** Squares of 24 px: more than any disc of a word and any disc of a line are together, so neighbours are enough. */
const SQUARE = 24;
/** The lines sorted into squares, because a word has many places to try and a drawing some thousand discs of line. */
function squares(discs: readonly Disc[]): (word: readonly Disc[]) => boolean {
	const held = new Map<number, Disc[]>();
	const key = (x: number, y: number): number => x * 100_000 + y;
	for (const disc of discs) {
		const k = key(Math.floor(disc.x / SQUARE), Math.floor(disc.y / SQUARE));
		const there = held.get(k);
		if (there) there.push(disc);
		else held.set(k, [disc]);
	}
	return (word) => word.some((p) => {
		const [x, y] = [Math.floor(p.x / SQUARE), Math.floor(p.y / SQUARE)];
		for (let i = -1; i <= 1; i++) for (let j = -1; j <= 1; j++) {
			if (held.get(key(x + i, y + j))?.some((q) => (p.x - q.x) ** 2 + (p.y - q.y) ** 2 < (p.r + q.r) ** 2)) return true;
		}
		return false;
	});
}

/** Does it lie wholly on the sheet? Letters fill less than their disc, hence the two px. */
export const inside = (discs: readonly Disc[], width: number, height: number): boolean =>
	discs.every((d) => d.x - d.r > -2 && d.x + d.r < width + 2 && d.y - d.r > -2 && d.y + d.r < height + 2);

/**
 * Places labels by rank, each at the first of its places that is free. One of rank 0 is written at its first place when
 * none is free; others are left out. `taken` is room already used; `lines` are discs of radius 0 along the lines.
 */
export function placeLabels(
	labels: readonly Label[],
	by: Placing,
	sheet: { readonly width: number; readonly height: number },
	taken: readonly Disc[],
	lines: readonly Disc[]
): readonly Placed[] {
	const used: Disc[] = [...taken];
	const out: Placed[] = [];
	const onLine = squares(lines);
	const order = labels.map((label, i) => ({ label, i })).sort((a, b) => (a.label.rank ?? 0) - (b.label.rank ?? 0) || a.i - b.i);
	for (const { label } of order) {
		const places = [label, ...(label.or ?? [])];
		const free = (candidate: Label): Placed | null => {
			const placed = put(candidate, by, sheet.width);
			if (!placed || !inside(placed.discs, sheet.width, sheet.height) || meets(placed.discs, used)) return null;
			return candidate.clear && onLine(placed.discs) ? null : placed;
		};
		let placed: Placed | null = null;
		for (const candidate of places) if ((placed = free(candidate))) break;
		// Must it be written whatever comes?
		placed ??= (label.rank ?? 0) === 0 ? put(label, by, sheet.width) : null;
		if (!placed) continue;
		out.push(placed);
		// A little air, so that two words beside each other don't read as one.
		used.push(...placed.discs.map((disc) => ({ ...disc, r: disc.r + 3 })));
	}
	return out;
}
