// Where two pieces can't lie: the offsets from one to the other at which they would overlap.
import clipper from 'clipper-lib';
import { convolve } from './convolution.ts';
import { contourArea, tidied, type Contour, type Polygon } from './polygon.ts';

/** The part of the plane that the runs wind round a positive number of times. Outsides counterclockwise, holes clockwise. */
export function positiveUnion(runs: readonly Contour[]): Polygon {
	const engine = new clipper.Clipper();
	const paths = runs.map((run) => Array.from({ length: run.length / 2 }, (_, i) => ({ X: run[2 * i]!, Y: run[2 * i + 1]! })));
	engine.AddPaths(paths, clipper.PolyType.ptSubject, true);
	const solution: { X: number; Y: number }[][] = [];
	const { pftPositive } = clipper.PolyFillType;
	if (!engine.Execute(clipper.ClipType.ctUnion, solution, pftPositive, pftPositive)) throw new Error(`no union of ${runs.length} runs`);
	return solution
		.map((path) => tidied(Float64Array.from(path.flatMap(({ X, Y }) => [X, Y]))))
		// What is thinner than a hundredth of a millimetre over a metre is rounding, not cloth.
		.filter((contour) => contour.length >= 6 && Math.abs(contourArea(contour)) > 1e4);
}

export const sum = (a: Polygon, b: Polygon): Polygon => positiveUnion(convolve(a, b));

const negated = (polygon: Polygon): Polygon => polygon.map((contour) => contour.map((micrometres) => -micrometres));

/** The offsets (b's place less a's) at which b overlaps a: a ⊕ −b. */
export const noFit = (a: Polygon, b: Polygon): Polygon => sum(a, negated(b));
