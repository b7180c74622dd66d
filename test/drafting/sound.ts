// What holds for a draft of any style, measured by walking its outlines in chords; and taking the ways that drafts offer.
import { expect, vi } from 'vitest';
import type { Body } from '../../src/lib/drafting/body.ts';
import type { WayOut } from '../../src/lib/drafting/check.ts';
import { crossesItself } from '../../src/lib/drafting/geometry/crossing.ts';
import { area, edgeLength, stretches } from '../../src/lib/drafting/geometry/measure.ts';
import type { Piece } from '../../src/lib/drafting/piece.ts';
import type { Result } from '../../src/lib/drafting/result.ts';
import type { Seam, SeamEdge } from '../../src/lib/drafting/seam.ts';
import { takeWayOut } from '../../src/lib/drafting/take.ts';
import { ansurBody, nhanesBody, seeded, type Random } from './bodies.ts';
import { walked } from './measured.ts';

/** CI's number of bodies; a nightly run asks for more. */
export const bodies = Number(process.env.BODIES ?? 2000);
// A nightly run takes its time; only a hang is to end.
vi.setConfig({ testTimeout: Math.max(180_000, 60 * bodies), hookTimeout: 180_000 });
/** For what is drafted several times over, in each unit. */
export const fewer = Math.max(500, bodies / 4);

export interface Case<Chosen> { readonly body: Body; readonly skirt: Chosen }
/** Bodies of two surveys by turns, and a skirt for each. */
export function* casesOf<Chosen>(count: number, seed: number, chosen: (random: Random, waist: number) => Chosen): Generator<Case<Chosen>> {
	const random = seeded(seed);
	for (let i = 0; i < count; i++) {
		const measured = i % 2 ? ansurBody(random) : nhanesBody(random);
		const { waist, hip } = measured;
		// Now and then a reading is missing.
		const body = i % 10 === 0 ? { waist } : i % 10 === 5 ? { waist, hip } : measured;
		yield { body, skirt: chosen(random, waist) };
	}
}

/** One after the other, and each changed, without holding them all. */
export function* both<T>(first: Iterable<T>, second: Iterable<T>): Generator<T> {
	yield* first;
	yield* second;
}
export function* bent<T, U>(all: Iterable<T>, bend: (one: T) => U): Generator<U> {
	for (const one of all) yield bend(one);
}

/** The drafts of those that can be cut, one at a time: a nightly run's don't fit into memory together. */
export function* draftsOf<Chosen, Drafted>(cases: Iterable<Case<Chosen>>, draft: (body: Body, skirt: Chosen) => Result<Drafted>): Generator<Drafted> {
	for (const { body, skirt } of cases) {
		const drafted = draft(body, skirt);
		if (drafted.ok) yield drafted.value;
	}
}

export function near(measured: number, figure: number, within = 0.01): void {
	if (!(Math.abs(measured - figure) <= within)) expect(measured).toBe(figure);
}

/** No outline crosses itself, every one runs counterclockwise and closes, and every number is a number. */
export function expectSound(draft: { readonly pieces: readonly Piece[] }): void {
	for (const { stitch, cut, hole } of draft.pieces) {
		// A hole runs the other way round, and lies well inside.
		if (hole) {
			expect(area(hole.stitch)).toBeLessThan(0);
			expect(-area(hole.cut)).toBeLessThanOrEqual(-area(hole.stitch) * (1 + 1e-12));
			expect(-area(hole.stitch)).toBeLessThan(area(stitch));
		}
		for (const outline of [stitch, cut]) {
			if (crossesItself(outline)) expect(outline).toBe('not crossing itself');
			if (!(area(outline) > 0)) expect(area(outline)).toBeGreaterThan(0);
			const end = outline.edges.at(-1)!.end;
			near(Math.hypot(end[0] - outline.start[0], end[1] - outline.start[1]), 0, 1e-9);
			for (const stretch of stretches(outline)) if (!(edgeLength(stretch) > 0)) expect(edgeLength(stretch)).toBeGreaterThan(0);
		}
	}
	expectPlain(draft, '');
}

/** It survives JSON as it is: every number is a number (−0 would come back as 0), and there are only plain things. */
function expectPlain(value: unknown, at: string): void {
	if (typeof value === 'string' || typeof value === 'boolean' || value === null || value === undefined) return;
	if (typeof value === 'number') {
		if (!Number.isFinite(value) || Object.is(value, -0)) expect([at, value]).toEqual([at, 'a number']);
	} else if (Array.isArray(value)) {
		for (let i = 0; i < value.length; i++) {
			if (value[i] === undefined) expect([`${at}.${i}`, undefined]).toEqual([at, 'a value']);
			expectPlain(value[i], `${at}.${i}`);
		}
	} else if (typeof value === 'object' && Object.getPrototypeOf(value) === Object.prototype) {
		for (const [name, held] of Object.entries(value)) expectPlain(held, `${at}.${name}`);
	} else expect([at, typeof value]).toEqual([at, 'plain']);
}

