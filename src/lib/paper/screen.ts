// A Drawing laid out for a screen so many px wide: SVG marks as data. Widths of lines and words stay in px at any width.
import type { Point } from '../drafting/geometry/point.ts';
import type { Drawing, FillKind, Label, LineKind, Shape, Voice } from './drawing.ts';
import { type Disc, inside, meets, placeLabels, textDiscs, UNDER } from './label-place.ts';
import { pathData, pathLength, place, placePath, type Placing, stationAt } from './path-data.ts';
import { layRuler } from './ruler-ticks.ts';
import { type Run, runs, textWidth, voiceSize } from './voice.ts';

export type ScreenMark =
	| { readonly kind: 'path'; readonly d: string; readonly line: LineKind | null; readonly fill: FillKind; readonly now: boolean; /** In the colour that reads on tape. */ readonly onTape: boolean }
	/** Scale dots: a pattern of `step` px through `x`, `y`, shown inside `d`. */
	| { readonly kind: 'dots'; readonly d: string; readonly step: number; readonly x: number; readonly y: number }
	/** A mark of fixed size, filled with ink or drawn in a thin line. */
	| { readonly kind: 'ink'; readonly d: string; readonly solid: boolean }
	| { readonly kind: 'text'; readonly at: Point; readonly turn: number; readonly anchor: 'start' | 'middle' | 'end'; readonly voice: Voice; readonly size: number; readonly runs: readonly Run[]; readonly onTape: boolean }
	| { readonly kind: 'along'; readonly d: string; readonly start: number; readonly voice: Voice; readonly size: number; readonly runs: readonly Run[] };

export interface Screen {
	readonly width: number;
	readonly height: number;
	readonly scale: number;
	readonly marks: readonly ScreenMark[];
	/** The room each word takes, for the tests. */
	readonly words: readonly { readonly text: string; readonly discs: readonly Disc[] }[];
}

/** What a phone of 390 px leaves for a drawing. */
export const PHONE = 358;

/** Lays a drawing out at `width` px. Tall drawings are held to about the height of a phone's screen and centred. */
export function layOut(drawing: Drawing, width: number = PHONE): Screen {
	const [top, right, bottom, left] = drawing.inkMargin;
	const boxWidth = Math.max(1e-6, drawing.box.to[0] - drawing.box.from[0]);
	const boxHeight = Math.max(1e-6, drawing.box.to[1] - drawing.box.from[1]);
	const tallest = Math.max(1.4 * Math.min(width, 420), 0.9 * width);
	const scale = Math.max(1e-6, Math.min((width - left - right) / boxWidth, (tallest - top - bottom) / boxHeight));
	const height = Math.ceil(boxHeight * scale + top + bottom);
	const by: Placing = {
		scale,
		x: left + (width - left - right - boxWidth * scale) / 2 - drawing.box.from[0] * scale,
		y: top + drawing.box.to[1] * scale
	};
	const sheet = { width, height };
	const marks: ScreenMark[] = [];
	const words: { text: string; discs: readonly Disc[] }[] = [];
	const labels: Label[] = [];
	const taken: Disc[] = [];
	const lines: Disc[] = [];
	const dots = drawing.dots;
	let dotsDrawn = false;
	const drawDots = (): void => {
		if (!dots || dotsDrawn) return;
		dotsDrawn = true;
		for (const outline of [dots.inside, ...(dots.also ?? [])]) {
			const step = dots.every * scale;
			marks.push({ kind: 'dots', d: pathData(placePath(outline, by), true), step, x: by.x % step, y: by.y % step });
		}
	};
	for (const shape of drawing.shapes) {
		if (shape.shape === 'text' || shape.shape === 'textAlong') {
			labels.push(shape);
		} else if (shape.shape === 'path') {
			const path = placePath(shape.path, by);
			// Dots lie over the first cloth and under every line.
			if (shape.line) drawDots();
			marks.push({ kind: 'path', d: pathData(path, shape.closed), line: shape.line, fill: shape.fill, now: shape.now ?? false, onTape: (shape.now || shape.onTape) ?? false });
			if (shape.line) sample(path, shape.now ? 5 : 1.5, lines);
		} else if (shape.shape === 'mark') {
			marks.push(inkMark(shape, by));
		} else {
			const laid = layRuler(shape, placePath(shape.along, by), scale, width);
			if (laid.body) marks.push({ kind: 'path', d: pathData(laid.body, true), line: 'edge', fill: 'tape', now: false, onTape: false });
			else for (const spine of laid.spine) marks.push({ kind: 'path', d: pathData(spine, false), line: 'measure', fill: 'none', now: false, onTape: false });
			marks.push({ kind: 'path', d: strokes(laid.ticks), line: 'measure', fill: 'none', now: false, onTape: shape.body === 'tape' });
			if (laid.marks.length) marks.push({ kind: 'path', d: strokes(laid.marks), line: 'sewn', fill: 'none', now: false, onTape: shape.body === 'tape' });
			for (const text of laid.texts) {
				const size = voiceSize(text.voice, width);
				const length = textWidth(text.text, text.voice, width);
				const foot: Point = [text.at[0] - (text.anchor === 'end' ? length : text.anchor === 'middle' ? length / 2 : 0), text.at[1]];
				const discs = textDiscs(foot, 0, length, size, text.text);
				// Would a number of the scale touch one of the learner's marks? Then the mark alone is written.
				if (text.voice === 'small' && (meets(discs, taken) || !inside(discs, width, height))) continue;
				taken.push(...discs);
				words.push({ text: text.text, discs });
				marks.push({ kind: 'text', at: spot(text.at), turn: 0, anchor: text.anchor, voice: text.voice, size, runs: runs(text.text, text.voice), onTape: shape.body === 'tape' && text.voice === 'small' });
			}
			for (const [from, to] of [...laid.ticks, ...laid.marks]) lines.push({ x: from[0], y: from[1], r: 1 }, { x: to[0], y: to[1], r: 1 });
		}
	}
	drawDots();
	for (const { written, discs } of placeLabels(labels, by, sheet, taken, lines)) {
		const { text, voice } = written.label;
		const size = voiceSize(voice, width);
		words.push({ text, discs });
		if (written.kind === 'along') {
			marks.push({ kind: 'along', d: pathData(written.path, false), start: tenth(written.start), voice, size, runs: runs(text, voice) });
		} else {
			const anchor = (written.label.shape === 'text' && written.label.anchor) || 'start';
			marks.push({ kind: 'text', at: spot(written.at), turn: tenth(written.turn), anchor, voice, size, runs: runs(text, voice), onTape: false });
			const under = written.label.shape === 'text' && written.label.under;
			if (under) {
				const way = (written.turn * Math.PI) / 180;
				const at: Point = [written.at[0] - UNDER * Math.sin(way), written.at[1] + UNDER * Math.cos(way)];
				marks.push({ kind: 'text', at: spot(at), turn: tenth(written.turn), anchor, voice: 'label', size: voiceSize('label', width), runs: runs(under, 'label'), onTape: false });
			}
		}
	}
	return { width, height, scale, marks, words };
}

