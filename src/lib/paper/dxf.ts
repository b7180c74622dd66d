// Pieces as DXF in the layout that cutting rooms exchange (ASTM D6673): a small part of DXF R12, one block a piece, lines
// on numbered layers, millimetres at two decimals. Layers and the words of a block as the project's notes give them; the
// standard's own text was not at hand, so those words are from memory.
import type { Point } from '../drafting/geometry/point.ts';
import { stretches } from '../drafting/geometry/measure.ts';
import { pointOn } from './clip.ts';
import type { CutterPiece } from './cutter.ts';
import type { Path, Shape } from './drawing.ts';

export const DXF_LAYERS = {
	boundary: '1', turnPoint: '2', curvePoint: '3', notch: '4', mirror: '6', grain: '7', internal: '8', cutOut: '11', drill: '13', sew: '14', annotation: '15'
} as const;
type Layer = keyof typeof DXF_LAYERS;

export interface DxfWords {
	/** What the whole is called: `half circle`. */
	readonly style: string;
	/** `2026-11-25` */
	readonly date: string;
}

/** No chord leaves its arc by more, mm: with two decimals' rounding every point stays within 0.05 mm. */
const SAGITTA = 0.02;
/** A code and its value, on lines of their own. */
type Pair = readonly [code: number, value: string | number];

export function writeDxf(pieces: readonly CutterPiece[], { style, date }: DxfWords): string {
	const names = blockNames(pieces.map(({ name }) => name));
	const pairs: Pair[] = [
		[0, 'SECTION'], [2, 'HEADER'], [9, '$ACADVER'], [1, 'AC1009'], [0, 'ENDSEC'],
		[0, 'SECTION'], [2, 'BLOCKS'], ...pieces.flatMap((piece, i) => block(piece, names[i]!)), [0, 'ENDSEC'],
		[0, 'SECTION'], [2, 'ENTITIES'],
		...places(pieces).flatMap((place, i): readonly Pair[] => [[0, 'INSERT'], [8, '1'], [2, names[i]!], ...at(place)]),
		...[`STYLE NAME: ${style}`, `CREATION DATE: ${date}`, 'UNITS: METRIC'].flatMap((text, i) => words(text, [0, -10 * i], 'boundary')),
		[0, 'ENDSEC'], [0, 'EOF']
	];
	// Lines end as this format's own do.
	return pairs.map(([code, value]) => `${code}\r\n${value}\r\n`).join('');
}

/** Side by side, so that nothing lies on anything when the file is looked at. */
function places(pieces: readonly CutterPiece[]): readonly Point[] {
	let x = 0;
	return pieces.map(({ drawing: { box } }): Point => {
		const place: Point = [x - box.from[0], 0];
		x += box.to[0] - box.from[0] + 50;
		return place;
	});
}

const mm = (value: number): string => {
	const text = value.toFixed(2);
	return text === '-0.00' ? '0.00' : text;
};
const at = ([x, y]: Point): readonly Pair[] => [[10, mm(x)], [20, mm(y)]];
const on = (kind: string, layer: Layer): readonly Pair[] => [[0, kind], [8, DXF_LAYERS[layer]]];

function block(piece: CutterPiece, name: string): readonly Pair[] {
	const { drawing: { box, shapes }, title, count, cloth } = piece;
	const foot = (line: number): Point => [box.from[0], box.from[1] - 10 * (line + 1)];
	const about = [`PIECE NAME: ${name}`, `QUANTITY: ${count}`, `MATERIAL: ${cloth}`];
	return [
		[0, 'BLOCK'], [8, '1'], [2, name], [70, 0], [10, mm(0)], [20, mm(0)],
		...shapes.flatMap(entities), ...about.flatMap((text, i) => words(text, foot(i), 'boundary')), ...words(title, foot(about.length), 'annotation'),
		[0, 'ENDBLK'], [8, '1']
	];
}

function entities(shape: Shape): readonly Pair[] {
	if (shape.shape === 'text') return shape.layer === 'grain' ? [] : words(shape.text, shape.at, 'annotation', shape.shift);
	if (shape.shape === 'mark') {
		if (shape.mark !== 'notch' && shape.mark !== 'doubleNotch') return [];
		return [...on('POINT', 'notch'), ...at(shape.at), [50, ((((shape.angle ?? 0) * 180) / Math.PI + 360) % 360).toFixed(2)]];
	}
	if (shape.shape !== 'path' || !shape.line) return [];
	if (shape.layer === 'grain') return line(shape.path, 'grain');
	if (shape.layer === 'mirror') return line(shape.path, 'mirror');
	if (shape.line === 'cut') return ring(shape.path, shape.layer === 'hole' ? 'cutOut' : 'boundary');
	return shape.line === 'stitch' ? ring(shape.path, 'sew') : line(shape.path, 'internal');
}

function line({ start, edges }: Path, layer: Layer): readonly Pair[] {
	const [first] = edges;
	if (!first || edges.length > 1 || first.centre) throw new Error(`a line on layer ${layer} that bends`);
	return [...on('LINE', layer), ...at(start), [11, mm(first.end[0])], [21, mm(first.end[1])]];
}

/** A closed run of corners, then each of them again as a point that says whether the line turns or curves there. */
function ring(path: Path, layer: Layer): readonly Pair[] {
	const corners = cornersOf(path);
	return [
		...on('POLYLINE', layer), [66, 1], [70, 1], [10, mm(0)], [20, mm(0)],
		...corners.flatMap(({ point }) => [...on('VERTEX', layer), ...at(point)]), ...on('SEQEND', layer),
		...corners.flatMap(({ point, turns }) => [...on('POINT', turns ? 'turnPoint' : 'curvePoint'), ...at(point)])
	];
}

interface Corner {
	readonly point: Point;
	readonly turns: boolean;
}
/** Where an outline's edges begin, and along its arcs as many points as keep the chords close. */
export function cornersOf(path: Path): readonly Corner[] {
	return stretches(path).flatMap(({ from, edge }): readonly Corner[] => {
		if (!edge.centre) return [{ point: from, turns: true }];
		const radius = Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1]);
		// A chord over the angle a leaves its arc by r (1 − cos a/2).
		const most = radius > SAGITTA ? 2 * Math.acos(1 - SAGITTA / radius) : Math.PI / 2;
		const steps = Math.max(1, Math.ceil(Math.abs(edge.turn) / most));
		return Array.from({ length: steps }, (_, i) => ({ point: pointOn(from, edge, i / steps), turns: i === 0 }));
	});
}

/** 5 mm high. */
function words(text: string, place: Point, layer: Layer, shift: Point = [0, 0]): readonly Pair[] {
	return [...on('TEXT', layer), ...at([place[0], place[1] - shift[1] * 0.4]), [40, '5.00'], [1, plain(text)]];
}
/** R12 knows no other letters: an accent is left out, whatever else is no ASCII becomes a question mark. */
const plain = (text: string): string => text.replace(/[·–—]/g, '-').replace(/’/g, "'").normalize('NFKD').replace(/\p{M}/gu, '').replace(/[^\x20-\x7e]/g, '?');

/** Capitals, digits and underscores, 20 at most, no two alike. */
export function blockNames(names: readonly string[]): readonly string[] {
	const taken = new Set<string>();
	return names.map((name) => {
		const short = plain(name).toUpperCase().replace(/[^A-Z0-9]+/g, '_').slice(0, 20);
		let unlike = short;
		for (let i = 2; taken.has(unlike); i++) unlike = `${short.slice(0, 19 - String(i).length)}_${i}`;
		taken.add(unlike);
		return unlike;
	});
}
