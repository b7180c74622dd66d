// A small linear programme: the least c·z with every row·z ≥ its bound and z ≥ 0, where no cost is negative. Dual simplex on a
// full table (Chvátal, "Linear Programming", 1983, from memory): with such costs the slack basis may start as it stands.

export interface Row {
	/** Which unknowns, and how much of each. */
	readonly of: readonly (readonly [unknown: number, much: number])[];
	readonly least: number;
}

/** Below this an entry of the table is rounding. */
const nought = 1e-9;

/** The unknowns; null when no z keeps every row. */
export function leastCost(costs: readonly number[], rows: readonly Row[]): Float64Array | null {
	const columns = costs.length;
	const width = columns + 1;
	// Each row says its slack by the unknowns outside the basis, its own constant last; the cost's row comes after all.
	const table = new Float64Array((rows.length + 1) * width);
	rows.forEach(({ of, least }, r) => {
		for (const [unknown, much] of of) table[r * width + unknown]! += much;
		table[r * width + columns] = -least;
	});
	costs.forEach((cost, c) => (table[rows.length * width + c] = cost));
	/** Unknowns are 0 … columns − 1, slacks follow. */
	const outside = Int32Array.from({ length: columns }, (_, c) => c);
	const basis = Int32Array.from({ length: rows.length }, (_, r) => columns + r);
	for (let turn = 0; turn < 50 * (columns + 10); turn++) {
		let row = -1;
		let worst = -1e-7;
		for (let r = 0; r < rows.length; r++) {
			const constant = table[r * width + columns]!;
			if (constant < worst) {
				worst = constant;
				row = r;
			}
		}
		if (row < 0) {
			const z = new Float64Array(columns);
			basis.forEach((unknown, r) => {
				if (unknown < columns) z[unknown] = Math.max(0, table[r * width + columns]!);
			});
			return z;
		}
		let column = -1;
		let least = Infinity;
		for (let c = 0; c < columns; c++) {
			const entry = table[row * width + c]!;
			if (entry <= nought) continue;
			const ratio = table[rows.length * width + c]! / entry;
			if (ratio < least) {
				least = ratio;
				column = c;
			}
		}
		if (column < 0) return null;
		pivot(table, rows.length + 1, width, row, column);
		[basis[row], outside[column]] = [outside[column]!, basis[row]!];
	}
	return null;
}

/** The row's basic and the column's outside unknown change places. */
function pivot(table: Float64Array, rows: number, width: number, row: number, column: number): void {
	const own = row * width;
	const entry = table[own + column]!;
	for (let c = 0; c < width; c++) table[own + c] = c === column ? 1 / entry : -table[own + c]! / entry;
	for (let r = 0; r < rows; r++) {
		if (r === row) continue;
		const other = r * width;
		const much = table[other + column]!;
		if (much === 0) continue;
		table[other + column] = 0;
		for (let c = 0; c < width; c++) table[other + c]! += much * table[own + c]!;
	}
}
