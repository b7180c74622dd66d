// Is a layout what it says? Asked of every layout before anyone sees it, by geometry of its own: nothing here comes from the
// rooms that found it. Folded cloth is opened out, so that each piece is looked at as it will be cut.
import { pointAlong, stretches } from '../drafting/geometry/measure.ts';
import type { Outline } from '../drafting/geometry/outline.ts';
import type { Point } from '../drafting/geometry/point.ts';
import type { ClothPiece, Placement, Question } from './cloth.ts';
import { outlineOf } from './shape.ts';

export interface Wrong {
	readonly what: 'copies' | 'turn' | 'outside' | 'overlap' | 'gap' | 'unusable' | 'fold' | 'layers';
	readonly pieces: readonly string[];
	/** mm, or how many. */
	readonly by: number;
}

/** mm by which drawings may lie into each other: less than a pencil line's tenth. */
const tolerance = 0.02;
/** mm between a true arc and its chords here. */
const sagitta = 0.004;

interface Part {
	readonly name: string;
	readonly owner: number;
	readonly points: readonly Point[];
	readonly box: Box;
}
interface Box {
	readonly x0: number;
	readonly y0: number;
	readonly x1: number;
	readonly y1: number;
}

export function wrongsOf({ cloth, pieces, gap }: Question, length: number, placements: readonly Placement[]): readonly Wrong[] {
	const wrongs: Wrong[] = [...copyWrongs(pieces, placements)];
	const parts = placements.flatMap((placement, owner) => {
		const piece = pieces.find(({ name, count }) => name === placement.name && placement.copy <= count);
		if (!piece) return [];
		if (!piece.turns.some((turn) => Math.abs(turn - placement.turn) < 1e-9)) wrongs.push({ what: 'turn', pieces: [piece.name], by: placement.turn });
		return partsOf(piece, placement, owner);
	});
	if (cloth.folded) wrongs.push(...foldWrongs(placements, parts, cloth.width));
	else if (placements.some(({ on }) => on !== undefined)) wrongs.push({ what: 'fold', pieces: [], by: 0 });
	// Opened out, the fold lies along y = 0 and the cloth on both sides of it.
	const low = cloth.folded ? -cloth.width / 2 : 0;
	const whole = Math.min(length, cloth.length ?? Infinity);
	for (const { name, box } of parts) {
		const by = Math.max(-box.x0, low - box.y0, box.x1 - whole, box.y1 - (low + cloth.width));
		if (!(by <= tolerance)) wrongs.push({ what: 'outside', pieces: [name], by });
	}
	cloth.unusable.forEach((place) => {
		const [x, y] = [place.x, place.y + low];
		const spoilt = partOf('unusable', -1, [[x, y], [x + place.length, y], [x + place.length, y + place.width], [x, y + place.width]]);
		for (const part of parts) {
			const by = overlap(part, spoilt);
			if (by > tolerance) wrongs.push({ what: 'unusable', pieces: [part.name], by });
		}
	});
	parts.forEach((part, i) => {
		for (const other of parts.slice(0, i)) {
			if (other.owner === part.owner) continue;
			const by = overlap(part, other);
			if (by > tolerance) wrongs.push({ what: 'overlap', pieces: [part.name, other.name], by });
			else if (gap > 0 && apart(part, other, gap) < gap - tolerance) wrongs.push({ what: 'gap', pieces: [part.name, other.name], by: apart(part, other, gap) });
		}
	});
	return wrongs;
}

/** Every copy once, and no other. */
function copyWrongs(pieces: readonly ClothPiece[], placements: readonly Placement[]): readonly Wrong[] {
	return [...new Set(pieces.map(({ name }) => name))].flatMap((name): readonly Wrong[] => {
		const wanted = pieces.find((piece) => piece.name === name)!.count;
		const copies = new Set(placements.filter((placement) => placement.name === name).map(({ copy }) => copy));
		const laid = placements.filter((placement) => placement.name === name).length;
		return copies.size === wanted && laid === wanted && [...copies].every((copy) => copy >= 1 && copy <= wanted) ? [] : [{ what: 'copies', pieces: [name], by: laid }];
	});
}

