// What a zip that is there lets through: the opening's own sum (opening.ts), the other way about.

/**
 * The largest girth that an opening of `opening` below the waist seam lets through, in cloth that doesn't stretch. With
 * q = r + z and β = arccos(r/q) the shortest loop past the slit's end is 2√(q² − r²) + r(θ − 2β), or 2q·sin(θ/2) where the
 * tangents use up the sweep (circle geometry).
 */
export function letsThrough(seam: number, sweep: number, opening: number): number {
	const radius = seam / sweep;
	const reach = radius + Math.max(0, opening);
	const angle = Math.acos(radius / reach);
	if (angle > sweep / 2) return 2 * reach * Math.sin(sweep / 2);
	return 2 * Math.sqrt((reach - radius) * (reach + radius)) + radius * (sweep - 2 * angle);
}
