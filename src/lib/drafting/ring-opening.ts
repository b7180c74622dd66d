// How long a slit lets the hip through cloth that is gathered.

/** A ring of cloth, top down: `girth` measured flat, before it was gathered; `depth` from join to join. mm */
export interface Ring {
	readonly girth: number;
	readonly depth: number;
}

/**
 * The least opening below the waist seam that lets `hip` (its ease included) through; null where no opening does, since no
 * ring is wide enough. Shortest path, as for a flared skirt: every closed loop of cloth round the opened skirt passes the
 * slit's end, and the shortest climbs on both sides to a seam and runs along it. Gathered cloth of girth W on a seam of
 * girth p is crossed at the slant with sine p/W (a way across seams bends like light at a surface, so that p is the same in
 * every ring), and a climb of z adds 2z·√(1 − (p/W)²) to p. With p the waist seam: ℓ = G + 2 Σ z·√(1 − (G/W)²); with p a
 * ring's own girth, the same over the rings below it. All of them have to reach the hip. Checked against a grid search.
 */
export function openingThroughRings(seam: number, rings: readonly Ring[], hip: number): number | null {
	if (hip <= seam) return 0;
	const narrow = [seam, ...rings.map(({ girth }) => girth)];
	const first = narrow.findIndex((girth) => girth >= hip);
	if (first < 0) return null;
	let opening = 0;
	for (let k = 0; k < first; k++) {
		const needed = climb(narrow[k]!, rings, k, hip);
		if (needed === null) return null;
		opening = Math.max(opening, needed);
	}
	return opening;
}

/** How far down the slit ends when the loop along the seam above ring `from` (girth p) is as long as the hip. */
function climb(p: number, rings: readonly Ring[], from: number, hip: number): number | null {
	let depth = rings.slice(0, from).reduce((sum, ring) => sum + ring.depth, 0);
	let lack = (hip - p) / 2;
	for (let i = from; i < rings.length; i++) {
		const { girth, depth: tall } = rings[i]!;
		const gain = Math.sqrt((1 - p / girth) * (1 + p / girth));
		// The last ring is taken to go on: what is deeper than the skirt is told by a check.
		if (gain > 0 && (lack <= gain * tall || i === rings.length - 1)) return depth + lack / gain;
		lack -= gain * tall;
		depth += tall;
	}
	return null;
}