/** Discs every few px along a path, so that words can keep off it. */
function sample(path: Parameters<typeof pathLength>[0], r: number, into: Disc[]): void {
	const length = pathLength(path);
	const steps = Math.min(400, Math.ceil(length / 7));
	for (let i = 0; i <= steps; i++) {
		const { at } = stationAt(path, (length * i) / Math.max(1, steps));
		into.push({ x: at[0], y: at[1], r });
	}
}

/** Rounded here and nowhere before: a tenth of a pixel is finer than any screen shows. */
const tenth = (n: number): number => Math.round(n * 10) / 10;
const spot = (p: Point): Point => [tenth(p[0]), tenth(p[1])];
const fixed = (n: number): string => String(tenth(n));
const strokes = (list: readonly (readonly [Point, Point])[]): string =>
	list.map(([a, b]) => `M${fixed(a[0])} ${fixed(a[1])}L${fixed(b[0])} ${fixed(b[1])}`).join('');

/** Each mark pointing along +x from its place, px, y down. A notch's base lies on its place and its tip points. */
const INK = {
	notch: { points: [[[0, -7], [10, 0], [0, 7]]], solid: true },
	doubleNotch: { points: [[[0, -13], [9, -7], [0, -1]], [[0, 1], [9, 7], [0, 13]]], solid: true },
	dot: { points: [], solid: true },
	arrow: { points: [[[-8, -5], [0, 0], [-8, 5]]], solid: false },
	bar: { points: [[[0, -6], [0, 6]]], solid: false },
	cross: { points: [[[-5, -5], [5, 5]], [[-5, 5], [5, -5]]], solid: false },
	pin: { points: [[[0, 0], [-24, 0]]], solid: false }
} as const satisfies Record<Extract<Shape, { shape: 'mark' }>['mark'], { points: readonly (readonly (readonly [number, number])[])[]; solid: boolean }>;

function inkMark(shape: Extract<Shape, { shape: 'mark' }>, by: Placing): ScreenMark {
	const [px, py] = place(shape.at, by);
	const [x, y] = [px + (shape.shift?.[0] ?? 0), py + (shape.shift?.[1] ?? 0)];
	const turn = -(shape.angle ?? 0);
	const [c, s] = [Math.cos(turn), Math.sin(turn)];
	const { points, solid } = INK[shape.mark];
	const at = (p: readonly [number, number]): string => `${fixed(x + p[0] * c - p[1] * s)} ${fixed(y + p[0] * s + p[1] * c)}`;
	const circle = (cx: number, cy: number, r: number): string =>
		`M${fixed(cx - r)} ${fixed(cy)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
	let d = points.map((run) => `M${run.map(at).join('L')}${solid ? 'Z' : ''}`).join('');
	if (shape.mark === 'dot') d += circle(x, y, 3.2);
	// A pin has a head: a ring at the end away from its point.
	if (shape.mark === 'pin') d += circle(x - 28 * c, y - 28 * s, 4);
	return { kind: 'ink', d, solid };
}