/** On the fold a piece mirrors itself; through both layers each upper copy has its lower one, but for a last one to spare. */
function foldWrongs(placements: readonly Placement[], parts: readonly Part[], width: number): readonly Wrong[] {
	const wrongs: Wrong[] = [];
	placements.forEach(({ name, on, x, y, turn }, owner) => {
		const own = parts.filter((part) => part.owner === owner);
		if (on === undefined) wrongs.push({ what: 'layers', pieces: [name], by: 0 });
		else if (on === 'fold') {
			for (const { points } of own) {
				const off = Math.max(...points.map(([px, py]) => Math.min(...own.map((part) => toEdge(part.points, px, -py)))));
				if (!(off <= tolerance)) wrongs.push({ what: 'fold', pieces: [name], by: off });
			}
		} else {
			const partners = placements.filter((other) => other.on !== on && other.on !== 'fold' && other.x === x && other.y === y && other.turn === turn);
			if (partners.length !== 1 && !(on === 'upper' && partners.length === 0)) wrongs.push({ what: 'layers', pieces: [name], by: partners.length });
			// An upper copy stays in the upper layer, whatever lies below it.
			const beyond = Math.max(...own.map(({ box }) => (on === 'upper' ? Math.max(-box.y0, box.y1 - width / 2) : Math.max(box.y1, -box.y0 - width / 2))));
			if (!(beyond <= tolerance)) wrongs.push({ what: 'layers', pieces: [name], by: beyond });
		}
	});
	return wrongs;
}

function partsOf({ name, shape, half }: ClothPiece, { turn, x, y, on }: Placement, owner: number): readonly Part[] {
	const drawn = chords(outlineOf(shape, half));
	const [c, s] = [Math.cos(turn), Math.sin(turn)];
	const laid = (points: readonly Point[], flip: boolean): Part =>
		partOf(name, owner, points.map(([px, py]): Point => [px * c - py * s + x, (px * s + py * c + y) * (flip ? -1 : 1)]));
	if (!half) return [laid(drawn, on === 'lower')];
	return [laid(drawn, false), laid(drawn.map(([px, py]): Point => [px, -py]), false)];
}

function partOf(name: string, owner: number, points: readonly Point[]): Part {
	const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
	return { name, owner, points, box: { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) } };
}

/** The outline's points: its corners, and on each arc points so close that no chord strays from it. */
function chords(outline: Outline): readonly Point[] {
	return stretches(outline).flatMap((stretch) => {
		const { from, edge } = stretch;
		if (!edge.centre) return [edge.end];
		const radius = Math.hypot(from[0] - edge.centre[0], from[1] - edge.centre[1]);
		const parts = Math.max(2, Math.ceil(Math.abs(edge.turn) / Math.sqrt((8 * sagitta) / radius)));
		return Array.from({ length: parts }, (_, i) => pointAlong(stretch, (i + 1) / parts));
	});
}

const boxesMeet = (a: Box, b: Box, within: number): boolean => a.x0 < b.x1 + within && b.x0 < a.x1 + within && a.y0 < b.y1 + within && b.y0 < a.y1 + within;

/** How deep the deepest place that two parts share lies in either of them, mm, looked for along both edges. */
function overlap(a: Part, b: Part): number {
	if (!boxesMeet(a.box, b.box, -tolerance)) return 0;
	return Math.max(deepest(a, b), deepest(b, a), common(a, b));
}

