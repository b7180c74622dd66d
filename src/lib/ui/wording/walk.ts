// What a walk tells, seam by seam, for a table that a teacher reads.
import type { WalkRow } from '../../drafting/walk.ts';
import type { Unit } from '../../drafting/length.ts';
import { count } from './count.ts';
import { fine } from './long.ts';

/** A hundredth of a millimetre is what a walk goes by, so what is left over is told as finely. */
const left = (mm: number, unit: Unit): string => {
	const size = Math.abs(mm);
	return size < 0.5 ? `${size.toFixed(2)} mm` : fine(size, unit);
};

/** What is done about a difference between the two: nothing, ease, or it doesn't walk. */
export function easeWords({ ease, left: over, lengthsAgree }: WalkRow, unit: Unit): string {
	if (!lengthsAgree) return `${over > 0 ? 'the first' : 'the second'} is ${left(over, unit)} too long`;
	if (Math.abs(ease) < 0.005) return 'edge to edge';
	return ease > 0 ? `ease in ${fine(ease, unit)} of the first` : `ease in ${fine(-ease, unit)} of the second`;
}

/** Whether its notches meet; what stands alone is named. */
export function notchWords({ notches, unmarked, notchesMeet }: WalkRow, unit: Unit): string {
	if (notches.length === 0) return 'none';
	if (unmarked) return `${notches.length} to measure to`;
	if (notchesMeet) return notches.length === 1 ? 'meets' : `all ${notches.length} meet`;
	return notches.flatMap(({ marks, differs, otherKind }) => {
		if (differs === null) return [`${marks}: no partner`];
		if (Math.abs(differs) > 0.01) return [`${marks}: ${left(differs, unit)} apart`];
		return otherKind ? [`${marks}: single on one edge, double on the other`] : [];
	}).join('; ');
}

/** Above the table: does everything walk? */
export function walkSummary(rows: readonly WalkRow[]): string {
	const wrong = rows.filter(({ lengthsAgree, notchesMeet }) => !lengthsAgree || !notchesMeet);
	if (wrong.length === 0) return `All ${rows.length} seams walk: each pair agrees to a hundredth of a millimetre or to its ease, and the notches meet.`;
	return `${count(wrong.length, 'seam doesn’t', 'seams don’t')} walk: ${wrong.map(({ name }) => name).join(', ')}. Nothing is cut until it does.`;
}

/** The two sides of a row, named by their pieces. */
export function sidesOf({ a, b }: WalkRow): readonly [string, string] {
	const name = (edges: WalkRow['a']): string => {
		const pieces = [...new Set(edges.map(({ piece }) => (piece === 'panel' ? 'skirt' : piece)))];
		return pieces.length > 2 ? `${pieces.length} pieces` : pieces.join(' and ');
	};
	return [name(a), name(b)];
}

