// Runs: neighbouring edges that share one name and are measured, marked and sewn as one. A single edge is a run of one.
import { edgeLength, pointAlong, stretches, tangent, type Stretch } from './measure.ts';
import type { Outline } from './outline.ts';
import type { Point } from './point.ts';

/** The edges with this name in the order they run, also when the outline starts amid them. Not being neighbours is our own bug. */
export function runOf(outline: Outline, name: string): readonly Stretch[] {
	const all = stretches(outline);
	const named = (i: number): boolean => all[(i + all.length) % all.length]!.edge.name === name;
	const firsts = all.flatMap((_, i) => (named(i) && !named(i - 1) ? [i] : []));
	// A name that every edge has begins where the outline does.
	const first = firsts[0] ?? (named(0) ? 0 : undefined);
	if (first === undefined) throw new Error(`no edge ${name} among ${outline.edges.map((edge) => edge.name).join(', ')}`);
	if (firsts.length > 1) throw new Error(`edges ${name} are no neighbours among ${outline.edges.map((edge) => edge.name).join(', ')}`);
	const run: Stretch[] = [];
	for (let i = first; run.length < all.length && named(i); i++) run.push(all[i % all.length]!);
	return run;
}

export const runLength = (run: readonly Stretch[]): number => run.reduce((sum, stretch) => sum + edgeLength(stretch), 0);

/** Which of a run's edges lies `part` 0…1 of the way along it, and how far along that edge. */
function reach(run: readonly Stretch[], part: number): { readonly stretch: Stretch; readonly at: number } {
	let left = runLength(run) * part;
	for (const stretch of run) {
		const length = edgeLength(stretch);
		if (left <= length && length > 0) return { stretch, at: Math.max(0, left / length) };
		left -= length;
	}
	return { stretch: run.at(-1)!, at: 1 };
}

/** `part` 0…1 of the length of a run. */
export function pointAlongRun(run: readonly Stretch[], part: number): Point {
	const { stretch, at } = reach(run, part);
	return pointAlong(stretch, at);
}

/** The direction in which a run goes there, as a vector of length 1. */
export function tangentAlongRun(run: readonly Stretch[], part: number): Point {
	const { stretch, at } = reach(run, part);
	return tangent(stretch, at);
}

/** The part `from`…`to` (0…1 of its length) of a run, as edges of its own; walked backwards when `from` > `to`. */
export function stretchOf(run: readonly Stretch[], from: number, to: number): readonly Stretch[] {
	if (from > to) return stretchOf(run, to, from).map(reversed).reverse();
	const whole = runLength(run);
	const part: Stretch[] = [];
	let gone = 0;
	for (const stretch of run) {
		const length = edgeLength(stretch);
		const [first, last] = [Math.max(0, (from * whole - gone) / length), Math.min(1, (to * whole - gone) / length)];
		gone += length;
		if (first < last) part.push(first === 0 && last === 1 ? stretch : between(stretch, first, last));
	}
	return part;
}

function between(stretch: Stretch, first: number, last: number): Stretch {
	const { edge } = stretch;
	const end = last === 1 ? edge.end : pointAlong(stretch, last);
	return { from: pointAlong(stretch, first), edge: { ...edge, end, turn: edge.turn * (last - first) } };
}

const reversed = ({ from, edge }: Stretch): Stretch => ({ from: edge.end, edge: { ...edge, end: from, turn: edge.centre ? -edge.turn : 0 } });
