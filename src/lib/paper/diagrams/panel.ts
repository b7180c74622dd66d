// One panel as it lies on the sheet: the corner at the origin, its middle straight down; half of it when cut on a fold.
import type { Edge, Outline } from '../../drafting/geometry/outline.ts';
import type { Point } from '../../drafting/geometry/point.ts';
import type { Piece } from '../../drafting/piece.ts';
import type { Path } from '../drawing.ts';

export interface PanelView {
	readonly piece: Piece;
	readonly half: boolean;
	/** A closed outline of what is shown, along the cut line. */
	readonly cloth: Outline;
	/** The edges shown, in order, each as a path of its own; the fold is not among them. */
	readonly cut: readonly { readonly name: string; readonly path: Path }[];
	readonly stitch: readonly { readonly name: string; readonly path: Path }[];
	/** Half of the panel's angle at the stitch lines, radians. */
	readonly halfAngle: number;
	readonly box: { readonly from: Point; readonly to: Point };
}

/** From the piece's plane (middle along +x) to the sheet (middle down), moved right by `x`. */
const turned = (p: Point, x: number): Point => [p[1] + x, 0 - p[0]];
const turnedOutline = (outline: Outline, x: number): Outline => ({
	start: turned(outline.start, x),
	edges: outline.edges.map((edge) => ({ ...edge, end: turned(edge.end, x), centre: edge.centre && turned(edge.centre, x) }))
});

interface Stretch {
	readonly from: Point;
	readonly edge: Edge;
}
/** Where a point is on an arc, `part` of the way. */
function onEdge(from: Point, edge: Edge, part: number): Point {
	if (!edge.centre) return [from[0] + (edge.end[0] - from[0]) * part, from[1] + (edge.end[1] - from[1]) * part];
	const [dx, dy] = [from[0] - edge.centre[0], from[1] - edge.centre[1]];
	const [c, s] = [Math.cos(edge.turn * part), Math.sin(edge.turn * part)];
	return [edge.centre[0] + dx * c - dy * s, edge.centre[1] + dx * s + dy * c];
}
/** The parts of the way at which an edge crosses the middle line. */
function crossings(from: Point, edge: Edge): readonly number[] {
	if (!edge.centre) return from[1] * edge.end[1] < 0 ? [from[1] / (from[1] - edge.end[1])] : [];
	const start = Math.atan2(from[1] - edge.centre[1], from[0] - edge.centre[0]);
	const radius = Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1]);
	const rise = Math.asin(Math.max(-1, Math.min(1, -edge.centre[1] / radius)));
	const parts: number[] = [];
	for (const angle of [rise, Math.PI - rise]) {
		for (let k = -2; k <= 2; k++) {
			const part = (angle + k * 2 * Math.PI - start) / edge.turn;
			if (part > 1e-9 && part < 1 - 1e-9) parts.push(part);
		}
	}
	return parts.sort((a, b) => a - b);
}
/** The stretches of an outline on the left of its middle line (y ≥ 0), in order from the hem to the waist. */
function leftHalf(outline: Outline): readonly Stretch[] {
	const stretches: Stretch[] = [];
	let from = outline.start;
	for (const edge of outline.edges) {
		const stops = [0, ...crossings(from, edge), 1];
		for (let i = 1; i < stops.length; i++) {
			const [a, b] = [stops[i - 1]!, stops[i]!];
			if (onEdge(from, edge, (a + b) / 2)[1] <= 1e-6) continue;
			stretches.push({ from: onEdge(from, edge, a), edge: { ...edge, end: onEdge(from, edge, b), turn: edge.turn * (b - a) } });
		}
		from = edge.end;
	}
	// Begin where the run leaves the middle line.
	const first = stretches.findIndex((s, i) => {
		const before = stretches[(i + stretches.length - 1) % stretches.length]!;
		return Math.hypot(before.edge.end[0] - s.from[0], before.edge.end[1] - s.from[1]) > 1e-6;
	});
	return [...stretches.slice(Math.max(0, first)), ...stretches.slice(0, Math.max(0, first))];
}
const whole = (outline: Outline): readonly Stretch[] => {
	let from = outline.start;
	return outline.edges.map((edge) => {
		const stretch = { from, edge };
		from = edge.end;
		return stretch;
	});
};

export function viewPanel(piece: Piece, half: boolean, x = 0): PanelView {
	const shown = (outline: Outline): readonly Stretch[] => (half ? leftHalf(outline) : whole(outline));
	const paths = (stretches: readonly Stretch[]): { name: string; path: Path }[] =>
		stretches.map(({ from, edge }) => ({ name: edge.name, path: turnedOutline({ start: from, edges: [edge] }, x) }));
	const outer = shown(piece.cut);
	const hole = piece.hole ? { cut: shown(piece.hole.cut), stitch: shown(piece.hole.stitch) } : { cut: [], stitch: [] };
	const cutStretches = [...outer, ...hole.cut];
	const start = outer[0]?.from ?? piece.cut.start;
	// From the edge in to a hole and out again: one closed run, so that a writer fills the cloth and not the hole.
	const bridge = hole.cut.slice(0, 1).map(({ from }): Edge => ({ name: '', end: from, centre: null, turn: 0 }));
	const cloth = turnedOutline({ start, edges: [...outer.map((s) => s.edge), ...bridge, ...hole.cut.map((s) => s.edge)] }, x);
	let halfAngle = 0;
	for (const { from, edge } of whole(piece.stitch)) halfAngle = Math.max(halfAngle, edge.centre ? Math.abs(edge.turn) / 2 : 0, Math.atan2(from[1], from[0]));
	return { piece, half, cloth, cut: paths(cutStretches), stitch: paths([...shown(piece.stitch), ...hole.stitch]), halfAngle, box: extent(cloth) };
}

/** The box round an outline. */
export function extent(outline: Outline): { from: Point; to: Point } {
	let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
	let from = outline.start;
	for (const edge of [{ name: '', end: outline.start, centre: null, turn: 0 }, ...outline.edges]) {
		// Arcs are followed closely enough for a picture: 1 part in 2000 of the radius.
		const steps = edge.centre ? Math.max(2, Math.ceil(Math.abs(edge.turn) * 16)) : 1;
		for (let i = 1; i <= steps; i++) {
			const [px, py] = onEdge(from, edge, i / steps);
			[x0, y0, x1, y1] = [Math.min(x0, px), Math.min(y0, py), Math.max(x1, px), Math.max(y1, py)];
		}
		from = edge.end;
	}
	return { from: [x0, y0], to: [x1, y1] };
}

/** The pieces that make the skirt itself, each once however many are cut. */
export const shellPanels = (pieces: readonly Piece[]): readonly Piece[] =>
	pieces.filter((piece) => piece.cloth === 'shell' && /^(panel|front|back)/.test(piece.name));