/** Every sewn pair is as long as its seam says, and agrees to 0.01 mm or to the ease that its style chose. */
export function expectPairsMatch({ pieces, seams }: { readonly pieces: readonly Piece[]; readonly seams: readonly Seam[] }): void {
	const lengths = new Map<string, number>();
	const measure = (edges: readonly SeamEdge[]) => edges.reduce((sum, { piece, copy, edge, from, to }) => {
		const { stitch, hole, count } = pieces.find(({ name }) => name === piece)!;
		if (copy > count) expect(copy).toBeLessThanOrEqual(count);
		const key = `${piece} ${edge}`;
		const length = lengths.get(key) ?? walked(hole?.stitch.edges[0]!.name === edge ? hole.stitch : stitch, edge);
		lengths.set(key, length);
		return sum + length * Math.abs(to - from);
	}, 0);
	for (const seam of seams) {
		near(measure(seam.a), seam.lengthA);
		near(measure(seam.b), seam.lengthB);
		near(seam.lengthA - seam.lengthB, seam.ease);
	}
}

interface Told {
	readonly code: string;
	readonly severity?: string;
	readonly about?: string;
	readonly waysOut?: readonly WayOut[];
}
type Drafting<Chosen> = (body: Body, skirt: Chosen) => Result<{ readonly checks: readonly Told[] }>;
const named = (code: string, { path }: WayOut): string => `${code} ${path.replace(/\d/, '#')}`;

/** Takes each way out of each check, sees the check cleared, and gives what was taken: `code path`, digits as #. */
export function takeAllWaysOut<Chosen extends object>(drafts: Iterable<{ readonly body: Body; readonly skirt: Chosen; readonly checks: readonly Told[] }>, draft: Drafting<Chosen>): readonly string[] {
	const taken = new Set<string>();
	for (const { body, skirt, checks } of drafts) {
		for (const check of checks) {
			for (const way of check.waysOut ?? []) {
				const again = draft(body, takeWayOut(skirt, way));
				const where = JSON.stringify({ body, skirt, check, way });
				if (!again.ok) throw new Error(`can't be cut: ${where}`);
				const left = again.value.checks.filter(({ code, about, severity }) => code === check.code && about === check.about && severity !== 'good');
				if (left.length > 0) throw new Error(`still there: ${where} ${JSON.stringify(left)}`);
				taken.add(named(check.code, way));
			}
		}
	}
	return [...taken].sort();
}

/** Takes each way on from each refusal, sees that refusal gone, and gives what was taken. `mends`: whether the refusal of this path has to offer one. */
export function takeAllWaysOn<Chosen extends object>(refused: Iterable<Case<Chosen>>, draft: Drafting<Chosen>, mends: (path: string) => boolean): readonly string[] {
	const taken = new Set<string>();
	for (const { body, skirt } of refused) {
		const first = draft(body, skirt);
		for (const issue of first.ok ? [] : first.issues) {
			if (mends(issue.path) && !issue.waysOut?.length) throw new Error(`no way on: ${JSON.stringify({ body, skirt, issue })}`);
			for (const way of issue.waysOut ?? []) {
				const again = draft(body, takeWayOut(skirt, way));
				const left = again.ok ? [] : again.issues.filter(({ code, path }) => code === issue.code && path === issue.path);
				if (left.length > 0) throw new Error(`still there: ${JSON.stringify({ body, skirt, issue, way, left })}`);
				taken.add(named(issue.code, way));
			}
		}
	}
	return [...taken].sort();
}

/** Drafts the same in mm, cm and in: not a figure nor a check may differ. `inUnit` drafts the choices as if typed in that unit. */
export function expectSameInEveryUnit<Figures extends object, Chosen>(
	cases: Iterable<Case<Chosen>>,
	inUnit: (one: Case<Chosen>, unit: 'mm' | 'cm' | 'in') => Result<{ readonly figures: Figures; readonly checks: readonly Told[] }>,
	within: (figure: number) => number
): void {
	for (const one of cases) {
		const mm = inUnit(one, 'mm');
		for (const unit of ['cm', 'in'] as const) {
			const other = inUnit(one, unit);
			if (!mm.ok || !other.ok) {
				expect(other.ok ? [] : other.issues.map(({ code, path }) => [code, path])).toEqual(mm.ok ? [] : mm.issues.map(({ code, path }) => [code, path]));
				continue;
			}
			const [own, its] = [leaves(mm.value.figures), leaves(other.value.figures)];
			expect([...its.keys()]).toEqual([...own.keys()]);
			for (const [name, figure] of own) near(its.get(name)!, figure, within(figure));
			const told = ({ checks }: { readonly checks: readonly Told[] }) => checks.map(({ code, severity, about, waysOut = [] }) => [code, severity, about, waysOut.length]);
			expect(told(other.value)).toEqual(told(mm.value));
		}
	}
}

/** Every number in a tree of figures, by its path. */
function leaves(of: object, path = '', found = new Map<string, number>()): Map<string, number> {
	for (const [name, value] of Object.entries(of)) {
		if (typeof value === 'number') found.set(`${path}${name}`, value);
		else if (typeof value === 'object' && value !== null) leaves(value, `${path}${name}.`, found);
	}
	return found;
}

/** `value` in another unit: every number but those under the names in `plain`. */
export function inUnitOf(value: unknown, unit: 'mm' | 'cm' | 'in', plain: readonly string[]): unknown {
	const per = unit === 'in' ? 25.4 : unit === 'cm' ? 10 : 1;
	if (typeof value === 'number') return value / per;
	if (typeof value !== 'object' || value === null) return value;
	return Object.fromEntries(Object.entries(value).map(([name, held]) => [name, plain.includes(name) ? held : inUnitOf(held, unit, plain)]));
}
