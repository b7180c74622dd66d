// Pushes a layout together, or an almost-layout apart, as far as it goes without any two pieces changing sides: each offset
// keeps to a convex part of what its no-fit region allows, and the shortest length under that is a linear programme
// (Li and Milenkovic, "Compaction and separation algorithms for non-convex polygons", 1995, from memory).
import { leastCost, type Row } from './linear.ts';
import type { Problem } from './problem.ts';
import { depth, nearest, type Region } from './region.ts';
import type { Regions } from './regions.ts';
import { touching, type Places } from './search.ts';

/** n · offset ≥ least. */
interface Side {
	readonly nx: number;
	readonly ny: number;
	readonly least: number;
}

/** mm of length that make another round worth it. */
const worth = 0.02;

export function lengthOf(problem: Problem, cast: readonly number[], { x }: Places): number {
	return cast.reduce((length, id, k) => Math.max(length, x[k]! + problem.lies[id]!.x1), 0);
}

/** How deep the worst overlap is, mm. */
export function worstOverlap(problem: Problem, regions: Regions, cast: readonly number[], { x, y }: Places): number {
	let worst = 0;
	cast.forEach((id, k) => {
		if (problem.unusable.length > 0) for (const region of regions.covering(id, 'outer')) worst = Math.max(worst, depth(region, x[k]!, y[k]!));
		for (let j = 0; j < k; j++) worst = Math.max(worst, depth(regions.between(cast[j]!, id, 'outer'), x[k]! - x[j]!, y[k]! - y[j]!));
	});
	return worst;
}

/** A layout no longer than `most`, or null. The start may overlap a little. */
export function compact(problem: Problem, regions: Regions, cast: readonly number[], start: Places, most: number, rounds = 8): Places | null {
	let places = start;
	let length = Infinity;
	let good: Places | null = null;
	for (let round = 0; round < rounds; round++) {
		const next = pushed(problem, regions, cast, places, most);
		if (!next) return good;
		places = next;
		if (worstOverlap(problem, regions, cast, places) > touching) continue;
		const now = lengthOf(problem, cast, places);
		if (now < length) good = places;
		if (now > length - worth) return good;
		length = now;
	}
	return good;
}

function pushed(problem: Problem, regions: Regions, cast: readonly number[], { x, y }: Places, most: number): Places | null {
	const lies = cast.map((id) => problem.lies[id]!);
	const n = cast.length;
	// Unknowns: each place less its least along, then across; then the length. A little cost on the places draws them to the corner.
	const costs = [...new Array<number>(2 * n).fill(1e-5), 1];
	const rows: Row[] = [{ of: [[2 * n, -1]], least: -most }];
	lies.forEach((lie, k) => {
		rows.push({ of: [[2 * n, 1], [k, -1]], least: lie.x1 - lie.x0 });
		rows.push({ of: [[n + k, -1]], least: lie.on === 'fold' ? 0 : lie.y1 - lie.y0 - problem.width });
		if (problem.unusable.length > 0) {
			for (const region of regions.covering(lie.id, 'outer')) {
				for (const { nx, ny, least } of sides(region, x[k]!, y[k]!)) rows.push({ of: [[k, nx], [n + k, ny]], least: least + nx * lie.x0 + ny * lie.y0 });
			}
		}
		for (let j = 0; j < k; j++) {
			const other = lies[j]!;
			for (const { nx, ny, least } of sides(regions.between(cast[j]!, lie.id, 'outer'), x[k]! - x[j]!, y[k]! - y[j]!)) {
				rows.push({ of: [[k, nx], [n + k, ny], [j, -nx], [n + j, -ny]], least: least + nx * (lie.x0 - other.x0) + ny * (lie.y0 - other.y0) });
			}
		}
	});
	const z = leastCost(costs, rows);
	return z && { x: Float64Array.from(lies, ({ x0 }, k) => z[k]! - x0), y: Float64Array.from(lies, ({ y0 }, k) => z[n + k]! - y0) };
}

/** Half-planes that hold a convex part of what is allowed, round the offset or the nearest allowed one: nearest edges first. */
function sides(region: Region, x: number, y: number): readonly Side[] {
	const { ax, ay, bx, by } = region;
	const reach = 1500;
	if (x < region.x0 - reach || x > region.x1 + reach || y < region.y0 - reach || y > region.y1 + reach) return [];
	const found: Side[] = [];
	let [px, py] = [x, y];
	if (depth(region, x, y) > 0) {
		const e = nearest.edge;
		const side = along(region, e);
		[px, py] = foot(region, e, x, y, 0, 1);
		found.push(side);
	}
	for (let turn = 0; turn < 24; turn++) {
		let [least, edge, qx, qy] = [Infinity, -1, 0, 0];
		for (let e = 0; e < ax.length; e++) {
			let [from, to] = [0, 1];
			const [dx, dy] = [bx[e]! - ax[e]!, by[e]! - ay[e]!];
			for (const { nx, ny, least: bound } of found) {
				// Only what lies truly within the part so far.
				const start = nx * ax[e]! + ny * ay[e]! - bound - 1e-6;
				const rise = nx * dx + ny * dy;
				if (start < 0 && start + rise < 0) {
					to = -1;
					break;
				}
				if (start < 0) from = Math.max(from, -start / rise);
				else if (start + rise < 0) to = Math.min(to, -start / rise);
			}
			if (from > to) continue;
			const [fx, fy] = foot(region, e, px, py, from, to);
			const square = (fx - px) ** 2 + (fy - py) ** 2;
			if (square < least) [least, edge, qx, qy] = [square, e, fx, fy];
		}
		if (edge < 0) break;
		const away = Math.sqrt(least);
		const [nx, ny] = [(px - qx) / away, (py - qy) / away];
		found.push(away > 0.01 ? { nx, ny, least: nx * qx + ny * qy } : along(region, edge));
	}
	return found;
}

/** The allowed side of an edge. */
function along({ ax, ay, bx, by }: Region, e: number): Side {
	const [dx, dy] = [bx[e]! - ax[e]!, by[e]! - ay[e]!];
	const length = Math.sqrt(dx * dx + dy * dy);
	const [nx, ny] = [dy / length, -dx / length];
	return { nx, ny, least: nx * ax[e]! + ny * ay[e]! };
}

/** The point of an edge, between two parts of its way, nearest to (x, y). */
function foot({ ax, ay, bx, by }: Region, e: number, x: number, y: number, from: number, to: number): readonly [number, number] {
	const [dx, dy] = [bx[e]! - ax[e]!, by[e]! - ay[e]!];
	const part = Math.min(to, Math.max(from, ((x - ax[e]!) * dx + (y - ay[e]!) * dy) / (dx * dx + dy * dy)));
	return [ax[e]! + dx * part, ay[e]! + dy * part];
}
