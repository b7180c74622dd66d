// How long a slit lets the hip through closed pleats that are sewn down to the hip.

/**
 * The least opening below the waist seam, mm, that lets the closed hip girth H through. Shortest path: down to the hip the
 * folded skirt is a cone from the waist seam G to H, where no loop is longer than the girth at its own depth, so the slit
 * ends below it, by y, where the pleats hang free on the flat width F. The shortest loop climbs to the hip line, coming out
 * there a share a of the girth aside on each side, √(y² + (aF)²) long, and goes over the cone through what is left of its
 * sweep. It has to be H for every a: y² = max of m² − (aF)², with m half of what the way over the cone lacks of H. That
 * rises from a = 0 and falls again, so its turn is found by halving. Checked against a search in small steps.
 */
export function openingStitched(seam: number, hip: number, hipDepth: number, flatWidth: number): number {
	if (hip <= seam) return 0;
	const sweep = (hip - seam) / hipDepth;
	const radius = hip / sweep;
	const lackAt = (aside: number) => {
		const { loop, slope } = overCone(radius, seam / hip, sweep * (1 - 2 * aside));
		// How fast half the lack grows as the way over the cone turns through less: 2a of the sweep less, halved.
		return { lack: (hip - loop) / 2, grows: sweep * slope };
	};
	let [low, high] = [0, 0.5];
	for (let i = 0; i < 50; i++) {
		const aside = (low + high) / 2;
		const { lack, grows } = lackAt(aside);
		if (lack * grows > aside * flatWidth * flatWidth) low = aside;
		else high = aside;
	}
	const { lack } = lackAt(low);
	return hipDepth + Math.sqrt(Math.max(0, (lack - low * flatWidth) * (lack + low * flatWidth)));
}

/**
 * The taut string over a cone, `turn` radians round from one point of its lower edge to another (circle geometry, as for
 * a flared skirt): two tangents and the waist's arc, 2√(q² − r²) + r(turn − 2β) with cos β = r/q, or the chord
 * 2q·sin(turn/2) that doesn't reach the waist. `slope`: its change with the turn.
 */
function overCone(radius: number, ratio: number, turn: number): { readonly loop: number; readonly slope: number } {
	const angle = Math.acos(Math.min(1, ratio));
	if (angle > turn / 2) return { loop: 2 * radius * Math.sin(turn / 2), slope: radius * Math.cos(turn / 2) };
	return { loop: radius * (2 * Math.sin(angle) + ratio * (turn - 2 * angle)), slope: radius * ratio };
}