/** Along a's edges, cut where b's cross them: a stretch between two cuts lies in b whole or not at all. */
function deepest(a: Part, b: Part): number {
	let worst = 0;
	const others = edgesNear(b.points, a.box);
	edgesNear(a.points, b.box).forEach(([from, to]) => {
		const cuts = [0, ...cutsAlong(from, to, others), 1].sort((p, q) => p - q);
		const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
		for (let k = 1; k < cuts.length; k++) {
			const [start, end] = [cuts[k - 1]!, cuts[k]!];
			const at = (part: number): Point => [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
			const middle = at((start + end) / 2);
			if (!holds(b.points, middle[0], middle[1])) continue;
			// Where b's edge is crossed it is cut, so this stretch lies in b from end to end and its middle shows that it does; the
			// looks between are for where it lies deepest. Depth changes no faster than one goes.
			const looks = Math.min(200, Math.max(2, Math.ceil(((end - start) * length) / 5)));
			for (let look = 0; look <= looks; look++) {
				const [x, y] = at(start + ((end - start) * look) / looks);
				worst = Math.max(worst, toEdge(b.points, x, y));
			}
		}
	});
	return worst;
}

type Stroke = readonly [from: Point, to: Point];

function edgesNear(points: readonly Point[], { x0, y0, x1, y1 }: Box): readonly Stroke[] {
	return points.map((to, i): Stroke => [points[(i + points.length - 1) % points.length]!, to]).filter(([[px, py], [qx, qy]]) =>
		(px > x0 || qx > x0) && (px < x1 || qx < x1) && (py > y0 || qy > y0) && (py < y1 || qy < y1));
}

function cutsAlong(from: Point, to: Point, others: readonly Stroke[]): readonly number[] {
	const cuts: number[] = [];
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const [x0, y0, x1, y1] = [Math.min(from[0], to[0]), Math.min(from[1], to[1]), Math.max(from[0], to[0]), Math.max(from[1], to[1])];
	for (const [[px, py], [qx, qy]] of others) {
		if ((px < x0 && qx < x0) || (px > x1 && qx > x1) || (py < y0 && qy < y0) || (py > y1 && qy > y1)) continue;
		const turn = dx * (qy - py) - dy * (qx - px);
		if (Math.abs(turn) < 1e-12) continue;
		const along = ((px - from[0]) * (qy - py) - (py - from[1]) * (qx - px)) / turn;
		const other = ((px - from[0]) * dy - (py - from[1]) * dx) / turn;
		if (along > 0 && along < 1 && other >= -1e-9 && other <= 1 + 1e-9) cuts.push(along);
	}
	return cuts;
}

/** Two parts that lie exactly on each other share all but their edges: a point well inside one is asked of both. */
function common(a: Part, b: Part): number {
	const [y0, y1] = [Math.max(a.box.y0, b.box.y0), Math.min(a.box.y1, b.box.y1)];
	let worst = 0;
	for (const part of [0.21, 0.5, 0.83]) {
		const y = y0 + (y1 - y0) * part;
		const crossed = [...levels(a.points, y), ...levels(b.points, y)].sort((p, q) => p - q);
		for (let i = 1; i < crossed.length; i++) {
			const x = (crossed[i - 1]! + crossed[i]!) / 2;
			if (holds(a.points, x, y) && holds(b.points, x, y)) worst = Math.max(worst, Math.min(toEdge(a.points, x, y), toEdge(b.points, x, y)));
		}
	}
	return worst;
}

function levels(points: readonly Point[], y: number): readonly number[] {
	return points.flatMap(([qx, qy], i) => {
		const [px, py] = points[(i + points.length - 1) % points.length]!;
		return py < y === qy < y ? [] : [px + ((qx - px) * (y - py)) / (qy - py)];
	});
}

/** Inside, by how often a ray to the right leaves. */
function holds(points: readonly Point[], x: number, y: number): boolean {
	let odd = false;
	for (let i = 0, before = points.length - 1; i < points.length; before = i++) {
		const [px, py] = points[before]!;
		const [qx, qy] = points[i]!;
		if (py < y !== qy < y && px + ((qx - px) * (y - py)) / (qy - py) > x) odd = !odd;
	}
	return odd;
}

function toEdge(points: readonly Point[], x: number, y: number): number {
	let least = Infinity;
	for (let i = 0, before = points.length - 1; i < points.length; before = i++) {
		const [ax, ay] = points[before]!;
		const [bx, by] = points[i]!;
		const [ex, ey] = [bx - ax, by - ay];
		const length = ex * ex + ey * ey;
		const part = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ex + (y - ay) * ey) / length));
		least = Math.min(least, (ax + ex * part - x) ** 2 + (ay + ey * part - y) ** 2);
	}
	return Math.sqrt(least);
}

/** How far two parts that don't overlap are from each other, or `enough` where it is surely more. */
function apart(a: Part, b: Part, enough: number): number {
	if (!boxesMeet(a.box, b.box, enough)) return enough;
	const near = (points: readonly Point[], { x0, y0, x1, y1 }: Box): readonly Point[] =>
		points.filter(([x, y]) => x > x0 - enough && x < x1 + enough && y > y0 - enough && y < y1 + enough);
	const least = (from: Part, to: Part): number => near(from.points, to.box).reduce((so, [x, y]) => Math.min(so, toEdge(to.points, x, y)), enough);
	return Math.min(least(a, b), least(b, a));
}
