export type Matrix = readonly (readonly number[])[];

/** The lower triangle L with L·Lᵀ = the correlations (Cholesky's factorisation). */
export function choleskyOf(correlations: Matrix): Matrix {
	const lower = correlations.map((row) => row.map(() => 0));
	for (let i = 0; i < lower.length; i++) {
		for (let j = 0; j <= i; j++) {
			let sum = correlations[i]![j]!;
			for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
			lower[i]![j] = i === j ? Math.sqrt(sum) : sum / lower[j]![j]!;
		}
	}
	return lower;
}
