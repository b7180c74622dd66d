// The convolution of two polygons' boundaries: closed runs whose winding number is positive exactly inside the Minkowski sum
// (Guibas, Ramshaw and Stolfi, "A kinetic framework for computational geometry", 1983, from memory). Each edge of one polygon
// is carried to each corner of the other whose turn takes in its direction: forwards where that corner turns left, backwards
// where it turns right.
import type { Contour, Polygon } from './polygon.ts';

interface Step {
	readonly x: number;
	readonly y: number;
	readonly toX: number;
	readonly toY: number;
	readonly from: number;
	readonly to: number;
}

export function convolve(a: Polygon, b: Polygon): readonly Contour[] {
	return a.flatMap((one) => b.flatMap((other) => convolveContours(one, other)));
}

function convolveContours(a: Contour, b: Contour): readonly Contour[] {
	const na = a.length / 2;
	const nb = b.length / 2;
	const steps: Step[] = [];
	const add = (fromA: number, fromB: number, toA: number, toB: number): void => {
		steps.push({
			x: a[2 * fromA]! + b[2 * fromB]!, y: a[2 * fromA + 1]! + b[2 * fromB + 1]!,
			toX: a[2 * toA]! + b[2 * toB]!, toY: a[2 * toA + 1]! + b[2 * toB + 1]!,
			from: fromA * nb + fromB, to: toA * nb + toB
		});
	};
	const [edgesA, edgesB] = [edgesOf(a), edgesOf(b)];
	for (let i = 0; i < na; i++) {
		for (let j = 0; j < nb; j++) {
			// Edge i of a, from corner i to the next, at corner j of b: where two directions are the same, a's counts as later.
			const atB = turnTakesIn(edgesB, j, edgesA.x[i]!, edgesA.y[i]!, true);
			const next = (i + 1) % na;
			if (atB > 0) add(i, j, next, j);
			else if (atB < 0) add(next, j, i, j);
			const atA = turnTakesIn(edgesA, i, edgesB.x[j]!, edgesB.y[j]!, false);
			const after = (j + 1) % nb;
			if (atA > 0) add(i, j, i, after);
			else if (atA < 0) add(i, after, i, j);
		}
	}
	return chained(steps);
}

interface Directions {
	readonly x: Float64Array;
	readonly y: Float64Array;
}
function edgesOf(contour: Contour): Directions {
	const n = contour.length / 2;
	const [x, y] = [new Float64Array(n), new Float64Array(n)];
	for (let i = 0; i < n; i++) {
		const j = (i + 1) % n;
		x[i] = contour[2 * j]! - contour[2 * i]!;
		y[i] = contour[2 * j + 1]! - contour[2 * i + 1]!;
	}
	return { x, y };
}

/** 1 when the left turn at this corner takes in the direction (x, y), −1 when a right turn does, 0 when neither. */
function turnTakesIn(edges: Directions, corner: number, x: number, y: number, later: boolean): number {
	const n = edges.x.length;
	const before = corner === 0 ? n - 1 : corner - 1;
	const [px, py, qx, qy] = [edges.x[before]!, edges.y[before]!, edges.x[corner]!, edges.y[corner]!];
	const turn = px * qy - py * qx;
	if (turn > 0) return between(px, py, qx, qy, x, y, later) ? 1 : 0;
	if (turn < 0) return between(qx, qy, px, py, x, y, later) ? -1 : 0;
	return 0;
}

/** Does (x, y) lie in the left turn from p to q, of less than half a turn? `later`: its start counts and its end doesn't. */
function between(px: number, py: number, qx: number, qy: number, x: number, y: number, later: boolean): boolean {
	const fromP = px * y - py * x;
	const toQ = x * qy - y * qx;
	if (fromP > 0 && toQ > 0) return true;
	const [edge, dx, dy] = later ? [fromP, px, py] : [toQ, qx, qy];
	return edge === 0 && dx * x + dy * y > 0;
}

/** As many steps come to each pair of corners as leave it, so they join into closed runs. How they do is all the same. */
function chained(steps: readonly Step[]): readonly Contour[] {
	const leaving = new Map<number, Step[]>();
	for (const step of steps) {
		const held = leaving.get(step.from);
		if (held) held.push(step);
		else leaving.set(step.from, [step]);
	}
	const runs: Contour[] = [];
	for (const [start] of leaving) {
		for (let first = leaving.get(start)!.pop(); first; first = leaving.get(start)!.pop()) {
			const points: number[] = [];
			let step: Step | undefined = first;
			while (step) {
				points.push(step.x, step.y);
				if (step.to === start) break;
				step = leaving.get(step.to)?.pop();
			}
			if (!step) throw new Error(`a run of ${points.length / 2} steps doesn't close`);
			runs.push(Float64Array.from(points));
		}
	}
	return runs;
}
