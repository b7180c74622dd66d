// Measuring: the tape as a loop with its reading, or as a drop between two levels. The body is never drawn.
import type { Point } from '../../drafting/geometry/point.ts';
import type { Measurement } from '../../drafting/body.ts';
import type { Drawing, Path, Shape } from '../drawing.ts';
import { numUnit, type Unit } from './number.ts';
import { tape, WIDE } from './part.ts';
import { area, line, linePath, mark, rect, sheet, stroke, words } from './shape.ts';

/** Part of an ellipse as short lines: a level loop seen from a little above. */
function oval(centre: Point, wide: number, deep: number, from: number, to: number): Path {
	const points = Array.from({ length: 49 }, (_, i): Point => {
		const t = from + ((to - from) * i) / 48;
		return [centre[0] + wide * Math.cos(t), centre[1] + deep * Math.sin(t)];
	});
	return linePath(...(points as [Point, ...Point[]]));
}
const closed = (a: Path, b: Path): Path => ({ start: a.start, edges: [...a.edges, { name: '', end: b.start, centre: null, turn: 0 }, ...b.edges] });

/** A tape lying level in a loop, `wide` across; its front is the lower half. */
function loop(y: number, wide: number): readonly Shape[] {
	const centre: Point = [WIDE / 2, y];
	const low: Point = [WIDE / 2, y - 22];
	const front = closed(oval(centre, wide, 24, Math.PI, 2 * Math.PI), oval(low, wide, 24, 2 * Math.PI, Math.PI));
	const shapes: Shape[] = [
		area(closed(oval(centre, wide, 24, 0, Math.PI), oval(low, wide, 24, Math.PI, 0)), 'wrongSide', 'edge'), area(front, 'paper', 'edge')
	];
	for (let i = 1; i < 40; i++) {
		const t = Math.PI + (Math.PI * i) / 40;
		const foot: Point = [low[0] + wide * Math.cos(t), low[1] + 24 * Math.sin(t)];
		shapes.push(line(foot, [foot[0], foot[1] + (i % 5 === 0 ? 11 : 6)], 'sewn'));
	}
	return shapes;
}
/** Where the tape's end meets it, front and a little to the right. */
function reading(y: number, wide: number): readonly Shape[] {
	const t = Math.PI * 1.62;
	const at: Point = [WIDE / 2 + wide * Math.cos(t), y - 22 + 24 * Math.sin(t)];
	return [line(at, [at[0], at[1] + 24], 'cut', true), mark('notch', [at[0], at[1] - 14], Math.PI / 2), words([at[0] + 14, at[1] - 22], 'read here', 'labelStrong')];
}
const level = (y: number, wide: number): readonly Shape[] => [
	line([0, y], [WIDE / 2 - wide - 6, y], 'fold'), line([WIDE / 2 + wide + 6, y], [WIDE, y], 'fold'),
	words([0, y + 8], 'level', 'label'), words([WIDE, y + 8], 'level', 'label', { anchor: 'end' })
];
/** The learner's own figure, where she has one already. */
const taken = (mm: number | undefined, unit: Unit, at: Point, under?: string): readonly Shape[] =>
	mm === undefined ? [] : [words(at, numUnit(mm, unit), 'figure', { anchor: 'middle', ...(under ? { under } : {}) })];
const spokenReading = (mm: number | undefined, unit: Unit): string => (mm === undefined ? '' : ` The one used reads ${numUnit(mm, unit)}.`);

function measureWaist(mm: number | undefined, unit: Unit): Drawing {
	return sheet(WIDE, 208, `The tape lies level in a loop where the band is to sit, over a narrow tape that has settled there. Read it where its end meets it.${spokenReading(mm, unit)}`, [
		...level(112, 112), ...loop(122, 112), ...reading(122, 112), ...taken(mm, unit, [170, 172]), words([20, 14], 'where the band sits', 'label')
	]);
}

function measureHip(mm: number | undefined, unit: Unit): Drawing {
	return sheet(WIDE, 232, `Two loops: the narrow waist tape above, and the tape level round the fullest part below it. Read it where its end meets it.${spokenReading(mm, unit)}`, [
		stroke(oval([170, 206], 78, 14, 0, 2 * Math.PI), 'edge'), words([254, 200], 'waist', 'label', { under: 'tape' }),
		...level(86, 118), ...loop(96, 118), ...reading(96, 118), ...taken(mm, unit, [170, 146]), words([6, 14], 'the fullest part', 'label')
	]);
}

function measureWaistToHip(depth: number | undefined, unit: Unit): Drawing {
	return sheet(WIDE, 262, `A tape hangs down the side from the waist tape to the hip tape.${spokenReading(depth, unit)}`, [
		stroke(oval([140, 230], 84, 14, 0, 2 * Math.PI), 'edge'), stroke(oval([140, 44], 126, 18, 0, 2 * Math.PI), 'edge'),
		tape(linePath([226, 230], [258, 44]), unit, [], (depth ?? 200) / 189), mark('dot', [226, 230]), mark('dot', [258, 44]),
		words([40, 250], 'waist tape', 'label'), words([140, 38], 'hip tape', 'label', { anchor: 'middle' }), ...taken(depth, unit, [130, 140], 'down the side'),
		...(depth === undefined ? [words([130, 140], 'down the side', 'labelStrong', { anchor: 'middle' })] : [])
	]);
}

function measureLength(length: number | undefined, unit: Unit): Drawing {
	return sheet(WIDE, 296, `A tape hangs from the band's top edge down to the finished hem. The band sits above the waist line.${spokenReading(length, unit)}`, [
		area(linePath([70, 250], [150, 250], [196, 26], [24, 26]), 'rightSide', 'edge'), rect([70, 250], [150, 278], 'rightSide', 'edge'), line([24, 26], [196, 26], 'fold'),
		tape(linePath([242, 278], [242, 26]), unit, [], (length ?? 600) / 252),
		line([150, 278], [246, 278], 'construction'), line([196, 26], [246, 26], 'construction'), line([40, 250], [70, 250], 'stitch'),
		...taken(length, unit, [110, 130], 'finished'), words([110, 258], 'band', 'label', { anchor: 'middle' }),
		words([0, 232], 'waist', 'label', { under: 'line' }), words([110, 36], 'hem', 'label', { anchor: 'middle' }), words([254, 6], 'to the hem', 'label'), words([266, 160], 'from the', 'label', { under: 'top edge' })
	]);
}

const drawn: Readonly<Record<Measurement, (mm: number | undefined, unit: Unit) => Drawing>> = {
	waist: measureWaist, hip: measureHip, waistToHip: measureWaistToHip, length: measureLength
};
/** How a measurement is taken, with the reading in use where there is one. */
export const measuringDrawing = (measurement: Measurement, mm: number | undefined, unit: Unit): Drawing => drawn[measurement](mm, unit);
