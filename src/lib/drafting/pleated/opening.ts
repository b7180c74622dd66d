// How long a slit lets the hip through closed pleats that are sewn down to the hip.

/**
 * An opening below the waist seam, mm, that surely lets the closed hip girth through; seldom more than a little over the
 * least one. Down to the hip the folded skirt is a cone from the waist seam to the hip girth H, where no loop is longer than
 * the girth at its own depth, so the slit ends below it, where the pleats hang free on the flat width F. On the cone the
 * shortest loop from the hip line is the taut string of a flared skirt (circle geometry: radius q, waist radius r, sweep θ):
 * 2√(q² − r²) + r(θ − 2β) with β = arccos(r/q) where β ≤ θ/2, else the chord 2q·sin(θ/2). Every way down from the hip line
 * to a slit's end y below it adds at least y·√(1 − (H/F)²) on each side, since √(y² + b²) ≥ y·cos α + b·sin α for any α.
 */
export function openingStitched(seam: number, hip: number, hipDepth: number, flatWidth: number): number {
	if (hip <= seam) return 0;
	const sweep = (hip - seam) / hipDepth;
	const [waistRadius, radius] = [seam / sweep, hip / sweep];
	const angle = Math.acos(Math.min(1, seam / hip));
	const loop = angle <= sweep / 2
		? 2 * Math.sqrt((radius - waistRadius) * (radius + waistRadius)) + waistRadius * (sweep - 2 * angle)
		: 2 * radius * Math.sin(sweep / 2);
	return hipDepth + Math.max(0, hip - loop) / (2 * Math.sqrt((1 - hip / flatWidth) * (1 + hip / flatWidth)));
}
