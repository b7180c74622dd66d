/** A share of a circle as a fraction where it has one, else in hundredths. */
export function shareFraction(share: number): string {
	for (const under of [1, 2, 3, 4, 8]) {
		const over = Math.round(share * under);
		if (Math.abs(over / under - share) < 1e-9) return under === 1 ? String(over) : `${over}/${under}`;
	}
	return share.toFixed(2);
}
